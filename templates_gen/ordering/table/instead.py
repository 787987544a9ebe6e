"""Ways of saying one thing that a kit may not say together: what a row says stands instead of what its range says."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache

_COUNTED = ("warp.count", "warp.system", "warp.plies", "warp.order")
_SOLD = ("warp.grams", "warp.length", "warp.weighed")

_INSTEAD: Mapping[str, tuple[str, ...]] = {
    "sett.given": ("sett.readings", "sett.loosest", "sett.as_measured"),
    "sett.readings": ("sett.given",),
    "warp.count": (*_SOLD, "warp.threads"),
    "warp.grams": (*_COUNTED, "warp.threads"),
    "warp.threads": (*_COUNTED, *_SOLD),
    "weft.beads": ("weft.picks",),
    "weft.picks": ("weft.beads",),
    "weaving.shrinkage": ("weaving.washed",),
    "weaving.washed": ("weaving.shrinkage",),
}
"""By the key, or table, that a row says: what it then does not take from its range. The kit itself refuses both."""


@lru_cache(64)
def not_taken(keys: tuple[str, ...]) -> tuple[str, ...]:
    """The keys that a row which says `keys` does not take from its range; what it says itself is not among them."""
    out = [each for said, others in _INSTEAD.items() if _has(keys, said) for each in others]
    return tuple(each for each in dict.fromkeys(out) if not _has(keys, each))


def _has(keys: tuple[str, ...], key: str) -> bool:
    return key in keys or any(each.startswith(f"{key}.") for each in keys)
