"""The heights on a marking strip: where marks, numbers, words, fold and register lines lie across it.

v runs across the strip, 0 on the outermost line of the frame end, positive toward the face and the weaving.
"""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.pens import Pen

_ROW, _LOW_ROW, _TALLER = 3.4, 3.2, 0.8  # heights of a row of small words, and more for capitals with accents
_LOW_UP, _LOW_DOWN, _LOW_BACK = 1.5, 0.5, 1.5  # the low form spares every tenth it can: it must lie on small sheets
_BEHIND_MARKS = 2.0

MARK_UP, NUMBERS = 1.8, 2.8
"""How far a mark reaches toward the weaving past what it marks, and how high the band of numbers is after it."""
AIR = 0.6
"""More height for a row where there is room."""
WORDS_FROM = 0.15
"""The first row of words begins so far inside the numbers' band, whose figures leave it free."""
TEN_ROOM = 0.8
"""The mark of a tenth reaches further back than others."""
UNITS_SHORT = 0.35
EDGE_CLEAR = 0.35
"""A row of words ends at least so far from the edge of the paper, in mm."""


@dataclass(frozen=True, slots=True)
class Bands:
    """Heights in mm; `lines` are the fold and register lines, `front` and `back` the smallest reach of the paper.

    Marks reach from `marks[0]` to `marks[1]`; every other one may stand in a `second` row, with a reach of its own.
    Rows of words, each `row` high, fill `room` (from, to) and then go on upward, and the paper grows with
    them.
    """

    marks: tuple[float, float]
    numbers: tuple[float, float]
    lines: tuple[tuple[float, Pen], ...]
    front: float
    back: float
    room: tuple[float, float]
    row: float
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
        return [self.room[0] + k * self.row for k in range(count)]


def row_height(*, tall: bool) -> float:
    """The height of a row of words, higher where `tall` ones hold capitals with accents."""
    return _ROW + (_TALLER if tall else 0.0)


def on_the_line() -> Bands:
    """The low form on the outermost line only, about 9 mm with one row of words."""
    top = _LOW_UP + NUMBERS
    outermost = ((0.0, Pen.REGISTER),)
    words = top - WORDS_FROM
    return Bands((-_LOW_DOWN, _LOW_UP), (_LOW_UP, top), outermost, top, -_LOW_BACK, (words, words), _LOW_ROW)
