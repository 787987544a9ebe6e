"""Lengths as a ruler shows them: whole millimetres or sixteenths of an inch; small ones to half of that."""

from __future__ import annotations

from fractions import Fraction
from math import floor

from layout.messages.catalogue import Catalogue
from layout.values.numerals import say_mixed, say_number
from layout.values.units import in_unit, mm_in

_INCHES, _MM = Fraction(1, 16), Fraction(1)


def by_rule(mm: Fraction | float, words: Catalogue, *, imperial: bool, fine: bool = False) -> str:
    """The length `mm` to the nearest line of a ruler in mm or inches; a `fine` one to half of that, and never nothing.

    Halves go away from zero.
    """
    step = (_INCHES * mm_in("in") if imperial else _MM) / (2 if fine else 1)
    lines = floor(Fraction(mm) / step + Fraction(1, 2))
    length = max(lines, 1 if fine else 0) * step
    if imperial:
        return in_unit(say_mixed(length / mm_in("in")), "in", words)
    return in_unit(say_number(length), "mm", words)


def least_by_rule(*, imperial: bool) -> Fraction:
    """The smallest length in mm that is told from nothing."""
    return _INCHES * mm_in("in") / 2 if imperial else _MM / 2
