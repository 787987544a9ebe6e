"""The fan, against a computation of its own, by hand, and by what must hold of every warp."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from kits import FLAT, NOTCHED, PEGGED, plan_of

from layout.estimate.headings import heading_height
from layout.parts.guide_words import leaves_thickness_out, lies
from layout.plan import Plan
from layout.warps.fan import TOLERANCE, fan_of, way_between
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SETTS = st.sampled_from(["2.5 ends/cm", "6 epi", "7 1/2 epi", "3 per cm", "12 ends/cm"])
HEIGHTS = st.fractions(0, 1, max_denominator=500)
STARTS = st.sampled_from(["left", "right"])
FIRSTS = st.sampled_from(["face", "back"])


def planned(sett: str = "2.5 ends/cm", **weaving: str) -> Plan:
    """A wound warp."""
    return plan_of({"sett.given": sett, **{f"weaving.{key}": value for key, value in weaving.items()}})


def astray(of: Plan, t: Fraction) -> float:
    """How far the worst end is off its place at `t`, 0 at the near marks and 1 at the far ones."""
    fan = fan_of(of.kit.frame, of.warp)
    return fan.off(fan.high / 2 + (float(t) - 0.5) * way_between(of.kit.frame))


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
    worst = max(abs(x - at) for x, at in zip(followed(of, t), wanted, strict=True))
    assert astray(of, t) == pytest.approx(float(worst))


@given(SETTS, HEIGHTS, STARTS, FIRSTS)
def test_a_shared_slant_is_even_at_half_height(sett: str, t: Fraction, start: str, first: str) -> None:
    """Nothing is off in the middle, as much above it as below it, half a pitch at the marks, and never more."""
    of = planned(sett, start=start, first_pass=first)
    assert astray(of, Fraction(1, 2)) == 0
    assert astray(of, t) == pytest.approx(astray(of, 1 - t)) == pytest.approx(abs(2 * t - 1) * of.warp.pitch / 2)
    assert astray(of, Fraction(0)) == pytest.approx(of.warp.pitch / 2)


@given(SETTS, HEIGHTS, STARTS, FIRSTS)
def test_a_straight_face_leaves_the_slant_to_the_back(sett: str, t: Fraction, start: str, first: str) -> None:
    """The back then carries the whole slant: twice the fan of a shared one, still none at half height."""
    straight = planned(sett, start=start, first_pass=first, slant="face straight")
    assert astray(straight, t) == pytest.approx(2 * astray(planned(sett, start=start, first_pass=first), t))


@given(SETTS, st.floats(0.01, 1), st.floats(0, 550), STARTS)
def test_settled_bounds_the_tolerance(sett: str, share: float, height: float, start: str) -> None:
    """Inside the heights stated no end is off by more than the tolerance, outside of them one is."""
    of = planned(sett, start=start)
    fan = replace(fan_of(of.kit.frame, of.warp), tolerance=share * float(of.warp.pitch))
    assume(abs(fan.off(height) - fan.tolerance) > 1e-6)
    span = fan.needs_no_fingers()
    assert span is not None
    assert (span[0] <= height <= span[1]) == (fan.off(height) <= fan.tolerance)


def test_by_hand() -> None:
    """2.5 ends per cm on bars of 16 mm, a frame 550 mm high: L = 550 - 16 + 8 pi = 559.13 mm from mark to mark.

    The near heading lies 16 + 2 x 16 = 48 mm from the outer edge, where t = 1/2 - 227 / 559.13 = 0.094: an end is off
    by 4 mm x 0.406 = 1.62 mm. A tenth of the pitch is reached at 275 - 55.9 = 219.1 mm.
    """
    of = plan_of({"room": {}})
    fan = fan_of(of.kit.frame, of.warp)
    assert way_between(of.kit.frame) == pytest.approx(559.1327, abs=1e-4)
    assert heading_height(of.kit, of.amounts.woven_mm[1], "near") == 48
    assert fan.off(48) == pytest.approx(1.6239, abs=1e-4)
    free = fan.needs_no_fingers()
    assert free == pytest.approx((219.0867, 330.9133), abs=1e-4)


@pytest.mark.parametrize(("thickness", "radius"), [(18, 0), (18, 4), (10, 5)])
def test_the_way_over_flat_ends(thickness: float, radius: float) -> None:
    """From the middle of one edge over the face to the middle of the other: half of shapely's rounded board."""
    of = plan_of(FLAT | {"frame.thickness": f"{thickness} mm", "frame.edge_radius": f"{radius} mm"})
    core = shapely.box(0, 0, 550 - 2 * radius, thickness - 2 * radius)
    around = core.buffer(radius, quad_segs=2000).exterior.length if radius else core.exterior.length
    assert way_between(of.kit.frame) == pytest.approx(around / 2, abs=1e-4)


