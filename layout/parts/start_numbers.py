"""This kit's numbers, as its first sheet shows them: what each is, its figure, and a remark."""

from __future__ import annotations

import math
from collections.abc import Mapping
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Role
from layout.messages.roles import KitNumber, SettUnit, Unit
from layout.plan import Plan
from layout.sett.marking_units import NAILS, PEGS, SINGLY, WINDS, CountedThing
from layout.values.by_rule import by_rule
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Quantity
from layout.values.units import say_length
from layout.yarns.yarn_counts import OUNCE_G, YARD_M

_PER: Mapping[CountedThing, Role] = {
    WINDS: KitNumber.PER_WINDS,
    PEGS: KitNumber.PER_PEGS,
    NAILS: KitNumber.PER_NAILS,
    SINGLY: KitNumber.PER_ENDS,
}
_ENDS: Mapping[str, Role] = {
    "round bars": KitNumber.ROUND,
    "notched ends": KitNumber.NOTCHED,
    "pegged ends": KitNumber.PEGGED,
    "nails": KitNumber.NAILED,
}
"""What the frame ends are, by their name; all others are boards."""

_SURE = 0.005  # a range of so small a share of the figure is not shown
_TEN = 10  # from so many on an exact amount has no decimals


class KitFigure(NamedTuple):
    """One number: its `label`, its `value` in large letters, and `remarks`, each on lines of its own."""

    label: str
    value: str
    remarks: tuple[str, ...]


def kit_figures(plan: Plan) -> tuple[KitFigure, ...]:
    """The numbers of a plan, in the order of the sheet."""
    return (*_warp(plan), _width(plan), _height(plan), _warp_yarn(plan), _weft_yarn(plan), _frame(plan))


def _imperial(plan: Plan) -> bool:
    return plan.kit.frame.outer_width.imperial


def _warp(plan: Plan) -> tuple[KitFigure, KitFigure]:
    sett, say = plan.warp.sett, plan.words.say
    other, per = (SettUnit.PER_CM, Fraction(10)) if sett.unit.imperial else (SettUnit.PER_INCH, Fraction(127, 5))
    count = say(_PER[sett.by], count=say_number(sett.per_unit), unit=say_length(sett.unit, plan.words))
    return (
        KitFigure(say(KitNumber.SETT), plan.sett_brief, (say(other, number=say_number(sett.per_mm * per, 2)),)),
        KitFigure(say(KitNumber.WARP), plan.counted, (count, *plan.doubled)),
    )


def _width(plan: Plan) -> KitFigure:
    size = by_rule(plan.warp.width, plan.words, imperial=_imperial(plan))
    on_frame = plan.words.say(KitNumber.ON_FRAME, size=size)
    return KitFigure(plan.words.say(KitNumber.WIDTH), on_frame, (_woven(plan, plan.amounts.woven_mm[0]),))


def _height(plan: Plan) -> KitFigure:
    say, beads = plan.words.say, plan.amounts.woven_rows
    rows = say(KitNumber.BEADS, beads=beads, picks=2 * beads) if beads else say(KitNumber.BEADS_UNKNOWN)
    return KitFigure(say(KitNumber.HEIGHT), _woven(plan, plan.amounts.woven_mm[1]), (rows,))


def _woven(plan: Plan, size: Quantity) -> str:
    said = plan.words.say(KitNumber.WOVEN, size=by_rule(size.value, plan.words, imperial=_imperial(plan)))
    return said if _sure(size) else plan.words.say(KitNumber.ABOUT, amount=said)


def _warp_yarn(plan: Plan) -> KitFigure:
    given, say = plan.kit.amounts.warp.spare, plan.words.say
    spare = say_number(100 * (Fraction(1, 10) if given is None else given), 1)
    yarn = say(KitNumber.WITH_SPARE, yarn=plan.kit.warp, spare=spare)
    value, ranges = _amount(plan, plan.amounts.warp_total_m, Unit.METRE, Unit.YARD, float(YARD_M))
    return KitFigure(say(KitNumber.WARP_YARN), value, (*ranges, yarn))


def _weft_yarn(plan: Plan) -> KitFigure:
    """Its weight, else its length, in the piece: hems and what is to spare come on top."""
    amounts, say = plan.amounts, plan.words.say
    label, name = say(KitNumber.WEFT_YARN), plan.kit.weft
    if amounts.weft_total_g is not None:
        value, ranges = _amount(plan, amounts.weft_total_g, Unit.GRAM, Unit.OUNCE, float(OUNCE_G))
        return KitFigure(label, value, (*ranges, name))
    if amounts.weft_total_m is not None:
        value, ranges = _amount(plan, amounts.weft_total_m, Unit.METRE, Unit.YARD, float(YARD_M))
        return KitFigure(label, value, (*ranges, name, say(KitNumber.WEIGHT_UNKNOWN)))
    return KitFigure(label, say(KitNumber.WEIGHT_UNKNOWN), (name,))


def _frame(plan: Plan) -> KitFigure:
    frame, say, imperial = plan.kit.frame, plan.words.say, _imperial(plan)
    sides = (by_rule(side.mm, plan.words, imperial=imperial) for side in (frame.outer_width, frame.outer_height))
    size = say(KitNumber.SIZE, **dict(zip(("width", "height"), sides, strict=True)))
    thick = by_rule(frame.ends.deep_mm, plan.words, imperial=imperial, fine=True)
    return KitFigure(say(KitNumber.FRAME), size, (say(_ENDS.get(frame.ends.name, KitNumber.FLAT), size=thick),))


def _amount(plan: Plan, figure: Quantity, metric: Role, other: Role, each: float) -> tuple[str, tuple[str, ...]]:
    """An amount in the kit's own unit, and between what it lies where it is not known exactly, in two figures each."""
    role, per = (other, each) if _imperial(plan) else (metric, 1.0)
    likely, low, high = (number / per for number in (figure.value, figure.low, figure.high))
    say = plan.words.say
    if _sure(figure):
        return say(role, number=say_number(likely, 0 if likely >= _TEN else 1)), ()
    about = say(KitNumber.ABOUT, amount=say(role, number=_two_figures(likely)))
    return about, (say(KitNumber.RANGE, low=_two_figures(low), high=say(role, number=_two_figures(high))),)


def _sure(figure: Quantity) -> bool:
    return figure.high - figure.low <= _SURE * abs(figure.value)


def _two_figures(number: float) -> str:
    """A number in two figures: 37, 3.7, 370."""
    place = math.floor(math.log10(number)) - 1 if number > 0 else 0
    step = Fraction(10) ** place
    return say_fixed(round(Fraction(number) / step) * step, max(0, -place))
