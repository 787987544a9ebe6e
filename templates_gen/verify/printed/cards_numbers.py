"""What label and packing list must say of a kit: from the kit, and of amounts, which their own tests prove."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Role
from layout.messages.roles import Count, SettUnit, SheetName, Unit
from layout.messages.roles.buying import Packed
from layout.messages.roles.cards import Card
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import say_length
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.held import held_each
from templates_gen.verify.printed.ruled import ruled
from templates_gen.verify.run.to_buy_numbers import Asked, asked_of

_YARD, _OUNCE = Decimal("0.9144"), Decimal("28.349523125")
"""A yard in m and an avoirdupois ounce in g (1959)."""
_FLOATS = Decimal(1) - Decimal("1e-9")  # what floats leave behind the ninth figure asks for no metre more
_LONG, _KNOT_MM = 50, 100

_HELD: Mapping[str, tuple[Role, int]] = {
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
_MADE_BY: Mapping[str, Role] = {
    "notched ends": SheetName.NAME_NOTCHES,
    "pegged ends": SheetName.NAME_PEGS,
    "nails": SheetName.NAME_NAILS,
}


class Listed(NamedTuple):
    """A row of the packing list."""

    name: str
    amount: str


def warp_of(plan: Plan) -> str:
    """Sett, ends and what is doubled."""
    kit, say, sett = plan.kit, plan.words.say, plan.warp.sett
    role, per = (SettUnit.PER_INCH, Fraction(127, 5)) if sett.unit.imperial else (SettUnit.PER_CM, Fraction(10))
    said = [say(role, number=say_number(sett.per_mm * per))]
    said.append(say(Count.ENDS, ends=ends_of(kit, sett.per_mm)))
    said += [say(Count.DOUBLED)] if kit.weaving.doubled_warp else []
    outer = kit.weaving.doubled_selvedges
    said += [say(Count.DOUBLED_OUTER, outer=outer)] if outer else []
    return plan.words.listed(said)


def sizes_of(plan: Plan) -> tuple[str, str]:
    """How large the weaving is and how large the frame, as the kit says it; what it leaves out by a ruler."""
    kit, words = plan.kit, plan.words
    inches = kit.frame.outer_width.imperial
    given = kit.weaving.width, kit.weaving.height
    woven = [
        say_length(side, words) if side else ruled(size.value, words, inches=inches)
        for side, size in zip(given, plan.amounts.woven_mm, strict=True)
    ]
    frame = [say_length(side, words) for side in (kit.frame.outer_width, kit.frame.outer_height)]
    weaving = words.say(Card.WEAVING, width=woven[0], height=woven[1])
    return weaving, words.say(Card.FRAME, width=frame[0], height=frame[1])


def rows_of(plan: Plan) -> list[Listed]:
    """Every row of the packing list."""
    say = plan.words.say
    held = held_each(plan)
    rows = [*_frame(plan), *_yarns(plan)]
    if "shed-stick" in held:
        long = ruled(plan.amounts.shed_stick_mm.value, plan.words, inches=_inches(plan))
        rows.append(Listed(say(Packed.STICK, length=long), _number(plan, 1)))
    for name, (role, count) in _HELD.items():
        if name in held:
            named = _MADE_BY.get(plan.kit.frame.ends.name, role) if name == "strips" else role
            rows.append(Listed(say(named), _number(plan, count)))
    return rows + [Listed(item.name, _number(plan, item.number)) for item in plan.kit.box.items(plan.words)]


def _number(plan: Plan, count: int) -> str:
    return plan.words.say(Packed.NUMBER, number=say_number(count, 0))


def _inches(plan: Plan) -> bool:
    return plan.kit.frame.outer_width.imperial


def _frame(plan: Plan) -> Iterator[Listed]:
    frame, say = plan.kit.frame, plan.words.say
    if plan.kit.box.frame:
        sides = [ruled(side.mm, plan.words, inches=_inches(plan)) for side in (frame.outer_width, frame.outer_height)]
        name = say(Packed.FRAME, width=sides[0], height=sides[1])
        yield Listed(name, _number(plan, 1))


def _yarns(plan: Plan) -> Iterator[Listed]:
    """Warp, spare ends, weft, cord."""
    say, kit = plan.words.say, plan.kit
    yield Listed(say(Packed.WARP, yarn=kit.warp), _amount(plan, "m", plan.amounts.warp_total_m.high))
    if kit.box.spare_ends:
        knot = _KNOT_MM if kit.amounts.warp.knot is None else float(kit.amounts.warp.knot.mm)
        end = plan.amounts.warp_per_wind_mm.high / 2 + 2 * knot
        long = -(-end // _LONG) * _LONG
        name = say(Packed.SPARE_ENDS, length=ruled(long, plan.words, inches=_inches(plan)))
        yield Listed(name, _number(plan, kit.box.spare_ends))
    asked = asked_of(plan)
    weft = [each for each in asked if each.kind == "weft"]
    many = len({each.name for each in weft}) > 1
    for each in weft:
        known = [_amount(plan, unit, each.counted(unit)) for unit in ("m", "g") if unit in each.units]
        both = known[0] if len(known) == 1 else say(Packed.BOTH, length=known[0], weight=known[1])
        yield Listed(_weft_name(plan, each, many=many), both)
    for each in asked:
        if each.kind == "leash_cord":
            yield Listed(say(Packed.CORD), _amount(plan, "m", each.counted("m")))


def _weft_name(plan: Plan, each: Asked, *, many: bool) -> str:
    if each.colour and many:
        return plan.words.say(Packed.WEFT_BOTH, yarn=each.name, colour=each.colour)
    return plan.words.say(Packed.WEFT, yarn=each.colour or each.name)


def _amount(plan: Plan, unit: str, figure: float) -> str:
    """Rounded up: whole metres, grams and yards, tenths of an ounce."""
    amount, say = Decimal(figure) * _FLOATS, plan.words.say
    if not _inches(plan):
        whole = amount.to_integral_value(ROUND_CEILING)
        return say(Unit.METRE if unit == "m" else Unit.GRAM, number=say_number(int(whole), 0))
    if unit == "m":
        return say(Unit.YARD, number=say_number(int((amount / _YARD).to_integral_value(ROUND_CEILING)), 0))
    tenths = int((amount / _OUNCE * 10).to_integral_value(ROUND_CEILING))
    return say(Unit.OUNCE, number=say_number(Fraction(tenths, 10), 1))