def test_the_way_round_bars() -> None:
    """From outermost line to outermost line is half an open belt round both bars, by shapely's buffered segment."""
    of = planned()
    belt = shapely.LineString([(0, 0), (550 - 16, 0)]).buffer(8, quad_segs=2000).exterior.length
    assert way_between(of.kit.frame) == pytest.approx(belt / 2, abs=1e-4)


def test_notches_hold_the_ends_apart() -> None:
    """With a notch for every end nothing is ever off its place; two ends to a notch stand in pairs, a pitch off."""
    single, pairs = plan_of(NOTCHED), plan_of(NOTCHED | {"frame.notch_density": "2 per cm", "sett.given": "4 per cm"})
    assert astray(single, Fraction(0)) == 0
    assert fan_of(single.kit.frame, single.warp).needs_no_fingers() == (0, 550)
    assert astray(pairs, Fraction(1)) == pytest.approx(pairs.warp.pitch)
    assert astray(pairs, Fraction(1, 2)) == 0


def thread(hundredths: int) -> dict[str, object]:
    """What a kit says of a warp so thick when it is wrapped."""
    return {"warp": {"wrap": {"turns": 100, "window": f"{hundredths} mm"}}}


def test_pegs_and_thread_as_thick_as_the_pitch_hold_the_ends_parallel() -> None:
    """Both together one pitch keep the ends where they should be; thinner ones let them off by half the rest."""
    for stated in ({"frame.peg_diameter": "4 mm"}, {"frame.peg_diameter": "3.2 mm", **thread(80)}):
        of = plan_of(PEGGED | stated)
        fan = fan_of(of.kit.frame, of.warp)
        assert fan.off(100) == pytest.approx(0, abs=1e-9)
        assert fan.needs_no_fingers() == (0, 550)
        assert not any("exceed" in warning for warning in of.warnings)
    thin = plan_of(PEGGED | thread(50))
    assert max(fan_of(thin.kit.frame, thin.warp).off(y) for y in (10, 540)) == pytest.approx((4 - 3) / 2, rel=0.05)
    thick = plan_of(PEGGED | {"frame.peg_diameter": "3.2 mm", **thread(81)})
    assert any("(4.01 mm) exceed the pitch (4 mm)" in warning for warning in thick.warnings)


def test_a_thread_may_make_all_pushing_needless() -> None:
    """Pegs of 1.6 mm at 4 ends per cm: with a thread of 0.8 mm an end is (2.5 - 2.4) / 2 off at the pegs, a fiftieth of
    the pitch, and needs no push; without one it would be (2.5 - 1.6) / 2.
    """
    pegs = PEGGED | {"sett.given": "4 per cm", "frame.peg_diameter": "1.6 mm"}
    bare, tied = plan_of(pegs), plan_of(pegs | thread(80))
    for of, off in ((bare, 0.45), (tied, 0.05)):
        assert fan_of(of.kit.frame, of.warp).off(10) == pytest.approx(off, rel=0.05)
        assert of.warp.passes[0].near == of.warp.near[0] + Fraction(5, 4) - Fraction(off).limit_denominator(100)
    assert fan_of(tied.kit.frame, tied.warp).needs_no_fingers() == (0, 550)
    assert lies(tied, "near").off == ""
    assert lies(bare, "near").off
    assert leaves_thickness_out(bare)
    assert not leaves_thickness_out(tied)


