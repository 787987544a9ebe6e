"""The sett taken from wrap readings or as given, in exact fractions."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from layout.sett.sett import SettInput, take_sett
from layout.values.errors import FieldError
from layout.values.units import Length, Sett, read_length
from tests.setts import CM, INCH, as_given, counted, setts, true_of, windows


@pytest.mark.parametrize("unit", [None, "1/2 in", "1 in"])
def test_nine_pairs_in_an_inch_make_eight_ends(unit: str | None) -> None:
    """Common practice, no source: 9 pairs counted in one inch give 8 ends and 4 winds an inch."""
    sett = counted((9, "1 in"), unit=unit)
    assert sett.per_mm * INCH == 8
    assert sett.per_mm * INCH / 2 == 4


def test_eight_pairs_in_an_inch_stay_eight() -> None:
    """Exact fractions: in floats 8 / 25.4 * 25.4 / 2 falls just short of 4, and the sett to 6."""
    sett = counted((8, "1 in"), unit="1 in")
    assert (sett.per_mm * INCH, sett.winds_per_unit, sett.loss) == (8, 4, 0)


@pytest.mark.parametrize(
    ("per_cm", "epi"), [("2", "5.08"), ("2.5", "6.35"), ("3", "7.62"), ("4", "10.16"), ("6", "15.24")]
)
def test_the_metric_ladder_in_ends_per_inch(per_cm: str, epi: str) -> None:
    """A yarn supplier's technical article has 3 ends per cm as 7.62 epi, not 8; the rest of its ladder by 2.54."""
    sett = as_given(f"{per_cm} ends/cm")
    assert sett.per_mm * INCH == Fraction(epi)
    assert f"{per_cm} ends per cm ({epi} epi)" in sett.notes[0]


@pytest.mark.parametrize(
    ("readings", "unit", "epi", "winds"),
    [
        ([(9, "1 in")], "1/2 in", 8, 2),  # 11.1 % lost: smallest that does
        ([(10, "1 in")], "1 in", 10, 5),  # 1/2 in would give 8 epi, 20 % lost
        ([(11, "2 in")], "2 in", 5, 5),  # 1 in would give 4 epi, 27.3 % lost
        ([(25, "2 in")], "1/2 in", 12, 3),
    ],
)
def test_the_smallest_unit_that_loses_little_is_chosen(
    readings: list[tuple[int, str]], unit: str, epi: int, winds: int
) -> None:
    """Worked by hand: 2 floor(low u / 2) / u for 1/2, 1 and 2 in, at most 12 % of low lost."""
    sett = counted(*readings)
    assert (sett.unit.mm, sett.per_mm * INCH, sett.winds_per_unit) == (read_length(unit).mm, epi, winds)


def test_metric_readings_have_metric_units() -> None:
    """Worked by hand: 2.7 ends per cm give 2, 2, 2.5, 2.4 and 2.6 at 1, 2, 4, 5 and 10 cm."""
    sett = counted((13, "5 cm"), (27, "10 cm"))
    assert (sett.low * CM, sett.high) == (Fraction(27, 10), Fraction(28, 100))
    assert [(offer.unit.mm, offer.per_mm * CM) for offer in sett.offers[:5]] == [
        (10, 2), (20, 2), (40, Fraction(5, 2)), (50, Fraction(12, 5)), (100, Fraction(13, 5)),
    ]  # fmt: skip
    assert (sett.unit, sett.winds_per_unit, sett.loss) == (Length(Fraction(40), "cm"), 5, Fraction(2, 27))


