"""Figures with their ranges: as people read them, likely value first, and as programs do, each bound by its own key."""

from __future__ import annotations

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.values.forces import NEWTONS
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Quantity
from layout.yarns.yarn_counts import OUNCE_G, YARD_M
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Measure


class Unit(NamedTuple):
    """A unit that is shown: its words, how many make one of the figure's own, and the places of an exact number."""

    role: Measure
    each: float
    places: int


SHORT = (Unit(Measure.MM, 1, 1), Unit(Measure.INCH, 1 / 25.4, 2))
THICK = (Unit(Measure.MM, 1, 2), Unit(Measure.INCH, 1 / 25.4, 3))
LONG = (Unit(Measure.METRES, 1, 2), Unit(Measure.YARDS, 1 / float(YARD_M), 2))
WEIGHT = (Unit(Measure.GRAMS, 1, 1), Unit(Measure.OUNCES, 1 / float(OUNCE_G), 2))
PICKS = (Unit(Measure.PER_CM, 1, 2), Unit(Measure.PER_INCH, 2.54, 2))
FORCE = (Unit(Measure.NEWTONS, 1, 1), Unit(Measure.POUNDS, 1 / float(NEWTONS["lb"]), 1))
STRESS = (Unit(Measure.NEWTONS_MM2, 1, 1), Unit(Measure.POUNDS_IN2, 25.4**2 / float(NEWTONS["lb"]), 0))
PER_M2 = (Unit(Measure.PER_M2, 1, 0), Unit(Measure.PER_YD2, float(YARD_M) ** 2 / float(OUNCE_G), 1))
PERCENT = (Unit(Measure.PERCENT, 100, 1),)
"""The units of a figure: that of the metric system, then that of the other."""

_WHOLE = 5
"""From so many up a bound needs no more places than its likely value."""

_NARROW = 0.005
"""A range of so small a share of the value is not shown: no scale and no tape measure finds it."""


def range_values(name: str, figure: Quantity | None) -> dict[str, float | None]:
    """For programs: the likely value under `name`, its bounds beside it; nulls where the figure is not known."""
    if figure is None:
        return {name: None, f"{name}_low": None, f"{name}_high": None}
    return {name: figure.value, f"{name}_low": figure.low, f"{name}_high": figure.high}


def about(figure: Quantity, units: Sequence[Unit], *, imperial: bool = False) -> str:
    """For people: "about 110 m (79 to 200), 120 yd (87 to 220)"; an exact figure as one number.

    Numbers of a range have two figures, or as many more as tell them apart. The kit's own system comes first.
    """
    first, *others = reversed(units) if imperial else units
    said = _said(figure, first, Measure.ABOUT)
    for unit in others:
        said = message(Measure.BOTH, first=said, second=_said(figure, unit, Measure.RANGE))
    return said


def bare(figure: Quantity, unit: Unit) -> str:
    """The same without its unit: "110 (79 to 200)"."""
    return _said(figure, unit._replace(role=Measure.BARE), Measure.RANGE)


def _said(figure: Quantity, unit: Unit, role: Measure) -> str:
    likely, low, high = (number * unit.each for number in (figure.value, figure.low, figure.high))
    width = high - low
    if width <= _NARROW * abs(likely):
        return message(unit.role, number=say_number(Fraction(likely), unit.places))
    likely_place = _place(likely, width)
    said = {name: _rounded(number, width, likely_place) for name, number in (("low", low), ("high", high))}
    return message(role, number=message(unit.role, number=_rounded(likely, width, likely_place)), **said)


def _place(number: float, width: float) -> int:
    """The power of ten of the last digit: two figures, or more where a range of this width needs them to show."""
    return min(math.floor(math.log10(abs(number))) - 1 if number else 0, math.floor(math.log10(width / 3)))


def _rounded(number: float, width: float, likely: int) -> str:
    """The number in so many figures, a bound in at most one more place than the likely value has.

    From five up it has no more places than that one, nor than ones.
    """
    if not number:
        return "0"
    finest = min(likely, 0) if abs(number) >= _WHOLE else likely - 1
    place = max(_place(number, width), finest)
    step = Fraction(10) ** place
    return say_fixed(round(Fraction(number) / step) * step, max(0, -place))
