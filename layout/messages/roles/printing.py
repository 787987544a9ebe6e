"""Roles of what goes wrong between a file and its print."""

from __future__ import annotations

from layout.messages.catalogue import Role


class PrintMistake(Role):
    """A known mistake, by what it makes of a sheet."""

    FITTED = "mistake.fitted"
    A4_ON_LETTER = "mistake.a4_on_letter"
    LETTER_ON_A4 = "mistake.letter_on_a4"
    A4_QUEUED_LETTER = "mistake.a4_queued_letter"
    LETTER_QUEUED_A4 = "mistake.letter_queued_a4"
    BROWSER_WIDE = "mistake.browser_wide"
    PIXELS = "mistake.pixels"
    TWO_ON_ONE = "mistake.two_on_one"
    TO_LARGER = "mistake.to_larger"
    UNIT = "mistake.unit"
