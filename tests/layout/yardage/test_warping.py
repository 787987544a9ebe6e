"""How much warp a frame takes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.quantity import Origin, Quantity, measured
from layout.yardage.warp_thread import (
    KNOT,
    SPARE,
    STRETCH,
    TAIL,
    warp_thread,
    weight,
)
from layout.yarns.yarn import yarn_of

_NONE = measured(0.0, "None.")


def given_mm(value: float) -> Quantity:
    """A length or share that somebody measured."""
    return measured(value, "Measured.")


def test_528_ends_of_four_yards_weigh_as_the_handbook_says() -> None:
    """Weaving handbook: 528 ends x 4 yd of 3360 yd/lb cotton are 0.629 lb (of 453.59237 g, by definition)."""
    grams = weight(given_mm(528 * 4 * 914.4), yarn_of(3360, "yd/lb").tex)
    assert grams.value / 453.59237 == pytest.approx(0.629, abs=0.0005)


def test_warp_thread_adds_up_by_hand() -> None:
    """Path 1020 stretched by 2 % is 1000 of thread; 100 of heading, two knots of 50, and 10 % spare: 1320."""
    stretch, spare = measured(0.02, "Pulled."), measured(0.1, "Own.")
    thread = warp_thread(given_mm(1020), given_mm(100), 2, given_mm(50), stretch, spare)
    assert thread.value == pytest.approx(1320)
    assert thread.origin is Origin.COMPUTED


def test_what_is_assumed_is_said() -> None:
    """With nothing stated, the spare and the stretch stand among the assumptions of the total."""
    thread = warp_thread(given_mm(10_000), given_mm(1000))
    assert thread.origin is Origin.ASSUMED
    assert {SPARE.reason, STRETCH.reason} <= set(thread.assumptions)
    assert weight(thread, yarn_of(200, "tex").tex).origin is Origin.ASSUMED


@given(st.floats(100, 1e6), st.floats(0, 0.5))
def test_more_stretch_takes_less_thread(path: float, stretch: float) -> None:
    """Stretched thread covers more, so less leaves the ball; without stretch, knots or spare it is the path."""
    plain = warp_thread(given_mm(path), _NONE, 0, _NONE, _NONE, _NONE).value
    pulled = warp_thread(given_mm(path), _NONE, 0, _NONE, measured(stretch, "Pulled."), _NONE).value
    assert plain == pytest.approx(path)
    assert pulled * (1 + stretch) == pytest.approx(path)


@pytest.mark.parametrize(
    ("figure", "said"), [(KNOT, "100 mm"), (TAIL, "150 mm"), (SPARE, "10 %"), (STRETCH, "No stretch")]
)
def test_an_assumed_default_is_what_its_sentence_says(figure: Quantity, said: str) -> None:
    """The number and its words agree, so that what is printed is what was computed with."""
    assert said in figure.reason
    number = {"%": 100 * figure.value, "mm": figure.value}.get(said.split()[-1], figure.value)
    assert number == (float(said.split()[0]) if said[0].isdigit() else 0)


def test_reasons_carry_the_right_numbers() -> None:
    """By hand: a kilometre of 250 tex; 10 % spare."""
    assert weight(given_mm(1_000_000), yarn_of(250, "tex").tex).reason == "1000 m of 250 tex."
    assert "10 % spare" in warp_thread(given_mm(1000), _NONE).reason


@given(st.floats(0, 0.02), st.floats(100, 1e5))
def test_a_stretch_that_was_measured_only_narrows(stretch: float, path: float) -> None:
    """Not stated it is at most 2 %, likely none; whatever is measured below that lies within."""
    wide = warp_thread(given_mm(path), given_mm(100))
    known = warp_thread(given_mm(path), given_mm(100), stretch=measured(stretch, "Pulled."))
    assert known.exact
    assert wide.low * (1 - 1e-12) <= known.value <= wide.high * (1 + 1e-12)
