"""The way of a thread in a figure eight, against shapely's hulls, a shortest way found by scipy, and the textbook."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize

from layout.values.errors import FieldError
from layout.yardage.crossed import crossed_belt
from layout.yardage.thread import flat_end_turn, round_bar_turn

_FINE = 2000  # segments in a quarter circle


def _traced(outer: float, wide: float, thick: float, radius: float, thread: float) -> float:
    """The taut way: by symmetry it crosses in the middle of the frame, so each half is the outline of the hull of one
    end, grown by half a thread, and that point.
    """
    core = shapely.box(radius, radius - thick / 2, wide - radius, thick / 2 - radius)
    grown = core.buffer(radius + thread / 2, quad_segs=_FINE)
    return 2 * float(grown.union(shapely.Point(outer / 2, 0)).convex_hull.length)


@given(st.floats(200, 2000), st.floats(5, 60), st.floats(0.01, 6))
def test_a_crossed_belt_round_bars_is_as_long_as_the_traced_one(outer: float, bar: float, thread: float) -> None:
    """shapely's hull of a circle and the crossing point."""
    found = crossed_belt(outer, bar, bar, bar / 2, thread).once_round
    radius = (bar + thread) / 2
    circle = shapely.Point(bar / 2, 0).buffer(radius, quad_segs=_FINE)
    traced = 2 * circle.union(shapely.Point(outer / 2, 0)).convex_hull.length
    assert found == pytest.approx(traced, rel=1e-6)


@given(st.floats(200, 2000), st.floats(10, 60), st.floats(4, 40), st.floats(0, 0.499), st.floats(0.01, 6))
def test_a_crossed_belt_round_boards_is_as_long_as_the_traced_one(
    outer: float, wide: float, thick: float, part: float, thread: float
) -> None:
    """shapely's hull of a rounded board and the crossing point."""
    radius = part * min(wide, thick)
    found = crossed_belt(outer, wide, thick, radius, thread).once_round
    assert found == pytest.approx(_traced(outer, wide, thick, radius, thread), rel=1e-6)


@given(st.floats(200, 2000), st.floats(5, 60), st.floats(0.01, 6))
def test_round_bars_follow_the_textbook(outer: float, bar: float, thread: float) -> None:
    """Machinery's Handbook, crossed belt on equal pulleys, from memory: 2 sqrt(C^2 - D^2) + D (pi + 2 asin(D / C))."""
    between, thick = outer - bar, bar + thread
    wanted = 2 * math.sqrt(between**2 - thick**2) + thick * (math.pi + 2 * math.asin(thick / between))
    assert crossed_belt(outer, bar, bar, bar / 2, thread).once_round == pytest.approx(wanted, rel=1e-12)


@given(st.floats(300, 2000), st.floats(5, 30), st.floats(0, 3))
def test_crossing_costs_little(outer: float, bar: float, thread: float) -> None:
    """It is longer than the open wind by D^2 / C, and by no more than a 300th of that where D / C is 1/9 or less."""
    between, thick = outer - bar, bar + thread
    more = crossed_belt(outer, bar, bar, bar / 2, thread).once_round - round_bar_turn(between, bar, thread)
    assert more == pytest.approx(thick**2 / between, rel=0.004)


def test_square_boards_far_apart_hardly_differ_from_an_open_wind() -> None:
    """Between boards 18 mm thick and 40 mm wide, 1 m apart: some tenths of a mm longer than once round, not shorter."""
    more = crossed_belt(1080, 40, 18, 0, 1).once_round - flat_end_turn(1080, 18, 0, 1)
    assert 0 < more < 0.5


def test_no_way_round_two_bars_is_shorter() -> None:
    """scipy: points slide round two bars of 20 mm, 200 mm from end to end, until the way is shortest."""
    radius, centres = 10.0, (np.array([0.0, 0.0]), np.array([0.0, 180.0]))
    count = 40

    def way(angles: np.ndarray) -> float:
        """A closed way through points at these angles of two circles a little larger than the bars."""
        grown = radius / math.cos(math.pi / count)
        low = centres[0] + grown * np.column_stack([np.cos(angles[:count]), np.sin(angles[:count])])
        top = centres[1] + grown * np.column_stack([np.cos(angles[count:]), np.sin(angles[count:])])
        points = np.vstack([low, top, low[:1]])
        return float(np.linalg.norm(np.diff(points, axis=0), axis=1).sum())

    # round the low bar clockwise from its upper right to its upper left, then the other one the other way
    start = np.concatenate([np.linspace(0.1, -math.pi - 0.1, count), np.linspace(-0.1, math.pi + 0.1, count)])
    found = minimize(way, start, method="L-BFGS-B", options={"maxiter": 2000, "maxfun": 10**6})
    wanted = crossed_belt(200, 20, 20, 10, 0).once_round
    assert found.fun == pytest.approx(wanted, rel=2e-3)


def test_both_parts_of_a_belt_make_it_up() -> None:
    """By hand: D 20, C 100: sin(lean) 1/5, a crossing stretch sqrt(9600), a turn 20 (pi / 2 + asin 0.2)."""
    belt = crossed_belt(118, 18, 18, 9, 2)
    assert math.sin(belt.lean) == pytest.approx(0.2)
    assert belt.crossing == pytest.approx(math.sqrt(9600))
    assert belt.turn == pytest.approx(20 * (math.pi / 2 + math.asin(0.2)))


@pytest.mark.parametrize(("outer", "wide", "thick", "radius", "thread"), [(38, 18, 18, 9, 2.1), (60, 30, 18, 0, 1)])
def test_ends_too_thick_to_cross_between_are_refused(
    outer: float, wide: float, thick: float, radius: float, thread: float
) -> None:
    """The frame's height is named, and what is written instead works."""
    with pytest.raises(FieldError) as caught:
        crossed_belt(outer, wide, thick, radius, thread)
    assert caught.value.field == "frame.outer_height"
    higher = float(str(caught.value.example).split('"')[1].split()[0])
    assert crossed_belt(higher, wide, thick, radius, thread).crossing > 0
