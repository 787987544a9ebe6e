"""The panels of a leaflet: how a sheet is folded, and which steps find room in each panel."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD
from layout.parts.leaflet.pictures.ground import HIGH, WIDE
from layout.parts.leaflet.pictures.pictures import STEP_PICTURES
from layout.parts.leaflet.steps import LeafletStep
from layout.parts.winding.lines import downward, rows_of
from layout.plan import Plan

FOLD_WHITE = 7.0
"""From a fold to what stands beside it, in mm."""

UNDER_FOLD = 8.65, 4.0
"""From a fold to what stands under it, in mm: as it is best, and at least."""

_OVER_FOLD = 2.5
_MOST = 3  # steps in a panel of a folded sheet
_WORDS, _TO_TITLE, _RING_AT = WIDE + 5.0, 6.6, WIDE + 7.4
_TITLE, _FIRST, _UNDER = 3.8, 6.6, 1.2
_PITCH, _GAP = 32.5, 3.0
_SAME = 1e-6
_CROSS = 1.0  # the cross in the corner of a leaf is so wide


class Room(NamedTuple):
    """What a leaf has: `half` its width to either side of the middle and `high`, in mm.

    It is folded upright in the middle where it has two columns, and so far down as `fold` where it has one there. On
    larger paper it is a `trimmed` block.
    """

    half: float
    high: float
    columns: int
    fold: float | None
    trimmed: bool = False


class Panel(NamedTuple):
    """A place for steps: its left edge, its top, how wide and how high it is."""

    left: float
    top: float
    wide: float
    high: float


def panels_of(room: Room, foot: float, under: float) -> tuple[Panel, ...]:
    """The panels of a leaf, in the order in which they are read: row by row.

    Its foot is so high, and the lower ones begin so far `under` the fold.
    """
    spans = [(0.0, room.high - foot)]
    if room.fold is not None:
        spans = [(0.0, room.fold - _OVER_FOLD), (room.fold + under, room.high - foot)]
    if room.columns == 1:
        lefts, wide = [-room.half], 2 * room.half
    else:
        lefts, wide = [-room.half, FOLD_WHITE], room.half - FOLD_WHITE
    return tuple(Panel(left, top, wide, low - top) for top, low in spans for left in lefts)


class SetStep(NamedTuple):
    """A step that hangs down from (0, 0), and how far."""

    shapes: tuple[Shape, ...]
    high: float


def set_step(plan: Plan, number: int, step: LeafletStep, wide: float, metrics: FontMetrics) -> SetStep:
    """The picture, beside it the number in a ring, the title, and under that what is done."""
    shapes: list[Shape] = Placing(0, 0, -HIGH).shapes(STEP_PICTURES[step.picture](plan, metrics))
    shapes += ring(Point(_RING_AT, -RING - 0.2), str(number), metrics)
    titles = rows_of(step.title, LEAD, wide - _WORDS - _TO_TITLE - _CROSS, metrics, Pen.STRONG)
    named = downward(titles, LEAD, Point(_WORDS + _TO_TITLE, -_TITLE), metrics, pen=Pen.STRONG)
    rows = rows_of(step.words, LEAD, wide - _WORDS, metrics)
    said = downward(rows, LEAD, Point(_WORDS, named[-1].at.y - _FIRST), metrics)
    shapes += [*named, *said]
    return SetStep(tuple(shapes), max(HIGH, _UNDER - said[-1].at.y))


def too_high(panels: Sequence[Panel], steps: Sequence[SetStep]) -> float:
    """How much higher the highest step is than the lowest panel; nothing where all have room."""
    return max(0.0, max(step.high for step in steps) - min(panel.high for panel in panels) - _SAME)


def filled(panels: Sequence[Panel], steps: Sequence[SetStep]) -> Iterator[list[Shape]]:
    """Leaf by leaf what its panels hold: as many steps each as have room, three at most where a sheet is folded."""
    rest = list(steps)
    while rest:
        shapes: list[Shape] = []
        for panel in panels:
            y = 0.0
            for _ in range(_MOST if len(panels) > 1 else len(rest)):
                if not rest or (y and y + rest[0].high > panel.high + _SAME):
                    break
                step = rest.pop(0)
                shapes += Placing(0, panel.left, -panel.top - y).shapes(step.shapes)
                y += max(_PITCH, step.high + _GAP)
        yield shapes
