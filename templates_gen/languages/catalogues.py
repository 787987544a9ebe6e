"""From a language to its catalogue, and from a kit to the words of its sheets."""

from __future__ import annotations

from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue


def catalogue_of(language: str) -> Catalogue:
    """The catalogue of a language by its code (ISO 639-1); LookupError where there is none."""
    if language != "en":
        raise LookupError(language)
    from templates_gen.messages.english import ENGLISH  # not needed before something is said

    return ENGLISH


def words_of(kit: Kit) -> Catalogue:  # noqa: ARG001 - English is the one language so far
    """What the sheets of a kit are said with."""
    return catalogue_of("en")
