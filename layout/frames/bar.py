"""How far a frame end bends under the pull of the warp.

Euler-Bernoulli beam on two supports, small deflections: 5 w L^4 / (384 E I) for a load over the whole span, and for
the same load F over a middle width W, F (8 L^3 - 4 L W^2 + W^3) / (384 E I). The greatest moment is F (2 L - W) / 8,
and the stress there M y / I at the outermost fibre. Handbook formulas, in common use.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from layout.messages.catalogue import Figure
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, combine

SPAN_OVER = 500
"""A bar may bend by its span / 500 (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A round bar: `diameter` and clear `span` between its supports in mm, `stiffness` N/mm2, `bore` mm of a tube."""

    diameter: Number
    span: Number
    stiffness: Quantity
    bore: Number = 0

    @property
    def inertia(self) -> float:
        """Second moment of area in mm4: pi (d^4 - bore^4) / 64."""
        outer = exactly(self.diameter)
        inner = exactly(self.bore)
        return math.pi * float(outer**4 - inner**4) / 64

    @property
    def to_edge(self) -> float:
        """From the middle to the outermost fibre in mm."""
        return float(self.diameter) / 2


@dataclass(frozen=True, slots=True)
class Board:
    """A flat frame end: `thickness` from face to back, `width` the way the warp pulls, clear `span`, all in mm."""

    thickness: Number
    width: Number
    span: Number
    stiffness: Quantity

    @property
    def inertia(self) -> float:
        """Second moment of area in mm4 about the axis from face to back: thickness width^3 / 12."""
        thick = exactly(self.thickness)
        wide = exactly(self.width)
        return float(thick * wide**3) / 12

    @property
    def to_edge(self) -> float:
        """From the middle to the outermost fibre in mm."""
        return float(self.width) / 2


def pull(threads: Number, tension: Quantity) -> Quantity:
    """The pull in N of all threads on one bar; each pulls at both bars, whether it lies on the face or the back."""
    count = int(threads)
    said = ENGLISH.say(Beam.PULL, threads=count, tension=plain(tension.value))
    return combine(lambda each: float(count * exactly(each)), said, tension)


def deflection(
    bar: Bar | Board, load: Quantity, loaded_mm: Number | None = None, creep: Quantity | None = None
) -> Quantity:
    """How far in mm the middle of the bar gives way under `load` N spread over its middle `loaded_mm` (or all of it).

    Bars held stiffly at their ends bend less: this is the upper bound, for ends that may turn. Its range is that of the
    load and of the modulus; `creep` is the factor of a load that stays.
    """
    span = float(bar.span)
    width = span if loaded_mm is None else float(loaded_mm)
    shape = (8 * span**3 - 4 * span * width**2 + width**3) / (384 * bar.inertia)
    reason = ENGLISH.say(Beam.BENT, force=plain(load.value), width=plain(width), span=plain(span))
    bent = combine(lambda force, modulus: force * shape / modulus, reason, load, bar.stiffness, falling=(1,))
    return bent if creep is None else combine(lambda once, longer: once * longer, reason, bent, creep)


def stress(bar: Bar | Board, load: Quantity, loaded_mm: Number | None = None) -> Quantity:
    """The greatest bending stress in N/mm2, in the middle of the bar at its outer edge."""
    span = float(bar.span)
    width = span if loaded_mm is None else float(loaded_mm)
    each = (2 * span - width) / 8 * bar.to_edge / bar.inertia
    return combine(lambda force: force * each, ENGLISH.say(Beam.STRESS), load)


def deflection_warnings(bar: Bar | Board, bent: Quantity) -> tuple[str, ...]:
    """One sentence if a bar may bend by more than its span / 500, with what it assumes; else nothing."""
    most = float(bar.span) / SPAN_OVER
    if bent.high <= most:
        return ()
    values = {"over": SPAN_OVER, "most": Figure(f"{most:.2f}"), "high": Figure(f"{bent.high:.2f}")}
    role = Beam.BENDS_TOO_FAR if bent.value > most else Beam.MAY_BEND_TOO_FAR
    said = ENGLISH.say(role, bent=Figure(f"{bent.value:.2f}"), **values)
    return (ENGLISH.paragraph((said, *bent.assumptions)),)


def stress_warnings(found: Quantity, allowed: Quantity) -> tuple[str, ...]:
    """One sentence if a bar may be under more stress than is allowed, with what it assumes; else nothing."""
    if found.high <= allowed.value:
        return ()
    said = ENGLISH.say(Beam.STRESSED, high=Figure(f"{found.high:.0f}"), allowed=Figure(f"{allowed.value:.0f}"))
    return (ENGLISH.paragraph((said, *allowed.assumptions)),)
