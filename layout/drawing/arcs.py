"""Arcs through three points: how far they turn, how large they are, how long. No circle's centre is needed."""

from __future__ import annotations

import math

from layout.drawing.shapes import Point, Step


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


def halfway(start: Point, through: Point, end: Point) -> Point:
    """The middle of the arc, wherever on it `through` lies: off the chord by chord / 2 tan(turn / 4), to its right."""
    off = math.tan(turn(start, through, end) / 4) / 2
    dx, dy = end.x - start.x, end.y - start.y
    return Point((start.x + end.x) / 2 + dy * off, (start.y + end.y) / 2 - dx * off)


def halved(start: Point, through: Point, end: Point) -> tuple[Step, Step]:
    """The same arc in two steps that meet at `through`, each with a point of its own in its middle."""
    return Step(through, _middle(start, through, end)), Step(end, _middle(through, end, start))


def _middle(start: Point, end: Point, beyond: Point) -> Point:
    """The middle of the arc from `start` to `end` on the circle that passes through a point `beyond` it.

    That point sees the chord at half the arc's angle; the middle stands off the chord by chord / 2 tan(angle / 4).
    """
    ux, uy, vx, vy = start.x - beyond.x, start.y - beyond.y, end.x - beyond.x, end.y - beyond.y
    off = math.tan(math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) / 2) / 2
    dx, dy = end.x - start.x, end.y - start.y
    return Point((start.x + end.x) / 2 + dy * off, (start.y + end.y) / 2 - dx * off)


_STRAIGHT = 1e-7  # radians; arc and chord differ by turn^2 / 24, which is nothing here
