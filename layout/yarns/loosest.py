"""How thick a yarn may lie that was never wrapped: the upper end of what its compressed thickness leaves open."""

from __future__ import annotations

import math

from layout.messages.english import ENGLISH
from layout.messages.roles import Thickness
from layout.values.quantity import assumed, computed
from layout.yarns.diameter import Diameter, Kind

CABLED = 2 / math.sqrt(2) * (1 + 2 / math.sqrt(3)) / math.sqrt(3)
"""How many times wider than all its threads as one solid round is the circle round a cord of two plies of three.

By geometry: the circle round two is 2 times as wide as each of them, round three 1 + 2 / sqrt(3) times, and areas add.
Of the usual ways to ply and cable, this is the loosest.
"""


def loosest(pressed: Diameter) -> Diameter:
    """A compressed diameter as thick as a plied or cabled yarn of it lies at most before it is pressed."""
    reason = ENGLISH.say(Thickness.LOOSEST)
    thick = computed(pressed.mm * CABLED, reason, pressed.figure, assumed(CABLED, reason))
    return Diameter(thick, Kind.SOFT)
