"""Texts as they are typed into a line, and the plain values that they are in a file."""

from __future__ import annotations

import re

from layout.kit.input import Input

NONE = "none"
"""Typed where a list is empty and not left out."""
YES, NO = "yes", "no"

_WHOLE = re.compile(r"[-+]?[0-9]{1,40}")
_DECIMAL = re.compile(r"[-+]?(?:[0-9]{1,40}[.,]?[0-9]{0,40}|[.,][0-9]{1,40})(?:[eE][-+]?[0-9]{1,3})?")
_THOUSANDS = re.compile(r"[-+]?0*[1-9][0-9]*,[0-9]{3}")
_NUMBERS = ("version", "whole", "number", "amount", "share", "count", "mass")
_LISTS = ("names", "lines")


def text_of(spec: Input, value: object) -> str:
    """How a plain value of a file is typed; a list stands one entry a line."""
    if isinstance(value, bool):
        return YES if value else NO
    if isinstance(value, list | tuple):
        return "\n".join(str(each) for each in value) if value else NONE if spec.kind in (*_LISTS, "tables") else ""
    if isinstance(value, str):
        return value
    try:
        return repr(value)
    except (ValueError, RecursionError):
        return "…"


def value_of(spec: Input, text: str) -> object:
    """The plain value of a text that is typed for `spec`; what cannot be one stays a text, to be refused as such."""
    if spec.kind in _LISTS:
        entries = [line.strip() for line in text.splitlines() if line.strip()]
        return [] if [each.lower() for each in entries] == [NONE] else entries
    if spec.kind == "flag":
        word = text.strip().lower()
        return word == YES if word in (YES, NO) else text
    return plain_number(text) if spec.kind in _NUMBERS else text


def plain_number(text: str) -> object:
    """A number as TOML has it, also with a decimal comma; a text that is none, or may be two, as it is."""
    trimmed = text.strip()
    if _WHOLE.fullmatch(trimmed):
        return int(trimmed)
    if _DECIMAL.fullmatch(trimmed) and not _THOUSANDS.fullmatch(trimmed):
        return float(trimmed.replace(",", "."))
    return text
