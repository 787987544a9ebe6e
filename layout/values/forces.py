"""Forces as people write them: in newtons, or as the weight of a mass that hangs on a thread."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from layout.messages.catalogue import Catalogue, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Unit, Value
from layout.values.errors import FieldError, shown
from layout.values.numerals import BLANK, NUMBER, number_from, say_number

_GRAM = Fraction("9.80665") / 1000
_POUND = Fraction("453.59237") * _GRAM

NEWTONS: Mapping[str, Fraction] = MappingProxyType(
    {"N": Fraction(1), "cN": Fraction(1, 100), "g": _GRAM, "kg": 1000 * _GRAM, "oz": _POUND / 16, "lb": _POUND}
)
"""Each unit in newtons, exactly: standard gravity is 9.80665 m/s2 (CGPM 1901), a pound 453.59237 g (1959)."""

_UNITS: Mapping[str, Role] = {
    "N": Unit.NEWTON,
    "cN": Unit.CENTINEWTON,
    "g": Unit.GRAM,
    "kg": Unit.KILOGRAM,
    "oz": Unit.OUNCE,
    "lb": Unit.POUND,
}
_WORDS = {unit.lower(): unit for unit in NEWTONS} | {
    "newton": "N", "newtons": "N", "gram": "g", "grams": "g", "kilogram": "kg", "kilograms": "kg",
    "ounce": "oz", "ounces": "oz", "pound": "lb", "pounds": "lb", "lbs": "lb",
}  # fmt: skip
_FORCE = re.compile(rf"{NUMBER}{BLANK}*(?P<unit>[A-Za-z]{{1,10}})", re.VERBOSE)
_EXAMPLE = "1.5 N"
_LONGEST = 60


@dataclass(frozen=True, slots=True)
class Force:
    """An exact force: `newtons`, and the `unit` (one of NEWTONS) in which it was written."""

    newtons: Fraction
    unit: str = "N"


def read_force(text: object) -> Force:
    """The force that `text` says, exactly; FieldError with an empty field if it says none."""
    if not isinstance(text, str) or len(text) > _LONGEST:
        raise FieldError("", Value.PULL, shown(text), _EXAMPLE)
    match = _FORCE.fullmatch(text.strip())
    unit = _WORDS.get(match["unit"].lower()) if match else None
    if match is None or unit is None:
        raise FieldError("", Value.PULL, shown(text), _EXAMPLE)
    return Force(number_from(match, text) * NEWTONS[unit], unit)


def say_force(force: Force, words: Catalogue = ENGLISH) -> str:
    """A force for people, in up to 3 decimals of the unit in which it was written."""
    return words.say(_UNITS[force.unit], number=say_number(force.newtons / NEWTONS[force.unit]))


def exact_force(force: Force) -> str:
    """A force as text that reads back as the very same value: "3/2 N", "150 g"."""
    return f"{force.newtons / NEWTONS[force.unit]} {force.unit}"
