"""Points, paths, regions and words: the few shapes that every part is drawn with. All numbers are mm, y up."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache, partial
from itertools import repeat
from operator import itemgetter
from typing import NamedTuple

from layout.drawing.pens import Pen

_ARC_STEP = math.radians(45)
_KEPT = 256  # arcs whose directions are kept: pictures have the same few many times


Box = tuple[float, float, float, float]
"""Left, bottom, right, top in mm."""


class Point(NamedTuple):
    """A place on a part or sheet, in mm."""

    x: float
    y: float


class Step(NamedTuple):
    """The way to `end`: straight, or along the circle that passes `through` a third point (at most 45 degrees)."""

    end: Point
    through: Point | None = None


_end = itemgetter(0)
_new_point, _new_step = partial(tuple.__new__, Point), partial(tuple.__new__, Step)


def points_at(xs: Iterable[float], ys: Iterable[float]) -> Iterator[Point]:
    """The points with these x and y, made in one go: words have thousands."""
    return map(_new_point, zip(xs, ys, strict=True))


def straight_to(ends: Iterable[Point]) -> tuple[Step, ...]:
    """Straight steps to these points, made in one go."""
    return tuple(map(_new_step, zip(ends, repeat(None))))


class Curve(NamedTuple):
    """A line drawn with one pen from `start` along `steps`; `closed` joins it back to the start."""

    start: Point
    steps: tuple[Step, ...]
    pen: Pen
    closed: bool = False

    def points(self) -> list[Point]:
        """The start and every step's end, in order."""
        return [self.start, *map(_end, self.steps)]


_new_curve = partial(tuple.__new__, Curve)


class Region(NamedTuple):
    """An area filled by one pen; `contours` are closed paths under the non-zero rule (a letter's holes turn back)."""

    contours: tuple[Curve, ...]
    pen: Pen


class Text(NamedTuple):
    """`words` on a baseline that begins at `at`, `size` mm to the em, turned `angle` degrees from the x axis.

    Another `pen` than the one for words is for what is engraved or drawn by its outlines.
    """

    at: Point
    size: float
    words: str
    angle: float = 0.0
    pen: Pen = Pen.TEXT


_new_region, _new_text = partial(tuple.__new__, Region), partial(tuple.__new__, Text)
Shape = Curve | Region | Text


def line(start: Point, end: Point, pen: Pen) -> Curve:
    """One straight line."""
    return _new_curve((start, (_new_step((end, None)),), pen, False))


def polygon(points: Iterable[Point], pen: Pen) -> Curve:
    """A closed outline with straight sides through `points` (at least three)."""
    start, *others = points
    return _new_curve((start, straight_to(others), pen, True))


def rectangle(left: float, bottom: float, right: float, top: float, pen: Pen) -> Curve:
    """A closed rectangle, counter-clockwise from its lower left corner."""
    return polygon(points_at((left, right, right, left), (bottom, bottom, top, top)), pen)


def filled(points: Iterable[Point], pen: Pen) -> Region:
    """The area inside the polygon through `points`."""
    return Region((polygon(points, pen),), pen)


def arc(centre: Point, radius: float, from_degrees: float, to_degrees: float) -> tuple[Step, ...]:
    """Steps along a circle, each at most 45 degrees, beginning where the caller stands at `from_degrees`."""
    cosines, sines = _directions(from_degrees, to_degrees)
    x, y = centre
    points = list(points_at([x + radius * cos for cos in cosines], [y + radius * sin for sin in sines]))
    return tuple(map(_new_step, zip(points[1::2], points[::2], strict=True)))


