"""Stocks for the tests of everything that is cut, and the parts of a plan on them."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import shapely
from beams import area_of, cuts_of
from kits import font_metrics

from layout.cutting.products import CUT_PRODUCTS
from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Part, Piece, Sheet, sheet_of, stacked
from layout.plan import Plan
from templates_gen.inputs import stock_file as stockfile
from templates_gen.lettering.outlines import outlined


@cache
def _built_in() -> Stock:
    return stockfile.built_in()


def stock_with(**changes: object) -> Stock:
    """The built-in stock on a large sheet, changed field by field; `kerf` sets both ways."""
    if "kerf" in changes:
        changes["kerf_x"] = changes["kerf_y"] = changes.pop("kerf")
    return replace(_built_in(), **({"width": 3000.0, "height": 3000.0} | changes))  # type: ignore[arg-type]


def parts_of(name: str, planned: Plan, stock: Stock) -> tuple[Part, ...]:
    """The parts of a product."""
    return CUT_PRODUCTS[name].builds(planned, stock, font_metrics())


def file_of(name: str, planned: Plan, stock: Stock) -> tuple[Sheet, list[Piece]]:
    """The sheet of a product's own file, with the reference square, and where its parts lie."""
    parts = CUT_PRODUCTS[name].alone(planned, stock, font_metrics())
    return outlined(sheet_of(name, parts)), [Piece(*each) for each in zip(parts, stacked(parts), strict=True)]


def drawn_area(part: Part) -> shapely.Polygon:
    """What lies inside the drawn outline of a part and outside its holes."""
    *holes, outer = cuts_of(part.shapes)
    return area_of(outer, holes)
