"""Pictures that are drawn for one way of winding and one side of the frame, and mirrored for the others."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text
from layout.drawing.typeset import SMALL
from layout.plan import Plan

WIDE = 97.0
"""The width of a column of text in mm."""


class Mirror(NamedTuple):
    """Turns a picture `high` mm high, hanging from y = 0: left and right, or top and bottom, or both."""

    high: float
    sides: bool
    ends: bool

    def point(self, at: Point) -> Point:
        """Where a place comes to lie."""
        return Point(WIDE - at.x if self.sides else at.x, -self.high - at.y if self.ends else at.y)

    def shapes(self, shapes: Iterable[Shape]) -> list[Shape]:
        """The same shapes mirrored; words are set by `words` instead."""
        return [self._shape(shape) for shape in shapes if not isinstance(shape, Text)]

    def words(self, said: str, at: Point, metrics: FontMetrics, pen: Pen = Pen.TEXT, side: int = 0) -> Text:
        """Words with their middle at a place that is mirrored; `side` 1 if they begin there, -1 if they end there."""
        x, y = self.point(at)
        wide, beside = metrics.width(said, SMALL, pen), -side if self.sides else side
        left = x - wide / 2 if beside == 0 else x if beside > 0 else x - wide
        return Text(Point(left, y - metrics.cap * SMALL / 2), SMALL, said, pen=pen)

    def _shape(self, shape: Shape) -> Shape:
        if isinstance(shape, Region):
            return Region(tuple(map(self._path, shape.contours)), shape.pen)
        return self._path(shape) if isinstance(shape, Curve) else shape

    def _path(self, path: Curve) -> Curve:
        steps = tuple(Step(self.point(end), through and self.point(through)) for end, through in path.steps)
        return Curve(self.point(path.start), steps, path.pen, path.closed)


def mirror(plan: Plan, high: float) -> Mirror:
    """From the left and with the near end below, where the plan is otherwise."""
    return Mirror(high, plan.warp.toward < 0, plan.kit.weaving.near_end == "top")
