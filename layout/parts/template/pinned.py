"""Templates for pegs and nails: through which every place of one is pricked."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Block
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.roles import Template
from layout.parts.template.levels import Levels, Opening, rows
from layout.parts.template.pin_picture import round_pins
from layout.parts.template.template_kind import Numbered, TemplateKind
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.pegged import peg_depth
from layout.warps.warp import End


class PinTemplate(TemplateKind[Ends]):
    """Pins round which the thread turns."""

    def first(self, end: End) -> int:
        """The warp is tied on at pin 0 of the near end."""
        return 0 if end == "near" else 1


class DrilledTemplate(PinTemplate[PeggedEnd]):
    """Pegs in two rows."""

    work = "drilling"
    reading = (Template.A_PEG, Template.NUMBER_PEG, Template.DOTS_DRILLED)
    cautions = (Template.CAUTION_DRILL, Template.CAUTION_AS_MAKER_DRILL)

    def levels(self, ends: PeggedEnd, *, low: bool) -> Levels:
        """From the outer edge, or from beyond the outer row."""
        outer = float(ends.edge_distance.mm)
        both = (outer, outer + float(ends.row_distance.mm))
        return rows(both, float(ends.peg_diameter.mm) / 2, from_edge=not low)

    def openings(self, ends: PeggedEnd, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """A hole for every peg."""
        wide = float(ends.peg_diameter.mm)
        for k, (number, x) in enumerate(marks):
            yield Opening(number, x, float(peg_depth(ends, k)), wide, wide, is_round=True)

    def steps(self, ends: PeggedEnd, plan: Plan, *, low: bool) -> Iterator[str]:
        """Lay it, drill, glue the pegs in."""
        yield _lay(self.levels(ends, low=low), say_length(ends.edge_distance, plan.words), plan)
        yield plan.words.say(Template.STEP_DRILL, peg=say_length(ends.peg_diameter, plan.words))
        yield plan.words.say(Template.STEP_PEGS)

    def pictures(self, ends: PeggedEnd, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """The warp round the pegs."""
        yield round_pins(plan, metrics, staggered=True, title=Template.ROUND_PEGS, beside=Template.TWO_TO_A_PEG)


class NailedTemplate(PinTemplate[NailEnd]):
    """Nails in one row."""

    work = "nailing"
    reading = (Template.A_NAIL, Template.NUMBER_NAIL, Template.DOTS)
    cautions = (Template.CAUTION_NAIL, Template.CAUTION_COVER)

    def levels(self, ends: NailEnd, *, low: bool) -> Levels:
        """From the outer edge, or from beyond the row."""
        return rows((float(ends.edge_distance.mm),), float(ends.nail_diameter.mm) / 2, from_edge=not low)

    def openings(self, ends: NailEnd, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """Every nail as it is seen from its head."""
        wide, depth = float(ends.nail_diameter.mm), float(ends.edge_distance.mm)
        for number, x in marks:
            yield Opening(number, x, depth, wide, wide, is_round=True)

    def steps(self, ends: NailEnd, plan: Plan, *, low: bool) -> Iterator[str]:
        """Lay it, prick, drive the nails in."""
        say, nail = plan.words.say, say_length(ends.nail_diameter, plan.words)
        yield _lay(self.levels(ends, low=low), say_length(ends.edge_distance, plan.words), plan)
        yield say(Template.STEP_PRICK)
        if ends.nail_length is None:
            yield say(Template.STEP_NAIL, nail=nail)
        else:
            yield say(Template.STEP_NAIL_OUT, nail=nail, out=say_length(ends.nail_length, plan.words))

    def pictures(self, ends: NailEnd, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """The warp round the nails."""
        yield round_pins(plan, metrics, staggered=False, title=Template.ROUND_NAILS, beside=Template.TWO_TO_A_NAIL)


def _lay(levels: Levels, outer: str, plan: Plan) -> str:
    """Edge to edge with the board, or so far from its edge as the row is."""
    if levels.free == 0:
        return plan.words.say(Template.STEP_LAY_EDGE)
    return plan.words.say(Template.STEP_LAY_ROW, outer=outer)
