"""Sums of many floats without any rounding, in fewer steps than fractions take."""

from __future__ import annotations

from fractions import Fraction


class ExactSum:
    """A sum of floats, each times a whole number: a whole number of parts, each one by a power of two."""

    __slots__ = ("_parts", "_power")

    def __init__(self) -> None:
        self._parts = self._power = 0

    def add(self, figure: float, times: int = 1) -> None:
        """Adds `figure` so many times; every float is a whole number by a power of two."""
        above, below = figure.as_integer_ratio()
        power = below.bit_length() - 1
        if power > self._power:
            self._parts <<= power - self._power
            self._power = power
        self._parts += times * above << (self._power - power)

    @property
    def value(self) -> Fraction:
        """The sum."""
        return Fraction(self._parts, 1 << self._power)
