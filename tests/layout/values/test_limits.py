"""Numbers that cannot be meant are refused in one sentence."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from strategies import not_positive

from layout.messages.roles import Entry, YarnNumber
from layout.values.errors import FieldError
from layout.values.limits import LEAST, MOST, Number, above_zero, exact, whole


@given(not_positive)
def test_only_numbers_above_zero_pass(value: Number) -> None:
    """Zero, negative, NaN, infinite, True and absurdly large: one line that names the field and an example."""
    with pytest.raises(FieldError) as caught:
        above_zero(value, "warp.length", YarnNumber.COUNT, "length = 3")
    said = str(caught.value)
    assert "warp.length" in said
    assert "length = 3" in said
    assert "\n" not in said


def test_a_float_counts_as_the_decimal_it_was_written_as() -> None:
    """0.1 is a tenth, not 0.1000000000000000055."""
    assert exact(0.1, "a", Entry.COUNT, "c") == Fraction(1, 10)


@pytest.mark.parametrize("value", [2.5, 0, 101, Fraction(1, 2)])
def test_a_whole_number_is_whole(value: float) -> None:
    """Half a ply is not a ply."""
    with pytest.raises(FieldError):
        whole(value, "plies", YarnNumber.PLIES, "plies = 2", most=100)


def test_the_limits_themselves_pass() -> None:
    """Our own limits: a millionth to a thousand million, and what lies just beyond is refused with the range."""
    assert (Fraction(1, 1_000_000), Fraction(1_000_000_000)) == (LEAST, MOST)
    for value in (LEAST, MOST):
        assert above_zero(value, "a", YarnNumber.COUNT, "c") == value
    for value in (LEAST * Fraction(99, 100), MOST + 1):
        with pytest.raises(FieldError, match="1e-06 to 1e"):
            above_zero(value, "a", YarnNumber.COUNT, "c")


@pytest.mark.parametrize("value", [0, -1])
def test_no_range_is_shown_to_one_who_wrote_nothing(value: int) -> None:
    """Zero and negative numbers need the plain words only."""
    with pytest.raises(FieldError) as caught:
        above_zero(value, "a", YarnNumber.COUNT, "c")
    assert str(caught.value) == f"a: needs a count above zero, got {value}; for example c"


def test_whole_numbers_take_their_ends() -> None:
    """The least and the most of a whole number are whole numbers."""
    assert [whole(value, "a", YarnNumber.COUNT, "c", least=2, most=5) for value in (2, 5.0)] == [2, 5]
