"""Arrow heads, breaks and words of pictures."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region
from layout.drawing.symbols import arrow_head, beside, break_line, centred, notched_block, stretch


@given(st.floats(0, 360))
def test_an_arrow_points_where_it_is_told(degrees: float) -> None:
    """Its tip lies ahead of its middle, the base square behind it."""
    ahead = Point(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))
    tip, one, other = arrow_head(Point(3, 4), ahead, 2.0, 1.0).contours[0].points()
    assert (tip.x, tip.y) == pytest.approx((3 + ahead.x, 4 + ahead.y))
    assert ((one.x + other.x) / 2, (one.y + other.y) / 2) == pytest.approx((3 - ahead.x, 4 - ahead.y))
    assert math.dist(one, other) == pytest.approx(1.0)


def test_a_break_runs_through_with_a_zigzag() -> None:
    """It begins and ends at its x, and leaves it on both sides in between."""
    points = break_line(5, 0, 30).points()
    assert points[0] == (5, 0)
    assert points[-1] == (5, 30)
    assert min(x for x, _ in points) < 5 < max(x for x, _ in points)


def test_a_stretch_of_a_line_keeps_its_direction() -> None:
    """Between y = 2 and 8 of a line from (0, 10) down to (10, 0)."""
    found = stretch(Point(0, 10), Point(10, 0), 2, 8, Pen.THREAD_BACK)
    assert found.points() == [Point(2, 8), Point(8, 2)]


def test_words_stand_about_their_point() -> None:
    """Centred words have their middle there; words beside it end or begin there."""
    metrics = font_metrics()
    wide = metrics.width("near", 4)
    assert centred("near", Point(0, 0), metrics, 4).at == pytest.approx((-wide / 2, -metrics.cap * 2))
    assert beside("near", Point(1, 0), metrics, 1, 4).at.x == 1
    assert beside("near", Point(1, 0), metrics, -1, 4).at.x == pytest.approx(1 - wide)


def test_notches_are_open_to_the_edge() -> None:
    """Two notches, each two corners on the edge and two at its ground."""
    tint, outline = notched_block(0, 20, 10, 0, [5, 12], 2, 7)
    assert isinstance(tint, Region)
    points = tint.contours[0].points()
    assert [point for point in points if point.y == 7] == [Point(4, 7), Point(6, 7), Point(11, 7), Point(13, 7)]
    assert outline.points() == points  # type: ignore[union-attr]
