"""Notches, holes and ticks as they are found on a piece."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from templates_gen.verify import LIMIT
from templates_gen.verify.found_parts import FoundPart


class Opening(NamedTuple):
    """A notch, a hole or a tick: the middle of it, and what it measures across and up, in mm."""

    x: float
    y: float
    across: float
    up: float


def _of_points(points: Sequence[Point]) -> Opening:
    xs, ys = zip(*points, strict=True)
    return Opening((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2, max(xs) - min(xs), max(ys) - min(ys))


def _paths(seen: FoundPart, pen: Pen) -> Iterator[Curve]:
    return (shape for shape in seen.shapes() if isinstance(shape, Curve) and shape.pen is pen)


def circles(seen: FoundPart) -> Iterator[Opening]:
    """Closed curves whose every point lies equally far from the middle."""
    for path in _paths(seen, Pen.REGISTER):
        if path.closed and all(step.through for step in path.steps):
            found = _of_points(path.points())
            on_it = [*path.points(), *(step.through for step in path.steps if step.through)]
            round_ = all(abs(math.dist(point, (found.x, found.y)) - found.across / 2) <= LIMIT for point in on_it)
            yield found if round_ else found._replace(across=-1.0)


def square_cuts(seen: FoundPart) -> Iterator[Opening]:
    """Open outlines of four corners, square to the edge, that begin and end at the outer edge."""
    for path in _paths(seen, Pen.REGISTER):
        if len(path.steps) == 3 and not path.closed:
            a, b, c, d = path.points()
            square = max(abs(a.x - b.x), abs(c.x - d.x), abs(b.y - c.y), abs(a.y), abs(d.y)) <= LIMIT
            found = _of_points((a, b, c, d))
            yield found if square else found._replace(across=-1.0)


def ticks(seen: FoundPart) -> Iterator[Opening]:
    """Every grey line."""
    return (_of_points(path.points()) for path in _paths(seen, Pen.HELP))
