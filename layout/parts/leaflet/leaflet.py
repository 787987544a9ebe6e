"""The leaflet for the box: the whole work on one frame, on a sheet that is folded to four panels.

Where its steps find no room on one sheet, they go on on another. On small paper a leaf is not folded.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL
from layout.messages.roles import Leaflet, Winding
from layout.parts.leaflet.in_box import in_box
from layout.parts.leaflet.panels import FOLD_WHITE, Room, filled, panels_of, set_step
from layout.parts.leaflet.steps import leaflet_steps
from layout.parts.winding.kinds.pictures import picture_of
from layout.parts.winding.lines import rows_of, step_of
from layout.plan import Plan

LEAFLET = "leaflet"
"""What its first leaf is called; the others have their number behind it."""

_ARM, _BASE, _OVER_FOOT = 0.5, 2.4, 4.0
_SAMPLE, _TO_WORDS, _BETWEEN = 10.0, 2.0, 6.0


def leaflet(plan: Plan, room: Room, metrics: FontMetrics) -> tuple[Part, ...]:
    """Every leaf of a plan's leaflet in a `room` of that size."""
    foot, high = _foot(plan, room, metrics)
    panels = panels_of(room, high)
    steps = [set_step(plan, k, each, panels[0].wide, metrics) for k, each in enumerate(leaflet_steps(plan), 1)]
    folds = _folds(room, high)
    return tuple(
        _part(plan, number, (*shapes, *folds, *foot), len(steps), room)
        for number, shapes in enumerate(filled(panels, steps), 1)
    )


def bare_leaflet(plan: Plan) -> Part:
    """A leaf of nothing, which says beside itself what any does."""
    return _part(plan, 1, (), len(leaflet_steps(plan)), Room(1.0, 1.0, 1, None))


def _part(plan: Plan, number: int, shapes: tuple[Shape, ...], count: int, room: Room) -> Part:
    low, right = -room.high + _ARM, room.half - _ARM
    datum = Point(-right, low), Point(right, low), Point(right, -_ARM)
    hairs = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part(
        LEAFLET if number == 1 else f"{LEAFLET}-{number}",
        plan.words.say(Leaflet.NAME),
        (*shapes, *hairs),
        datum,
        (-room.half, -room.high, room.half, 0.0),
        whole=True,
        purpose=plan.words.say(Leaflet.PURPOSE, count=count),
        measured=False,
    )


def _folds(room: Room, foot: float) -> list[Shape]:
    """Where the sheet is folded, between its crosses."""
    shapes: list[Shape] = []
    if room.columns > 1:
        shapes.append(line(Point(0, -2 * _ARM), Point(0, -room.high + 2 * _ARM), Pen.FOLD))
    if room.fold is not None:
        shapes.append(line(Point(-room.half, -room.fold), Point(room.half, -room.fold), Pen.FOLD))
    return shapes


def _foot(plan: Plan, room: Room, metrics: FontMetrics) -> tuple[list[Shape], float]:
    """The caution and what else lies in the box, the legend, and how high they stand."""
    one = room.columns == 1
    wide = 2 * room.half if one else room.half - FOLD_WHITE
    said = [plan.words.say(Leaflet.TENSION)]
    if in_box(plan, "wrap-gauge", "wrap-gauge-cut"):
        said.append(plan.words.say(Leaflet.GAUGE))
    rows = [row for each in said for row in rows_of(each, SMALL, wide, metrics)]
    step = step_of(rows, SMALL)
    base = -room.high + _BASE
    shapes: list[Shape] = [Text(Point(-room.half, base + k * step), SMALL, row) for k, row in enumerate(reversed(rows))]
    high = _BASE + len(rows) * step
    left, low = (-room.half, base + len(rows) * step + 0.6) if one else (FOLD_WHITE, base)
    legend, lines = _legend(plan, room, left, low, wide, metrics)
    high = high + lines * step + 0.6 if one else max(high, _BASE + lines * step)
    return [*shapes, *legend], high + _OVER_FOOT


def _legend(
    plan: Plan, room: Room, left: float, base: float, wide: float, metrics: FontMetrics
) -> tuple[list[Shape], int]:
    """What the lines mean, upward from a baseline, and in how many rows."""
    say, behind = plan.words.say, picture_of(plan.kit.frame.ends, plan.warp.winding).behind
    entries = [(Pen.THREAD, say(Winding.ON_FACE))]
    entries += [(Pen.THREAD_BACK, say(behind))] if behind else []
    entries += [(Pen.FOLD, say(Leaflet.FOLD))] if room.columns > 1 else []
    placed: list[tuple[int, float, Pen, str]] = []
    x, row = 0.0, 0
    for pen, said in entries:
        width = _SAMPLE + _TO_WORDS + metrics.width(said, SMALL)
        if x and x + width > wide:
            x, row = 0.0, row + 1
        placed.append((row, x, pen, said))
        x += width + _BETWEEN
    step = step_of([said for _, said in entries], SMALL)
    shapes: list[Shape] = []
    for at, off, pen, said in placed:
        y = base + (row - at) * step
        middle = y + metrics.cap * SMALL / 2
        shapes.append(line(Point(left + off, middle), Point(left + off + _SAMPLE, middle), pen))
        shapes.append(Text(Point(left + off + _SAMPLE + _TO_WORDS, y), SMALL, said))
    return shapes, row + 1
