"""Warps between nails in a single row, against shapely's hulls and lines, and what is refused and warned of."""

from __future__ import annotations

import itertools
import math
from fractions import Fraction

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from kits import NAILS, plan_of

from layout.estimate.thread_path import thread_path
from layout.frames.kinds.nails import NailEnd
from layout.values.errors import FieldError
from layout.values.quantity import measured
from layout.warps.fan import fan_of

_FINE = 500  # segments in a quarter circle: an arc is four parts in ten million short


def thread(hundredths: int) -> dict[str, object]:
    """What a kit says of a warp so thick when it is wrapped."""
    return {"warp": {"wrap": {"turns": 100, "window": f"{hundredths} mm"}}}


def taut(nails: list[tuple[float, float]], radius: float) -> float:
    """The way of a taut thread over `nails` by shapely.

    It crosses halfway between two nails; from one such point to the next it follows the hull of both and of the nail.
    """
    crossings = [((a + c) / 2, (b + d) / 2) for (a, b), (c, d) in itertools.pairwise(nails)]
    way = sum(
        math.sqrt(math.dist(nail, crossing) ** 2 - radius**2)
        for nail, crossing in ((nails[0], crossings[0]), (nails[-1], crossings[-1]))
    )
    for nail, (before, after) in zip(nails[1:-1], itertools.pairwise(crossings), strict=True):
        disc = shapely.Point(nail).buffer(radius, quad_segs=_FINE)
        way += disc.union(shapely.MultiPoint([before, after])).convex_hull.length - math.dist(before, after)
    return way


