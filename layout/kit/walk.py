"""The nested plain values of a file, walked in their own order: every value read, every refusal kept."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from layout.drawing.metrics import FontMetrics
from layout.kit.fields import example_of, read_field, tame
from layout.kit.input import Input
from layout.kit.lookup import KIT, Catalogue
from layout.kit.table_types import MAKERS, Maker
from layout.kit.unknown_keys import entry_example, short_key, unknown_key
from layout.messages.catalogue import Message
from layout.messages.roles import Table
from layout.values.errors import FieldError, shown

MOST_ERRORS = 50
"""After so many refusals the rest of a file is not read."""
MOST_ENTRIES = 50
"""More entries of one list are refused."""


class Walk:
    """One walk over the values of a file: `got` holds what could be read, by dotted key, and `errors` every refusal.

    A key that is missing in `got` was refused; one that was left out stands there with its default. A table of `makers`
    is one value, under the table's own key; `tables.filled` takes all of them from there.
    """

    def __init__(self, metrics: FontMetrics, inputs: Catalogue = KIT, makers: Mapping[str, Maker] = MAKERS) -> None:
        self.metrics, self.inputs, self.makers = metrics, inputs, makers
        self.got: dict[str, Any] = {}
        self.errors: list[FieldError] = []
        self._met: set[str] = set()  # keys and tables that were given, or meant by a misspelt one

    def over(self, values: Mapping[str, object]) -> None:
        """Read all of `values`, then fill in what was left out."""
        self._inside("", "", values)
        self._fill_in()

    def only(self, table: str, values: Mapping[str, object]) -> None:
        """Read `values` as the entries of one table, and fill in what was left out there."""
        self._met.update(name for name in ("version", "name", *self.inputs.tables) if name != table)
        self._inside(table, table, values)
        self._fill_in()

    def _inside(self, key: str, table: str, values: Mapping[str, object]) -> None:
        """Every entry of the `table` at `key` (the same, but that entries of lists are numbered)."""
        for leaf, value in values.items():
            if len(self.errors) >= MOST_ERRORS:
                return
            self._entry(_joined(key, short_key(str(leaf))), table, str(leaf), value)

    def _entry(self, key: str, table: str, leaf: str, value: object) -> None:
        named = _joined(table, leaf) if "." not in leaf else ""
        spec = self.inputs.by_key.get(named)
        if named in self.inputs.tables:
            self._table(key, named, value)
        elif spec is None:
            error, meant = unknown_key(table, leaf, key, self.inputs)
            self.errors.append(error)
            self._met.add(meant)
        else:
            self._met.add(named)
            (self._list if spec.kind == "tables" else self._read)(spec, value, key)

    def _read(self, spec: Input, value: object, key: str) -> None:
        try:
            self.got[key] = read_field(spec, value, key, self.metrics)
        except FieldError as error:
            self.errors.append(error)

    def _table(self, key: str, table: str, value: object) -> None:
        """A table, or an entry of a list of them."""
        if not isinstance(value, Mapping):
            self._met.add(table)
            self.errors.append(FieldError(key, Table.TABLE, shown(tame(value)), entry_example(table, self.inputs)))
            return
        before = len(self.errors)
        self._inside(key, table, value)
        if table in self.makers and len(self.errors) == before:
            self._make(key, table, {str(leaf): self.got[_joined(key, str(leaf))] for leaf in value})

    def _make(self, key: str, table: str, leaves: Mapping[str, Any]) -> None:
        try:
            self.got[key] = self.makers[table](key, leaves)
        except FieldError as error:
            self.errors.append(error)

    def _list(self, spec: Input, value: object, key: str) -> None:
        """A list of small tables."""
        least, most = int(spec.least), min(int(spec.most), MOST_ENTRIES)
        if not isinstance(value, list | tuple) or not least <= len(value) <= most:
            got, example = shown(tame(value)), example_of(spec)
            self.errors.append(FieldError(key, Table.LIST, got, example, least=least, most=most))
            return
        before = len(self.errors)
        keys = [f"{key}[{number}]" for number in range(1, len(value) + 1)]
        for entry_key, entry in zip(keys, value, strict=True):
            self._table(entry_key, f"{spec.key}[]", entry)
        if len(self.errors) == before:
            self.got[key] = tuple(self.got[entry_key] for entry_key in keys)

    def _fill_in(self) -> None:
        for table in self.inputs.tables:
            if table not in self.makers or table in self.got or table in self._met:
                continue
            if "." not in table:
                self._make(table, table, {})
            elif table.split(".")[0] not in self.makers:
                self.got[table] = None
        for spec in self.inputs.inputs:
            top = spec.key.split(".")[0]
            if spec.key in self._met or top in self._met or top in self.makers or "[]" in spec.key:
                continue
            if spec.required:
                missing = Message(Table.MISSING, {"why": Message(spec.help)})
                self.errors.append(FieldError(spec.key, missing, shown(None), example_of(spec)))
            elif isinstance(spec.default, str):
                self.got[spec.key] = read_field(spec, spec.default, spec.key, self.metrics)
            else:
                self.got[spec.key] = () if spec.kind == "tables" else spec.default


def _joined(table: str, leaf: str) -> str:
    return f"{table}.{leaf}".removeprefix(".")
