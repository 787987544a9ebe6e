"""The height that is woven, of a yarn whose beads are known between bounds alone."""

from __future__ import annotations

from fractions import Fraction
from math import floor

from hypothesis import example, given
from hypothesis import strategies as st

from layout.estimate.height import woven_height
from layout.values.quantity import assumed
from layout.yardage.given import WeftGiven


@example(1, (2.0, 2.0, 0.375), 0.0)
@given(st.integers(1, 500), st.tuples(*[st.floats(0.3, 12)] * 3), st.floats(0, 1))
def test_whole_beads_of_any_height_in_the_range_lie_in_it(asked: int, three: tuple[float, ...], share: float) -> None:
    """As many true beads as the height holds, at least one: what they fill lies between the bounds."""
    low, likely, high = sorted(three)
    bead = min(low + (high - low) * share, float(asked))
    found = woven_height(Fraction(asked), WeftGiven(), assumed(2 / likely, "Guessed.", 2 / high, 2 / low)).height
    if bead >= low:
        assert found.low * (1 - 1e-9) <= floor(asked / bead) * bead <= found.high * (1 + 1e-9)
    assert found.low >= asked / 2
