"""Where the values of the kits of a range come from, key by key: the range, a kit itself, or left out by it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from layout.kit.inputs import INPUTS
from layout.kit.merging import Values, leaves_of

_PLACES = {spec.key: place for place, spec in enumerate(INPUTS)}
_NAMES = ("name", "version")
"""What the range and each kit say of their own in any case."""


class Sourced(NamedTuple):
    """The plain `values` of a kit, and the dotted keys of those that are its `own`; all others are the range's."""

    values: Values
    own: tuple[str, ...]


class Source(NamedTuple):
    """A dotted key: what the range says there (None: nothing), what each kit has (None: nothing), whose is its own."""

    key: str
    shared: object
    values: tuple[object, ...]
    own: tuple[bool, ...]

    @property
    def differs(self) -> bool:
        """Whether any two kits differ in it."""
        return any(value != self.values[0] for value in self.values)

    def left_out(self, place: int) -> bool:
        """Whether the kit at that place goes without what the range says."""
        return self.shared is not None and self.values[place] is None


def sources_of(shared: Values, kits: Sequence[Sourced]) -> tuple[Source, ...]:
    """Every key that the range or a kit says, but for names, in the order of a kit file."""
    leaves = [shared, *(kit.values for kit in kits)]
    keys = [key for key in dict.fromkeys(key for each in leaves for key in leaves_of(each)) if key not in _NAMES]
    found = [
        Source(key, at(shared, key), tuple(at(kit.values, key) for kit in kits), tuple(key in kit.own for kit in kits))
        for key in keys
    ]
    return tuple(sorted(found, key=lambda each: _PLACES.get(each.key, len(_PLACES))))


def at(values: Mapping[str, object], key: str) -> object:
    """What stands at a dotted key; None where nothing does."""
    place: object = values
    for part in key.split("."):
        place = place.get(part) if isinstance(place, Mapping) else None
    return place
