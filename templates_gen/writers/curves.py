"""Arcs through three points, as the file formats want them: Bézier handles, radii and turns, few and long."""

from __future__ import annotations

import math

from layout.drawing.arcs import halved, radius, turn
from layout.drawing.shapes import Curve, Point, Step

_LEAST, _MOST = math.radians(59), math.radians(90.01)
"""The turn of an arc that is written for its two halves; one of less may be mistaken for a half by who reads it."""

_LARGEST = 3.5
"""The radius of such an arc in mm, at most: programs that draw a quarter of a circle as one Bézier curve are 0.027 % of
its radius off it, here less than a micrometre."""

_LONG, _SAME = 0.05, 1e-6  # mm: the chord of such an arc, at least; so near are two points that are one


def handles(start: Point, through: Point, end: Point) -> tuple[float, float, float, float]:
    """The two control points, x and y each, of the Bézier curve that touches the arc at both ends and in its middle.

    Their distance from the ends is r 4/3 tan(turn / 4), which is chord / (3 cos²(turn / 4)): right for flat arcs too.
    """
    angle = turn(start, through, end)
    scale = 1 / (3 * math.cos(angle / 4) ** 2)
    (from_x, from_y), (to_x, to_y) = start, end
    x, y = scale * (to_x - from_x), scale * (to_y - from_y)
    cos, sin = math.cos(angle / 2), math.sin(angle / 2)
    along, across, aside, back = cos * x, sin * y, sin * x, cos * y
    return from_x + along + across, from_y - aside + back, to_x - along + across, to_y - aside - back


def joined(path: Curve) -> Curve:
    """The same curve, two arcs in a row that are the halves of one as that one: for formats with arcs of their own."""
    if not any(step.through for step in path.steps):
        return path
    steps: list[Step] = []
    at, k = path.start, 0
    while k < len(path.steps):
        whole = _whole(at, *path.steps[k : k + 2]) if k + 1 < len(path.steps) else None
        step = whole or path.steps[k]
        steps.append(step)
        at, k = step.end, k + (2 if whole else 1)
    return path._replace(steps=tuple(steps))


def _whole(start: Point, one: Step, other: Step) -> Step | None:
    """The arc that these two are the halves of; None where they are not, or where it is too steep, large or small."""
    if one.through is None or other.through is None:
        return None
    middle, end = one.end, other.end
    if not _LEAST < abs(turn(start, middle, end)) < _MOST or math.dist(start, end) < _LONG:
        return None
    if radius(start, middle, end) > _LARGEST + _SAME:
        return None
    halves = halved(start, middle, end)
    off = [
        math.dist(half.through or middle, own) for half, own in zip(halves, (one.through, other.through), strict=True)
    ]
    uneven = abs(math.dist(start, middle) - math.dist(middle, end))
    return Step(end, middle) if max(*off, uneven) < _SAME else None


__all__ = ["handles", "joined", "radius", "turn"]
