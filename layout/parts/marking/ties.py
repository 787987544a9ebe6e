"""Which side is which, and where the thread is tied on and off: as strips and templates say it."""

from __future__ import annotations

from layout.messages.catalogue import Catalogue
from layout.messages.roles import Marking
from layout.parts.marking.flap import Phrase, Stand
from layout.plan import Plan
from layout.warps.warp import End

_SIDES: dict[Stand, Marking] = {"left": Marking.LEFT, "right": Marking.RIGHT}
_ON: dict[Stand, Marking] = {"left": Marking.ON_LEFT, "right": Marking.ON_RIGHT}
_OFF: dict[Stand, Marking] = {"left": Marking.OFF_LEFT, "right": Marking.OFF_RIGHT}


def sides(words: Catalogue) -> list[Phrase]:
    """The words for left and right."""
    return [Phrase(side, words.say(role), side) for side, role in _SIDES.items()]


def tied(plan: Plan, end: End, first: int, last: int) -> list[tuple[Stand, Marking, int]]:
    """At which sides of `end` the thread is tied on and off, and at which mark: an odd warp is tied off far."""
    both: tuple[Stand, Stand] = ("left", "right")
    starts, stops = both[:: plan.warp.toward]
    found: list[tuple[Stand, Marking, int]] = []
    if end == "near":
        found.append((starts, _ON[starts], first))
    if (end == "far") == bool(plan.warp.ends % 2):
        found.append((stops, _OFF[stops], last))
    return found
