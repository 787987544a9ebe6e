"""How far a frame end bends under the pull of the warp.

Euler-Bernoulli beam on two supports, small deflections: 5 w L^4 / (384 E I) for a load over the whole span, and for
the same load F over a middle width W, F (8 L^3 - 4 L W^2 + W^3) / (384 E I). Handbook formulas, in common use; the
elastic moduli are round figures from memory.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from layout.messages.english import ENGLISH
from layout.messages.roles import Beam
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, assumed, computed

SPAN_OVER = 500
"""A bar may bend by its span / 500 (common practice, no source)."""

_MODULI = {
    "pine": 9_000, "oak": 11_000, "birch": 13_000, "beech": 13_000, "ash": 12_000, "bamboo": 15_000,
    "aluminium": 70_000, "brass": 100_000, "copper": 120_000, "steel": 200_000,
}  # fmt: skip

MODULI: Mapping[str, Quantity] = MappingProxyType(
    {
        name: assumed(number, ENGLISH.say(Beam.MODULUS, material=name, modulus=number))
        for name, number in _MODULI.items()
    }
)
"""Elastic modulus along the grain, in N/mm2; all assumed, and a stick of wood may differ by a third."""


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


def pull(threads: Number, tension: Quantity) -> Quantity:
    """The pull in N of all threads on one bar; each pulls at both bars, whether it lies on the face or the back."""
    count = int(threads)
    each = exactly(tension.value)
    return computed(float(count * each), ENGLISH.say(Beam.PULL, threads=count, tension=plain(each)), tension)


def deflection(bar: Bar | Board, load: Quantity, loaded_mm: Number | None = None) -> Quantity:
    """How far in mm the middle of the bar gives way under `load` N spread over its middle `loaded_mm` (or all of it).

    Bars held stiffly at their ends bend less: this is the upper bound, for ends that may turn.
    """
    span = float(bar.span)
    force = float(load.value)
    e = float(bar.stiffness.value)
    loaded = span if loaded_mm is None else loaded_mm
    width = float(loaded)
    bent = force * (8 * span**3 - 4 * span * width**2 + width**3) / (384 * e * bar.inertia)
    reason = ENGLISH.say(Beam.BENT, force=plain(force), width=plain(width), span=plain(span))
    return computed(bent, reason, load, bar.stiffness)


def deflection_warnings(bar: Bar | Board, bent: Quantity) -> tuple[str, ...]:
    """One sentence if a bar bends by more than its span / 500, with what it assumes; else nothing."""
    most = float(bar.span) / SPAN_OVER
    if bent.value <= most:
        return ()
    said = ENGLISH.say(Beam.BENDS_TOO_FAR, bent=f"{bent.value:.2f}", over=SPAN_OVER, most=f"{most:.2f}")
    return (ENGLISH.paragraph((said, *bent.assumptions)),)
