"""What is sawn or drilled by a template: the notches and holes of a frame end at their own size, beside their marks."""

from __future__ import annotations

from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, circle, line
from layout.frames.frame import NotchedEnd, PeggedEnd
from layout.plan import Plan
from layout.warps.pegged import peg_depth
from layout.warps.warp import End

_EMPTY_TO = 1.0  # how far the tick of a notch that stays empty reaches


def beside(plan: Plan) -> float:
    """How far in mm what is sawn or drilled reaches to each side of its mark."""
    ends = plan.kit.frame.ends
    if isinstance(ends, PeggedEnd):
        return float(ends.peg_diameter.mm) / 2
    return float(ends.notch_width.mm) / 2 if isinstance(ends, NotchedEnd) and ends.density is None else 0.0


def outlines(plan: Plan, end: End, up: int) -> list[Curve]:
    """The outlines of all notches or holes of `end`; of a bar that is there, ticks at notches that stay empty.

    `up` is +1 where the weaving lies above the part, whose outermost line is y = 0.
    """
    ends, marks = plan.kit.frame.ends, plan.warp.marks(end)
    if isinstance(ends, PeggedEnd):
        return _holes(ends, [float(x) for x in marks], up)
    if not isinstance(ends, NotchedEnd):
        return []
    if ends.density is None:
        return [_notch(float(x), float(ends.notch_width.mm) / 2, up * float(ends.notch_depth.mm)) for x in marks]
    if plan.warp.spacing == 1 / ends.density.per_mm:  # none is passed over
        return []
    between = [float((one + other) / 2) for one, other in pairwise(marks)]
    return [line(Point(x, 0.0), Point(x, up * _EMPTY_TO), Pen.HELP) for x in between]


def _notch(x: float, half: float, ground: float) -> Curve:
    """Open at the outer edge: down one side, along the ground, and back up the other."""
    corners = (Point(x - half, 0.0), Point(x - half, ground), Point(x + half, ground), Point(x + half, 0.0))
    return Curve(corners[0], tuple(map(Step, corners[1:])), Pen.REGISTER)


def _holes(ends: PeggedEnd, marks: list[float], up: int) -> list[Curve]:
    radius = float(ends.peg_diameter.mm) / 2
    return [
        circle(Point(x, up * float(peg_depth(ends, number))), radius, Pen.REGISTER) for number, x in enumerate(marks)
    ]