@lru_cache(_KEPT)
def _directions(from_degrees: float, to_degrees: float) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Cosines and sines of where steps of an arc pass and end, in turn."""
    begin, sweep = math.radians(from_degrees), math.radians(to_degrees - from_degrees)
    count = max(1, math.ceil(abs(sweep) / _ARC_STEP - 1e-9))
    angles = [begin + sweep * fraction for k in range(count) for fraction in ((k + 0.5) / count, (k + 1) / count)]
    return tuple(map(math.cos, angles)), tuple(map(math.sin, angles))


def circle(centre: Point, radius: float, pen: Pen) -> Curve:
    """A closed circle in eight arcs, counter-clockwise from its rightmost point."""
    return Curve(Point(centre.x + radius, centre.y), arc(centre, radius, 0, 360), pen, closed=True)


def cross(centre: Point, arm: float, pen: Pen) -> tuple[Curve, Curve]:
    """A cross-hair: a horizontal and a vertical line of `arm` mm to each side of `centre`."""
    x, y = centre
    return line(Point(x - arm, y), Point(x + arm, y), pen), line(Point(x, y - arm), Point(x, y + arm), pen)


@dataclass(frozen=True, slots=True)
class Placing:
    """A turn about the origin and then a shift: where a part lies on its sheet. Never scales, never mirrors."""

    degrees: float = 0.0
    dx: float = 0.0
    dy: float = 0.0

    def _turn(self) -> tuple[float, float]:
        if self.degrees % 90 == 0:  # exact, where cos(90°) in floats is not quite 0
            return ((1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0))[int(self.degrees // 90) % 4]
        angle = math.radians(self.degrees)
        return math.cos(angle), math.sin(angle)

    def after(self, first: Placing) -> Placing:
        """`first`, and then this one."""
        (shift,) = self.points([(first.dx, first.dy)])
        return Placing(self.degrees + first.degrees, *shift)

    def points(self, points: Iterable[tuple[float, float]]) -> list[Point]:
        """Where `points` of the part, x and y each, lie on the sheet."""
        cos, sin = self._turn()
        dx, dy = self.dx, self.dy
        each = list(points)
        if (cos, sin) == (1.0, 0.0):
            return list(points_at([x + dx for x, _ in each], [y + dy for _, y in each]))
        xs, ys = [cos * x - sin * y + dx for x, y in each], [sin * x + cos * y + dy for x, y in each]
        return list(points_at(xs, ys))

    def shapes(self, shapes: Iterable[Shape]) -> list[Shape]:
        """The same shapes as they lie on the sheet."""
        shapes = list(shapes)
        (cos, sin), dx, dy = self._turn(), self.dx, self.dy
        straight = (cos, sin) == (1.0, 0.0)
        if straight and not dx and not dy:
            return shapes

        def shifted(at: Point) -> Point:
            return _new_point((at[0] + dx, at[1] + dy))

        def turned(at: Point) -> Point:
            x, y = at
            return _new_point((cos * x - sin * y + dx, sin * x + cos * y + dy))

        put, move = (shifted, _shifting(dx, dy)) if straight else (turned, partial(_moved, turned))
        placed: list[Shape] = []
        for shape in shapes:
            if isinstance(shape, Curve):
                placed.append(move(shape))
            elif isinstance(shape, Region):
                placed.append(_new_region((tuple([move(contour) for contour in shape.contours]), shape.pen)))
            else:
                at, size, words, angle, pen = shape
                placed.append(_new_text((put(at), size, words, angle + self.degrees, pen)))
        return placed


def _moved(put: Callable[[Point], Point], path: Curve) -> Curve:
    """The same path with each of its points `put` elsewhere."""
    start, steps, pen, closed = path
    moved = [_new_step((put(end), through and put(through))) for end, through in steps]
    return _new_curve((put(start), tuple(moved), pen, closed))


def _shifting(dx: float, dy: float) -> Callable[[Curve], Curve]:
    """Gives the same path elsewhere, without a call for each point: sheets have thousands, most of them shifted."""

    def shifted(path: Curve) -> Curve:
        (x, y), steps, pen, closed = path
        moved = [
            _new_step((_new_point((to_x + dx, to_y + dy)), through and _new_point((through[0] + dx, through[1] + dy))))
            for (to_x, to_y), through in steps
        ]
        return _new_curve((_new_point((x + dx, y + dy)), tuple(moved), pen, closed))

    return shifted
