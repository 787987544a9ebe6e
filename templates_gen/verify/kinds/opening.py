"""Notches and holes as they are found on a piece."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_around
from templates_gen.verify.found_parts import FoundPart


class Opening(NamedTuple):
    """A notch or a hole: the middle of it, and what it measures across and up, in mm; `round` as a hole is."""

    x: float
    y: float
    across: float
    up: float
    round: bool = False


def filled(seen: FoundPart) -> Iterator[Opening]:
    """What is grey."""
    for shape in seen.shapes():
        if isinstance(shape, Region) and shape.pen is Pen.TINT:
            yield _of(shape.contours[0])


def outlined(seen: FoundPart) -> Iterator[Opening]:
    """What has an outline: notches and holes."""
    for shape in seen.shapes():
        if isinstance(shape, Curve) and shape.closed and shape.pen in (Pen.HELP, Pen.HOLE):
            found = _of(shape)
            yield found if found.round == (shape.pen is Pen.HOLE) else found._replace(across=-1.0)


def _of(path: Curve) -> Opening:
    """A circle or an upright rectangle; of anything else the width is none."""
    points = path.points()
    found = _of_points(points)
    middle = (found.x, found.y)
    if path.steps and all(step.through for step in path.steps):
        on_it = [*points, *(step.through for step in path.steps if step.through)]
        even = all(abs(math.dist(point, middle) - found.across / 2) <= LIMIT for point in on_it)
        return found._replace(round=True, across=found.across if even else -1.0)
    square = len({(round(x, 3), round(y, 3)) for x, y in points}) == _CORNERS and all(
        abs(abs(x - found.x) - found.across / 2) <= LIMIT and abs(abs(y - found.y) - found.up / 2) <= LIMIT
        for x, y in points
    )
    return found if square else found._replace(across=-1.0)


_CORNERS = 4


def _of_points(points: Sequence[Point]) -> Opening:
    left, low, right, high = box_around(points)
    return Opening((left + right) / 2, (low + high) / 2, right - left, high - low)
