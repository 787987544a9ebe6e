"""Setts on a bar that is notched already, and setts counted off in single ends, against numbers worked by hand."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from layout.sett.marking_units import SINGLY
from layout.sett.sett import SettInput, SettTaken, WrapReading, take_sett
from layout.values.errors import FieldError
from layout.values.units import Length, Sett, read_length, read_sett
from tests.setts import CM, INCH, setts, true_of, windows

F = Fraction


def on(density: str, sett: str | None = None, **choice: bool) -> SettTaken:
    """The sett taken on a bar with notches this close: the one given, or from 17 pairs in 5 cm."""
    readings = () if sett else (WrapReading(17, read_length("5 cm"), measured=False),)
    given = read_sett(sett) if sett else None
    return take_sett(SettInput(readings, given, **choice), SINGLY, read_sett(density))


@pytest.mark.parametrize(
    ("density", "per_cm", "to_a_notch"),
    [("3.4 per cm", F("3.4"), 1), ("4 per cm", 2, F(1, 2)), ("6.8 per cm", F("3.4"), F(1, 2)), ("1.5 per cm", 3, 2)],
)
def test_the_largest_sett_that_the_notches_allow(density: str, per_cm: Fraction, to_a_notch: Fraction) -> None:
    """At least 3.4 ends per cm measured: the largest of half, once and twice the density that is no more."""
    taken = on(density)
    assert (taken.per_mm * CM, taken.to_a_notch) == (per_cm, to_a_notch)
    assert taken.loss == 1 - per_cm / F("3.4")


def test_what_to_do_with_the_notches_is_said() -> None:
    """The use of the notches, what is lost, and what else they would give."""
    taken = on("4 per cm")
    assert taken.notes[:2] == (
        "The sett taken is 2 ends per cm (5.08 epi): an end in every second notch, of 4 notches per cm.",
        "It loses 41.2 % of the sett measured, at least 3.4 and less than 3.6 ends per cm.",
    )
    assert taken.notes[2] == (
        "These notches could also give 4 ends per cm with an end in every notch (closer than the sett measured) or "
        "8 ends per cm with two ends to a notch (closer than the sett measured)."
    )
    assert any(
        "lose 41.2 % of the sett measured; a bar notched anew would lose less" in each for each in taken.warnings
    )


def test_notches_too_close_are_refused_and_the_advice_works() -> None:
    """Ten notches a cm are five ends at least, more than the 3.4 measured."""
    with pytest.raises(FieldError, match=r"frame\.notch_density: needs at most 6\.8 notches per cm") as caught:
        on("10 per cm")
    assert on(caught.value.example.split('"')[1]).loss == 0


@pytest.mark.parametrize(("sett", "ends"), [("2 per cm", F(1, 2)), ("4 per cm", F(1)), ("80 per 10 cm", F(2))])
def test_a_sett_that_the_notches_allow_is_taken(sett: str, ends: Fraction) -> None:
    """Half, once and twice the density, and nothing is lost."""
    taken = on("4 per cm", sett)
    assert (taken.to_a_notch, taken.loss, taken.high) == (ends, 0, None)


def test_another_sett_is_refused_with_those_that_fit() -> None:
    """Three ends per cm do not fall on four notches per cm; the setts that do are named, and the example works."""
    with pytest.raises(
        FieldError, match=r"^sett\.given: .*every second notch.*every notch.*two ends to a notch"
    ) as caught:
        on("4 per cm", "3 per cm")
    assert on("4 per cm", caught.value.example.split('"')[1]).to_a_notch == 1


@given(setts, windows, st.fractions(min_value=2, max_value=200, max_denominator=64).map(Length))
def test_single_ends_know_no_even_rule(sett: Fraction, over: Length, unit: Length) -> None:
    """Counted off singly the sett is floor(low u) / u, and never looser than in winds."""
    reading = true_of(sett, over)
    assume(reading.pairs >= 1)
    assume(reading.low * unit.mm >= 2)
    choice = SettInput((reading,), marking_unit=unit)
    taken = take_sett(choice, SINGLY)
    assert taken.per_mm == F(reading.low * unit.mm // 1) / unit.mm
    assert taken.per_mm >= take_sett(choice).per_mm
    assert (taken.winds_per_unit, taken.per_unit.denominator) == (None, 1)


def test_nine_pairs_in_an_inch_may_be_nine_ends_on_a_notched_frame() -> None:
    """A wound frame takes 8 of them (common practice, no source); between notches the ninth end is no half wind."""
    choice = SettInput((WrapReading(9, read_length("1 in"), measured=False),), marking_unit=read_length("1 in"))
    assert take_sett(choice, SINGLY).per_mm * INCH == 9
    assert take_sett(choice).per_mm * INCH == 8
    assert take_sett(choice, SINGLY).counted == "9 ends"


def test_given_setts_and_densities_may_be_in_other_systems() -> None:
    """Five an inch on ten notches an inch, said per cm: exact fractions agree."""
    taken = take_sett(SettInput(given=Sett(F(5) / INCH, "cm")), SINGLY, Sett(F(10) / INCH, "in"))
    assert taken.to_a_notch == F(1, 2)
