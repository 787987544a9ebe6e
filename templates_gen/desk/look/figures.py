"""Figures as the desk shows them: in the unit of the page first, in the other one beside it."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Known, Unit
from layout.values.forces import NEWTONS
from layout.values.numerals import say_number
from layout.values.quantity import Origin, Quantity
from layout.values.ranged import Ranged, ranged
from layout.yarns.yarn_counts import OUNCE_G, YARD_M
from templates_gen.desk.look.answers import How
from templates_gen.messages.roles.desk_numbers import Shown


class Scale(NamedTuple):
    """A unit: its words, how many of it make one of the figure's own, and the places of an exact number."""

    role: Role
    each: float
    places: int


class Pair(NamedTuple):
    """The two units of a kind of figure: the metric one, and the other."""

    metric: Scale
    other: Scale


SHORT = Pair(Scale(Unit.MM, 1, 1), Scale(Unit.INCH, 1 / 25.4, 2))
THIN = Pair(Scale(Unit.MM, 1, 2), Scale(Unit.INCH, 1 / 25.4, 3))
LONG = Pair(Scale(Unit.METRE, 1, 2), Scale(Unit.YARD, 1 / float(YARD_M), 2))
WEIGHT = Pair(Scale(Unit.GRAM, 1, 1), Scale(Unit.OUNCE, 1 / float(OUNCE_G), 2))
PER = Pair(Scale(Shown.PER_CM, 1, 2), Scale(Shown.PER_INCH, 2.54, 2))
FORCE = Pair(Scale(Unit.NEWTON, 1, 1), Scale(Unit.POUND, 1 / float(NEWTONS["lb"]), 1))

_KNOWN: Mapping[Origin, tuple[How, Known]] = {
    Origin.MEASURED: ("measured", Known.MEASURED),
    Origin.COMPUTED: ("computed", Known.COMPUTED),
    Origin.ASSUMED: ("assumed", Known.ASSUMED),
}


class Figures:
    """How figures are said with `words`; `imperial` ones come first where the page is in inches."""

    def __init__(self, words: Catalogue, *, imperial: bool) -> None:
        self.words, self.imperial = words, imperial

    def scales(self, pair: Pair) -> tuple[Scale, Scale]:
        """The unit that stands first, and the other."""
        return (pair.other, pair.metric) if self.imperial else (pair.metric, pair.other)

    def exact(self, value: Fraction | float, scale: Scale) -> str:
        """A number that is known exactly, in that unit."""
        return self.words.say(scale.role, number=say_number(Fraction(value) * Fraction(scale.each), scale.places))

    def both(self, value: Fraction | float, pair: Pair) -> tuple[str, str]:
        """The same in both units."""
        first, second = self.scales(pair)
        return self.exact(value, first), self.exact(value, second)

    def plain(self, figure: Quantity, scale: Scale) -> str:
        """The likely value, in as many figures as its range allows."""
        return self.words.say(scale.role, number=self._ranged(figure, scale).likely)

    def likely(self, figure: Quantity, scale: Scale) -> str:
        """The likely value: "about 160 m" where it lies in a range."""
        said = self.plain(figure, scale)
        return said if self._ranged(figure, scale).bounds is None else self.words.say(Shown.ABOUT, figure=said)

    def between(self, figure: Quantity, pair: Pair) -> tuple[str, ...]:
        """The sentence on its range, if it has one that shows."""
        scale, _ = self.scales(pair)
        bounds = self.bounds(figure, scale)
        return () if bounds is None else (self.words.say(Shown.BETWEEN, low=bounds[0], high=bounds[1]),)

    def bounds(self, figure: Quantity, scale: Scale) -> tuple[str, str] | None:
        """Its least and greatest in figures with their unit; None where its range does not show."""
        bounds = self._ranged(figure, scale).bounds
        if bounds is None:
            return None
        low, high = (self.words.say(scale.role, number=number) for number in bounds)
        return low, high

    @staticmethod
    def _ranged(figure: Quantity, scale: Scale) -> Ranged:
        return ranged(figure.value * scale.each, figure.low * scale.each, figure.high * scale.each, scale.places)

    def how(self, origin: Origin) -> tuple[How, str]:
        """How a figure is known, as a word for programs and for people."""
        how, role = _KNOWN[origin]
        return how, self.words.say(role)

    def why(self, figure: Quantity) -> tuple[str, ...]:
        """The reason of a figure, and what it assumes."""
        reason = self.words.again(figure.reason)
        others = [self.words.again(each) for each in figure.assumptions if each != figure.reason]
        assumed = (self.words.say(Shown.ASSUMED, what=self.words.paragraph(others)),) if others else ()
        return (reason, *assumed)
