"""How long the lists of the slip are, and of what kind its frame is: what decides which lines it has."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import NamedTuple

from layout.kit.kinds.all_keys import END_KEYS
from templates_gen.desk.slip.fields import HOW, LISTS, SPECS, pattern_of

Typed = Mapping[str, str]
_ROW = re.compile(r"\[(\d{1,3})\]\.")
_LISTED = frozenset(LISTS)
MOST_ROWS = 50
"""No list of the core is longer (`layout.kit.walk`); a file with more keeps them, so that they are refused."""


class Shape(NamedTuple):
    """The kind of frame ends, how the near end holds the warp, and the row numbers in use of each list by its name."""

    kind: str
    hold: str
    rows: tuple[tuple[str, tuple[int, ...]], ...]


def shape_of(typed: Typed) -> Shape:
    """The shape of what is typed."""
    kind = _word(typed.get("frame.ends", ""))
    rows: dict[str, set[int]] = {}
    for name, text in typed.items():
        if "[" in name and text.strip() and pattern_of(name) != HOW:
            for place, number in entries_in(name):
                rows.setdefault(place, set()).add(number)
    kept = tuple(sorted((place, tuple(sorted(numbers))) for place, numbers in rows.items()))
    return Shape(kind if kind in END_KEYS else next(iter(END_KEYS)), _word(typed.get("weaving.near_hold", "")), kept)


def entries_in(name: str) -> list[tuple[str, int]]:
    """The lists that a field stands in, outermost first, each with the number of its row there."""
    found = []
    for match in _ROW.finditer(name):
        place, number = name[: match.start()], int(match[1])
        if pattern_of(place) in _LISTED and number:
            found.append((place, number))
    return found


def most_of(place: str) -> int:
    """How many rows the list at `place` may have."""
    return min(int(SPECS[pattern_of(place)].most), MOST_ROWS)


def _word(text: str) -> str:
    return " ".join(text.lower().split())
