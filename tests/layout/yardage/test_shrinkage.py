"""Shrinkage is divided out."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from strategies import shares_below_one

from layout.yardage.shrinkage import left_of, shrunk_by, to_make


def test_ten_that_becomes_eight_has_shrunk_a_fifth() -> None:
    """CNCH weavers' guild page: 20 %, and to finish at 10 in weave 12.5 in; adding 20 % gives only 9.6 in."""
    assert shrunk_by(10, 8) == Fraction(1, 5)
    assert to_make(10, 0.2) == Fraction(25, 2)
    assert left_of(12, 0.2) == Fraction(48, 5)


def test_cloth_of_94_yards_takes_98_of_warp() -> None:
    """Taylor, Cotton Weaving: 4 % contraction, 98 yd (to the whole yard)."""
    assert round(to_make(94, 0.04)) == 98


@given(shares_below_one)
def test_what_was_made_shrinks_to_what_was_wanted(lost: Fraction) -> None:
    """Exact round trip, and the share measured is the share given."""
    made = to_make(300, lost)
    assert left_of(made, lost) == 300
    assert shrunk_by(made, 300) == lost
