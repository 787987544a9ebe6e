"""The systems in which people state how heavy a yarn is, and their exact factors.

Definitions: 9 denier = 1 tex and metric count = 1000 / tex (BS definitions); hanks of 840, 560, 1600 and 300 yd to the
pound (ASTM D2260, Table 1). 1 lb = 453.59237 g and 1 yd = 0.9144 m exactly.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from layout.messages.catalogue import Message, Role
from layout.messages.roles import Counts, YarnNeed, YarnNumber, YarnSystem
from layout.values.errors import FieldError, shown
from layout.values.limits import Number, above_zero
from layout.values.numerals import read_number

POUND_G = Fraction("453.59237")
OUNCE_G = POUND_G / 16
YARD_M = Fraction("0.9144")


@dataclass(frozen=True, slots=True)
class System:
    """One way of stating linear density: its `name`, and what it `counts` (None where the name says it).

    `direct`: tex = number x `constant` (the heavier, the higher); else tex = `constant` / number (the finer, the
    higher). `finished`: the number always belongs to the finished yarn, so there are no plies to state.
    """

    key: str
    name: Role
    counts: Role | None
    constant: Fraction
    direct: bool
    finished: bool = False

    @property
    def named(self) -> Message | Role:
        """Its name, with what is counted in it."""
        return Message(YarnSystem.NAMED, {"name": self.name, "counts": self.counts}) if self.counts else self.name

    def tex(self, number: Fraction) -> Fraction:
        """Grams in a kilometre of a yarn of that number."""
        return number * self.constant if self.direct else self.constant / number

    def number(self, tex: Fraction) -> Fraction:
        """The number of a yarn of that tex."""
        return tex / self.constant if self.direct else self.constant / tex


def _hanks(key: str, name: Role, counts: Role | None, yards: int, finished: bool = False) -> System:
    return System(key, name, counts, 1000 * POUND_G / (yards * YARD_M), direct=False, finished=finished)


_ALL = (
    System("tex", YarnSystem.TEX, Counts.TEX, Fraction(1), direct=True),
    System("dtex", YarnSystem.DTEX, Counts.DTEX, Fraction(1, 10), direct=True),
    System("denier", YarnSystem.DENIER, Counts.DENIER, Fraction(1, 9), direct=True),
    System("nm", YarnSystem.NM, Counts.NM, Fraction(1000), direct=False),
    _hanks("ne", YarnSystem.NE, Counts.NE, 840),
    _hanks("worsted", YarnSystem.WORSTED, Counts.WORSTED, 560),
    _hanks("run", YarnSystem.RUN, Counts.RUN, 1600),
    _hanks("lea", YarnSystem.LEA, Counts.LEA, 300),
    System("m/100g", YarnSystem.M_100G, None, Fraction(100_000), direct=False, finished=True),
    _hanks("yd/lb", YarnSystem.YD_LB, None, 1, finished=True),
)

SYSTEMS: Mapping[str, System] = MappingProxyType({system.key: system for system in _ALL})

_FOLDED = re.compile(r"\s*(\d+(?:[.,]\d+)?)\s*[/x]\s*(\d+(?:[.,]\d+)?)\s*s?\s*", re.ASCII | re.IGNORECASE)
_LONGEST = 60

ORDERS = ("count/plies", "plies/count")
"""What is what in a count such as "8/2": as today's craft labels write, and as older books do."""


def system(name: str, field: str = "system") -> System:
    """The system called `name`; FieldError for an unknown one, and for "cut", which has two meanings."""
    key = name.strip().casefold() if isinstance(name, str) else name
    if key == "cut":
        raise FieldError(field, YarnNeed.CUT, shown(name), 'system = "yd/lb"')
    if not isinstance(key, str) or key not in SYSTEMS:
        raise FieldError(field, YarnNeed.SYSTEM, shown(name), 'system = "ne"', systems=", ".join(SYSTEMS))
    return SYSTEMS[key]


def read_count(value: Number | str, field: str = "count") -> Fraction:
    """The number exactly, from a number or from text such as "8", "8.5", "8,5" or "8 1/2".

    Text such as "8/2" is refused, since books write ply before count and today's craft labels count before ply; so is
    "8,500", which may mean thousands.
    """
    if not isinstance(value, str):
        return above_zero(value, field, YarnNumber.COUNT, "count = 8")
    if meanings := two_meanings(value):
        first, second, needed = meanings
        example = Message(YarnNeed.FIRST_MEANING, {"line": f"count = {first}, plies = {second}"})
        raise FieldError(field, needed, shown(value), example)
    try:
        number = read_number(value) if len(value) <= _LONGEST else None
    except FieldError as error:
        raise error.at(field) from None
    if number is None:
        raise FieldError(field, YarnNeed.NUMBER, shown(value), "count = 8")
    return above_zero(number, field, YarnNumber.COUNT, "count = 8")


def is_folded(text: str) -> bool:
    """Whether `text` says a count and plies with a stroke between them, in whatever order."""
    return two_meanings(text) is not None


def read_folded(text: str, order: str | None, field: str = "count") -> tuple[Fraction, Fraction]:
    """Count and plies from text such as "8/2", in the `order` "count/plies" or "plies/count"; FieldError without it."""
    meanings = two_meanings(text)
    if meanings is None or order is None:
        read_count(text, field)  # refuses: without an order there are two meanings
        raise FieldError(field, YarnNeed.STROKE, shown(text), 'count = "8/2"')
    first, second = (read_count(part, field) for part in meanings[:2])
    return (first, second) if order == ORDERS[0] else (second, first)


def two_meanings(text: str) -> tuple[str, str, Message] | None:
    """Both numbers of text such as "8/2", and the refusal of it; None for text of another form."""
    found = _FOLDED.fullmatch(text) if len(text) <= _LONGEST else None
    if not found:
        return None
    first, second = found.groups()
    return first, second, Message(YarnNeed.TWO_MEANINGS, {"first": first, "second": second})


def rounded_tex(tex: Fraction) -> Fraction:
    """`tex` to three significant figures, for labels; never more than 0.5 % off (ISO 2947 lets 2 % pass)."""
    return Fraction(f"{float(tex):.2e}")
