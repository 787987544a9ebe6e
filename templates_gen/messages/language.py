"""The language that the program speaks: the one way from a role to a sentence."""

from __future__ import annotations

from collections.abc import Sequence

from layout.messages.catalogue import Role


def message(role: Role, **values: object) -> str:
    """The whole message of `role` with its values; CatalogueError where it is missing or its values differ."""
    from templates_gen.messages.english import ENGLISH  # not needed before something is said

    return ENGLISH.say(role, **values)


def listed(messages: Sequence[str]) -> str:
    """Messages in one row, with commas between them in English."""
    from templates_gen.messages.english import ENGLISH

    return ENGLISH.listed(messages)
