"""Weights as people write them, read into exact grams: g, kg, grain, oz, lb (avoirdupois)."""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

from layout.messages.roles import YarnNeed
from layout.values.errors import FieldError, shown
from layout.values.numerals import BLANK, NUMBER, number_from
from layout.yarns.yarn_counts import OUNCE_G, POUND_G

_LONGEST = 60
_WORDS = {
    Fraction(1): ("g", "gram", "grams"),
    Fraction(1000): ("kg", "kilogram", "kilograms"),
    POUND_G / 7000: ("grain", "grains"),
    OUNCE_G: ("oz", "ounce", "ounces"),
    POUND_G: ("lb", "lbs", "pound", "pounds"),
}
WEIGHTS: Mapping[str, Fraction] = MappingProxyType({word: grams for grams, words in _WORDS.items() for word in words})
"""Grams in one of each word that is read; 1 lb = 453.59237 g = 16 oz = 7000 grains exactly."""

_WEIGHT = re.compile(rf"{NUMBER}{BLANK}*(?P<word>[A-Za-z]{{1,12}})\.?", re.VERBOSE)


def read_weight(text: object) -> Fraction:
    """The weight in grams that `text` says, exactly; FieldError with an empty field if it says none."""
    match = _WEIGHT.fullmatch(text.strip()) if isinstance(text, str) and len(text) <= _LONGEST else None
    grams = WEIGHTS.get(match["word"].lower()) if match else None
    if match is None or grams is None:
        raise FieldError("", YarnNeed.WEIGHT, shown(text), "50 g")
    return number_from(match, str(text)) * grams
