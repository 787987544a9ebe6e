from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.arcs import arc_length, halved, turn
from layout.drawing.shapes import Point, arc


@given(st.floats(0.2, 500), st.floats(-360, 360), st.floats(1, 45), st.sampled_from([-1, 1]))
def test_an_arc_in_two_halves_is_the_same_arc(radius: float, begin: float, sweep: float, way: int) -> None:
    """All points lie on the circle that the arc was made on, and the two turn and measure as much as the one."""
    centre = Point(12, -7)
    angle = math.radians(begin)
    start = Point(centre.x + radius * math.cos(angle), centre.y + radius * math.sin(angle))
    ((end, through),) = arc(centre, radius, begin, begin + way * sweep)
    assert through is not None
    one, other = halved(start, through, end)
    assert (one.end, other.end) == (through, end)
    assert one.through is not None
    assert other.through is not None
    for point in (one.through, other.through):
        assert math.dist(point, centre) == pytest.approx(radius, rel=1e-9)
    turns = turn(start, one.through, through) + turn(through, other.through, end)
    assert turns == pytest.approx(math.radians(way * sweep), rel=1e-6)
    lengths = arc_length(start, one.through, through) + arc_length(through, other.through, end)
    assert lengths == pytest.approx(arc_length(start, through, end), rel=1e-6)
