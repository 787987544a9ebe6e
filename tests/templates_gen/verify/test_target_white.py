"""Nothing lies in the white of a target: 2 mm round its middle, which a scan needs to find it (our own choice)."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import cache

import pytest
from kits import font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Text, filled, line
from layout.drawing.sheet import Sheet
from templates_gen.files.outputs import Outputs
from templates_gen.messages.roles.proof import Furnished
from templates_gen.verify.printed.furniture import check_furniture

REACH, NEAR = 2.0, 0.003  # mm


@cache
def winding() -> Sheet:
    """A sheet as it must be."""
    return Outputs(plan_of({}), font_metrics()).output("winding.pdf").sheets[0]


def middles() -> list[Point]:
    """The middle of every target: a ring begins at its rightmost point, 1.2 mm from there."""
    rings = [each for each in winding().shapes if isinstance(each, Curve) and each.pen is Pen.TARGET]
    return [Point(ring.start.x - 1.2, ring.start.y) for ring in rings]


def touches(shape: Shape) -> int:
    """In the white of how many targets something lies once this shape is drawn too."""
    sheet = winding()
    problems = check_furniture(replace(sheet, shapes=(*sheet.shapes, shape)), ["winding"]).problems
    return sum(each.what.role is Furnished.WHITE for each in problems)


def beside(at: Point, turn: float, off: float, pen: Pen) -> Curve:
    """A line across the direction `turn`, which passes `off` mm from a place."""
    x, y = at.x + off * math.cos(turn), at.y + off * math.sin(turn)
    along = -0.4 * math.sin(turn), 0.4 * math.cos(turn)
    return line(Point(x - along[0], y - along[1]), Point(x + along[0], y + along[1]), pen)


@pytest.mark.parametrize("pen", [Pen.MARK, Pen.CUT, Pen.THREAD])
@pytest.mark.parametrize("eighth", range(8))
def test_a_line_beside_a_target(eighth: int, pen: Pen) -> None:
    """From every side it is found as soon as its ink reaches into the white, and not before."""
    edge = REACH + pen.ink.width / 2
    for at in middles():
        turn = math.radians(45 * eighth)
        assert touches(beside(at, turn, edge - NEAR, pen)) == 1
        assert touches(beside(at, turn, edge + NEAR, pen)) == 0


def test_a_line_that_only_passes() -> None:
    """A long line whose ends are far off is found where it passes through the white."""
    for at in middles():
        assert touches(line(Point(at.x - 9, at.y - 9), Point(at.x + 9, at.y + 9), Pen.MARK)) == 1


def test_areas_and_words() -> None:
    """An area is found by its edge, words by where they begin."""
    for x, y in middles():
        assert touches(filled([Point(x + 1.9, y), Point(x + 3, y + 1), Point(x + 3, y - 1)], Pen.SOLID)) == 1
        assert touches(Text(Point(x + 1.9, y), 3, "word")) == 1
        assert touches(Text(Point(x + 2.1, y), 3, "word")) == 0
