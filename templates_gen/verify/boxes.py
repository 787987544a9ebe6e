"""The boxes of what is drawn, small enough that the box of a slanted line is not mostly white."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from layout.drawing.shapes import Box, Curve, Point, Shape, Text

_LONG = 2.0  # mm: a slanted step is taken in pieces of at most so much


def boxes_along(points: Sequence[Point], ink: float = 0.0) -> Iterator[Box]:
    """The boxes of the steps from point to point, `ink` mm wider at each side."""
    for one, other in pairwise(points):
        slanted = min(abs(one.x - other.x), abs(one.y - other.y)) > ink
        count = max(1, math.ceil(math.dist(one, other) / _LONG)) if slanted else 1
        for k in range(count):
            x0, x1 = (one.x + (other.x - one.x) * (k + more) / count for more in (0, 1))
            y0, y1 = (one.y + (other.y - one.y) * (k + more) / count for more in (0, 1))
            yield min(x0, x1) - ink, min(y0, y1) - ink, max(x0, x1) + ink, max(y0, y1) + ink


def box_around(points: Iterable[Point]) -> Box:
    """Left, bottom, right and top of these points."""
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def box_of(path: Curve) -> Box:
    """The same of the start of a path and the ends of its steps."""
    return box_around(path.points())


def middle_of(path: Curve) -> Point:
    """The middle of that box: the centre of a circle."""
    left, low, right, high = box_of(path)
    return Point((left + right) / 2, (low + high) / 2)


def box_of_shape(shape: Shape) -> Box:
    """The box of the ends of all steps of a shape; of words only where they begin."""
    if isinstance(shape, Text):
        return (*shape.at, *shape.at)
    if isinstance(shape, Curve):
        if len(shape.steps) > 1:
            return box_of(shape)
        (x, y), (to_x, to_y) = shape.start, shape.steps[0].end  # nearly every shape of a sheet is one line
        left, right = (x, to_x) if x < to_x else (to_x, x)
        return (left, y, right, to_y) if y < to_y else (left, to_y, right, y)
    if len(shape.contours) == 1:
        return box_of(shape.contours[0])
    return box_around([point for path in shape.contours for point in path.points()])


def off_step(at: Point, one: Point, other: Point) -> float:
    """How far a place is from the straight step from `one` to `other`, in mm."""
    dx, dy = other.x - one.x, other.y - one.y
    along = min(1.0, max(0.0, ((at.x - one.x) * dx + (at.y - one.y) * dy) / (dx * dx + dy * dy or 1.0)))
    return math.dist(at, (one.x + along * dx, one.y + along * dy))


def reaches(points: Sequence[Point], box: Box) -> bool:
    """Whether the closed line through `points`, or the area in it, reaches into a box."""
    closed = [*points, points[0]]
    left, low, right, high = box
    if any(x0 < right and left < x1 and y0 < high and low < y1 for x0, y0, x1, y1 in boxes_along(closed)):
        return True
    return _inside(Point((left + right) / 2, (low + high) / 2), closed)


def _inside(at: Point, closed: Sequence[Point]) -> bool:
    """Whether a ray from `at` to the right crosses the closed line an odd number of times."""
    crossed = False
    for one, other in pairwise(closed):
        if (one.y > at.y) != (other.y > at.y):
            crossed ^= at.x < one.x + (other.x - one.x) * (at.y - one.y) / (other.y - one.y)
    return crossed
