"""A catalogue of messages: whole sentences and labels with named values, each under the role that it plays.

Code asks for a role and never looks at words; a catalogue of another language enters as a value, like font metrics.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
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


class Plural(NamedTuple):
    """Two forms of one message: `one` where the value `by` is 1, else `many`."""

    by: str
    one: str
    many: str


class Between(Role):
    """How whole messages stand alone, and how they follow each other."""

    LIST = "between.list"
    AND = "between.and"
    SENTENCE = "between.sentence"
    SENTENCES = "between.sentences"


@dataclass(frozen=True, slots=True)
class Catalogue:
    """Every message of one language by its role."""

    messages: Mapping[Role, str | Plural]

    def say(self, role: Role, **values: object) -> str:
        """The message of `role` with its values put in; CatalogueError where it is lacking, or its values differ."""
        message = self.messages.get(role)
        if message is None:
            raise CatalogueError(f"the catalogue has no message for {role}")
        if (wanted := fields_of(message)) != values.keys():
            named = (", ".join(sorted(names)) or "none" for names in (wanted, values))
            raise CatalogueError("the message {} has the values {}, not {}".format(role, *named))
        if isinstance(message, Plural):
            message = message.one if str(values[message.by]) == "1" else message.many
        return message.format(**{name: self._value(value) for name, value in values.items()})

    def words_of(self, message: Message) -> str:
        """The same for a message that was kept for later."""
        return self.say(message.role, **message.values)

    def _value(self, value: object) -> object:
        if isinstance(value, Role):
            return self.say(value)
        return self.words_of(value) if isinstance(value, Message) else value

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


@cache
def fields_of(message: str | Plural) -> frozenset[str]:
    """The names of the values of a message, those of both its forms."""
    forms = (message.one, message.many) if isinstance(message, Plural) else (message,)
    found = frozenset(name for form in forms for _, name, _, _ in Formatter().parse(form) if name)
    return found | {message.by} if isinstance(message, Plural) else found
