"""Which closed outline lies inside which: an outline must be cut after everything inside it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.boxes import box_around
from layout.drawing.shapes import Curve, Point


class _Outline(NamedTuple):
    path: Curve
    corners: list[Point]
    left: float
    bottom: float
    right: float
    top: float


def first_wrong(cuts: Sequence[Curve]) -> Curve | None:
    """The first closed outline that is cut before something that lies inside it; None if there is none."""
    outlines = [_measured(path) for path in cuts]
    for k, outer in enumerate(outlines):
        if any(_boxed(inner, outer) and _holds(outer.corners, inner.path.start) for inner in outlines[k + 1 :]):
            return outer.path
    return None


def _measured(path: Curve) -> _Outline:
    """The outline with straight sides through every end and every middle of an arc, and its box."""
    corners = [path.start]
    for end, through in path.steps:
        corners += [end] if through is None else [through, end]
    return _Outline(path, corners, *box_around(corners))


def _boxed(inner: _Outline, outer: _Outline) -> bool:
    across = outer.left < inner.left and inner.right < outer.right
    return across and outer.bottom < inner.bottom and inner.top < outer.top


def _holds(corners: Sequence[Point], point: Point) -> bool:
    """Whether a ray from `point` to the right crosses the sides an odd number of times."""
    odd = False
    x1, y1 = corners[-1]
    for x2, y2 in corners:
        if (y1 > point.y) != (y2 > point.y) and point.x < x1 + (point.y - y1) / (y2 - y1) * (x2 - x1):
            odd = not odd
        x1, y1 = x2, y2
    return odd