@given(
    st.integers(4, 60),
    st.sampled_from(["1 per cm", "2.5 per cm", "5 per cm"]),
    st.integers(5, 20),
    st.integers(0, 20),
    st.integers(12, 60),
)
def test_the_thread_is_a_taut_curve_round_its_nails(
    width_cm: int, sett: str, nail: int, thick: int, outer_cm: int
) -> None:
    """Every pass and every turn of the warp, traced on the nails where the marks are."""
    planned = plan_of(
        NAILS
        | {
            "frame.nail_diameter": f"{nail / 10} mm",
            "frame.edge_distance": "4 mm",
            "frame.outer_height": f"{outer_cm} cm",
            "frame.end_width": "8 mm",
            "weaving.height": "4 cm",
            "weaving.width": f"{width_cm / 2} cm",
            "weaving.tie_off": "either end",
            "frame.outer_width": "60 cm",
            "sett.given": sett,
        }
    )
    warp, high = planned.warp, outer_cm * 10 - 4
    ours = thread_path(planned.kit.frame, warp, measured(thick / 10, "")).whole.value
    marks = [(float(x), 4.0) for x in warp.near], [(float(x), float(high)) for x in warp.far]
    nails = [marks[k % 2][k // 2] for k in range(warp.ends + 1)]
    assert ours == pytest.approx(taut(nails, (nail + thick) / 20), rel=1e-6)


@given(
    st.integers(1, 220),
    st.sampled_from(["left", "right"]),
    st.sampled_from(["near end", "far end"]),
    st.integers(20, 530),
)
def test_an_end_is_the_line_that_touches_both_its_nails(thick: int, start: str, tie_off: str, height: int) -> None:
    """shapely: some course of the fan lies D / 2 from both nails of each end, and the worst of them is what is said."""
    of = plan_of(NAILS | thread(thick) | {"weaving.start": start, "weaving.tie_off": tie_off})
    warp, fan = of.warp, fan_of(of.kit.frame, of.warp)
    radius = (1.8 + thick / 100) / 2
    worst = 0.0
    for k in range(6):
        low = shapely.Point(warp.toward * float(warp.near[(k + 1) // 2]), 10)
        high = shapely.Point(warp.toward * float(warp.far[k // 2]), 540)
        wanted = float((k + Fraction(1, 2)) * warp.pitch - warp.width / 2)
        lines = [
            shapely.LineString([(wanted + off - 275 * more, 0), (wanted + off + 275 * more, 550)])
            for off, more in fan.courses
        ]
        side = -1 if k % 2 else 1
        own = [
            line
            for line in lines
            if all(abs(line.distance(nail) - radius) < 1e-9 for nail in (low, high))
            and side * (line.interpolate(line.project(low)).x - low.x) > 0
        ]
        assert own
        level = shapely.LineString([(-9999, height), (9999, height)])
        worst = max(worst, abs(own[0].intersection(level).x - wanted))
    assert fan.off(height) == pytest.approx(worst, abs=1e-6)


def test_nail_and_thread_as_thick_as_the_pitch_hold_the_ends_parallel() -> None:
    """Both together one pitch of 4 mm: every end upright in its place; a trace thicker is warned of."""
    of = plan_of(NAILS | {"frame.nail_diameter": "3.2 mm", **thread(80)})
    assert fan_of(of.kit.frame, of.warp).needs_no_fingers() == (0, 550)
    assert of.warnings == ()
    thick = plan_of(NAILS | {"frame.nail_diameter": "3.2 mm", **thread(81)})
    assert any("(4.01 mm) exceed the pitch (4 mm)" in warning for warning in thick.warnings)


@pytest.mark.parametrize(
    ("sett", "nail", "needs"),
    [
        ("2.5 per cm", "4.1 mm", r"needs nails at most as thick as the pitch, 4 mm; .*got 4\.1 mm"),
        ("24 per cm", "0.5 mm", r"needs nails at most as thick as the pitch, .*got 0\.5 mm"),
    ],
)
def test_nails_thicker_than_the_pitch_are_refused(sett: str, nail: str, needs: str) -> None:
    """One sentence, and what it offers works: a thinner nail, or a looser sett where no nail is thin enough."""
    narrow: dict[str, object] = {"weaving.width": "4 cm", "sett.given": sett, "frame.nail_diameter": nail}
    with pytest.raises(FieldError) as caught:
        plan_of(NAILS | narrow)
    said = str(caught.value)
    assert said.startswith("frame.nail_diameter: needs nails at most as thick as the pitch")
    assert f"got {nail}" in said
    leaf, value = caught.value.example.replace(" in [sett]", "").split(" = ")
    key = "sett.given" if leaf == "given" else f"frame.{leaf}"
    plan_of(NAILS | narrow | {key: value.strip('"')})


def test_a_nail_as_thick_as_the_pitch_is_taken() -> None:
    """At a pitch of 4 mm nails stand every 8 mm, so 4 mm nails leave 4 mm between them."""
    warp = plan_of(NAILS | {"frame.nail_diameter": "4 mm"}).warp
    assert warp.near[1] - warp.near[0] == 8
    assert all(each.near == each.far for each in warp.passes)


def test_nail_and_thread_must_pass_between_two_nails() -> None:
    """A thread of 7 mm beside a nail of 1.8 mm does not go through 8 mm; the offer does."""
    with pytest.raises(FieldError, match=r"^frame\.nail_diameter: needs nail and thread together no thicker") as caught:
        plan_of(NAILS | thread(700))
    plan_of(NAILS | thread(700) | {"frame.nail_diameter": caught.value.example.split('"')[1]})


def test_all_ends_lie_in_one_layer() -> None:
    """Half of the ends, rounded down, are tied to leashes, and the plan says why."""
    planned = plan_of(NAILS | {"weaving.tie_off": "far end"})
    assert (planned.warp.ends, planned.amounts.leashes.number) == (49, 24)
    assert set(planned.warp.layers) == {"face"}
    assert any("one layer" in note and "leashes on every second end" in note for note in planned.notes)


def test_a_pass_ends_at_the_nails() -> None:
    """By hand: from the inner side of one row to that of the other, an edge distance and half a nail off each end."""
    ends = plan_of(NAILS).kit.frame.ends
    assert isinstance(ends, NailEnd)
    inset = ends.edge_distance.mm + ends.nail_diameter.mm / 2
    assert ends.inset_mm == inset
    assert ends.pass_mm(500) == pytest.approx(500 - 2 * float(inset))
