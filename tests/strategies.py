"""Hypothesis strategies shared by the tests."""

from __future__ import annotations

import math
from fractions import Fraction

from hypothesis import strategies as st

from layout.pens import Pen
from layout.shapes import Path, Point, Region, Step, Text, arc
from layout.sheet import Sheet

# Numbers of the weaver's trade: yarns, diameters, quantities.
tex_values = st.fractions(min_value=Fraction(1), max_value=Fraction(50_000), max_denominator=1000)
plies = st.integers(min_value=1, max_value=12)
millimetres = st.floats(min_value=0.01, max_value=5000)
shares_below_one = st.fractions(min_value=Fraction(0), max_value=Fraction(99, 100), max_denominator=1000)
filled_shares = st.floats(min_value=0.001, max_value=1.0)  # D / p: warp and weft together, as a part of the pitch
_NOT_A_SIZE = (0, 0.0, -1, -0.5, Fraction(-1, 3), math.nan, math.inf, -math.inf, True, 10**400)
not_positive = st.sampled_from(_NOT_A_SIZE)

# Shapes and sheets, for every file format.
_places = st.floats(min_value=-3000, max_value=3000)
points = st.builds(Point, _places, _places)
line_pens = st.sampled_from([pen for pen in Pen if not pen.ink.fills])
solid_pens = st.sampled_from([pen for pen in Pen if pen.ink.fills and pen is not Pen.TEXT])
angles = st.floats(min_value=-360, max_value=360)


@st.composite
def paths(draw: st.DrawFn, pens: st.SearchStrategy[Pen] = line_pens, closed: bool | None = None) -> Path:
    """Straight steps of a tenth of a millimetre or more, and arcs, in any mixture."""
    start = at = draw(points)
    steps: list[Step] = []
    for _ in range(draw(st.integers(1, 4))):
        if draw(st.booleans()):
            radius, turned = draw(st.floats(0.2, 60)), draw(angles)
            centre = Point(at.x - radius * math.cos(turned), at.y - radius * math.sin(turned))
            sweep = draw(st.sampled_from([-1, 1])) * draw(st.floats(5, 360))
            steps += arc(centre, radius, math.degrees(turned), math.degrees(turned) + sweep)
        else:
            end = draw(points)
            if math.dist(at, end) > 0.1:
                steps.append(Step(end))
        at = steps[-1].end if steps else at
    if not steps:
        steps.append(Step(Point(at.x + 1, at.y)))
    return Path(start, tuple(steps), draw(pens), draw(st.booleans()) if closed is None else closed)


@st.composite
def regions(draw: st.DrawFn) -> Region:
    """One to three closed contours under one pen."""
    pen = draw(solid_pens)
    return Region(tuple(draw(st.lists(paths(st.just(pen), closed=True), min_size=1, max_size=3))), pen)


def texts(letters: str) -> st.SearchStrategy[Text]:
    """Words of these letters, anywhere, at any angle, from 0.5 mm to 50 mm."""
    return st.builds(Text, points, st.floats(0.5, 50), st.text(letters, min_size=1, max_size=20), angles)


def sheets(letters: str) -> st.SearchStrategy[Sheet]:
    """Any mixture of shapes, in an order of their own, on a sheet of any size."""
    sizes = st.floats(min_value=1, max_value=3500)
    shapes = st.lists(st.one_of(paths(), regions(), texts(letters)), max_size=12).map(tuple)
    return st.builds(Sheet, st.text(max_size=8).filter(_whole), sizes, sizes, shapes)


def _whole(text: str) -> bool:
    return not any(0xD800 <= ord(letter) < 0xE000 for letter in text)
