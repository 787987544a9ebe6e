"""The picture of deviations: drawn to its own ruler, as PDF and as PNG."""

from __future__ import annotations

from pathlib import Path

import pypdfium2
import pytest
from hand_seen import measured_sheet
from kits import font_metrics, kit_of
from PIL import Image

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Sheet
from templates_gen.measuring.deviations import deviations, magnification
from templates_gen.measuring.outcome import Outcome
from templates_gen.measuring.picture_file import draw


def lines_of(page: Sheet, pen: Pen) -> list[Curve]:
    """The lines of a pen on a page."""
    return [shape for shape in page.shapes if isinstance(shape, Curve) and shape.pen is pen]


@pytest.mark.parametrize("largest", [0.005, 0.04, 0.3, 2.0])
def test_deviations_are_as_long_as_the_ruler_says(largest: float) -> None:
    """A mark that is off is drawn so much longer, and the ruler shows how long its millimetres are."""
    sheet = measured_sheet(off=lambda _, mark: largest if mark.name.values["number"] == 17 else 0.0)
    (page,) = deviations([sheet], font_metrics())
    times = magnification(sheet, sheet.groups)
    long = [abs(each.steps[0].end.y - each.start.y) for each in lines_of(page, Pen.END_MARK)]
    assert long == pytest.approx([largest * times] * 2)
    assert largest * times <= 9 + 1e-9
    (said,) = [each.words for each in page.shapes if isinstance(each, Text) and "as long as this ruler" in each.words]
    ruler = max(abs(each.steps[0].end.x - each.start.x) for each in lines_of(page, Pen.RULE))
    assert float(said.split(" mm", 1)[0]) * times == pytest.approx(ruler)
    assert f"{times} times" in said
    assert ruler <= 30


def test_every_mark_is_on_the_picture_and_all_of_it_on_its_pages() -> None:
    """Of a kit with many rows, page after page; nothing stands outside them."""
    kit = kit_of({"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper.lay": "tiles"})
    sheet = measured_sheet(kit=kit, number=5, off=lambda _, mark: 0.05 * (-1) ** int(mark.at))
    pages = deviations([sheet], font_metrics())
    assert len(pages) == 1 + (len(sheet.groups) > 4)
    drawn = sum(len(lines_of(page, Pen.END_MARK)) for page in pages)
    assert drawn == sum(len(row.marks) for row in sheet.groups)
    for page in pages:
        for shape in page.shapes:
            points = [shape.at] if isinstance(shape, Text) else shape.points() if isinstance(shape, Curve) else []
            assert all(8 <= at.x <= page.width - 8 and 8 <= at.y <= page.height - 8 for at in points)


def test_both_kinds_of_file_are_written(tmp_path: Path) -> None:
    """The PDF opens in another library; the PNG is as large as its pages at 150 dpi."""
    outcome = Outcome((measured_sheet(), measured_sheet(number=3)))
    draw(outcome, tmp_path / "new" / "a.pdf")
    draw(outcome, tmp_path / "a.png")
    pages = pypdfium2.PdfDocument((tmp_path / "new" / "a.pdf").read_bytes())
    assert len(pages) == 2
    assert "ruler" in pages[0].get_textpage().get_text_bounded()
    with Image.open(tmp_path / "a.png") as picture:
        assert picture.size == (1240, 2 * 1646)
        assert picture.getextrema()[0] < 100


def test_a_scan_may_be_called_anything(tmp_path: Path) -> None:
    """Letters that the font lacks do not stop the picture."""
    draw(Outcome((measured_sheet(scan="扫描\u200b😀.png"),)), tmp_path / "a.pdf")
    assert (tmp_path / "a.pdf").stat().st_size > 5000
