"""Sums of floats are exact."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from layout.values.exact_sum import ExactSum

figures = st.tuples(st.floats(allow_nan=False, allow_infinity=False) | st.integers(-9, 9), st.integers(-999, 999))


@given(st.lists(figures))
def test_a_sum_is_that_of_fractions(each: list[tuple[float, int]]) -> None:
    """Whatever the floats are, the sum is what Python's fractions make of it."""
    found = ExactSum()
    for figure, times in each:
        found.add(figure, times)
    assert found.value == sum((Fraction(figure) * times for figure, times in each), Fraction(0))
