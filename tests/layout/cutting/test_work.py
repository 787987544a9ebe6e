from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from layout.cutting.job.work import SCAN, Work, area, length, seconds, work_of
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Step, Text, arc, circle, cross, line, rectangle
from templates_gen.lettering.outlines import outline

FINE = 2000  # sides that shapely gives a quarter of a circle


def rounded(left: float, bottom: float, width: float, height: float, radius: float, pen: Pen) -> Curve:
    """A rectangle with round corners, counter-clockwise."""
    right, top = left + width, bottom + height
    steps: list[Step] = []
    corners = ((right, bottom, 270), (right, top, 0), (left, top, 90), (left, bottom, 180))
    for x, y, begin in corners:
        centre = Point(x + (radius if x == left else -radius), y + (radius if y == bottom else -radius))
        angle = math.radians(begin)
        steps.append(Step(Point(centre.x + radius * math.cos(angle), centre.y + radius * math.sin(angle))))
        steps += arc(centre, radius, begin, begin + 90)
    return Curve(steps[-1].end, tuple(steps), pen, closed=True)


sides, radii, places = st.floats(20, 400), st.floats(0.1, 9), st.floats(-300, 300)


@given(places, places, sides, sides, radii, st.floats(-180, 180))
def test_rounded_outlines_are_as_long_and_large_as_shapely_says(
    x: float, y: float, width: float, height: float, radius: float, turned: float
) -> None:
    """Length and area are those of shapely's buffered rectangle, wherever it lies and however it is turned."""
    inner = shapely.box(x + radius, y + radius, x + width - radius, y + height - radius)
    wanted = inner.buffer(radius, quad_segs=FINE)
    placed = Placing(turned, 7, -3).shapes([rounded(x, y, width, height, radius, Pen.THROUGH)])[0]
    assert isinstance(placed, Curve)
    assert length(placed) == pytest.approx(wanted.exterior.length, rel=1e-6)
    assert area(Region((placed,), Pen.ENGRAVE)) == pytest.approx(wanted.area, rel=1e-6)


@given(st.floats(0.5, 200), st.floats(-360, 360), st.floats(5, 700), st.sampled_from([-1, 1]))
def test_an_arc_is_as_long_as_its_integral(radius: float, begin: float, sweep: float, way: int) -> None:
    """The length of an open arc is the integral of the speed along it, by scipy."""
    start = Point(radius * math.cos(math.radians(begin)), radius * math.sin(math.radians(begin)))
    drawn = Curve(start, arc(Point(0, 0), radius, begin, begin + way * sweep), Pen.SCORE)

    def speed(angle: float) -> float:
        return math.hypot(-radius * math.sin(angle), radius * math.cos(angle))

    wanted, _ = quad(speed, math.radians(begin), math.radians(begin + sweep))
    assert length(drawn) == pytest.approx(wanted, rel=1e-9)


def test_three_points_in_line_are_a_line() -> None:
    """An arc that is flat counts as its chord."""
    assert length(Curve(Point(0, 0), (Step(Point(3, 4), Point(1.5, 2)),), Pen.THROUGH)) == 5.0


def test_a_closed_outline_counts_its_last_side() -> None:
    """A closed square of 10 mm is 40 mm long; open, as drawn, 30 mm."""
    square = rectangle(0, 0, 10, 10, Pen.THROUGH)
    assert (length(square), length(square._replace(closed=False))) == (40.0, 30.0)


def test_letters_are_engraved_without_their_holes() -> None:
    """The area of an O, a B and a 4 is what shapely finds between their contours."""
    region = outline(Text(Point(3, 4), 20.0, "OB4"))
    contours = [shapely.Polygon(contour.points()) for contour in region.contours]
    wanted = shapely.Polygon()
    for contour in contours:  # the even-odd sum: a hole lies inside its letter
        wanted = wanted.symmetric_difference(contour)
    assert len(contours) == 7
    assert area(region) == pytest.approx(wanted.area, rel=1e-9)


def test_each_operation_has_its_own_work() -> None:
    """Cut and score by length, engrave by area, and nothing for reference."""
    shapes = [
        circle(Point(0, 0), 5, Pen.THROUGH),
        line(Point(0, 0), Point(30, 40), Pen.SCORE),
        Region((circle(Point(9, 9), 2, Pen.ENGRAVE),), Pen.ENGRAVE),
        *cross(Point(0, 0), 3, Pen.REFERENCE),
    ]
    work = work_of(shapes)
    assert work.cut == pytest.approx(10 * math.pi)
    assert work.score == 50
    assert work.engrave == pytest.approx(4 * math.pi)
    assert work_of(shapes[3:]) == Work()
    assert work + work == Work(2 * work.cut, 100, 2 * work.engrave)


def test_time_is_length_over_speed() -> None:
    """1200 mm cut at 12 mm/s, 600 mm scored at 60 and 20 mm2 engraved at 200 take 100 + 10 + 1 s."""
    work = Work(1200, 600, 20)
    assert SCAN == 0.1
    assert seconds(work, {"cut": 12, "score": 60, "engrave": 200}) == pytest.approx(111)


def test_a_time_with_a_speed_missing_is_not_told() -> None:
    """Where a speed that is needed is not known there is no time; one that is not needed may be missing."""
    assert seconds(Work(1200, 600, 0), {"cut": 12}) is None
    assert seconds(Work(1200, 0, 0), {"cut": 12}) == 100
    assert seconds(Work(), {}) == 0
