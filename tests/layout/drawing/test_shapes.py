from __future__ import annotations

import math

import pytest
import shapely
import strategies
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from layout.drawing.pens import Pen
from layout.drawing.shapes import (
    Curve,
    Placing,
    Point,
    Region,
    Text,
    arc,
    circle,
    cross,
    filled,
    line,
    polygon,
    rectangle,
)

placings = st.builds(Placing, st.floats(-360, 360), st.floats(-500, 500), st.floats(-500, 500))
quarters = st.builds(Placing, st.sampled_from([-270.0, -90.0, 0.0, 90.0, 180.0, 270.0, 360.0]), st.just(0.0))


@given(placings, strategies.points, strategies.points)
def test_placing_keeps_distances(placing: Placing, one: Point, other: Point) -> None:
    """Two points are as far apart on the sheet as on the part."""
    here, there = placing.points([one, other])
    assert math.dist(here, there) == pytest.approx(math.dist(one, other), abs=1e-9)


@given(placings, strategies.points, strategies.points, strategies.points)
def test_placing_never_mirrors(placing: Placing, one: Point, two: Point, three: Point) -> None:
    """A triangle keeps its signed area, so a part is never laid face down."""
    before = shapely.Polygon([one, two, three])
    after = shapely.Polygon(placing.points([one, two, three]))
    signed = [ring.exterior.is_ccw for ring in (before, after)] if before.area > 1 else [True, True]
    assert after.area == pytest.approx(before.area, rel=1e-9, abs=1e-4)
    assert signed[0] == signed[1]


@given(quarters, strategies.points)
def test_quarter_turns_are_exact(placing: Placing, point: Point) -> None:
    """A turn by quarters moves numbers about without rounding any of them."""
    turned = placing.points([point])[0]
    assert {abs(turned.x), abs(turned.y)} == {abs(point.x), abs(point.y)}


@given(placings, strategies.paths())
def test_a_path_goes_where_its_points_go(placing: Placing, path: Curve) -> None:
    """Start, ends and the points arcs pass through are laid like bare points; pen and closing stay."""
    placed = placing.shapes([path])[0]
    assert isinstance(placed, Curve)
    assert placed.points() == placing.points(path.points())
    through = [step.through for step in path.steps if step.through]
    assert [step.through for step in placed.steps if step.through] == placing.points(through)
    assert (placed.pen, placed.closed) == (path.pen, path.closed)


@given(placings, strategies.texts("abc"))
def test_words_turn_with_their_part(placing: Placing, text: Text) -> None:
    """Words keep their size and letters; the angle of their baseline grows by the turn."""
    placed = placing.shapes([text])[0]
    assert isinstance(placed, Text)
    assert (placed.size, placed.words) == (text.size, text.words)
    ahead = Point(text.at.x + math.cos(math.radians(text.angle)), text.at.y + math.sin(math.radians(text.angle)))
    at, end = placing.points([text.at, ahead])
    assert placed.at == at
    assert math.cos(math.radians(placed.angle)) == pytest.approx(end.x - at.x, abs=1e-9)
    assert math.sin(math.radians(placed.angle)) == pytest.approx(end.y - at.y, abs=1e-9)


@given(placings, strategies.regions())
def test_regions_keep_their_contours(placing: Placing, region: Region) -> None:
    """Every contour of a region is laid as it would be alone."""
    assert placing.shapes([region]) == [Region(tuple(placing.shapes(region.contours)), region.pen)]  # type: ignore[arg-type]


@given(st.floats(0.5, 200), st.floats(-360, 360), st.floats(-360, 360))
def test_arc_steps_lie_on_the_circle(radius: float, start: float, stop: float) -> None:
    """Ends and through-points lie on the circle; no step sweeps more than 45 degrees; the last ends where asked."""
    centre = Point(3, -4)
    steps = arc(centre, radius, start, stop)
    for step in steps:
        assert step.through is not None
        assert math.dist(centre, step.end) == pytest.approx(radius)
        assert math.dist(centre, step.through) == pytest.approx(radius)
        half_chord = math.dist(step.through, step.end) / 2
        assert 2 * math.asin(min(1.0, half_chord / radius)) <= math.radians(22.5) + 1e-6
    assert math.dist(
        steps[-1].end, (3 + radius * math.cos(math.radians(stop)), -4 + radius * math.sin(math.radians(stop)))
    ) < 1e-9 * max(1, radius)


def test_a_circle_is_eight_arcs() -> None:
    """A circle is closed, in eight steps, and as long as scipy integrates it to be."""
    ring = circle(Point(0, 0), 10, Pen.CUT)
    assert ring.closed
    assert len(ring.steps) == 8
    length, _ = quad(lambda t: math.hypot(-10 * math.sin(t), 10 * math.cos(t)), 0, math.tau)
    chords = [math.dist(one, other) for one, other in zip(ring.points(), ring.points()[1:], strict=False)]
    assert sum(2 * 10 * math.asin(chord / 20) for chord in chords) == pytest.approx(length)


def test_a_polygon_is_what_shapely_makes_of_its_points() -> None:
    """Rectangles and filled polygons are closed, turn counter-clockwise as given and have the right area."""
    frame = rectangle(1, 2, 5, 9, Pen.CUT)
    outline = shapely.Polygon(frame.points())
    assert frame.closed
    assert (outline.area, outline.bounds, outline.exterior.is_ccw) == (28, (1, 2, 5, 9), True)
    (contour,) = filled([Point(0, 0), Point(4, 0), Point(0, 3)], Pen.SOLID).contours
    assert contour == polygon([Point(0, 0), Point(4, 0), Point(0, 3)], Pen.SOLID)
    assert shapely.Polygon(contour.points()).area == 6


def test_a_cross_has_two_equal_hairs() -> None:
    """Both hairs share their middle, are as long as asked, and stand at right angles."""
    flat, upright = cross(Point(2, 3), 4, Pen.REGISTER)
    assert flat == line(Point(-2, 3), Point(6, 3), Pen.REGISTER)
    assert upright == line(Point(2, -1), Point(2, 7), Pen.REGISTER)
