from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from kits import kit_of

from layout.drawing.shapes import Box, Placing, Point
from layout.paper.area import Area, printable


@st.composite
def boxes(draw: st.DrawFn, most: float = 150) -> Box:
    """Any upright box."""
    left, bottom = draw(st.floats(-20, 220)), draw(st.floats(-20, 300))
    return left, bottom, left + draw(st.floats(1, most)), bottom + draw(st.floats(1, most))


@given(boxes(), st.floats(-180, 180), st.lists(boxes(60), max_size=3))
def test_holding_is_what_shapely_says(box: Box, turn: float, taken: list[Box]) -> None:
    """A turned box is held where shapely finds it inside the area and off every box that is taken."""
    area = Area(8, 13, 200, 265, tuple(taken))
    placing = Placing(turn, 60.0, 40.0)
    laid = shapely.Polygon(placing.points([Point(x, y) for x, y in shapely.box(*box).exterior.coords[:-1]]))
    bare = shapely.box(area.left, area.bottom, area.right, area.top)
    others = [shapely.box(*other) for other in taken]
    if area.holds(box, placing):
        assert bare.buffer(1e-6).contains(laid)
        assert all(laid.intersection(other).area < 1e-4 for other in others)
    else:
        well_inside = bare.buffer(-1e-6).contains(laid)
        assert not (well_inside and all(laid.distance(other) > 1e-6 for other in others))


def test_touching_is_no_meeting() -> None:
    """A box may lie against the margin and against what is there."""
    area = Area(8, 13, 200, 265, ((8.0, 200.0, 100.0, 265.0),))
    assert area.holds((0, 0, 50, 20), Placing(0, 8, 180))
    assert area.holds((0, 0, 50, 20), Placing(0, 100, 245))
    assert not area.holds((0, 0, 50, 20), Placing(0, 99.9, 245))
    assert not area.holds((0, 0, 50, 20), Placing(0, 7.9, 180))


@pytest.mark.parametrize(
    ("size", "width", "height"),
    [
        ("a4", 210, 297),  # ISO 216
        ("a3", 297, 420),  # ISO 216
        ("letter", 215.9, 279.4),  # ASME Y14.1
        ("11x17", 279.4, 431.8),  # ASME Y14.1
    ],
)
def test_margins(size: str, width: float, height: float) -> None:
    """8 mm stay free at the sides, 13 mm at top and bottom, of the sheet as the standard has it (to half a point)."""
    area = printable(kit_of({"paper.size": size}).paper)
    assert (area.left, area.bottom) == (8, 13)
    assert (area.width, area.height) == pytest.approx((width - 16, height - 26), abs=25.4 / 72 / 2)


def test_common_fits_both() -> None:
    """The common sheet is no larger than A4 (ISO 216) and Letter (ASME Y14.1), either way."""
    paper = kit_of().paper
    assert paper.name == "common"
    assert paper.width <= min(210, 215.9)
    assert paper.height <= min(297, 279.4)