def test_all_that_was_possible_is_said_in_words() -> None:
    """Notes tell the sett in both systems, the loss, what other units would give, and the sett as measured."""
    assert "\n".join(counted((13, "5 cm"), (27, "10 cm")).notes) == (
        "The sett taken is 2.5 ends per cm (6.35 epi): 5 winds to 4 cm, "
        "the largest that counts off evenly in that unit.\n"
        "It loses 7.4 % of the sett measured, at least 2.7 and less than 2.8 ends per cm.\n"
        "Counting off evenly, other units in cm would give 2 ends per cm at 1 cm and 2 cm (loses 25.9 %), "
        "2.4 ends per cm at 5 cm (loses 11.1 %), "
        "2.6 ends per cm at 10 cm (loses 3.7 %).\n"
        "Counting off evenly, other units in inches would give 4 epi at 1/2 in (loses 41.7 %), "
        "6 epi at 1 in and 2 in (loses 12.5 %).\n"
        "As measured (as_measured = true) it would be 2.7 ends per cm (6.858 epi), 5.4 winds to 4 cm."
    )


def test_the_system_is_that_of_the_marking_unit_if_there_is_one() -> None:
    """A metric unit beside readings in inches is offered metric ones first."""
    sett = counted((11, "2 in"), unit="4 cm")
    assert (sett.unit.unit, sett.offers[0].unit.unit) == ("cm", "cm")
    assert sett.per_mm * CM == 2


def test_a_unit_that_loses_much_is_taken_with_a_warning() -> None:
    """Worked by hand: 5.5 epi in 1 in is 4 epi, 27.3 % lost; 2 in would lose 9.1 %."""
    sett = counted((11, "2 in"), unit="1 in")
    assert sett.per_mm * INCH == 4
    (warning,) = sett.warnings
    assert "1 in loses 27.3 %" in warning
    assert "2 in would lose 9.1 %" in warning


def test_a_unit_that_holds_no_wind_is_refused_with_those_that_do() -> None:
    """5.5 epi is 1.375 winds to 1/2 in but not one to 1/4 in."""
    with pytest.raises(FieldError, match=r'^sett\.marking_unit: .* 5\.5 epi, got 1/4 in; .*marking_unit = "2 in"'):
        counted((11, "2 in"), unit="1/4 in")


def test_a_sett_that_no_usual_unit_holds_is_refused_with_what_would() -> None:
    """Worked by hand: 1.4 epi is one wind to 2 in (28.6 % lost) but 10 cm hold two winds (27.4 %), 4 cm one (9.3 %)."""
    with pytest.raises(FieldError) as caught:
        counted((7, "5 in"))
    said = str(caught.value)
    assert said.startswith("sett.marking_unit: needs to be given, since no usual unit in inches loses at most 12 %")
    assert 'marking_unit = "4 cm" (loses 9.3 %)' in said
    assert said.endswith("or as_measured = true")


@pytest.mark.parametrize("pairs", range(1, 12))
@pytest.mark.parametrize("over", ["1 in", "5 in", "10 in", "3 cm", "10 cm", "30 cm"])
def test_what_a_refusal_offers_would_be_taken(pairs: int, over: str) -> None:
    """Each unit named in a refusal can be given as the marking unit."""
    for unit in (None, "2 mm"):
        try:
            counted((pairs, over), unit=unit)
        except FieldError as error:
            offered = re.findall(r'marking_unit = "([^"]+)"', error.example)
            assert offered
            for text in offered:
                assert counted((pairs, over), unit=text).per_mm > 0
            assert counted((pairs, over), as_measured=True).per_mm > 0


def test_as_measured_takes_the_lowest_sett_that_is_true() -> None:
    """Nothing is lost, and winds that do not fall into the unit are said, not forced."""
    sett = counted((13, "5 cm"), (27, "10 cm"), as_measured=True)
    assert (sett.per_mm, sett.loss) == (Fraction(27, 100), 0)
    assert sett.winds_per_unit == sett.per_mm * sett.unit.mm / 2
    assert sett.winds_per_unit.denominator > 1
    assert any("no whole number" in warning for warning in sett.warnings)


