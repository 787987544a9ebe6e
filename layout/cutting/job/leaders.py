"""Rings of parts too small to hold them: in a free place on the picture or round it, with a line to the part."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Box, Point, Shape
from layout.drawing.signs import RING, leader, ring

ROUND = 6.5
"""How much room in mm round the board such rings are given, so that one finds a place where the board is full."""

_CLEAR, _STEP, _TRIED = 0.7, 2.5, 150


class Leaders(NamedTuple):
    """Rings and lines, what they take, and whether each ring stands free and no line crosses another part."""

    shapes: tuple[Shape, ...]
    boxes: tuple[Box, ...]
    clear: bool


def leaders(
    small: Sequence[tuple[str, Box]], boxes: Sequence[Box], board: Box, around: float, metrics: FontMetrics
) -> Leaders:
    """A ring with a number and a line for each of the `small` parts, clear of all `boxes` and of each other.

    They stand on the board, or as far as `around` mm outside it; where no place is free, on the part itself.
    """
    free = [spot for spot in _spots(board, around) if not any(_meet(_around(spot), box) for box in boxes)]
    shapes, clear = list[Shape](), True
    taken: list[Box] = []
    lines: list[tuple[Point, Point]] = []
    for label, box in small:
        middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        best = None
        for spot in sorted(free, key=lambda each: math.dist(each, middle))[:_TRIED]:
            ends = middle, _at_ring(spot, middle)
            if any(_meet(_around(spot), other) for other in taken):
                continue
            if any(_through(one, _around(spot)) for one in lines) or any(_through(ends, other) for other in taken):
                continue
            crossed = sum(_through(ends, other) for other in boxes if other != box)
            if best is None or crossed < best[0]:
                best = crossed, spot, ends
            if not crossed:
                break
        if best is None:
            shapes += ring(middle, label, metrics)
            clear = False
            continue
        crossed, spot, ends = best
        clear = clear and not crossed
        taken.append(_around(spot))
        lines.append(ends)
        shapes += [*leader(*ends), *ring(spot, label, metrics)]
    along = (
        (min(one.x, other.x), min(one.y, other.y), max(one.x, other.x), max(one.y, other.y)) for one, other in lines
    )
    return Leaders(tuple(shapes), (*taken, *along), clear)


def _spots(board: Box, around: float) -> Iterator[Point]:
    """Middles of places for a ring, on the board or outside it, none across its edge."""
    left, low, right, high = board
    out = around - RING - _CLEAR
    for x in _steps(left - out, right + out):
        for y in _steps(low - out, high + out):
            own = _around(Point(x, y))
            inside = left < own[0] and own[2] < right and low < own[1] and own[3] < high
            if inside or not _meet(own, (left + 1e-6, low + 1e-6, right - 1e-6, high - 1e-6)):
                yield Point(x, y)


def _steps(low: float, high: float) -> list[float]:
    count = math.ceil((high - low) / _STEP)
    return [low + (high - low) * k / count for k in range(count + 1)]


def _around(spot: Point) -> Box:
    out = RING + _CLEAR
    return spot.x - out, spot.y - out, spot.x + out, spot.y + out


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _at_ring(spot: Point, to: Point) -> Point:
    """Where the way from a point to the middle of a ring meets the ring."""
    share = RING / max(math.dist(spot, to), RING)
    return Point(spot.x + (to.x - spot.x) * share, spot.y + (to.y - spot.y) * share)


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
