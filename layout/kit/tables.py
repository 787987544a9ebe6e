"""The nested plain values of a file, walked in their own order: every value read, every refusal kept."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from layout.drawing.metrics import FontMetrics
from layout.errors import FieldError, shown
from layout.kit.catalogue import KIT, Catalogue
from layout.kit.fields import example_of, read_field, tame
from layout.kit.inputs import Input
from layout.kit.unknown import READING_EXAMPLE, short_key, unknown_in_reading, unknown_key
from layout.setting.sett import Reading

MOST_ERRORS = 50
"""After so many refusals the rest of a file is not read."""
MOST_READINGS = 50


class Walk:
    """One walk over the values of a file: `got` holds what could be read, by dotted key, and `errors` every refusal.

    A key that is missing in `got` was refused; one that was left out stands there with its default.
    """

    def __init__(self, metrics: FontMetrics, inputs: Catalogue = KIT) -> None:
        self.metrics, self.inputs = metrics, inputs
        self.got: dict[str, Any] = {}
        self.errors: list[FieldError] = []
        self._met: set[str] = set()  # keys and tables that were given, or meant by a misspelt one

    def over(self, values: Mapping[str, object]) -> None:
        """Read all of `values`, then fill in what was left out."""
        for key, value in values.items():
            if key not in self.inputs.tables:
                self._entry("", str(key), value)
            elif isinstance(value, Mapping):
                for leaf, inner in value.items():
                    self._entry(key, str(leaf), inner)
            else:
                self._met.add(key)
                self.errors.append(FieldError(key, "to be a table of keys", shown(tame(value)), f"[{key}]"))
        self._fill_in()

    def only(self, table: str, values: Mapping[str, object]) -> None:
        """Read `values` as the entries of one table, and fill in what was left out there."""
        self._met.update(name for name in ("version", "name", *self.inputs.tables) if name != table)
        for leaf, value in values.items():
            self._entry(table, str(leaf), value)
        self._fill_in()

    def _entry(self, table: str, leaf: str, value: object) -> None:
        if len(self.errors) >= MOST_ERRORS:
            return
        spec = self.inputs.by_key.get(f"{table}.{leaf}".removeprefix("."))
        if spec is None:
            error, meant = unknown_key(table, leaf, self.inputs)
            self.errors.append(error)
            self._met.add(meant)
            return
        self._met.add(spec.key)
        if spec.kind == "readings":
            self._readings(spec, value)
        else:
            self._read(spec, value, spec.key)

    def _read(self, spec: Input, value: object, key: str) -> None:
        try:
            self.got[key] = read_field(spec, value, key, self.metrics)
        except FieldError as error:
            self.errors.append(error)

    def _readings(self, spec: Input, value: object) -> None:
        """The list of wrap readings, each a small table of its own."""
        if not isinstance(value, list | tuple) or not 1 <= len(value) <= MOST_READINGS:
            needed = f"a list of 1 to {MOST_READINGS} wrap readings"
            self.errors.append(FieldError(spec.key, needed, shown(tame(value)), example_of(spec)))
            return
        before = len(self.errors)
        found = tuple(self._reading(f"{spec.key}[{number}]", entry) for number, entry in enumerate(value, 1))
        if len(self.errors) == before:
            self.got[spec.key] = found

    def _reading(self, key: str, entry: object) -> Reading | None:
        """One wrap reading; None, with the refusals kept, if it cannot be used."""
        leaves = {str(leaf): value for leaf, value in entry.items()} if isinstance(entry, Mapping) else {}
        before = len(self.errors)
        for leaf, value in leaves.items():
            spec = self.inputs.by_key.get(f"sett.readings[].{leaf}")
            if spec is None:
                self.errors.append(unknown_in_reading(key, leaf))
            else:
                self._read(spec, value, f"{key}.{leaf}")
        if len(self.errors) > before:
            return None
        if "pairs" not in leaves or ("window" in leaves) == ("measure" in leaves):
            needed = "pairs, and either the window they fit in or what they measure"
            got = " and ".join(map(short_key, leaves)) if leaves else shown(tame(entry))
            self.errors.append(FieldError(key, needed, got, READING_EXAMPLE))
            return None
        over = self.got[f"{key}.window"] if "window" in leaves else self.got[f"{key}.measure"]
        return Reading(self.got[f"{key}.pairs"], over, "measure" in leaves)

    def _fill_in(self) -> None:
        for spec in self.inputs.inputs:
            if spec.key in self._met or spec.key.split(".")[0] in self._met or "[]" in spec.key:
                continue
            if spec.required:
                needed = f"to be given ({spec.help[0].lower()}{spec.help[1:].removesuffix('.')})"
                self.errors.append(FieldError(spec.key, needed, "nothing", example_of(spec)))
            elif isinstance(spec.default, str):
                self.got[spec.key] = read_field(spec, spec.default, spec.key, self.metrics)
            else:
                self.got[spec.key] = spec.default
