"""A made-up language: every sentence of the English catalogue half as long again, single words four times as long.

It shows what has lost its role on the way to a sheet or a screen: its words have "é" for every vowel and "Ä" for every
capital one, so that a plain vowel is left where something was said in English alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from layout.messages.catalogue import Catalogue, Message, Plural, Role, Said, fields_of

_PLACE = re.compile(r"(\{[^{}]*\})")
_WORD = re.compile(r"[A-Za-zÀ-ſ]{3,}")
_VOWELS = str.maketrans("aeiouAEIOU", "éééééÄÄÄÄÄ")


def made_up(english: Catalogue) -> Catalogue:
    """That language, with the words of `english`; it has decimal commas and three forms of a plural."""
    messages = {role: _of(message) for role, message in english.messages.items()}
    return Catalogue(messages, "de", _none_one_many, ",", " ")


def _none_one_many(number: Fraction | int) -> int:
    return 0 if number < 1 else 1 if number == 1 else 2


def _of(message: str | Plural) -> str | Plural:
    if isinstance(message, str):
        return stretched(message)
    one, many = (stretched(form) for form in message.forms)
    return Plural(message.by, many, one, many)


def stretched(text: str) -> str:
    """`text` made longer, with what stands in braces as it is."""
    pieces = _PLACE.split(text)
    count = sum(len(_WORD.findall(piece)) for piece in pieces[::2])
    longest = max((len(word) for piece in pieces[::2] for word in _WORD.findall(piece)), default=0)
    seen = 0

    def longer(found: re.Match[str]) -> str:
        nonlocal seen, longest
        word, seen = found[0], seen + 1
        if count > 3:
            return f"{word} {word}" if seen % 2 else word
        if len(word) < longest:
            return word
        longest = len(text)  # the first of the longest alone
        return word * 4

    return "".join(
        piece if place % 2 else _WORD.sub(longer, piece).translate(_VOWELS) for place, piece in enumerate(pieces)
    )


def leaves(value: object) -> Iterator[str]:
    """The plain texts within what was said: what stays as it is in every language."""
    if isinstance(value, Said | Message):
        for each in value.values.values():
            yield from leaves(each)
    elif isinstance(value, str) and not isinstance(value, Role):
        yield value


def longer_by(english: Catalogue, other: Catalogue) -> float:
    """How much longer all sentences of more than three words are, as a ratio."""
    lengths = [(len(text), len(str(other.messages[role]))) for role, text in english.messages.items() if _long(text)]
    return sum(new for _, new in lengths) / sum(old for old, _ in lengths)


def _long(text: str | Plural) -> bool:
    return isinstance(text, str) and not fields_of(text) and len(_WORD.findall(text)) > 3


__all__ = ["leaves", "longer_by", "made_up", "stretched"]
