"""Setts taken in few words, and readings that are true of one sett, for tests."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

from layout.sett.sett import SettInput, SettTaken, WrapReading, take_sett
from layout.values.units import Length, read_length, read_sett

INCH, CM = Fraction(254, 10), Fraction(10)


def counted(*readings: tuple[int, str], **choice: Any) -> SettTaken:
    """The sett taken from windows, with the rest of the choice in words."""
    unit = choice.pop("unit", None)
    found = tuple(WrapReading(pairs, read_length(over), measured=False) for pairs, over in readings)
    return take_sett(SettInput(found, marking_unit=read_length(unit) if unit else None, **choice))


def as_given(sett: str, unit: str | None = None) -> SettTaken:
    """The sett taken where it is given in words."""
    return take_sett(SettInput(given=read_sett(sett), marking_unit=read_length(unit) if unit else None))


windows = st.sampled_from([CM, 2 * CM, 5 * CM, 10 * CM, INCH, 2 * INCH, 4 * INCH]).flatmap(
    lambda mm: st.sampled_from([Length(mm, "cm"), Length(mm, "in")])
)
setts = st.fractions(min_value=Fraction(1, 10), max_value=Fraction(5), max_denominator=10_000)  # ends per mm


def true_of(sett: Fraction, over: Length) -> WrapReading:
    """The whole pairs that fit in a window at that sett."""
    return WrapReading(int(sett * over.mm), over, measured=False)
