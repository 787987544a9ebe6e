"""How each cut product is built: every module of a part in one place, loaded where something is cut."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from layout.cutting.parts.comb import comb
from layout.cutting.parts.end_bars import end_bar
from layout.cutting.parts.gauge_board import gauge_board
from layout.cutting.parts.guide_bar import guide_bar
from layout.cutting.parts.peg_jig import peg_jig
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


def _both(build: Callable[[Plan, End, Stock, FontMetrics], Part]) -> Builds:
    """A product with a part for each frame end."""
    return lambda plan, stock, metrics: (build(plan, "near", stock, metrics), build(plan, "far", stock, metrics))


def _one(build: Callable[[Plan, Stock, FontMetrics], Part]) -> Builds:
    return lambda plan, stock, metrics: (build(plan, stock, metrics),)


BUILDS: Mapping[str, Builds] = {
    "comb": _one(comb),
    "winding-comb": _both(winding_comb),
    "wrap-gauge-cut": _one(gauge_board),
    "spacing-guide-cut": _one(guide_bar),
    "shed-stick": _one(shed_stick),
    "end-bars": _both(end_bar),
    "peg-jig": _both(peg_jig),
    "trial-cut": _one(trial_cut),
    "square-check": _one(square_check),
}
"""By the name of the product."""
