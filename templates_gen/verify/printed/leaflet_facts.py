"""What the proof of a leaflet goes by: the kit, its passes and marks, and what lies in its box."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected_passes import ExpectedPass, NumberedMarks, expected_passes, numbered_marks
from templates_gen.verify.printed.held import held_each, held_once

_USUAL_ROWS = 2


class Facts(NamedTuple):
    """What words and pictures follow from; `held` lies in the box, or once in its run."""

    kit: Kit
    sett: Fraction
    passes: tuple[ExpectedPass, ...]
    marks: NumberedMarks
    held: tuple[str, ...]

    @property
    def toward(self) -> int:
        """+1 where the winding goes on to the right."""
        return 1 if self.kit.weaving.start == "left" else -1

    def has(self, *names: str) -> bool:
        """Whether any of these lies in the box, or once in a run."""
        return any(name in self.held for name in names)

    @property
    def far_off(self) -> bool:
        """Whether the last pass leads to the far end, and is tied off there."""
        return self.passes[-1].up and not truth_of(self.kit).on_rod

    def on_face(self, *, far: bool) -> list[bool]:
        """From left to right, which ends lie on the face at a frame end."""
        each = [one.far_face if far else one.face for one in self.passes]
        return each if self.toward > 0 else each[::-1]


def facts_of(plan: Plan) -> Facts:
    """The facts of a plan's kit."""
    kit, sett = plan.kit, plan.warp.sett.per_mm
    unit, held = plan.warp.sett.unit.mm, (*held_each(plan), *held_once(plan))
    return Facts(kit, sett, expected_passes(kit, sett, unit), numbered_marks(kit, sett, unit), held)


def rows_of(kit: Kit) -> int:
    """Heading rows at an end; 1 for half hitches."""
    room = kit.amounts.room
    if isinstance(room.heading, str):
        return 1
    return _USUAL_ROWS if room.heading_rows is None else room.heading_rows
