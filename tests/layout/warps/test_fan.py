"""The fan, against a reckoning of its own, by hand, and by what must hold of every warp."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from kits import FLAT, NOTCHED, PEGGED, plan_of

from layout.plan import Plan
from layout.reckoning.headings import heading_height
from layout.warps.fan import TOLERANCE, Fan, astray, fan_of, settled
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SETTS = st.sampled_from(["2.5 ends/cm", "6 epi", "7 1/2 epi", "3 per cm", "12 ends/cm"])
HEIGHTS = st.fractions(0, 1, max_denominator=500)
STARTS = st.sampled_from(["left", "right"])
FIRSTS = st.sampled_from(["face", "back"])


def planned(sett: str = "2.5 ends/cm", **weaving: str) -> Plan:
    """A wound warp."""
    return plan_of({"sett.given": sett, **{f"weaving.{key}": value for key, value in weaving.items()}})


def followed(of: Plan, t: Fraction) -> list[Fraction]:
    """Where every end lies at `t`, by the formulas for a wound frame: the face at A_j + s P t, the back at
    A_j + P - (1 - s) P t, A_j = -W/2 + (1/2 - s) P/2 + j P (wound from the left, the face first).
    """
    width, pitch = of.warp.width, 2 * of.warp.pitch
    share = Fraction(1, 2) if of.kit.weaving.slant == "shared" else Fraction(0)
    ends = []
    for j in range(of.warp.ends // 2):
        start = -width / 2 + (Fraction(1, 2) - share) * pitch / 2 + j * pitch
        ends += [start + share * pitch * t, start + pitch - (1 - share) * pitch * t]
    return ends


@given(SETTS, HEIGHTS, st.sampled_from(["shared", "face straight"]))
def test_the_fan_is_what_each_end_makes_it(sett: str, t: Fraction, slant: str) -> None:
    """The worst of all ends, each followed by its own formula, against its even place (k + 1/2) p - W/2."""
    of = planned(sett, slant=slant)
    pitch, width = of.warp.pitch, of.warp.width
    wanted = [(k + Fraction(1, 2)) * pitch - width / 2 for k in range(of.warp.ends)]
    assert astray(of.warp, t) == max(abs(x - at) for x, at in zip(followed(of, t), wanted, strict=True))


@given(SETTS, HEIGHTS, STARTS, FIRSTS)
def test_a_shared_slant_is_even_at_half_height(sett: str, t: Fraction, start: str, first: str) -> None:
    """Nothing is off in the middle, as much above it as below it, half a pitch at the marks, and never more."""
    warp = planned(sett, start=start, first_pass=first).warp
    assert astray(warp, Fraction(1, 2)) == 0
    assert astray(warp, t) == astray(warp, 1 - t) == abs(2 * t - 1) * warp.pitch / 2
    assert astray(warp, Fraction(0)) == warp.pitch / 2


@given(SETTS, HEIGHTS, STARTS, FIRSTS)
def test_a_straight_face_leaves_the_slant_to_the_back(sett: str, t: Fraction, start: str, first: str) -> None:
    """The back then carries the whole slant: twice the fan of a shared one, still none at half height."""
    straight = planned(sett, start=start, first_pass=first, slant="face straight").warp
    assert astray(straight, t) == 2 * astray(planned(sett, start=start, first_pass=first).warp, t)


@given(SETTS, st.fractions(Fraction(1, 100), 1, max_denominator=200), HEIGHTS, STARTS)
def test_settled_bounds_the_tolerance(sett: str, share: Fraction, t: Fraction, start: str) -> None:
    """Inside the heights told no end is off by more than the tolerance, outside of them one is."""
    warp = planned(sett, start=start).warp
    span = settled(warp, share * warp.pitch)
    assert span is not None
    assert (span[0] <= t <= span[1]) == (astray(warp, t) <= share * warp.pitch)


def test_by_hand() -> None:
    """2.5 ends per cm on bars of 16 mm, a frame 550 mm high: L = 550 - 16 + 8 pi = 559.13 mm from mark to mark.

    The near heading lies 16 + 2 x 16 = 48 mm from the outer edge, where t = 1/2 - 227 / 559.13 = 0.094: an end is off
    by 4 mm x 0.406 = 1.62 mm. A tenth of the pitch is reached at 275 - 55.9 = 219.1 mm.
    """
    of = plan_of({"room": {}})
    fan = fan_of(of.kit.frame, of.warp)
    assert fan.way == pytest.approx(559.1327, abs=1e-4)
    assert heading_height(of.kit, "near") == 48
    assert fan.off(48) == pytest.approx(1.6239, abs=1e-4)
    free = fan.needs_no_fingers()
    assert free == pytest.approx((219.0867, 330.9133), abs=1e-4)


@pytest.mark.parametrize(("thickness", "radius"), [(18, 0), (18, 4), (10, 5)])
def test_the_way_over_flat_ends(thickness: float, radius: float) -> None:
    """From the middle of one edge over the face to the middle of the other: half of shapely's rounded board."""
    of = plan_of(FLAT | {"frame.thickness": f"{thickness} mm", "frame.edge_radius": f"{radius} mm"})
    core = shapely.box(0, 0, 550 - 2 * radius, thickness - 2 * radius)
    around = core.buffer(radius, quad_segs=2000).exterior.length if radius else core.exterior.length
    assert fan_of(of.kit.frame, of.warp).way == pytest.approx(around / 2, abs=1e-4)


