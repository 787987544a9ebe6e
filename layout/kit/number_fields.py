"""Plain numbers of a kit: counts of yarns and their systems, shares, whole numbers and others within limits."""

from __future__ import annotations

import re
from fractions import Fraction

from layout.kit.input import Input
from layout.messages.catalogue import Figure, Message
from layout.messages.roles import Entry
from layout.values.errors import FieldError, shown
from layout.values.limits import exact, plain
from layout.values.numerals import BLANK, NUMBER, number_from
from layout.yarns.yarn_counts import is_folded, read_count, system

_SHARE = re.compile(rf"{NUMBER}{BLANK}*(?P<per_cent>%)", re.VERBOSE)
_DEVIATION = re.compile(rf"(?:\+(?!-))?{_SHARE.pattern}", re.VERBOSE)
_LONGEST = 40


def read_whole(spec: Input, value: object) -> int:
    """A whole number within the limits of its input."""
    if isinstance(value, bool) or not isinstance(value, int) or not spec.least <= value <= spec.most:
        raise FieldError("", Entry.WHOLE, shown(value), "", least=spec.least, most=Figure(f"{int(spec.most):,}"))
    return value


def read_amount(spec: Input, value: object) -> Fraction:
    """Any number within the limits of its input, as it was written."""
    needed = Message(Entry.AMOUNT, {"least": plain(spec.least), "most": Figure(f"{int(spec.most):,}")})
    number = _exact(value, needed)
    if not spec.least <= number <= spec.most:
        raise FieldError("", needed, shown(value), "")
    return number


def read_share(_: Input, value: object) -> Fraction:
    """A share from 0 up to (not including) 1, from 0.05 or from "5 %"."""
    needed = Message(Entry.SHARE)
    if isinstance(value, str):
        match = _SHARE.fullmatch(value.strip()) if len(value) <= _LONGEST else None
        if match is None:
            raise FieldError("", needed, shown(value), "")
        number = number_from(match, value) / 100
    else:
        number = _exact(value, needed)
    if not 0 <= number < 1:
        raise FieldError("", needed, shown(value), "")
    return number


def read_deviation(spec: Input, value: object) -> Fraction:
    """How far something is off, from "0.21 %", "+0.21 %" or "-0.13 %", as a share; its limits are in per cent."""
    needed = Message(Entry.DEVIATION, {"least": plain(spec.least), "most": plain(spec.most)})
    match = _DEVIATION.fullmatch(value.strip()) if isinstance(value, str) and len(value) <= _LONGEST else None
    if match is None or not isinstance(value, str):
        raise FieldError("", needed, shown(value), "")
    number = number_from(match, value)
    if not spec.least <= number <= spec.most:
        raise FieldError("", needed, shown(value), "")
    return number / 100


def read_count_of(_: Input, value: object) -> Fraction | str:
    """A count of yarn; text with a stroke ("8/2") is handed on as it is, since its order stands beside it."""
    if isinstance(value, str) and len(value) <= _LONGEST:
        return value if is_folded(value) else Fraction(repr(float(read_count(value, ""))))
    return read_count(_exact(value, Message(Entry.COUNT)), "")


def read_system(_: Input, value: object) -> str:
    """The key of a system of linear density."""
    return system(value if isinstance(value, str) and len(value) <= _LONGEST else shown(value), "").key


def _exact(value: object, needed: Message) -> Fraction:
    if not isinstance(value, int | float | Fraction):
        raise FieldError("", needed, shown(value), "")
    return exact(value, "", needed, "")
