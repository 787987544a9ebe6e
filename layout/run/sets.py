"""What a run prints: parts that are placed with others, and pages of their own, in each box or once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Text
from layout.drawing.sheet import Part
from layout.kit.box import START
from layout.paper.choice import Laying
from layout.paper.sheets import leaves
from layout.parts.held import held_each, held_once
from layout.plan import Plan
from layout.products import PRODUCTS
from layout.run.bed import RunBed, run_bed
from layout.run.imposing import RunPart
from layout.run.run import Run

PLACED = ("strips", "strip-near", "strip-far", "spacing-guide", "wrap-gauge", "label", "help")
"""Products whose parts may lie beside others: what is to be known of them stands on them. Others need their page."""

_LOWEST, _NARROWEST = 230.0, 190.0  # mm: the gutter of a smaller sheet has no room for its words

Layings = Callable[[int, str], tuple[Laying, ...]]
"""How a product of the kit of that place in the run lies on its own pages; FieldError where it cannot."""


class OwnPages(NamedTuple):
    """The pages of a product of the `kit`th kit, each of them printed so many `times`."""

    name: str
    kit: int
    layings: tuple[Laying, ...]
    times: int


def each_named(plan: Plan) -> tuple[str, ...]:
    """The products that are printed for each box of a kit, as far as it can have them."""
    return tuple(name for name in held_each(plan) if name in (*PRODUCTS, START))


def once_named(plan: Plan) -> tuple[str, ...]:
    """Those that are printed once for a run."""
    return tuple(name for name in held_once(plan) if name in (*PRODUCTS, START))


def places_parts(bed: RunBed) -> bool:
    """Whether sheets of that paper have room for parts beside each other and for what is said of them."""
    return bed.paper.height >= _LOWEST and bed.paper.width >= _NARROWEST


class Prints(NamedTuple):
    """What one kit of a run has printed: parts placed with others, pages of its own.

    `singly` is how many sheets its boxes would take one by one, each product as a file of its own.
    """

    parts: tuple[RunPart, ...]
    pages: tuple[OwnPages, ...]
    singly: int


def prints_of(run: Run, kit: int, layings: Layings, metrics: FontMetrics) -> Prints:
    """What lies in each box as often as there are boxes, the rest once."""
    plan, copies = run.kits[kit]
    parts: list[RunPart] = []
    pages: list[OwnPages] = []
    sheets = 0
    each, once = each_named(plan), once_named(plan)
    for name in (*each, *once):
        laid = layings(kit, name)
        sheets += len(leaves(plan, laid, metrics))
        found = placeable(plan, name, metrics) if name in each else ()
        parts += [RunPart(part, kit) for part in found]
        if not found:
            pages.append(OwnPages(name, kit, laid, copies if name in each else 1))
    return Prints(tuple(parts), tuple(pages), copies * sheets)


def placeable(plan: Plan, name: str, metrics: FontMetrics) -> tuple[Part, ...]:
    """The parts of a product, each at its best, if all of them fit beside others; else none.

    Nor where it is on several cards of one name: each says but a share of the whole, which is proven together.
    """
    bed = run_bed(plan.kit.paper)
    if name not in PLACED or not places_parts(bed):
        return ()
    parts = tuple(_drawn(part, metrics) for part in PRODUCTS[name].alone(plan, metrics))
    several = len({part.name for part in parts}) < len(parts)
    return parts if not several and all(_fits(part, bed) for part in parts) else ()


def _drawn(part: Part, metrics: FontMetrics) -> Part:
    """A part without its scissors, in a box that holds what is cut out and the words beside that."""
    bare = part.bare
    left, low, right, top = bare.box
    for shape in bare.shapes:
        if isinstance(shape, Text) and shape.angle == 0:
            x, y = shape.at
            end, high = x + metrics.width(shape.words, shape.size, shape.pen), y + metrics.ascent * shape.size
            left, low = min(left, x), min(low, y + metrics.descent * shape.size)
            right, top = max(right, end), max(top, high)
    return replace(bare, box=(left, low, right, top))


def _fits(part: Part, bed: RunBed) -> bool:
    left, bottom, right, top = part.box
    short, long = sorted((right - left, top - bottom))
    return short <= bed.width and long <= bed.height
