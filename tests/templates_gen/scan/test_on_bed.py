"""Where a sheet lies on its page of a scan."""

from __future__ import annotations

from pathlib import Path

import pypdfium2
import pytest
from PIL import ImageOps

from layout.drawing.shapes import Point
from templates_gen.scan.reader import measured, read_picture, sheets_on

DPI, EDGE = 216, 50  # three dots a point: the page is a whole number of them wide and high


@pytest.mark.parametrize("upside_down", [pytest.param(False, marks=pytest.mark.slow), True])
def test_the_corners_of_a_sheet_lie_where_they_were_put(upside_down: bool, demo_folder: Path, tmp_path: Path) -> None:
    """In mm of the bed from the middle of its first pixel at the upper left, to half a pixel; y goes up."""
    page = pypdfium2.PdfDocument((demo_folder / "kit.pdf").read_bytes())[3]
    shown = ImageOps.expand(page.render(scale=DPI / 72, grayscale=True).to_pil().convert("L"), EDGE, 255)
    (shown.rotate(180) if upside_down else shown).save(tmp_path / "a.png", dpi=(DPI, DPI))
    (picture,) = read_picture(tmp_path / "a.png")
    seen = measured(picture, sheets_on(picture)[0])
    assert seen.on_bed is not None
    left, right, low, high = EDGE, shown.width - EDGE, EDGE - shown.height, -EDGE
    corners = [(left, low), (right, low), (left, high), (right, high)]
    wide, tall = (right - left) * 25.4 / DPI, (high - low) * 25.4 / DPI
    places = [Point(0, 0), Point(wide, 0), Point(0, tall), Point(wide, tall)]
    for place, corner in zip(places, corners[::-1] if upside_down else corners, strict=True):
        found = seen.on_bed.at(place)
        assert (found.x * DPI / 25.4, found.y * DPI / 25.4) == pytest.approx(corner, abs=0.7)
