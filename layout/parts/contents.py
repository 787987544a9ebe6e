"""What lies in a box, as its packing list names it: each thing once, with its amount."""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator, Mapping
from fractions import Fraction
from typing import NamedTuple

from layout.box.needs import Need, needs, spare_end
from layout.box.shop import Unit
from layout.messages.catalogue import Message, Role
from layout.messages.roles import SheetName
from layout.messages.roles import Unit as Measure
from layout.messages.roles.buying import Packed
from layout.parts.held import held_each, held_once
from layout.plan import Plan
from layout.values.by_rule import by_rule
from layout.values.limits import ROUNDING
from layout.values.numerals import say_number
from layout.yarns.yarn_counts import OUNCE_G, YARD_M

_OUNCES = 10  # a tenth of an ounce is as fine as a list is


class Line(NamedTuple):
    """A row of the list: what the thing is called, and how much of it there is.

    Both are messages for the words of the plan; a name that the maker gave stands as it is.
    """

    name: Message | str
    amount: Message


_PRODUCTS: Mapping[str, tuple[Role, int]] = {
    "comb": (Packed.COMB, 1),
    "winding-comb": (Packed.WINDING_COMBS, 2),
    "spacing-guide-cut": (Packed.GUIDE_CUT, 1),
    "spacing-guide": (SheetName.NAME_GUIDES, 2),
    "wrap-gauge-cut": (Packed.GAUGE_CUT, 1),
    "wrap-gauge": (SheetName.NAME_WRAP_GAUGE, 1),
    "strips": (SheetName.NAME_STRIPS, 2),
    "frame-check": (SheetName.NAME_FRAME_CHECK, 1),
    "winding": (SheetName.NAME_WINDING, 1),
    "weaving-grid": (SheetName.NAME_GRID, 1),
    "start-here": (SheetName.NAME_START_HERE, 1),
    "leaflet": (Packed.LEAFLET, 1),
    "help": (Packed.HELP, 1),
}
"""What is called how, and how many of it lie in a box, in the order of the list; the label is on the box."""

_TEMPLATES: Mapping[str, Role] = {
    "notched ends": SheetName.NAME_NOTCHES,
    "pegged ends": SheetName.NAME_PEGS,
    "nails": SheetName.NAME_NAILS,
}
"""What stands for the strips where the frame ends are of these kinds."""


def contents(plan: Plan) -> tuple[Line, ...]:
    """Everything in the box of this kit, in the order of its list.

    Yarn and cord are rounded up, to whole metres and grams, or yards and tenths of an ounce.
    """
    return (
        *_frame(plan),
        *_yarns(plan),
        *_products(plan, held_each(plan)),
        *(Line(item.name, _number(item.number)) for item in plan.kit.box.items(plan.words)),
    )


def once(plan: Plan) -> tuple[Line, ...]:
    """What there is once for a whole run or class."""
    return tuple(_products(plan, held_once(plan)))


def _imperial(plan: Plan) -> bool:
    return plan.kit.frame.outer_width.imperial


def _frame(plan: Plan) -> Iterator[Line]:
    frame = plan.kit.frame
    if plan.kit.box.frame:
        sides = (frame.outer_width, frame.outer_height)
        width, height = (by_rule(side.mm, plan.words, imperial=_imperial(plan)) for side in sides)
        yield Line(Message(Packed.FRAME, {"width": width, "height": height}), _number(1))


def _yarns(plan: Plan) -> Iterator[Line]:
    """The warp without its spare ends, which have a row of their own; every yarn of the weft in every colour; cord."""
    warp, *others = needs(plan)
    bare = plan.amounts.warp_total_m.high
    yield Line(Message(Packed.WARP, {"yarn": warp.name}), _amount(plan, bare, "m"))
    if number := plan.kit.box.spare_ends:
        long = by_rule(math.ceil(spare_end(plan).high / _LONG) * _LONG, plan.words, imperial=_imperial(plan))
        yield Line(Message(Packed.SPARE_ENDS, {"length": long}), _number(number))
    weft = [need for need in others if need.kind == "weft"]
    several = len({need.name for need in weft}) > 1
    for need in weft:
        yield Line(_weft_name(need, several=several), _both(plan, need))
    for need in others:
        if need.kind == "leash_cord":
            yield Line(Message(Packed.CORD), _amount(plan, need.figure("m"), "m"))


_LONG = 50
"""Spare ends are cut to the next so many mm. Our own choice."""


def _weft_name(need: Need, *, several: bool) -> Message:
    """By its colour where it has one, by its yarn too where there are several."""
    if not need.colour:
        return Message(Packed.WEFT, {"yarn": need.name})
    if several:
        return Message(Packed.WEFT_BOTH, {"yarn": need.name, "colour": need.colour})
    return Message(Packed.WEFT, {"yarn": need.colour})


def _both(plan: Plan, need: Need) -> Message:
    """Length and weight, as far as they are known."""
    units: tuple[Unit, ...] = ("m", "g")
    found = [_amount(plan, need.figure(unit), unit) for unit in units if unit in need.taken]
    return found[0] if len(found) == 1 else Message(Packed.BOTH, {"length": found[0], "weight": found[1]})


def _amount(plan: Plan, figure: float, unit: Unit) -> Message:
    """Rounded up; what floats leave behind the ninth figure asks for no metre more."""
    exact = Fraction(figure) * (1 - Fraction(ROUNDING))
    if not _imperial(plan):
        return Message(Measure.METRE if unit == "m" else Measure.GRAM, {"number": say_number(math.ceil(exact), 0)})
    if unit == "m":
        return Message(Measure.YARD, {"number": say_number(math.ceil(exact / YARD_M), 0)})
    return Message(Measure.OUNCE, {"number": say_number(Fraction(math.ceil(exact / OUNCE_G * _OUNCES), _OUNCES), 1)})


def _products(plan: Plan, held: Collection[str]) -> Iterator[Line]:
    """The stick by its length, then whatever else is held."""
    if "shed-stick" in held:
        long = by_rule(plan.amounts.shed_stick_mm.value, plan.words, imperial=_imperial(plan))
        yield Line(Message(Packed.STICK, {"length": long}), _number(1))
    yield from (_product(plan, name) for name in _PRODUCTS if name in held)


def _product(plan: Plan, name: str) -> Line:
    role, number = _PRODUCTS[name]
    if name == "strips":
        role = _TEMPLATES.get(plan.kit.frame.ends.name, role)
    return Line(Message(role), _number(number))


def _number(number: int) -> Message:
    return Message(Packed.NUMBER, {"number": say_number(number, 0)})
