"""Whether there is a card of help: on low paper there is none."""

from __future__ import annotations

from layout.kit.box import CARDS, HELP
from layout.messages.english import ENGLISH
from layout.messages.roles.cards import CardNeed
from layout.parts.cards.card import size_of
from layout.plan import Plan

_LOW = 100.0
"""A usual card that would have to be lower than this, in mm, is left out."""


def help_left_out(plan: Plan) -> str:
    """Why there is no card on low paper, where the kit asks for none of its own size; empty where there is one."""
    _, high = size_of(plan, plan.kit.box.help, CARDS[HELP])
    return ENGLISH.say(CardNeed.TOO_LOW, least=int(_LOW)) if plan.kit.box.help is None and high < _LOW else ""
