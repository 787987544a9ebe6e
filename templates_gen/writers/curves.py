"""Arcs through three points, as the file formats want them: Bézier handles and radii. No circle's centre is needed."""

from __future__ import annotations

import math

from layout.drawing.shapes import Point


def turn(start: Point, through: Point, end: Point) -> float:
    """The angle of the arc in radians, counter-clockwise positive.

    The two chords meet at `through` with half the arc's angle between their directions (inscribed angles).
    """
    ux, uy = through.x - start.x, through.y - start.y
    vx, vy = end.x - through.x, end.y - through.y
    return 2 * math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)


def radius(start: Point, through: Point, end: Point) -> float:
    """The radius of the arc in mm: chord / (2 sin(turn / 2)). The three points must not be in line."""
    chord = math.hypot(end.x - start.x, end.y - start.y)
    return abs(chord / (2 * math.sin(turn(start, through, end) / 2)))


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
