"""How many balls of a yarn to buy in one colour, and what is left of them."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, BallsNote, Computed
from layout.values.limits import ROUNDING, plain
from layout.values.quantity import Quantity, assumed, combine
from layout.yardage.amounts import BallsNeed, PackNeed

SPARE = assumed(0.10, ENGLISH.say(Assumed.WEFT_SPARE))
SPARE_MANY = assumed(0.20, ENGLISH.say(Assumed.WEFT_SPARE_MANY))
MANY_COLOURS = 5
"""From so many colours on, each with its ends cut off, more is wasted. Our choice, as are both shares above.

They agree with the one account found: 100 g of ends cut off a tapestry of 1 m2 (D. Herd 2011), 7 to 8 % of it.
"""
_SMALL = 1 / 3


class ToBuy(NamedTuple):
    """Balls of every yarn in every colour that is sold by the ball, and what is to be said of them."""

    balls: tuple[BallsNeed, ...]
    notes: tuple[str, ...]


def balls(packs: Iterable[PackNeed]) -> ToBuy:
    """The balls of every yarn that is sold by the ball, and what is to be said of them."""
    found, notes = list[BallsNeed](), list[str]()
    for pack in packs:
        if pack.grams is not None and pack.ball_g is not None:
            found.append(_balls(pack, pack.grams, pack.ball_g))
            notes += _notes(pack, pack.grams, pack.ball_g, found[-1])
    return ToBuy(tuple(found), tuple(notes))


def _balls(pack: PackNeed, woven: Quantity, ball: float) -> BallsNeed:
    """Whole balls for what is woven and its spare: the likely figure where a sample was counted or weighed, else the
    highest. Rounded up once, after the spare is added. What is left in g is counted before the spare is used.
    """
    more = (1 + pack.spare.value) / ball
    likely, most = woven.value * more, woven.high * more
    number = max(1, math.ceil((likely if pack.sampled else most) * (1 - ROUNDING)))
    said = ENGLISH.say(Computed.LEFT, balls=number, grams=plain(ball))
    left = combine(lambda grams: max(0.0, number * ball - grams), said, woven, falling=(0,))
    return BallsNeed(pack.yarn, pack.colour, number, left, most - likely > 1)


def _notes(pack: PackNeed, woven: Quantity, ball: float, found: BallsNeed) -> tuple[str, ...]:
    """What to do where the highest figure asks for a ball more than the likely one, and where little of one is used."""
    named = {key: said for key, said in (("yarn", pack.yarn), ("colour", pack.colour)) if said}
    notes = [ENGLISH.say(BallsNote.UNSURE_COLOUR if pack.colour else BallsNote.UNSURE, **named)] if found.unsure else []
    if woven.high * (1 + pack.spare.value) < _SMALL * ball:
        notes.append(ENGLISH.say(BallsNote.SMALL_COLOUR if pack.colour else BallsNote.SMALL, **named))
    return tuple(notes)
