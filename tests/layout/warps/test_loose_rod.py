"""A warp from a loose rod: its marks, its thread against a traced curve, the height, the pull, and what is refused."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from kits import FLAT, ROD, kit_of, plan_of

from layout.values.errors import FieldErrors
from layout.warps.fan import fan_of

_FINE = 2000  # segments in a quarter circle


@pytest.mark.parametrize(("rod", "thread"), [(8, 0), (8, 1), (20, 0.5), (3, 3)])
@pytest.mark.parametrize("height", [100.0, 200.0])
def test_nothing_is_taken_off_for_the_rod(rod: float, thread: float, height: float) -> None:
    """shapely: a taut loop from one place round a rod so far below is the hull of both. Two heights of the rod's middle
    and half a turn are as long, but for R^2 / h by which both stretches lean (8 mm from 100 mm: 212.73, not 212.57).
    """
    radius = (rod + thread) / 2
    circle = shapely.Point(0, 0).buffer(radius, quad_segs=_FINE)
    traced = circle.union(shapely.Point(0, height)).convex_hull.length
    counted = 2 * height + math.pi * (rod + thread) / 2
    assert traced - counted == pytest.approx(radius**2 / height, rel=0.03)
    if (rod, thread, height) == (8, 0, 100):
        assert (traced, counted) == pytest.approx((212.73, 212.57), abs=0.005)


@pytest.mark.parametrize(
    ("kind", "once"),
    [
        ({}, shapely.LineString([(0, 8), (0, 542)]).buffer(8, quad_segs=_FINE).length),
        (FLAT, shapely.box(0, 0, 18, 550).length),
    ],
    ids=["round bars", "flat ends"],
)
def test_the_thread_goes_once_round_for_every_end(kind: dict[str, object], once: float) -> None:
    """shapely's outline of the frame in section for 50 ends, and 49 half turns of 10 mm that lead 4 mm on; 2 knots."""
    knot = {"warp": {"knot": "0 mm", "tail": "0 mm", "spare": "0 %", "stretch": "0 %"}}
    amounts = plan_of(ROD | kind | knot | {"weaving.rod_diameter": "10 mm"}).amounts
    path = 50 * once + 49 * math.hypot(math.pi * 5, 4)
    assert (amounts.warp_total_m.value - amounts.heading_thread_m.value) * 1000 == pytest.approx(path, rel=1e-5)
    assert amounts.warp_per_wind_mm.value == pytest.approx(2 * once + 2 * math.hypot(math.pi * 5, 4), rel=1e-6)


@pytest.mark.parametrize("kind", [{}, FLAT])
@pytest.mark.parametrize("start", ["left", "right"])
def test_there_is_one_mark_an_end_at_both_frame_ends(kind: dict[str, object], start: str) -> None:
    """(k + 1/2) p - W/2, all on the face, up and down by turns; 49 ends are as good as 50."""
    warp = plan_of(ROD | kind | {"weaving.width": "198 mm", "weaving.start": start}).warp
    assert warp.ends == 49
    assert warp.winds is None
    assert warp.near == warp.far == warp.end_positions[:: warp.toward]
    assert {each.layer_at(end) for each in warp.passes for end in ("near", "far")} == {"face"}
    assert all(one.direction != other.direction for one, other in pairwise(warp.passes))
    assert warp.passes[0].direction == "up"


def test_every_end_lies_at_its_place_from_end_to_end() -> None:
    """Nothing fans out."""
    planned = plan_of(ROD)
    assert fan_of(planned.kit.frame, planned.warp).needs_no_fingers() == (0, 550)


def test_more_can_be_woven_than_the_frame_is_high() -> None:
    """By hand: once round 2 x 534 + 16 pi, less 8 mm of rod, 50 mm beside it, 5 mm for the hand, no heading."""
    amounts = plan_of(ROD | {"weaving.height": "90 cm"}).amounts
    assert amounts.weavable_height_mm.value == pytest.approx(2 * 534 + 16 * math.pi - 8 - 50 - 5, abs=0.001)
    assert amounts.fringe_near_mm.value == amounts.fringe_far_mm.value == 0
    assert (amounts.leashes.number, amounts.leashes.ends) == (25, "every second")


def test_both_layers_pull() -> None:
    """50 ends of one thread, on the face and behind: 100 threads at each bar; wound round, 50 ends are 50 threads."""
    assert (plan_of(ROD).load.threads, plan_of().load.threads) == (100, 50)


REFUSED: dict[str, tuple[dict[str, object], str]] = {
    "in a figure eight": ({"weaving.winding": "figure eight"}, "weaving.winding"),
    "with a straight face": ({"weaving.slant": "face straight"}, "weaving.slant"),
    "begun at the back": ({"weaving.first_pass": "back"}, "weaving.first_pass"),
    "tied off at a frame end": ({"weaving.tie_off": "far end"}, "weaving.tie_off"),
    "a rod that is not there": ({"weaving.near_hold": "bar", "weaving.rod_diameter": "8 mm"}, "weaving.rod_diameter"),
    "on notches": (
        {"frame.ends": "notched ends", "frame.bar_diameter": None, "frame.thickness": "12 mm"}
        | {"frame.notch_width": "1.2 mm", "frame.notch_depth": "6 mm"},
        "weaving.near_hold",
    ),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_cannot_be_is_refused(name: str) -> None:
    """One sentence that names the key; with what it says to write, or without the key, the kit is good."""
    changes, field = REFUSED[name]
    with pytest.raises(FieldErrors) as caught:
        kit_of(ROD | changes)
    (error,) = caught.value.errors
    assert error.field == field
    leaf, _, value = str(error.example).partition(" = ")
    better = {field: value.strip('"') if leaf == field.partition(".")[2] else None}
    assert plan_of(ROD | changes | better).warp.ends == 50


def test_a_height_that_does_not_slide_round_is_refused() -> None:
    """More than once round: the greatest height is said, and works."""
    from layout.values.errors import FieldError

    with pytest.raises(FieldError) as caught:
        plan_of(ROD | {"weaving.height": "1.2 m"})
    assert caught.value.field == "weaving.height"
    most = str(caught.value.example).partition(" = ")[2].strip('"')
    assert plan_of(ROD | {"weaving.height": most}).warp.ends == 50
