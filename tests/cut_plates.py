"""A small part to cut, drawn by hand in round millimetres, and a table of operations."""

from __future__ import annotations

import math
from collections.abc import Sequence

import pytest
from hypothesis import strategies as st

from layout.cutting.stock.stock import Operation
from layout.drawing.pens import Pen
from layout.drawing.shapes import (
    Curve,
    Point,
    Region,
    Shape,
    Step,
    arc,
    circle,
    cross,
    filled,
    line,
    polygon,
    rectangle,
)
from layout.drawing.sheet import Sheet, painted
from templates_gen.document import About

OPERATIONS = {
    "engrave": Operation("#27358d", 0.1),
    "score": Operation("#2f9a74", 0.13),
    "cut": Operation("#c9391f", 0.01),
    "reference": Operation("#a19a8e", 0.1),
}
ABOUT = About("Heron frame: plate", '{"name": "Zoë Łukasz Ольга"}', OPERATIONS)
P = Point

SQUARE = rectangle(5, 55, 55, 105, Pen.REFERENCE)
"""The check square of 50 mm, above the plate."""

SLOT = Curve(
    P(20, 10),
    (Step(P(40, 10)), *arc(P(40, 13), 3, -90, 90), Step(P(20, 16)), *arc(P(20, 13), 3, 90, 270)),
    Pen.THROUGH,
    closed=True,
)
"""A slot of 20 x 6 mm with round ends, centre line at y = 13 mm."""

HOLE = circle(P(60, 13), 4, Pen.THROUGH)
OUTLINE = Curve(
    P(5, 0),
    (
        Step(P(95, 0)),
        *arc(P(95, 5), 5, -90, 0),
        Step(P(100, 35)),
        *arc(P(95, 35), 5, 0, 90),
        Step(P(5, 40)),
        *arc(P(5, 35), 5, 90, 180),
        Step(P(0, 5)),
        *arc(P(5, 5), 5, 180, 270),
    ),
    Pen.THROUGH,
    closed=True,
)
"""The plate: 100 x 40 mm with corners of 5 mm."""

RING = Region(
    (
        polygon((P(70, 25), P(80, 25), P(80, 35), P(70, 35)), Pen.ENGRAVE),
        polygon((P(72, 27), P(72, 33), P(78, 33), P(78, 27)), Pen.ENGRAVE),
    ),
    Pen.ENGRAVE,
)
"""A square of 10 mm with a hole of 6 mm."""

SCORES = tuple(line(P(x, 30), P(x, 38), Pen.SCORE) for x in (10, 20, 30))
CROSSES = tuple(hair for at in (P(-5, -5), P(105, -5), P(-5, 45)) for hair in cross(at, 2, Pen.REFERENCE))


def plate(*more: Shape, cuts: tuple[Curve, ...] = (SLOT, HOLE, OUTLINE), square: Curve | None = SQUARE) -> Sheet:
    """The plate on 120 x 120 mm, 10 mm from the left and the lower edge, with `more` shapes."""
    shapes = [RING, *SCORES, *cuts, *CROSSES, *([square] if square else []), *more]
    return Sheet("plate", 120, 120, painted(shapes))


@st.composite
def cut_sheets(draw: st.DrawFn) -> Sheet:
    """Outlines with holes, areas and scored lines at any places and sizes, each in a cell of its own."""
    shapes: list[Shape] = [SQUARE]
    for number in range(draw(st.integers(1, 5))):
        turned, share = draw(st.floats(0, 360)), draw(st.floats(0.1, 0.9))
        centre = P(200.0 * number + draw(st.floats(-20, 20)), draw(st.floats(150, 3000)))
        radius = draw(st.floats(2, 60))
        shapes.append(_area(centre, radius * share / 2, turned))
        shapes.append(_ring(centre, radius * share, turned, draw(st.floats(5, 355)), Pen.THROUGH))
        shapes.append(circle(centre, radius, Pen.THROUGH))
        end = P(centre.x + 70, centre.y + draw(st.floats(-9, 9)))
        shapes.append(line(P(centre.x + 62, centre.y), end, Pen.SCORE))
    return Sheet(draw(st.text("abcŵЖ ", max_size=8)), 1200, 3300, painted(shapes))


def _ring(centre: Point, radius: float, turned: float, sweep: float, pen: Pen) -> Curve:
    """An arc and its chord."""
    steps = arc(centre, radius, turned, turned + sweep)
    start = arc(centre, radius, turned + 1, turned)[-1].end
    return Curve(start, steps, pen, closed=True)


def _area(centre: Point, radius: float, turned: float) -> Region:
    outer = _ring(centre, radius, turned, 300, Pen.ENGRAVE)
    return Region((outer, _ring(centre, radius / 2, turned, -300, Pen.ENGRAVE)), Pen.ENGRAVE)


def assert_typed_by_hand(shapes: Sequence[Shape], within: float) -> None:
    """Whether a reader found the plate that was typed by hand, in `within` mm: an area, a score, a cut, a square."""
    area, score, cut, square = shapes
    assert area == filled((P(12.7, 20), P(25.4, 20), P(12.7, 30.5)), Pen.ENGRAVE)
    assert score == line(P(5, 5), P(5, 35), Pen.SCORE)
    assert square == rectangle(60, 5, 110, 55, Pen.REFERENCE)
    assert isinstance(cut, Curve)
    assert (cut.pen, cut.closed) == (Pen.THROUGH, True)
    corners = [(0, 0), (46, 0), (48.828427, 1.171573), (50, 4), (0, 40)]  # 46 + 4 cos 45°, 4 - 4 sin 45°
    for point, wanted in zip(cut.points(), corners, strict=True):
        assert tuple(point) == pytest.approx(wanted, abs=within)
    bend = math.radians(-67.5)  # the middle of the first eighth of a circle of 4 mm about 46, 4
    assert cut.steps[1].through == pytest.approx((46 + 4 * math.cos(bend), 4 + 4 * math.sin(bend)), abs=within)
