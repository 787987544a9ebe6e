"""How hard the warp pulls at a frame end, and how far the end gives way."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.frames.bar import SPAN_OVER, deflection, deflection_warnings, pull
from layout.frames.frame import Frame
from layout.frames.strength import Strength
from layout.values.forces import Force, say_force
from layout.values.quantity import Quantity, assumed, measured

USUAL_TENSION = Force(Fraction(3, 2))
"""What an end is taken to pull where the kit does not say: a round figure for a warp wound by hand, from memory."""

_FORMULA = (
    "A frame end bends as a simply supported beam of span L that carries F over its middle width W, by "
    "F (8 L^3 - 4 L W^2 + W^3) / (384 E I): 5 w L^4 / (384 E I) where W = L (any engineering handbook)."
)


@dataclass(frozen=True, slots=True)
class Load:
    """The pull of all `threads` on one frame end in N, each with that `tension`, and what it does.

    `bending` is how far its middle gives way in mm, None where the kit does not say what that needs (`wanting`, a
    sentence); `most` is how far it may.
    """

    threads: int
    tension: Force
    pull: Quantity
    bending: Quantity | None
    most: Fraction
    wanting: str
    notes: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()

    @property
    def tension_words(self) -> str:
        """The tension of a thread, and whether it was assumed."""
        return say_force(self.tension) + (" (assumed)" if self.pull.assumptions else "")


def load_on(frame: Frame, strength: Strength, threads: int, width_mm: Fraction) -> Load:
    """The load of so many threads over the middle `width_mm` of either end of `frame`, which both carry all of it."""
    tension = strength.tension or USUAL_TENSION
    force = pull(threads, _tension(strength.tension))
    span = frame.outer_width.mm - 2 * frame.side_width.mm
    most = span / SPAN_OVER
    bar = frame.ends.beam(strength, span)
    if isinstance(bar, str):
        return Load(threads, tension, force, None, most, bar)
    bent = deflection(bar, force, width_mm)
    notes = (" ".join((_FORMULA, *bent.assumptions)),)
    return Load(threads, tension, force, bent, most, "", notes, deflection_warnings(bar, bent))


def _tension(said: Force | None) -> Quantity:
    if said:
        return measured(float(said.newtons), f"A thread pulls with {say_force(said)}, as stated.")
    usual = f"A thread pulls with {say_force(USUAL_TENSION)}, a round figure for a warp wound by hand, from memory."
    return assumed(float(USUAL_TENSION.newtons), usual)
