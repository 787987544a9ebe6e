"""What stands on a template, wish by wish from what matters most."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.messages.catalogue import Role
from layout.messages.roles import Marking, Template
from layout.parts.marking.flap import Phrase
from layout.parts.marking.ties import sides, tied
from layout.parts.order_phrase import order_wishes
from layout.plan import Plan
from layout.warps.warp import End

_NAMES = {"near": (Marking.NEAR_BRIEF, Marking.NEAR), "far": (Marking.FAR_BRIEF, Marking.FAR)}
_PIECES = {
    "near": (Template.NEAR_PIECE, Marking.NEAR_PIECE),
    "far": (Template.FAR_PIECE, Marking.FAR_PIECE),
}

TO_WEAVING = "weaving"
"""The phrase that has an arrow to the weaving before it."""


def wishes(plan: Plan, end: End, count: tuple[int, int], edges: Sequence[float]) -> list[list[Phrase]]:
    """The phrases of the template of `end`, whose marks count from one to another; its pieces have these `edges`."""
    say = plan.words.say
    brief, name = _NAMES[end]
    whole = len(edges) == 2
    short, long = (_labels(plan, role, edges) for role in _PIECES[end])
    return [
        *([[Phrase("name", say(brief), pen=Pen.STRONG)]] if whole else [[label] for label in short]),
        *order_wishes(plan, edges),
        sides(plan.words),
        [Phrase("centre", say(Marking.CENTRE), "centre")],
        *([Phrase(side, say(role, number=number), side)] for side, role, number in tied(plan, end, *count)),
        [Phrase(TO_WEAVING, say(Template.TO_WEAVING), arrow=-1)],
        *([[Phrase("name", say(name), pen=Pen.STRONG)]] if whole else [[label] for label in long]),
    ]


def _labels(plan: Plan, role: Role, edges: Sequence[float]) -> list[Phrase]:
    """The name of every piece, within it."""
    total = len(edges) - 1
    return [
        Phrase(f"piece {k}", plan.words.say(role, number=k, total=total), pen=Pen.STRONG, between=between)
        for k, between in enumerate(pairwise(edges), 1)
    ]
