"""The numbers of the actions in the picture: each in a ring where it is done, on the frame and in the view of its side.

No ring lies on a thread, a line or a word: where its usual place is taken it moves along.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, line
from layout.drawing.signs import ring, triangle
from layout.parts.winding.actions import Action, Place
from layout.parts.winding.clear import Taken
from layout.parts.winding.face import DOTS_AT, Face
from layout.parts.winding.kinds.loose_rod import rod_height
from layout.parts.winding.kinds.picture_kind import KNOT, Section

_KEPT, _WHITE, _TO_KNOT, _TO_DOTS, _TO_BAR = 0.85, 1.9, 0.9, 2.8, 2.1
_FIRST, _LAST, _PULL, _ASIDE, _UNDER_ROD = 0.36, 0.45, 0.74, 0.66, 0.3  # shares of the height
_SHAFT, _HEAD, _HEAD_WIDE = 1.4, 2.2, 1.8
_NUMBERS, _LOWEST = 5.4, 1.8
_ROD_PAST = 2.0


class Spot(NamedTuple):
    """Where a ring would stand best, and which ways it may move from there."""

    at: Point
    ways: Sequence[Point]


def rings(face: Face, section: Section, done: Sequence[Action], taken: Taken, metrics: FontMetrics) -> list[Shape]:
    """A ring for every action on the frame, and for what is seen of it from the side."""
    shapes: list[Shape] = []
    on_frame, at_side = _on_frame(face), _at_side(face, section)
    room = face.scale.inner / 2 - face.scale.ring - _KEPT
    beside = face.scale.outer / 2 + face.scale.ring + _KEPT
    for spots, low, high in ((on_frame, -room, room), (at_side, beside, face.scale.right - face.scale.ring)):
        for number, (_, place) in sorted(enumerate(done, 1), key=_knots_first):
            if spot := spots.get(place):
                begin = Point(min(max(spot.at.x, low), high), spot.at.y)
                at = taken.first_clear(begin, spot.ways, face.scale.ring, high if spots is at_side else math.inf)
                new = ring(at, str(number), metrics, face.scale.ring)
                if spots is on_frame and place is Place.PULL:
                    new += _pull(face, at)
                taken.add(new)
                shapes += new
    return shapes


def _knots_first(action: tuple[int, Action]) -> bool:
    """Knots have little room beside them."""
    return action[1].place not in (Place.TIE_ON, Place.TIE_OFF)


def _steps(*ways: tuple[float, float]) -> list[Point]:
    return [Point(x, y) for x, y in ways]


def _on_frame(face: Face) -> Mapping[Place, Spot]:
    """By place: beside what is done there, outside the warp."""
    toward, up, scale = face.plan.warp.toward, face.outward("far"), face.scale
    first, last, aside = face.way.legs[0], face.way.legs[-1], scale.ring + _WHITE
    (on, _), (off, _) = face.knots()
    to_knot = scale.ring + KNOT + _TO_KNOT
    out, back, along = (-toward, 0.0), (toward, 0.0), ((0.0, 1.0), (0.0, -1.0))
    second = face.way.legs[1]

    def beside(leg_x: float, side: int, share: float) -> Point:
        return Point(leg_x + side * toward * aside, face.up(share))

    share = _ASIDE if face.plan.warp.kind != "rod" else _UNDER_ROD
    lowest = _NUMBERS + _LOWEST + scale.ring
    spots = {
        Place.TIE_ON: Spot(Point(on.x - toward * to_knot, on.y), _steps(out, *along)),
        Place.FIRST: Spot(beside(face.along(first, face.up(_FIRST)).x, -1, _FIRST), _steps(*along, out)),
        Place.FAR_TURN: Spot(
            Point(face.kind.mark(face, first, "far") - toward * (aside + 0.6), face.inside("far", 0.5)),
            _steps(out, (0.0, up)),
        ),
        Place.NEAR_TURN: Spot(
            Point(face.kind.mark(face, second, "near"), face.height("near") - up * lowest),
            _steps((0.0, float(-up))),
        ),
        Place.GAP: Spot(beside(face.along(last, face.up(share)).x, 1, share), _steps(*along, back)),
        Place.LAST: Spot(beside(face.along(last, face.up(_LAST)).x, 1, _LAST), _steps(*along, back)),
        Place.PULL: Spot(
            Point(face.along(first, face.up(_PULL)).x - toward * (scale.ring + _SHAFT + _HEAD), face.up(_PULL)),
            _steps(*along),
        ),
        Place.TIE_OFF: Spot(Point(off.x + toward * to_knot, off.y), _steps(back, *along)),
    }
    if face.way.left_out:
        middle = Point(sum(face.way.gap) / 2, face.up(DOTS_AT) - _TO_DOTS - scale.ring)
        down, up_too = (0.0, -1.0), (0.0, 1.0)  # with a rod no words stand over the dots
        spots[Place.GAP] = Spot(middle, _steps(down, up_too) if face.plan.warp.kind == "rod" else _steps(down))
    return {**spots, **(_by_rod(face) if face.plan.warp.kind == "rod" else {})}


def _by_rod(face: Face) -> Mapping[Place, Spot]:
    """What is done at the ends of a loose rod."""
    toward, up, scale = face.plan.warp.toward, face.outward("far"), face.scale
    y, off = rod_height(face), toward * (face.way.half + _ROD_PAST + scale.ring + 1.0)
    high = up * (2 * scale.ring + 1.0)
    return {
        Place.TIE_ON: Spot(Point(-off, y), _steps((-toward, 0.0))),
        Place.PULL: Spot(_pulled(face), _steps((0.0, -1.0), (0.0, 1.0))),
        Place.LAST: Spot(Point(off, y + high), _steps((0.0, up), (0.0, -2.0 * up))),  # rather below than past the bar
        Place.TIE_OFF: Spot(Point(off, y), _steps((toward, 0.0))),
    }


def _pulled(face: Face) -> Point:
    """Under the rod, so that the arrow meets a thread alone."""
    x = face.along(face.way.legs[0], face.up(_ROD_PULL)).x
    return Point(x - face.plan.warp.toward * (face.scale.ring + _SHAFT + _HEAD), face.up(_ROD_PULL))


_ROD_PULL = 0.56


def _pull(face: Face, at: Point) -> list[Shape]:
    """An arrow from a ring to the first pass."""
    toward = face.plan.warp.toward
    tip = face.along(face.way.legs[0], at.y).x - toward * Pen.THREAD.ink.width / 2
    begin = at.x + toward * face.scale.ring
    shaft = line(Point(begin, at.y), Point(tip - toward * (_HEAD - 0.3), at.y), Pen.OUTLINE)
    return [shaft, triangle(Point(tip, at.y), Point(toward, 0), _HEAD, _HEAD_WIDE)]


def _at_side(face: Face, section: Section) -> Mapping[Place, Spot]:
    """By place, as it is seen from the right."""
    up, scale, x = face.outward("far"), face.scale, face.side_x
    along: Iterable[tuple[float, float]] = ((0.0, 1.0), (0.0, -1.0))
    aside = scale.ring + _WHITE
    to_knot = scale.ring + KNOT + _TO_KNOT
    y = face.up(_FIRST)
    off = section.half if not section.slope else section.slope * (0.5 - _FIRST) * scale.reach
    side = 1 if section.rod else -1
    spots = {
        Place.TIE_ON: Spot(Point(section.knot.x + side * to_knot, section.knot.y), _steps(*along, (float(side), 0.0))),
        Place.FIRST: Spot(Point(x - off - aside, y), _steps(*along, (-1.0, 0.0))),
        Place.FAR_TURN: Spot(Point(x, face.height("far") + up * (scale.ring + _TO_BAR)), _steps((0.0, up))),
        Place.NEAR_TURN: Spot(Point(x, face.height("near") - up * (scale.ring + _TO_BAR)), _steps((0.0, -up))),
    }
    if section.rod:
        spots[Place.FAR_TURN] = Spot(Point(x + off + aside, face.up(0.9)), _steps((0.0, up)))
        del spots[Place.NEAR_TURN]
    return spots
