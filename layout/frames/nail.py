"""How two ends bend the nail that they turn round: a cantilever of round steel, loaded at its head."""

from __future__ import annotations

import math

from layout.messages.english import ENGLISH
from layout.messages.roles import Beam
from layout.values.limits import plain

MOST_BENT, MOST_STRESS = 0.2, 250.0
"""mm, and N/mm2: about where plain steel yields (common values, from memory). Both limits are our own choice."""

STEEL = 200_000.0
"""The elastic modulus of steel in N/mm2, a round figure (any engineering handbook)."""


def nail_bent(thick: float, long: float, newtons: float) -> float:
    """How far the head gives way in mm: 2 T l^3 / (3 E I), with I = pi d^4 / 64 (any engineering handbook)."""
    return 2 * newtons * long**3 / (3 * STEEL * math.pi * thick**4 / 64)


def nail_stress(thick: float, long: float, newtons: float) -> float:
    """The greatest stress in it in N/mm2, at the board: 2 T l r / I."""
    return 2 * newtons * long * (thick / 2) / (math.pi * thick**4 / 64)


def nail_warnings(thick: float, long: float, newtons: float) -> tuple[str, ...]:
    """One sentence where a nail `thick` mm thick that stands `long` mm out of the board gives way under ends that each
    pull with so many `newtons`; else nothing.
    """
    bent, stress = nail_bent(thick, long, newtons), nail_stress(thick, long, newtons)
    if bent <= MOST_BENT and stress <= MOST_STRESS:
        return ()
    values = {"bent": plain(round(bent, 2)), "stress": plain(round(stress)), "pull": plain(round(2 * newtons, 2))}
    return (ENGLISH.say(Beam.NAIL_BENDS, **values),)
