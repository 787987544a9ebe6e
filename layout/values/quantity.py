"""A number together with how it is known, and between what it may lie. Knows nothing of yarns or frames."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import chain

_ROUNDING = 1e-9
"""The share of a number by which floats of the same figure may differ."""


class Origin(StrEnum):
    """How a number is known; each is its own word in files and on the screen."""

    MEASURED = "measured"
    COMPUTED = "computed"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Quantity:
    """`value` is the likely one, in the unit that its owner states; `spread` the least and the most that it may be.

    `spread` is None where the number is exact. `origin` is how it is known; `reason`, one sentence of why.
    `assumptions` are the reasons of everything assumed that it rests on, each once; a quantity that rests on any is
    itself assumed, unless it was measured. `conflicts` are sentences, each about two facts that cannot both be true;
    the spread then covers both.
    """

    value: float
    origin: Origin
    reason: str
    assumptions: tuple[str, ...] = ()
    spread: tuple[float, float] | None = None
    conflicts: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        """AssertionError, a mistake of the program, where the value lies outside its spread or is no number."""
        low, high = (self.value, self.value) if self.spread is None else self.spread
        if not -math.inf < low <= self.value <= high < math.inf:
            raise AssertionError(self.reason, self.value, self.spread)

    @property
    def low(self) -> float:
        """The least that it may be."""
        return self.value if self.spread is None else self.spread[0]

    @property
    def high(self) -> float:
        """The most that it may be."""
        return self.value if self.spread is None else self.spread[1]

    @property
    def exact(self) -> bool:
        """Whether it has no range: an exact size, a choice, or a figure that rests on such alone."""
        return self.spread is None

    def scaled(self, factor: float) -> Quantity:
        """The same figure in another unit; `factor` is positive."""
        spread = None if self.spread is None else (self.low * factor, self.high * factor)
        return replace(self, value=self.value * factor, spread=spread)

    def explained(self, reason: str, *sources: Quantity) -> Quantity:
        """The same figure, range and all, with another reason; `sources` are what it rests on besides."""
        return computed(self.value, reason, self, *sources, spread=self.spread)


def measured(value: float, reason: str, low: float | None = None, high: float | None = None) -> Quantity:
    """A number that someone counted, weighed or measured, between `low` and `high` where the reading is not exact."""
    return Quantity(value, Origin.MEASURED, reason, spread=_between(value, low, high))


def assumed(value: float, reason: str, low: float | None = None, high: float | None = None) -> Quantity:
    """A number that nobody measured here, between `low` and `high`; `reason` says what it stands on."""
    return Quantity(value, Origin.ASSUMED, reason, (reason,), _between(value, low, high))


def computed(value: float, reason: str, *sources: Quantity, spread: tuple[float, float] | None = None) -> Quantity:
    """A number computed from `sources`: computed, or assumed as soon as one of them is. Their conflicts are kept.

    `spread` is the caller's to know. `combine` finds it for a formula.
    """
    kept = _each([source.assumptions for source in sources])
    conflicts = _each([source.conflicts for source in sources])
    return Quantity(value, Origin.ASSUMED if kept else Origin.COMPUTED, reason, kept, spread, conflicts)


def combine(formula: Callable[..., float], reason: str, *sources: Quantity, falling: Iterable[int] = ()) -> Quantity:
    """`formula` of the sources: its likely value from theirs, its least and most from the ends of their ranges.

    The formula must rise with every source, or fall with those whose places are in `falling`. Exact sources give an
    exact figure.
    """
    value = formula(*(source.value for source in sources))
    if all(source.exact for source in sources):
        return computed(value, reason, *sources)
    turned = frozenset(falling)
    low = formula(*(each.high if place in turned else each.low for place, each in enumerate(sources)))
    high = formula(*(each.low if place in turned else each.high for place, each in enumerate(sources)))
    return computed(value, reason, *sources, spread=_evened(low, value, high))


def met(known: Quantity, found: Quantity, said: Callable[[Quantity, Quantity], str]) -> Quantity:
    """What is left of `known` once `found` is known too: where both ranges overlap.

    The likely value is that of `found`, or the nearest to it that both allow. Where they share nothing, they
    contradict each other: the figure then covers both, and `said(known, found)` is the sentence about it.
    It is measured where `found` is, and then rests on no assumption of `known`.
    """
    low, high = max(known.low, found.low), min(known.high, found.high)
    rests = (found,) if found.origin is Origin.MEASURED else (known, found)
    assumptions, conflicts = _each(each.assumptions for each in rests), _each((known.conflicts, found.conflicts))
    if low > high + _ROUNDING * max(abs(low), abs(high)):
        low, high = min(known.low, found.low), max(known.high, found.high)
        conflicts = _each((conflicts, (said(known, found),)))
    low, high = min(low, high), max(low, high)
    value = min(max(found.value, low), high)
    origin = found.origin if found.origin is Origin.MEASURED else Origin.ASSUMED if assumptions else Origin.COMPUTED
    return Quantity(value, origin, found.reason, assumptions, _between(value, low, high), conflicts)


def _between(value: float, low: float | None, high: float | None) -> tuple[float, float] | None:
    """The spread; None where it is none."""
    least, most = value if low is None else low, value if high is None else high
    return None if least == value == most else (least, most)


def _evened(low: float, value: float, high: float) -> tuple[float, float]:
    """The spread of a figure, freed of what floats leave between the same number computed twice."""
    slack = _ROUNDING * abs(value)
    return (min(low, value) if low <= value + slack else low, max(high, value) if high >= value - slack else high)


def _each(several: Iterable[tuple[str, ...]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(chain.from_iterable(several)))
