"""What can be cut from a stock for a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from layout.cutting.parts.comb import comb
from layout.cutting.parts.end_bars import end_bar, layers
from layout.cutting.parts.gauge_board import gauge_board
from layout.cutting.parts.guide_bar import guide_bar
from layout.cutting.parts.peg_jig import peg_jig
from layout.cutting.parts.reference_square import reference_square
from layout.cutting.parts.shed_stick import shed_stick
from layout.cutting.parts.square_check import square_check
from layout.cutting.parts.trial_cut import trial_cut
from layout.cutting.parts.winding_comb import winding_comb
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.plan import Plan
from layout.warps.warp import End

Builds = Callable[[Plan, Stock, FontMetrics], tuple[Part, ...]]
"""Makes the parts of a product as they lie on the stock; FieldError, in one sentence, where that cannot be."""


def _always(_: Plan) -> bool:
    return True


def _once(_: Plan, __: Stock) -> int:
    return 1


class CutProduct(NamedTuple):
    """One thing to cut, of one part or several. `suits` says whether a plan asks for it.

    `copies` is how often each part is needed; the boards hold them all. What `checks` the cutter is made only where it
    is asked for, lies on no board, and is drawn without the scale of the stock, which it measures.
    """

    builds: Builds
    suits: Callable[[Plan], bool] = _always
    forms: tuple[str, ...] = ("svg", "dxf", "pdf")
    copies: Callable[[Plan, Stock], int] = _once
    checks: bool = False

    def alone(self, plan: Plan, stock: Stock, metrics: FontMetrics) -> tuple[Part, ...]:
        """The parts as a file of their own holds them: with the reference square."""
        return (*self.builds(plan, stock, metrics), reference_square(metrics, plan.words))


def turns(stock: Stock) -> tuple[int, ...]:
    """By which turns a part may be placed on the stock: none where a grain, or a kerf of two widths, forbids it."""
    return (0, 90) if stock.grain == "none" and stock.kerf_x == stock.kerf_y else (0,)


def _both(build: Callable[[Plan, End, Stock, FontMetrics], Part]) -> Builds:
    """A product with a part for each frame end."""
    return lambda plan, stock, metrics: (build(plan, "near", stock, metrics), build(plan, "far", stock, metrics))


def _one(build: Callable[[Plan, Stock, FontMetrics], Part]) -> Builds:
    return lambda plan, stock, metrics: (build(plan, stock, metrics),)


def _goes_with(name: str) -> Callable[[Plan], bool]:
    """Whether the frame ends of a plan ask for the product."""
    return lambda plan: name in plan.kit.frame.ends.cut_parts and (name != "winding-comb" or bool(plan.warp.winds))


CUT_PRODUCTS: Mapping[str, CutProduct] = {
    "comb": CutProduct(_one(comb)),
    "winding-comb": CutProduct(_both(winding_comb), _goes_with("winding-comb")),
    "wrap-gauge-cut": CutProduct(_one(gauge_board)),
    "spacing-guide-cut": CutProduct(_one(guide_bar)),
    "shed-stick": CutProduct(_one(shed_stick)),
    "end-bars": CutProduct(_both(end_bar), _goes_with("end-bars"), copies=layers),
    "peg-jig": CutProduct(_both(peg_jig), _goes_with("peg-jig")),
    "trial-cut": CutProduct(_one(trial_cut)),
    "square-check": CutProduct(_one(square_check), checks=True),
}
"""Everything that can be cut, in the order of its files."""


def cut_suiting(plan: Plan) -> tuple[str, ...]:
    """The names of the products that suit `plan`, in order."""
    return tuple(name for name, product in CUT_PRODUCTS.items() if product.suits(plan))
