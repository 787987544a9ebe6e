"""How much weft: worked sums of handbooks, colour shares, samples."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import shares_below_one

from layout.values.errors import FieldError
from layout.values.quantity import Origin, Quantity, measured
from layout.yardage.bead import picks_counted
from layout.yardage.weft_total import (
    ColourPart,
    area_notes,
    by_area,
    by_colour,
    colour_shares,
    drawn_in,
    hem_length,
    scaled_from_sample,
    tails,
    weft_length,
)

_NONE = measured(0.0, "No take-up.")
_INCH, _YARD = 25.4, 914.4


def given_figure(value: float) -> Quantity:
    """A number that somebody measured."""
    return measured(value, "Measured.")


def test_width_by_picks_by_length_is_the_handbook_sum() -> None:
    """Brooks, Cotton Manufacturing: 37.5 in x 64 picks an inch: 2400 in of weft an inch, so 2400 yd a yard."""
    picks = picks_counted(64, _INCH)
    for high in (_INCH, _YARD):
        length = weft_length(given_figure(37.5 * _INCH), given_figure(high), picks, _NONE)
        assert length.value / high == pytest.approx(2400)


def test_hanks_of_weft_are_the_handbook_sum() -> None:
    """Taylor, Cotton Weaving: 34 picks x 84 yd x 60 in / 840 = 204 hanks."""
    length = weft_length(given_figure(60 * _INCH), given_figure(84 * _YARD), picks_counted(34, _INCH), _NONE).value
    assert length / _YARD / 840 == pytest.approx(204)


@given(st.floats(0, 0.57), st.floats(10, 1000), st.floats(10, 1000))
def test_take_up_makes_every_pick_longer(more: float, width: float, height: float) -> None:
    """The whole weft grows by just that share."""
    size = (given_figure(width), given_figure(height), given_figure(2 / 0.9))
    straight, bent = (weft_length(*size, given_figure(each)).value for each in (0, more))
    assert bent == pytest.approx(straight * (1 + more))


def test_each_length_has_two_tails_of_an_inch() -> None:
    """G. Christie, Embroidery and Tapestry Weaving: about an inch at both ends of every length of weft."""
    assert tails(40).value == 40 * 2 * 25
    assert tails(0).value == 0


def test_drawn_in_cloth_is_narrower() -> None:
    """Arithmetic: 250 mm that draw in by 4 % are 240 mm."""
    assert drawn_in(250, 0.04) == 240


@pytest.mark.parametrize(
    "shares",
    [{"a": 60, "b": 40}, {"a": 0.6, "b": 0.4}, {"a": 0.1, "b": 0.2, "c": 0.7}, {"a": 33.3, "b": 33.3, "c": 33.4},
     {"a": 1}],
)  # fmt: skip
def test_shares_that_add_up_pass_exactly(shares: dict[str, float]) -> None:
    """To 1 or to 100; 0.1 + 0.2 + 0.7 is 1, though not in floats."""
    made = colour_shares(shares)
    assert sum(made.values()) == 1
    assert list(made) == list(shares)


@pytest.mark.parametrize(
    "shares",
    [{"a": 60, "b": 41}, {"a": 0.5, "b": 0.4}, {"a": 33.33, "b": 33.33, "c": 33.33}, {"a": 99, "b": 0}, {"a": 10}],
)  # fmt: skip
def test_shares_that_do_not_add_up_are_refused(shares: dict[str, float]) -> None:
    """One sentence with what they came to and an example."""
    with pytest.raises(FieldError, match="for example red = 60, grey = 40") as caught:
        colour_shares(shares)
    assert "\n" not in str(caught.value)


@given(st.lists(st.integers(1, 50), min_size=1, max_size=6), st.integers(0, 30))
def test_colours_add_up_to_the_whole_weft(weights: list[int], lengths: int) -> None:
    """All colours' lengths are the weft and all tails."""
    total = sum(weights)
    parts = [ColourPart(f"c{k}", Fraction(each, total), lengths) for k, each in enumerate(weights)]
    made = by_colour(given_figure(90_000), parts).values()
    assert sum(laid.value for laid in made) == pytest.approx(90_000 + len(weights) * lengths * 50)


