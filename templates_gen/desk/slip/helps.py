"""What is said of a line while it is filled in, with the numbers of the kit where they help."""

from __future__ import annotations

from fractions import Fraction

from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from layout.values.units import Length, down, say_length
from templates_gen.desk.slip.forms import Line
from templates_gen.messages.roles.desk_slip import DeskSlip

BY_PLAN = ("weaving.width", "weaving.height")
"""Lines whose help has numbers of the plan."""


def helped(line: Line, plan: Plan | None, words: Catalogue) -> str:
    """A sentence on the line; of width and height what the frame of the plan leaves, in the unit of the frame."""
    if plan is None:
        return line.helped(words)
    frame = plan.kit.frame
    if line.name == BY_PLAN[0]:
        return words.say(DeskSlip.WIDTH_HERE, width=say_length(frame.widest_weaving))
    if line.name == BY_PLAN[1]:
        most = Length(Fraction(plan.amounts.weavable_height_mm.value), frame.outer_height.unit)
        return words.say(DeskSlip.HEIGHT_HERE, height=down(most))
    return line.helped(words)
