"""How hard the warp pulls at a frame end, and how far the end gives way."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.frames.bar import SPAN_OVER, deflection, deflection_warnings, pull
from layout.frames.frame import Frame
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam
from layout.values.forces import Force, say_force
from layout.values.quantity import Quantity, assumed, measured

USUAL_TENSION = Force(Fraction(3, 2))
"""The pull of an end where the kit does not say: a round number for a warp wound by hand, from memory."""


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
        said = say_force(self.tension)
        return ENGLISH.say(Beam.TENSION_ASSUMED, tension=said) if self.pull.assumptions else said


def load_on(frame: Frame, strength: Strength, threads: int, width_mm: Fraction) -> Load:
    """The load of so many threads over the middle `width_mm` of either end of `frame`, which both carry all of it."""
    tension = strength.tension or USUAL_TENSION
    force = pull(threads, _tension(strength.tension))
    span = frame.outer_width.mm - 2 * frame.side_width.mm
    most = span / SPAN_OVER
    bar = frame.ends.beam(strength, span)
    if isinstance(bar, Role):
        return Load(threads, tension, force, None, most, ENGLISH.say(bar))
    bent = deflection(bar, force, width_mm)
    notes = (ENGLISH.paragraph((ENGLISH.say(Beam.FORMULA), *bent.assumptions)),)
    return Load(threads, tension, force, bent, most, "", notes, deflection_warnings(bar, bent))


def _tension(said: Force | None) -> Quantity:
    if said:
        return measured(float(said.newtons), ENGLISH.say(Beam.TENSION, tension=say_force(said)))
    usual = ENGLISH.say(Beam.TENSION_USUAL, tension=say_force(USUAL_TENSION))
    return assumed(float(USUAL_TENSION.newtons), usual)
