"""Refusals whose messages are the program's own: options, and what is asked for by name."""

from __future__ import annotations

from layout.messages.catalogue import Catalogue
from layout.values.errors import FieldError


class OptionError(FieldError):
    """One option, or one name asked for, that cannot be used; `field` is its name as it is typed."""

    @staticmethod
    def _english() -> Catalogue:
        from templates_gen.messages.english import ENGLISH  # not needed before something is refused

        return ENGLISH
