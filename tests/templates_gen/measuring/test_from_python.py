"""The door for Python, on the scan that the pages measure."""

from __future__ import annotations

from pathlib import Path

import pytest
from example_scan import OFF, PRINTED, WIND, write_scan

import templates_gen
from layout.values.errors import FieldError


@pytest.fixture(scope="module")
def scan(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The scan, drawn once."""
    path = tmp_path_factory.mktemp("scan") / "scan.png"
    write_scan(path)
    return path


def test_a_scan_is_measured_as_it_was_printed(scan: Path) -> None:
    """Scale and skew, and the wind that was moved, within what is stated; the same by a kit that was read before."""
    (sheet,) = templates_gen.measure(scan, kit=templates_gen.load()).sheets
    x, y = sheet.scales.x, sheet.scales.y
    assert x is not None
    assert y is not None
    assert abs(x.value - PRINTED.x) < 0.0005  # pdfium draws a whole number of pixels: half a pixel is 0.02 %
    assert abs(y.value - PRINTED.y) < 0.0005
    assert abs(sheet.scales.skew.value - PRINTED.skew) < sheet.scales.skew.within
    mark, off, within = sheet.groups[0].worst
    assert mark.name.values["number"] == WIND
    assert abs(off - OFF) < 2 * within
    others = [abs(off) for other, off, _ in sheet.groups[0].found if other is not mark]
    assert max(others) < 0.015


def test_a_distance_is_given_in_mm(scan: Path) -> None:
    """And refused under the name of the option where it cannot be."""
    (sheet,) = templates_gen.measure(scan, known={"top": 190.2}, known_within=0.1).sheets
    assert sheet.scales.x is not None
    assert sheet.scales.x.sure
    assert sheet.scales.x.within < 0.0007
    with pytest.raises(FieldError, match="--known: needs the distance of the two at the top"):
        templates_gen.measure(scan, known={"top": 170.0})
    with pytest.raises(FieldError, match="--scanner-scale"):
        templates_gen.measure(scan, scanner_scale=(2.0, 1.0))
    outcome = templates_gen.measure(scan.parent / "none.png")
    assert (outcome.sheets, len(outcome.refused)) == ((), 1)
