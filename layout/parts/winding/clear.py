"""Places in a picture that are clear of all that is drawn: where rings with numbers may stand."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Text

_AIR = 0.6
_NO_INK = (Pen.TINT, Pen.PAPER)
_Stroke = tuple[float, float, float, float, Point, Point, float]
"""The box of a line with its ink and white, where it begins and ends, how far from it ink and white reach."""


class Taken:
    """What is drawn so far, as strokes with half their width."""

    def __init__(self, metrics: FontMetrics) -> None:
        self._metrics = metrics
        self._strokes: list[_Stroke] = []

    def add(self, shapes: Iterable[Shape]) -> None:
        """Takes the places of these shapes too; tints may have a ring on them."""
        for shape in shapes:
            self._strokes += self._of(shape)

    def clear(self, at: Point, radius: float) -> bool:
        """Whether a disc about `at` keeps a little white to all that is drawn."""
        x, y = at
        west, east, south, north = x - radius, x + radius, y - radius, y + radius
        for left, low, right, high, one, other, far in self._strokes:
            near = left < east and right > west and low < north and high > south  # most strokes are not
            if near and _distance(at, one, other) < radius + far:
                return False
        return True

    def first_clear(self, base: Point, ways: Sequence[Point], radius: float, right: float = math.inf) -> Point:
        """The first clear place at `base` or from there on, step by step, along one of `ways`, no further to the right
        than at `right`; else `base`."""
        places = (at for at in _places(base, ways) if at.x <= right)
        return next((at for at in places if self.clear(at, radius)), base)

    def _of(self, shape: Shape) -> Iterator[_Stroke]:
        if isinstance(shape, Text):
            yield from _sides(_corners(shape, self._metrics))
        elif shape.pen not in _NO_INK:
            for path in shape.contours if isinstance(shape, Region) else (shape,):
                half = path.pen.ink.width / 2
                yield from (_stroke(one, other, half) for one, other in pairwise(_way(path)))


_TRIES = 24


def _places(base: Point, ways: Sequence[Point]) -> Iterator[Point]:
    """`base`, and step by step the places along each way."""
    yield base
    yield from (Point(base.x + k * way.x, base.y + k * way.y) for k in range(1, _TRIES) for way in ways)


def _way(path: Curve) -> list[Point]:
    points = [path.start]
    for end, through in path.steps:
        points += [end] if through is None else [through, end]
    return [*points, path.start] if path.closed else points


def _corners(text: Text, metrics: FontMetrics) -> list[Point]:
    width, low, high = metrics.width(text.words, text.size, text.pen), -0.25 * text.size, metrics.ascent * text.size
    corners = [Point(0, low), Point(width, low), Point(width, high), Point(0, high)]
    return Placing(text.angle, text.at.x, text.at.y).points(corners)


def _sides(corners: list[Point]) -> Iterator[_Stroke]:
    yield from (_stroke(one, other, 0.0) for one, other in zip(corners, corners[1:] + corners[:1], strict=True))


def _stroke(one: Point, other: Point, half: float) -> _Stroke:
    (x, y), (to_x, to_y), far = one, other, half + _AIR
    left, right = (x, to_x) if x < to_x else (to_x, x)
    low, high = (y, to_y) if y < to_y else (to_y, y)
    return left - far, low - far, right + far, high + far, one, other, far


def _distance(at: Point, one: Point, other: Point) -> float:
    """From a place to a line between two points."""
    dx, dy = other.x - one.x, other.y - one.y
    square = dx * dx + dy * dy
    along = 0.0 if square == 0 else min(1.0, max(0.0, ((at.x - one.x) * dx + (at.y - one.y) * dy) / square))
    return math.hypot(one.x + along * dx - at.x, one.y + along * dy - at.y)
