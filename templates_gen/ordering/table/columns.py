"""The names of the columns: which key of a kit each of them gives."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from typing import NamedTuple

from layout.kit.inputs import BY_KEY
from layout.kit.likeness import closest
from layout.kit.lookup import KIT
from layout.kit.range_values import OF_THE_RUN
from layout.messages.catalogue import Message, Role
from layout.values.errors import FieldError, FieldErrors, leave_out, shown
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import Header
from templates_gen.ordering.table.cells import bare
from templates_gen.ordering.table.order_numbers import NUMBER
from templates_gen.ordering.table.source import Row

KIT_NAME, COPIES, BUYER, LANGUAGE = "kit", "copies", "order.buyer", "paper.language"
SHORT: Mapping[str, str] = {
    "order": NUMBER,
    "kit": KIT_NAME,
    "copies": COPIES,
    "buyer": BUYER,
    "language": LANGUAGE,
}
"""Columns with names of their own, and the keys that they give; `kit` and `copies` are no keys of a kit."""

_OF_KIT = ("name", "version")
_OF_RANGE = (*(key for key in OF_THE_RUN if key != COPIES), "without")
_MOST = 50
"""After so many refusals no more columns are read."""


class Column(NamedTuple):
    """A column: its place from 0, its name as it was written, the dotted key that it gives."""

    at: int
    header: str
    key: str


def _names() -> dict[str, str]:
    """Every name that a column may have, in small letters, with its key."""
    keys = [key for key in BY_KEY if "[]" not in key and key not in _OF_KIT]
    return {**SHORT, **{key.lower(): key for key in keys}}


_NAMES = _names()
_SHORTEST = {key: name for name, key in reversed(_NAMES.items())}
_LEAVES = {name.rpartition(".")[2]: name for name in reversed([*_NAMES])}
"""The name of the first column whose key ends so."""


def columns_of(header: Row, file: str, kits: int) -> tuple[Column, ...]:
    """The columns that the first row names; FieldErrors with every one that cannot be.

    Without a name a column is none. `kits` is how many kits the range has: with one, no column has to say which.
    """
    reading = _Reading(header, file)
    found = tuple(reading.columns())
    reading.errors.extend(_missing(header, file, kits, {each.key for each in found} | reading.meant))
    if reading.errors:
        raise FieldErrors(reading.errors)
    return found


class _Reading:
    """One reading of a header: refusals are collected."""

    def __init__(self, header: Row, file: str) -> None:
        self.header, self.file = header, file
        self.errors: list[FieldError] = []
        self.meant: set[str] = set()

    def columns(self) -> Iterator[Column]:
        taken: dict[str, int] = {}
        for at, cell in enumerate(self.header.cells):
            name = bare(cell)
            if not name or len(self.errors) >= _MOST:
                continue
            key = self.key(at, name)
            if key in taken:
                self.refuse(at, Header.TWICE, name, leave_out(shown(name)), first=taken[key] + 1)
            elif key:
                taken[key] = at
                yield Column(at, name, key)

    def key(self, at: int, name: str) -> str:
        """The key of that name; empty where it is refused."""
        small = " ".join(name.casefold().split())
        if small in _NAMES:
            return _NAMES[small]
        top = small.partition(".")[0].removesuffix("[]")
        if small in _OF_KIT:
            self.refuse(at, Header.OF_KIT, name, "kit")
        elif top in _OF_RANGE:
            self.refuse(at, Header.OF_RANGE, name, leave_out(shown(name)))
        elif entries := _list_of(small):
            self.refuse(at, Header.LIST, name, entries)
        elif small in KIT.tables:
            self.refuse(at, Header.TABLE, name, next(key for key in _NAMES if key.startswith(f"{small}.")))
        else:
            self.unknown(at, name, small)
        return ""

    def unknown(self, at: int, name: str, small: str) -> None:
        meant = _LEAVES.get(small) or closest(small, _NAMES) or _LEAVES.get(closest(small, _LEAVES), "")
        if meant:
            self.meant.add(_NAMES[meant])
            meant = _SHORTEST[_NAMES[meant]]
            self.refuse(at, Header.MEANT, name, meant, meant=meant)
        else:
            self.refuse(at, Header.UNKNOWN, name, "weaving.width")

    def refuse(self, at: int, role: Role, name: str, example: Message | str, **values: object) -> None:
        place = message(Header.PLACE, file=self.file, line=self.header.line, number=at + 1)
        self.errors.append(OptionError(place, role, shown(name), example, **values))


def _missing(header: Row, file: str, kits: int, keys: Collection[str]) -> Iterator[FieldError]:
    got = shown(", ".join(cell for cell in header.cells if cell.strip()))
    place = message(Header.LINE, file=file, line=header.line)
    if NUMBER not in keys:
        yield OptionError(place, Header.ORDER, got, "order")
    if kits > 1 and KIT_NAME not in keys:
        yield OptionError(place, Header.KIT, got, "kit", kits=kits)


def _list_of(small: str) -> str:
    """The key of the list that a name leads into, such as "sett.readings" for "sett.readings[].pairs"."""
    lists = [key for key, spec in BY_KEY.items() if spec.kind == "tables" and "[]" not in key]
    name = small.replace("[]", "")
    return next((key for key in lists if name.startswith(f"{key}.")), "")
