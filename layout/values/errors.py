"""What the project refuses, said in one sentence. Knows no file format and no screen."""

from __future__ import annotations

from collections.abc import Iterable

from layout.messages.catalogue import Catalogue, Message, Role, Said
from layout.messages.english import ENGLISH
from layout.messages.roles import Refusal, Unit
from layout.values.uses import Use, uses_of

_LONGEST_SHOWN = 60
_LONGEST_PATH = 240
_LONGEST_LINE = 1000  # a sentence that names every part of a kit is half of that
_MOST_LINES = 100


class LayoutError(ValueError):
    """Root of every refusal; its text is a sentence for the person at the bench.

    `message` is that sentence as a role and values, for a catalogue of any language; the text is English. A sentence
    that was said before is taken as it is.
    """

    def __init__(self, message: Message | Role | str, **values: object) -> None:
        if isinstance(message, str) and not isinstance(message, Role):
            message = Message(Refusal.SAID, {"sentence": message})
        self.message = Message(message, values) if isinstance(message, Role) else message
        super().__init__(self._text())

    def _text(self) -> str:
        return self.said(self._english())

    @staticmethod
    def _english() -> Catalogue:
        """The catalogue of the text; a package with messages of its own names its own."""
        return ENGLISH

    def said(self, catalogue: Catalogue) -> str:
        """The refusal in the language of `catalogue`."""
        return catalogue.words_of(self.message)


class FieldError(LayoutError):
    """One input that cannot be used.

    `field` is the dotted key (empty while only a bare value is being read), `got` what came (already fit to be shown),
    `suggestion` something that works; both may be messages. `needed` is the message of the refusal without these three:
    a role with its own `values`, whose words hold {got} and {example}.
    """

    def __init__(
        self, field: str, needed: Message | Role, got: Message | str, example: Message | str, **values: object
    ) -> None:
        self.field, self.got, self.suggestion = field, got, _typed(example)
        self._use: tuple[Use, ...] = ()
        self.needed = needed if isinstance(needed, Message) else Message(needed, values)
        sentence = Message(self.needed.role, {**self.needed.values, "got": got, "example": self.suggestion})
        super().__init__(Message(Refusal.AT, {"field": field, "sentence": sentence}) if field else sentence)

    @property
    def example(self) -> str:
        """The suggestion in English."""
        words = self.suggestion
        return self._english().words_of(words) if isinstance(words, Message) else words

    @property
    def use(self) -> tuple[Use, ...]:
        """The suggestion in plain values, each with its key; nothing where it is a sentence that has none."""
        return self._use or uses_of(self.field, self.suggestion)

    def at(self, field: str, example: Message | str | None = None) -> FieldError:
        """The same refusal with the key it belongs to, and with another example if one is given."""
        if example is None:
            return type(self)(field, self.needed, self.got, self.suggestion).offering(*self._use)
        return type(self)(field, self.needed, self.got, example)

    def offering(self, *use: Use) -> FieldError:
        """The same refusal, which offers these, where its suggestion is a sentence that has no values of its own."""
        self._use = use
        return self


def _typed(example: Message | str) -> Message | str:
    """An example; a length in it is typed into a file, and stays as it is in every language."""
    if isinstance(example, Said) and isinstance(example.role, Unit):
        return str(example)
    return example


class FieldErrors(LayoutError):  # noqa: N818 - it holds several
    """Every refusal found in one reading, in the order of the input."""

    def __init__(self, errors: Iterable[FieldError]) -> None:
        self.errors = tuple(errors)
        super().__init__(self._text())

    def _text(self) -> str:
        return "\n".join(map(str, self.errors))

    def said(self, catalogue: Catalogue) -> str:
        """Every refusal in the language of `catalogue`, one a line."""
        return "\n".join(error.said(catalogue) for error in self.errors)


def leave_out(key: str) -> Message:
    """The suggestion to leave out `key`."""
    return Message(Refusal.LEAVE_OUT, {"key": key})


def shown(value: object) -> str:
    """`value` as it may stand in a sentence: one line, quoted if text, cut short if long, "nothing" if empty."""
    if value is None or value == "":
        return ENGLISH.say(Refusal.NOTHING)
    text = ascii_safe(repr(value))
    return text if len(text) <= _LONGEST_SHOWN else text[: _LONGEST_SHOWN - 1] + "…"


def ascii_safe(text: str) -> str:
    """`text` without characters that a terminal would act on instead of show."""
    return "".join(letter if letter.isprintable() else _numbered(letter) for letter in text)


def _numbered(letter: str) -> str:
    code = ord(letter)
    return f"\\x{code:02x}" if code < 0x100 else f"\\u{code:04x}" if code < 0x10000 else f"\\U{code:08x}"


def shown_path(path: object) -> str:
    """A file or folder as it may stand in a sentence: visible, and cut in its middle if it is very long."""
    text = ascii_safe(str(path))
    half = _LONGEST_PATH // 2
    return text if len(text) <= _LONGEST_PATH else f"{text[:half]}…{text[-half:]}"


def shown_sentences(text: str) -> str:
    """Whole sentences as they may be shown: visible line by line, each cut off if it is endless, and so are they."""
    lines = [ascii_safe(line) for line in text.split("\n")]
    short = [line if len(line) <= _LONGEST_LINE else line[: _LONGEST_LINE - 1] + "…" for line in lines[:_MOST_LINES]]
    more = len(lines) - len(short)
    return "\n".join([*short, *([ENGLISH.say(Refusal.MORE_LINES, more=more)] if more else [])])
