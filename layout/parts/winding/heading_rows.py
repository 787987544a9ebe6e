"""Shed stick and heading rows on a sheet of their own, where the paper is too small for them under the winding."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, cross
from layout.drawing.sheet import Part
from layout.messages.roles import Shed
from layout.parts.winding.shed import shed_alone
from layout.parts.winding.winding import cautions, lowest
from layout.plan import Plan

_WIDE, _ARM, _CAUTION = 102.0, 0.5, 7.0


def heading_rows(plan: Plan, metrics: FontMetrics) -> Part:
    """The section of the frame with its list; three register crosses about it."""
    shapes = shed_alone(plan, Point(0, 0), _WIDE, metrics)
    shapes += cautions(plan, Point(0, lowest(shapes, metrics) - _CAUTION), _WIDE, metrics)
    low = lowest(shapes, metrics) - 1.0
    datum = Point(0.5, low), Point(_WIDE - 0.5, low), Point(0.5, 0.0)
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (0.0, low - _ARM, _WIDE, _ARM)
    title = plan.words.say(Shed.TITLE)
    return Part("heading-rows", title, tuple(shapes), datum, box, whole=True, measured=False)
