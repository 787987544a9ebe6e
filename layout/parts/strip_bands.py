"""The heights on a marking strip: where marks, numbers, words, fold and register lines lie across it.

v runs across the strip, 0 on the outermost line of the frame end, positive toward the face and the weaving.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import pi

from layout.drawing.pens import Pen
from layout.frames.frame import Ends, FlatEnd, NotchedEnd, PeggedEnd, RoundBar

_ROW, _LOW_ROW, _TALLER = 3.4, 3.2, 0.8  # heights of a row of small words, and more for capitals with accents
_MARK_UP, _MARK_DOWN, _NUMBERS = 1.8, 1.0, 2.8
_LOW_UP, _LOW_DOWN, _LOW_BACK = 1.5, 0.5, 1.5  # the low form spares every tenth it can: it must lie on small sheets
_AIR = 0.6  # more height for a row where there is room
_WORDS_FROM = 0.15  # the first row of words begins so far inside the numbers' band, whose figures leave it free
_GLUE, _GLUE_TOP = 6.0, 1.6
_BEHIND_MARKS = 2.0
_TEN_ROOM = 0.8  # the mark of a tenth reaches further back than others
_ROUND_PEG = 1.6  # a cross reaches so far past the hole it marks
_FLAP = 8.0

UNITS_SHORT = 0.35
EDGE_CLEAR = 0.35
"""A row of words ends at least so far from the edge of the paper, in mm."""


@dataclass(frozen=True, slots=True)
class Bands:
    """Heights in mm; `lines` are the fold and register lines, `front` and `back` the smallest reach of the paper.

    Marks reach from `marks[0]` to `marks[1]`; every other one may stand in a `second` row, with a reach of its own.
    Rows of words, each `row` high, fill `room` (from, to) and then go on downward from `below`; with no `below` they go
    on upward from the room, and the paper grows with them. The gluing edge begins at `glue`.
    """

    marks: tuple[float, float]
    numbers: tuple[float, float]
    lines: tuple[tuple[float, Pen], ...]
    front: float
    back: float
    room: tuple[float, float]
    row: float
    below: float | None = None
    glue: float | None = None
    second: tuple[float, float] | None = None

    def span(self, number: int) -> tuple[float, float]:
        """From where to where the mark of that number reaches (0 the first): every other one may lie further out."""
        return self.second if self.second and number % 2 else self.marks

    @property
    def marks_reach_back(self) -> bool:
        """Whether marks come so close to the back of the paper that nothing else finds room behind them."""
        return min(self.marks[0], *(self.second or self.marks)) - self.back < _BEHIND_MARKS

    @property
    def units_from(self) -> float:
        """Where unit lines begin: at the outermost line, or where the marks begin that are nearer to the weaving."""
        return self.marks[0] if self.second else 0.0

    @property
    def units_to(self) -> float:
        """How far up unit lines and limits reach: as high as the figures, clear of the words above."""
        return self.numbers[1] - UNITS_SHORT

    def rows(self, count: int) -> list[float]:
        """The lower edge v of each of the first `count` rows."""
        low, high = self.room
        inside = min(count, int((high - low) / self.row + 1e-9))
        found = [low + k * self.row for k in range(inside)]
        for k in range(count - inside):
            up = low + (inside + k) * self.row
            found.append(up if self.below is None else self.below - (k + 1) * self.row)
        return found


def low_bands(ends: Ends | None = None, *, tall: bool = False) -> Bands:
    """The low form of a strip; for bars and flat ends the outermost line only, about 9 mm with one row of words."""
    if isinstance(ends, NotchedEnd) and ends.density is None:
        return _notched(ends, _row(tall), 0.0)
    if isinstance(ends, PeggedEnd):
        return _pegged(ends, _row(tall), from_edge=False)
    top = _LOW_UP + _NUMBERS
    outermost = ((0.0, Pen.REGISTER),)
    words = top - _WORDS_FROM
    return Bands((-_LOW_DOWN, _LOW_UP), (_LOW_UP, top), outermost, top, -_LOW_BACK, (words, words), _LOW_ROW)


def full_bands(ends: Ends, *, tall: bool = False) -> Bands | None:
    """The full form for these frame ends; None where a bar is too thin to carry marks and numbers on its face.

    `tall` words hold capitals with accents and take higher rows.
    """
    row = _row(tall)
    if isinstance(ends, NotchedEnd):
        return _notched(ends, row, float(ends.thickness.mm)) if ends.density is None else low_bands()
    if isinstance(ends, PeggedEnd):
        return _pegged(ends, row, from_edge=True)
    return _over_edge(ends, row) if isinstance(ends, FlatEnd) else _round_bar(ends, row)


def _row(tall: bool) -> float:
    return _ROW + (_TALLER if tall else 0.0)


def tallest(ends: Ends) -> float:
    """The greatest height of a full strip: on a round bar it must not close over itself."""
    return pi * float(ends.diameter.mm) - 1 if isinstance(ends, RoundBar) else float("inf")


def _round_bar(bar: RoundBar, row: float) -> Bands | None:
    """From face (quarter turn up) over the outermost line to the back (quarter turn down), and a gluing edge."""
    quarter = bar.half_turn_mm / 2
    top = _MARK_UP + _NUMBERS
    if quarter < top + 0.2:
        return None
    words = top - _WORDS_FROM
    roomy = quarter >= words + row + EDGE_CLEAR
    low = -quarter if roomy else -_MARK_DOWN
    room = (words, quarter - EDGE_CLEAR) if roomy else (-quarter + 0.4, -_MARK_DOWN - 0.8)
    if roomy:
        deep = room[1] - room[0]
        row = min(row + _AIR, deep / int(deep / row))
    lines = tuple((v, Pen.REGISTER) for v in (quarter, 0.0, -quarter))
    below = -quarter - _GLUE_TOP
    return Bands((low, _MARK_UP), (_MARK_UP, top), lines, quarter, -quarter - _GLUE, room, row, below, -quarter)


def _notched(end: NotchedEnd, row: float, flap: float) -> Bands:
    """On the face from the outer edge past the ground of the notches, and a flap as thick as the board."""
    ground = float(end.notch_depth.mm)
    top = ground + _MARK_UP + _NUMBERS
    lines = ((0.0, Pen.FOLD),) if flap else ()
    low = -flap + _TEN_ROOM if flap else _TEN_ROOM
    words = top - _WORDS_FROM
    room = (words, words)
    return Bands((low, ground + _MARK_UP), (ground + _MARK_UP, top), lines, top, -flap, room, row + _AIR)


def _pegged(end: PeggedEnd, row: float, *, from_edge: bool) -> Bands:
    """On the face past both rows of pegs, from the outer edge of the board or from beyond the outer row."""
    outer, apart = float(end.edge_distance.mm), float(end.row_distance.mm)
    reach = float(end.peg_diameter.mm) / 2 + _ROUND_PEG
    inner = outer + apart
    back = min(0.0, outer - reach - _TEN_ROOM) if from_edge else outer - reach - 2 * _TEN_ROOM
    top = inner + reach + _NUMBERS
    lines = tuple((v, Pen.REGISTER) for v in (inner, outer))
    words, marks = top - _WORDS_FROM, (inner - reach, inner + reach)
    room, second = (words, words), (outer - reach, outer + reach)
    return Bands(marks, (marks[1], top), lines, top, back, room, row + _AIR, second=second)


def _over_edge(end: FlatEnd, row: float) -> Bands:
    """A flap on the face, the edge between two folds, and a gluing flap on the back."""
    fold = end.half_turn_mm / 2
    top = fold + _MARK_UP + _NUMBERS
    lines = ((fold, Pen.FOLD), (0.0, Pen.REGISTER), (-fold, Pen.FOLD))
    marks, numbers = (-fold, fold + _MARK_UP), (fold + _MARK_UP, top)
    words = top - _WORDS_FROM
    return Bands(marks, numbers, lines, fold + _FLAP, -fold - _FLAP, (words, words), row + _AIR, glue=-fold)
