from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import combinations, product

import pytest
import shapely
from kits import font_metrics, plan_of

from layout.cutting.job.boards import EDGE, GAP, Boards, boards_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import PAINTING_ORDER, Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Part, Piece
from layout.messages.english import ENGLISH
from layout.values.errors import FieldError
from templates_gen.inputs.stock_file import built_in

NAMES = ("comb", "winding-comb")
BIRCH = replace(built_in(), width=600.0, height=400.0, grain="x")
FREE = replace(BIRCH, grain="none")


def parts_for(stock: Stock) -> list[Part]:
    """The combs of the test kit."""
    return [part for name in NAMES for part in CUT_PRODUCTS[name].builds(plan_of(), stock, font_metrics())]


def boards_for(stock: Stock, copies: int = 1) -> Boards:
    """So many of each comb on sheets of the stock."""
    return boards_of(parts_for(stock) * copies, turns(stock), stock, font_metrics(), ENGLISH)


def ink(piece: Piece) -> shapely.MultiPoint:
    """Every point of a piece's cut lines, where it lies."""
    paths = [shape for shape in piece.placing.shapes(piece.part.shapes) if isinstance(shape, Curve)]
    return shapely.MultiPoint([point for path in paths for point in path.points()])


@pytest.mark.parametrize("stock", [BIRCH, FREE, replace(FREE, width=260.0, height=210.0)])
def test_every_part_lies_on_the_sheets_once(stock: Stock) -> None:
    """Nothing is lost or doubled; what is drawn keeps off the edges and off its neighbours."""
    boards = boards_for(stock)
    laid = [piece for pieces in boards.sheets for piece in pieces]
    found = Counter(piece.part.name for piece in laid)
    assert found == {part.name: 1 for part in parts_for(stock)} | {"reference-square": len(boards.sheets)}
    inside = shapely.box(EDGE - 1e-6, EDGE - 1e-6, stock.width - EDGE + 1e-6, stock.height - EDGE + 1e-6)
    for pieces in boards.sheets:
        boxes = [shapely.box(*ink(piece).bounds) for piece in pieces]
        assert all(inside.covers(box) for box in boxes)
        assert all(one.distance(other) >= max(GAP, stock.thickness) - 1e-6 for one, other in combinations(boxes, 2))


def test_a_small_sheet_is_followed_by_another() -> None:
    """Thirty combs need several sheets, never fewer than their area asks for, each with a square of its own."""
    boards = boards_for(FREE, copies=10)
    assert 1 < boards.least <= len(boards.sheets) < 30
    assert all(pieces[-1].part.name == "reference-square" for pieces in boards.sheets)


def test_the_grain_decides_who_may_be_turned() -> None:
    """With a grain no part is turned; without one a sheet too narrow for a comb takes it turned."""
    grained = boards_for(BIRCH)
    assert {piece.placing.degrees for pieces in grained.sheets for piece in pieces} == {0}
    narrow = boards_of(parts_for(FREE), (0, 90), replace(FREE, width=100.0, height=400.0), font_metrics(), ENGLISH)
    assert {piece.placing.degrees for pieces in narrow.sheets for piece in pieces[:-1]} == {90}


def test_two_kerfs_keep_a_part_as_it_lies() -> None:
    """A part that is drawn for two kerfs would be wrong if it were turned."""
    assert turns(replace(FREE, kerf_x=0.21, kerf_y=0.19)) == (0,)


def test_a_part_as_large_as_the_sheet_goes_to_its_edges() -> None:
    """What the stock can just give is cut from it, without a margin."""
    part = replace(parts_for(FREE)[0], box=(0.0, 0.0, 600.0, 30.0))
    ((piece, _),) = boards_of([part], (0,), FREE, font_metrics(), ENGLISH).sheets
    assert piece.placing.dx == 0


def test_a_part_larger_than_the_sheet_is_refused() -> None:
    """The sentence names the sheet and the part."""
    part = replace(parts_for(FREE)[0], box=(0.0, 0.0, 700.0, 30.0))
    said = r"sheet: needs a sheet of at least 700 x 30 mm, .* for Comb, got 600 x 400 mm"
    with pytest.raises(FieldError, match=said):
        boards_of([part], (0,), FREE, font_metrics(), ENGLISH)


def test_the_square_lies_on_parts_only_where_nothing_is_free() -> None:
    """On a full sheet the square, which nothing runs, lies across the middle."""
    full = replace(parts_for(FREE)[0], shapes=(), datum=(), box=(0.0, 0.0, 590.0, 390.0))
    (pieces,) = boards_of([full], (0,), FREE, font_metrics(), ENGLISH).sheets
    assert (pieces[-1].placing.dx, pieces[-1].placing.dy) == (275.0, 175.0)


def test_a_sheet_is_drawn_in_the_order_of_work() -> None:
    """Engraving and scoring first; what is cut inside a part before its outline; the sheet has the stock's size."""
    sheet = boards_for(BIRCH).sheet(1)
    orders = [PAINTING_ORDER[shape.pen] for shape in sheet.shapes]
    assert orders == sorted(orders)
    assert (sheet.name, sheet.width, sheet.height) == ("board 1 of 1", 600.0, 400.0)
    cuts = [
        shapely.Polygon(shape.points())
        for shape in sheet.shapes
        if isinstance(shape, Curve) and shape.pen is Pen.THROUGH
    ]
    assert len(cuts) == 6
    pairs = list(product(enumerate(cuts), repeat=2))
    inner = [(k, n) for (k, one), (n, other) in pairs if k != n and shapely.Polygon(one).contains(other)]
    assert len(inner) == 3
    assert all(n < k for k, n in inner)


def test_the_same_kit_gives_the_same_boards() -> None:
    """Nothing is left to chance."""
    assert boards_for(FREE, copies=5) == boards_for(FREE, copies=5)
