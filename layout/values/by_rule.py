"""Lengths as a ruler shows them: whole millimetres or sixteenths of an inch; small ones to half of that."""

from __future__ import annotations

from fractions import Fraction
from math import floor, isqrt

from layout.messages.catalogue import Catalogue
from layout.values.numerals import say_mixed, say_number
from layout.values.units import in_unit, mm_in

_INCHES, _MM = Fraction(1, 16), Fraction(1)


def by_rule(mm: Fraction | float, words: Catalogue, *, imperial: bool, fine: bool = False) -> str:
    """The length `mm` to the nearest line of a ruler in mm or inches; a `fine` one to half of that, and never nothing.

    Halves go away from zero. A float stands for the nearest number of twelve figures, as in `say_number`.
    """
    exact = Fraction(f"{mm:.11e}") if isinstance(mm, float) else Fraction(mm)
    return _said(floor(exact / _step(imperial, fine) + Fraction(1, 2)), words, imperial=imperial, fine=fine)


def root_by_rule(squared: Fraction, words: Catalogue, *, imperial: bool, fine: bool = False) -> str:
    """The same for the length whose square in mm2 is `squared`, exactly."""
    lines = (isqrt(floor(4 * squared / _step(imperial, fine) ** 2)) + 1) // 2
    return _said(lines, words, imperial=imperial, fine=fine)


def least_by_rule(*, imperial: bool) -> Fraction:
    """The smallest length in mm that is told from nothing."""
    return _step(imperial, fine=True)


def _step(imperial: bool, fine: bool) -> Fraction:
    return (_INCHES * mm_in("in") if imperial else _MM) / (2 if fine else 1)


def _said(lines: int, words: Catalogue, *, imperial: bool, fine: bool) -> str:
    length = max(lines, int(fine)) * _step(imperial, fine)
    if imperial:
        return in_unit(say_mixed(length / mm_in("in")), "in", words)
    return in_unit(say_number(length), "mm", words)
