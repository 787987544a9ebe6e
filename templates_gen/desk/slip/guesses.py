"""What was probably meant by a text that cannot be read: another unit, a number written otherwise, a near choice."""

from __future__ import annotations

import re
from collections.abc import Iterator

from layout.kit.input import Input
from layout.kit.likeness import closest
from layout.messages.roles import Entry, Value, YarnNeed
from layout.messages.roles.ranges import BoxNeed
from layout.values.errors import FieldError
from layout.values.numerals import NUMBER
from layout.values.units import WORDS, Length, mm_in, read_length, say_length
from templates_gen.desk.slip.labels import units_of
from templates_gen.desk.slip.texts import plain_number

_LEADING = re.compile(rf"\s*(?P<number>{NUMBER})\s*(?P<rest>.*)", re.VERBOSE | re.DOTALL)
_LONGEST = 64
_LENGTHS = ("length", "width", "height", "heading")
_PER_CM, _PER_INCH = (f"per {unit}" for unit in ("cm", "inch"))
_UNITS = {
    "force": ("g", "N", "oz"),
    "sett": (_PER_CM, "epi"),
    "density": (_PER_CM, _PER_INCH),
    "share": ("%",),
    "deviation": ("%",),
    "mass": ("g", "kg"),
}
_FEW = 5
OF_ONE_VALUE = (Entry, Value, YarnNeed, BoxNeed)
"""The refusals of a value by itself, whatever stands beside it."""


def guesses(spec: Input, text: str, error: FieldError) -> Iterator[str]:
    """Texts that may have been meant instead of `text`, the likeliest first. Whether they can be read is not judged."""
    values, alone = error.needed.values, isinstance(error.needed.role, OF_ONE_VALUE)
    yield from (str(values[key]) for key in ("meant", "widest", "most") if key in values and (spec.kind in _LENGTHS))
    if alone and len(text) <= _LONGEST:
        yield from _other_numbers(spec, text)
        yield from _nearest(spec, text, error)
    if alone and spec.kind in ("choice", "system", "language", "size", "card"):
        yield from _choices(spec, text)


def _other_numbers(spec: Input, text: str) -> Iterator[str]:
    """The number that was typed, in other units or with another decimal sign."""
    match = _LEADING.fullmatch(text)
    if match is None:
        return
    number, rest = match["number"].strip(), match["rest"].strip()
    if "," in number:
        for way in (number.replace(",", ""), number.replace(",", ".")):
            yield f"{way} {rest}".strip()
    if units := units_of(spec):
        yield from (f"{number} {unit}" for unit in _units(units, rest))
    elif spec.kind in ("size", "card"):
        yield f"{text.strip()} mm"
    elif spec.kind in _UNITS:
        yield from (f"{number} {unit}" for unit in _UNITS[spec.kind])
    elif rest:
        yield number
    if spec.kind == "sides" and not rest.endswith(tuple(WORDS)):
        yield from (f"{text.strip()} {unit}" for unit in ("cm", "in"))


def _units(units: tuple[str, str], rest: str) -> Iterator[str]:
    """Units to try: those that begin as what stands there does, then those of the line, then all others."""
    begun = [unit for unit in ("mm", "cm", "m", "in", "ft", "yd") if rest and unit.startswith(rest[:1].lower())]
    yield from dict.fromkeys((*sorted(begun, key=lambda unit: unit not in units), *units, "mm", "cm", "in", "m"))


def _nearest(spec: Input, text: str, error: FieldError) -> Iterator[str]:
    """The limit that was passed."""
    needed = error.needed.values
    if "low" in needed and spec.low is not None and spec.high is not None:
        limit = _passed(spec.low, spec.high, text)
        if limit is not None:
            yield limit
    elif spec.kind in ("whole", "amount") and "least" in needed:
        number = plain_number(text)
        if isinstance(number, int | float):
            yield f"{float(spec.least if number < spec.least else spec.most):g}"


def _passed(low: Length, high: Length, text: str) -> str | None:
    try:
        length = read_length(text)
    except FieldError:
        return None
    limit = low if length.mm < low.mm else high
    in_same = Length(limit.mm, length.unit)
    whole = (limit.mm / mm_in(length.unit) * 1000).denominator == 1
    return say_length(in_same if whole else limit)


def _choices(spec: Input, text: str) -> Iterator[str]:
    if near := closest(text.strip().lower(), spec.choices):
        yield near
    if len(spec.choices) <= _FEW:
        yield from spec.choices
