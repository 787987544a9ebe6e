"""What an overview must say of the plain values of a range: which of them differ, and where each comes from."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from layout.messages.catalogue import Catalogue
from layout.messages.roles.ranges import OverviewSheet
from templates_gen.lettering.fonts import metrics

Said = tuple[Mapping[str, Any], Sequence[str]]
"""The plain values of a kit, and the dotted keys of those that are its own."""

_LONGEST = 60


def differing(shared: Mapping[str, Any], kits: Sequence[Said], words: Catalogue) -> list[tuple[str, ...]]:
    """A row for each key in which two kits differ: the key, and what stands there in each kit."""
    rows = []
    for key in _keys(shared, kits):
        each = [json.dumps(_at(values, key), sort_keys=True) for values, _ in kits]
        if len(set(each)) > 1:
            rows.append((key, *(_said(_at(values, key), words) for values, _ in kits)))
    return rows


def origins(
    shared: Mapping[str, Any], kits: Sequence[Said], names: Sequence[str], words: Catalogue
) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """The titles, and a row for each key: what the range says, who has a value of their own, who leaves it out."""
    every = words.say(OverviewSheet.EVERY)

    def listed(which: Sequence[str]) -> str:
        return every if len(which) == len(names) else words.listed(which) if which else ""

    rows = []
    for key in _keys(shared, kits):
        said = _at(shared, key)
        own = [name for name, (_, keys) in zip(names, kits, strict=True) if key in keys]
        without = [name for name, (values, _) in zip(names, kits, strict=True) if _at(values, key) is None]
        range_says = "" if said is None else _said(said, words)
        rows.append((key, range_says, listed(own), "" if said is None else listed(without)))
    roles = (OverviewSheet.KEY, OverviewSheet.RANGE, OverviewSheet.OWN, OverviewSheet.WITHOUT)
    filled = [k for k in range(4) if k == 0 or any(row[k] for row in rows)]
    return tuple(words.say(roles[k]) for k in filled), tuple(tuple(row[k] for k in filled) for row in rows)


def _keys(shared: Mapping[str, Any], kits: Sequence[Said]) -> list[str]:
    """Every dotted key of a value that is no table, but for the names and the version of the format."""
    found = {key for values in (shared, *(values for values, _ in kits)) for key in _leaves(values)}
    return sorted(found - {"name", "version"})


def _leaves(values: Mapping[str, Any]) -> Iterator[str]:
    for key, value in values.items():
        if isinstance(value, Mapping):
            yield from (f"{key}.{inner}" for inner in _leaves(value))
        else:
            yield key


def _at(values: Mapping[str, Any], dotted: str) -> Any:
    key, _, rest = dotted.partition(".")
    found = values.get(key)
    if not rest:
        return found
    return _at(found, rest) if isinstance(found, Mapping) else None


def _said(value: Any, words: Catalogue) -> str:
    """As it stands in a file, at most so long, with a mark for each letter that the print font lacks."""
    if value is None:
        return words.say(OverviewSheet.LEFT_OUT)
    text = value if isinstance(value, str) else _toml(value)
    if len(text) > _LONGEST:
        text = text[: _LONGEST - 1] + "…"
    return "".join("?" if metrics().missing(letter) else letter for letter in text)


def _toml(value: Any) -> str:
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{key} = {_toml(inner)}" for key, inner in value.items()) + "}"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(map(_toml, value)) + "]"
    if isinstance(value, bool):
        return "true" if value else "false"
    return f'"{value}"' if isinstance(value, str) else repr(value)
