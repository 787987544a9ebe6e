"""What stands in the tables of a box, read against its line in the table of inputs: names, cards, texts, links."""

from __future__ import annotations

import re
from fractions import Fraction

from layout.drawing.metrics import FontMetrics
from layout.kit.box import CARDS, CardSize, Sides
from layout.kit.input import Input
from layout.kit.likeness import closest
from layout.kit.names import read_line
from layout.messages.catalogue import Figure, Message
from layout.messages.english import ENGLISH
from layout.messages.roles.ranges import BoxNeed
from layout.values.errors import FieldError, shown
from layout.values.forces import NEWTONS, read_force
from layout.values.limits import exact, plain
from layout.values.units import Length, read_length, read_size, say_length

OWN = "own"
LEAST_CARD = Fraction(40), Fraction(30)
"""A card of your own is at least so wide and high, in mm. Our own limit."""

_LONGEST_ENTRY, _LONGEST_SIDES, _MILLIGRAM = 60, 60, Fraction(1, 1000)
_UNIT = re.compile("[A-Za-z\"'\u2032\u2033]+$")
_SCHEMES = ("https://", "http://")


def read_names(spec: Input, value: object) -> tuple[str, ...]:
    """A list of names out of the choices of `spec`, none of them twice; it may be empty."""
    known = ENGLISH.listed(spec.choices)
    if not isinstance(value, list | tuple):
        raise FieldError("", BoxNeed.NAMES, shown(value), "", names=known)
    names: list[str] = []
    for each in value:
        name = " ".join(each[:_LONGEST_ENTRY].lower().split()) if isinstance(each, str) else ""
        if name in names:
            raise FieldError("", BoxNeed.NAME_TWICE, shown(name), "")
        if name not in spec.choices:
            meant = closest(name, spec.choices)
            role, more = (BoxNeed.NAMES_MEANT, {"meant": meant}) if meant else (BoxNeed.NAMES, {})
            raise FieldError("", role, shown(each), "", names=known, **more)
        names.append(name)
    return tuple(names)


def read_card(spec: Input, value: object) -> CardSize:
    """A card by its name, or one of your own by its sides; its longer side is its width."""
    word = " ".join(value[:_LONGEST_ENTRY].lower().split()) if isinstance(value, str) else ""
    if word in CARDS:
        return CARDS[word]
    needed = Message(BoxNeed.CARD, {"names": ENGLISH.listed([f'"{name}"' for name in CARDS])})
    try:
        high, wide = sorted(read_size(value), key=lambda side: side.mm)
    except FieldError:
        raise FieldError("", needed, shown(value), "") from None
    most = spec.high.mm if spec.high else wide.mm
    if wide.mm < LEAST_CARD[0] or high.mm < LEAST_CARD[1] or wide.mm > most:
        raise FieldError("", BoxNeed.CARD_BETWEEN, shown(value), "", most=Figure(f"{int(most)}"))
    return CardSize(OWN, wide, high)


def read_sides(spec: Input, value: object) -> Sides:
    """Three sides, such as "42 x 57 x 6 cm"; a side without a unit has the last one's."""
    needed = Message(BoxNeed.SIDES)
    if not isinstance(value, str) or len(value) > _LONGEST_SIDES:
        raise FieldError("", needed, shown(value), "")
    sides = [side.strip() for side in re.split("[xX\u00d7]", value)]
    unit = _UNIT.search(sides[-1])
    if len(sides) != 3 or unit is None:
        raise FieldError("", needed, shown(value), "")
    return Sides(*(_side(spec, side if _UNIT.search(side) else f"{side} {unit[0]}", value) for side in sides))


def _side(spec: Input, text: str, value: object) -> Length:
    length = read_length(text)
    if spec.low and spec.high and not spec.low.mm <= length.mm <= spec.high.mm:
        limits = {"low": say_length(spec.low), "high": say_length(spec.high)}
        raise FieldError("", BoxNeed.SIDES_BETWEEN, shown(value), "", **limits)
    return length


def read_mass(spec: Input, value: object) -> Fraction:
    """A weight in grams, to the milligram: a number of them, or a text with its unit."""
    limits = {"least": plain(spec.least), "most": Figure(f"{int(spec.most):,}")}
    needed = Message(BoxNeed.MASS, limits)
    if isinstance(value, str):
        try:
            force = read_force(value)
        except FieldError as error:
            raise FieldError("", needed, error.got, "") from None
        if force.unit in ("N", "cN"):
            raise FieldError("", needed, shown(value), "")
        grams = force.newtons / NEWTONS["g"]
    else:
        grams = exact(value, "", needed, "") if isinstance(value, int | float | Fraction) else Fraction(-1)
    if not spec.least <= grams <= spec.most:
        raise FieldError("", needed, shown(value), "")
    return round(grams / _MILLIGRAM) * _MILLIGRAM


def read_link(spec: Input, value: object) -> str:
    """An address of the web as it is, to stand in a code; nothing is an address that was left out."""
    most = int(spec.most)
    text = value.strip() if isinstance(value, str) and len(value) <= 10 * most else None
    if text == "":
        return ""
    begins = next((each for each in _SCHEMES if text and text.lower().startswith(each)), "")
    if text is None or not begins or len(text) == len(begins) or " " in text or not text.isprintable():
        raise FieldError("", BoxNeed.LINK, shown(value), "")
    if len(text) > most:
        raise FieldError("", BoxNeed.LINK_LONG, shown(value), "", most=most, count=len(text))
    return text


def read_text(spec: Input, value: object, metrics: FontMetrics) -> str:
    """One line of your own words that the print font has; it may be empty."""
    if value == "":
        return ""
    return read_line(value, metrics, int(spec.most), BoxNeed.TEXT, BoxNeed.TEXT_LONG)


def read_lines(spec: Input, value: object, metrics: FontMetrics) -> tuple[str, ...]:
    """A few such lines."""
    most = int(spec.most)
    if not isinstance(value, list | tuple) or len(value) > most:
        raise FieldError("", BoxNeed.LINES, shown(value), "", most=most)
    return tuple(read_line(each, metrics, _LONGEST_ENTRY, BoxNeed.TEXT, BoxNeed.TEXT_LONG) for each in value)
