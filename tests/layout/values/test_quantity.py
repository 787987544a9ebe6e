"""Figures carry how they are known, and between what they may lie."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.quantity import Origin, Quantity, assumed, combine, computed, measured, met


def _said(known: Quantity, found: Quantity) -> str:
    return f"{known.reason} {found.reason} They differ."


_NUMBERS = st.floats(0.01, 100)


@st.composite
def _ranges(draw: st.DrawFn, around: float | None = None) -> Quantity:
    """A range, round a true value if there is one."""
    three = [draw(_NUMBERS), draw(_NUMBERS), draw(_NUMBERS)]
    if around is not None:
        three = [around * draw(st.floats(0.2, 1)), around * draw(st.floats(1, 5)), around]
    low, value, high = sorted(three)
    if around is not None:
        value = draw(st.floats(low, high))
    return draw(st.sampled_from([assumed, measured]))(value, "Seen.", low, high)


def test_a_figure_computed_from_measured_ones_is_computed() -> None:
    """Nothing assumed goes in, nothing assumed comes out."""
    assert computed(3, "Sum.", measured(1, "Counted."), measured(2, "Counted.")).origin is Origin.COMPUTED


def test_an_assumption_is_never_lost_on_the_way() -> None:
    """A figure that rests on an assumption two steps down is assumed, and names it once."""
    guess = assumed(2, "Guessed.")
    first = computed(3, "Sum.", measured(1, "Counted."), guess)
    second = computed(6, "Twice.", first, guess)
    assert (first.origin, second.origin) == (Origin.ASSUMED, Origin.ASSUMED)
    assert second.assumptions == ("Guessed.",)


def test_the_three_words_are_the_ones_people_read() -> None:
    """How is a plain word, fit for JSON."""
    assert [str(how) for how in Origin] == ["measured", "computed", "assumed"]


def test_an_exact_figure_has_no_range() -> None:
    """Low, likely and high of it are one number; a range of no width is exact too."""
    for exact in (measured(3, "Cut."), assumed(3, "Chosen.", 3, 3), computed(3, "Sum.")):
        assert exact.exact
        assert (exact.low, exact.value, exact.high) == (3, 3, 3)
    assert not measured(3, "Read.", 2).exact


@pytest.mark.parametrize(("low", "value", "high"), [(2, 1, 3), (1, 4, 3), (math.nan, 1, 2), (1, 2, math.inf)])
def test_a_likely_value_outside_its_range_is_a_mistake_of_the_program(low: float, value: float, high: float) -> None:
    """Low, likely and high stand in this order and are numbers."""
    with pytest.raises(AssertionError, match="Wrong"):
        measured(value, "Wrong.", low, high)


def test_another_unit_or_another_reason_keeps_the_range() -> None:
    """Metres of millimetres, said with other words, are between the same."""
    metres = assumed(2000, "Guessed.", 1000, 4000).scaled(1 / 1000).explained("In metres.", measured(1, "Counted."))
    assert (metres.low, metres.value, metres.high) == pytest.approx((1, 2, 4))
    assert (metres.reason, metres.assumptions) == ("In metres.", ("Guessed.",))


def test_a_formula_is_taken_at_the_ends_of_its_sources() -> None:
    """Speed of 100 +- 10 m in 20 +- 5 s: 90 / 25 at the least, 110 / 15 at the most."""
    way, time = measured(100, "Paced.", 90, 110), measured(20, "Counted.", 15, 25)
    speed = combine(lambda m, s: m / s, "Speed.", way, time, falling=(1,))
    assert (speed.low, speed.value, speed.high) == pytest.approx((3.6, 5, 110 / 15))
    assert combine(lambda m, s: m / s, "Speed.", measured(1, "."), measured(3, ".")).exact


@given(_ranges(), _ranges(), st.data())
def test_no_value_within_the_ranges_falls_outside_a_combined_one(
    one: Quantity, two: Quantity, data: st.DataObject
) -> None:
    """Interval arithmetic: whatever the sources truly are, the formula of it lies in the range."""
    found = combine(lambda a, b: a**2 / b, "Ratio.", one, two, falling=(1,))
    a, b = (data.draw(st.floats(each.low, each.high)) for each in (one, two))
    assert found.low * (1 - 1e-9) <= a**2 / b <= found.high * (1 + 1e-9)


def test_a_formula_that_falls_where_it_should_rise_is_a_mistake_of_the_program() -> None:
    """The ends of a falling formula come out in the wrong order, and are not put right in silence."""
    with pytest.raises(AssertionError, match="Inverse"):
        combine(lambda a: 1 / a, "Inverse.", measured(2, "Read.", 1, 4))


@given(st.lists(st.just(None), min_size=1, max_size=5), _NUMBERS, st.data())
def test_true_readings_only_narrow(readings: list[None], truth: float, data: st.DataObject) -> None:
    """However many true ranges meet, and in whatever order: the truth stays inside and no range grows."""
    every = [data.draw(_ranges(truth)) for _ in readings]
    known = data.draw(_ranges(truth))
    for reading in every:
        then = met(known, reading, _said)
        assert then.low >= known.low
        assert then.high <= known.high
        assert then.low <= truth <= then.high
        assert not then.conflicts
        known = then


@given(_ranges(), _ranges())
def test_two_ranges_meet_the_same_from_both_sides(one: Quantity, two: Quantity) -> None:
    """Which was known first changes the likely value at most, never the range."""
    assert (met(one, two, _said).low, met(one, two, _said).high) == (
        met(two, one, _said).low,
        met(two, one, _said).high,
    )


def test_a_contradiction_names_both_and_spans_both() -> None:
    """What the label gives and what was measured share nothing: neither is dropped in silence, also further down."""
    label, reading = assumed(1, "The label says 1.", 0.8, 1.2), measured(2, "It measured 2.", 1.9, 2.1)
    both = met(label, reading, _said)
    assert (both.low, both.value, both.high) == (0.8, 2, 2.1)
    assert both.conflicts == ("The label says 1. It measured 2. They differ.",)
    twice = combine(lambda a, b: a + b, "Twice.", both, both)
    assert twice.conflicts == both.conflicts
    assert (twice.low, twice.high) == (1.6, 4.2)


def test_the_likely_value_is_the_measured_one_where_that_can_be() -> None:
    """A reading inside what is known stays as it was read; one that leans out is moved to the edge."""
    label = assumed(1, "The label says 1.", 0.8, 1.2)
    assert met(label, measured(1.1, "Read.", 1.05, 1.15), _said).value == 1.1
    assert met(label, measured(1.3, "Read.", 1.1, 1.5), _said).value == 1.2


def test_a_measurement_rests_on_no_assumption_and_a_computed_one_on_both() -> None:
    """Beads counted are measured whatever the label let one assume."""
    label = assumed(1, "The label says 1.", 0.8, 1.2)
    counted = met(label, measured(1.1, "Read."), _said)
    assert (counted.origin, counted.assumptions) == (Origin.MEASURED, ())
    worked = met(label, computed(1.1, "Sum."), _said)
    assert (worked.origin, worked.assumptions) == (Origin.ASSUMED, ("The label says 1.",))


def test_the_same_edge_computed_twice_is_no_contradiction() -> None:
    """Ranges that touch but for the last digit of a float have that edge in common."""
    third = float(Fraction(1, 3))
    edge = met(assumed(0.2, "Below.", 0.1, third), measured(0.4, "Above.", third * (1 + 1e-15), 0.5), _said)
    assert not edge.conflicts
    assert edge.value == pytest.approx(third)
