"""How wide the columns of a table are: as wide as their words where all have room, else broken into lines."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL, longest_word

GAP = 4.0
"""White between two columns, in mm."""

TICK, TICK_GAP = 3.8, 2.7
"""The side of a box to tick, and the white behind it, in mm."""

_READS, _NAMES, _LESS = 30.0, 15.0, 0.95
"""A column of sentences so wide, in mm, still reads well; one of names, at the left, is narrower. Tables are made
narrower step by step while they stay as many."""

_SLACK = 1e-6  # mm, so that words as wide as their column are not broken


class Column(NamedTuple):
    """A column under its `title`.

    Its cells end at its `right` edge instead of beginning at its left one, and may be set in `strong` letters. Words
    of a `broken` column are set in several lines where it has no room for them. A `tick` column has a box to tick in
    every row instead of words.
    """

    title: str = ""
    right: bool = False
    strong: bool = False
    broken: bool = False
    tick: bool = False

    @property
    def pen(self) -> Pen:
        """The letters of its cells."""
        return Pen.STRONG if self.strong else Pen.TEXT


class Row(NamedTuple):
    """The words of each column, in their order ("" for a box to tick); a `total` is set in strong letters."""

    cells: tuple[str, ...]
    total: bool = False

    def pen(self, column: Column) -> Pen:
        """The letters of its cell in that column."""
        return Pen.STRONG if self.total else column.pen


def widths(
    columns: Sequence[Column], rows: Sequence[Row], size: float, width: float, metrics: FontMetrics
) -> list[float]:
    """The width of each column in mm; with the gaps between them they take all of `width`.

    What is left over goes to the first column of words that begin at its left edge. Where there is too little room,
    titles and broken columns are broken between words, the widest first; then words are, too.
    """
    wide = [_natural(number, column, rows, size, metrics) for number, column in enumerate(columns)]
    least = [_least(number, column, rows, size, metrics) for number, column in enumerate(columns)]
    room = width - sum(_gap(column) for column in columns[:-1])
    over = sum(wide) - room
    if over <= 0:
        filled = next((k for k, column in enumerate(columns) if not (column.right or column.tick)), len(wide) - 1)
        wide[filled] -= over
        return wide
    wide = _narrowed(wide, least, over)
    letter = [each if column.tick else min(each, size) for each, column in zip(wide, columns, strict=True)]
    return _narrowed(wide, letter, sum(wide) - room)


def fits(columns: Sequence[Column], rows: Sequence[Row], size: float, width: float, metrics: FontMetrics) -> bool:
    """Whether every cell has room on one line in a table so wide."""
    wide = (_natural(number, column, rows, size, metrics) for number, column in enumerate(columns))
    return sum(wide) + sum(_gap(column) for column in columns[:-1]) <= width


def parted(
    columns: Sequence[Column], rows: Sequence[Row], size: float, width: float, metrics: FontMetrics
) -> tuple[tuple[int, ...], ...]:
    """Which columns stand together in tables so wide: the first in each, the others in their order, in as few tables
    as can be and about as many in each. Broken columns are counted no wider than they read well.
    """
    need = [_needed(number, column, rows, size, metrics) for number, column in enumerate(columns)]
    need[0] = min(need[0], _NAMES)
    best = found = _filled(need, width)
    while len(found) == len(best) and width > need[0]:
        best, width = found, width * _LESS
        found = _filled(need, width)
    return best


def _filled(need: Sequence[float], width: float) -> tuple[tuple[int, ...], ...]:
    """The columns in their order, as many in each table as have room."""
    found: list[list[int]] = []
    used = 0.0
    for number, each in enumerate(need[1:], 1):
        if not found or used + GAP + each > width:
            found.append([0])
            used = need[0]
        found[-1].append(number)
        used += GAP + each
    return tuple(map(tuple, found)) or ((0,),)


def _needed(number: int, column: Column, rows: Sequence[Row], size: float, metrics: FontMetrics) -> float:
    least = _least(number, column, rows, size, metrics)
    return max(least, min(_natural(number, column, rows, size, metrics), _READS)) if column.broken else least


def _gap(column: Column) -> float:
    return TICK_GAP if column.tick else GAP


def lefts(columns: Sequence[Column], wide: Sequence[float]) -> list[float]:
    """Where each column begins, in mm from the left edge of the table."""
    found, x = list[float](), 0.0
    for column, each in zip(columns, wide, strict=True):
        found.append(x)
        x += each + _gap(column)
    return found


def _natural(number: int, column: Column, rows: Sequence[Row], size: float, metrics: FontMetrics) -> float:
    """The width at which neither its title nor a cell is broken."""
    if column.tick:
        return TICK
    return max(metrics.width(column.title, SMALL, column.pen), _cells(number, column, rows, size, metrics)) + _SLACK


def _least(number: int, column: Column, rows: Sequence[Row], size: float, metrics: FontMetrics) -> float:
    """The width at which no word is broken, nor a cell that is to stay on one line."""
    if column.tick:
        return TICK
    cells = _cells(number, column, rows, size, metrics)
    if column.broken:
        pens = [(row.cells[number], row.pen(column)) for row in rows]
        cells = max((longest_word(words, size, metrics, pen) for words, pen in pens), default=0.0)
    return max(longest_word(column.title, SMALL, metrics, column.pen), cells) + _SLACK


def _cells(number: int, column: Column, rows: Sequence[Row], size: float, metrics: FontMetrics) -> float:
    return max((metrics.width(row.cells[number], size, row.pen(column)) for row in rows), default=0.0)


def _narrowed(wide: Sequence[float], least: Sequence[float], over: float) -> list[float]:
    """Widths that are `over` mm less together where `least` allows: what is wider than one level goes down to it."""
    found = list(wide)
    while over > _SLACK:
        free = [k for k, each in enumerate(found) if each > least[k] + _SLACK]
        if not free:
            break
        widest = max(found[k] for k in free)
        top = [k for k in free if found[k] > widest - _SLACK]
        lower = max([found[k] for k in free if k not in top] + [least[k] for k in top])
        step = min(widest - lower, over / len(top))
        for k in top:
            found[k] -= step
        over -= step * len(top)
    return found
