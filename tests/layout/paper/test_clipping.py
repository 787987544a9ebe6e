"""Paths between two uprights: what is kept, against shapely's own clipping; arcs stay arcs."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from strategies import paths

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, arc, circle, line, rectangle
from layout.paper.clipping import clipped

P = Point


def fine(path: Curve) -> list[Point]:
    """Points along a path, close enough together to stand for it."""
    found = [path.start]
    at = path.start
    for end, through in (*path.steps, *([Step(path.start)] if path.closed else [])):
        found += [end] if through is None else _along(at, through, end)
        at = end
    return found


def _along(start: Point, through: Point, end: Point, deep: int = 6) -> list[Point]:
    """The arc halved over and over: the middle of each half lies on the same circle."""
    if deep == 0:
        return [end]
    mx, my = (start.x + end.x) / 2, (start.y + end.y) / 2
    rise, half = math.dist((mx, my), through), math.dist(start, end) / 2
    radius = (half * half + rise * rise) / (2 * rise)
    centre = P(through.x + (mx - through.x) * radius / rise, through.y + (my - through.y) * radius / rise)

    def between(one: Point, other: Point) -> Point:
        x, y = (one.x + other.x) / 2 - centre.x, (one.y + other.y) / 2 - centre.y
        return P(centre.x + x * radius / math.hypot(x, y), centre.y + y * radius / math.hypot(x, y))

    return [
        *_along(start, between(start, through), through, deep - 1),
        *_along(through, between(through, end), end, deep - 1),
    ]


@given(paths(), st.floats(-2500, 2500), st.floats(1, 800))
def test_as_much_is_kept_as_shapely_keeps(path: Curve, begin: float, width: float) -> None:
    """The length of what is left is the length of the same line cut by shapely, and it lies where that does."""
    stop = begin + width
    drawn, band = shapely.LineString(fine(path)), shapely.box(begin, -5000, stop, 5000)
    sides = [shapely.LineString(pair) for pair in pairwise(fine(path)) if pair[0] != pair[1]]
    wanted = sum(side.intersection(band).length for side in sides)
    kept = [shapely.LineString(fine(each)) for each in clipped(path, begin, stop)]
    assert sum(each.length for each in kept) == pytest.approx(wanted, rel=1e-3, abs=0.1)
    for each in kept:
        low, _, high, _ = each.bounds
        assert low >= begin - 0.05
        assert high <= stop + 0.05
        assert drawn.buffer(0.1).contains(each)


def test_what_lies_inside_is_the_path_itself() -> None:
    """A closed outline with arcs that no upright meets stays closed."""
    hole = circle(P(5, 5), 3, Pen.THROUGH)
    assert clipped(hole, 2, 8) == [hole]
    assert clipped(rectangle(1, 1, 4, 4, Pen.CUT), 0, 5) == [rectangle(1, 1, 4, 4, Pen.CUT)]


def test_arcs_are_broken_on_their_circle() -> None:
    """A circle of 5 mm cut at 3 mm from its centre leaves arcs whose every point lies 5 mm from it."""
    whole = circle(P(0, 0), 5, Pen.THROUGH)._replace(start=P(-5, 0))
    turned = Curve(P(-5, 0), tuple(Step(P(-x, -y), P(-u, -v)) for (x, y), (u, v) in _given(whole)), Pen.THROUGH, True)
    one, other = clipped(turned, -10, 3)
    assert one.steps[-1].end == pytest.approx((3, -4))  # 3, 4, 5
    assert other.start == pytest.approx((3, 4))
    run = Curve(other.start, (*other.steps, *one.steps), Pen.THROUGH)
    assert not one.closed
    assert not other.closed
    for step in run.steps:
        assert step.through is not None
        assert math.hypot(*step.end) == pytest.approx(5)
        assert math.hypot(*step.through) == pytest.approx(5)


def _given(path: Curve) -> list[tuple[Point, Point]]:
    return [(end, through) for end, through in path.steps if through is not None]


def test_an_arc_that_bulges_over_is_cut_too() -> None:
    """Both ends of an arc may lie inside while its middle does not."""
    path = Curve(P(4, -1), arc(P(0, 0), math.hypot(4, 1), math.degrees(math.atan2(-1, 4)), 14.036243), Pen.SCORE)
    runs = clipped(path, 0, 4.05)
    assert len(runs) == 2
    assert max(x for run in runs for x, _ in run.points()) == pytest.approx(4.05)


def test_what_lies_outside_is_left_out() -> None:
    """A line beyond, and a circle beyond, leave nothing."""
    assert clipped(line(P(10, 0), P(12, 0), Pen.MARK), 0, 5) == []
    assert clipped(circle(P(10, 0), 3, Pen.THROUGH), 0, 5) == []
