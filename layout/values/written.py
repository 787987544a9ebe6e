"""Plain values as a kit file has them, on one line."""

from __future__ import annotations

from collections.abc import Mapping

from layout.values.errors import ascii_safe

_LONGEST = 60


def shown_value(value: object) -> str:
    """A value as a kit file has it, at most 60 characters; a text without its quotes."""
    safe = ascii_safe(value if isinstance(value, str) else _toml(value))
    return safe if len(safe) <= _LONGEST else safe[: _LONGEST - 1] + "…"


def _toml(value: object) -> str:
    if isinstance(value, str):
        return f'"{value}"'
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{key} = {_toml(inner)}" for key, inner in value.items()) + "}"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(map(_toml, value)) + "]"
    return str(value)
