"""Closed outlines with straight sides whose corners may be rounded: each round runs smoothly into its neighbours."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, arc
from layout.messages.roles import CutNeed
from layout.values.errors import LayoutError
from layout.values.numerals import say_fixed

_NOTHING = 1e-9  # mm: a side that two rounds have used up


class Corner(NamedTuple):
    """A corner of an outline, rounded with `radius` mm (0: left sharp)."""

    x: float
    y: float
    radius: float = 0.0


class _Round(NamedTuple):
    """Where the round of a corner begins and ends, and its steps; a sharp corner has none."""

    begin: Point
    end: Point
    steps: tuple[Step, ...]
    taken: float


def outline(corners: Sequence[Corner], pen: Pen = Pen.THROUGH) -> Curve:
    """The closed path round `corners`; LayoutError where two rounds need more than the side between them."""
    rounds = [_round(corners[k - 1], corner, corners[(k + 1) % len(corners)]) for k, corner in enumerate(corners)]
    steps: list[Step] = []
    for k in range(1, len(corners) + 1):
        before, here = rounds[k - 1], rounds[k % len(corners)]
        one, other = corners[k - 1], corners[k % len(corners)]
        left = math.dist(one[:2], other[:2]) - before.taken - here.taken
        if left < -_NOTHING:
            raise LayoutError(CutNeed.ROUNDS, over=say_fixed(-left, 3))
        if left > _NOTHING:
            steps.append(Step(here.begin))
        steps += here.steps
    if steps[-1].through is None:  # the closing of the path draws this side
        steps.pop()
    return Curve(rounds[0].end, tuple(steps), pen, closed=True)


def _round(before: Corner, corner: Corner, after: Corner) -> _Round:
    into, out = _direction(before, corner), _direction(corner, after)
    turn = math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y)
    at = Point(corner.x, corner.y)
    if corner.radius == 0 or abs(turn) < _NOTHING:
        return _Round(at, at, (), 0.0)
    taken = corner.radius * math.tan(abs(turn) / 2)
    begin = Point(at.x - into.x * taken, at.y - into.y * taken)
    end = Point(at.x + out.x * taken, at.y + out.y * taken)
    side = math.copysign(corner.radius, turn)
    centre = Point(begin.x - into.y * side, begin.y + into.x * side)
    first = math.degrees(math.atan2(begin.y - centre.y, begin.x - centre.x))
    *others, (_, through) = arc(centre, corner.radius, first, first + math.degrees(turn))
    return _Round(begin, end, (*others, Step(end, through)), taken)


def _direction(one: Corner, other: Corner) -> Point:
    length = math.dist(one[:2], other[:2])
    return Point((other.x - one.x) / length, (other.y - one.y) / length)


def boxed(left: float, bottom: float, right: float, top: float, radius: float = 0.0) -> list[Corner]:
    """The corners of a rectangle, counter-clockwise from its lower left one, all rounded alike."""
    places = ((left, bottom), (right, bottom), (right, top), (left, top))
    return [Corner(x, y, radius) for x, y in places]


def turned_back(path: Curve) -> Curve:
    """The same closed path the other way round."""
    points = path.points()
    steps = [*path.steps] if math.dist(points[0], points[-1]) < _NOTHING else [*path.steps, Step(path.start)]
    starts = [path.start, *(step.end for step in steps)]
    back = [Step(starts[k], steps[k].through) for k in reversed(range(len(steps)))]
    if back[-1].through is None:
        back.pop()
    return Curve(path.start, tuple(back), path.pen, path.closed)


def area(path: Curve) -> float:
    """The area in mm2 of the polygon through every end and middle, positive where the path runs counter-clockwise."""
    corners = [path.start]
    for end, through in path.steps:
        corners += [end] if through is None else [through, end]
    pairs = zip(corners, (*corners[1:], corners[0]), strict=True)
    return sum(one.x * other.y - other.x * one.y for one, other in pairs) / 2
