"""What a machine makes of a corrected drawing is the drawing: two pieces of code that share none agree."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.cutting.parts.outline import boxed, outline
from layout.drawing.arcs import radius, turn
from layout.drawing.correction import Scale, corrected
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, circle, line
from layout.drawing.sheet import Sheet
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.as_made import all_made, middle_of_circle

SHARES = st.floats(-0.03, 0.03)
SCALES = st.builds(lambda x, y, skew: Scale(1 + x, 1 + y, skew), SHARES, SHARES, SHARES)
PLATE = outline(boxed(20, 30, 180, 240, 15.0))
HOLE, SCORE = circle(Point(150, 60), 4.0, Pen.THROUGH), line(Point(30, 40), Point(170, 230), Pen.SCORE)
SHEET = Sheet("plate", 200.0, 270.0, (PLATE, HOLE, SCORE))


def made_by(scale: Scale) -> list[Shape]:
    """What a machine with this scale makes of the corrected sheet, whose middle stands still."""

    def made(at: Point) -> Point:
        dx, dy = at.x - SHEET.width / 2, at.y - SHEET.height / 2
        return Point(SHEET.width / 2 + scale.x * dx + scale.skew * dy, SHEET.height / 2 + scale.y * dy)

    return all_made(corrected(SHEET, scale).shapes, made)


@given(SCALES)
def test_a_correction_is_taken_out_again(scale: Scale) -> None:
    """Every point that was drawn is back at its place, and every other lies on the old outline to a micrometre."""
    back = made_by(scale)
    plate, hole, score = (shape for shape in back if isinstance(shape, Curve))
    there = [*plate.points()]
    assert all(min(math.dist(at, other) for other in there) < 1e-9 for at in PLATE.points())
    for found, wanted in ((hole, HOLE), (score, SCORE)):
        assert all(math.dist(at, there) < 1e-9 for at, there in zip(found.points(), wanted.points(), strict=True))
    for corner in (Point(35, 45), Point(165, 45), Point(165, 225), Point(35, 225)):
        near = [step.through for step in plate.steps if step.through and math.dist(step.through, corner) < 16]
        assert near
        assert all(abs(math.dist(at, corner) - 15.0) <= LIMIT for at in near)


@given(SCALES)
def test_what_is_corrected_may_be_drawn(scale: Scale) -> None:
    """No arc turns by more than 45 degrees, as writers want it, and each passes through its own middle."""
    for shape in corrected(SHEET, scale).shapes:
        assert isinstance(shape, Curve)
        start = shape.start
        for end, through in shape.steps:
            if through is not None:
                assert abs(turn(start, through, end)) <= 0.7854
                assert math.dist(start, through) == pytest.approx(math.dist(through, end), abs=1e-7)
                assert radius(start, through, end) > 3.9
            start = end


def test_circles_are_known_from_other_outlines() -> None:
    """A circle has a middle; an ellipse, half a circle and a plate have none."""
    round_one = circle(Point(3, 4), 5.0, Pen.THROUGH)
    assert middle_of_circle(round_one) == pytest.approx(Point(3, 4))
    wide = [
        (Point(1.01 * end.x, end.y), through and Point(1.01 * through.x, through.y)) for end, through in round_one.steps
    ]
    steps = tuple(type(round_one.steps[0])(*step) for step in wide)
    assert (
        middle_of_circle(round_one._replace(start=Point(1.01 * round_one.start.x, round_one.start.y), steps=steps))
        is None
    )
    assert middle_of_circle(round_one._replace(steps=round_one.steps[: len(round_one.steps) // 2])) is None
    assert middle_of_circle(PLATE) is None
