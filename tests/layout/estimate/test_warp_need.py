"""The warp a kit takes, through the kit, against geometry and handbooks."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from layout.kit.kit import read_kit
from layout.plan import plan
from layout.values.quantity import Origin
from tests.plain_kits import FLAT, LEFT_OUT, METRICS, changed
from tests.yarn_kits import STATED, amounts_of

NO_YARN = {"warp": LEFT_OUT, "weft": LEFT_OUT}
ONE_MM = {"wrap": {"turns": 20, "window": "2 cm"}}
BARE = {"warp__spare": "0 %", "warp__knot": "0 mm", "warp__stretch": "0 %"}
NOTCHED = {
    "ends": "notched ends", "thickness": "12 mm", "notch_width": "1.2 mm", "notch_depth": "6 mm",
    "outer_width": "40 cm", "outer_height": "55 cm", "side_width": "30 mm",
}  # fmt: skip
PEGGED = {
    "ends": "pegged ends", "thickness": "15 mm", "peg_diameter": "4 mm", "row_distance": "12 mm",
    "edge_distance": "10 mm", "outer_width": "40 cm", "outer_height": "55 cm", "side_width": "30 mm",
}  # fmt: skip


def belt(centres: float, across: float) -> float:
    """An open belt round two equal pulleys, as shapely draws it."""
    return shapely.LineString([(0, 0), (centres, 0)]).buffer(across / 2, quad_segs=4096).exterior.length


def test_a_wind_round_bars_is_shapelys_belt_along_the_slant() -> None:
    """The outline of the buffered segment between the bars' centres, thread and all, unrolled."""
    found = amounts_of()
    thread = 2  # mm, as it was wrapped, which 1000 tex of cotton allow
    assert found.warp_per_wind_mm.value == pytest.approx(math.hypot(belt(580, 20 + thread), 8), rel=1e-7)
    assert found.warp_per_wind_mm.origin is Origin.COMPUTED


def test_a_wind_over_flat_ends_is_shapelys_grown_box() -> None:
    """A board frame of 550 x 18 mm with edges of 3 mm: a box of 544 x 12 grown by 3, by a thread of no thickness."""
    found = amounts_of(FLAT, sett={"given": "2.5 per cm"})
    outline = shapely.box(3, 3, 547, 15).buffer(3, quad_segs=4096).exterior.length
    assert found.warp_per_wind_mm.value == pytest.approx(math.hypot(outline, 8), rel=1e-7)
    assert found.warp_per_wind_mm.origin is Origin.ASSUMED  # nobody said how thick the thread is


def test_between_notches_two_ends_go_there_and_back() -> None:
    """By hand: 538 mm between the notch grounds up and down, and 4 mm along and 12 mm deep each way at both teeth.

    A thread of 1 mm adds one to each pass, and two to each turn: 6 mm.
    """
    found = amounts_of(frame=NOTCHED, **NO_YARN)
    assert found.warp_per_wind_mm.value == 2 * (538 + 4 + 24)
    assert found.warp_per_wind_mm.origin is Origin.ASSUMED
    thick = amounts_of(frame=NOTCHED, warp=ONE_MM)
    assert thick.warp_per_wind_mm.value == pytest.approx(2 * (539 + 4 + 26))
    assert thick.warp_per_wind_mm.origin is Origin.COMPUTED
    path = 60 * 538 + 59 * (4 + 24)
    bare = amounts_of(frame=NOTCHED, warp={"spare": "0 %", "knot": "0 mm", "stretch": "0 %"}, weft=LEFT_OUT)
    assert bare.warp_total_m.value - bare.heading_thread_m.value == pytest.approx(path / 1000)


def test_two_ends_to_a_notch_slant_back() -> None:
    """By hand: 15 notches per 12 cm carry two ends each; one pass upright, the other 8 mm aside, turns of 8 mm."""
    frame = NOTCHED | {"notch_density": "1.25 per cm"}
    found = amounts_of(frame=frame, **NO_YARN)
    assert found.warp_per_wind_mm.value == pytest.approx(538 + math.hypot(538, 8) + 2 * (8 + 24))


def test_between_pegs_as_thick_as_the_pitch_ends_stand_upright() -> None:
    """By hand: passes of 506, 518, 530, 518 mm between staggered pegs of 4 mm, and half a circle round each."""
    found = amounts_of(frame=PEGGED, **NO_YARN)
    assert found.warp_per_wind_mm.value == pytest.approx((506 + 518 + 530 + 518) / 2 + 2 * math.pi * 2)


