"""Outlines with rounded corners: where their rounds begin and end, and what cannot be."""

from __future__ import annotations

import math

import pytest
import shapely
from beams import area_of
from hypothesis import given
from hypothesis import strategies as st

from layout.cutting.parts.outline import Corner, area, boxed, outline, turned_back
from layout.drawing.arcs import radius, turn
from layout.drawing.shapes import Curve, Point
from layout.values.errors import LayoutError


@given(st.floats(1, 200), st.floats(1, 200), st.floats(0.01, 0.5))
def test_a_rounded_rectangle_is_a_buffered_one(width: float, height: float, share: float) -> None:
    """It is the rectangle within, grown by the radius all round (shapely's buffer)."""
    round_ = share * min(width, height)
    made = area_of(outline(boxed(0, 0, width, height, round_)))
    within = shapely.box(round_, round_, width - round_, height - round_)
    grown = (
        within if within.area else shapely.LineString([(round_, round_), (width - round_, height - round_)])
    ).buffer(round_, quad_segs=64)
    assert made.symmetric_difference(grown).area < 1e-3 * made.area


def test_a_sharp_outline_is_its_corners() -> None:
    """Without rounds the closing of the path draws the last side."""
    path = outline(boxed(0, 0, 4, 2))
    assert path.points() == [Point(0, 0), Point(4, 0), Point(4, 2), Point(0, 2)]
    assert path.closed


def arcs(path: Curve) -> list[tuple[Point, Point, Point]]:
    """The arcs of a path by their three points."""
    starts = path.points()
    return [(start, step.through, step.end) for start, step in zip(starts, path.steps, strict=False) if step.through]


def test_rounds_have_their_radius_and_turn_at_most_45_degrees() -> None:
    """A full round tip is two quarter circles with nothing straight between."""
    path = outline([Corner(0, 0), Corner(4, 0), Corner(4, 9, 2), Corner(0, 9, 2)])
    assert len(arcs(path)) == 4
    for three in arcs(path):
        assert radius(*three) == pytest.approx(2)
        assert math.degrees(turn(*three)) == pytest.approx(45)
    assert area_of(path).bounds == pytest.approx((0, 0, 4, 9))


def test_rounds_that_need_more_than_their_side_are_refused() -> None:
    """Nothing is drawn that overlaps itself."""
    with pytest.raises(LayoutError, match=r"the rounds of a side are 2\.000 mm longer than the side"):
        outline(boxed(0, 0, 20, 4, 3))


@pytest.mark.parametrize("round_", [0, 1.5])
def test_the_other_way_round_is_the_same_outline(round_: float) -> None:
    """Area and place are the same, only the sense of turning differs."""
    path = outline(boxed(1, 2, 9, 6, round_))
    back = turned_back(path)
    assert area(back) == pytest.approx(-area(path))
    assert area_of(back).symmetric_difference(area_of(path)).area < 1e-9
    assert turned_back(back).points() == [pytest.approx(point) for point in path.points()]