def test_the_way_round_bars() -> None:
    """From outermost line to outermost line is half an open belt round both bars, by shapely's buffered segment."""
    of = planned()
    belt = shapely.LineString([(0, 0), (550 - 16, 0)]).buffer(8, quad_segs=2000).exterior.length
    assert fan_of(of.kit.frame, of.warp).way == pytest.approx(belt / 2, abs=1e-4)


def test_notches_hold_the_ends_apart() -> None:
    """With a notch for every end nothing is ever off its place; two ends to a notch stand in pairs, a pitch off."""
    single, pairs = plan_of(NOTCHED), plan_of(NOTCHED | {"frame.notch_density": "2 per cm", "sett.given": "4 per cm"})
    assert astray(single.warp, Fraction(0)) == 0
    assert fan_of(single.kit.frame, single.warp).needs_no_fingers() == (0, 550)
    assert astray(pairs.warp, Fraction(1)) == pairs.warp.pitch
    assert astray(pairs.warp, Fraction(1, 2)) == 0


def test_pegs_as_thick_as_the_pitch_hold_the_ends_parallel() -> None:
    """A peg of one pitch keeps its two ends where they should be; a thinner one lets them off by half the rest."""
    thick, thin = plan_of(PEGGED | {"frame.peg_diameter": "4 mm"}), plan_of(PEGGED)
    assert astray(thick.warp, Fraction(1, 3)) == 0
    assert astray(thin.warp, Fraction(0)) == Fraction(4 - Fraction(5, 2)) / 2


def test_staggered_pegs_are_told_by_the_worst() -> None:
    """Pegs in two rows 12 mm apart: at every height no pass, followed from peg to peg, is further off than is said."""
    of = plan_of(PEGGED)
    fan = fan_of(of.kit.frame, of.warp)
    for height in range(40, 520, 7):
        for k, (each, at) in enumerate(zip(of.warp.passes, of.warp.end_positions, strict=True)):
            low = 10 + (0 if (k + 1) // 2 % 2 else 12)
            high = 550 - 10 - (0 if k // 2 % 2 else 12)
            t = (height - low) / (high - low)
            assert abs(float(each.near) + t * float(each.far - each.near) - float(at)) <= fan.off(height) + 1e-9


def test_nowhere_settled() -> None:
    """Where ends never come to their places, no height is told."""
    warp = planned().warp
    passes = tuple(each._replace(near=each.near + 3, far=each.far + 3) for each in warp.passes)
    off = replace(warp, passes=passes)
    assert settled(off, Fraction(1, 10)) is None
    assert Fan(off, 550.0, 559.0).needs_no_fingers() is None


@pytest.mark.parametrize("changes", [{}, FLAT, NOTCHED, PEGGED, {"room": {"heading": "5 mm", "slope": 0.5}}])
def test_headings_lie_in_the_frame(changes: dict[str, object]) -> None:
    """The far heading lies the weaving and two headings above the near one, and both lie inside the frame."""
    of = plan_of({"room": {}} | changes)
    near, far = (heading_height(of.kit, end) for end in ENDS)
    told = of.kit.amounts.room.heading
    heading = 10.0 if told is None else float(told.mm)
    assert far - near == pytest.approx(float(of.kit.weaving.height.mm) + 2 * heading)
    assert 16 <= near < far < 550 - 16


def test_the_tolerance_is_a_tenth() -> None:
    """The number is the one that the guides say in words."""
    assert Fraction(1, 10) == TOLERANCE
    assert math.isclose(float(TOLERANCE), 0.1)
