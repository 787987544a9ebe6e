"""What the cards of a box say of a kit: its warp, and the sizes of weaving and frame."""

from __future__ import annotations

from fractions import Fraction

from layout.messages.roles import Count, SettUnit
from layout.messages.roles.cards import Card
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import say_length
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.ruled import ruled


def warp_of(plan: Plan) -> str:
    """Sett, ends and what is doubled."""
    kit, say, sett = plan.kit, plan.words.say, plan.warp.sett
    role, per = (SettUnit.PER_INCH, Fraction(127, 5)) if sett.unit.imperial else (SettUnit.PER_CM, Fraction(10))
    said = [say(role, number=say_number(sett.per_mm * per))]
    said.append(say(Count.ENDS, ends=ends_of(kit, sett.per_mm)))
    said += [say(Count.DOUBLED)] if kit.weaving.doubled_warp else []
    outer = kit.weaving.doubled_selvedges
    said += [say(Count.DOUBLED_OUTER, outer=outer)] if outer else []
    return plan.words.listed(said)


def sizes_of(plan: Plan) -> tuple[str, str]:
    """How large the weaving is and how large the frame, as the kit says it; what it leaves out by a ruler."""
    kit, words = plan.kit, plan.words
    inches = kit.frame.outer_width.imperial
    given = kit.weaving.width, kit.weaving.height
    woven = [
        say_length(side, words) if side else ruled(size.value, words, inches=inches)
        for side, size in zip(given, plan.amounts.woven_mm, strict=True)
    ]
    frame = [say_length(side, words) for side in (kit.frame.outer_width, kit.frame.outer_height)]
    weaving = words.say(Card.WEAVING, width=woven[0], height=woven[1])
    return weaving, words.say(Card.FRAME, width=frame[0], height=frame[1])
