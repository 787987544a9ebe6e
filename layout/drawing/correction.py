"""Sheets drawn a little too large or too small, so that a machine that is off prints or cuts them right."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import atan2, cos, degrees, dist, pi, radians, sin
from typing import NamedTuple

from layout.drawing.arcs import halfway, halved, turn
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text
from layout.drawing.sheet import Sheet

CLOSE = 0.0005
"""An arc that is corrected keeps so close to what its curve becomes, in mm."""

_STEEPEST = pi / 4 + 1e-6  # radians: no arc is drawn that turns by more
_ROUND = 1e-6  # mm: a curve is a circle where all its points are so equally far from its middle


class Scale(NamedTuple):
    """What a machine makes of one millimetre: `x` across, `y` up, and `skew`, how far one mm up leans to the right.

    A length of 1 mm across comes out `x` mm long. All three are shares without a unit; a machine that is right has 1,
    1 and 0.
    """

    x: float = 1.0
    y: float = 1.0
    skew: float = 0.0

    @property
    def off(self) -> float:
        """The largest of its shares by which it is off."""
        return max(abs(self.x - 1), abs(self.y - 1), abs(self.skew))

    def made(self, at: Point) -> Point:
        """Where a point comes out, from the same origin."""
        return Point(self.x * at.x + self.skew * at.y, self.y * at.y)

    def asked(self, at: Point) -> Point:
        """Where a point has to be drawn to come out at `at`: the inverse of `made`."""
        y = at.y / self.y
        return Point((at.x - self.skew * y) / self.x, y)


TRUE = Scale()
"""The scale of a machine that is right."""


def corrected(sheet: Sheet, scale: Scale) -> Sheet:
    """The sheet to give to a machine with this scale, so that what comes out is `sheet`.

    Points move about the middle of the sheet. Words keep their size and circles their radius: both move as a whole.
    Other arcs are split until they are within `CLOSE` of what they become.
    """
    if scale == TRUE:
        return sheet
    move = _Move(scale, Point(sheet.width / 2, sheet.height / 2))
    return replace(sheet, shapes=tuple(map(move.shape, sheet.shapes)))


class _Move(NamedTuple):
    scale: Scale
    middle: Point

    def point(self, at: Point) -> Point:
        x, y = self.scale.asked(Point(at.x - self.middle.x, at.y - self.middle.y))
        return Point(x + self.middle.x, y + self.middle.y)

    def shape(self, shape: Shape) -> Shape:
        if isinstance(shape, Text):
            way = self.scale.asked(Point(cos(radians(shape.angle)), sin(radians(shape.angle))))
            angle = shape.angle if shape.angle == 0 else degrees(atan2(way.y, way.x))
            return shape._replace(at=self.point(shape.at), angle=angle)
        if isinstance(shape, Region):
            return Region(tuple(map(self.curve, shape.contours)), shape.pen)
        return self.curve(shape)

    def curve(self, curve: Curve) -> Curve:
        if centre := _centre(curve):
            there = self.point(centre)
            return _shifted(curve, there.x - centre.x, there.y - centre.y)
        steps: list[Step] = []
        start = curve.start
        for step in curve.steps:
            steps += self.steps(start, step)
            start = step.end
        return Curve(self.point(curve.start), tuple(steps), curve.pen, curve.closed)

    def steps(self, start: Point, step: Step) -> Iterator[Step]:
        """One step as it becomes: an arc in as many as it takes."""
        if step.through is None:
            yield Step(self.point(step.end))
            return
        moved = Step(self.point(step.end), self.point(step.through))
        halves = halved(start, step.through, step.end)
        if self._close(self.point(start), moved, halves) and self._flat(self.point(start), moved):
            there = self.point(start)
            yield Step(moved.end, moved.through and halfway(there, moved.through, moved.end))
            return
        begin = start
        for half in halves:
            yield from self.steps(begin, half)
            begin = half.end

    @staticmethod
    def _flat(start: Point, moved: Step) -> bool:
        """Whether an arc may be drawn: one of 45 degrees may have become steeper."""
        return abs(turn(start, moved.through or moved.end, moved.end)) <= _STEEPEST

    def _close(self, start: Point, moved: Step, halves: tuple[Step, Step]) -> bool:
        """Whether the arc through the moved points passes where the quarters of the curve have moved to."""
        drawn = halved(start, moved.through or moved.end, moved.end)
        quarters = [(each.through, seen.through) for each, seen in zip(halves, drawn, strict=True)]
        return all(was and seen and dist(seen, self.point(was)) <= CLOSE for was, seen in quarters)


def _centre(curve: Curve) -> Point | None:
    """The middle of a curve that is a whole circle of arcs, else None."""
    points = curve.points()
    if not curve.closed or len(points) < 4 or any(step.through is None for step in curve.steps):
        return None
    if dist(points[0], points[-1]) > _ROUND:
        return None
    corners = points[:-1]
    middle = Point(sum(at.x for at in corners) / len(corners), sum(at.y for at in corners) / len(corners))
    radius = dist(middle, corners[0])
    all_points = [*corners, *(step.through for step in curve.steps if step.through is not None)]
    return middle if all(abs(dist(middle, at) - radius) <= _ROUND for at in all_points) else None


def _shifted(curve: Curve, dx: float, dy: float) -> Curve:
    def put(at: Point) -> Point:
        return Point(at.x + dx, at.y + dy)

    steps = tuple(Step(put(step.end), step.through and put(step.through)) for step in curve.steps)
    return Curve(put(curve.start), steps, curve.pen, curve.closed)
