"""The leaflet for the box: the whole work on one frame, on a sheet that is folded to four panels.

Where its steps find no room on one sheet, they go on on another. On small paper a leaf is not folded.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross, line
from layout.drawing.sheet import Part
from layout.messages.roles import Leaflet, SheetName
from layout.parts.leaflet.foot import foot_of
from layout.parts.leaflet.panels import Room, filled, panels_of, set_step
from layout.parts.leaflet.steps import leaflet_steps
from layout.parts.leaflet.trimmed import around, trimmed
from layout.plan import Plan

LEAFLET = "leaflet"
"""What each leaf is called."""

_ARM = 0.5


def leaflet(plan: Plan, room: Room, metrics: FontMetrics) -> tuple[Part, ...]:
    """Every leaf of a plan's leaflet in a `room` of that size."""
    foot, high = foot_of(plan, room, metrics)
    panels = panels_of(room, high)
    steps = [set_step(plan, k, each, panels[0].wide, metrics) for k, each in enumerate(leaflet_steps(plan), 1)]
    folds = _folds(room)
    block = trimmed(plan, metrics) if room.trimmed else []
    leaves = list(filled(panels, steps))
    return tuple(
        _part(plan, (*shapes, *folds, *foot, *block), room, len(steps), (number, len(leaves)))
        for number, shapes in enumerate(leaves, 1)
    )


def bare_leaflet(plan: Plan, leaves: int = 1) -> Part:
    """The last of so many leaves without anything on it, which says beside itself what any of them does."""
    return _part(plan, (), Room(1.0, 1.0, 1, None), len(leaflet_steps(plan)), (leaves, leaves))


def _part(plan: Plan, shapes: tuple[Shape, ...], room: Room, count: int, leaf: tuple[int, int]) -> Part:
    number, total = leaf
    several = plan.words.say(Leaflet.LEAF, number=number, total=total)
    low, right = -room.high + _ARM, room.half - _ARM
    box = (-room.half, -room.high, room.half, 0.0)
    datum = Point(-right, low), Point(right, low), Point(right, -_ARM)
    hairs = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part(
        LEAFLET,
        plan.words.say(SheetName.NAME_LEAFLET),
        (*shapes, *hairs),
        datum,
        around(box) if room.trimmed else box,
        whole=True,
        purpose=plan.words.say(SheetName.PURPOSE_LEAFLET, count=count),
        measured=False,
        numbered=several if total > 1 else plan.words.say(Leaflet.INSIDE),
    )


def _folds(room: Room) -> list[Shape]:
    """Where the sheet is folded, between its crosses."""
    shapes: list[Shape] = []
    if room.columns > 1:
        shapes.append(line(Point(0, -2 * _ARM), Point(0, -room.high + 2 * _ARM), Pen.FOLD))
    if room.fold is not None:
        shapes.append(line(Point(-room.half, -room.fold), Point(room.half, -room.fold), Pen.FOLD))
    return shapes
