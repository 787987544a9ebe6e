"""Numbers and units as people write them.

Our own grammar reads the number. What the usual units are worth stands in a table, which a test compares with pint.
Pint says what any other unit is worth; to import it takes longer than to read a whole kit.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from math import ceil, floor
from typing import Any

from layout.messages.catalogue import Catalogue, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import SettUnit, Unit, Value
from layout.values.errors import FieldError, shown
from layout.values.numerals import BLANK, NUMBER, number_from, say_mixed, say_number

_LONGEST = 64
_FINEST = 64  # inches are said in fractions down to 1/64

# As pint reads them: name, value, the short word we keep, other words. These words and no others are read.
_DEFINITIONS = (
    "millimetre = [length] = mm = millimetres = millimeter = millimeters",
    "centimetre = 10 millimetre = cm = centimetres = centimeter = centimeters",
    "decimetre = 100 millimetre = dm = decimetres = decimeter = decimeters",
    "metre = 1000 millimetre = m = metres = meter = meters",
    "inch = 25.4 millimetre = in = ins = inches",
    "foot = 12 inch = ft = feet",
    "yard = 3 foot = yd = yds = yards",
)
_NAMES = tuple(tuple(part.strip() for part in line.split("=")) for line in _DEFINITIONS)
_USUAL = {
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
    "in": Fraction(127, 5),
    "ft": Fraction(1524, 5),
    "yd": Fraction(4572, 5),
}
"""Millimetres in each usual unit."""
WORDS = {word: names[2] for names in _NAMES for word in (names[0], *names[2:])}
"""Every unit word that is read, and the short one it is kept as."""
SIGNS = {'"': "in", "\u2033": "in", "\u201d": "in", "''": "in", "'": "ft", "\u2032": "ft", "\u2019": "ft"}
"""The signs for inch and foot, straight or curled."""

_UNIT = "(?P<unit>[A-Za-z]{1,12}\\.?|''|[" + "".join(sign for sign in SIGNS if len(sign) == 1) + "])"
_LENGTH = re.compile(rf"{NUMBER}{BLANK}*{_UNIT}?", re.VERBOSE)
_SETT = re.compile(
    rf"{NUMBER}{BLANK}*(?:epi|(?:ends?)?{BLANK}*(?:per|/){BLANK}*(?P<count>10?0?(?![0-9]))?{BLANK}*{_UNIT})",
    re.VERBOSE | re.IGNORECASE | re.ASCII,  # ASCII: else a long s would pass for an s
)


@dataclass(frozen=True, slots=True)
class Length:
    """An exact length: `mm`, and the `unit` ("mm", "cm", "dm", "m", "in", "ft", "yd") in which it was written."""

    mm: Fraction
    unit: str = "mm"

    @property
    def imperial(self) -> bool:
        """Whether it was written in inches, feet or yards."""
        return self.unit in ("in", "ft", "yd")


@dataclass(frozen=True, slots=True)
class Sett:
    """Ends per unit of width: exact `per_mm`, and the `unit` ("in", "cm" or "10 cm") over which it was written."""

    per_mm: Fraction
    unit: str = "in"


_PER = {
    (1, "in"): "in",
    (1, "cm"): "cm",
    (10, "mm"): "cm",
    (10, "cm"): "10 cm",
    (1, "dm"): "10 cm",
    (100, "mm"): "10 cm",
}
_UNITS: dict[str, Role] = {
    "mm": Unit.MM,
    "cm": Unit.CM,
    "dm": Unit.DM,
    "m": Unit.METRE,
    "in": Unit.INCH,
    "ft": Unit.FOOT,
    "yd": Unit.YARD,
}
_OVER = {"in": Fraction(127, 5), "cm": Fraction(10), "10 cm": Fraction(100)}
_SETTS = {"in": SettUnit.EPI, "cm": SettUnit.PER_CM, "10 cm": SettUnit.PER_10_CM}
_DENSITIES = {
    "in": SettUnit.NOTCHES_PER_INCH,
    "cm": SettUnit.NOTCHES_PER_CM,
    "10 cm": SettUnit.NOTCHES_PER_10_CM,
}


def mm_in(unit: str) -> Fraction:
    """How many millimetres one of `unit` (a short word such as "cm") is, exactly."""
    return _USUAL.get(unit) or mm_by_pint(unit)


@cache
def mm_by_pint(unit: str) -> Fraction:
    """How many millimetres one of `unit` is, exactly, as pint has it from our definitions."""
    return Fraction(_registry().Quantity(Fraction(1), unit).to("millimetre").magnitude)


@cache
def _registry() -> Any:
    import pint  # heavy, and needed for a rare unit alone

    registry: Any = pint.UnitRegistry(None, non_int_type=Fraction)
    for line in _DEFINITIONS:
        registry.define(line)
    return registry


def read_length(text: object) -> Length:
    """The length that `text` says, exactly; FieldError with an empty field if it says none."""
    match = _LENGTH.fullmatch(_short(text, Value.LENGTH, "12 in"))
    unit = _unit_of(match)
    if match is None or unit is None:
        raise FieldError("", Value.LENGTH, shown(text), "12 in")
    return Length(number_from(match, str(text)) * mm_in(unit), unit)


def read_sett(text: object) -> Sett:
    """The sett that `text` says, exactly; FieldError with an empty field if it says none."""
    match = _SETT.fullmatch(_short(text, Value.SETT, "8 epi"))
    over = _over(match) if match else None
    if match is None or over is None:
        raise FieldError("", Value.SETT, shown(text), "8 epi")
    return Sett(number_from(match, str(text)) / _OVER[over], over)


def _over(match: re.Match[str]) -> str | None:
    if match["unit"] is None:
        return "in"
    unit = _unit_of(match)
    if unit is None:
        return None
    return _PER.get((int(match["count"] or 1), unit))


def read_size(text: object) -> tuple[Length, Length]:
    """Width and height from "210 x 297 mm"; a width without a unit has the height's."""
    example = "210 x 297 mm"
    sides = re.split("[xX\u00d7]", _short(text, Value.SIZE, example))
    first, second = [_LENGTH.fullmatch(side.strip()) for side in sides] if len(sides) == 2 else (None, None)
    high = _unit_of(second)
    wide = _unit_of(first) if first and first["unit"] else high
    if first is None or second is None or wide is None or high is None:
        raise FieldError("", Value.SIZE, shown(text), example)
    width, height = number_from(first, str(text)), number_from(second, str(text))
    return Length(width * mm_in(wide), wide), Length(height * mm_in(high), high)


