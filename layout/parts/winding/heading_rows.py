"""Shed stick and heading rows on a sheet of their own, where the paper is too small for them under the winding."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, cross
from layout.drawing.sheet import Part
from layout.messages.roles import Shed
from layout.parts.winding.cautions import cautions
from layout.parts.winding.shed import shed_alone
from layout.parts.winding.winding import lowest
from layout.plan import Plan

_UPRIGHT, _ACROSS, _ARM = 102.0, 166.0, 0.5


def heading_rows(plan: Plan, metrics: FontMetrics, *, wide: bool = False) -> Part:
    """The section of the frame with its list under it, or beside it where it is `wide`; three crosses about it."""
    right = _ACROSS if wide else _UPRIGHT
    shapes = shed_alone(plan, Point(0, 0), right, metrics, wide=wide)
    low = lowest(shapes, metrics) - 1.0
    datum = Point(0.5, low), Point(right - 0.5, low), Point(0.5, 0.0)
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part(
        "heading-rows",
        plan.words.say(Shed.TITLE),
        tuple(shapes),
        datum,
        (0.0, low - _ARM, right, _ARM),
        whole=True,
        cautions=tuple(said for _, said in cautions(plan)),
        measured=False,
    )
