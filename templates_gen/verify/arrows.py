"""Arrow heads, as a drawing shows them: filled triangles, by their middle and the way they point."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape


class Arrow(NamedTuple):
    """The middle of an arrow head, halfway from its base to its tip, and the vector from there to there."""

    at: Point
    ahead: Point

    @property
    def way(self) -> str:
        """Left, right, up or down, whichever it points to most."""
        if abs(self.ahead.x) > abs(self.ahead.y):
            return "right" if self.ahead.x > 0 else "left"
        return "up" if self.ahead.y > 0 else "down"


def arrows_in(shapes: Iterable[Shape]) -> Iterator[Arrow]:
    """Every arrow head among `shapes`."""
    for region in shapes:
        if isinstance(region, Region) and region.pen is Pen.SOLID and len(region.contours[0].steps) == 2:
            yield _arrow(region.contours[0])


def _arrow(contour: Curve) -> Arrow:
    tip, *base = contour.points()
    foot = Point((base[0].x + base[1].x) / 2, (base[0].y + base[1].y) / 2)
    return Arrow(Point((tip.x + foot.x) / 2, (tip.y + foot.y) / 2), Point(tip.x - foot.x, tip.y - foot.y))
