"""What a run says to the desk: how far it is, what it proved, or why it made nothing. Carried between two processes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple

from layout.messages.catalogue import Catalogue, Message
from layout.values.errors import FieldErrors, LayoutError
from templates_gen.messages.roles.desk_kits import DeskMaking


class Step(NamedTuple):
    """So many files of all are made and proven, and this one is next."""

    done: int
    total: int
    file: str


@dataclass(frozen=True, slots=True)
class Proof:
    """How much was read back and proven, the largest deviation in mm, and what to mind."""

    files: int
    marks: int
    cuts: int
    deviation: float
    notes: tuple[str, ...] = ()

    def said(self, words: Catalogue) -> str:
        """The line of proof: in English word for word what the command line says."""
        counts: Message | None
        if self.marks and self.cuts:
            counts = Message(DeskMaking.MARKS_AND_CUTS, {"marks": self.marks, "cuts": self.cuts})
        elif self.cuts:
            counts = Message(DeskMaking.CUTS, {"cuts": self.cuts})
        else:
            counts = Message(DeskMaking.MARKS, {"marks": self.marks})
        deviation = Message(DeskMaking.MICROMETRES, {"number": self.deviation * 1000})
        return words.say(DeskMaking.PROVEN, files=self.files, counts=counts, deviation=deviation)


class Refusal(NamedTuple):
    """Why nothing was made, each sentence as a message that another process can read."""

    messages: tuple[Message, ...]

    def said(self, words: Catalogue) -> str:
        """The sentences, one a line."""
        return "\n".join(words.words_of(each) for each in self.messages)


def refusal(error: LayoutError) -> Refusal:
    """What an error says."""
    errors = error.errors if isinstance(error, FieldErrors) else (error,)
    return Refusal(tuple(_plain(each.message) for each in errors))


def _plain(message: Message) -> Message:
    return Message(message.role, {name: _plain_value(value) for name, value in message.values.items()})


def _plain_value(value: Any) -> Any:
    if isinstance(value, Message):
        return _plain(value)
    return dict(value) if isinstance(value, Mapping) else value
