"""Plain nested values, some of them over others, key by key."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

Values = Mapping[str, object]


def merged(shared: Values, own: Values) -> dict[str, object]:
    """`own` over `shared`, key by key, tables within tables; all else is replaced whole."""
    found: dict[str, object] = dict(shared)
    for key, value in own.items():
        before = found.get(key)
        both = isinstance(before, Mapping) and isinstance(value, Mapping)
        found[key] = merged(before, value) if both else value  # type: ignore[arg-type]
    return found


def without(values: Values, taken_out: tuple[str, ...], table: str = "") -> dict[str, object]:
    """`values` without what stands at these dotted keys."""
    kept: dict[str, object] = {}
    for key, value in values.items():
        dotted = f"{table}{key}"
        if dotted not in taken_out:
            kept[key] = without(value, taken_out, f"{dotted}.") if isinstance(value, Mapping) else value
    return kept


def walked(values: Values, table: str = "") -> Iterator[tuple[str, Any]]:
    """Every key of tables within tables, dotted, with what stands there."""
    for key, value in values.items():
        yield f"{table}{key}", value
        if isinstance(value, Mapping):
            yield from walked(value, f"{table}{key}.")


def keys_of(values: Values) -> tuple[str, ...]:
    """Every dotted key, those of tables too."""
    return tuple(key for key, _ in walked(values))


def leaves_of(values: Values) -> tuple[str, ...]:
    """Every dotted key but those of tables."""
    return tuple(key for key, value in walked(values) if not isinstance(value, Mapping))
