"""The square check: what a caliper finds on the plate that a simulated beam leaves, on a cutter that is off."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

import pytest
import shapely
from beams import made_of
from golden import listed, matches
from ink import meetings
from kits import font_metrics, plan_of
from shapely import affinity

from layout.cutting.parts.square_check import BAND, SPAN, square_check
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import Scale
from layout.drawing.sheet import Part, Sheet
from layout.values.errors import FieldError
from templates_gen.inputs.stock_file import built_in

STOCK = built_in()


def drawn_for(stock: Stock) -> Part:
    """The plate for the test kit."""
    return square_check(plan_of(), stock, font_metrics())


class Sizes(NamedTuple):
    """What a caliper finds, in mm: four spans and two bands."""

    x: float
    y: float
    a: float
    b: float
    band_x: float
    band_y: float


def measured(plate: shapely.Polygon) -> Sizes:
    """Between the flat jaws of a caliper: how wide the plate is the way that each pair of flats looks."""
    east, north = (max(plate.interiors, key=lambda hole: hole.centroid.coords[0][along]) for along in (0, 1))

    def wide(ring: shapely.LinearRing, turn: float) -> tuple[float, float]:
        left, _, right, _ = affinity.rotate(ring, -turn, origin=(0, 0)).bounds
        return left, right

    def span(turn: float) -> float:
        normal = _flat(plate.exterior, turn)
        left, right = wide(plate.exterior, normal)
        return right - left

    bands = []
    for hole, turn in ((east, 0.0), (north, 90.0)):
        normal = _flat(plate.exterior, turn)
        bands.append(wide(plate.exterior, normal)[1] - wide(hole, normal)[1])
    return Sizes(span(0.0), span(90.0), span(45.0), span(-45.0), *bands)


def _flat(ring: shapely.LinearRing, turn: float) -> float:
    """Which way the flat looks that lies furthest out near that way, in degrees."""
    corners = list(ring.coords)
    sides = [(math.dist(a, b), a, b) for a, b in pairwise(corners) if math.dist(a, b) > 20]
    ways = [math.degrees(math.atan2(-(b[0] - a[0]), b[1] - a[1])) for _, a, b in sides]
    ways = [way + half for way in ways for half in (0.0, 180.0)]
    return min(ways, key=lambda way: abs(math.remainder(way - turn, 360)))


def cut_on(stock: Stock, scale: Scale, kerf: float) -> shapely.Polygon:
    """The plate as a cutter with this scale and another kerf than the stock's leaves it."""
    part = drawn_for(stock)
    lines = replace(STOCK, kerf_x=1e-6, kerf_y=1e-6)
    bare = made_of(part.shapes, lines)
    moved = affinity.affine_transform(bare, [scale.x, scale.skew, 0.0, scale.y, 0.0, 0.0])
    return moved.buffer(-kerf / 2, join_style="mitre")


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
