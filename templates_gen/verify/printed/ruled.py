"""Lengths as a ruler shows them, said once more: the nearest millimetre or sixteenth of an inch, or half of that."""

from __future__ import annotations

from fractions import Fraction
from math import isqrt

from layout.messages.catalogue import Catalogue
from layout.values.numerals import say_mixed, say_number
from layout.values.units import in_unit

_INCH = Fraction(127, 5)


def ruled(mm: Fraction | float, words: Catalogue, *, inches: bool, parts: int = 1) -> str:
    """A length to the nearest line, lines being so many `parts` of the usual ones; of parts one at least.

    A computed length stands for the number of twelve figures next to it.
    """
    exact = Fraction(f"{mm:.11e}") if isinstance(mm, float) else mm
    count = (2 * exact / step(inches, parts) + 1) // 2
    return _said(int(count), words, inches=inches, parts=parts)


def ruled_root(squared: Fraction, words: Catalogue, *, inches: bool, parts: int = 1) -> str:
    """The same for the root of a square: the count n with (n - 1/2)^2 <= square < (n + 1/2)^2."""
    square = squared / step(inches, parts) ** 2
    count = isqrt(int(square))
    while (count + Fraction(1, 2)) ** 2 <= square:
        count += 1
    return _said(count, words, inches=inches, parts=parts)


def step(inches: bool, parts: int) -> Fraction:
    """From line to line, in mm."""
    return (_INCH / 16 if inches else Fraction(1)) / parts


def _said(count: int, words: Catalogue, *, inches: bool, parts: int) -> str:
    count = max(count, parts - 1)
    if inches:
        return in_unit(say_mixed(Fraction(count, 16 * parts)), "in", words)
    return in_unit(say_number(Fraction(count, parts)), "mm", words)