def test_a_sett_given_is_taken_as_it_is() -> None:
    """Any number is taken; half a wind at a long mark is said, not forced."""
    sett = as_given("7 epi", "1 in")
    assert (sett.per_mm * INCH, sett.winds_per_unit, sett.loss, sett.high) == (7, Fraction(7, 2), 0, None)
    assert sett.warnings == ("3.5 winds to 1 in is no whole number, so the long marks will fall between winds.",)
    assert as_given("6 epi", "1 in").warnings == ()


@pytest.mark.parametrize(
    ("sett", "unit"),
    [
        ("8 epi", "1/2 in"),  # 2 winds
        ("6 epi", "1 in"),  # 1 1/2 and 3 winds
        ("2 epi", "2 in"),  # one wind to an inch is too few
        ("7 epi", "2 in"),  # 7 winds
        ("0.3 epi", "2 in"),  # nothing holds two winds: the largest
        ("7.3 epi", "1 in"),  # nothing is whole: the smallest with two winds
        ("3 ends/cm", "2 cm"),
        ("2.5 ends/cm", "4 cm"),
        ("30 per 10 cm", "2 cm"),
    ],
)
def test_a_sett_given_has_the_smallest_unit_with_whole_winds(sett: str, unit: str) -> None:
    """Worked by hand, with at least two winds to a unit where any has them."""
    assert as_given(sett).unit == read_length(unit)


units = st.fractions(min_value=2, max_value=200, max_denominator=64).map(Length)


@given(setts, windows, units)
def test_a_sett_counted_off_is_the_largest_even_one(sett: Fraction, over: Length, unit: Length) -> None:
    """Whole winds, never more than measured, and one wind more to the unit would be more."""
    reading = true_of(sett, over)
    assume(reading.pairs >= 1)
    assume(reading.low * unit.mm >= 2)
    taken = take_sett(SettInput((reading,), marking_unit=unit))
    assert taken.winds_per_unit.denominator == 1
    assert taken.per_mm <= reading.low < taken.per_mm + 2 / unit.mm
    assert taken.loss == 1 - taken.per_mm / reading.low
    assert 0 <= taken.loss < 1


@given(setts, units, st.integers(2, 9))
def test_a_multiple_of_a_unit_never_loses_more(sett: Fraction, unit: Length, times: int) -> None:
    """What counts off evenly in a unit does so in its multiples."""
    reading = true_of(sett, Length(Fraction(100), "cm"))
    assume(reading.low * unit.mm >= 2)
    once = take_sett(SettInput((reading,), marking_unit=unit))
    longer = take_sett(SettInput((reading,), marking_unit=Length(unit.mm * times)))
    assert longer.loss <= once.loss


@given(setts, windows)
def test_the_unit_chosen_is_the_smallest_that_loses_little(sett: Fraction, over: Length) -> None:
    """Every smaller usual unit of the same system loses more than 12 %."""
    reading = true_of(sett, over)
    assume(reading.pairs >= 1)
    usual = [INCH / 2, INCH, 2 * INCH] if over.imperial else [CM, 2 * CM, 4 * CM, 5 * CM, 10 * CM]
    even = {mm: max((2 * k / mm for k in range(1, 600) if 2 * k / mm <= reading.low), default=0) for mm in usual}
    does = [mm for mm in usual if reading.low - even[mm] <= reading.low * Fraction(12, 100)]
    if does:
        taken = take_sett(SettInput((reading,)))
        assert (taken.unit.mm, taken.per_mm) == (does[0], even[does[0]])
    else:
        with pytest.raises(FieldError, match=r"sett\.marking_unit"):
            take_sett(SettInput((reading,)))


@given(setts, st.sampled_from(["in", "cm", "10 cm"]))
def test_offers_tell_every_usual_unit(sett: Fraction, unit: str) -> None:
    """Eight usual units, those of the system in use first, none of them above the sett."""
    taken = take_sett(SettInput(given=Sett(sett, unit)))
    assert len({offer.unit.mm for offer in taken.offers}) == 8
    assert taken.offers[0].unit.imperial == (unit == "in")
    assert all(offer.per_mm <= sett and 0 <= offer.loss <= 1 for offer in taken.offers)
