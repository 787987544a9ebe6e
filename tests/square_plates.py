"""Square checks as a simulated beam leaves them, and what a caliper finds on them."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

import shapely
from beams import made_of
from kits import font_metrics, plan_of
from shapely import affinity

from layout.cutting.parts.square_check import square_check
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import Scale
from layout.drawing.sheet import Part
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
