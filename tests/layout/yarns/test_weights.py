"""Weights as people write them, against pint's own units."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest

from layout.values.errors import FieldError
from layout.yarns.weights import WEIGHTS, read_weight

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()


@pytest.mark.parametrize("word", WEIGHTS)
def test_every_unit_weighs_what_pint_says(word: str) -> None:
    """pint's default registry: gram, kilogram, and the avoirdupois grain, ounce and pound."""
    theirs = REGISTRY.Quantity(3, word.removesuffix("s") if word == "lbs" else word).to("gram").magnitude
    assert float(read_weight(f"3 {word}")) == pytest.approx(theirs, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "grams"),
    [("50 g", 50), ("50g", 50), ("4,5 g", Fraction(9, 2)), (" 1/2 LB ", Fraction("226.796185")), ("3½ oz.", 3.5)],
)
def test_weights_are_read_exactly(text: str, grams: Fraction | float) -> None:
    """By definition: 1 lb = 453.59237 g = 16 oz."""
    ounce = Fraction("453.59237") / 16
    assert read_weight(text) == (Fraction(7, 2) * ounce if grams == 3.5 else grams)


@pytest.mark.parametrize(
    "text", ["50", "g", "50 gg", "50 m", "", "NaN g", "1e3 g", "1,500 g", "9" * 80 + " g", 50, None]
)
def test_what_is_no_weight_is_refused(text: object) -> None:
    """Read whole or not at all; a comma that may mean thousands is not guessed."""
    with pytest.raises(FieldError):
        read_weight(text)
