"""The known word that a misspelt one was probably meant to be."""

from __future__ import annotations

from collections.abc import Iterable

_LONGEST_WORD = 60


def closest(word: str, known: Iterable[str]) -> str:
    """The one of `known` that `word` was probably meant to be, or nothing."""
    from difflib import get_close_matches

    return next(iter(get_close_matches(word[:_LONGEST_WORD], list(known), n=1)), "")
