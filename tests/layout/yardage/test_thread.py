"""The way of the warp thread, against shapely's buffers and hulls and a sampled helix."""

from __future__ import annotations

import itertools
import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.quantity import Origin
from layout.yardage.thread import (
    flat_end_turn,
    notched_path,
    peg_warnings,
    pegged_path,
    round_bar_turn,
    wind_length,
    wound_path,
)

_FINE = 2000  # segments in a quarter circle: buffers are then right to 1 in 10 million


@given(st.floats(50, 2000), st.floats(1, 50), st.floats(0, 5))
def test_a_turn_round_bars_is_the_outline_of_a_buffered_segment(centres: float, bar: float, thread: float) -> None:
    """Open belt on equal pulleys, shapely: the outline of the segment between the centres, grown by (D + d) / 2."""
    outline = shapely.LineString([(0, 0), (centres, 0)]).buffer((bar + thread) / 2, quad_segs=_FINE)
    assert round_bar_turn(centres, bar, thread) == pytest.approx(outline.length, rel=1e-6)


@given(st.floats(100, 2000), st.floats(4, 50), st.floats(0.01, 0.5), st.floats(0.1, 5))
def test_a_turn_over_flat_ends_is_the_outline_of_a_grown_box(
    outer: float, thick: float, part: float, thread: float
) -> None:
    """shapely: a box less r all round, grown by r and half the thread."""
    r = part * thick * 0.999
    core = shapely.box(r, r, outer - r, thick - r)
    outline = core.buffer(r + thread / 2, quad_segs=_FINE)
    assert flat_end_turn(outer, thick, r, thread) == pytest.approx(outline.length, rel=1e-6)


def test_a_fully_rounded_flat_end_is_a_round_bar() -> None:
    """Edges of half the thickness make half cylinders: both formulas meet."""
    assert flat_end_turn(400, 20, 10, 1.5) == pytest.approx(round_bar_turn(380, 20, 1.5))


def test_ten_turns_of_a_helix_have_the_textbook_length() -> None:
    """Calculus textbook: radius 1, rise 2 a turn, 10 turns: 65.938."""
    assert 10 * wind_length(2 * math.pi, 2) == pytest.approx(65.938, abs=0.0005)


def test_a_wind_is_as_long_as_its_sampled_path_in_space() -> None:
    """A thread laid round two bars while it moves on evenly, cut into 60 000 chords and added up with numpy."""
    turn = shapely.LineString([(0, 0), (380, 0)]).buffer(10.75, quad_segs=_FINE).exterior
    corners = shapely.get_coordinates(turn)
    passed = np.concatenate([[0], np.linalg.norm(np.diff(corners, axis=0), axis=1).cumsum()])
    way = np.linspace(0, turn.length, 60_001)
    moved = np.column_stack([np.interp(way, passed, axis) for axis in corners.T] + [8.5 * way / turn.length])
    sampled = float(np.linalg.norm(np.diff(moved, axis=0), axis=1).sum())
    assert wind_length(round_bar_turn(380, 20, 1.5), 8.5) == pytest.approx(sampled, rel=1e-6)


def test_a_warp_takes_half_a_wind_for_an_odd_end() -> None:
    """Two ends a wind: 61 ends are 30 1/2 winds of 3, 4, 5 triangles."""
    assert wound_path(61, 4.0, 3).value == pytest.approx(30.5 * 5)
    assert wound_path(61, 4.0, 3).origin is Origin.COMPUTED


def test_a_notched_warp_goes_there_and_back() -> None:
    """Adding up by hand: 3 passes of 400, two turns of 4 along the bar and 6 through it each way."""
    assert notched_path(3, 400, 4, 6).value == 3 * 400 + 2 * (4 + 12)
    assert notched_path(1, 400, 4, 6).value == 400


@pytest.mark.parametrize(("thread", "two"), [(0, 692.467), (1, 698.467)])
def test_there_and_back_between_notches_is_the_mitred_outline(thread: float, two: float) -> None:
    """Grounds 320 mm apart on boards of 11.5 mm, 3.2335 mm from notch to notch; the section grown by half a thread.

    Two passes and the turns at both ends are that outline, the way through the boards once more, and twice the pitch.
    shapely grows the box with sharp corners; with round ones, as a taut thread has them, it is at most a little longer.
    """
    long, thick, pitch = 320.0, 11.5, 3.2335
    section, half = shapely.box(0, 0, long, thick), thread / 2
    sharp = section.buffer(half, join_style="mitre").exterior.length if thread else section.length
    ours = notched_path(3, long, pitch, thick, thread).value - notched_path(1, long, pitch, thick, thread).value
    assert ours == pytest.approx(sharp + 2 * (thick + thread) + 2 * pitch)
    assert ours == pytest.approx(two)
    round_ = section.buffer(half, quad_segs=_FINE).exterior.length if thread else section.length
    assert 0 <= sharp - round_ <= 2 * thread


