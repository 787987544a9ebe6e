"""The head of a sheet: its tile, its name, what it is for, the kit, its number, and how far the work has come."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import accumulate
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Region, Shape, Text, rectangle
from layout.drawing.typeset import FIGURE, LEAD, LEADING, NAME, SMALL, is_tall, longest_word, wrap
from layout.drawing.weave_mark import weave_mark
from layout.paper.area import SIDE, TOP
from layout.paper.regions import BODY, COLUMN_RIGHT, FIELD, HEAD_HIGH, Regions
from layout.paper.small_warp import WARP_WIDE, small_warp

WEAVE = "weave"
"""The tile of a sheet that is about the whole work: the mark of plain weave instead of a number."""

_NAME, _PURPOSE, _KIT, _FIGURE = 23.75, 29.95, 20.0, 26.77  # baselines, from the top of the sheet
_LEADINGS = {NAME: 8.4, FIGURE: 6.2, LEAD: 4.6, SMALL: 3.6}
_UNDER, _LOWER, _BESIDE, _WHITE = 6.05, 2.0, 4.0, 8.0
_TARGET = 2.5  # half of the top target with its white, and a little more


@dataclass(frozen=True, slots=True)
class Head:
    """What the head says.

    `tile` is a number, a letter, `WEAVE` or nothing; `facts` the warp in few words; `number` which sheet this is.
    `step` of the work is how far the pick of the small warp has come; a sheet of no step, 0, has no small warp. A
    `narrow` head ends where the column of text does, beside parts that stand as high as the sheet. Room is kept for the
    `widest` number, so that a sheet is laid out the same whichever number it gets.
    """

    tile: str
    name: str
    purpose: str
    kit: str
    facts: str
    number: str
    step: int = 0
    narrow: bool = False
    widest: str = ""


class _Row(NamedTuple):
    """Words on a baseline `down` from the top of the sheet, which begin at `x`, or end there if `ends`."""

    words: str
    size: float
    pen: Pen
    x: float
    down: float
    ends: bool = False


def head(said: Head, regions: Regions, metrics: FontMetrics) -> tuple[list[Shape], Box]:
    """The shapes of the head, and the box that it takes: as far down as to where the body begins.

    Nothing shrinks and nothing is cut short: what has no room beside something else goes under it.
    """
    right = min(COLUMN_RIGHT, regions.right) if said.narrow else regions.right
    rows = _rows(said, regions, right, metrics)
    shapes: list[Shape] = [
        *tile_of(said.tile, regions, metrics),
        *(_set(row, regions.height, metrics) for row in rows if row.words),
    ]
    number = rows[0]
    if said.step:
        shapes += small_warp(said.step, Point(right, regions.height - number.down))
    body = max(BODY, 2 * math.ceil((max(row.down for row in rows) + _WHITE) / 2 - 1e-9))
    edge = right if said.narrow else regions.width - SIDE
    return shapes, (SIDE, regions.height - body, edge, regions.height - TOP)


def _rows(said: Head, regions: Regions, right: float, metrics: FontMetrics) -> list[_Row]:
    """All rows of words, the number of the sheet first."""
    left, width = regions.left, right - regions.left
    reach = width if not is_tall(said.name) else min(width, regions.width / 2 - _TARGET - left)
    size = NAME if longest_word(said.name, NAME, metrics, Pen.STRONG) <= reach else FIGURE  # no word is broken
    names = _wrapped(said.name, size, reach, metrics, Pen.STRONG)
    beside = None
    if regions.roomy and len(names) == 1:
        free = width - metrics.width(names[0], size, Pen.STRONG) - _BESIDE
        beside = _kit_beside(said, right, free, metrics, lines=1 if said.narrow else 2)
    lower = _LOWER if beside and len(beside) > 2 else 0.0
    ends = right - WARP_WIDE if said.step else right
    number = max(metrics.width(words, SMALL) for words in (said.number, said.widest))
    taken = right - ends + number + _BESIDE
    if lower:  # the facts stand nearly as low
        taken = max(taken, metrics.width(said.facts, SMALL) + _BESIDE)
    purpose = _wrapped(said.purpose, LEAD, width - taken, metrics, Pen.TEXT)
    named = [
        _Row(row, size, Pen.STRONG, left, down) for row, down in zip(names, _downs(names, size, _NAME), strict=True)
    ]
    down = _PURPOSE + named[-1].down - _NAME
    rows = [_Row(said.number, SMALL, Pen.TEXT, ends, down + lower, ends=True), *named]
    rows += [_Row(row, LEAD, Pen.TEXT, left, at) for row, at in zip(purpose, _downs(purpose, LEAD, down), strict=True)]
    if beside is None:
        under = _UNDER if purpose else 0.0  # a sheet without a purpose has the place of that line to give
        room = width if purpose else width - taken
        beside = _kit_under(said, left, room, max(row.down for row in rows) + under, metrics)
    return rows + beside


def _kit_beside(said: Head, right: float, free: float, metrics: FontMetrics, *, lines: int) -> list[_Row] | None:
    """Kit and facts at the right of a name that leaves `free` mm to them; None where they need more."""
    kits = [said.kit]
    if metrics.width(said.kit, SMALL, Pen.STRONG) > free:
        if any(metrics.width(word, SMALL, Pen.STRONG) > free for word in said.kit.split()):
            return None
        kits = _wrapped(said.kit, SMALL, free, metrics, Pen.STRONG)
    if len(kits) > lines or metrics.width(said.facts, SMALL) > free:
        return None
    return _kit_rows(kits, [said.facts], right, _KIT, ends=True)


def _kit_under(said: Head, left: float, width: float, down: float, metrics: FontMetrics) -> list[_Row]:
    kits = _wrapped(said.kit, SMALL, width, metrics, Pen.STRONG)
    return _kit_rows(kits, _wrapped(said.facts, SMALL, width, metrics, Pen.TEXT), left, down, ends=False)


def _kit_rows(kits: list[str], facts: list[str], x: float, down: float, *, ends: bool) -> list[_Row]:
    said = [*((kit, Pen.STRONG) for kit in kits), *((fact, Pen.TEXT) for fact in facts)]
    downs = _downs([*kits, *facts], SMALL, down)
    return [_Row(words, SMALL, pen, x, at, ends) for (words, pen), at in zip(said, downs, strict=True)]


def _downs(rows: list[str], size: float, first: float) -> list[float]:
    """The baselines of `rows`: further apart where an accent stands on a capital."""
    plain = _LEADINGS[size]
    steps = [max(plain, LEADING * size) if is_tall(words) else plain for words in rows[1:]]
    return list(accumulate(steps, initial=first))[: len(rows)]


def _wrapped(words: str, size: float, width: float, metrics: FontMetrics, pen: Pen) -> list[str]:
    """`words` in lines of at most `width`, measured in the letters of `pen`."""
    return wrap(words, size, width, metrics if pen is Pen.TEXT else replace(metrics, advances=metrics.strong))


def _set(row: _Row, height: float, metrics: FontMetrics) -> Text:
    x = row.x - metrics.width(row.words, row.size, row.pen) if row.ends else row.x
    return Text(Point(x, height - row.down), row.size, row.words, pen=row.pen)


def tile_of(tile: str, regions: Regions, metrics: FontMetrics) -> list[Shape]:
    """The black square in the left gutter, as high as the head, with what it shows in white; nothing for no tile."""
    low, top = regions.height - FIELD - HEAD_HIGH, regions.height - FIELD
    square = rectangle(SIDE, low, SIDE + HEAD_HIGH, top, Pen.SOLID)
    if tile == WEAVE:
        return [weave_mark(Point(SIDE, low))]
    if not tile:
        return []
    x = SIDE + (HEAD_HIGH - metrics.width(tile, NAME, Pen.ON_BLACK)) / 2
    return [Region((square,), Pen.SOLID), Text(Point(x, regions.height - _FIGURE), NAME, tile, pen=Pen.ON_BLACK)]
