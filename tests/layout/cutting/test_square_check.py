"""The square check: what a caliper finds on the plate that a simulated beam leaves, on a cutter that is off."""

from __future__ import annotations

from dataclasses import replace

import pytest
from beams import made_of
from golden import listed, matches
from ink import meetings
from square_plates import STOCK, cut_on, drawn_for, measured

from layout.cutting.parts.square_check import BAND, SPAN
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import Scale
from layout.drawing.sheet import Sheet
from layout.values.errors import FieldError


@pytest.mark.parametrize("drawn", [True, False])
@pytest.mark.parametrize("kerf", [0.1, 0.2, 0.35])
def test_a_span_less_its_band_is_free_of_the_kerf(kerf: float, drawn: bool) -> None:
    """Whatever kerf the stock says and whatever the beam takes, 130 mm are 130 mm, and the diagonals are alike."""
    found = measured(cut_on(replace(STOCK, kerf_drawn=drawn), Scale(), kerf))
    assert found.x - found.band_x == pytest.approx(SPAN - BAND, abs=1e-3)
    assert found.y - found.band_y == pytest.approx(SPAN - BAND, abs=1e-3)
    assert found.a == pytest.approx(found.b, abs=1e-3)


def test_with_the_right_kerf_the_plate_is_what_it_says() -> None:
    """140 mm from flat to flat, both bands 10 mm, within the reach of a caliper of 150 mm."""
    assert measured(made_of(drawn_for(STOCK).shapes, STOCK)) == pytest.approx((140, 140, 140, 140, 10, 10), abs=2e-3)


def test_a_cutter_that_is_off_is_seen_in_the_spans() -> None:
    """Stretched along x, x grows; leaning to the right, the diagonal A is longer than B by the lean of 140 mm."""
    wide = measured(cut_on(STOCK, Scale(1.002, 1.0, 0.0), 0.2))
    assert wide.x - wide.band_x == pytest.approx(130 * 1.002, abs=1e-3)
    leaning = measured(cut_on(STOCK, Scale(1.0, 1.0, 0.001), 0.2))
    assert leaning.a - leaning.b == pytest.approx(0.14, abs=1e-3)


@pytest.mark.parametrize("grain", ["x", "y", "none"])
def test_it_is_never_turned(grain: str) -> None:
    """X is measured along x of the cutter, whatever the grain: the window of X lies to the right."""
    plate = made_of(drawn_for(replace(STOCK, grain=grain)).shapes, STOCK)  # type: ignore[arg-type]
    middles = sorted(tuple(map(round, hole.centroid.coords[0])) for hole in plate.interiors)
    assert middles == [(0, 52), (52, 0)]


@pytest.mark.parametrize("stock", [STOCK, replace(STOCK, name="W" * 60), replace(STOCK, kerf_x=3.0, kerf_y=1.0)])
def test_nothing_lies_on_the_words(stock: Stock) -> None:
    """Every engraved word keeps white around it."""
    assert meetings(Sheet("", 400, 400, drawn_for(stock).shapes), 0.3) == []


def test_a_scale_of_the_stock_changes_nothing() -> None:
    """It is drawn without: what is measured on it is the whole scale, however often it is cut."""
    assert drawn_for(replace(STOCK, scale=Scale(1.01, 0.99, 0.01))) == drawn_for(STOCK)


def test_a_sheet_too_small_is_refused() -> None:
    """The sentence names the sheet."""
    with pytest.raises(FieldError, match=r"sheet\.width: needs at least 141 mm for a part .*: Square check, got"):
        drawn_for(replace(STOCK, width=120.0))


def test_the_golden_drawing() -> None:
    """The plate for the built-in stock, place by place."""
    assert matches("square-check", listed(drawn_for(STOCK)))
