"""Plain values written as TOML: texts in quotes, tables in braces, lists in brackets."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping

_BARE = re.compile(r"[A-Za-z0-9_-]+")


def literal(value: object, like: str = "") -> str:
    """`value` on one line; a text in single quotes where the value that it replaces has them, and it can be.

    TypeError for what TOML has no value for.
    """
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return _quoted(value, single=like.startswith("'") and not like.startswith("'''"))
    if isinstance(value, int | float):
        return repr(value)
    if isinstance(value, Mapping):
        inside = ", ".join(f"{key_literal(key)} = {literal(each)}" for key, each in value.items())
        return f"{{{inside}}}"
    if isinstance(value, list | tuple):
        return f"[{', '.join(map(literal, value))}]"
    raise TypeError(repr(value))


def key_literal(key: str) -> str:
    """A key as it may stand before the equals sign."""
    return key if _BARE.fullmatch(key) else _quoted(key, single=False)


def _quoted(text: str, *, single: bool) -> str:
    if single and text.isprintable() and "'" not in text:
        return f"'{text}'"
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")
