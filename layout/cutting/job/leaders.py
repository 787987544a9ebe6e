"""Numbers of parts too small to hold them: in a free place on the picture or round it, with a line to the part."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Shape, Text, line
from layout.drawing.typeset import SMALL

RING = 5.0
"""How much room in mm round the board such numbers are given, so that one finds a place where the board is full."""

_CLEAR, _STEP, _TRIED = 0.5, 2.5, 150


def leaders(
    small: Mapping[str, Box], boxes: Sequence[Box], numbers: Sequence[Text], board: Box, metrics: FontMetrics
) -> Iterator[Shape]:
    """A number and a line for each of the `small` parts, clear of all `boxes`, of the `numbers` there and each other.

    Where no place is free the number stands on the part itself, as small as the part.
    """
    half = max((metrics.width(label, SMALL) for label in small), default=0.0) / 2, metrics.cap * SMALL / 2
    free = [spot for spot in _spots(board, half) if not any(_meet(_around(spot, half), box) for box in boxes)]
    taken = [_around(_middle(text, metrics), (metrics.width(text.words, SMALL) / 2, half[1])) for text in numbers]
    lines: list[tuple[Point, Point]] = []
    for label, box in small.items():
        middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        best = None
        for spot in sorted(free, key=lambda each: math.dist(each, middle))[:_TRIED]:
            own = _around(spot, (metrics.width(label, SMALL) / 2, half[1]))
            ends = _from_edge(own, spot, middle), middle
            if any(_meet(own, other) for other in taken) or any(_through(one, own) for one in lines):
                continue
            if any(_through(ends, other) for other in taken):
                continue
            crossed = sum(_through(ends, other) for other in boxes if other != box)
            if best is None or crossed < best[0]:
                best = crossed, spot, ends
            if not crossed:
                break
        if best is None:
            yield _on_it(label, box, metrics)
            continue
        _, spot, ends = best
        taken.append(_around(spot, half))
        lines.append(ends)
        yield line(*ends, Pen.REGISTER)
        yield Text(Point(spot.x - metrics.width(label, SMALL) / 2, spot.y - half[1]), SMALL, label)


def _middle(text: Text, metrics: FontMetrics) -> Point:
    wide, tall = metrics.width(text.words, text.size), metrics.cap * text.size
    return Point(text.at.x + wide / 2, text.at.y + tall / 2)


def _spots(board: Box, half: tuple[float, float]) -> Iterator[Point]:
    """Middles of places for a number, on the board or outside it, none across its edge."""
    left, low, right, high = board
    for x in _steps(left - RING / 2, right + RING / 2):
        for y in _steps(low - RING / 2, high + RING / 2):
            own = _around(Point(x, y), half)
            inside = left < own[0] and own[2] < right and low < own[1] and own[3] < high
            if inside or not _meet(own, board):
                yield Point(x, y)


def _steps(low: float, high: float) -> list[float]:
    count = math.ceil((high - low) / _STEP)
    return [low + (high - low) * k / count for k in range(count + 1)]


def _around(spot: Point, half: tuple[float, float]) -> Box:
    wide, tall = half[0] + _CLEAR, half[1] + _CLEAR
    return spot.x - wide, spot.y - tall, spot.x + wide, spot.y + tall


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _from_edge(box: Box, spot: Point, to: Point) -> Point:
    """Where the way from the middle of a box to a point beyond it leaves the box."""
    dx, dy = to.x - spot.x, to.y - spot.y
    across = (box[2] - spot.x) / abs(dx) if dx else math.inf
    up = (box[3] - spot.y) / abs(dy) if dy else math.inf
    share = min(across, up, 1.0)
    return Point(spot.x + dx * share, spot.y + dy * share)


def _through(ends: tuple[Point, Point], box: Box) -> bool:
    """Whether a straight line passes through a box: what is left of it between the four sides (Liang and Barsky)."""
    (x, y), (u, v) = ends
    low, high = 0.0, 1.0
    for at, way, least, most in ((x, u - x, box[0], box[2]), (y, v - y, box[1], box[3])):
        if way == 0:
            if not least < at < most:
                return False
            continue
        one, other = sorted(((least - at) / way, (most - at) / way))
        low, high = max(low, one), min(high, other)
    return low < high - 1e-9


def _on_it(label: str, box: Box, metrics: FontMetrics) -> Text:
    wide, tall = (box[2] - box[0]) * 0.8, (box[3] - box[1]) * 0.8
    size = min(SMALL, tall / metrics.cap, wide / metrics.width(label, 1.0))
    corner = Point((box[0] + box[2] - metrics.width(label, size)) / 2, (box[1] + box[3] - metrics.cap * size) / 2)
    return Text(corner, size, label)
