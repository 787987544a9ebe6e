"""Yarns, folding and bundles, against the worked sums of old handbooks."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import not_positive, plies, tex_values

from layout.values.errors import FieldError
from layout.values.limits import Number
from layout.values.quantity import Origin
from layout.yarns.yarn import Strand, Yarn, bundle, folded, yarn_from_ball, yarn_of, yarn_weighed
from layout.yarns.yarn_counts import SYSTEMS, YARD_M


def cotton(count: Number) -> Yarn:
    """Singles of a cotton count."""
    return yarn_of(count, "ne")


@pytest.mark.parametrize(
    ("counts", "together"),
    [((60, 40), 24), ((40, 20), Fraction(40, 3)), ((48, 24), 16)],
)
def test_unlike_threads_fold_to_the_handbook_count(counts: tuple[int, int], together: Fraction) -> None:
    """60s with 40s (Taylor, Cotton Weaving), 40s with 20s (Brooks, Cotton Manufacturing), 48s with 24s (Davis)."""
    yarn = folded([cotton(count) for count in counts])
    assert yarn.numbers()["ne"] == together


def test_two_forties_run_as_twenty_hanks_a_pound() -> None:
    """Taylor, Cotton Weaving and Designing: 2/40s is two 40s folded and counts as 20."""
    assert yarn_of(40, "ne", plies=2).numbers()["ne"] == 20


def test_a_two_ply_eights_cotton_has_3360_yards_a_pound() -> None:
    """As sold to craft weavers (craft writing: 8/2 is 8s folded 2-ply)."""
    assert yarn_of(8, "ne", plies=2).numbers()["yd/lb"] == 3360


def test_a_weighed_thread_has_the_handbook_count() -> None:
    """Taylor: 120 yd of cotton that weigh 20 grains are 50s (7000 grains a pound, by definition)."""
    grain = Fraction("453.59237") / 7000
    yarn = yarn_weighed(20 * grain, 120 * YARD_M)
    assert yarn.numbers()["ne"] == 50
    assert yarn.origin is Origin.MEASURED


def test_a_ball_and_metres_in_100_g_say_the_same() -> None:
    """By definition: 50 g in 120 m is 240 m in 100 g, and 416 2/3 tex."""
    ball, label = yarn_from_ball(50, 120), yarn_of(240, "m/100g")
    assert ball.tex == label.tex == Fraction(1250, 3)


@given(tex_values)
def test_a_yarn_comes_back_from_every_number_it_has(tex: Fraction) -> None:
    """Each number, read in its own system, gives the same yarn, exactly."""
    yarn = yarn_of(tex, "tex")
    assert all(yarn_of(number, key).tex == tex for key, number in yarn.numbers().items())
    assert set(yarn.numbers()) == set(SYSTEMS)


@given(st.integers(min_value=1, max_value=100), plies)
def test_plies_are_the_same_as_folding_like_singles(count: int, folds: int) -> None:
    """n plies of one count weigh as n such singles folded."""
    assert yarn_of(count, "ne", folds).tex == folded([cotton(count)] * folds).tex


@given(st.lists(st.integers(min_value=1, max_value=60), min_size=2, max_size=6))
def test_a_folded_yarn_is_coarser_than_any_of_its_threads(counts: list[int]) -> None:
    """The reciprocals of the counts add, so the count falls below the lowest."""
    together = folded([cotton(count) for count in counts]).numbers()["ne"]
    assert 1 / together == sum(Fraction(1, count) for count in counts)
    assert together < min(counts)


@given(not_positive)
def test_a_count_that_cannot_be_is_refused(count: Number) -> None:
    """Zero, negative, NaN, infinite: one sentence, no traceback of another kind."""
    with pytest.raises(FieldError):
        yarn_of(count, "ne")


@pytest.mark.parametrize(
    ("number", "key"), [(0.5, "tex"), (60_000, "tex"), (0.01, "ne"), (2000, "nm"), (1.5, "m/100g")]
)
def test_a_density_beyond_any_yarn_is_refused(number: float, key: str) -> None:
    """Our own limits, 1 to 50 000 tex; the sentence says what it came to."""
    with pytest.raises(FieldError, match="50000 tex"):
        yarn_of(number, key)


@pytest.mark.parametrize("folds", [0, -1, 1.5, 101, float("nan")])
def test_plies_are_a_whole_number(folds: float) -> None:
    """There is no half ply."""
    with pytest.raises(FieldError, match="plies"):
        yarn_of(8, "ne", folds)


@pytest.mark.parametrize("key", ["m/100g", "yd/lb"])
def test_plies_beside_a_number_of_the_finished_yarn_are_refused(key: str) -> None:
    """Metres in 100 g are measured on the plied yarn: plies would count twice."""
    with pytest.raises(FieldError, match="finished"):
        yarn_of(300, key, 2)


@pytest.mark.parametrize(("grams", "metres"), [(0, 100), (50, 0), (-50, 100), (50, float("inf"))])
def test_a_ball_of_nothing_is_refused(grams: float, metres: float) -> None:
    """Weight and length both lie above zero."""
    with pytest.raises(FieldError):
        yarn_from_ball(grams, metres)


def test_nothing_folds_to_nothing() -> None:
    """No threads, no yarn, no bundle: refused."""
    with pytest.raises(FieldError):
        folded([])
    with pytest.raises(FieldError):
        bundle([])


def test_a_bundle_weighs_as_its_strands_together() -> None:
    """Tex adds: two strands of 200 tex and one of 100 tex make 500 tex, four fifths of it the first colour."""
    made = bundle([Strand(yarn_of(200, "tex"), 2, "madder"), Strand(yarn_of(100, "tex"), 1, "ash")])
    assert made.tex == 500
    assert made.number == 3
    assert bundle([Strand(yarn_of(200, "tex"))]).number == 1
    assert made.colours() == {"madder": Fraction(4, 5), "ash": Fraction(1, 5)}


@given(st.lists(st.tuples(tex_values, st.integers(1, 5), st.sampled_from("abc")), min_size=1, max_size=6))
def test_colours_of_a_bundle_add_up_to_one(rows: list[tuple[Fraction, int, str]]) -> None:
    """Exactly one, whatever the strands."""
    made = bundle([Strand(yarn_of(tex, "tex"), number, colour) for tex, number, colour in rows])
    assert sum(made.colours().values()) == 1


@pytest.mark.parametrize("number", [0, -2, 101])
def test_a_bundle_of_no_strands_is_refused(number: int) -> None:
    """One to a hundred strands."""
    with pytest.raises(FieldError):
        bundle([Strand(yarn_of(200, "tex"), number)])


def test_the_metre_and_the_gram_are_reciprocal() -> None:
    """By definition of tex: 250 tex is a quarter of a gram a metre, four metres a gram."""
    yarn = yarn_of(250, "tex")
    assert yarn.grams_per_metre == Fraction(1, 4)
    assert yarn.metres_per_gram == 4
