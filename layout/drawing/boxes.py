"""Upright boxes around what is drawn: around points, a path, or a box that lies turned on its sheet."""

from __future__ import annotations

from collections.abc import Iterable

from layout.drawing.shapes import Box, Curve, Placing, Point


def box_around(points: Iterable[Point], white: float = 0.0) -> Box:
    """Left, bottom, right and top of these points, `white` mm further out at each side."""
    xs, ys = zip(*points, strict=True)
    return min(xs) - white, min(ys) - white, max(xs) + white, max(ys) + white


def box_of(path: Curve) -> Box:
    """The same of the start of a path and the ends of its steps."""
    xs, ys = zip(*path.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def middle_of(path: Curve) -> Point:
    """The middle of that box: the centre of a circle."""
    left, low, right, high = box_of(path)
    return Point((left + right) / 2, (low + high) / 2)


def placed(box: Box, placing: Placing, white: float = 0.0) -> Box:
    """The box around another one as it lies on its sheet."""
    left, low, right, high = box
    corners = (Point(left, low), Point(right, low), Point(right, high), Point(left, high))
    return box_around(placing.points(corners), white)
