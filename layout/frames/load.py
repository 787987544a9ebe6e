"""How hard the warp pulls at a frame end, how far the end gives way, and what stress it is under."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from layout.frames.bar import SPAN_OVER, deflection, deflection_warnings, pull, stress, stress_warnings
from layout.frames.frame import Frame
from layout.frames.materials import CREEP, material_of
from layout.frames.strength import Strength
from layout.frames.tension import WarpThread, readings, tension_of
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam, Known
from layout.values.forces import Force, say_force
from layout.values.numerals import say_number
from layout.values.quantity import Origin, Quantity

CHILD = 200.0
"""A frame that pulls harder than this, in N, is none for a child (our limit)."""

_HOW: Mapping[Origin, Role] = {
    Origin.MEASURED: Known.MEASURED,
    Origin.COMPUTED: Known.COMPUTED,
    Origin.ASSUMED: Known.ASSUMED,
}


@dataclass(frozen=True, slots=True)
class Load:
    """The pull of one `thread` in N, that of all `threads` on one bar, and what it does.

    `tension` is the pull of a thread as the kit states it. `bending` is how far the middle of a bar gives way in mm,
    None where the kit does not say what that needs (`wanting`, a sentence); `most` is how far it may. `stress` is in
    N/mm2, and `allowed` what it may be; None where that is unknown.
    """

    threads: int
    tension: Force | None
    thread: Quantity
    pull: Quantity
    bending: Quantity | None
    most: Fraction
    wanting: str
    stress: Quantity | None = None
    allowed: Quantity | None = None
    notes: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()

    @property
    def thread_words(self) -> str:
        """The pull of a thread, and between what it may lie if that is not known exactly."""
        said = self.thread
        if self.tension is not None and said.exact:
            return say_force(self.tension)
        likely, low, high = (say_number(each, 1) for each in (said.value, said.low, said.high))
        return ENGLISH.say(Beam.TENSION_RANGE, tension=likely, low=low, high=high, origin=_HOW[said.origin])


def load_on(frame: Frame, strength: Strength, thread: WarpThread | None, threads: int, width_mm: Fraction) -> Load:
    """The load of so many threads over the middle `width_mm` of either end of `frame`, which both carry all of it.

    `thread` is one of them; None where its weight is not known.
    """
    each = tension_of(strength, thread)
    force = pull(threads, each)
    span = frame.outer_width.mm - 2 * frame.side_width.mm
    most = span / SPAN_OVER
    notes, warnings = tuple(_of_the_pull(force)), tuple(_of_readings(strength, thread, each))
    bar, material = frame.ends.beam(strength, span), material_of(strength, frame.ends.deep_mm)
    if isinstance(bar, Role) or material is None:
        wanting = ENGLISH.say(bar) if isinstance(bar, Role) else ""
        return Load(threads, strength.tension, each, force, None, most, wanting, notes=notes, warnings=warnings)
    creeps = strength.left_warped == "months" and material.creeps
    bent = deflection(bar, force, width_mm, CREEP if creeps else None)
    stressed, allowed = stress(bar, force, width_mm), material.allowed
    formula = ENGLISH.paragraph((ENGLISH.say(Beam.FORMULA), *bent.assumptions))
    warnings += deflection_warnings(bar, bent) + (stress_warnings(stressed, allowed) if allowed else ())
    return Load(threads, strength.tension, each, force, bent, most, "", stressed, allowed, (formula, *notes), warnings)


def _of_the_pull(force: Quantity) -> Iterator[str]:
    if force.high > CHILD:
        most = say_number(force.high, 0)
        yield ENGLISH.say(Beam.STORES_ENERGY, newtons=most, limit=say_number(CHILD, 0))


def _of_readings(strength: Strength, thread: WarpThread | None, each: Quantity) -> Iterator[str]:
    """Readings that contradict each other, and a dip that says that the thread does not pull at all."""
    yield from each.conflicts
    if any(not reading.value for reading in readings(strength, thread)):
        yield ENGLISH.say(Beam.SLACK)
