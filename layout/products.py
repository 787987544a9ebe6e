"""What can be made from a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import Paned
from layout.drawing.sheet import Part
from layout.paper.joints import Build
from layout.parts.frame_check import frame_check
from layout.parts.grid import drawing_of
from layout.parts.grid_size import left_out
from layout.parts.spacing_guide import spacing_guide
from layout.parts.strip import full_form_of, strip
from layout.parts.winding.winding import winding
from layout.parts.wrap_gauge import wrap_gauge
from layout.plan import Plan
from layout.warps.warp import End


def _always(_: Plan) -> bool:
    return True


def _nothing(_: Plan) -> str:
    return ""


class Product(NamedTuple):
    """One thing to make, of one part or several that belong together.

    `builds` makes each part for paper (in its low form or not, clear of joints), `alone` each at its best. `suits`
    tells whether a plan asks for it; `absent` says why one that asks for it cannot have it. `forms` are the kinds of
    files that it has to itself; on paper it is in the kit's one file too, unless it is not `in_kit`.
    """

    builds: Callable[[Plan, FontMetrics], tuple[Build | Paned, ...]]
    alone: Callable[[Plan, FontMetrics], tuple[Part, ...]]
    suits: Callable[[Plan], bool] = _always
    forms: tuple[str, ...] = ("pdf", "svg")
    absent: Callable[[Plan], str] = _nothing
    in_kit: bool = True


def _strip(end: End) -> Product:
    def builds(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
        def make(low: bool, joints: Sequence[float]) -> Part:
            return strip(plan, end, metrics, low=low, joints=joints)

        return (make,)

    def alone(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
        return (full_form_of(plan, end, metrics),)

    return Product(builds, alone)


def _sheet(make: Callable[..., Part], forms: tuple[str, ...]) -> Product:
    """A part that stays whole: `make(plan, metrics, low=)`."""

    def builds(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
        def build(low: bool, _: Sequence[float]) -> Part:
            return make(plan, metrics, low=low)

        return (build,)

    def alone(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
        return (make(plan, metrics),)

    return Product(builds, alone, forms=forms)


def _gauge() -> Product:
    def builds(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
        return (lambda _low, _joints: wrap_gauge(plan, metrics),)

    return Product(builds, lambda plan, metrics: (wrap_gauge(plan, metrics),))


def _grid() -> Product:
    def builds(plan: Plan, metrics: FontMetrics) -> tuple[Paned, ...]:
        return (drawing_of(plan, metrics),)

    def alone(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
        drawing = drawing_of(plan, metrics)
        return (drawing.draw(drawing.whole),)

    return Product(builds, alone, absent=left_out, in_kit=False)


def _spacing() -> Product:
    ends: tuple[End, End] = ("near", "far")

    def builds(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
        def of(end: End) -> Build:
            return lambda low, joints: spacing_guide(plan, end, metrics, low=low, joints=joints)

        return tuple(map(of, ends))

    return Product(builds, lambda plan, metrics: tuple(spacing_guide(plan, end, metrics) for end in ends))


PRODUCTS: Mapping[str, Product] = {
    "winding": _sheet(winding, ("pdf", "svg")),
    "strip-near": _strip("near"),
    "strip-far": _strip("far"),
    "spacing-guide": _spacing(),
    "wrap-gauge": _gauge(),
    "frame-check": _sheet(frame_check, ("pdf",)),
    "weaving-grid": _grid(),
}
"""Everything that can be made, in the order of the kit's sheets."""


def suiting(plan: Plan) -> tuple[str, ...]:
    """The names of the products that suit `plan`, in order."""
    return tuple(name for name, product in PRODUCTS.items() if product.suits(plan) and not product.absent(plan))


def absent(plan: Plan) -> Mapping[str, str]:
    """Why each product that `plan` asks for and cannot have is left out, by its name."""
    reasons = {name: product.absent(plan) for name, product in PRODUCTS.items() if product.suits(plan)}
    return {name: why for name, why in reasons.items() if why}
