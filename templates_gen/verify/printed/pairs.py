"""What pairs counted in a window come to in a marking unit, by the numbers of the kit alone."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.kit import Kit
from layout.values.units import Length
from templates_gen.verify.kinds.truths import truth_of


def window_of(unit: Length) -> Length:
    """The window to count in."""
    return Length(Fraction(254, 5), "in") if unit.imperial else Length(Fraction(50), "cm")


def most_pairs(kit: Kit, unit: Length) -> int:
    """The most pairs that the sett of a kit holds in the window, found by trying one more after another."""
    return pairs_in(kit, window_of(unit).mm)


def pairs_in(kit: Kit, window: Fraction) -> int:
    """The same in a window of so many mm."""
    fitting = 0
    while (fitting + 1) / window <= _measured(kit):
        fitting += 1
    return fitting


def laid_of(kit: Kit, measured: Fraction, unit: Fraction) -> tuple[Fraction, Fraction]:
    """How many winds (or ends) of a sett measured are laid in a unit, and how many ends that makes."""
    if density := getattr(kit.frame.ends, "density", None):
        allowed = [each for each in (density.per_mm / 2, density.per_mm, 2 * density.per_mm) if each <= measured]
        ends = max(allowed, default=Fraction(0)) * unit
        return ends, ends
    return laid_evenly(truth_of(kit).laid, measured, unit)


def laid_evenly(each: int, measured: Fraction, unit: Fraction) -> tuple[Fraction, Fraction]:
    """How many whole winds (or ends) are laid, found by trying one more after another."""
    laid = 0
    while each * (laid + 1) / unit <= measured:
        laid += 1
    return Fraction(laid), Fraction(each * laid)


def _measured(kit: Kit) -> Fraction:
    """The smallest sett that the kit allows, in ends per mm."""
    if kit.sett.given:
        return kit.sett.given.per_mm
    counts = [Fraction(reading.pairs) / reading.over.mm for reading in kit.sett.readings]
    return min(counts) if kit.sett.loosest else max(counts)
