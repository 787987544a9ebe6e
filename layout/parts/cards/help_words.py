"""What the card of help and finish says, with this kit's numbers."""

from __future__ import annotations

from fractions import Fraction

from layout.messages.roles.cards import HelpCard
from layout.plan import Plan
from layout.values.by_rule import by_rule
from layout.values.units import say_length

_DEEP, _STEP = {False: Fraction(50), True: Fraction(254, 5)}, {False: Fraction(20), True: Fraction(127, 5)}
"""How deep a new end lies in the cloth, and how often the width is measured: 5 cm or 2 in, 2 cm or 1 in. Our choice."""

_TAIL = 25
"""Tails of the weft in mm where the kit does not say (common practice; as the amounts assume)."""

_SHORT_FRINGE = 60.0
"""Ends shorter than this in mm are hard to knot, and are needled back. Our choice."""

_TEN_BEADS = 200  # twenty picks, over picks to the centimetre, in mm


def help_words(plan: Plan) -> list[list[str]]:
    """What may go wrong, and what to do then, sentence by sentence."""
    say, kit = plan.words.say, plan.kit
    imperial = kit.frame.outer_width.imperial

    def ruled(mm: Fraction | float) -> str:
        return by_rule(mm, plan.words, imperial=imperial)

    given = kit.amounts.weft.tail
    tail = say_length(given, plan.words) if given else ruled(_TAIL)
    showing = [say(HelpCard.SHOWING), say(HelpCard.SHOWING_BEAT)]
    if picks := plan.amounts.picks_per_cm:
        showing.append(say(HelpCard.SHOWING_BEADS, high=ruled(_TEN_BEADS / picks.value)))
    wide = say(HelpCard.PULLING_WIDE, step=ruled(_STEP[imperial]), width=ruled(plan.amounts.woven_mm[0].value))
    lay = say(HelpCard.BROKEN_LAY, deep=ruled(_DEEP[imperial]))
    return [
        [say(HelpCard.SLACK), say(HelpCard.SLACK_ALONG), say(HelpCard.SLACK_ALONE)],
        [say(HelpCard.BROKEN), lay, say(HelpCard.BROKEN_TIE)],
        [say(HelpCard.PULLING), say(HelpCard.PULLING_ARC), wide],
        showing,
        [say(HelpCard.NEW_WEFT), say(HelpCard.NEW_WEFT_INSIDE), say(HelpCard.NEW_WEFT_TAILS, tail=tail)],
    ]


def finish_words(plan: Plan) -> list[tuple[HelpCard, str]]:
    """The steps of taking the piece off, in order, each with its role."""
    say, kit = plan.words.say, plan.kit
    hem = kit.amounts.hem
    first = (
        (HelpCard.STEP_HEM, say(HelpCard.STEP_HEM, hem=say_length(hem, plan.words)))
        if hem
        else (HelpCard.STEP_WEAVE, say(HelpCard.STEP_WEAVE))
    )
    fringe = min(plan.amounts.fringe_near_mm.value, plan.amounts.fringe_far_mm.value)
    secure = HelpCard.STEP_NEEDLE if fringe < _SHORT_FRINGE else HelpCard.STEP_KNOT
    if kit.weaving.how_wound == "loose rod":
        roles: tuple[HelpCard, ...] = (HelpCard.STEP_SLACKEN, HelpCard.STEP_DRAW, HelpCard.STEP_DARN)
    else:
        roles = (HelpCard.STEP_GLASSES, HelpCard.STEP_CUT, secure, HelpCard.STEP_OUTWARD, HelpCard.STEP_DARN)
    return [first, *((role, say(role)) for role in roles)]
