"""How hard one thread of the warp pulls: as it is usual, and as it is measured by a weight or by its pitch.

A weight W at the middle of a free length L pulls the thread aside by s: its force is then
T' = W sqrt(L^2/4 + s^2) / (2 s) (statics), and less its own stretch it pulls with
T = T' - EA (sqrt(L^2 + 4 s^2) - L) / L at rest (Hooke's law). The thread hardly slides round a bar, since friction
holds it there, so the free length alone stretches. Plucked, it sounds at f = sqrt(T / mu) / (2 L) (Mersenne's law),
which no stretch disturbs.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from functools import reduce

from layout.frames.strength import Dip, Pluck, Strength
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam, Unit
from layout.values.forces import NEWTONS, Force, say_force
from layout.values.numerals import say_number
from layout.values.quantity import Quantity, assumed, combine, measured, met
from layout.values.units import say_length

MOST_DIP = Fraction(1, 60)
"""A dip deeper than this share of the free length is refused: the stretch would then be most of what is measured."""
BY_HAND = (1.0, 3.0, 8.0)
"""The pull of a thread in N, wound by hand with nothing to tighten it (from memory)."""
TIGHTENED = (0.005, 0.015, 0.03)
"""The pull of a tightened thread, in N for each tex (from memory)."""
MOST_TIGHTENED = 15.0
"""Harder than this nobody tightens one thread, in N (from memory)."""
_TIGHTENED_UNWEIGHED = (1.5, 4.5, 9.0)  # our choice: a cotton warp of 300 tex
COTTON, OTHER = (1.5, 1.7, 2.0), (0.5, 1.7, 6.0)
"""The pull in N for each tex that would stretch a thread to twice its length: cotton from memory, others our choice."""
OFF_MM, OFF_HERTZ, OFF_TEX = 0.5, 2.0, 0.06
"""How far a dip, a pitch and the weight of a yarn may be off (our choice; the weight from memory)."""


@dataclass(frozen=True, slots=True)
class WarpThread:
    """One thread of the warp: `tex` in g per km, and its `fibre` if the kit says it."""

    tex: Fraction
    fibre: str | None = None

    @property
    def stiffness(self) -> Quantity:
        """EA in N: the pull that would stretch it to twice its length, if it went on as it begins."""
        low, likely, high = (each * float(self.tex) for each in (COTTON if self.fibre == "cotton" else OTHER))
        return assumed(likely, ENGLISH.say(Beam.STIFFNESS), low, high)

    @property
    def kg_per_metre(self) -> Quantity:
        """How heavy a metre of it is."""
        likely = float(self.tex) / 1e6
        return assumed(likely, ENGLISH.say(Beam.TEX_OFF), likely * (1 - OFF_TEX), likely * (1 + OFF_TEX))


def tension_of(strength: Strength, thread: WarpThread | None) -> Quantity:
    """The pull of one thread in N: as the kit says it, else as it is usual, and narrowed by what was measured.

    Two readings that contradict each other leave a conflict. What is only usual is no bound to a reading outside it.
    """
    said, each = stated(strength), readings(strength, thread)
    facts = (said, *each) if said else each
    if not facts:
        return usual(strength.tensioner, thread)
    found = reduce(lambda known, reading: met(known, reading, _contradict), facts)
    guess = usual(strength.tensioner, thread)
    beside = found.low > guess.high or found.high < guess.low
    return found if said or found.conflicts or beside else met(guess, found, _contradict)


def stated(strength: Strength) -> Quantity | None:
    """The pull that the kit states, exactly."""
    said = strength.tension
    return measured(float(said.newtons), ENGLISH.say(Beam.TENSION, tension=say_force(said))) if said else None


def usual(tensioner: str, thread: WarpThread | None) -> Quantity:
    """The pull in N that is usual for a warp wound by hand, or tightened with rods or wedges."""
    if tensioner == "none":
        low, likely, high = BY_HAND
        return assumed(likely, ENGLISH.say(Beam.TENSION_BY_HAND), low, high)
    low, likely, high = (
        (min(each * float(thread.tex), MOST_TIGHTENED) for each in TIGHTENED) if thread else _TIGHTENED_UNWEIGHED
    )
    return assumed(likely, ENGLISH.say(Beam.TENSION_TIGHTENED), low, high)


def readings(strength: Strength, thread: WarpThread | None) -> tuple[Quantity, ...]:
    """The pull by every measurement of the kit; none where the weight of its warp is not known."""
    if thread is None:
        return ()
    found = [dipped(strength.dip, thread)] if strength.dip else []
    return (*found, plucked(strength.pluck, thread)) if strength.pluck else tuple(found)


def dipped(dip: Dip, thread: WarpThread) -> Quantity:
    """The pull at rest of a thread that a weight makes dip; 0 N where its stretch alone explains the dip."""
    load, length, depth = float(dip.load.newtons), float(dip.length.mm), float(dip.depth.mm)
    off = min(OFF_MM, depth / 2)
    deep = measured(depth, "", depth - off, depth + off)
    values = {"load": say_force(dip.load), "depth": say_length(dip.depth), "length": say_length(dip.length)}

    def pull(aside: float, stiff: float) -> float:
        side = math.hypot(length / 2, aside)
        return max(load * side / (2 * aside) - stiff * (2 * side - length) / length, 0.0)

    found = combine(pull, ENGLISH.say(Beam.TENSION_DIP, **values), deep, thread.stiffness, falling=(0, 1))
    return measured(found.value, found.reason, found.low, found.high)


def plucked(pluck: Pluck, thread: WarpThread) -> Quantity:
    """The pull of a thread that sounds at so many hertz: 4 mu L^2 f^2."""
    metres, hertz = float(pluck.length.mm) / 1000, float(pluck.hertz)
    pitch = measured(hertz, "", hertz - OFF_HERTZ, hertz + OFF_HERTZ)
    said = ENGLISH.say(Beam.TENSION_PLUCK, hertz=say_number(pluck.hertz, 1), length=say_length(pluck.length))
    found = combine(lambda f, mu: 4 * mu * (metres * f) ** 2, said, pitch, thread.kg_per_metre)
    return measured(found.value, said, found.low, found.high)


def lighter(dip: Dip) -> Force:
    """A load under which the thread certainly dips by no more than a sixtieth of its length, in two figures.

    The load of a slack thread is as the cube of its dip; that of any other is larger at a smaller dip.
    """
    unit = NEWTONS[dip.load.unit]
    number = float(dip.load.newtons / unit * (dip.length.mm * MOST_DIP / dip.depth.mm) ** 3)
    step = Fraction(10) ** (math.floor(math.log10(number)) - 1)
    return Force(math.floor(number / step) * step * unit, dip.load.unit)


def _contradict(known: Quantity, found: Quantity) -> str:
    values = {"first": _span(known), "second": _span(found), "known": known.reason, "found": found.reason}
    return ENGLISH.say(Beam.PULLS_DIFFER, **values)


def _span(pull: Quantity) -> str:
    low, high = say_number(pull.low, 1), say_number(pull.high, 1)
    return ENGLISH.say(Unit.NEWTON, number=low) if low == high else ENGLISH.say(Beam.SPAN, low=low, high=high)
