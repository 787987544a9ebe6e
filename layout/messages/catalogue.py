"""A catalogue of messages: whole sentences and labels with named values, each under the role that it plays.

Code asks for a role and never looks at words; a catalogue of another language enters as a value, like font metrics.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from functools import cache
from string import Formatter
from types import MappingProxyType
from typing import NamedTuple


class CatalogueError(LookupError):
    """A message that is asked for and cannot be said: a fault of the code, not of a kit."""


class Role(StrEnum):
    """What a message is for; the roles themselves stand in `roles`."""


class Message(NamedTuple):
    """What is to be said, in whatever language: a role and its values. A value may be a message or a role itself."""

    role: Role
    values: Mapping[str, object] = MappingProxyType({})


class Said(str):
    """What a catalogue said: a text like any other, with the role, the values and the language that it was made of.

    Catalogues alone make them, and set these three.
    """

    __slots__ = ("language", "role", "values")

    role: Role
    values: Mapping[str, object]
    language: str


class Figure(str):
    """A number in figures, with "." for decimals; a catalogue puts the signs of its language into it."""

    __slots__ = ()


class _Forms(NamedTuple):
    by: str
    forms: tuple[str, ...]


class Plural(_Forms):
    """The forms of one message; the rule of its language takes one of them by the number that the value `by` is."""

    __slots__ = ()

    def __new__(cls, by: str, *forms: str) -> Plural:
        """In the order in which the rule counts them: in English for one, and for more."""
        return super().__new__(cls, by, forms)

    def __getnewargs__(self) -> tuple[str, ...]:
        """What makes it again, in another process too."""
        return self.by, *self.forms


class Between(Role):
    """How whole messages stand alone, and how they follow each other; the signs within figures."""

    LIST = "between.list"
    AND = "between.and"
    SENTENCE = "between.sentence"
    SENTENCES = "between.sentences"
    DECIMAL = "between.decimal"
    THOUSANDS = "between.thousands"


_FOUR = re.compile(r"(?<![\d,])(\d),(\d{3})(?![\d,])")
"""A number of four figures: where thousands stand apart by a space, it has none (Ortografía 2010 for Spanish)."""

_TEXT, _PLAIN = frozenset((str,)), frozenset((int, str))
"""What goes into a message as it is: in any language, and in one that writes figures as the code does."""


class _Number:
    """A number with the signs of a language, however a message formats it."""

    __slots__ = ("figure", "value")

    def __init__(self, value: object, figure: Callable[[str], str]) -> None:
        self.value, self.figure = value, figure

    def __format__(self, spec: str) -> str:
        return self.figure(format(self.value, spec))


def one_or_many(number: Fraction | int) -> int:
    """The rule of English and of many others: the first form for 1 alone, the second for all else, 1.5 too."""
    return int(number != 1)


@dataclass(frozen=True, slots=True)
class Catalogue:
    """Every message of one language by its role.

    `language` is its code (ISO 639-1), `rule` takes the form of a message for a number, and `decimal` and `thousands`
    are the signs within figures.
    """

    messages: Mapping[Role, str | Plural]
    language: str = "en"
    rule: Callable[[Fraction | int], int] = one_or_many
    decimal: str = "."
    thousands: str = ","

    def say(self, role: Role, **values: object) -> str:
        """The message of `role` with its values put in; CatalogueError where it is lacking, or its values differ."""
        message = self.messages.get(role)
        if message is None:
            raise CatalogueError(f"the catalogue has no message for {role}")
        if (wanted := fields_of(message)) != values.keys():
            named = (", ".join(sorted(names)) or "none" for names in (wanted, values))
            raise CatalogueError("the message {} has the values {}, not {}".format(role, *named))
        if isinstance(message, Plural):
            number = values[message.by]
            message = message.forms[self.rule(number if type(number) is int else _number(role, number))]
        if values:
            value_of, kept = self._value, _PLAIN if self.decimal == "." else _TEXT
            words = {name: value if type(value) in kept else value_of(value) for name, value in values.items()}
            said = Said(message.format(**words))
        else:
            said = Said(message.format())
        said.role, said.values, said.language = role, values, self.language
        return said

    def words_of(self, message: Message) -> str:
        """The same for a message that was kept for later."""
        return self.say(message.role, **message.values)

    def again(self, text: str) -> str:
        """What another catalogue said, in this language, its values too; any other text as it is."""
        if isinstance(text, Said) and text.language != self.language:
            return self.say(text.role, **text.values)
        return text

    def figure(self, text: str) -> str:
        """Figures that were written with "." and "," as this language writes them."""
        if self.decimal == "." and self.thousands == ",":
            return text
        text = _FOUR.sub(r"\1\2", text)
        return "".join(self.decimal if sign == "." else self.thousands if sign == "," else sign for sign in text)

    def _value(self, value: object) -> object:
        if isinstance(value, str):
            if isinstance(value, Role):
                return self.say(value)
            if isinstance(value, Said):
                return self.again(value)
            return self.figure(value) if isinstance(value, Figure) else value
        if isinstance(value, Message):
            return self.words_of(value)
        return _Number(value, self.figure) if self.decimal != "." and isinstance(value, int | float) else value

    def listed(self, messages: Sequence[str]) -> str:
        """Whole messages in one row; empty where there are none."""
        return self._joined(Between.LIST, messages)

    def all_of(self, messages: Sequence[str]) -> str:
        """Whole messages in one row, "and" before the last; empty where there are none."""
        *before, last = messages or ("",)
        return self.say(Between.AND, before=self.listed(before), after=last) if before else last

    def sentence(self, phrase: Message) -> str:
        """A whole sentence of a phrase that stands in longer ones too."""
        return self.say(Between.SENTENCE, phrase=phrase)

    def paragraph(self, sentences: Sequence[str]) -> str:
        """Whole sentences, one after the other; empty where there are none."""
        return self._joined(Between.SENTENCES, sentences)

    def _joined(self, between: Between, messages: Sequence[str]) -> str:
        said, *others = messages or ("",)
        for other in others:
            said = self.say(between, before=said, after=other)
        return said


def _number(role: Role, value: object) -> Fraction:
    try:
        return Fraction(str(value).replace(",", ""))
    except ValueError as error:
        raise CatalogueError(f"the message {role} counts by {value!r}, which is no number") from error


@cache
def fields_of(message: str | Plural) -> frozenset[str]:
    """The names of the values of a message, those of all its forms."""
    forms = message.forms if isinstance(message, Plural) else (message,)
    found = frozenset(name for form in forms for _, name, _, _ in Formatter().parse(form) if name)
    return found | {message.by} if isinstance(message, Plural) else found
