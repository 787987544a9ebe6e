"""This kit's numbers as its first sheet must say them: from the kit, and of amounts, which their own tests prove."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.catalogue import Figure, Role
from layout.messages.roles import Count, KitNumber, SettUnit, Unit
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import say_length
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.ruled import ruled
from templates_gen.verify.printed.warp_words import clauses

_INCH = Fraction(127, 5)
_YARD, _OUNCE = 0.9144, 28.349523125
"""A yard in m and an avoirdupois ounce in g (1959)."""
_PER: Mapping[Role, Role] = {
    Count.SETT_INCH_WINDS: KitNumber.PER_WINDS,
    Count.SETT_INCH_PEGS: KitNumber.PER_PEGS,
    Count.SETT_INCH_NAILS: KitNumber.PER_NAILS,
    Count.SETT_INCH_ENDS: KitNumber.PER_ENDS,
}
"""How often something is counted off in a unit, by how the sett is said of it."""
_SURE = 0.005


def numbers_of(plan: Plan) -> list[str]:
    """Every label, figure and remark, message by message."""
    return [*_of_the_warp(plan), *_of_the_size(plan), *_of_the_yarns(plan), *_of_the_frame(plan)]


def _of_the_warp(plan: Plan) -> Iterator[str]:
    kit, say = plan.kit, plan.words.say
    sett, unit = plan.warp.sett.per_mm, plan.warp.sett.unit
    units = [(SettUnit.PER_CM, Fraction(10)), (SettUnit.PER_INCH, _INCH)]
    (own, own_mm), (other, other_mm) = units[::-1] if unit.imperial else units
    yield from map(say, (KitNumber.THIS_KIT, KitNumber.SETT, KitNumber.WARP))
    yield say(own, number=say_number(sett * own_mm))
    yield say(other, number=say_number(sett * other_mm, 2))
    yield from clauses(kit, ends_of(kit, sett))
    truth = truth_of(kit)
    count = say_number(sett * unit.mm / truth.laid)
    yield say(_PER[truth.sett[0]], count=count, unit=say_length(unit))


def _of_the_size(plan: Plan) -> Iterator[str]:
    kit, say = plan.kit, plan.words.say
    sett = plan.warp.sett.per_mm
    yield from map(say, (KitNumber.WIDTH, KitNumber.HEIGHT))
    yield say(KitNumber.ON_FRAME, size=_ruled(plan, ends_of(kit, sett) / sett, 1))
    for size in plan.amounts.woven_mm:
        woven = say(KitNumber.WOVEN, size=_ruled(plan, size.value, 1))
        sure = size.high - size.low <= _SURE * size.value
        yield woven if sure else say(KitNumber.ABOUT, amount=woven)
    rows = plan.amounts.woven_rows
    yield say(KitNumber.BEADS, beads=rows, picks=rows * 2) if rows else say(KitNumber.BEADS_UNKNOWN)


def _of_the_yarns(plan: Plan) -> Iterator[str]:
    kit, say, amounts = plan.kit, plan.words.say, plan.amounts
    spare = kit.amounts.warp.spare
    yield from map(say, (KitNumber.WARP_YARN, KitNumber.WEFT_YARN))
    yield say(KitNumber.WITH_SPARE, yarn=kit.warp, spare=say_number(Fraction(10) if spare is None else spare * 100, 1))
    yield from _amount(plan, amounts.warp_total_m, (Unit.METRE, 1.0), (Unit.YARD, _YARD))
    yield " ".join(kit.weft.split())
    if amounts.weft_total_g is not None:
        yield from _amount(plan, amounts.weft_total_g, (Unit.GRAM, 1.0), (Unit.OUNCE, _OUNCE))
        return
    yield say(KitNumber.WEIGHT_UNKNOWN)
    if amounts.weft_total_m is not None:
        yield from _amount(plan, amounts.weft_total_m, (Unit.METRE, 1.0), (Unit.YARD, _YARD))


def _of_the_frame(plan: Plan) -> Iterator[str]:
    frame, say = plan.kit.frame, plan.words.say
    yield say(KitNumber.FRAME)
    width, height = (_ruled(plan, side.mm, 1) for side in (frame.outer_width, frame.outer_height))
    yield say(KitNumber.SIZE, width=width, height=height)
    kinds = {
        "round bars": KitNumber.ROUND,
        "notched ends": KitNumber.NOTCHED,
        "pegged ends": KitNumber.PEGGED,
        "nails": KitNumber.NAILED,
    }
    yield say(kinds.get(frame.ends.name, KitNumber.FLAT), size=_ruled(plan, _thick(plan.kit), 2))


def _thick(kit: Kit) -> Fraction:
    """From face to back: a board, or a round bar."""
    sizes = (getattr(kit.frame.ends, name, None) for name in ("thickness", "diameter"))
    return next((size.mm for size in sizes if size), Fraction(0))


def _ruled(plan: Plan, mm: Fraction | float, parts: int) -> str:
    return ruled(mm, plan.words, inches=plan.kit.frame.outer_width.imperial, parts=parts)


def _amount(plan: Plan, figure: object, metric: tuple[Role, float], other: tuple[Role, float]) -> Iterator[str]:
    """An amount in the kit's own unit: one number, or "about" and a range of two figures each."""
    role, each = other if plan.kit.frame.outer_width.imperial else metric
    likely, low, high = (getattr(figure, name) / each for name in ("value", "low", "high"))
    say = plan.words.say
    if high - low <= _SURE * likely:
        yield say(role, number=say_number(likely, 0 if likely >= 10 else 1))
        return
    said = [_two_figures(number) for number in (likely, low, high)]
    yield say(KitNumber.ABOUT, amount=say(role, number=said[0]))
    yield say(KitNumber.RANGE, low=said[1], high=say(role, number=said[2]))


def _two_figures(number: float) -> Figure:
    """Two figures of a number, by Python's own exponents: 37, 3.7, 370; zeros are kept, halves go to the even one."""
    exponent = int(f"{number:e}".partition("e")[2]) if number else 0
    if f"{number:e}".startswith("9.99999"):
        exponent = math.floor(math.log10(number))
    step = Fraction(10) ** (exponent - 1)
    value = round(Fraction(number) / step) * step
    return Figure(f"{float(value):.{max(0, 1 - exponent)}f}")
