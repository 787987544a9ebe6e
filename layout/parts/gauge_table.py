"""The table of a wrap gauge: from pairs counted in a window to the sett taken and its winds to a marking unit."""

from __future__ import annotations

from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge
from layout.plan import Plan
from layout.sett.marking_units import NAILS, PEGS, SINGLY, USUAL, WINDS, Offer, offer
from layout.sett.notches import USES, offer_on
from layout.sett.readings import PER
from layout.values.units import Length, say_length, say_number

ROWS = 6
_BELOW = 2  # so many rows stand before the count that the kit's own sett would give
_UNITS = 3
_COUNTED = {WINDS: Gauge.WINDS, PEGS: Gauge.PEGS, NAILS: Gauge.NAILS, SINGLY: Gauge.ENDS}
_NONE = "\N{EN DASH}"  # where not one wind fits in the unit


class GaugeTable(NamedTuple):
    """Words for every field: `over` the window counted in, `units` the marking units, `heads` over sett and winds.

    `own` is the place of the kit's unit among `units`; each row is a count and then, for every unit, the sett and the
    winds (or ends where there are no winds) laid in it.
    """

    over: str
    units: tuple[str, ...]
    own: int
    heads: tuple[str, str]
    rows: tuple[tuple[str, ...], ...]


def gauge_table(plan: Plan) -> GaugeTable:
    """Counts around the kit's own in the 2 in or 5 cm window, for its marking unit and the usual ones next to it."""
    sett = plan.warp.sett
    imperial = sett.unit.imperial
    window = USUAL[True][-1] if imperial else Length(Fraction(50), "cm")
    units = neighbours(sett.unit)
    first = max(1, floor(sett.low * window.mm) - _BELOW)
    rows = tuple(_row(count, window, units, plan) for count in range(first, first + ROWS))
    heads = ENGLISH.say(Gauge.EPI if imperial else Gauge.PER_CM), ENGLISH.say(_COUNTED[sett.by])
    own = [unit.mm for unit in units].index(sett.unit.mm)
    return GaugeTable(say_length(window), tuple(map(say_length, units)), own, heads, rows)


def neighbours(unit: Length) -> tuple[Length, ...]:
    """`unit` between the usual units of its system next below and above it; at an end of these, two on one side."""
    below = [usual for usual in USUAL[unit.imperial] if usual.mm < unit.mm]
    above = [usual for usual in USUAL[unit.imperial] if usual.mm > unit.mm]
    lower = max(1, _UNITS - 1 - len(above)) if below else 0
    kept = (*below[-lower:],) if lower else ()
    return (*kept, unit, *above[: _UNITS - 1 - len(kept)])


def _row(count: int, window: Length, units: tuple[Length, ...], plan: Plan) -> tuple[str, ...]:
    fields = [str(count)]
    for unit in units:
        made = _made(count / window.mm, unit, plan)
        per = PER[unit.imperial]
        fields += (say_number(made.per_mm * per), say_number(made.count)) if made.per_mm else (_NONE, _NONE)
    return tuple(fields)


def _made(low: Fraction, unit: Length, plan: Plan) -> Offer:
    """What a sett measured comes to in a unit: counted off evenly, or as the notches of a bar that is there allow."""
    notches = plan.kit.frame.ends.notches
    if notches is None:
        return offer(low, unit, plan.warp.sett.by)
    fitting = [each for each in USES if each * notches.per_mm <= low]
    return offer_on(max(fitting), low, notches, unit) if fitting else Offer(unit, Fraction(0), Fraction(1))
