"""Where everything stands in the text of a TOML document that is known to be right: headers, keys and values.

Only places are found here; what a document means is for tomllib to say.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from typing import Any, NamedTuple

Span = tuple[int, int]
"""From the first character to the one after the last."""

Keys = tuple[str, ...]
"""The keys that lead to a table or value, from the root."""

IDLE = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
SPACE = re.compile(r"[ \t]*")
STRING = re.compile(
    r'"""(?:\\[\s\S]|"{1,2}(?!")|[^"\\])*"{3,5}'
    r"|'''(?:'{1,2}(?!')|[^'])*'{3,5}"
    r'|"(?:\\.|[^"\\\n])*"'
    r"|'[^'\n]*'"
)
PLAIN = re.compile(r"[^,\]}#\r\n]+")
_PART = r"""(?:"(?:\\.|[^"\\\n])*"|'[^'\n]*'|[A-Za-z0-9_-]+)"""
KEY = re.compile(rf"(?:{_PART}[ \t]*\.[ \t]*)*({_PART})")


class Header(NamedTuple):
    """A line such as [cutting], from its bracket to the closing one."""

    keys: Keys
    span: Span


class Entry(NamedTuple):
    """A key and its value; `leaf` is the last part of the key as it is written, `inline` says that braces hold it."""

    keys: Keys
    key: Span
    leaf: Span
    value: Span
    inline: bool


def spans(text: str) -> Iterator[Header | Entry]:
    """Every header and entry, in the order of the text; those of an inline table before the entry that it is."""
    table: Keys = ()
    at = past_idle(text, 0)
    while at < len(text):
        if text[at] == "[":
            header = _header(text, at)
            table, at = header.keys, header.span[1]
            yield header
        else:
            *inner, entry = _entry(text, at, table, inline=False)
            yield from (*inner, entry)
            at = entry.value[1]
        at = past_idle(text, at)


def _header(text: str, at: int) -> Header:
    brackets = 2 if text.startswith("[[", at) else 1
    key = matched(KEY, text, past_space(text, at + brackets))
    return Header(keys_in(key[0]), (at, past_space(text, key.end()) + brackets))


def _entry(text: str, at: int, table: Keys, *, inline: bool) -> list[Entry]:
    """The entries inside the one that begins at `at`, and this one last."""
    key = matched(KEY, text, at)
    keys = table + keys_in(key[0])
    start = past_idle(text, past_space(text, key.end()) + 1)
    inner: list[Entry] = []
    end = _value(text, start, keys, inner)
    return [*inner, Entry(keys, key.span(), key.span(1), (start, end), inline)]


def _value(text: str, at: int, keys: Keys, inner: list[Entry]) -> int:
    """Where the value that begins at `at` ends; the entries of an inline table go to `inner`."""
    if text[at] == "{":
        return _braces(text, at, keys, inner)
    if text[at] == "[":
        return _brackets(text, at)
    if string := STRING.match(text, at):
        return string.end()
    return at + len(matched(PLAIN, text, at)[0].rstrip())


def _braces(text: str, at: int, keys: Keys, inner: list[Entry]) -> int:
    at = past_idle(text, at + 1)
    while text[at] != "}":
        found = _entry(text, at, keys, inline=True)
        inner += found
        at = past_comma(text, found[-1].value[1])
    return at + 1


def _brackets(text: str, at: int) -> int:
    """What lists hold has no place of its own here."""
    at = past_idle(text, at + 1)
    while text[at] != "]":
        at = past_comma(text, _value(text, at, (), []))
    return at + 1


def past_comma(text: str, at: int) -> int:
    """What follows the comma behind `at`, or the place where another sign stands."""
    at = past_idle(text, at)
    return past_idle(text, at + 1) if text[at] == "," else at


def keys_in(raw: str) -> Keys:
    """The parts of a key as it is written, dots and quotes read."""
    found: list[str] = []
    value: Any = tomllib.loads(f"{raw} = 0")
    while isinstance(value, dict):
        ((name, value),) = value.items()
        found.append(name)
    return tuple(found)


def past_space(text: str, at: int) -> int:
    """What follows spaces."""
    return matched(SPACE, text, at).end()


def past_idle(text: str, at: int) -> int:
    """What follows spaces, line ends and remarks."""
    return matched(IDLE, text, at).end()


def matched(pattern: re.Pattern[str], text: str, at: int) -> re.Match[str]:
    """What stands at `at`; ValueError where it is something else."""
    found = pattern.match(text, at)
    if found is None:
        raise ValueError(f"no TOML document at character {at}")
    return found
