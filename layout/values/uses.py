"""What a refusal offers as plain values: which key could have which value instead, or be left out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from layout.messages.catalogue import Message, Role
from layout.messages.roles import Refusal, WarpNeed

_LEFT_OUT = (Refusal.LEAVE_OUT, Refusal.LEAVE_OUT_OR, Refusal.LEAVE_OUT_OR_OR)

_LINES: Mapping[Role, tuple[str, str]] = {
    WarpNeed.SETT_LINE: ("sett.given", "sett"),
    WarpNeed.WIDTH_LINE: ("frame.outer_width", "width"),
}
"""By the message of a line of another table: its key, and which of its values stands there."""


class Use(NamedTuple):
    """Something that can be written instead: the plain `value` of a dotted `key`; None where it is left out."""

    key: str
    value: object


def uses_of(field: str, suggestion: Message | str) -> tuple[Use, ...]:
    """What the suggestion of a refusal at `field` says in values: a line of the file, a bare value, keys to leave out.

    Nothing where it is a sentence.
    """
    if isinstance(suggestion, Message):
        if line := _LINES.get(suggestion.role):
            return (Use(line[0], str(suggestion.values[line[1]])),)
        if suggestion.role not in _LEFT_OUT:
            return ()
        return tuple(Use(_beside(field, str(key)), None) for key in suggestion.values.values())
    return tuple(_written(field, suggestion))


def _written(field: str, line: str) -> Iterator[Use]:
    import tomllib  # not needed where nothing is refused

    for text, named in ((line, True), (f"value = {line}", False)):
        try:
            found = tomllib.loads(text)
        except tomllib.TOMLDecodeError:
            continue
        for leaf, value in found.items():
            yield Use(_beside(field, leaf) if named else field, value)
        return


def _beside(field: str, leaf: str) -> str:
    """The key of that leaf in the table of `field`."""
    table = field.rpartition(".")[0]
    return f"{table}.{leaf}" if table else leaf
