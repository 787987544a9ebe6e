"""What can be woven on a frame, and what belongs to it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.quantity import Origin, Quantity, measured
from layout.yardage.weavable import (
    HAND,
    LEASH_KNOT,
    NEEDLE,
    OVERHANG,
    REACH,
    SLOPE,
    RoomTaken,
    apart_zone,
    check_height,
    fringes,
    leashes,
    shed_stick,
    weavable_height,
)


def given_mm(value: float) -> Quantity:
    """A length or share that somebody measured."""
    return measured(value, "Measured.")


_ROOM = RoomTaken(given_mm(36), given_mm(10), given_mm(80))


def test_layers_come_together_at_the_slope() -> None:
    """Similar triangles: layers 20 mm apart each come in 10 mm; at 1 in 4 that takes 40 mm."""
    assert apart_zone(20, measured(0.25, "Tried.")).value == 40
    assert apart_zone(20).origin is Origin.ASSUMED


def test_the_weavable_height_adds_up() -> None:
    """By hand: 360 - 2 x 10 - 2 x 36 - 80 = 188."""
    height = weavable_height(360, _ROOM)
    assert (height.value, height.origin) == (188, Origin.COMPUTED)
    assert weavable_height(360, RoomTaken(given_mm(36), given_mm(10))).origin is Origin.ASSUMED


def test_a_greater_height_is_refused_with_the_greatest() -> None:
    """The sentence names what fits and what it rests on; what fits passes."""
    most = weavable_height(360, _ROOM)
    assert check_height(188, most) == 188
    with pytest.raises(FieldError, match=r"weaving\.height: needs at most 188 mm .*got 188\.5 mm"):
        check_height(188.5, most)


@given(st.floats(10, 500), st.floats(0, 200), st.floats(0, 200), st.floats(0, 100))
def test_fringes_and_weaving_use_up_the_whole_warp(woven: float, near: float, far: float, turn: float) -> None:
    """Both fringes and the weaving make the inner height and one half turn (a quarter turn at each end)."""
    inner = woven + near + far + 1e-6
    one, other = fringes(inner, woven, near, turn)
    assert one.value + other.value + woven == pytest.approx(inner + turn)


def test_a_shed_stick_passes_both_sides() -> None:
    """Common practice, no source: it rests on the frame's sides; here 25 mm past each."""
    assert shed_stick(320, given_mm(25)).value == 370
    assert shed_stick(320).value > 320


@pytest.mark.parametrize(
    ("ends", "face_first", "number"), [(60, True, 30), (60, False, 30), (61, True, 30), (61, False, 31)]
)
def test_every_back_end_has_a_leash(ends: int, face_first: bool, number: int) -> None:
    """Of an odd number the layer of the first pass has one more (count on fingers: F B F, B F B)."""
    assert leashes(ends, face_first).number == number


def test_leash_cord_adds_up() -> None:
    """By hand: there and back 100 mm and 50 mm of knot, thirty times."""
    cord = leashes(60, True, given_mm(100), given_mm(50))
    assert (cord.each.value, cord.together.value) == (250, 7500)
    assert (cord.each.origin, leashes(60).each.origin) == (Origin.COMPUTED, Origin.ASSUMED)


@pytest.mark.parametrize(
    ("figure", "said"),
    [
        (NEEDLE, "40 mm"),
        (SLOPE, "1 in 4"),
        (HAND, "80 mm"),
        (OVERHANG, "40 mm"),
        (REACH, "90 mm"),
        (LEASH_KNOT, "60 mm"),
    ],
)
def test_an_assumed_default_is_what_its_sentence_says(figure: Quantity, said: str) -> None:
    """The number and its words agree, so that what is printed is what was computed with."""
    first, *_, last = said.split()
    assert said in figure.reason
    assert figure.value == float(first) / (float(last) if last.isdigit() else 1)


def test_a_weaving_may_fill_all_there_is() -> None:
    """Nothing left above it: the far fringe is a quarter turn."""
    assert fringes(360, 320, 40, 30)[1].value == 15