@given(st.floats(50, 900), st.floats(3, 40), st.floats(0.5, 20), st.floats(0, 4), st.integers(2, 30))
def test_the_notched_way_is_the_traced_curve(long: float, thick: float, pitch: float, thread: float, ends: int) -> None:
    """The middle line of the thread point by point in space, half a thread off all wood, measured by numpy."""
    off, points = thread / 2, list[tuple[float, float, float]]()
    for k in range(ends):
        up = k % 2 == 0
        first, last = (-off, long + off) if up else (long + off, -off)
        front, back = -off, thick + off
        points += [(k * pitch, first, front), (k * pitch, last, front)]
        if k < ends - 1:
            points += [(k * pitch, last, back), ((k + 1) * pitch, last, back)]
    traced = float(np.linalg.norm(np.diff(np.array(points), axis=0), axis=1).sum())
    assert notched_path(ends, long, pitch, thick, thread).value == pytest.approx(traced)


def _taut(pegs: list[tuple[float, float]], radius: float) -> float:
    """The serpentine way over `pegs` by shapely.

    Between equal pegs the thread crosses halfway; from one such point to the next it follows the hull of both points
    and the peg, on the side that is not the straight line between them.
    """
    middles = [((a + c) / 2, (b + d) / 2) for (a, b), (c, d) in itertools.pairwise(pegs)]
    outermost = ((pegs[0], middles[0]), (pegs[-1], middles[-1]))
    way = sum(math.sqrt(math.dist(peg, middle) ** 2 - radius**2) for peg, middle in outermost)
    for peg, (before, after) in zip(pegs[1:-1], itertools.pairwise(middles), strict=True):
        disc = shapely.Point(peg).buffer(radius, quad_segs=_FINE)
        way += disc.union(shapely.MultiPoint([before, after])).convex_hull.length - math.dist(before, after)
    return way


@pytest.mark.parametrize(("pitch", "across", "apart"), [(4, 3, 0), (6, 6, 0), (10, 4, 15), (8, 9, 6)])
def test_a_pegged_warp_is_the_shortest_way_round_its_pegs(pitch: float, across: float, apart: float) -> None:
    """shapely's hulls round each peg; five ends, pegs in one row or staggered in two."""
    rows, ends = 120.0, 5
    pegs = []
    for k in range(ends + 1):
        j, far = k // 2, k % 2 == 1
        out = apart * (j % 2)
        pegs.append((k * pitch, rows + out if far else -out))
    ours = pegged_path(ends, rows, pitch, across, apart).value
    assert ours == pytest.approx(_taut(pegs, across / 2), rel=1e-6)


def test_pegs_as_thick_as_the_pitch_make_straight_ends() -> None:
    """Peg and thread = pitch: vertical passes and half circles between them."""
    assert pegged_path(10, 300, 5, 5).value == pytest.approx(10 * 300 + 9 * math.pi * 2.5)


@pytest.mark.parametrize(("peg", "thread", "count"), [(3, 1, 0), (2.5, 1.5, 0), (3, 1.01, 1), (5, 1, 1)])
def test_peg_and_thread_beyond_the_pitch_are_warned_of(peg: float, thread: float, count: int) -> None:
    """Common practice, no source: up to the pitch (4 mm) the ends can lie parallel, beyond it they lie in pairs."""
    assert len(peg_warnings(peg, thread, 4)) == count


@given(st.floats(50, 1000), st.floats(1, 50), st.floats(0.1, 5), st.floats(1, 20))
def test_a_thicker_bar_or_thread_never_takes_less(centres: float, bar: float, thread: float, pitch: float) -> None:
    """Every measure made greater makes the wind longer."""
    base = wind_length(round_bar_turn(centres, bar, thread), pitch)
    assert wind_length(round_bar_turn(centres + 1, bar, thread), pitch) > base
    assert wind_length(round_bar_turn(centres, bar, thread + 1), pitch) > base
    assert wind_length(round_bar_turn(centres, bar, thread), pitch + 1) > base
    assert base > 2 * centres


def test_reasons_carry_the_right_numbers() -> None:
    """What is said beside a figure is computed by hand here: 61 ends are 30.5 winds; 3 passes have 2 turns."""
    assert wound_path(61, 4.0, 3).reason == "30.5 winds of 5 mm, along the slant."
    assert notched_path(3, 400, 4, 6).reason == "3 passes of 400 mm, 2 turns of 16 mm."
    assert notched_path(3, 400, 4, 6, 1).reason == "3 passes of 401 mm, 2 turns of 18 mm."
    assert pegged_path(3, 300, 5, 5).reason.startswith("3 passes between pegs and 2 turns")
    assert "(5 mm) exceed the pitch (4 mm)" in peg_warnings(3.5, 1.5, 4)[0]


def test_refusals_name_the_most_that_works() -> None:
    """Half of 18 mm is 9; two pitches of 4 mm are 8, and a peg of just that still passes."""
    with pytest.raises(FieldError, match=r"\(9 mm\), got 9\.5"):
        flat_end_turn(400, 18, 9.5, 1)
    with pytest.raises(FieldError, match=r"\(8 mm\).*got 8\.5"):
        pegged_path(10, 300, 4, 8.5)
    assert pegged_path(10, 300, 4, 8).value > 3000
