"""What lies in a box and how much of it, computed again: each row of a packing list as words."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Role
from layout.messages.roles import SheetName, Unit
from layout.messages.roles.buying import Packed
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.verify.printed.held import held_each, held_once
from templates_gen.verify.printed.ruled import ruled
from templates_gen.verify.run.to_buy_numbers import Asked, asked_of, spare_end_mm, stick_mm, warp_m

_YARD, _OUNCE = Decimal("0.9144"), Decimal("28.349523125")
_SAME = Decimal("1e-9")
_STEP = 50  # mm to which spare ends are cut
_NAMES: Mapping[str, tuple[Role, int]] = {
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
_MARKS: Mapping[str, Role] = {
    "notched ends": SheetName.NAME_NOTCHES,
    "pegged ends": SheetName.NAME_PEGS,
    "nails": SheetName.NAME_NAILS,
}


class Listed(NamedTuple):
    """A row: what the thing is called, and how much of it there is."""

    name: str
    amount: str


def box_list(plan: Plan) -> list[Listed]:
    """Every row, its name and its amount."""
    return [*_frame(plan), *_yarns(plan), *_named(plan, held_each(plan)), *_things(plan)]


def once_list(plan: Plan) -> list[Listed]:
    """The same of what there is once for a whole run."""
    return list(_named(plan, held_once(plan)))


def _inches(plan: Plan) -> bool:
    return plan.kit.frame.outer_width.imperial


def sides_said(plan: Plan, mm: Fraction | float) -> str:
    """A length as a ruler of the kit shows it."""
    return ruled(mm, plan.words, inches=_inches(plan))


def _frame(plan: Plan) -> Iterator[Listed]:
    frame = plan.kit.frame
    if plan.kit.box.frame:
        width, height = (sides_said(plan, side.mm) for side in (frame.outer_width, frame.outer_height))
        yield Listed(plan.words.say(Packed.FRAME, width=width, height=height), "1")


def _yarns(plan: Plan) -> Iterator[Listed]:
    say, asked = plan.words.say, asked_of(plan)
    yield Listed(say(Packed.WARP, yarn=plan.kit.warp), _amount(plan, warp_m(plan), "m"))
    if plan.kit.box.spare_ends:
        long = -(-spare_end_mm(plan) // _STEP) * _STEP
        yield Listed(say(Packed.SPARE_ENDS, length=sides_said(plan, long)), str(plan.kit.box.spare_ends))
    weft = [one for one in asked if one.kind == "weft"]
    for one in weft:
        yield Listed(_called(plan, one, several=len({each.name for each in weft}) > 1), _both(plan, one))
    (cord,) = (one for one in asked if one.kind == "leash_cord")
    yield Listed(say(Packed.CORD), _amount(plan, cord.counted("m"), "m"))


def _called(plan: Plan, one: Asked, *, several: bool) -> str:
    if one.colour and several:
        return plan.words.say(Packed.WEFT_BOTH, yarn=one.name, colour=one.colour)
    return plan.words.say(Packed.WEFT, yarn=one.colour or one.name)


def _both(plan: Plan, one: Asked) -> str:
    found = [_amount(plan, one.counted(unit), unit) for unit in ("m", "g") if unit in one.units]
    return found[0] if len(found) == 1 else plan.words.say(Packed.BOTH, length=found[0], weight=found[1])


def _amount(plan: Plan, figure: float, unit: str) -> str:
    """A figure rounded up to what is packed: whole m and g, yards, tenths of an ounce."""
    exact = Decimal(figure) * (1 - _SAME)
    if not _inches(plan):
        role: Role = Unit.METRE if unit == "m" else Unit.GRAM
        return plan.words.say(role, number=str(exact.to_integral_value(ROUND_CEILING)))
    if unit == "m":
        return plan.words.say(Unit.YARD, number=str((exact / _YARD).to_integral_value(ROUND_CEILING)))
    tenths = (exact / _OUNCE * 10).to_integral_value(ROUND_CEILING)
    return plan.words.say(Unit.OUNCE, number=say_number(Fraction(int(tenths), 10), 1))


def _named(plan: Plan, held: Collection[str]) -> Iterator[Listed]:
    """These products by their names; the label is on the box."""
    kit, say = plan.kit, plan.words.say
    if "shed-stick" in held:
        yield Listed(say(Packed.STICK, length=sides_said(plan, stick_mm(plan))), "1")
    for name, (role, number) in _NAMES.items():
        if name in held:
            yield Listed(say(_MARKS.get(kit.frame.ends.name, role) if name == "strips" else role), str(number))


def _things(plan: Plan) -> Iterator[Listed]:
    for item in plan.kit.box.items(plan.words):
        yield Listed(item.name, str(item.number))
