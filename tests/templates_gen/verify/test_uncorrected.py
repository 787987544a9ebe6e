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
from layout.drawing.shapes import Curve, Point, Text, circle, line
from layout.drawing.sheet import Sheet
from templates_gen.verify import LIMIT
from templates_gen.verify.uncorrected import middle_of_circle, uncorrected

SHARES = st.floats(-0.03, 0.03)
SCALES = st.builds(lambda x, y, skew: Scale(1 + x, 1 + y, skew), SHARES, SHARES, SHARES)
PLATE = outline(boxed(20, 30, 180, 240, 15.0))
HOLE, SCORE = circle(Point(150, 60), 4.0, Pen.THROUGH), line(Point(30, 40), Point(170, 230), Pen.SCORE)
SHEET = Sheet("plate", 200.0, 270.0, (PLATE, HOLE, SCORE))


@given(SCALES)
def test_a_correction_is_taken_out_again(scale: Scale) -> None:
    """Every point that was drawn is back at its place, and every other lies on the old outline to a micrometre."""
    back = uncorrected(corrected(SHEET, scale), scale).shapes
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


@given(SCALES, st.sampled_from([0.0, 45.0, 90.0, 180.0, -90.0]))
def test_words_move_with_where_they_begin(scale: Scale, angle: float) -> None:
    """They keep their size, and lie along what they lay along."""
    text = Text(Point(40, 50), 3.0, "words", angle)
    (drawn,) = corrected(Sheet("", 200, 200, (text,)), scale).shapes
    (back,) = uncorrected(Sheet("", 200, 200, (drawn,)), scale).shapes
    assert isinstance(back, Text)
    assert back.at == pytest.approx(text.at, abs=1e-9)
    assert math.remainder(back.angle - text.angle, 360) == pytest.approx(0, abs=1e-9)
    assert back.size == text.size


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
