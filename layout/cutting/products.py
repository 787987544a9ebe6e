"""What can be cut from a stock for a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.plan import Plan

if TYPE_CHECKING:
    from layout.cutting.builds import Builds
    from layout.cutting.stock.stock import Stock


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
        from layout.cutting.parts.reference_square import reference_square

        return (*self.builds(plan, stock, metrics), reference_square(metrics, plan.words))


def turns(stock: Stock) -> tuple[int, ...]:
    """By which turns a part may be placed on the stock: none where a grain, or a kerf of two widths, forbids it."""
    return (0, 90) if stock.grain == "none" and stock.kerf_x == stock.kerf_y else (0,)


def _built(name: str) -> Builds:
    """Builds the product of that name; what draws the parts is loaded then, since much is done without."""

    def build(plan: Plan, stock: Stock, metrics: FontMetrics) -> tuple[Part, ...]:
        from layout.cutting.builds import BUILDS

        return BUILDS[name](plan, stock, metrics)

    return build


def _layers(plan: Plan, stock: Stock) -> int:
    from layout.cutting.parts.end_bars import layers

    return layers(plan, stock)


def _goes_with(name: str) -> Callable[[Plan], bool]:
    """Whether the frame ends of a plan ask for the product."""
    return lambda plan: name in plan.kit.frame.ends.cut_parts and (name != "winding-comb" or bool(plan.warp.winds))


CUT_PRODUCTS: Mapping[str, CutProduct] = {
    "comb": CutProduct(_built("comb")),
    "winding-comb": CutProduct(_built("winding-comb"), _goes_with("winding-comb")),
    "wrap-gauge-cut": CutProduct(_built("wrap-gauge-cut")),
    "spacing-guide-cut": CutProduct(_built("spacing-guide-cut")),
    "shed-stick": CutProduct(_built("shed-stick")),
    "end-bars": CutProduct(_built("end-bars"), _goes_with("end-bars"), copies=_layers),
    "peg-jig": CutProduct(_built("peg-jig"), _goes_with("peg-jig")),
    "trial-cut": CutProduct(_built("trial-cut")),
    "square-check": CutProduct(_built("square-check"), checks=True),
}
"""Everything that can be cut, in the order of its files."""


def cut_suiting(plan: Plan) -> tuple[str, ...]:
    """The names of the products that suit `plan`, in order."""
    return tuple(name for name, product in CUT_PRODUCTS.items() if product.suits(plan))
