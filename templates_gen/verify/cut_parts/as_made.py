"""What a machine makes of shapes: the way by which a proof takes out what they were drawn against, by code of its own.

Points go where the machine brings them. A circle keeps its size, and moves with its middle.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable

from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text

Made = Callable[[Point], Point]
"""Where a machine brings a point."""

_ROUND = 2e-5  # mm: points of a circle that was read are so far off at most


def all_made(shapes: Iterable[Shape], made: Made) -> list[Shape]:
    """Every shape as the machine makes it, in order."""
    return [_made(shape, made) for shape in shapes]


def moved(shape: Shape, by: Point) -> Shape:
    """A shape that is moved as a whole."""

    def to(at: Point) -> Point:
        return Point(at.x + by.x, at.y + by.y)

    if isinstance(shape, Text):
        return shape._replace(at=to(shape.at))
    if isinstance(shape, Region):
        return Region(tuple(_through(contour, to) for contour in shape.contours), shape.pen)
    return _through(shape, to)


def moved_with(shape: Shape, at: Point, made: Made) -> Shape:
    """A shape that moves as a whole, as the machine moves the point `at`."""
    there = made(at)
    return moved(shape, Point(there.x - at.x, there.y - at.y))


def _made(shape: Shape, made: Made) -> Shape:
    if isinstance(shape, Text):
        return moved_with(shape, shape.at, made)
    if isinstance(shape, Region):
        return Region(tuple(_curve(contour, made) for contour in shape.contours), shape.pen)
    return _curve(shape, made)


def _curve(path: Curve, made: Made) -> Curve:
    middle = middle_of_circle(path)
    if middle is None:
        return _through(path, made)
    circle = moved_with(path, middle, made)
    return circle if isinstance(circle, Curve) else path


def _through(path: Curve, to: Made) -> Curve:
    steps = tuple(Step(to(end), None if through is None else to(through)) for end, through in path.steps)
    return Curve(to(path.start), steps, path.pen, path.closed)


def middle_of_circle(path: Curve) -> Point | None:
    """Where three points of a closed path of arcs, about a third of a turn apart, are equally far from; None where it
    is no whole circle.
    """
    throughs = [through for _, through in path.steps if through is not None]
    if not path.closed or len(throughs) < max(3, len(path.steps)):
        return None
    third = len(throughs) // 3
    middle = _equally_far(throughs[0], throughs[third], throughs[2 * third])
    if middle is None:
        return None
    radius = math.dist(middle, throughs[0])
    every = [path.start, *throughs, *(end for end, _ in path.steps)]
    back = math.dist(path.start, path.steps[-1].end) <= _ROUND
    return middle if back and all(abs(math.dist(middle, at) - radius) <= _ROUND for at in every) else None


def _equally_far(a: Point, b: Point, c: Point) -> Point | None:
    bx, by, cx, cy = b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y
    twice = 2 * (bx * cy - by * cx)
    if abs(twice) < _ROUND**2:
        return None
    b2, c2 = bx * bx + by * by, cx * cx + cy * cy
    return Point(a.x + (cy * b2 - by * c2) / twice, a.y + (bx * c2 - cx * b2) / twice)
