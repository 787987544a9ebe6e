"""What stands beside a piece of the weaving grid: which piece it is, what the grid has, and what its lines mean."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import OnSheet
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, circle, cross, filled, line, rectangle
from layout.drawing.sheet import Entry
from layout.drawing.signs import scissors
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Grid

WIDE = 24.0
"""The column beside a piece, in mm."""

_CELL, _HIGH, _MOST = 12.0, 17.0, 51.0  # a piece in the map, and how high the map may be
_SAMPLE, _WORDS_AT, _ENTRY, _AIR = 8.0, 10.0, 1.6, 0.6
_AFTER_TITLE, _AFTER_MAP, _AFTER_REMARK, _BEFORE_SIGNS = 2.4, 1.6, 2.8, 3.4


class Key(NamedTuple):
    """Shapes that hang down from (0, 0), and how far."""

    shapes: tuple[Shape, ...]
    high: float


def key_of(on: OnSheet, remarks: Sequence[str], words: Catalogue, metrics: FontMetrics) -> Key:
    """The column of a piece: its number and the map of all, and where it `says` so the remarks and the legend."""
    shapes: list[Shape] = []
    y = 0.0
    if on.total > 1:
        for row in wrap(words.say(Grid.PIECE, number=on.number, total=on.total), LEAD, WIDE, metrics, Pen.STRONG):
            y -= metrics.cap * LEAD if not shapes else leading(LEAD, tall=is_tall(row))
            shapes.append(Text(Point(0, y), LEAD, row, pen=Pen.STRONG))
        y -= _AFTER_TITLE
        drawn, high = _map(on, metrics)
        shapes += Placing(0, 0, y - high).shapes(drawn)
        y -= high + _AFTER_MAP
    if not on.says:
        return Key(tuple(shapes), -y)
    for remark in remarks:
        rows = wrap(remark, SMALL, WIDE, metrics)
        for k, row in enumerate(rows):
            y -= leading(SMALL, tall=is_tall(row)) if k else metrics.ascent * SMALL
            shapes.append(Text(Point(0, y), SMALL, row))
        y -= _AFTER_REMARK
    y -= _BEFORE_SIGNS - _AFTER_REMARK
    for entry in signs(on, words):
        rows = wrap(entry.words, SMALL, WIDE - _WORDS_AT, metrics)
        half = max(2.6, metrics.cap * SMALL / 2)
        y -= half
        shapes += Placing(0, _SAMPLE / 2, y).shapes(entry.sample)
        base = y - metrics.cap * SMALL / 2
        for k, row in enumerate(rows):
            base -= leading(SMALL, tall=is_tall(row)) if k else 0.0
            shapes.append(Text(Point(_WORDS_AT, base), SMALL, row))
        y = min(y - half, base - _ENTRY)
    return Key(tuple(shapes), -y)


def _map(on: OnSheet, metrics: FontMetrics) -> tuple[list[Shape], float]:
    """All pieces from the lower left, mine filled; numbers where they have room."""
    wide = min(_CELL, WIDE / on.across, _MOST / on.up / _HIGH * _CELL)
    high = wide * _HIGH / _CELL
    shapes: list[Shape] = []
    for k in range(on.total):
        row, column = divmod(k, on.across)
        outline = rectangle(column * wide, row * high, (column + 1) * wide, (row + 1) * high, Pen.OUTLINE)
        mine = k + 1 == on.number
        if mine:
            shapes.append(filled(outline.points(), Pen.HELD))
        shapes.append(outline)
        size, pen = LEAD if wide == _CELL else SMALL, Pen.STRONG if mine else Pen.TEXT
        said, cap = str(k + 1), metrics.cap * size
        long = metrics.width(said, size, pen)
        if long + 2 * _AIR <= wide and cap + 2 * _AIR <= high:
            at = Point((column + 0.5) * wide - long / 2, (row + 0.5) * high - cap / 2)
            shapes.append(Text(at, size, said, pen=pen))
    return shapes, on.up * high


def signs(on: OnSheet, words: Catalogue) -> Iterator[Entry]:
    """What the lines, the crosses and the grey mean."""
    half = _SAMPLE / 2
    for role, pen in (
        (Grid.IS_ONE, Pen.GRID),
        (Grid.IS_TEN, Pen.GRID_TEN),
        (Grid.IS_LIMIT, Pen.LIMIT),
        (Grid.IS_CENTRE, Pen.CENTRE),
    ):
        yield Entry((line(Point(-half, 0), Point(half, 0), pen),), words.say(role))
    if on.total > 1:
        cut = (line(Point(-half, 0), Point(half, 0), Pen.CUT), *scissors(Point(-half + 2, 0)))
        yield Entry(cut, words.say(Grid.IS_CUT))
        yield Entry((*cross(Point(0, 0), 2.4, Pen.HELP), circle(Point(0, 0), 1.5, Pen.HELP)), words.say(Grid.IS_CROSS))
        corners = (Point(-half, -1.8), Point(half, -1.8), Point(half, 1.8), Point(-half, 1.8))
        yield Entry((filled(corners, Pen.TINT),), words.say(Grid.IS_UNDER))
    yield Entry(cross(Point(0, 0), 1.2, Pen.HELP), words.say(Grid.IS_SMALL_CROSS))
