"""How many figures a number has that lies in a range: as many as its range allows, and as tell its bounds apart."""

from __future__ import annotations

import math
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from layout.values.numerals import say_fixed, say_number

_WHOLE = 5
"""From so many up a bound needs no more places than its likely value."""

_NARROW = 0.005
"""A range of so small a share of the value is not shown: no scale and no tape measure finds it."""


_KEPT = 256  # a figure is said in several places


class Ranged(NamedTuple):
    """The likely number and its bounds in figures; no bounds where the range is too small to be shown."""

    likely: str
    bounds: tuple[str, str] | None


@lru_cache(_KEPT)
def ranged(likely: float, low: float, high: float, places: int) -> Ranged:
    """A number between `low` and `high`; one that is exact, or nearly, has up to so many decimal `places`.

    Numbers of a range have two figures, or as many more as tell them apart.
    """
    width = high - low
    if width <= _NARROW * abs(likely):
        return Ranged(say_number(Fraction(likely), places), None)
    last = _place(likely, width)
    return Ranged(_rounded(likely, width, last), (_rounded(low, width, last), _rounded(high, width, last)))


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