def test_a_weighed_sample_scales_by_area() -> None:
    """By hand: 12 g on 100 x 100 mm are 72 g on 240 x 250 mm."""
    grams = scaled_from_sample(12, (100, 100), (given_figure(240), given_figure(250)))
    assert (grams.value, grams.origin) == (72, Origin.COMPUTED)
    assert (grams.low, grams.high) == pytest.approx((11.5 * 6 / 1.01**2, 12.5 * 6 / 0.99**2))
    finer = scaled_from_sample(Fraction("12.2"), (100, 100), (given_figure(100), given_figure(100)))
    assert finer.high == pytest.approx(12.25 / 0.99**2)


@given(st.floats(1, 500), st.floats(10, 500), st.floats(10, 500))
def test_a_weaving_of_the_samples_size_takes_the_samples_weight(grams: float, width: float, height: float) -> None:
    """Scale 1."""
    size = (given_figure(width), given_figure(height))
    assert scaled_from_sample(grams, (width, height), size).value == pytest.approx(grams)


@given(shares_below_one)
def test_what_draws_in_never_grows(share: Fraction) -> None:
    """A share from 0 up to 1 leaves between all and nothing."""
    assert 0 < drawn_in(240, share) <= 240


def test_reasons_carry_the_right_numbers() -> None:
    """By hand: 0.9 picks a mm on 200 mm are 180; 100 x 100 mm are 100 cm2; 3/5 are 60 %."""
    length = weft_length(given_figure(240), given_figure(200), given_figure(2 / 0.9), given_figure(0.2))
    assert length.reason == "180 picks of 240 mm and 20 % take-up."
    size = (given_figure(240), given_figure(250))
    assert "12 g on 100 cm2; this is 6 times as much" in scaled_from_sample(12, (100, 100), size).reason
    first, _ = by_colour(length, [ColourPart("ash", 60), ColourPart("madder", 40)]).values()
    assert first.reason.startswith("60 % of the weft")


def test_christie_is_named_for_her_tail_only() -> None:
    """A tail of another length is the maker's own."""
    assert "Christie" in tails(3).reason
    assert "Christie" not in tails(3, 40).reason


def test_colours_add_up_at_the_least_and_the_most_too() -> None:
    """90 to 110 m of weft, 60 and 40 %, each with its tails."""
    weft = measured(100_000, "Computed.", 90_000, 110_000)
    made = by_colour(weft, [ColourPart("ash", 60, 3), ColourPart("madder", 40, 5)]).values()
    for ends, total in (("low", 90_000), ("value", 100_000), ("high", 110_000)):
        assert sum(getattr(laid, ends) for laid in made) == pytest.approx(total + 8 * 50)


def test_a_hem_is_woven_like_the_rest() -> None:
    """By hand: 20 mm at each end of 200 mm are a fifth of the weft more."""
    hem = hem_length(20, measured(100_000, "Computed.", 90_000, 110_000), given_figure(200))
    assert (hem.low, hem.value, hem.high) == pytest.approx((18_000, 20_000, 22_000))


@pytest.mark.parametrize(("grams", "count"), [(399, 1), (400, 0), (1200, 0), (2441, 0), (2500, 0), (2501, 1)])
def test_an_unlikely_weight_by_area_is_a_note(grams: float, count: int) -> None:
    """Between 400 and 2500 g/m2, about P. Collingwood's heavy rug of 2441 (second-hand) and a light tapestry; ours."""
    assert len(area_notes(given_figure(grams))) == count


def test_the_weight_by_area_by_hand() -> None:
    """Beads of 2 mm, a tenth of take-up, 500 tex: 1000 picks of 1.1 m in a square metre are 1.1 km of it, 550 g."""
    bead, more = measured(2, "Counted.", 1, 4), given_figure(0.1)
    found = by_area(bead, more, 500)
    assert (found.low, found.value, found.high) == pytest.approx((275, 550, 1100))
