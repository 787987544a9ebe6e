"""Values of a kit told back as plain ones, which read as the very same: the other way of `fields`."""

from __future__ import annotations

from dataclasses import MISSING, Field, fields, is_dataclass
from fractions import Fraction
from typing import Any

from layout.values.units import Length, exact_length


def to_plain(value: Any) -> Any:
    """`value` as TOML and JSON can hold it: a dataclass as a table of what differs from its defaults, by field."""
    if isinstance(value, Length):
        return exact_length(value)
    if isinstance(value, Fraction):
        return _number(value)
    if isinstance(value, tuple):
        return [to_plain(entry) for entry in value]
    if is_dataclass(value) and not isinstance(value, type):
        return {
            each.name: to_plain(own) for each in fields(value) if (own := getattr(value, each.name)) != _default(each)
        }
    return value


def _default(field: Field[Any]) -> Any:
    return field.default if field.default_factory is MISSING else field.default_factory()


def _number(value: Fraction) -> int | float | str:
    """A whole number, or a decimal that is read as exactly this; a share of another kind as text in per cent."""
    if value.denominator == 1:
        return value.numerator
    nearest = float(value)
    return nearest if Fraction(repr(nearest)) == value else f"{value * 100} %"
