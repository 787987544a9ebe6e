"""What the card of help and finish must say of a kit: from the kit, and of amounts, which their own tests prove."""

from __future__ import annotations

from fractions import Fraction

from layout.messages.roles.cards import HelpCard
from layout.plan import Plan
from layout.values.units import say_length
from templates_gen.verify.printed.ruled import ruled

_TAIL_MM, _SHORT_MM = 25, 60


def troubles_of(plan: Plan) -> list[list[str]]:
    """What may go wrong and what to do then, in the order of the card."""
    say, inches = plan.words.say, plan.kit.frame.outer_width.imperial
    inch = Fraction(127, 5)
    deep, step = (2 * inch, inch) if inches else (Fraction(50), Fraction(20))

    def measure(mm: Fraction | float) -> str:
        return ruled(mm, plan.words, inches=inches)

    tail, picks = plan.kit.amounts.weft.tail, plan.amounts.picks_per_cm
    beads = [say(HelpCard.SHOWING_BEADS, high=measure(200 / picks.value))] if picks else []
    return [
        [say(HelpCard.SLACK), say(HelpCard.SLACK_ALONG), say(HelpCard.SLACK_ALONE)],
        [say(HelpCard.BROKEN), say(HelpCard.BROKEN_LAY, deep=measure(deep)), say(HelpCard.BROKEN_TIE)],
        [
            say(HelpCard.PULLING),
            say(HelpCard.PULLING_ARC),
            say(HelpCard.PULLING_WIDE, step=measure(step), width=measure(plan.amounts.woven_mm[0].value)),
        ],
        [say(HelpCard.SHOWING), say(HelpCard.SHOWING_BEAT), *beads],
        [
            say(HelpCard.NEW_WEFT),
            say(HelpCard.NEW_WEFT_INSIDE),
            say(HelpCard.NEW_WEFT_TAILS, tail=say_length(tail, plan.words) if tail else measure(_TAIL_MM)),
        ],
    ]


def is_rod(plan: Plan) -> bool:
    """Whether the warp comes off as loops, when its rod is drawn."""
    return plan.kit.weaving.near_hold == "loose rod"


def is_needled(plan: Plan) -> bool:
    """Whether ends are too short to be knotted."""
    return min(plan.amounts.fringe_near_mm.value, plan.amounts.fringe_far_mm.value) < _SHORT_MM


def steps_of(plan: Plan) -> list[str]:
    """The steps of taking the piece off."""
    say, hem = plan.words.say, plan.kit.amounts.hem
    steps = [say(HelpCard.STEP_HEM, hem=say_length(hem, plan.words)) if hem else say(HelpCard.STEP_WEAVE)]
    if is_rod(plan):
        return [*steps, say(HelpCard.STEP_SLACKEN), say(HelpCard.STEP_DRAW), say(HelpCard.STEP_DARN)]
    steps += [say(HelpCard.STEP_GLASSES), say(HelpCard.STEP_CUT)]
    steps.append(say(HelpCard.STEP_NEEDLE if is_needled(plan) else HelpCard.STEP_KNOT))
    return [*steps, say(HelpCard.STEP_OUTWARD), say(HelpCard.STEP_DARN)]
