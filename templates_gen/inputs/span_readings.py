"""Spans as a rule shows them: the length exactly, and how far off it may be by the way it is written."""

from __future__ import annotations

import re
from fractions import Fraction

from layout.drawing.spans import Reading
from layout.values.errors import FieldError, shown
from layout.values.numerals import VULGAR
from layout.values.units import Length, mm_in, read_length
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.printer_check import SpanNeed

EYE = Fraction(1, 4)
"""No two ends of a span are read better than this by eye, in mm (common practice, no source)."""

MOST_WITHIN = Fraction(5)
"""A reading that may be off by more than this, in mm, says nothing."""

_COARSEST = 16  # rules in inches have sixteenths, however the fraction is written
_DECIMALS = re.compile(r"[0-9]*[.,]([0-9]+)")
_UNDER = re.compile(r"[/\u2044]([0-9]+)")


def read_span(text: str, option: str, example: str, within: Fraction | None) -> Reading:
    """A span such as "189.9 mm" or "7 15/32 in", right within so many mm.

    Without `within` it is right within half of its last digit or fraction, but not within less than `EYE`. Raises
    OptionError naming the option.
    """
    length = _length(text, option, example)
    sure = max(_half_step(text, length), EYE) if within is None else within
    return Reading(float(length.mm), float(sure))


def read_within(text: str) -> Fraction:
    """How far off a reading may be in mm; OptionError where that is nothing or too much."""
    option, example = "--within", '--within "0.25 mm"'
    length = _length(text, option, example)
    if length.mm > MOST_WITHIN:
        raise OptionError(option, SpanNeed.WITHIN, shown(text), example, most=int(MOST_WITHIN))
    return length.mm


def _length(text: str, option: str, example: str) -> Length:
    try:
        length = read_length(text)
    except FieldError as error:
        raise error.at(option, example) from None
    if length.mm <= 0:
        raise OptionError(option, SpanNeed.LONGER, shown(text), example)
    return length


def _half_step(text: str, length: Length) -> Fraction:
    """Half of the last digit that is written, or of the parts of a fraction, which are sixteenths at least."""
    unit = mm_in(length.unit)
    if found := _DECIMALS.search(text):
        return unit * Fraction(1, 2 * 10 ** len(found[1]))
    under = [int(found[1])] if (found := _UNDER.search(text)) else []
    under += [VULGAR[letter].denominator for letter in text if letter in VULGAR]
    if under or length.imperial:
        return unit / (2 * max(_COARSEST, *under, 1))
    return unit / 2
