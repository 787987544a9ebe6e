"""A sheet with parts of several boxes beside each other: crop marks, the order of cuts, and all words in its gutter."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Box, Point, Shape, Text
from layout.drawing.sheet import Sheet, painted
from layout.drawing.typeset import SMALL, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles.run import RunSheet
from layout.paper.area import SIDE
from layout.paper.code import Modules, code, code_box
from layout.paper.head import tile_of
from layout.paper.regions import FIELD, GUTTER, HEAD_HIGH, regions
from layout.paper.scales import INCHES, upright
from layout.paper.sheets import Printed
from layout.paper.targets import target_boxes, targets
from layout.plan import Plan
from layout.run.bed import RunBed
from layout.run.imposing import Placed, boxes_of
from layout.run.marks import box_around, crop_marks, cut_numbers, margins_of

PLACED_SHEET = "placed-sheet"
"""The name of such a sheet, before its number."""

TILE = "B"

_FIRST, _APART, _MOST = 10.3, 3.1, 4
"""The first line of words, which run upward, from the left edge of the sheet; from line to line; how many there are."""

_INK = 0.6  # mm that the lines of a part reach past its edge
_SCALE_X, _SCALE_UP, _OVER, _UNDER = 18.6, 32.7, 9.4, 34.0


class Gutter(NamedTuple):
    """What the gutter says: of which range, the sheet's number, how often it is printed, the names of its kits."""

    range: str
    number: int
    total: int
    times: int
    kits: tuple[str, ...]


def run_sheet(
    placed: Placed, said: Gutter, bed: RunBed, words: Catalogue, metrics: FontMetrics, modules: Modules | None = None
) -> Printed:
    """The sheet, and the pieces on it in the order in which their crosses were drawn."""
    grid = regions(bed.paper)
    gutter = [*_words(said, bed, words, metrics), *upright(Point(_SCALE_X, _SCALE_UP), words, metrics)]
    taken = [*_gutter_boxes(bed), code_box(grid)]
    pieces = list(boxes_of(placed.pieces))
    inked = [(left - _INK, low - _INK, right + _INK, high + _INK) for left, low, right, high in pieces]
    whites = target_boxes(bed.paper, [*taken, *inked])
    marks = crop_marks(placed.cuts, pieces, bed, whites)
    besides = [*whites, *taken, *map(box_around, marks), *margins_of(bed)]
    shapes: list[Shape] = [
        *tile_of(TILE, grid, metrics),
        *gutter,
        *code(modules, grid),
        *targets(bed.paper, [*taken, *inked]),
        *marks,
        *cut_numbers(placed.cuts, pieces, bed, besides, metrics),
    ]
    for part, placing in placed.pieces:
        shapes += placing.shapes(part.shapes)
    width, height = bed.paper.width, bed.paper.height
    return Printed(Sheet(f"{PLACED_SHEET} {said.number}", width, height, painted(shapes)), placed.pieces)


def gutter_words(said: Gutter, words: Catalogue) -> list[str]:
    """The messages in the gutter; the kits by name last."""
    return [
        words.say(RunSheet.PLACED, range=said.range, number=said.number, total=said.total),
        words.say(RunSheet.CUT, times=said.times),
        words.say(RunSheet.HOLDS, kits=words.listed(said.kits)),
    ]


def _words(said: Gutter, bed: RunBed, words: Catalogue, metrics: FontMetrics) -> list[Text]:
    """Lines that run upward; where the names of the kits have no room, how many there are."""
    low = _SCALE_UP + INCHES + _OVER
    room = bed.paper.height - _UNDER - low
    messages = gutter_words(said, words)
    lines = [line for each in messages for line in wrap(each, SMALL, room, metrics)]
    if len(lines) > _MOST:
        messages[-1] = words.say(RunSheet.HOLDS_MANY, kits=len(said.kits))
        lines = [line for each in messages for line in wrap(each, SMALL, room, metrics)]
    return [Text(Point(_FIRST + k * _APART, low), SMALL, line, angle=90.0) for k, line in enumerate(lines)]


def _gutter_boxes(bed: RunBed) -> list[Box]:
    """What tile, words and scale take; a target stands between the words and the scale."""
    right, top = SIDE + GUTTER, bed.paper.height
    words_low = _SCALE_UP + INCHES + _OVER
    return [
        (SIDE, top - FIELD - HEAD_HIGH, right, top - FIELD),
        (SIDE, words_low, right, top - _UNDER),
        (SIDE, _SCALE_UP - 1.0, right, _SCALE_UP + INCHES + 1.0),
    ]


def called(plan: Plan) -> str:
    """What a sheet with parts of many calls one of them: its order, or its kit where that is of no order."""
    return plan.ordered or plan.kit.name


def names_on(placed: Placed, names: Sequence[str]) -> tuple[str, ...]:
    """The names of the kits whose parts lie on a sheet, in the order of the range."""
    return tuple(names[kit] for kit in sorted(set(placed.kits)))
