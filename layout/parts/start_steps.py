"""The work in its order, as the first sheet of a kit lists it: tile, name, one sentence, and which picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from layout.messages.catalogue import Role
from layout.messages.roles import SheetName, Start
from layout.plan import Plan


class WorkStep(NamedTuple):
    """A step of the work: its `tile`, its name and what is done, and the name of its picture.

    What is said stands by its role, or in words.
    """

    tile: str
    name: Role | str
    does: Role | str
    icon: str


_MARKS: Mapping[str, tuple[Role, Role, str]] = {
    "notched": (SheetName.NAME_NOTCHES, Start.NOTCHES, "notches"),
    "pegged": (SheetName.NAME_PEGS, Start.PEGS, "pegs"),
    "nailed": (SheetName.NAME_NAILS, Start.NAILS, "nails"),
}
"""What is done at the frame ends, by how they carry the warp; all others get marking strips."""

_COURSES: Mapping[str, str] = {"round": "round", "figure eight": "eight", "loose rod": "rod"}


def work_steps(plan: Plan, *, grid: bool) -> tuple[WorkStep, ...]:
    """Every step, and the gauge beside them; without a `grid` the seventh is weaving alone."""
    ends = plan.kit.frame.ends
    name, marks, icon = _MARKS.get(ends.kind, (SheetName.NAME_STRIPS, Start.STRIPS, "strips"))
    if marks is Start.STRIPS and plan.warp.kind == "rod":
        marks = Start.STRIPS_ENDS
    if ends.notches:
        marks = Start.NOTCHES_THERE
    check = Start.CHECK_BARS if ends.name == "round bars" else Start.CHECK_BOARDS
    course = _COURSES[plan.kit.weaving.how_wound] if ends.kind == "wound" else "face"
    layers = plan.amounts.leashes.ends != "every second"
    heading, leashes = (Start.HEADING, Start.LEASHES) if layers else (Start.HEADING_ON_FACE, Start.LEASHES_ON_FACE)
    weave = (SheetName.NAME_GRID, Start.GRID) if grid else (Start.NAME_WEAVING, Start.WEAVING)
    finish = Start.FINISH_ON_ROD if course == "rod" else Start.FINISH
    return (
        WorkStep("1", SheetName.NAME_FRAME_CHECK, check, "check"),
        WorkStep("G", SheetName.NAME_WRAP_GAUGE, Start.GAUGE, "gauge"),
        WorkStep("2", name, marks, icon),
        WorkStep("3", SheetName.NAME_WINDING, Start.WINDING, course),
        WorkStep("4", Start.NAME_HEADING, heading, "heading"),
        WorkStep("5", SheetName.NAME_GUIDES, Start.GUIDES, "guides"),
        WorkStep("6", Start.NAME_LEASHES, leashes, "leashes"),
        WorkStep("7", weave[0], weave[1], "grid"),
        WorkStep("8", Start.NAME_FINISH, finish, "finish"),
    )
