"""In which line of a kit file each key stands: those shared by all kits, and those of each kit of its list."""

from __future__ import annotations

from bisect import bisect
from collections.abc import Mapping
from dataclasses import dataclass, field

from templates_gen.inputs.toml_spans import Header, spans

KITS = "kits"


@dataclass(frozen=True, slots=True)
class Lines:
    """Line numbers by dotted key, from 1: of what is shared, and of each kit in the order of the file."""

    shared: Mapping[str, int] = field(default_factory=dict)
    kits: tuple[Mapping[str, int], ...] = ()

    def of_shared(self, key: str) -> int | None:
        """The line of a shared key, or of the table or list that holds it."""
        return _nearest(self.shared, key)

    def of_kit(self, number: int, key: str) -> int | None:
        """The line of a key of the kit of that number; of the list of kits where that has no lines of its own."""
        own = self.kits[number - 1] if number <= len(self.kits) else {}
        return _nearest(own, key) or self.shared.get(KITS)


def lines_of(text: str) -> Lines:
    """Where the keys of `text` stand, a TOML document that is known to be right."""
    shared: dict[str, int] = {}
    kits: list[dict[str, int]] = []
    ends = [at for at, sign in enumerate(text) if sign == "\n"]
    for each in spans(text):
        here, keys = bisect(ends, each.span[0] if isinstance(each, Header) else each.key[0]) + 1, each.keys
        if isinstance(each, Header):
            kits += [{}] if keys == (KITS,) else []
        elif keys[0] == KITS and kits:
            kits[-1][".".join(keys[1:])] = here
        else:
            shared[".".join(keys)] = here
    return Lines(shared, tuple(kits))


def _nearest(lines: Mapping[str, int], key: str) -> int | None:
    while key not in lines and "." in key:
        key = key.rpartition(".")[0]
    return lines.get(key)
