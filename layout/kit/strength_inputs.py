"""The inputs about the strength of the frame ends: read into one value, checked together, and written back."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields
from typing import Any

from layout.frames.strength import Strength
from layout.kit.kinds.all_keys import END_KEYS
from layout.messages.roles import EndNeed
from layout.values.errors import FieldError
from layout.values.forces import exact_force
from layout.values.units import Length, exact_length, say_length

_KEYS = tuple(field.name for field in fields(Strength))


def strength_of(got: Mapping[str, Any]) -> Strength:
    """The strength's inputs as one value."""
    return Strength(*(got.get(f"frame.{key}") for key in _KEYS))


def strength_errors(got: Mapping[str, Any]) -> Iterator[FieldError]:
    """A bore means nothing but in a round bar, a width nothing but on a board, and a bore leaves a wall."""
    ends, strength, diameter = got.get("frame.ends"), strength_of(got), got.get("frame.bar_diameter")
    if ends is None:
        return
    has_bore = END_KEYS[ends].strength == "bar_bore"
    key, value = ("end_width", strength.end_width) if has_bore else ("bar_bore", strength.bar_bore)
    if value:
        yield FieldError(f"frame.{key}", EndNeed.LEFT_OUT, say_length(value), f"leave out {key}", ends=ends)
    elif diameter and strength.bar_bore and strength.bar_bore.mm >= diameter.mm:
        inside = exact_length(Length(diameter.mm * 3 / 4, diameter.unit))
        bore, example = say_length(strength.bar_bore), f'bar_bore = "{inside}"'
        yield FieldError("frame.bar_bore", EndNeed.BORE, bore, example, diameter=say_length(diameter))


def strength_values(strength: Strength) -> dict[str, object]:
    """The inputs that a kit has, as plain values that read back as the very same."""
    values: dict[str, object] = {}
    if strength.tension:
        values["tension"] = exact_force(strength.tension)
    if strength.material:
        values["material"] = strength.material
    lengths = {"bar_bore": strength.bar_bore, "end_width": strength.end_width}
    return values | {key: exact_length(length) for key, length in lengths.items() if length}
