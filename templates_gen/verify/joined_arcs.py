"""Arcs that were parted so that a stretched circle is drawn true: put together again, once they are taken back."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence

from layout.drawing.shapes import Curve, Point, Step
from templates_gen.verify import LIMIT

Moved = Callable[[Point], Point]
"""Where a point that was drawn comes out."""


def joined(found: Curve, wanted: Curve, moved: Moved) -> Curve | None:
    """A path whose points are moved. Arcs that were parted to be corrected are one again where that is what is wanted.

    All along them they must lie on the wanted arc, else None. Each keeps its own end, and passes through the middle of
    the arc on which its own points lie.
    """
    left, steps = list(found.steps), []
    start, begin = wanted.start, found.start
    for end, through in wanted.steps:
        taken: list[Step] = []
        while left and not (taken and math.dist(moved(taken[-1].end), end) <= LIMIT):
            taken.append(left.pop(0))
        if not taken:
            break
        if through is None or any(step.through is None for step in taken):
            steps += [Step(moved(each), inner and moved(inner)) for each, inner in taken]
        else:
            points = list(map(moved, _along(begin, taken)))
            if not all(_off_arc(at, start, through, end) <= LIMIT for at in points):
                return None
            inner = min(points[:-1], key=lambda at: math.dist(at, through))
            steps.append(Step(points[-1], _middle(moved(begin), inner, points[-1])))
        start, begin = end, taken[-1].end
    rest = [Step(moved(each), inner and moved(inner)) for each, inner in left]
    return Curve(moved(found.start), (*steps, *rest), found.pen, found.closed)


def _along(start: Point, arcs: Sequence[Step]) -> Iterator[Point]:
    """Points along arcs, as they are drawn: at every quarter of each."""
    for end, through in arcs:
        middle = through or end
        centre = _centre(start, middle, end)
        for one, other in ((start, middle), (middle, end)):
            yield _between(one, other, centre)
            yield other
        start = end


def _between(one: Point, other: Point, centre: Point | None) -> Point:
    """The middle of the shorter arc between two points about a centre; of their chord without one."""
    chord = Point((one.x + other.x) / 2, (one.y + other.y) / 2)
    if centre is None:
        return chord
    share = math.dist(one, centre) / math.dist(chord, centre)
    return Point(centre.x + (chord.x - centre.x) * share, centre.y + (chord.y - centre.y) * share)


def _middle(start: Point, inner: Point, end: Point) -> Point:
    """The middle of the arc from start to end through an inner point, from the circle's own middle; that of the chord
    where they are in line."""
    centre = _centre(start, inner, end)
    chord = Point((start.x + end.x) / 2, (start.y + end.y) / 2)
    if centre is None:
        return chord
    radius = math.dist(centre, start)
    along, up = end.x - start.x, end.y - start.y
    side = 1.0 if along * (inner.y - start.y) - up * (inner.x - start.x) > 0 else -1.0
    long = math.hypot(along, up)
    away = Point(-up / long * side, along / long * side)  # from the chord to the side of the inner point
    reach = (centre.x - chord.x) * away.x + (centre.y - chord.y) * away.y
    return Point(chord.x + away.x * (reach + radius), chord.y + away.y * (reach + radius))


def _centre(one: Point, two: Point, three: Point) -> Point | None:
    """The middle of the circle through three points; None where they are in one line."""
    ax, ay, bx, by = two.x - one.x, two.y - one.y, three.x - one.x, three.y - one.y
    cross = 2 * (ax * by - ay * bx)
    if abs(cross) < _STRAIGHT:
        return None
    aa, bb = ax * ax + ay * ay, bx * bx + by * by
    return Point(one.x + (by * aa - ay * bb) / cross, one.y + (ax * bb - bx * aa) / cross)


_STRAIGHT = 1e-9


def _off_arc(at: Point, start: Point, through: Point, end: Point) -> float:
    """How far a point lies off the circle through three others, in mm; off their line where they are in one."""
    centre = _centre(start, through, end)
    if centre is not None:
        return abs(math.dist(at, centre) - math.dist(start, centre))
    along, up = end.x - start.x, end.y - start.y
    return abs((at.x - start.x) * up - (at.y - start.y) * along) / (math.hypot(along, up) or 1.0)
