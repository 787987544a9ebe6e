"""What is left of a printed part once it is cut out, and the part without its scissors."""

from __future__ import annotations

import pytest
from kits import KINDS, font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region, Shape, Text
from layout.drawing.sheet import Part
from layout.paper.joints import joints_of, pieces
from layout.parts.spacing_guide import spacing_guide
from layout.parts.strip import strip
from layout.parts.wrap_gauge import gauge_card

METRICS = font_metrics()


def of_a_box(kind: str) -> list[Part]:
    """Strips, guides and gauge of a kit of that kind."""
    planned = plan_of(KINDS[kind])
    ends = ("near", "far")
    drawn = [make(planned, end, METRICS) for make in (strip, spacing_guide) for end in ends]
    return [*drawn, gauge_card(planned, METRICS)]


def reach(shape: Shape) -> list[tuple[float, float]]:
    """The points that a shape goes through; of words, where they begin."""
    if isinstance(shape, Text):
        return [shape.at]
    paths = shape.contours if isinstance(shape, Region) else (shape,)
    return [at for path in paths for at in path.points()]


def past_trim(part: Part) -> list[Shape]:
    """What reaches past the trim, words outside a card but for."""
    left, low, right, high = part.trim
    more = 0.2  # the width of a line
    return [
        shape
        for shape in part.shapes
        if not isinstance(shape, Text)
        for x, y in reach(shape)
        if not (left - more <= x <= right + more and low - more <= y <= high + more)
    ]


@pytest.mark.parametrize("kind", KINDS)
def test_the_trim_is_the_outline_that_is_cut(kind: str) -> None:
    """It is the one closed line that is cut round the part."""
    for part in of_a_box(kind):
        outline = max(
            (each for each in part.shapes if isinstance(each, Curve) and each.pen is Pen.CUT and each.closed),
            key=lambda each: len({at.x for at in each.points()}) and max(at.x for at in each.points()),
        )
        xs, ys = zip(*outline.points(), strict=True)
        assert part.trim == (min(xs), min(ys), max(xs), max(ys))


@pytest.mark.parametrize("kind", KINDS)
def test_a_bare_part_ends_at_its_trim(kind: str) -> None:
    """Without its scissors nothing but words is drawn outside it, and nothing else is lost."""
    for part in of_a_box(kind):
        bare = part.bare
        assert (bare.box, bare.scissors) == (part.trim, ())
        assert past_trim(bare) == []
        assert len(bare.shapes) == len(part.shapes) - len(part.scissors)
        assert bool(past_trim(part)) == bool(part.scissors)


@pytest.mark.parametrize("kind", ["round bars", "flat ends"])
def test_pieces_are_bare_too(kind: str) -> None:
    """A long strip in pieces has its scissors on one of them, and none once they are bare."""
    planned = plan_of(KINDS[kind])
    part = strip(planned, "near", METRICS)
    cut = pieces(part, joints_of(part, 2), METRICS, planned.words)
    assert any(past_trim(piece) for piece in cut)
    assert not any(past_trim(piece.bare) for piece in cut)


def test_what_is_not_cut_is_left_whole() -> None:
    """A part without cut lines is its own trim."""
    part = Part("p", "p", (), (), (1.0, 2.0, 3.0, 4.0))
    assert part.trim == part.box
    assert part.bare == part
