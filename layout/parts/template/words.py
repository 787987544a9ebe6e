"""What stands on a template, wish by wish from what matters most."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.messages.catalogue import Role
from layout.messages.roles import Marking, Template
from layout.parts.marking.flap import Phrase, Stand
from layout.plan import Plan
from layout.warps.warp import End

_NAMES = {"near": (Marking.NEAR_BRIEF, Marking.NEAR), "far": (Marking.FAR_BRIEF, Marking.FAR)}
_PIECES = {
    "near": (Template.NEAR_PIECE, Marking.NEAR_PIECE),
    "far": (Template.FAR_PIECE, Marking.FAR_PIECE),
}
_SIDES: dict[Stand, Marking] = {"left": Marking.LEFT, "right": Marking.RIGHT}
_ON: dict[Stand, Marking] = {"left": Marking.ON_LEFT, "right": Marking.ON_RIGHT}
_OFF: dict[Stand, Marking] = {"left": Marking.OFF_LEFT, "right": Marking.OFF_RIGHT}

TO_WEAVING = "weaving"
"""The phrase that has an arrow to the weaving before it."""


def wishes(plan: Plan, end: End, count: tuple[int, int], edges: Sequence[float]) -> list[list[Phrase]]:
    """The phrases of the template of `end`, whose marks count from one to another; its pieces have these `edges`."""
    say = plan.words.say
    brief, name = _NAMES[end]
    whole = len(edges) == 2
    short, long = (_labels(plan, role, edges) for role in _PIECES[end])
    return [
        [Phrase("name", say(brief), pen=Pen.STRONG)] if whole else short,
        [Phrase(side, say(role), side) for side, role in _SIDES.items()],
        [Phrase("centre", say(Marking.CENTRE), "centre")],
        *([Phrase(side, say(role, number=number), side)] for side, role, number in _tied(plan, end, *count)),
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


def _tied(plan: Plan, end: End, first: int, last: int) -> list[tuple[Stand, Marking, int]]:
    """At which sides the thread is tied on and off: an odd warp is tied off at the far end."""
    both: tuple[Stand, Stand] = ("left", "right")
    starts, stops = both[:: plan.warp.toward]
    found: list[tuple[Stand, Marking, int]] = []
    if end == "near":
        found.append((starts, _ON[starts], first))
    if (end == "far") == bool(plan.warp.ends % 2):
        found.append((stops, _OFF[stops], last))
    return found
