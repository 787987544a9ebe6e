"""Amounts on the job sheet that lie where two roundings meet."""

from __future__ import annotations

from fractions import Fraction

import pytest

from layout.drawing.shapes import Point
from layout.messages.english import ENGLISH
from layout.values.numerals import say_number
from templates_gen.verify.cut_parts.job import _one_of
from templates_gen.verify.cut_parts.job_sentences import amounts
from templates_gen.verify.said import squeezed


@pytest.mark.parametrize("thousand", range(3))
def test_an_amount_at_a_tie_is_known_whichever_way_it_is_rounded(thousand: int) -> None:
    """1005 mm are 1 m or 1.01 m, and of "1.01 m" the end reads "1 m": the one that stands there is meant."""
    for length in range(1000 * thousand + 5, 1000 * thousand + 1000, 10):
        choice = amounts({"engrave": 0.0, "score": 0.0, "cut": length}, ENGLISH)["cut"]
        assert f"{say_number(Fraction(length, 1000), 2)} m" in choice
        for said in choice:
            words = [(Point(0, 0), said), (Point(0, 9), "cut")]
            assert _one_of(choice, words, squeezed("".join(each for _, each in words))) == said
