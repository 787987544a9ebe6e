"""The door for Python, on the scan that the pages measure."""

from __future__ import annotations

from math import hypot
from pathlib import Path

import pytest
from example_scan import OFF, PRINTED, WIND, write_printed, write_scan
from hand_seen import COMMON

import templates_gen
from layout.paper.targets import rectangle
from layout.values.errors import FieldError
from templates_gen.inputs import printer_store
from templates_gen.measuring.storing import stored

RECTANGLE = rectangle(COMMON)


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
    assert abs(x.value - PRINTED.x) < x.within
    assert abs(y.value - PRINTED.y) < y.within
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
    with pytest.raises(FieldError, match="--known: needs a length"):
        templates_gen.measure(scan, known={"middle": 170.0})
    with pytest.raises(FieldError, match="--scanner-scale"):
        templates_gen.measure(scan, scanner_scale=(2.0, 1.0))
    outcome = templates_gen.measure(scan.parent / "none.png")
    assert (outcome.sheets, len(outcome.refused)) == ((), 1)


def test_a_printer_that_was_measured_prints_true(scan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Measured, kept, made for and printed again: what comes out is as long as it was drawn, and says what it is.

    A rule on the paper is right here to a hundredth of a mm: what is left over is what the scans do not know.
    """
    monkeypatch.setenv(printer_store.FOLDER, str(tmp_path / "printers"))
    wide, high = (side * share for side, share in zip(RECTANGLE, PRINTED, strict=False))
    known = {"top": wide, "left": high, "rising": hypot(wide + PRINTED.skew * RECTANGLE[1], high)}
    before = templates_gen.measure(scan, known=known, known_within=0.02)
    printer, _ = stored(before, "office", "2026-03-01")
    templates_gen.make(templates_gen.load(), tmp_path / "made", ["strips.pdf"], printer=printer)
    write_printed((tmp_path / "made" / "strips.pdf").read_bytes(), tmp_path / "again.png")
    (sheet,) = templates_gen.measure(tmp_path / "again.png", kit=tmp_path / "made").sheets
    assert sheet.sheet is not None
    assert sheet.sheet.corrected
    assert sheet.scale is not None
    assert [*sheet.scale] == pytest.approx([1, 1, 0], abs=0.0002)
    length = sheet.groups[0].length
    assert length is not None
    assert length.mm == pytest.approx(240, abs=0.05)
    assert abs(before.sheets[0].scales.ratio.value - 1) > 0.0004, "it was off before"
