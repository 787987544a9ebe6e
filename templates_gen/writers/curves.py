"""Arcs through three points, as the file formats want them: Bézier handles, radii and turns."""

from __future__ import annotations

import math

from layout.drawing.arcs import radius, turn
from layout.drawing.shapes import Point


def handles(start: Point, through: Point, end: Point) -> tuple[Point, Point]:
    """The two control points of the Bézier curve that touches the arc at both ends and in its middle.

    Their distance from the ends is r 4/3 tan(turn / 4), which is chord / (3 cos²(turn / 4)): right for flat arcs too.
    """
    angle = turn(start, through, end)
    scale = 1 / (3 * math.cos(angle / 4) ** 2)
    x, y = scale * (end.x - start.x), scale * (end.y - start.y)
    cos, sin = math.cos(angle / 2), math.sin(angle / 2)
    first = Point(start.x + cos * x + sin * y, start.y - sin * x + cos * y)
    second = Point(end.x - cos * x + sin * y, end.y - sin * x - cos * y)
    return first, second


__all__ = ["handles", "radius", "turn"]
