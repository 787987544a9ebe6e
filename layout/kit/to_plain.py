"""Values of a kit written back as plain ones, which read as the very same: the other way of `fields`."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from fractions import Fraction
from typing import Any

from layout.kit.box import CARDS, CardSize, Sides
from layout.kit.paper_size import PaperSize
from layout.sett.readings import WrapReading
from layout.values.forces import Force, exact_force
from layout.values.units import Length, Sett, exact_length, exact_sett


def to_plain(value: Any) -> Any:
    """`value` as TOML and JSON can hold it: a dataclass as a table of what differs from its defaults, by field."""
    if (write := _WRITERS.get(type(value))) is not None:
        return write(value)
    if isinstance(value, tuple):
        return [to_plain(entry) for entry in value]
    if is_dataclass(value) and not isinstance(value, type):
        return {
            each.name: to_plain(own) for each in fields(value) if (own := getattr(value, each.name)) != left_out(each)
        }
    return value


def left_out(field: Field[Any]) -> Any:
    """What stands in a field of a dataclass that was left out; MISSING where it cannot be."""
    return field.default if field.default_factory is MISSING else field.default_factory()


def _number(value: Fraction) -> int | float | str:
    """A whole number, or a decimal that is read as exactly this; a share of another kind as text in per cent."""
    if value.denominator == 1:
        return value.numerator
    nearest = float(value)
    return nearest if Fraction(repr(nearest)) == value else f"{value * 100} %"


def _reading(reading: WrapReading) -> dict[str, object]:
    return {"pairs": reading.pairs, "measure" if reading.measured else "window": exact_length(reading.over)}


def _card(card: CardSize) -> str:
    return card.name if card.name in CARDS else _sides((card.width, card.height))


def _sides(sides: Iterable[Length]) -> str:
    return " x ".join(map(exact_length, sides))


def _size(size: PaperSize) -> str:
    return size.words


_WRITERS: Mapping[type, Callable[[Any], Any]] = {
    Length: exact_length,
    Sett: exact_sett,
    Force: exact_force,
    Fraction: _number,
    WrapReading: _reading,
    PaperSize: _size,
    CardSize: _card,
    Sides: _sides,
}
