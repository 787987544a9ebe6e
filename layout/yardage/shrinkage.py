"""Shrinkage, contraction, draw-in: a share of the longer size, so it is divided out and never added on."""

from __future__ import annotations

from fractions import Fraction

from layout.values.errors import FieldError
from layout.values.limits import Number, above_zero, plain, share


def shrunk_by(before: Number, after: Number, field: str = "shrinkage") -> Fraction:
    """The share lost by something that measured `before` and measures `after`; 10 that becomes 8 has lost 1/5."""
    first = above_zero(before, f"{field}.before", "the size before", "before = 250")
    last = above_zero(after, f"{field}.after", "the size after", "after = 235")
    if last > first:
        needed = f"a size no greater than before ({plain(first)})"
        raise FieldError(f"{field}.after", needed, plain(last), "after = 235 with before = 250")
    return 1 - last / first


def to_make(finished: Number, shrinkage: Number, field: str = "shrinkage") -> Fraction:
    """What must be made for `finished` to be left: finished / (1 - share). Exact, in the unit of `finished`."""
    size = above_zero(finished, f"{field}.finished", "the finished size", "finished = 300")
    return size / (1 - share(shrinkage, field, "the shrinkage"))


def left_of(made: Number, shrinkage: Number, field: str = "shrinkage") -> Fraction:
    """What is left of `made` after shrinking: made x (1 - share). Exact, in the unit of `made`."""
    size = above_zero(made, f"{field}.made", "the size made", "made = 300")
    return size * (1 - share(shrinkage, field, "the shrinkage"))
