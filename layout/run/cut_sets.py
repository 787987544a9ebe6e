"""What is cut for the boxes of a run: which cut parts each box holds, and which are cut once."""

from __future__ import annotations

from layout.cutting.products import cut_suiting
from layout.kit.box import CUT
from layout.plan import Plan

OF_FRAME, TOOLS = ("end-bars",), ("peg-jig",)
"""What is cut of the frame itself, and what the maker drills it by: both where the frame lies in the box."""


def each_cut(plan: Plan) -> tuple[str, ...]:
    """The cut products that lie in each box of a kit, those of its frame too, as far as its ends ask for them."""
    box = plan.kit.box
    held = (*(name for name in CUT if name in box.each_holds), *(OF_FRAME if box.frame else ()))
    return tuple(name for name in cut_suiting(plan) if name in held)


def once_cut(plan: Plan) -> tuple[str, ...]:
    """Those that are cut once for all boxes of a kit."""
    box = plan.kit.box
    held = (*(name for name in CUT if name in box.run_holds), *(TOOLS if box.frame else ()))
    return tuple(name for name in cut_suiting(plan) if name in held)
