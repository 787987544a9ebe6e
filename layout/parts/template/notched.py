"""Templates of notched ends: by which they are sawn, or what shows which notches of a bar to use."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Block
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.messages.roles import Marking, Template
from layout.parts.template.levels import Levels, Opening, edge_part, held, held_box, notches
from layout.parts.template.lies import how_it_lies
from layout.parts.template.notch_picture import through_notches
from layout.parts.template.template_kind import Numbered, TemplateKind
from layout.plan import Plan
from layout.values.units import say_length


class SawnTemplate(TemplateKind[NotchedEnd]):
    """Notches that are still to be made."""

    work = "notching"
    reading = (Template.A_NOTCH, Template.NUMBER_NOTCH, Template.DOTS_SAWN)
    cautions = (Template.CAUTION_SAW, Template.CAUTION_AS_MAKER_SAW)

    def levels(self, ends: NotchedEnd, *, low: bool) -> Levels:
        """Folded over the edge, or on the face alone."""
        return notches(float(ends.notch_depth.mm), None if low else float(ends.thickness.mm))

    def openings(self, ends: NotchedEnd, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """A notch of its real width and depth at every mark."""
        depth = float(ends.notch_depth.mm)
        over = 0.0 if low else edge_part(float(ends.thickness.mm))[1]
        for number, x in marks:
            yield Opening(number, x, (depth - over) / 2, float(ends.notch_width.mm), depth + over)

    def steps(self, ends: NotchedEnd, plan: Plan, *, low: bool) -> Iterator[str]:
        """Fold, saw, smooth."""
        say, words = plan.words.say, plan.words
        yield say(Template.STEP_LAY_FACE if low else Template.STEP_FOLD)
        sizes = {"width": say_length(ends.notch_width, words), "depth": say_length(ends.notch_depth, words)}
        yield say(Template.STEP_SAW, **sizes)
        yield say(Template.STEP_SMOOTH)

    def pictures(self, ends: NotchedEnd, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """A bar from its side, and the warp between the teeth."""
        yield how_it_lies(plan, ends, metrics, folded=not low)
        yield through_notches(plan, metrics, 1)


class HeldTemplate(TemplateKind[NotchedEnd]):
    """Notches that are there."""

    work = "marking"
    reading = (Template.A_USED_NOTCH, Template.NUMBER_NOTCH, Template.DOTS)
    cautions = ()
    cut, heading = Marking.STEP_CUT, Marking.READING

    def levels(self, ends: NotchedEnd, *, low: bool) -> Levels:
        """Along their ground."""
        return held()

    def openings(self, ends: NotchedEnd, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """Filled where an end lies, empty between."""
        wide = float(ends.notch_width.mm)
        for number, x in marks:
            yield held_box(number, x, wide, used=True)
        if self._every(plan) == 2:
            for (_, one), (_, other) in pairwise(marks):
                yield held_box(0, (one + other) / 2, wide, used=False)

    def steps(self, ends: NotchedEnd, plan: Plan, *, low: bool) -> Iterator[str]:
        """Lay it, find the notches, see whether they are where they should be."""
        yield plan.words.say(Template.STEP_LAY_GROUND)
        yield plan.words.say(_HELD[plan.warp.sett.to_a_notch or Fraction(1)])
        yield plan.words.say(Template.STEP_DRIFT)

    def pictures(self, ends: NotchedEnd, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """The warp between the teeth."""
        yield through_notches(plan, metrics, self._every(plan))

    def _every(self, plan: Plan) -> int:
        return 2 if plan.warp.sett.to_a_notch == Fraction(1, 2) else 1


_HELD = {
    Fraction(1, 2): Template.STEP_EVERY_SECOND,
    Fraction(1): Template.STEP_EVERY,
    Fraction(2): Template.STEP_TWO,
}
