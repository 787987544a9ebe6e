"""How many balls of a yarn to buy in one colour, and what is left of them."""

from __future__ import annotations

import math
from dataclasses import dataclass

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, BallsNote, Computed
from layout.values.limits import ROUNDING, plain
from layout.values.quantity import Quantity, assumed, combine
from layout.yardage.amounts import BallsNeed

SPARE = assumed(0.10, ENGLISH.say(Assumed.WEFT_SPARE))
SPARE_MANY = assumed(0.20, ENGLISH.say(Assumed.WEFT_SPARE_MANY))
MANY_COLOURS = 5
"""From so many colours on, each with its ends cut off, more is wasted. Our choice, as are both shares above.

They agree with the one account found: 100 g of ends cut off a tapestry of 1 m2 (D. Herd 2011), 7 to 8 % of it.
"""
_SMALL = 1 / 3


@dataclass(frozen=True, slots=True)
class Wanted:
    """A yarn in one colour: how much of it is `woven` in g, waste and hems with it, and what a `ball` weighs in g."""

    yarn: str
    colour: str
    woven: Quantity
    ball: float


def balls(wanted: Wanted, spare: Quantity, *, sampled: bool) -> BallsNeed:
    """Whole balls for what is woven and its spare: the likely figure where a sample was counted or weighed, else the
    highest. Rounded up once, after the spare is added. What is left in g is counted before the spare is used.
    """
    more = (1 + spare.value) / wanted.ball
    likely, most = wanted.woven.value * more, wanted.woven.high * more
    number = max(1, math.ceil((likely if sampled else most) * (1 - ROUNDING)))
    said = ENGLISH.say(Computed.LEFT, balls=number, grams=plain(wanted.ball))
    left = combine(lambda woven: max(0.0, number * wanted.ball - woven), said, wanted.woven, falling=(0,))
    return BallsNeed(wanted.yarn, wanted.colour, number, left, most - likely > 1)


def balls_notes(wanted: Wanted, spare: Quantity, found: BallsNeed) -> tuple[str, ...]:
    """What to do where the highest figure asks for a ball more than the likely one, and where little of one is used."""
    named = {"yarn": wanted.yarn, "colour": wanted.colour}
    role = BallsNote.UNSURE_COLOUR if wanted.colour else BallsNote.UNSURE
    notes = [ENGLISH.say(role, **{key: said for key, said in named.items() if said})] if found.unsure else []
    if wanted.woven.high * (1 + spare.value) < _SMALL * wanted.ball:
        role = BallsNote.SMALL_COLOUR if wanted.colour else BallsNote.SMALL
        notes.append(ENGLISH.say(role, **{key: said for key, said in named.items() if said}))
    return tuple(notes)
