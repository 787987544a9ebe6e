"""The room a frame leaves, through the kit: greatest height, fringe, stick and leashes."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.kit.kit import read_kit
from layout.plan import plan
from layout.values.errors import FieldError
from layout.values.quantity import Origin
from tests.plain_kits import FLAT, LEFT_OUT, METRICS, changed
from tests.yarn_kits import STATED, amounts_of

ROOM_STATED = {
    "room__heading": "15 mm", "room__hand": "70 mm", "room__slope": 0.5, "room__stick_past": "30 mm",
    "room__leash_reach": "100 mm", "room__leash_knot": "50 mm",
}  # fmt: skip


def refused(base: dict[str, Any] = STATED, **changes: object) -> str:
    """What the plan of a kit is refused with."""
    with pytest.raises(FieldError) as caught:
        plan(read_kit(changed(base, **changes), METRICS))
    return str(caught.value)


def test_the_weavable_height_by_hand() -> None:
    """600 mm less two bars of 20, two headings of 15, layers 20 mm apart at 1 in 2 (20 an end), 70 for the hand."""
    found = amounts_of(**ROOM_STATED).weavable_height_mm
    assert (found.value, found.origin) == (600 - 40 - 30 - 40 - 70, Origin.COMPUTED)


def test_what_is_not_stated_is_assumed_and_said() -> None:
    """Headings of 3, a slope of 1 in 4 and 80 mm for the hand (all our own guesses): 600 - 40 - 6 - 80 - 80."""
    found = amounts_of()
    assert (found.weavable_height_mm.value, found.weavable_height_mm.origin) == (394, Origin.ASSUMED)
    assert any("80 mm of open warp" in reason for reason in found.assumptions)


def test_a_height_beyond_that_is_refused_with_the_greatest() -> None:
    """The limit itself is woven; a millimetre more is refused, and the example works."""
    assert amounts_of(weaving__height="394 mm")
    said = refused(weaving__height="395 mm")
    assert said.startswith("weaving.height: needs at most 394 mm (")
    assert said.endswith('for example height = "394 mm"')
    inches = refused(weaving__height="16 in")
    assert 'height = "15 1/2 in"' in inches
    assert amounts_of(weaving__height="15 1/2 in")


def test_a_needle_takes_less_room_than_a_hand() -> None:
    """40 mm less (our own choice); the refusal offers it, what it offers fits, and it is not offered twice."""
    said = refused(weaving__height="395 mm")
    assert 'or 434 mm if you write room.worked = "with a needle"' in said
    needle = {"room__worked": "with a needle"}
    assert amounts_of(weaving__height="434 mm", **needle).weavable_height_mm.value == 434
    assert "needle" not in refused(weaving__height="435 mm", **needle)
    assert "needle" not in refused(weaving__height="435 mm", room__hand="80 mm")


FITS = "as high as fits"


@pytest.mark.parametrize(("room", "rows"), [({}, 197), ({"heading_rows": 0}, 200), ({"heading": "half hitches"}, 198)])
def test_as_high_as_fits_is_all_that_is_left(room: dict[str, object], rows: int) -> None:
    """600 less two bars of 20, layers of 2 x 40, 80 for the hand, and headings of 3, 0 or 1.5 each; beads of 2 mm."""
    found = amounts_of(weaving__height=FITS, room=room)
    assert found.woven_rows == rows
    assert found.woven_mm[1].value == 2 * rows <= found.weavable_height_mm.value < 2 * rows + 2


def test_as_high_as_fits_is_refused_where_nothing_is_left() -> None:
    """As any height is: bars, headings, spreading layers and the hand take 206 mm."""
    said = refused(frame__outer_height="206 mm", weaving__height=FITS)
    assert said.startswith("frame.outer_height: needs more than 206 mm")
    assert amounts_of(frame__outer_height=said.split('"')[-2], weaving__height=FITS)


@pytest.mark.parametrize("frame", [STATED["frame"], FLAT["frame"] | {"end_width": "40 mm"}], ids=["round", "flat"])
def test_fringes_and_weaving_are_one_pass(frame: dict[str, Any]) -> None:
    """Whatever the bars: all that lies between both outermost lines, half of once round both ends."""
    found = amounts_of(frame=frame, weaving__height="20 cm", warp=LEFT_OUT)
    straight = math.sqrt(found.warp_per_wind_mm.value**2 - 8**2)
    total = found.fringe_near_mm.value + found.woven_mm[1].value + found.fringe_far_mm.value
    assert total == pytest.approx(straight / 2)


@given(st.integers(11, 394), st.integers(11, 60))
def test_the_height_woven_is_in_whole_beads(height: int, beads: int) -> None:
    """Never more than is asked for, never a bead less; fringes share out what is left."""
    counted = {"number": beads, "over": "5 cm"}
    found = amounts_of(weaving__height=f"{height} mm", weft__picks=LEFT_OUT, weft__beads=counted, warp=LEFT_OUT)
    woven, bead = found.woven_mm[1].value, 50 / beads
    assert found.woven_rows == pytest.approx(woven / bead)
    assert height - bead < woven + 1e-9 <= height + 2e-9
    total = found.fringe_near_mm.value + woven + found.fringe_far_mm.value
    assert total == pytest.approx(600 - 20 + math.pi * 20 / 2)


def test_a_frame_that_leaves_nothing_is_refused() -> None:
    """Bars, headings, spreading layers and the hand take 40 + 6 + 80 + 80 mm."""
    said = refused(frame__outer_height="206 mm", weaving__height="10 mm")
    assert said.startswith("frame.outer_height: needs more than 206 mm")
    assert amounts_of(frame__outer_height=said.split('"')[-2], weaving__height="10 mm")


def test_flat_ends_take_their_width() -> None:
    """550 mm less two boards of 40, and 6 + 72 + 80; not stated, they are taken as wide as the sides (30)."""
    low = {"weaving__height": "25 cm"}
    assert amounts_of(FLAT, frame__end_width="40 mm", **low).weavable_height_mm.value == 550 - 80 - 6 - 72 - 80
    found = amounts_of(FLAT, **low).weavable_height_mm
    assert found.value == 550 - 60 - 6 - 72 - 80
    assert any("as wide as its sides" in reason for reason in found.assumptions)


def test_one_layer_needs_no_room_to_come_together() -> None:
    """Between notches all ends lie on the face: 600 less two boards of 30, two headings and the hand."""
    assert amounts_of(frame=NOTCHED).weavable_height_mm.value == 600 - 60 - 6 - 80


PEGGED = {
    "ends": "pegged ends", "thickness": "15 mm", "peg_diameter": "4 mm", "row_distance": "12 mm",
    "edge_distance": "10 mm", "outer_width": "40 cm", "outer_height": "60 cm", "side_width": "30 mm",
}  # fmt: skip
NOTCHED = {
    "ends": "notched ends", "thickness": "12 mm", "notch_width": "1.2 mm", "notch_depth": "6 mm",
    "outer_width": "40 cm", "outer_height": "60 cm", "side_width": "30 mm",
}  # fmt: skip


def test_pegs_reach_further_than_narrow_sides() -> None:
    """Inner pegs end 10 + 12 + 2 mm within the edge: ends taken as wide as sides of 20 mm are still 24; stated, 40."""
    for stated, taken in (({"side_width": "20 mm"}, 24), ({"end_width": "40 mm"}, 40)):
        found = amounts_of(frame=PEGGED | stated)
        assert found.weavable_height_mm.value == 600 - 2 * taken - 6 - 80


@pytest.mark.parametrize(
    ("frame", "beyond"),
    [
        ({**FLAT["frame"], "end_width": "40 mm"}, 36 + (40 - 3) + (18 - 6 + math.pi * 3) / 2),
        (NOTCHED | {"end_width": "40 mm"}, (40 - 6) + (4 + 24) / 2),
        (PEGGED | {"end_width": "40 mm"}, (40 - 24) + math.pi * 4 / 4),
    ],
    ids=["flat", "notched", "pegged"],
)
def test_the_fringe_reaches_half_the_way_round_the_end(frame: dict[str, Any], beyond: float) -> None:
    """By hand: 3 mm of heading, on flat ends 36 mm where layers come together, the board, and half the turn."""
    found = amounts_of(frame=frame, weaving__height="20 cm", warp=LEFT_OUT)
    assert found.fringe_near_mm.value == pytest.approx(3 + beyond)


@pytest.mark.parametrize(
    ("frame", "longer"),
    [(FLAT["frame"], math.pi / 4), (NOTCHED, 3 / 2), (PEGGED, math.pi / 4), (STATED["frame"], math.pi / 4)],
    ids=["flat", "notched", "pegged", "round"],
)
def test_a_thread_goes_round_the_end_along_its_middle(frame: dict[str, Any], longer: float) -> None:
    """By hand, for a thread of 1 mm: half of pi d / 2 at a round turn, half of 3 d at one with four sharp corners."""
    bare, thick = (
        amounts_of(frame=frame, weaving__height="20 cm", warp=warp)
        for warp in (LEFT_OUT, {"wrap": {"turns": 20, "window": "2 cm"}})
    )
    for end in ("fringe_near_mm", "fringe_far_mm"):
        assert getattr(thick, end).value - getattr(bare, end).value == pytest.approx(longer)


@given(st.integers(10, 197).map(lambda beads: 2 * beads))
def test_fringes_and_weaving_share_out_the_warp(height: int) -> None:
    """Both fringes and the weaving are a pass: the height less a bar, and a quarter turn at both ends (pi D / 2)."""
    found = amounts_of(weaving__height=f"{height} mm", warp=LEFT_OUT)
    total = found.fringe_near_mm.value + height + found.fringe_far_mm.value
    assert total == pytest.approx(600 - 20 + math.pi * 20 / 2)
    assert found.fringe_near_mm.value == pytest.approx(3 + 40 + 10 + math.pi * 5)


def test_the_shed_stick_passes_the_sides() -> None:
    """400 mm and 30 mm at each side."""
    assert amounts_of(**ROOM_STATED).shed_stick_mm.value == 460


def test_every_end_of_the_back_layer_has_a_leash() -> None:
    """Half of 60 ends; there and back 100 mm, and 50 mm of knot."""
    tied = amounts_of(**ROOM_STATED).leashes
    assert (tied.number, tied.each.value, tied.together.value) == (30, 250, 7500)


@given(st.integers(0, 60), st.integers(0, 100), st.integers(1, 30))
def test_more_room_for_anything_leaves_less_to_weave(heading: int, hand: int, more: int) -> None:
    """Monotonic in heading and hand room."""
    stated = {"weaving__height": "5 cm", "room__heading": f"{heading} mm", "room__hand": f"{hand} mm"}
    base = amounts_of(**stated).weavable_height_mm.value
    for key, value in (("room__heading", heading), ("room__hand", hand)):
        less = amounts_of(**(stated | {key: f"{value + more} mm"})).weavable_height_mm.value
        assert less == pytest.approx(base - more * (2 if key == "room__heading" else 1))
