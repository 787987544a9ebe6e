"""Finding a part again: its register crosses on a sheet, and the turn and shift that they prove."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, points_at
from layout.drawing.sheet import Sheet

_SAME = 0.01  # two hairs of one cross share their middle and length to well under this, in mm
_PENS = (Pen.REGISTER, Pen.REFERENCE)  # on paper; on what is cut


class Lie(NamedTuple):
    """How a part lies: the sheet shows the part's `origin` at `shift`, turned by (`cos`, `sin`)."""

    origin: Point
    shift: Point
    cos: float
    sin: float

    def back(self, point: Point) -> Point:
        """A point of the sheet in the part's coordinates."""
        dx, dy = point.x - self.shift.x, point.y - self.shift.y
        return Point(self.origin.x + self.cos * dx + self.sin * dy, self.origin.y - self.sin * dx + self.cos * dy)

    def all_back(self, points: Sequence[Point]) -> list[Point]:
        """The same for many points in one go: the outlines of words have thousands."""
        (origin_x, origin_y), (shift_x, shift_y), cos, sin = self
        xs = [origin_x + cos * (x - shift_x) + sin * (y - shift_y) for x, y in points]
        ys = [origin_y - sin * (x - shift_x) + cos * (y - shift_y) for x, y in points]
        return list(points_at(xs, ys))


def crosses_on(sheet: Sheet) -> list[Point]:
    """The middle of every register cross: two hairs of one length, one drawn after the other, at right angles."""
    hairs = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen in _PENS]
    found, k = [], 0
    while k + 1 < len(hairs):
        if middle := _cross(hairs[k], hairs[k + 1]):
            found.append(middle)
            k += 1
        k += 1
    return found


def _cross(one: Curve, other: Curve) -> Point | None:
    if len(one.steps) != 1 or len(other.steps) != 1:
        return None
    (a, b), (c, d) = one.points(), other.points()
    middle = Point((a.x + b.x) / 2, (a.y + b.y) / 2)
    same_middle = math.dist(middle, ((c.x + d.x) / 2, (c.y + d.y) / 2)) < _SAME
    same_length = abs(math.dist(a, b) - math.dist(c, d)) < _SAME
    upright = abs((b.x - a.x) * (d.x - c.x) + (b.y - a.y) * (d.y - c.y)) < _SAME
    return middle if same_middle and same_length and upright else None


def lie_of(datum: Sequence[Point], crosses: Sequence[Point]) -> tuple[Lie, float]:
    """The turn and shift that bring `datum` to `crosses`, and the largest distance in mm that is left over.

    The turn comes from the two points furthest apart; all others, and every distance, must follow. A mirrored or
    scaled part leaves a large rest.
    """
    one, other = max(combinations(range(len(datum)), 2), key=lambda pair: math.dist(datum[pair[0]], datum[pair[1]]))
    wanted = math.atan2(datum[other].y - datum[one].y, datum[other].x - datum[one].x)
    found = math.atan2(crosses[other].y - crosses[one].y, crosses[other].x - crosses[one].x)
    lie = Lie(datum[one], crosses[one], math.cos(found - wanted), math.sin(found - wanted))
    rest = max(math.dist(lie.back(cross), point) for cross, point in zip(crosses, datum, strict=True))
    return lie, rest
