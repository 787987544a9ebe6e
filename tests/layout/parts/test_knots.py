"""The picture of two half hitches, crossing by crossing.

The thread comes down to the bar and round it. Its end then goes over the standing part, behind it, and out over its own
turn; and the same once more, the same way round (two half hitches, as sailors and weavers tie them; C. W. Ashley, The
Ashley Book of Knots, 1944, from memory).
"""

from __future__ import annotations

from itertools import pairwise
from math import dist

import pytest

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.parts.leaflet.pictures.ground import mirrored
from layout.parts.winding.knots import HITCHES, WIDE, tied

STANDING, NEAR = 8.0, 1e-6  # the x of the standing part


def curves(*, left: bool) -> list[Curve]:
    """What is drawn of the thread, tied from the left or from the right."""
    shapes = tied(HITCHES, Point(0, 0))
    return [
        each
        for each in (shapes if left else mirrored(shapes, WIDE / 2))
        if isinstance(each, Curve) and each.pen is Pen.THREAD
    ]


def through(drawn: list[Curve], at: Point) -> set[str]:
    """How each thread that is seen at a place lies there: level or upright."""
    found = set()
    for one, other in (pair for curve in drawn for pair in pairwise(curve.points())):
        along = max(dist(one, other), 1e-9)
        off = abs((at.x - one.x) * (other.y - one.y) - (at.y - one.y) * (other.x - one.x)) / along
        share = ((at.x - one.x) * (other.x - one.x) + (at.y - one.y) * (other.y - one.y)) / along**2
        if off < 0.05 and -NEAR < share < 1 + NEAR:
            found.add("level" if abs(other.x - one.x) > abs(other.y - one.y) else "upright")
    return found


@pytest.mark.parametrize("left", [True, False])
def test_two_half_hitches(left: bool) -> None:
    """At each crossing the end is whole, or the standing part, with white beside it."""
    drawn = curves(left=left)
    places = {
        "over the standing part": (Point(STANDING, 6.8), Point(STANDING, 13.8)),
        "behind it": (Point(STANDING, 3.0), Point(STANDING, 10.0)),
        "over its own turn": (Point(13.0, 3.0), Point(17.0, 10.0)),
    }
    for name, points in places.items():
        for at in points:
            x = at.x if left else WIDE - at.x
            seen, beside = through(drawn, Point(x, at.y)), through(drawn, Point(x, at.y - 0.5))
            if name == "behind it":
                assert (seen, beside) == ({"upright"}, {"upright"}), f"{name} at {at}"
            else:
                assert "level" in seen, f"{name} at {at}"
                assert beside == set(), f"{name} at {at}"


def test_those_are_all_crossings() -> None:
    """The standing part is passed over twice and is seen twice over the end, and nothing else crosses it."""
    heights = [k / 20 for k in range(10, 380)]
    seen = ["upright" in through(curves(left=True), Point(STANDING, y)) for y in heights]
    hidden = [not one and other for one, other in pairwise(seen)]
    assert sum(hidden) == 2
