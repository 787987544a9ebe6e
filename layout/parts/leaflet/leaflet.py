"""The leaflet for the box: the whole work on one frame, on a sheet that is folded to four panels.

Where its steps find no room on one sheet, they go on on another. On small paper a leaf is not folded.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross, line
from layout.drawing.sheet import Part
from layout.kit.box import LEAFLET
from layout.messages.roles import Leaflet, SheetName
from layout.messages.roles.order import OrderWord
from layout.parts.leaflet.foot import foot_of, last_of
from layout.parts.leaflet.panels import UNDER_FOLD, Room, filled, panels_of, set_step, too_high
from layout.parts.leaflet.steps import leaflet_steps
from layout.parts.leaflet.trimmed import around, trimmed
from layout.plan import Plan

_ARM = 0.5


def leaflet(plan: Plan, room: Room, metrics: FontMetrics) -> tuple[Part, ...]:
    """Every leaf of a plan's leaflet in a `room` of that size, as few as there can be.

    What else lies in the box stands in the foot of each leaf, or once, after the last step. Where a step has no room at
    all, the leaf is as much higher than the room.
    """
    wide = panels_of(room, 0.0, UNDER_FOLD[0])[0].wide
    steps = [set_step(plan, k, each, wide, metrics) for k, each in enumerate(leaflet_steps(plan), 1)]
    fixed = [*_folds(room), *(trimmed(plan, metrics) if room.trimmed else [])]
    found: list[tuple[float, list[list[Shape]]]] = []
    for in_foot, under in ((True, UNDER_FOLD[0]), (True, UNDER_FOLD[1]), (False, UNDER_FOLD[1])):
        foot, high = foot_of(plan, room, metrics, whole=in_foot)
        panels, last = panels_of(room, high, under), [] if in_foot else last_of(plan, wide, metrics)
        leaves = [[*shapes, *fixed, *foot] for shapes in filled(panels, [*steps, *last])]
        found.append((too_high(panels, steps), leaves))
        if found[-1][0] == 0 and len(leaves) == 1:
            break
    over, leaves = min(found, key=lambda way: (way[0], len(way[1])))
    higher = room._replace(high=room.high + over)
    return tuple(
        _part(plan, tuple(shapes), higher, len(steps), (number, len(leaves))) for number, shapes in enumerate(leaves, 1)
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
        purpose=_purpose(plan, count),
        measured=False,
        numbered=several if total > 1 else plan.words.say(Leaflet.INSIDE),
    )


def _purpose(plan: Plan, count: int) -> str:
    """How many steps there are, and for whom it was made where the kit says that."""
    purpose, buyer = plan.words.say(SheetName.PURPOSE_LEAFLET, count=count), plan.kit.order.buyer
    return plan.words.say(OrderWord.LEAFLET, buyer=buyer, purpose=purpose) if buyer else purpose


def _folds(room: Room) -> list[Shape]:
    """Where the sheet is folded, between its crosses."""
    shapes: list[Shape] = []
    if room.columns > 1:
        shapes.append(line(Point(0, -2 * _ARM), Point(0, -room.high + 2 * _ARM), Pen.FOLD))
    if room.fold is not None:
        shapes.append(line(Point(-room.half, -room.fold), Point(room.half, -room.fold), Pen.FOLD))
    return shapes
