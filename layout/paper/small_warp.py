"""The small warp in the head of a sheet: one end for each step of the work, and a pick that has come as far as this."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, line

STEPS = 8
"""The steps of the whole work."""

WARP_WIDE = 18.6
"""From the right edge of the head to where words beside the small warp must end, in mm."""

_APART, _HIGH, _FIRST, _PICK_UP, _CLEAR = 2.2, 3.4, 16.0, 1.7, 0.3


def small_warp(step: int, corner: Point) -> list[Shape]:
    """The eight ends, standing on the baseline through `corner`, the lower right one of the head, and the pick.

    It passes over the first end and every second one, and behind the others, where it leaves `_CLEAR` mm free.
    """
    xs = [corner.x - _FIRST + _APART * k for k in range(STEPS)]
    shapes: list[Shape] = [line(Point(x, corner.y), Point(x, corner.y + _HIGH), Pen.SMALL_WARP) for x in xs]
    behind = xs[1:step:2]
    begins = [xs[0] - _APART / 2, *(x + _CLEAR for x in behind)]
    ends = [*(x - _CLEAR for x in behind), xs[step - 1] + _APART / 2]
    y = corner.y + _PICK_UP
    return shapes + [line(Point(one, y), Point(other, y), Pen.PICK) for one, other in zip(begins, ends, strict=True)]
