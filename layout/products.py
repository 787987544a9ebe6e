"""What can be made from a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.paper.joints import Build
from layout.parts.strip import full_form_of, strip
from layout.plan import Plan
from layout.warps.warp import End


class Product(NamedTuple):
    """`build` makes the part for paper (in its low form or not, clear of joints); `alone` makes it at its best."""

    build: Callable[[Plan, FontMetrics], Build]
    alone: Callable[[Plan, FontMetrics], Part]


def _strip(end: End) -> Product:
    def build(plan: Plan, metrics: FontMetrics) -> Build:
        def make(low: bool, joints: Sequence[float]) -> Part:
            return strip(plan, end, metrics, low=low, joints=joints)

        return make

    def alone(plan: Plan, metrics: FontMetrics) -> Part:
        return full_form_of(plan, end, metrics)

    return Product(build, alone)


PRODUCTS: Mapping[str, Product] = {"strip-near": _strip("near"), "strip-far": _strip("far")}
"""Every printed part, in the order of the kit's sheets."""
