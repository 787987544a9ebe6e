"""Numbers that cannot be meant are refused in one sentence."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from strategies import not_positive

from layout.errors import FieldError
from layout.limits import Number, above_zero, exact, share, whole, zero_or_more


@given(not_positive)
def test_only_numbers_above_zero_pass(value: Number) -> None:
    """Zero, negative, NaN, infinite, True and absurdly large: one line that names the field and an example."""
    with pytest.raises(FieldError) as caught:
        above_zero(value, "warp.length", "a length", "length = 3")
    said = str(caught.value)
    assert "warp.length" in said
    assert "length = 3" in said
    assert "\n" not in said


def test_a_float_counts_as_the_decimal_it_was_written_as() -> None:
    """0.1 is a tenth, not 0.1000000000000000055."""
    assert exact(0.1, "a", "b", "c") == Fraction(1, 10)


def test_zero_passes_where_zero_may_be() -> None:
    """zero_or_more lets 0 through and still refuses what is below."""
    assert zero_or_more(0, "a", "b", "c") == 0
    with pytest.raises(FieldError):
        zero_or_more(-0.001, "a", "b", "c")


@pytest.mark.parametrize("value", [1, 1.0, -0.01, 8, float("nan")])
def test_a_share_stays_below_one(value: float) -> None:
    """100 % shrinkage leaves nothing, so 1 is out; so is a share written in per cent."""
    with pytest.raises(FieldError):
        share(value, "shrinkage", "the shrinkage")


@pytest.mark.parametrize("value", [2.5, 0, 101, Fraction(1, 2)])
def test_a_whole_number_is_whole(value: float) -> None:
    """Half a ply is not a ply."""
    with pytest.raises(FieldError):
        whole(value, "plies", "plies", "plies = 2", most=100)
