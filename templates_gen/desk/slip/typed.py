"""Between the plain values of a file and what stands in the lines of the slip, there and back."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from typing import Any

from layout.kit.merging import merged
from templates_gen.desk.slip.fields import (
    HOW,
    LISTS,
    NOT_TYPED,
    OF_A_RUN,
    OVER,
    READINGS,
    RUN_PREFIX,
    SPECS,
    STOCK_PREFIX,
    WAYS,
    belongs,
    pattern_of,
)
from templates_gen.desk.slip.shape import Typed, shape_of
from templates_gen.desk.slip.texts import NONE, text_of, value_of
from templates_gen.inputs.kit_file import FILES
from templates_gen.inputs.stock_file import built_in_values

_NAME = re.compile(r"[A-Za-z0-9_-]{1,40}")
_KITS = "kits"
_DEEPEST = 4  # the deepest key of a file has so many dots before its last
_VERSION = 1
_KEY = re.compile(r"([A-Za-z0-9_-]{1,40})(?:\[(\d{1,3})\])?")
_FIELD = re.compile(rf"{_KEY.pattern}(?:\.{_KEY.pattern}){{0,5}}")
_ENTRY_OF_NOTHING = {"weft.strands[]": ("number", "1")}
"""What is typed for an entry of a list that says nothing and is one all the same."""


def typed_of(values: Mapping[str, object], prefix: str = "") -> dict[str, str]:
    """What is typed where a TOML file holds these plain nested values, by the names of fields.

    With the prefix "" they are those of a kit file, what it says of a run among them ("run/..."); with "stock/" those
    of a stock file. Its list of several kits is left aside. A key that no file has keeps its place, so that it is
    refused where it is read.
    """
    found: dict[str, str] = {}
    for key, value in values.items():
        run = not prefix and key in OF_A_RUN
        if key != _KITS or prefix:
            found.update(_typed(f"{RUN_PREFIX if run else prefix}{_safe(key)}", value))
    return {name: text for name, text in found.items() if text != "" or name in SPECS}


def _typed(name: str, value: object) -> Iterator[tuple[str, str]]:
    pattern = pattern_of(name)
    if name.count(".") > _DEEPEST:
        yield name, "…"
    elif isinstance(value, Mapping):
        yield from _of_table(name, value)
    elif isinstance(value, list | tuple) and pattern in LISTS and all(isinstance(each, Mapping) for each in value):
        for number, entry in enumerate(value, 1):
            yield from _of_entry(f"{name}[{number}]", entry)
        if not value:
            yield name, NONE
    else:
        spec = SPECS.get(pattern)
        yield name, text_of(spec or SPECS["name"], value)


def _of_table(name: str, table: Mapping[str, object]) -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        yield from _typed(f"{name}.{_safe(key)}", value)


def _of_entry(name: str, entry: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    if not entry and (usual := _ENTRY_OF_NOTHING.get(pattern_of(name))):
        yield f"{name}.{usual[0]}", usual[1]
    for key, value in entry.items():
        if pattern_of(name) == f"{READINGS}[]" and key in WAYS and not set(WAYS) <= set(entry):
            yield f"{name}.how", key
            yield f"{name}.over", text_of(SPECS[OVER], value)
        else:
            yield from _typed(f"{name}.{_safe(key)}", value)


def _safe(key: str) -> str:
    return key if _NAME.fullmatch(key) else "".join(_NAME.findall(key))[:40] or "key"


def values_of(typed: Typed, prefix: str = "") -> dict[str, object]:
    """The plain nested values that are written into a file: the other way of `typed_of`.

    Keys of other kinds of frame ends are left out, and so are empty lines and empty rows of lists. A stock without a
    name of its own is the built-in one with what is typed changed in it.
    """
    return Written(typed, prefix).values


class Written:
    """What is typed as plain `values`; `rows` says by the name of each list which row of the slip each entry is of."""

    def __init__(self, typed: Typed, prefix: str = "") -> None:
        shape = shape_of(typed)
        self.typed, self._prefix, self.rows = typed, prefix, dict(shape.rows)
        self.values: dict[str, object] = {}
        own = {name: text for name, text in typed.items() if text.strip() and _is_of(name, prefix)}
        if own and prefix != RUN_PREFIX:
            self.values["version"] = _VERSION
        for name in sorted(own, key=_order):
            if belongs(name, shape.kind, shape.hold):
                self._put(name, own[name])
        if prefix == STOCK_PREFIX and own and f"{STOCK_PREFIX}name" not in own:
            self.values = _on_the_built_in(self.values)

    def _put(self, name: str, text: str) -> None:
        pattern = pattern_of(name)
        spec = SPECS.get(pattern)
        if pattern == HOW:
            return
        if pattern == OVER:
            row = name.removesuffix("over")
            how = " ".join(self.typed.get(f"{row}how", "").lower().split())
            self._at(f"{row}{how if how in WAYS else WAYS[0]}", text)
        elif spec is None or spec.kind != "tables":
            self._at(name, value_of(spec, text) if spec else text)
        elif name not in self.rows:
            self._at(name, [] if text.strip().lower() == NONE else text)

    def _at(self, name: str, value: object) -> None:
        """Put a value where the name leads; a name that leads nowhere is passed over."""
        place: Any = self.values
        *outer, (leaf, number) = _path(name.removeprefix(self._prefix).removeprefix(RUN_PREFIX)) or [("", None)]
        at = name[: len(name) - len(name.removeprefix(self._prefix).removeprefix(RUN_PREFIX))]
        for key, row in outer:
            at += key
            place = _inside(place, key, {} if row is None else [])
            if row is not None:
                numbers = self.rows.get(at, ())
                if row not in numbers:
                    return
                place.extend({} for _ in range(len(numbers) - len(place)))
                place = place[numbers.index(row)]
                at += f"[{row}]"
            at += "."
        if leaf and number is None and not isinstance(place.get(leaf), dict | list):
            place[leaf] = value


def _on_the_built_in(values: Mapping[str, object]) -> dict[str, object]:
    """The built-in stock with these values over it; its one kerf stands aside where one is given for a direction."""
    usual = built_in_values()
    cutting, said = usual["cutting"], values.get("cutting")
    if isinstance(cutting, dict) and isinstance(said, dict) and {"kerf_x", "kerf_y"} & set(said):
        cutting.pop("kerf", None)
    return merged(usual, values)


def _inside(place: dict[str, Any], key: str, empty: Any) -> Any:
    """The table or list at a key, made where there is none."""
    if not isinstance(place.get(key), type(empty)):
        place[key] = empty
    return place[key]


def _path(name: str) -> list[tuple[str, int | None]]:
    """The keys that lead to a field, each with the number of its row if it is a list; nothing for no name of one."""
    if not _FIELD.fullmatch(name):
        return []
    return [(match[1], int(match[2]) if match[2] else None) for match in _KEY.finditer(name)]


def _order(name: str) -> tuple[int, str]:
    return _PLACES.get(pattern_of(name), len(_PLACES)), name


_PLACES = {name: at for at, name in enumerate(SPECS)}


def _is_of(name: str, prefix: str) -> bool:
    return name.startswith(prefix) if prefix else not name.startswith(STOCK_PREFIX)


def example() -> dict[str, str]:
    """What is typed on the slip of the kit to start from."""
    return typed_of(tomllib.loads(FILES.starter_text()))


__all__ = ["NOT_TYPED", "Typed", "Written", "example", "typed_of", "values_of"]
