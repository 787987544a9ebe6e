"""The one way between the keys of a kit file and the values of a kit: a field of a value is called as its key.

Most values hold the keys of one table. Where a field stands elsewhere, `places` names its whole key.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import Field, fields
from types import MappingProxyType
from typing import Any, TypeVar

from layout.kit.input import tables_of
from layout.kit.inputs import BY_KEY, INPUTS
from layout.kit.to_plain import left_out, to_plain

Got = Mapping[str, Any]
Value = TypeVar("Value")
_IN_THEIR_TABLE: Mapping[str, str] = MappingProxyType({})
_ORDER = {key: at for at, spec in reversed(list(enumerate(INPUTS))) for key in (*tables_of([spec]), spec.key)}
"""Where a key, or the first key of a table, stands in the kit file."""


def filled(make: type[Value], table: str, got: Got, places: Mapping[str, str] = _IN_THEIR_TABLE) -> Value:
    """The value of the type `make`, a dataclass, from what was read; KeyError for a key that was refused."""
    return make(**{field.name: got[_key(field, table, places)] for field in _fields(make)})


def entries(value: Any, table: str, places: Mapping[str, str] = _IN_THEIR_TABLE) -> Iterator[tuple[str, Any]]:
    """The same back: every key that `value` needs, with what to write there; what was left out is left out again.

    A key whose default is a word is always written, so that a file says what was meant.
    """
    for field in _fields(value):
        key, own = _key(field, table, places), getattr(value, field.name)
        usual = BY_KEY[key].default if key in BY_KEY else None
        if own != left_out(field) or isinstance(usual, str):
            yield key, _word_of(key) if own is None else to_plain(own)


def _word_of(key: str) -> str:
    """What is written for None where a key has a word for it."""
    spec = BY_KEY[key]
    return spec.word or str(spec.default)


def nested(values: Iterable[tuple[str, Any]]) -> dict[str, Any]:
    """Values by their dotted keys as tables within tables, in the order of the kit file."""
    tables: dict[str, Any] = {}
    for key, value in sorted(values, key=lambda entry: _ORDER[entry[0]]):
        *outer, leaf = key.split(".")
        place = tables
        for table in outer:
            place = place.setdefault(table, {})
        place[leaf] = value
    return tables


def _fields(of: Any) -> tuple[Field[Any], ...]:
    return fields(of)


def _key(field: Field[Any], table: str, places: Mapping[str, str]) -> str:
    return places.get(field.name, f"{table}.{field.name}")
