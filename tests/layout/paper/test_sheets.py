from __future__ import annotations

import pytest
from kits import kit_of, layings_of, plan_of, sheets_of

from layout.drawing.pens import PAINTING_ORDER
from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet, pen_of

TILES: dict[str, object] = {"weaving.width": "60 cm", "frame.outer_width": "70 cm"}


def said(sheet: Sheet) -> list[str]:
    """The words of a sheet."""
    return [shape.words for shape in sheet.shapes if isinstance(shape, Text)]


@pytest.mark.parametrize("changes", [{}, TILES])
def test_sheets_are_numbered_through(changes: dict[str, object]) -> None:
    """In the order of use, both strips together, each sheet named after its part and numbered among all of its file."""
    planned = plan_of(changes)
    sheets = [printed.sheet for printed in sheets_of(planned)]
    names = ["start-here", *(laying.part.name for laying in layings_of(planned) for _ in laying.sheets)]
    assert list(dict.fromkeys(names))[:5] == ["start-here", "frame-check", "wrap-gauge", "strips", "winding"]
    for number, (sheet, name) in enumerate(zip(sheets, names, strict=True), 1):
        assert sheet.name == f"{name} {number} of {len(sheets)}"
        assert f"Sheet {number} of {len(sheets)}" in said(sheet)


@pytest.mark.parametrize("changes", [{}, TILES, {"paper.size": "11x17"}])
def test_every_sheet_says_what_it_is(changes: dict[str, object]) -> None:
    """Kit, part, sett and ends stand on every sheet, and which bar a strip is for on the strip."""
    for printed in sheets_of(plan_of(changes)):
        words = said(printed.sheet)
        title = printed.pieces[0].part.title
        assert words.count("Heron frame") >= 1
        assert any(row.startswith("2.5 ends per cm, ") and row.endswith(" ends") for row in words)
        if "strip" in printed.sheet.name:
            assert any(row.endswith(("arking strips", "arking strip")) for row in words)
            for piece in printed.pieces:
                bar = piece.part.name.removeprefix("strip-").capitalize()
                assert any(row.startswith(f"{bar} bar, ") for row in words)
        else:
            assert title.startswith(next(row for row in words if title.startswith(row)))


def test_sheets_are_the_size_of_the_paper() -> None:
    """One size in a file, whole points (1/72 in, ISO 32000): the common sheet is 595 x 790."""
    for printed in sheets_of(plan_of()):
        assert (printed.sheet.width * 72 / 25.4, printed.sheet.height * 72 / 25.4) == pytest.approx((595, 790))
    paper = kit_of({"paper.size": "200 x 250 mm"}).paper
    assert round(paper.width * 72 / 25.4, 9).is_integer()


def test_sheets_are_in_painting_order() -> None:
    """Tints lie below lines and lines below words."""
    for printed in sheets_of(plan_of(TILES)):
        order = [PAINTING_ORDER[pen_of(shape)] for shape in printed.sheet.shapes]
        assert order == sorted(order)


def test_pieces_are_what_lies_there() -> None:
    """Each shape of each piece is on its sheet, where the piece's placing puts it."""
    for printed in sheets_of(plan_of(TILES)):
        there = set(printed.sheet.shapes)
        for part, placing in printed.pieces:
            assert set(placing.shapes(part.shapes)) <= there
