"""Figures with their ranges: as people read them, likely value first, and as programs do, each bound by its own key."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.values.forces import NEWTONS
from layout.values.quantity import Quantity
from layout.values.ranged import ranged
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
    figures = ranged(likely, low, high, unit.places)
    if figures.bounds is None:
        return message(unit.role, number=figures.likely)
    least, most = figures.bounds
    return message(role, number=message(unit.role, number=figures.likely), low=least, high=most)
