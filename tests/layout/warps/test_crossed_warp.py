"""A warp in a figure eight: where each end lies, its marks, its leashes, its fan, and what is refused."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
import shapely
from kits import FLAT, kit_of, plan_of

from layout.frames.kinds.round_bars import RoundBar
from layout.values.errors import FieldErrors
from layout.warps.crossed import CrossedBars
from layout.warps.fan import fan_of

EIGHT: dict[str, object] = {"weaving.winding": "figure eight"}
FOUR, FIVE = {"weaving.width": "16 mm"}, {"weaving.width": "20 mm", "weaving.tie_off": "far end"}


@pytest.mark.parametrize(
    ("changes", "near", "far", "leashed"),
    [
        (FOUR, "face back face back", "back face back face", 2),
        (FIVE, "face back face back face", "back face back face back", 3),
        (FOUR | {"weaving.first_pass": "back"}, "back face back face", "face back face back", 2),
        (FIVE | {"weaving.first_pass": "back"}, "back face back face back", "face back face back face", 2),
        (FOUR | {"weaving.start": "right"}, "back face back face", "face back face back", 2),
    ],
)
def test_which_layer_each_end_lies_in(changes: dict[str, object], near: str, far: str, leashed: int) -> None:
    """By hand, from left to right, at both frame ends; those that come to the far end from behind have leashes."""
    planned = plan_of(EIGHT | changes)
    assert " ".join(planned.warp.layers_at("near")) == near
    assert " ".join(planned.warp.layers_at("far")) == far
    assert planned.amounts.leashes.number == leashed == far.split().count("back")


@pytest.mark.parametrize("kind", [{}, FLAT])
@pytest.mark.parametrize("turn", [{}, {"weaving.first_pass": "back"}, {"weaving.tie_off": "far end"}])
def test_the_thread_turns_from_behind_to_the_front_at_every_end(
    kind: dict[str, object], turn: dict[str, object]
) -> None:
    """Where one pass comes to a frame end in one layer, the next one leaves it in the other."""
    for one, other in pairwise(plan_of(EIGHT | kind | turn).warp.passes):
        end = "far" if one.direction == "up" else "near"
        assert {one.layer_at(end), other.layer_at(end)} == {"face", "back"}
        assert one.layer_at("near") != one.layer_at("far")


def test_the_face_marks_of_both_ends_lie_a_pitch_apart() -> None:
    """On the face lie every second end: the odd ones at the near end, the even ones, a pitch on, at the far end."""
    warp = plan_of(EIGHT).warp
    faces = {
        end: [x for x, layer in zip(warp.end_positions, warp.layers_at(end), strict=True) if layer == "face"]
        for end in ("near", "far")
    }
    assert {b - a for a, b in pairwise(faces["near"])} == {2 * warp.pitch}
    assert [far - near for near, far in zip(faces["near"], faces["far"], strict=True)] == [warp.pitch] * 25


@pytest.mark.parametrize("kind", [{}, FLAT])
def test_the_marks_are_those_of_a_warp_wound_round(kind: dict[str, object]) -> None:
    """On the unrolled frame a crossed belt is straight too."""
    crossed, wound = plan_of(EIGHT | kind).warp, plan_of(kind).warp
    assert (crossed.near, crossed.far, crossed.spacing) == (wound.near, wound.far, wound.spacing)


@pytest.mark.parametrize(
    ("kind", "wide", "thick", "radius"),
    [({}, 16, 16, 8), (FLAT | {"frame.end_width": "40 mm", "frame.edge_radius": "3 mm"}, 40, 18, 3)],
)
@pytest.mark.parametrize("height", [120, 200, 275, 400])
def test_ends_fan_as_a_thread_that_was_walked_along(
    kind: dict[str, object], wide: float, thick: float, radius: float, height: float
) -> None:
    """shapely: along the hull of one end and the crossing point an end moves on evenly."""
    planned = plan_of(EIGHT | kind)
    core = shapely.box(radius, radius - thick / 2, wide - radius, thick / 2 - radius)
    half = core.buffer(radius, quad_segs=500) if radius < thick / 2 else shapely.Point(8, 0).buffer(8, quad_segs=500)
    hull = half.union(shapely.Point(275, 0)).convex_hull
    path = shapely.get_coordinates(hull.exterior)
    path = np.roll(path[:-1], -int(np.argmax(path[:-1, 0])), axis=0)
    path = np.vstack([path, path[:1]])
    lengths = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(path, axis=0), axis=1))])
    way = lengths[-1]  # from mark to mark, half round one end to the crossing and on to the other, is as long
    half_way = int(np.argmin(path[:, 0]))  # from the crossing to the mark x falls all the way
    along = np.interp(-min(height, 550 - height), -path[:half_way, 0], lengths[:half_way])
    share = along / way * (1 if height >= 275 else -1)
    off = float(planned.warp.pitch) * abs(share)
    assert fan_of(planned.kit.frame, planned.warp).off(height) == pytest.approx(off, rel=1e-3, abs=1e-6)


REFUSED = {
    "on notches": (
        {"frame.ends": "notched ends", "frame.bar_diameter": None, "frame.thickness": "12 mm"}
        | {"frame.notch_width": "1.2 mm", "frame.notch_depth": "6 mm"},
        "weaving.winding",
    ),
    "with a straight face": ({"weaving.slant": "face straight"}, "weaving.slant"),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_cannot_be_is_refused(name: str) -> None:
    """One sentence that names the key, and what it says to write works."""
    changes, field = REFUSED[name]
    with pytest.raises(FieldErrors) as caught:
        kit_of(EIGHT | changes)
    (error,) = caught.value.errors
    assert error.field == field
    leaf, value = str(error.example).split(" = ")
    assert plan_of(EIGHT | changes | {f"weaving.{leaf}": value.strip('"')}).warp.ends == 50


def test_the_thread_is_a_little_longer_than_once_round() -> None:
    """By the law of the crossed belt: D^2 / C a wind, here 16^2 / 534 mm."""
    more = plan_of(EIGHT).amounts.warp_per_wind_mm.value - plan_of().amounts.warp_per_wind_mm.value
    assert more == pytest.approx(16**2 / (550 - 16), rel=1e-3)
    assert math.isclose(more, 0.479, abs_tol=0.001)


def test_the_turn_is_all_but_the_slanting_stretch() -> None:
    """Bars of 30 mm on a frame of 200: half a belt less 140 mm of height at the lean whose sine is D / C."""
    kit = {"frame.bar_diameter": "30 mm", "frame.outer_height": "200 mm", "weaving.height": "as high as fits"}
    planned = plan_of(EIGHT | kit | {"room": {"hand": "10 mm", "slope": 1.0}})
    way, frame, thread = CrossedBars(), planned.kit.frame, 2.0
    assert isinstance(frame.ends, RoundBar)
    lean = math.asin((30 + thread) / (200 - 30))
    turn = way.turn(frame.ends, frame, planned.warp, 30.0, thread)
    assert turn == pytest.approx(way.once_round(frame.ends, frame, thread) / 2 - 140 / math.cos(lean))
