"""The woven band of a label: as many uprights as the warp has winds or ends, up to 30, and three picks."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, line

MOST_UPRIGHTS, PICKS = 30, 3

_PICK_CLEAR = Pen.PICK.ink.width / 2 + 0.3  # half of what is left out of an upright under a pick
_UPRIGHT_CLEAR = Pen.END_MARK.ink.width / 2 + 0.28


def band(left: float, right: float, low: float, high: float, count: int) -> list[Shape]:
    """Plain weave between these places, in mm: `count` uprights at equal steps, over and under three picks by turns."""
    pitch, rise = (right - left) / count, (high - low) / PICKS
    xs = [left + pitch * (k + 0.5) for k in range(count)]
    ys = [high - rise * (j + 0.5) for j in range(PICKS)]
    shapes: list[Shape] = []
    for k, x in enumerate(xs):
        under = [y for j, y in enumerate(ys) if (k + j) % 2 == 0]
        begins = [high, *(y - _PICK_CLEAR for y in under)]
        ends = [*(y + _PICK_CLEAR for y in under), low]
        shapes += [line(Point(x, one), Point(x, other), Pen.END_MARK) for one, other in zip(begins, ends, strict=True)]
    for j, y in enumerate(ys):
        over = [x for k, x in enumerate(xs) if (k + j) % 2]
        begins = [left, *(x + _UPRIGHT_CLEAR for x in over)]
        ends = [*(x - _UPRIGHT_CLEAR for x in over), right]
        shapes += [line(Point(one, y), Point(other, y), Pen.PICK) for one, other in zip(begins, ends, strict=True)]
    return shapes
