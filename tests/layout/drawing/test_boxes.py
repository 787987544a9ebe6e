"""Boxes around points, paths and turned boxes, compared with shapely's bounds."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity

from layout.drawing.boxes import box_around, box_of, middle_of, placed
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, circle, polygon

numbers = st.floats(-500, 500)
points = st.builds(Point, numbers, numbers)


@given(st.lists(points, min_size=1), st.floats(0, 20))
def test_the_box_around_points_is_that_of_shapely(around: list[Point], white: float) -> None:
    """Left, bottom, right and top, each as much further out as was asked for."""
    left, low, right, high = shapely.MultiPoint(around).bounds
    wanted = (left - white, low - white, right + white, high + white)
    assert box_around(around, white) == pytest.approx(wanted)


@given(st.lists(points, min_size=3))
def test_the_box_of_a_path_holds_its_start_and_its_ends(corners: list[Point]) -> None:
    """Of a polygon these are its corners."""
    assert box_of(polygon(corners, Pen.CUT)) == pytest.approx(shapely.LineString(corners).bounds)


@given(points, st.floats(0.1, 100))
def test_the_middle_of_a_circle_is_its_centre(centre: Point, radius: float) -> None:
    """Its box reaches equally far to all sides."""
    assert math.dist(middle_of(circle(centre, radius, Pen.CUT)), centre) < 1e-9


@given(numbers, numbers, st.floats(1, 300), st.floats(1, 300), st.floats(-360, 360), numbers, numbers)
def test_a_box_that_lies_turned_is_that_of_shapely(
    left: float, low: float, wide: float, high: float, degrees: float, dx: float, dy: float
) -> None:
    """All four corners count, not only two of them."""
    turned = affinity.rotate(shapely.box(left, low, left + wide, low + high), degrees, origin=(0, 0))
    wanted = affinity.translate(turned, dx, dy).bounds
    found = placed((left, low, left + wide, low + high), Placing(degrees, dx, dy))
    assert found == pytest.approx(wanted, abs=1e-9)
