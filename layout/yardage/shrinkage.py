"""Shrinkage, contraction, draw-in: a share of the longer size, so it is divided out and never added on."""

from __future__ import annotations

from fractions import Fraction

from layout.values.limits import Number, exactly


def shrunk_by(before: Number, after: Number) -> Fraction:
    """The share lost by something that measured `before` and measures `after`; 10 that becomes 8 has lost 1/5."""
    first = exactly(before)
    last = exactly(after)
    return 1 - last / first


def to_make(finished: Number, shrinkage: Number) -> Fraction:
    """What must be made for `finished` to be left: finished / (1 - share). Exact, in the unit of `finished`."""
    size = exactly(finished)
    return size / (1 - exactly(shrinkage))


def left_of(made: Number, shrinkage: Number) -> Fraction:
    """What is left of `made` after shrinking: made x (1 - share). Exact, in the unit of `made`."""
    size = exactly(made)
    return size * (1 - exactly(shrinkage))
