"""What the pictures of a leaflet share: their size, which end is the lower one, and which ends lie where."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, filled, line, rectangle
from layout.plan import Plan

WIDE, HIGH = 34.0, 26.0
"""The size of a picture in mm."""

WHITE = 0.9
"""From the middle of a thread to what is seen of another under it, in mm."""

_MOST = 8


class Ground(NamedTuple):
    """A plan, and where things lie in its pictures: y counts from the near end, whichever way that looks."""

    plan: Plan

    @property
    def near_below(self) -> bool:
        """Whether the near end is the lower one."""
        return self.plan.kit.weaving.near_end == "bottom"

    def y(self, away: float) -> float:
        """The y of what lies so far from the near edge of the picture."""
        return away if self.near_below else HIGH - away

    def box(self, left: float, low: float, right: float, high: float, pen: Pen = Pen.OUTLINE) -> Curve:
        """A box between two distances from the near edge."""
        return rectangle(left, min(self.y(low), self.y(high)), right, max(self.y(low), self.y(high)), pen)

    def wood(self, left: float, low: float, right: float, high: float) -> list[Shape]:
        """A piece of the frame."""
        outline = self.box(left, low, right, high)
        return [filled(outline.points(), Pen.TINT), outline]

    def white(self, left: float, low: float, right: float, high: float) -> list[Shape]:
        """A stick: white, so that what it hides is not seen."""
        outline = self.box(left, low, right, high)
        half = Pen.OUTLINE.ink.width / 2
        inside = self.box(left + half, low + half, right - half, high - half, Pen.PAPER)
        return [filled(inside.points(), Pen.PAPER), outline]

    def up(self, x: float, low: float, high: float, pen: Pen = Pen.THREAD) -> Shape:
        """An upright between two distances from the near edge."""
        return line(Point(x, self.y(low)), Point(x, self.y(high)), pen)

    def across(self, away: float, left: float, right: float, pen: Pen) -> Shape:
        """A level line so far from the near edge."""
        return line(Point(left, self.y(away)), Point(right, self.y(away)), pen)

    def way(self, points: Iterable[tuple[float, float]], pen: Pen) -> Curve:
        """A line through places by their x and how far they lie from the near edge."""
        start, *others = (Point(x, self.y(away)) for x, away in points)
        return Curve(start, tuple(map(Step, others)), pen)

    def lifted(self) -> tuple[bool, ...]:
        """Of the first eight ends from the left at the far end, which lie over the shed stick.

        Those on the face there; where all lie in one layer, every second one from the left on.
        """
        layers = self.plan.warp.layers_at("far")[:_MOST]
        if len(set(self.plan.warp.layers_at("far"))) == 1:
            return tuple(k % 2 == 0 for k in range(len(layers)))
        return tuple(each == "face" for each in layers)

    @property
    def layered(self) -> bool:
        """Whether half of the ends lie behind the others."""
        return len(set(self.plan.warp.layers_at("far"))) > 1


def spread(count: int, left: float, right: float) -> list[float]:
    """So many places from `left` to `right`, as far from each other."""
    if count == 1:
        return [(left + right) / 2]
    return [left + (right - left) * k / (count - 1) for k in range(count)]


def broken(begin: float, end: float, gaps: Sequence[float], white: float = WHITE) -> Iterator[tuple[float, float]]:
    """What is seen from `begin` to `end` of a line that others hide at `gaps`."""
    at = begin
    for gap in sorted(gaps):
        if gap - white > at:
            yield at, gap - white
        at = max(at, gap + white)
    if end > at:
        yield at, end


def mirrored(shapes: Iterable[Shape], middle: float) -> list[Shape]:
    """The same with left and right exchanged about x = `middle`; words stay as they are."""

    def put(at: Point) -> Point:
        return Point(2 * middle - at.x, at.y)

    def path(old: Curve) -> Curve:
        steps = tuple(Step(put(end), through and put(through)) for end, through in old.steps)
        return Curve(put(old.start), steps, old.pen, old.closed)

    found: list[Shape] = []
    for shape in shapes:
        if isinstance(shape, Curve):
            found.append(path(shape))
        elif isinstance(shape, Region):
            found.append(Region(tuple(path(each) for each in shape.contours), shape.pen))
        elif isinstance(shape, Text):
            found.append(shape)
    return found


def bent(points: Sequence[tuple[float, float]], pen: Pen) -> Curve:
    """A cubic curve by its four places, in short straight steps."""
    return Curve(_on(points, 0.0), tuple(Step(_on(points, k / _BENDS)) for k in range(1, _BENDS + 1)), pen)


_BENDS = 12


def _on(points: Sequence[tuple[float, float]], t: float) -> Point:
    weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
    return Point(*(sum(w * p[axis] for w, p in zip(weights, points, strict=True)) for axis in (0, 1)))


__all__ = ["HIGH", "WHITE", "WIDE", "Ground", "bent", "broken", "mirrored", "spread"]
