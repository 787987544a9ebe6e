"""Two halves of an arc are written as one: the same line, in fewer steps, and only where nobody is misled by it."""

from __future__ import annotations

import math

import pytest
from ezdxf.math import cubic_bezier_from_arc
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, arc
from templates_gen.readers.arcs import steps_of_arc, steps_of_bulge
from templates_gen.writers.curves import joined, turn

CENTRE = Point(40.0, 30.0)
radii, angles = st.floats(0.06, 3.5), st.floats(-180, 180)


def drawn(radius: float, begin: float, by: float) -> Curve:
    """A part of a circle as it is drawn: equal steps of at most 45 degrees."""
    at = math.radians(begin)
    start = Point(CENTRE.x + radius * math.cos(at), CENTRE.y + radius * math.sin(at))
    return Curve(start, arc(CENTRE, radius, begin, begin + by), Pen.CUT)


@given(radii, angles, st.floats(5, 360), st.booleans())
def test_what_is_read_again_is_what_was_drawn(radius: float, begin: float, by: float, back: bool) -> None:
    """From the radius as SVG has it, and from the bulge of DXF: every end and every middle, to a nanometre."""
    curve = drawn(radius, begin, -by if back else by)
    found: dict[str, list[Step]] = {"svg": [], "dxf": []}
    at = curve.start
    for end, through in joined(curve).steps:
        assert through is not None
        found["svg"] += steps_of_arc(at, radius, not back, end)
        found["dxf"] += steps_of_bulge(at, math.tan(turn(at, through, end) / 4), end)
        at = end
    for steps in found.values():
        assert len(steps) == len(curve.steps)
        for step, own in zip(steps, curve.steps, strict=True):
            assert step.through is not None
            assert own.through is not None
            assert math.dist(step.end, own.end) < 1e-6
            assert math.dist(step.through, own.through) < 1e-6


@pytest.mark.parametrize(
    ("radius", "by", "steps"),
    [(3.5, 360, 4), (3.5, 90, 1), (3.5, 60, 1), (3.5, 58, 2), (3.5, 135, 2), (3.5, 45, 1), (3.6, 90, 2), (0.03, 90, 2)],
)
def test_halves_are_joined_where_that_is_plain(radius: float, by: float, steps: int) -> None:
    """A circle is four quarters. A large arc, a tiny one, and one that may pass for a half stay as they are drawn."""
    assert len(joined(drawn(radius, 17.0, by)).steps) == steps


def test_two_arcs_of_two_circles_stay_two() -> None:
    """One that turns the other way, a larger one that goes on in the same direction, one that goes less far."""
    curve = drawn(2.0, 0.0, 45.0)
    end, way = curve.steps[0].end, math.radians(45.0)
    for radius, by in ((-2.0, 45.0), (3.0, 45.0), (2.0, 40.0)):
        middle = Point(end.x - radius * math.cos(way), end.y - radius * math.sin(way))
        on = 225.0 if radius < 0 else 45.0
        (further,) = arc(middle, abs(radius), on, on + math.copysign(by, radius))
        both = curve._replace(steps=(*curve.steps, further))
        assert joined(both) == both


def test_one_curve_for_a_quarter_is_less_than_a_micrometre_off() -> None:
    """The curve that ezdxf makes of the largest quarter that is written as one arc."""
    (curve,) = cubic_bezier_from_arc(center=(0, 0, 0), radius=3.5, start_angle=0, end_angle=90, segments=1)
    off = max(abs(point.magnitude - 3.5) for point in curve.approximate(1000))
    assert 0.0009 < off < 0.001
