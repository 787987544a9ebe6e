"""The table of a wrap gauge: from pairs counted in a window to the sett taken and its winds to a marking unit."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge
from layout.plan import Plan
from layout.sett.marking_units import NAILS, PEGS, SINGLY, USUAL, WINDS, CountedThing, Offer, offer
from layout.sett.notches import USES, offer_on
from layout.sett.readings import PER
from layout.values.units import Length, Sett, say_length, say_number

ROWS = 6
_BELOW = 2  # so many rows stand before the count that the kit's own sett would give
_UNITS = 3
_COUNTED = {WINDS: Gauge.WINDS, PEGS: Gauge.PEGS, NAILS: Gauge.NAILS, SINGLY: Gauge.ENDS}
_NONE = "\N{EN DASH}"  # where not one wind fits in the unit
ANY_COUNTS = {True: (8, 10, 12, 14, 16, 18), False: (10, 12, 14, 16, 18, 20)}
"""The counts of a gauge for any kit, in 2 in (4 to 9 an inch) or in 5 cm (2 to 4 per cm): our own choice."""


class GaugeTable(NamedTuple):
    """Words for every field: `over` the window counted in, `units` the marking units, `heads` over sett and winds.

    `own` is the place of the kit's unit among `units`; each row is a count and then, for every unit, the sett and the
    winds (or ends where there are no winds) laid in it. `own_row` is the place of the kit's own count among the rows,
    where the sett that stands there in its unit is the kit's: not where the kit's was given or taken as measured.
    """

    over: str
    units: tuple[str, ...]
    own: int
    heads: tuple[str, str]
    rows: tuple[tuple[str, ...], ...]
    own_row: int | None = None


def gauge_table(plan: Plan) -> GaugeTable:
    """Counts around the kit's own in the 2 in or 5 cm window, for its marking unit and the usual ones next to it."""
    sett, notches, count = plan.warp.sett, plan.kit.frame.ends.notches, pairs_of(plan)
    first = max(1, count - _BELOW)
    table = table_of(sett.unit, sett.by, range(first, first + ROWS), notches, plan.words)
    made = _made(count / window_of(sett.unit).mm, sett.unit, sett.by, notches) if count else None
    return table._replace(own_row=count - first) if made and made.per_mm == sett.per_mm else table


def pairs_of(plan: Plan, window: Length | None = None) -> int:
    """The most whole pairs that the kit's sett holds in a window, or in that of its table."""
    sett = plan.warp.sett
    return floor(sett.low * (window or window_of(sett.unit)).mm)


def any_table(unit: Length, by: CountedThing) -> GaugeTable:
    """The table of a gauge without a kit: usual counts, for a marking unit and those next to it."""
    return table_of(unit, by, ANY_COUNTS[unit.imperial])


def table_of(
    unit: Length,
    by: CountedThing,
    counts: Sequence[int],
    notches: Sett | None = None,
    words: Catalogue = ENGLISH,
) -> GaugeTable:
    """What such counts come to in `unit` and the usual ones next to it, counted off `by`, or on `notches` that are."""
    window, units = window_of(unit), neighbours(unit)
    rows = tuple(tuple(map(words.figure, _row(count, window, units, by, notches))) for count in counts)
    heads = words.say(Gauge.EPI if unit.imperial else Gauge.PER_CM), words.say(_COUNTED[by])
    own = [each.mm for each in units].index(unit.mm)
    said = tuple(say_length(each, words) for each in units)
    return GaugeTable(say_length(window, words), said, own, heads, rows)


def fewer(table: GaugeTable, count: int) -> GaugeTable:
    """The same table with `count` units alone: its own, then the one below, then that above."""
    places = range(len(table.units))
    nearest = [table.own, *places[: table.own][-1:], *places[table.own + 1 :], *places[: table.own][:-1]]
    kept = sorted(nearest[:count])
    rows = tuple((row[0], *(field for k in kept for field in row[1 + 2 * k : 3 + 2 * k])) for row in table.rows)
    return table._replace(units=tuple(table.units[k] for k in kept), own=kept.index(table.own), rows=rows)


def window_of(unit: Length) -> Length:
    """The window that pairs are counted in: 2 in or 5 cm."""
    return USUAL[True][-1] if unit.imperial else Length(Fraction(50), "cm")


def neighbours(unit: Length) -> tuple[Length, ...]:
    """`unit` between the usual units of its system next below and above it; at an end of these, two on one side."""
    below = [usual for usual in USUAL[unit.imperial] if usual.mm < unit.mm]
    above = [usual for usual in USUAL[unit.imperial] if usual.mm > unit.mm]
    lower = max(1, _UNITS - 1 - len(above)) if below else 0
    kept = (*below[-lower:],) if lower else ()
    return (*kept, unit, *above[: _UNITS - 1 - len(kept)])


def _row(
    count: int, window: Length, units: tuple[Length, ...], by: CountedThing, notches: Sett | None
) -> tuple[str, ...]:
    fields = [str(count)]
    for unit in units:
        made = _made(count / window.mm, unit, by, notches)
        per = PER[unit.imperial]
        fields += (say_number(made.per_mm * per), say_number(made.count)) if made.per_mm else (_NONE, _NONE)
    return tuple(fields)


def _made(low: Fraction, unit: Length, by: CountedThing, notches: Sett | None) -> Offer:
    """What a sett measured comes to in a unit: counted off evenly, or as the notches of a bar that is there allow."""
    if notches is None:
        return offer(low, unit, by)
    fitting = [each for each in USES if each * notches.per_mm <= low]
    return offer_on(max(fitting), low, notches, unit) if fitting else Offer(unit, Fraction(0), Fraction(1))
