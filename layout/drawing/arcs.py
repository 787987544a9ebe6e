"""Arcs through three points: how far they turn, how large they are, how long. No circle's centre is needed."""

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


def arc_length(start: Point, through: Point, end: Point) -> float:
    """The length of the arc in mm: radius times turn, or the chord where three points in line make it one."""
    angle = abs(turn(start, through, end))
    return math.dist(start, end) if angle < _STRAIGHT else radius(start, through, end) * angle


_STRAIGHT = 1e-7  # radians; arc and chord differ by turn^2 / 24, which is nothing here
