"""What is read from a picture of a leaflet: uprights by their places, level pieces, boxes, knots and arrows."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from math import dist
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.boxes import box_of, middle_of

HIGH, WIDE = 26.0, 34.0
_ROUND_STEPS = 8


class Upright(NamedTuple):
    """A straight upright line: its x, its lower and its upper end, its pen."""

    x: float
    low: float
    high: float
    pen: Pen


def straight(shapes: Iterable[Shape], *pens: Pen) -> list[Curve]:
    """Lines of one step with one of these pens."""
    return [s for s in shapes if isinstance(s, Curve) and len(s.steps) == 1 and not s.closed and s.pen in pens]


def uprights(shapes: Iterable[Shape], *pens: Pen) -> list[Upright]:
    """Every upright line, from left to right."""
    found = []
    for path in straight(shapes, *pens):
        one, other = path.start, path.steps[0].end
        if abs(one.x - other.x) <= LIMIT < abs(one.y - other.y):
            found.append(Upright(one.x, min(one.y, other.y), max(one.y, other.y), path.pen))
    return sorted(found)


def level(shapes: Iterable[Shape], *pens: Pen) -> list[tuple[float, float, float]]:
    """Every level line: its y, where it begins and where it ends."""
    found = []
    for path in straight(shapes, *pens):
        one, other = path.start, path.steps[0].end
        if abs(one.y - other.y) <= LIMIT < abs(one.x - other.x):
            found.append((one.y, min(one.x, other.x), max(one.x, other.x)))
    return sorted(found)


def covered(lines: Iterable[Upright], x: float, low: float, high: float) -> bool:
    """Whether one of the uprights at x runs over all between two heights."""
    return any(abs(each.x - x) <= LIMIT and each.low <= low + LIMIT and each.high >= high - LIMIT for each in lines)


def boxes(shapes: Iterable[Shape], pen: Pen = Pen.OUTLINE) -> list[Box]:
    """Every box with upright sides drawn with a pen."""
    closed = (shape for shape in shapes if isinstance(shape, Curve) and shape.closed and shape.pen is pen)
    return sorted(box_of(path) for path in closed if len(path.steps) == 3)


def discs(shapes: Iterable[Shape], least: float = 1.0) -> list[Point]:
    """The middles of filled discs: knots."""
    found = []
    for shape in shapes:
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == _ROUND_STEPS:
            at, radius = round_of(shape.contours[0])
            found += [at] if radius >= least else []
    return found


def circles(shapes: Iterable[Shape], pen: Pen) -> list[tuple[Point, float]]:
    """The middles and radii of circles."""
    curves = (s for s in shapes if isinstance(s, Curve) and s.closed and s.pen is pen)
    return [round_of(shape) for shape in curves if len(shape.steps) == _ROUND_STEPS]


def round_of(path: Curve) -> tuple[Point, float]:
    """The middle and the radius of a circle."""
    left, _, right, _ = box_of(path)
    return middle_of(path), (right - left) / 2


def heads(shapes: Iterable[Shape]) -> list[Arrow]:
    """Arrow heads: triangles with two sides alike; the blades of scissors have none."""
    return list(arrows_in(each for each in shapes if isinstance(each, Region) and _is_even(each)))


def blades(shapes: Iterable[Shape]) -> list[Point]:
    """The middles of the blades of scissors."""
    return [each.at for each in arrows_in(s for s in shapes if isinstance(s, Region) and not _is_even(s))]


def _is_even(region: Region) -> bool:
    tip, *base = region.contours[0].points()
    return len(base) == 2 and abs(dist(tip, base[0]) - dist(tip, base[1])) <= LIMIT


def numbers(shapes: Iterable[Shape]) -> Iterator[tuple[Point, int]]:
    """Numbers and where they begin."""
    return ((s.at, int(s.words)) for s in shapes if isinstance(s, Text) and s.words.isdigit())


def bent(shapes: Iterable[Shape], *pens: Pen) -> list[Curve]:
    """Open lines of more than one step."""
    return [s for s in shapes if isinstance(s, Curve) and not s.closed and len(s.steps) > 1 and s.pen in pens]


def by_turns(found: Sequence[bool]) -> bool:
    """Whether each differs from the one before."""
    return all(one != other for one, other in pairwise(found))
