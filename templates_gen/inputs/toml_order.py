"""In which order keys stand in a file, as its starter has them, those too that only a remark shows."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from templates_gen.inputs.toml_tree import Path

_HEADER = re.compile(r"\s*(?:#\s*)?\[{1,2}([A-Za-z0-9_.]+)\]{1,2}\s*(?:#.*)?")
_KEY = re.compile(r"\s*(?:#\s*)?([A-Za-z0-9_]+)\s*=")
_LAST = 1_000_000


class Order:
    """The ranks of the keys of a starter; rows of the list `each` have the keys of the whole file, and stand last."""

    def __init__(self, starter: str, each: str = "") -> None:
        self._each = each
        self._ranks: dict[tuple[str, ...], int] = {}
        table: tuple[str, ...] = ()
        for number, line in enumerate(starter.split("\n")):
            if header := _HEADER.fullmatch(line):
                table = tuple(header[1].split("."))
                self._ranks.setdefault(table, number)
            elif key := _KEY.match(line):
                self._ranks.setdefault((*table, key[1]), number)

    def sorted(self, path: Path, keys: Mapping[str, object]) -> list[str]:
        """The keys of the table at `path` in their order; those that the starter lacks behind the one before them."""
        ranks: dict[str, float] = {}
        rank = -1.0
        for key in keys:
            rank = self._ranks.get((*self._plain(path), key), rank + 1e-6)
            ranks[key] = rank
        return sorted(keys, key=lambda key: ranks[key])

    def before(self, path: Path, keys: Mapping[str, object], key: str) -> Sequence[str]:
        """The keys that stand before `key`, the nearest first."""
        ordered = self.sorted(path, keys)
        return ordered[: ordered.index(key)][::-1]

    def later(self, path: Path, name: str) -> bool:
        """Whether the header of that path stands behind the table `name`."""
        first = str(path[0])
        rank = _LAST if first == self._each else self._ranks.get((first,), -1)
        return rank > self._ranks.get((name,), _LAST - 1)

    def _plain(self, path: Path) -> tuple[str, ...]:
        keys = tuple(key for key in path if isinstance(key, str))
        return keys[1:] if self._each and keys[:1] == (self._each,) else keys
