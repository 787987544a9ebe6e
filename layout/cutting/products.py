"""What can be cut from a stock for a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from layout.cutting.comb import comb
from layout.cutting.reference import reference_square
from layout.cutting.shed_stick import shed_stick
from layout.cutting.stock import Stock
from layout.cutting.winding_comb import winding_comb
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.errors import FieldError
from layout.frames.frame import FlatEnd, RoundBar
from layout.plan import Plan

Builds = Callable[[Plan, Stock, FontMetrics], tuple[Part, ...]]
"""Makes the parts of a product as they lie on the stock; FieldError, in one sentence, where that cannot be."""


def _always(_: Plan) -> bool:
    return True


class CutProduct(NamedTuple):
    """One thing to cut, of one part or several. `suits` tells whether a plan asks for it."""

    builds: Builds
    suits: Callable[[Plan], bool] = _always
    forms: tuple[str, ...] = ("svg", "dxf", "pdf")

    def alone(self, plan: Plan, stock: Stock, metrics: FontMetrics) -> tuple[Part, ...]:
        """The parts as a file of their own holds them: with the reference square."""
        return (*self.builds(plan, stock, metrics), reference_square(metrics))


def turns(stock: Stock) -> tuple[int, ...]:
    """By which turns a part may be placed on the stock: none where a grain, or a kerf of two widths, forbids it."""
    return (0, 90) if stock.grain == "none" and stock.kerf_x == stock.kerf_y else (0,)


def _wound(plan: Plan) -> bool:
    return isinstance(plan.kit.frame.ends, RoundBar | FlatEnd)


CUT_PRODUCTS: Mapping[str, CutProduct] = {
    "comb": CutProduct(lambda plan, stock, metrics: (comb(plan, stock, metrics),)),
    "winding-comb": CutProduct(
        lambda plan, stock, metrics: (
            winding_comb(plan, "near", stock, metrics),
            winding_comb(plan, "far", stock, metrics),
        ),
        _wound,
    ),
    "shed-stick": CutProduct(lambda plan, stock, metrics: (shed_stick(plan, stock, metrics),)),
}
"""Everything that can be cut, in the order of its files."""


def cut_suiting(plan: Plan) -> tuple[str, ...]:
    """The names of the products that suit `plan`, in order."""
    return tuple(name for name, product in CUT_PRODUCTS.items() if product.suits(plan))


def why_not(name: str, plan: Plan, stock: Stock, metrics: FontMetrics) -> FieldError | None:
    """What keeps a product from being cut from this stock; None if nothing does."""
    try:
        CUT_PRODUCTS[name].builds(plan, stock, metrics)
    except FieldError as error:
        return error
    return None
