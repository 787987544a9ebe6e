"""Cut parts on as few sheets of the stock as they need, each with a reference square in a free place.

Those of one kit lie on boards of their own; those of all boxes of a run are placed together, and boards that are alike
are one, which is cut several times.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import product
from math import floor
from typing import NamedTuple

from layout.cutting.parts.reference_square import reference_square
from layout.cutting.stock.stock import Stock
from layout.drawing.boxes import placed
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing, rectangle
from layout.drawing.sheet import Part, Piece, Sheet, painted
from layout.messages.catalogue import Catalogue
from layout.nesting.batches import Batch, Pages, fewest, least_of
from layout.nesting.bed import Bed, Item
from layout.nesting.free import largest_free
from layout.nesting.nest import Nest, nest
from layout.values.errors import FieldError

EDGE, GAP = 5.0, 3.0
"""Parts keep so far, in mm, from the edges of the sheet and, at least, from each other (common practice, no source)."""


AT_ONCE, MOST_SETS = 300, 40
"""So many parts of a run are also placed all at once; more are placed in batches alone, of so many boxes at most."""


_NOISE = 1e-6  # of a millimetre: what sums of floats may lack


class Free(NamedTuple):
    """What is left over of a board in one piece, in whole mm, and the number of the board."""

    width: int
    height: int
    board: int


class BoardPart(NamedTuple):
    """A part of the `kit`th kit of a run, counted from 0: `each` in one set, and how many `sets` there are."""

    part: Part
    kit: int = 0
    each: int = 1
    sets: int = 1


@dataclass(frozen=True, slots=True)
class Boards:
    """The pieces on each sheet, the reference square last; `least` sheets by area alone.

    `times` says how often each of them is cut, and `kits` which kit of a run each of its pieces is of, but the square.
    """

    stock: Stock
    sheets: tuple[tuple[Piece, ...], ...]
    least: int
    times: tuple[int, ...]
    kits: tuple[tuple[int, ...], ...]

    @property
    def count(self) -> int:
        """How many sheets of the stock are cut."""
        return sum(self.times)

    def left_over(self, number: int) -> Free:
        """The largest rectangle of the `number`th board, from 1 on, that nothing is cut from."""
        boxes = [box_of(piece) for piece in self.sheets[number - 1][:-1]]
        left, low, right, high = largest_free(boxes, self.stock.width, self.stock.height)
        return Free(floor(right - left + _NOISE), floor(high - low + _NOISE), number)

    @property
    def largest_left_over(self) -> Free:
        """The largest of all boards, on the first of those where it is."""
        every = [self.left_over(number) for number in range(1, len(self.sheets) + 1)]
        return max(every, key=lambda free: (free.width * free.height, -free.board))

    def sheet(self, number: int) -> Sheet:
        """The `number`th sheet, from 1 on, at its own size, in the order of work.

        Its own outline is drawn for reference, so that parts are seen to lie on it; nothing runs it.
        """
        shapes = [shape for part, placing in self.sheets[number - 1] for shape in placing.shapes(part.shapes)]
        name = f"board {number} of {len(self.sheets)}"
        edges = rectangle(0.0, 0.0, self.stock.width, self.stock.height, Pen.REFERENCE)
        return Sheet(name, self.stock.width, self.stock.height, painted((edges, *shapes)))


def boards_of(
    parts: Sequence[Part], turns: tuple[int, ...], stock: Stock, metrics: FontMetrics, words: Catalogue
) -> Boards:
    """`parts` on sheets of `stock`, each turned by one of `turns` degrees; off the edges where all parts allow it.

    Raises FieldError where a part is larger than the sheet.
    """
    gap = gap_on(stock)
    wanted = [Item(part, turns=turns) for part in parts]
    try:
        laid = nest(wanted, Bed(stock.width, stock.height, gap, EDGE))
    except FieldError:
        laid = _to_the_edge(wanted, stock, gap)
    sheets = _with_squares(laid.sheets, stock, metrics, words)
    none = tuple((0,) * len(pieces) for pieces in laid.sheets)
    return Boards(stock, sheets, laid.least, (1,) * len(sheets), none)


def boards_of_run(
    parts: Sequence[BoardPart], turns: tuple[int, ...], stock: Stock, metrics: FontMetrics, words: Catalogue
) -> Boards:
    """All copies of the parts of a run on the fewest sheets, then on the fewest that are unlike; errors as above."""
    batches = [Batch(Item(part, each, turns), sets) for part, _, each, sets in parts]
    bed = Bed(stock.width, stock.height, gap_on(stock), EDGE)
    try:
        pages = _together(batches, bed)
    except FieldError:
        bed = Bed(stock.width, stock.height, gap_on(stock), 0.0)
        try:
            pages = _together(batches, bed)
        except FieldError as error:
            raise error.at("sheet") from None
    in_order = sorted(pages.items(), key=lambda each: -each[1])
    laid = [tuple(Piece(parts[k].part, placing) for k, placing in page) for page, _ in in_order]
    times = tuple(often for _, often in in_order)
    kits = tuple(tuple(parts[k].kit for k, _ in page) for page, _ in in_order)
    return Boards(stock, _with_squares(laid, stock, metrics, words), least_of(batches, bed), times, kits)


def gap_on(stock: Stock) -> float:
    """How far parts are apart on the stock, at least, in mm."""
    return max(GAP, stock.thickness)


def _together(batches: Sequence[Batch], bed: Bed) -> Pages:
    few = sum(batch.copies for batch in batches) <= AT_ONCE
    return fewest(batches, bed, at_once=few, most_sets=MOST_SETS)


def _with_squares(
    sheets: Iterable[Sequence[Piece]], stock: Stock, metrics: FontMetrics, words: Catalogue
) -> tuple[tuple[Piece, ...], ...]:
    square, gap = reference_square(metrics, words), gap_on(stock)
    return tuple((*pieces, Piece(square, _free(square, pieces, stock, gap))) for pieces in sheets)


def _to_the_edge(wanted: Sequence[Item], stock: Stock, gap: float) -> Nest:
    try:
        return nest(wanted, Bed(stock.width, stock.height, gap, 0.0))
    except FieldError as error:
        raise error.at("sheet") from None


def box_of(piece: Piece) -> Box:
    """Left, bottom, right and top of a piece as it lies on its sheet."""
    return placed(piece.part.box, piece.placing)


def _free(square: Part, pieces: Iterable[Piece], stock: Stock, gap: float) -> Placing:
    """The lowest place, then the leftmost, beside every piece; else the middle, since nothing runs the square."""
    boxes = [box_of(piece) for piece in pieces]
    lows = sorted({EDGE, *(top + gap for _, _, _, top in boxes)})
    lefts = sorted({EDGE, *(right + gap for _, _, right, _ in boxes)})
    wide, high = square.length, square.height
    for low, left in product(lows, lefts):
        inside = left + wide <= stock.width - EDGE and low + high <= stock.height - EDGE
        if inside and not any(_meet((left, low, left + wide, low + high), box) for box in boxes):
            return Placing(0, left, low)
    return Placing(0, (stock.width - wide) / 2, (stock.height - high) / 2)


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