@given(
    st.sampled_from(["2.5 per cm", "1 per cm", "0.2 per cm"]),
    st.integers(0, 100),
    st.sampled_from(["left", "right"]),
    st.sampled_from(["near end", "far end"]),
    st.integers(40, 510),
)
def test_between_pegs_an_end_is_the_line_that_touches_both(
    sett: str, thick: int, start: str, tie_off: str, height: int
) -> None:
    """shapely's lines on the courses of the fan lie D / 2 from the centres of both pegs, and never nearer to any peg of
    either end; at every height the worst of all passes is what is said.
    """
    of = plan_of(PEGGED | thread(thick or 1) | {"sett.given": sett, "weaving.start": start, "weaving.tie_off": tie_off})
    warp, fan = of.warp, fan_of(of.kit.frame, of.warp)
    radius = (2.5 + (thick or 1) / 100) / 2
    low = [shapely.Point(warp.toward * float(x), 22 - 12 * (j % 2)) for j, x in enumerate(warp.near)]
    high = [shapely.Point(warp.toward * float(x), 528 + 12 * (j % 2)) for j, x in enumerate(warp.far)]
    worst = 0.0
    for k in range(min(warp.ends, 8)):
        pegs, wanted = (low[(k + 1) // 2], high[k // 2]), float((k + Fraction(1, 2)) * warp.pitch - warp.width / 2)
        touching = [
            shapely.LineString([(wanted + off - 275 * more, 0), (wanted + off + 275 * more, 550)])
            for off, more in fan.courses
        ]
        own = [line for line in touching if all(abs(line.distance(peg) - radius) < 1e-9 for peg in pegs)]
        side = -1 if k % 2 else 1
        own = [line for line in own if side * (line.interpolate(line.project(pegs[0])).x - pegs[0].x) > 0]
        assert own
        level = shapely.LineString([(-9999, height), (9999, height)])
        worst = max(worst, abs(own[0].intersection(level).x - wanted))
    assert fan.off(height) == pytest.approx(worst, abs=1e-6)


def test_nowhere_settled() -> None:
    """Where ends never come to their places, no height is said."""
    of = planned()
    passes = tuple(each._replace(near=each.near + 3, far=each.far + 3) for each in of.warp.passes)
    off = replace(of.warp, passes=passes)
    assert fan_of(of.kit.frame, off).needs_no_fingers() is None
    still = replace(off, passes=tuple(each._replace(far=each.near) for each in passes))
    assert fan_of(of.kit.frame, still).needs_no_fingers() is None


@pytest.mark.parametrize("changes", [{}, FLAT, NOTCHED, PEGGED, {"room": {"heading": "5 mm", "slope": 0.5}}])
def test_headings_lie_in_the_frame(changes: dict[str, object]) -> None:
    """The far heading lies the weaving and two headings above the near one, and both lie inside the frame."""
    of = plan_of({"room": {}} | changes)
    near, far = (heading_height(of.kit, of.amounts.woven_mm[1], end) for end in ENDS)
    stated = of.kit.amounts.room.heading
    heading = 3.0 if stated is None else float(stated.mm)
    assert far - near == pytest.approx(of.amounts.woven_mm[1].value + 2 * heading)
    assert 16 <= near < far < 550 - 16


def test_the_tolerance_is_a_tenth() -> None:
    """The number is the one that the guides say in words."""
    assert Fraction(1, 10) == TOLERANCE
    assert math.isclose(float(TOLERANCE), 0.1)
