"""The strip of one frame end: a marking strip that is wrapped round it, or the template by which it is made."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.parts.marking.kinds import MARKING, wrapped_strip
from layout.parts.marking.strip import first_mark
from layout.parts.template.kinds import template_kind
from layout.parts.template.template import template
from layout.plan import Plan
from layout.warps.warp import End


def strip(plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()) -> Part:
    """The strip of `end`; `low` gives a form that lies on small sheets.

    Words keep clear of the `joints` (x in mm). Raises LayoutError where the full form cannot be had on this bar, and
    FieldError where words find no room.
    """
    make = wrapped_strip if plan.kit.frame.ends.name in MARKING else template
    return make(plan, end, metrics, low=low, joints=joints)


def work_of(plan: Plan) -> str:
    """What is done by the strips of a plan: marking, notching, drilling or nailing."""
    return "marking" if plan.kit.frame.ends.name in MARKING else template_kind(plan).work


def numbered_marks(plan: Plan, end: End) -> list[tuple[int, float]]:
    """Every mark of the strip of `end` with its number, in the order of winding; x in mm."""
    wrapped = plan.kit.frame.ends.name in MARKING
    first = first_mark(plan, end) if wrapped else template_kind(plan).first(end)
    return list(enumerate(map(float, plan.warp.marks(end)), first))