def _short(text: object, needed: Role, example: str) -> str:
    """`text` trimmed, or a refusal of what is no text or absurdly long (so that reading it costs nothing)."""
    if isinstance(text, str) and len(text) > _LONGEST:
        raise FieldError("", Value.SHORTER, shown(text), example, most=_LONGEST)
    if not isinstance(text, str):
        raise FieldError("", needed, shown(text), example)
    return text.strip()


def _unit_of(match: re.Match[str] | None) -> str | None:
    if match is None or match["unit"] is None:
        return None
    word = match["unit"].lower()
    return SIGNS.get(word) or WORDS.get(word.removesuffix("."))


def in_unit(number: str, unit: str, words: Catalogue = ENGLISH) -> str:
    """A number in figures with the short word of its unit of length, such as "mm"."""
    return words.say(_UNITS[unit], number=number)


def say_length(length: Length, words: Catalogue = ENGLISH) -> str:
    """A length for people: inches in exact fractions down to 1/64, all others in up to 3 decimals."""
    value = length.mm / mm_in(length.unit)
    exact = length.imperial and (value * _FINEST).denominator == 1
    return in_unit(say_mixed(value) if exact else say_number(value), length.unit, words)


def up(length: Length) -> str:
    """A length for people, rounded up to whole millimetres or eighths of an inch."""
    step = mm_in("in") / 8 if length.imperial else Fraction(1)
    return say_length(Length(ceil(length.mm / step) * step, length.unit))


def down(length: Length) -> str:
    """A length for people, rounded down to whole millimetres or eighths of an inch."""
    step = mm_in("in") / 8 if length.imperial else Fraction(1)
    return say_length(Length(floor(length.mm / step) * step, length.unit))


def say_sett(sett: Sett) -> str:
    """A sett for people: "8 epi", "2.5 ends per cm", "25 ends per 10 cm", in up to 3 decimals."""
    return ENGLISH.say(_SETTS[sett.unit], number=say_number(sett.per_mm * _OVER[sett.unit]))


def say_density(density: Sett) -> str:
    """How close notches are, for people: "4 notches per cm", in up to 3 decimals."""
    return ENGLISH.say(_DENSITIES[density.unit], number=say_number(density.per_mm * _OVER[density.unit]))


def exact_length(length: Length) -> str:
    """A length as text that reads back as the very same value: "12 in", "1524/5 mm"."""
    return f"{length.mm / mm_in(length.unit)} {length.unit}"


def exact_sett(sett: Sett) -> str:
    """A sett as text that reads back as the very same value: "8 per in", "27/10 per cm"."""
    return f"{sett.per_mm * _OVER[sett.unit]} per {sett.unit}"


__all__ = [
    "SIGNS",
    "WORDS",
    "Length",
    "Sett",
    "down",
    "exact_length",
    "exact_sett",
    "in_unit",
    "mm_by_pint",
    "mm_in",
    "read_length",
    "read_sett",
    "read_size",
    "say_density",
    "say_length",
    "say_number",
    "say_sett",
    "up",
]
