"""The values of a PDF file (ISO 32000-1, 7.3): numbers, names, strings, lists, dictionaries, references. Strict.

What has two meanings is refused: a key given twice, a name with an escape, a string that is not
ended, deep nesting.
"""

from __future__ import annotations

import re
from typing import Any, NamedTuple

from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Read

_DEEPEST = 8  # ours nest to four
_LONGEST = 400_000  # bytes of one value; ours take ten thousand
_SPACE = rb"(?:[\t\n\f\r ]++|%[^\r\n]*+\n)*+"
"""White space (7.2.2) and comments; NUL is left out, since no file of ours holds it."""

SPACE = re.compile(_SPACE)

NAME = rb"[A-Za-z0-9+._-]{1,80}+"
"""A name without its slash, in characters that stand for themselves everywhere."""

_TOKEN = re.compile(
    _SPACE
    + rb"""(?:(?P<open><<|\[)|(?P<shut>>>|\])
    |/(?P<name>NAME)|\((?P<text>(?:[^()\\\r]|\\[^\r])*+)\)|<(?P<hex>(?:[0-9A-Fa-f]{2})*+)>
    |(?P<ref>[1-9][0-9]{0,6}+)[ ]0[ ]R(?![A-Za-z0-9])|(?P<number>[+-]?[0-9]{1,12}+(?:\.[0-9]{1,12}+)?+)
    |(?P<word>true|false|null))(?=[\t\n\f\r ()<>\[\]/%]|\Z)""".replace(b"NAME", NAME).replace(b"\n    ", b""),
)
_NUMBERS = re.compile(
    rb"(?:S*+[+-]?[0-9]{1,12}+(?:\.[0-9]{1,12}+)?+(?=S|\]))++S*+\](?=S|[()<>\[\]/%]|\Z)".replace(b"S", rb"[\t\n\f\r ]")
)
"""The rest of a list of numbers alone: the widths of a font, taken in one go to save time."""

_ESCAPE = re.compile(rb"\\(?:([0-7]{1,3})|(\n)|(.))", re.DOTALL)
_LETTERS = {b"n": b"\n", b"r": b"\r", b"t": b"\t", b"b": b"\b", b"f": b"\f"}
_WORDS = {b"true": True, b"false": False, b"null": None}


class Name(str):
    """A name, with its slash."""

    __slots__ = ()


class Reference(NamedTuple):
    """What stands in another object of the file, by its number."""

    number: int


_END_OF_LIST, _END_OF_DICTIONARY = object(), object()
_SHUT = {b"]": _END_OF_LIST, b">>": _END_OF_DICTIONARY}


def value_at(data: bytes, at: int) -> tuple[Any, int]:
    """The value that stands at `at` and where it ends; `ReadError` if none does, or an endless one."""
    value, end = _next(data, at, at + _LONGEST, 0)
    if value is _END_OF_LIST or value is _END_OF_DICTIONARY:
        raise ReadError(message(Read.UNBEGUN))
    return value, end


def _next(data: bytes, at: int, last: int, depth: int) -> tuple[Any, int]:
    """The next value, or the end of a list or a dictionary."""
    found = _TOKEN.match(data, at, last)
    if found is None:
        raise ReadError(message(Read.HOLDS, what=shown(data[at : at + 30].decode("latin-1"))))
    kind, said, end = found.lastgroup, found[found.lastgroup or 0], found.end()
    if kind == "open":
        if depth == _DEEPEST:
            raise ReadError(message(Read.NESTED))
        if said == b"[":
            if numbers := _NUMBERS.match(data, end, last):
                return list(map(_number, numbers[0][:-1].split())), numbers.end()
            return _items(data, end, last, _END_OF_LIST, depth)
        items, end = _items(data, end, last, _END_OF_DICTIONARY, depth)
        return _dictionary(items), end
    if kind == "shut":
        return _SHUT[said], end
    if kind == "name":
        return Name("/" + said.decode()), end
    if kind == "text":
        return _unescaped(said), end
    if kind == "hex":
        return bytes.fromhex(said.decode()), end
    if kind == "ref":
        return Reference(int(said)), end
    if kind == "number":
        return _number(said), end
    return _WORDS[said], end


def _number(said: bytes) -> float:
    return float(said) if b"." in said else int(said)


def _items(data: bytes, at: int, last: int, ending: object, depth: int) -> tuple[list[Any], int]:
    items: list[Any] = []
    while True:
        item, at = _next(data, at, last, depth + 1)
        if item is ending:
            return items, at
        if item is _END_OF_LIST or item is _END_OF_DICTIONARY:
            raise ReadError(message(Read.OTHER_END))
        items.append(item)


def _dictionary(items: list[Any]) -> dict[str, Any]:
    names, values = items[::2], items[1::2]
    if len(names) != len(values) or not all(isinstance(name, Name) for name in names):
        raise ReadError(message(Read.UNNAMED))
    if len(set(names)) != len(names):
        raise ReadError(message(Read.NAMED_TWICE))
    return dict(zip(names, values, strict=True))


def _unescaped(text: bytes) -> bytes:
    def meant(found: re.Match[bytes]) -> bytes:
        if found[1]:
            return bytes([int(found[1], 8) & 255])
        return b"" if found[2] else _LETTERS.get(found[3], found[3])

    return _ESCAPE.sub(meant, text)
