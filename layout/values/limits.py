"""Numbers that cannot be meant, refused in one sentence. All limits here are our own; no standard sets them."""

from __future__ import annotations

import math
from fractions import Fraction

from layout.messages.catalogue import Figure, Message, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Value
from layout.values.errors import FieldError, shown

Number = int | float | Fraction

LEAST, MOST = Fraction(1, 10**6), Fraction(10**9)
"""Our own limits: nothing at a loom is smaller than a nanometre or longer than a thousand kilometres (in mm)."""


ROUNDING = 1e-9
"""What two numbers that should be equal may differ by, as a share, after sums in floats."""


def plain(value: Number) -> str:
    """`value` as it may stand in a sentence: at most six figures, no fraction bars."""
    if isinstance(value, float) and not math.isfinite(value):
        return str(value)
    try:
        return Figure(f"{float(value):.6g}")
    except OverflowError:
        return ENGLISH.say(Value.FAR_TOO_LARGE)


def exact(value: Number, field: str, needed: Message | Role, example: str) -> Fraction:
    """The number as it was written (a float counts as its shortest decimal); FieldError if it is no finite number."""
    if isinstance(value, bool) or not isinstance(value, int | float | Fraction):
        raise FieldError(field, needed, shown(value), example)
    if isinstance(value, float) and not math.isfinite(value):
        raise FieldError(field, needed, str(value), example)
    return exactly(value)


def exactly(value: Number) -> Fraction:
    """The number as it was written: a float counts as its shortest decimal."""
    return Fraction(repr(value)) if isinstance(value, float) else Fraction(value)


def above_zero(value: Number, field: str, what: Message | Role, example: str) -> Fraction:
    """`value` exactly, if it lies above zero and within LEAST to MOST; else FieldError, which names it `what`."""
    number = exact(value, field, Message(Value.ABOVE_ZERO, {"what": what}), example)
    if number <= 0:
        raise FieldError(field, Value.ABOVE_ZERO, plain(value), example, what=what)
    if not LEAST <= number <= MOST:
        limits = {"least": plain(LEAST), "most": plain(MOST)}
        raise FieldError(field, Value.ABOVE_ZERO_WITHIN, plain(value), example, what=what, **limits)
    return number


def whole(value: Number, field: str, what: Message | Role, example: str, least: int = 1, most: int = 100_000) -> int:
    """`value` as an int, if it is a whole number from `least` to `most`; else FieldError, which names it `what`."""
    needed = Message(Value.WHOLE, {"what": what, "least": least, "most": most})
    number = exact(value, field, needed, example)
    if number.denominator != 1 or not least <= number <= most:
        raise FieldError(field, needed, plain(value), example)
    return int(number)