def test_thread_too_thick_for_its_pegs_is_refused() -> None:
    """Two pitches are 8 mm: a peg of 6 mm with 3 mm of thread does not stand beside the next."""
    values = changed(STATED, frame=PEGGED | {"peg_diameter": "6 mm"}, warp={"wrap": {"turns": 4, "window": "12 mm"}})
    needs = r"frame\.peg_diameter: needs peg and thread together .* 8 mm, got 9 mm; .* peg_diameter = \"5 mm\""
    with pytest.raises(ValueError, match=needs):
        plan(read_kit(values, METRICS))


def test_doubled_ends_take_twice_the_thread() -> None:
    """Every end of two threads takes two ways; two doubled ends at each side of 60 add 4 threads."""
    one, two, outer = (
        amounts_of(**BARE, weaving__width="24 cm", weaving__height="20 cm", **changes)
        for changes in ({}, {"weaving__doubled_warp": True}, {"weaving__doubled_selvedges": 2})
    )
    way = one.warp_total_m.value - one.heading_thread_m.value
    assert outer.warp_total_m.value - outer.heading_thread_m.value == pytest.approx(way * 64 / 60)
    assert two.warp_total_m.value - two.heading_thread_m.value == pytest.approx(2 * way, rel=0.003)  # a thicker end


def test_heading_rows_are_longer_than_the_rule_of_thumb() -> None:
    """Common practice, no source: three outer widths and 15 cm of tail, for rows at one end: 3 x 40 + 15 cm."""
    found = amounts_of(weaving__width="16 cm").heading_thread_m
    assert 1.35 / 2 < found.value / 2 < 1.35 * 1.1
    assert found.origin is Origin.ASSUMED


def test_no_rows_and_half_hitches_have_their_own_thread() -> None:
    """Nothing without rows; twice as many rows take nearly twice as much; half hitches 2.5 to 4.5 widths."""
    of = {rows: amounts_of(room={"heading_rows": rows}).heading_thread_m.value for rows in (0, 2, 4)}
    assert of[0] == 0
    assert 1.5 * of[2] < of[4] < 2 * of[2]
    hitched = amounts_of(room={"heading": "half hitches"}, warp__tail="0 mm")
    assert 2 * 2.5 * 0.24 < hitched.heading_thread_m.value < 2 * 4.5 * 0.24
    assert hitched.heading_rows is None


def test_the_warp_weighs_as_long_as_it_is() -> None:
    """By definition of tex: grams are metres times tex over a thousand; here 1000 tex, a gram a metre."""
    found = amounts_of()
    assert found.warp_total_g is not None
    assert found.warp_total_g.value == pytest.approx(found.warp_total_m.value)


def test_spare_knots_and_stretch_add_up_by_hand() -> None:
    """(way / 1.02 + heading + 2 knots of 50 mm) and a quarter more."""
    bare = amounts_of(**BARE, warp__tail="0 mm")
    way, rows = bare.warp_total_m.value - bare.heading_thread_m.value, bare.heading_thread_m.value
    stated = {"warp__spare": "25 %", "warp__knot": "50 mm", "warp__stretch": 0.02, "warp__tail": "0 mm"}
    found = amounts_of(**stated)
    assert found.heading_thread_m.value == pytest.approx(rows + 2 * 0.05)  # a knot at each heading
    assert found.warp_total_m.value == pytest.approx((way / 1.02 + rows + 2 * 0.05 + 0.1) * 1.25)


@given(st.integers(480, 2000), st.integers(1, 500), st.integers(4, 40))
def test_a_higher_frame_and_more_ends_take_more_warp(height: int, more: int, narrower: int) -> None:
    """Monotonic in the height of the frame and in the width of the weaving."""
    base = {"weaving__height": "5 cm", "weaving__width": "20 cm"}
    low = amounts_of(**base, frame__outer_height=f"{height} mm")
    high = amounts_of(**base, frame__outer_height=f"{height + more} mm")
    assert high.warp_per_wind_mm.value > low.warp_per_wind_mm.value
    narrow = amounts_of(**(base | {"weaving__width": f"{200 - narrower} mm"}), frame__outer_height=f"{height} mm")
    assert high.warp_total_m.value > low.warp_total_m.value >= narrow.warp_total_m.value


def test_a_warp_too_thick_to_be_woven_over_itself_still_has_its_length() -> None:
    """6000 tex of cotton are 2.9 mm thick: twice that does not fit 4 mm, so the heading's take-up is assumed."""
    found = amounts_of(warp__count=60, warp__wrap=LEFT_OUT)
    assert found.heading_thread_m.origin is Origin.ASSUMED
    assert found.warp_total_g is not None
