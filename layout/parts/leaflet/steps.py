"""The steps of a leaflet: from the frame to the finished piece, with this kit's own numbers."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.messages.roles import KitNumber, Leaflet
from layout.parts.held import is_held
from layout.parts.leaflet.in_box import COMB, GUIDES
from layout.parts.leaflet.marks import marks_step
from layout.parts.leaflet.winds import evened, tied_on, wound
from layout.plan import Plan
from layout.values.by_rule import by_rule
from layout.values.quantity import Quantity
from layout.yardage.heading import heading_of

_SURE = 0.005  # a range of so small a share of the figure is not shown


class LeafletStep(NamedTuple):
    """One step: the name of its picture, its title, and what is done."""

    picture: str
    title: str
    words: str


def leaflet_steps(plan: Plan) -> tuple[LeafletStep, ...]:
    """Every step in its order; heading rows alone may be left out, where a kit wants none."""
    say, rod = plan.words.say, plan.warp.kind == "rod"
    boards = plan.kit.frame.ends.name != "round bars"
    check = say(Leaflet.CHECK_BOARDS if boards else Leaflet.CHECK_BARS)
    finish = say(Leaflet.FINISH_ROD if rod else Leaflet.FINISH_CUT)
    return (
        LeafletStep("frame", say(Leaflet.CHECK), check),
        LeafletStep("marks", *marks_step(plan)),
        LeafletStep("tie-on", say(Leaflet.TIE_ON), tied_on(plan)),
        LeafletStep("winding", *wound(plan)),
        LeafletStep("tension", say(Leaflet.EVEN), evened(plan)),
        LeafletStep("stick", say(Leaflet.STICK), _stick(plan)),
        *(LeafletStep("rows", say(Leaflet.ROWS), said) for said in _rows(plan)),
        LeafletStep("space", say(Leaflet.SPACE), _space(plan)),
        LeafletStep("leashes", say(Leaflet.LEASHES), _leashes(plan)),
        LeafletStep("first-rows", say(Leaflet.FIRST), _first_rows(plan)),
        LeafletStep("sheds", say(Leaflet.WEAVE), _weave(plan)),
        LeafletStep("finish", say(Leaflet.FINISH), finish),
    )


def ruled(plan: Plan, mm: Fraction | float) -> str:
    """A length as a ruler in the kit's unit shows it."""
    return by_rule(mm, plan.words, imperial=plan.kit.frame.outer_width.imperial)


def _stick(plan: Plan) -> str:
    role = Leaflet.STICK_SECOND
    if plan.warp.kind == "wound":
        role = Leaflet.STICK_FRONT if plan.warp.winding == "figure eight" else Leaflet.STICK_FACE
    said = plan.words.say(role)
    if is_held(plan, "shed-stick"):
        return said
    long = plan.words.say(Leaflet.STICK_LONG, long=ruled(plan, plan.amounts.shed_stick_mm.value))
    return plan.words.paragraph([long, said])


def _rows(plan: Plan) -> Iterator[str]:
    asked, rod = heading_of(plan.kit.amounts.room), plan.warp.kind == "rod"
    if asked.hitched:
        yield plan.words.say(Leaflet.HITCHES_FAR if rod else Leaflet.HITCHES_BOTH)
    elif asked.rows:
        yield plan.words.say(Leaflet.ROWS_FAR if rod else Leaflet.ROWS_BOTH, rows=asked.rows)


def _space(plan: Plan) -> str:
    if is_held(plan, *GUIDES):
        left = plan.kit.weaving.start == "left"
        return plan.words.say(Leaflet.GUIDES_LEFT if left else Leaflet.GUIDES_RIGHT)
    if is_held(plan, COMB):
        return plan.words.say(Leaflet.COMB)
    return plan.words.say(Leaflet.BY_EYE, sett=plan.sett_brief)


def _leashes(plan: Plan) -> str:
    found = plan.amounts.leashes
    behind = plan.warp.kind == "wound" and plan.warp.winding == "round"
    role = Leaflet.LEASHES_BEHIND if behind else Leaflet.LEASHES_UNDER
    return plan.words.say(role, each=ruled(plan, found.each.value), number=found.number)


def _first_rows(plan: Plan) -> str:
    rise = plan.amounts.bubble_rise
    if rise is None:
        return plan.words.say(Leaflet.FIRST_ARC)
    return plan.words.say(Leaflet.FIRST_RISE, rise=ruled(plan, rise.value * plan.amounts.woven_mm[0].value))


def _weave(plan: Plan) -> str:
    behind = plan.warp.kind == "wound" and plan.warp.winding == "round"
    said = [plan.words.say(Leaflet.WEAVE_FACE if behind else Leaflet.WEAVE_SECOND)]
    if beads := plan.amounts.woven_rows:
        said.append(plan.words.say(Leaflet.WEAVE_BEADS, beads=beads, height=_about(plan, plan.amounts.woven_mm[1])))
    return plan.words.paragraph(said)


def _about(plan: Plan, size: Quantity) -> str:
    said = ruled(plan, size.value)
    if size.high - size.low <= _SURE * abs(size.value):
        return said
    return plan.words.say(KitNumber.ABOUT, amount=said)
