"""Small pictures of knots on a frame end: half hitches, a clip, and hitches of which the last is a bow.

A strand that passes over another leaves white on both sides of it: what lies under it is cut short there.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise
from operator import mul
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Placing, Point, Shape, Step, filled, line, rectangle
from layout.drawing.symbols import block

WIDE, HIGH, BAR = 22.0, 19.0, 7.0
"""How wide a picture is, how high it stands above the upper edge of the bar, and how high the bar is, in mm."""

_WHITE = 0.9  # from the middle of a strand to what is seen of another under it
_FINE, _BENDS = 0.1, 6

_Way = tuple[tuple[float, ...], ...]
"""From a place (x, y) straight to others (x, y) or bent to them (two places that pull, and the end: a cubic curve)."""


class _Strand(NamedTuple):
    way: _Way
    white: float = _WHITE


_END = _Strand(((3.6, 5), (3.6, 3.2, 5, 3, 8, 3), (10, 3)), 0.0)
_STEM = _Strand(((8, 19), (8, 0.3)))
_ON_BAR = _Strand(((8, 0.3), (8, -7)), 0.0)
_LOWER = _Strand(((13, 0.6), (13, 4), (13, 6.4, 11, 6.8, 8, 6.8), (5, 6.8, 3.6, 6.6, 3.6, 5)))


def _second_turn(left: tuple[float, ...]) -> _Strand:
    """From the end of the first hitch up at the right and over the stem, and down at the left as given."""
    up = (16.6, 3, 17, 4.4, 17, 7), (17, 10.6)
    return _Strand(((10, 3), (14, 3), *up, (17, 13.4, 14, 13.8, 8, 13.8), left))


HITCHES = (
    _END,
    _Strand(((3.6, 12), (3.6, 10.2, 5, 10, 8, 10), (10.5, 10)), 0.0),
    _STEM,
    _ON_BAR,
    _LOWER,
    _second_turn((5, 13.8, 3.6, 13.6, 3.6, 12)),
    _Strand(((10.5, 10), (19, 10), (20.6, 10, 21.4, 9, 21.6, 7))),
)
"""Two half hitches round the thread itself, the lowest strand first."""

BOW = (
    _END,
    _Strand(((3.6, 12.4), (3.6, 11.1, 5, 10.9, 8, 10.9), (10.5, 10.9)), 0.0),
    _Strand(((2.2, 5), (1.6, 8, 4, 8.8, 8, 8.8), (10.5, 8.8)), 0.0),
    _STEM,
    _ON_BAR,
    _LOWER,
    _second_turn((5, 13.8, 3.6, 13.7, 3.6, 12.4)),
    _Strand(((10.5, 10.9), (18.4, 10.9), (23, 10.9, 23, 8.8, 18.4, 8.8), (10.5, 8.8)), 0.75),
)
"""Two half hitches, of which the last is drawn through as a loop."""


def tied(strands: Sequence[_Strand], at: Point) -> list[Shape]:
    """A knot above a bar whose upper left corner is at `at`."""
    wood = block(0, -BAR, WIDE, 0, Pen.OUTLINE)
    return Placing(0, at.x, at.y).shapes([*wood, *_seen(tuple(strands))])


def clip(at: Point) -> list[Shape]:
    """A clip on a bar whose upper left corner is at `at`, and the thread that it holds, which comes from behind."""
    body = rectangle(8.4, -4.2, 13.6, 2.2, Pen.OUTLINE)
    inner = rectangle(8.6, -4.0, 13.4, 2.0, Pen.PAPER).points()  # it is painted over the outline
    jaw = rectangle(7.4, 1.8, 14.6, 3.4, Pen.SOLID).points()
    shapes: list[Shape] = [*block(0, -BAR, WIDE, 0, Pen.OUTLINE), filled(inner, Pen.PAPER), body]
    shapes += [filled(jaw, Pen.SOLID), line(Point(11, HIGH), Point(11, 3.4), Pen.THREAD_BACK)]
    shapes.append(line(Point(11, -4.4), Point(11, -BAR), Pen.THREAD))
    return Placing(0, at.x, at.y).shapes(shapes)


@lru_cache(4)
def _seen(strands: tuple[_Strand, ...]) -> tuple[Curve, ...]:
    """What is seen of every strand under those that come after it."""
    ways = [_points(strand.way) for strand in strands]
    bands = [list(_bands(way, strand.white)) for way, strand in zip(ways, strands, strict=True)]
    found: list[Curve] = []
    for k, way in enumerate(ways):
        runs = _runs(way, [band for over in bands[k + 1 :] for band in over])
        found += [Curve(run[0], tuple(map(Step, run[1:])), Pen.THREAD) for run in runs]
    return tuple(found)


def _points(way: _Way) -> list[Point]:
    """The corners of a way, its bends in short straight steps."""
    points = [Point(*way[0])]
    for step in way[1:]:
        if len(step) == 2:
            points.append(Point(*step))
            continue
        begin, (ax, ay, bx, by, x, y) = points[-1], step
        for k in range(1, _BENDS + 1):
            t = k / _BENDS
            weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
            xs, ys = (begin.x, ax, bx, x), (begin.y, ay, by, y)
            points.append(Point(sum(map(mul, weights, xs)), sum(map(mul, weights, ys))))
    return points


class _Band(NamedTuple):
    """What is white along a straight step from (x, y): its way, the square of its length, length times half width.

    All of it lies in a `box`.
    """

    box: Box
    x: float
    y: float
    dx: float
    dy: float
    square: float
    half: float


def _bands(way: list[Point], white: float) -> Iterator[_Band]:
    """The white beside each step of a way; beyond its ends there is none."""
    for one, other in pairwise(way if white else []):
        dx, dy = other.x - one.x, other.y - one.y
        (left, right), (low, high) = sorted((one.x, other.x)), sorted((one.y, other.y))
        box = left - white, low - white, right + white, high + white
        yield _Band(box, one.x, one.y, dx, dy, dx * dx + dy * dy, white * math.hypot(dx, dy))


def _hidden(at: Point, over: Sequence[_Band]) -> bool:
    """Whether a place lies in one of these bands."""
    for _, x, y, dx, dy, square, half in over:
        px, py = at.x - x, at.y - y
        if 0 < px * dx + py * dy < square and abs(px * dy - py * dx) < half:
            return True
    return False


def _runs(way: list[Point], over: Sequence[_Band]) -> Iterator[list[Point]]:
    """The stretches of a way that are clear of the others, each with its corners."""
    run: list[Point] = []
    for one, other in pairwise(way):
        count = max(1, math.ceil(math.dist(one, other) / _FINE))
        near = [band for band in over if _reaches(band.box, one, other)]
        for k in range(count + 1):
            at = Point(one.x + (other.x - one.x) * k / count, one.y + (other.y - one.y) * k / count)
            hidden = _hidden(at, near)
            if hidden and _long(run):
                yield run
            if hidden:
                run = []
            elif k and len(run) > 1 and run[-1] not in way:
                run[-1] = at  # straight on
            elif not run or at != run[-1]:
                run.append(at)
    if _long(run):
        yield run


def _reaches(box: Box, one: Point, other: Point) -> bool:
    """Whether a box may hold a point of the way between two."""
    left, low, right, high = box
    beside = max(one.x, other.x) < left or min(one.x, other.x) > right
    return not (beside or max(one.y, other.y) < low or min(one.y, other.y) > high)


def _long(run: list[Point]) -> bool:
    """Whether a stretch is long enough to be seen as one."""
    return len(run) > 1 and sum(map(math.dist, run, run[1:])) > _WHITE
