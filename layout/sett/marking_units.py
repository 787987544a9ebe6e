"""Marking units: the distances between the long numbered marks, and the sett that counts off evenly in each.

What is counted off lays e ends: a wind lays two, a peg or nail turns two, between notches each end counts by itself. So
a unit u holds floor(low u / e) of them of a sett `low`, and e floor(low u / e) / u is the largest sett that counts off
evenly in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.messages.catalogue import Message, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Counted, SettNeed, Unit
from layout.sett.readings import say_in
from layout.values.errors import FieldError, shown
from layout.values.units import Length, say_length, say_number

MOST_LOST = Fraction(12, 100)
"""A unit that loses more of the sett measured than this is not chosen unasked. Our own limit."""

_INCH = Fraction(127, 5)
USUAL = {
    True: tuple(Length(inches * _INCH, "in") for inches in (Fraction(1, 2), Fraction(1), Fraction(2))),
    False: tuple(Length(Fraction(10 * cm), "cm") for cm in (1, 2, 4, 5, 10)),
}
"""The usual marking units, smallest first, by whether they are in inches."""

_FEWEST_ENDS = 4  # with one wind, or two single ends, to a unit nearly every mark would be a long one


class CountedThing(NamedTuple):
    """What is counted off in a unit: how many `ends` each lays, and the roles by which so many of it are said."""

    ends: int
    counted: Role
    counted_to: Role
    holds: Role


WINDS = CountedThing(2, Counted.WINDS, Counted.WINDS_TO, SettNeed.HOLDS_WIND)
PEGS = CountedThing(2, Counted.PEGS, Counted.PEGS_TO, SettNeed.HOLDS_PEG)
NAILS = CountedThing(2, Counted.NAILS, Counted.NAILS_TO, SettNeed.HOLDS_NAIL)
SINGLY = CountedThing(1, Counted.ENDS, Counted.ENDS_TO, SettNeed.HOLDS_END)


@dataclass(frozen=True, slots=True)
class Offer:
    """What one marking unit makes of a sett counted off `by`: `per_mm` (0 if not one fits) and the `loss`, 0 to 1."""

    unit: Length
    per_mm: Fraction
    loss: Fraction
    by: CountedThing = WINDS

    @property
    def count(self) -> Fraction:
        """How many winds, pegs or ends are laid in the unit."""
        return self.per_mm * self.unit.mm / self.by.ends


class UnitOffer(NamedTuple):
    """A unit that would do, as a person may write it, and what it loses; `least`, if no other loses less."""

    unit: str
    loss: str
    least: bool


class UnitError(FieldError):
    """No usual marking unit does, or the one asked for holds nothing; `would` are units to write instead."""

    would: tuple[UnitOffer, ...] = ()


def offer(low: Fraction, unit: Length, by: CountedThing = WINDS) -> Offer:
    """The largest sett up to `low` that counts off evenly in `unit`."""
    per_mm = by.ends * floor(low * unit.mm / by.ends) / unit.mm
    return Offer(unit, per_mm, (low - per_mm) / low, by)


def offers_for(low: Fraction, *, imperial: bool, by: CountedThing = WINDS) -> tuple[Offer, ...]:
    """What every usual unit makes of `low`: those of the system in use first, smallest first."""
    return tuple(offer(low, unit, by) for unit in USUAL[imperial] + USUAL[not imperial])


def chosen(low: Fraction, *, imperial: bool, by: CountedThing = WINDS) -> Offer:
    """The smallest usual unit of the system in use that loses at most 12 %; FieldError saying what would do if none."""
    for unit in USUAL[imperial]:
        found = offer(low, unit, by)
        if found.loss <= MOST_LOST:
            return found
    sett = say_in(low, imperial=imperial)
    needed = SettNeed.UNIT_INCHES if imperial else SettNeed.UNIT_CM
    others = offers_for(low, imperial=not imperial, by=by)[: len(USUAL[not imperial])]
    other = [found for found in others if _does(found)]
    would = [*map(_would, other), _would(_least(low, imperial, by), least=True)]
    raise _refusal(would, needed, shown(None), sett)


def taken(low: Fraction, unit: Length, by: CountedThing = WINDS) -> Offer:
    """What the unit that was asked for makes of `low`; FieldError if not one wind (or peg, or end) fits in it."""
    found = offer(low, unit, by)
    if found.per_mm:
        return found
    sett = say_in(low, imperial=unit.imperial)
    every = offers_for(low, imperial=unit.imperial, by=by)
    would = [usual for usual in every if _does(usual)] or [usual for usual in every if usual.per_mm]
    raise _refusal(list(map(_would, would or [_least(low, unit.imperial, by)])), by.holds, say_length(unit), sett)


def own_unit(per_mm: Fraction, *, imperial: bool, by: CountedThing = WINDS) -> Length:
    """The unit for a sett that is taken as it is.

    The smallest usual one with a whole number of winds (or pegs, or ends), at least four ends; else the smallest with
    at least four; else the largest.
    """
    counts = {unit: per_mm * unit.mm / by.ends for unit in USUAL[imperial]}
    enough = [unit for unit, count in counts.items() if count * by.ends >= _FEWEST_ENDS]
    even = [unit for unit in enough if counts[unit].denominator == 1]
    return (even or enough or [USUAL[imperial][-1]])[0]


def better(low: Fraction, than: Offer) -> Offer | None:
    """The usual unit that loses least, if it loses less; of the unit's own system if one there does."""
    every = [found for found in offers_for(low, imperial=than.unit.imperial, by=than.by) if found.loss < than.loss]
    own = [found for found in every if found.unit.imperial == than.unit.imperial]
    return min(own or every, key=lambda found: found.loss, default=None)


def _least(low: Fraction, imperial: bool, by: CountedThing) -> Offer:
    """The usual unit that loses least; where none holds a wind, the whole inches or centimetres that do."""
    usual = min(offers_for(low, imperial=imperial, by=by), key=lambda found: found.loss)
    if usual.per_mm:
        return usual
    step = _INCH if imperial else Fraction(10)
    first = -floor(-by.ends / low / step)  # the fewest inches or centimetres that hold one
    longer = [offer(low, Length(step * count, "in" if imperial else "cm"), by) for count in range(first, 2 * first + 1)]
    return min(longer, key=lambda found: found.loss)


def _does(found: Offer) -> bool:
    return found.loss <= MOST_LOST


def _would(found: Offer, *, least: bool = False) -> UnitOffer:
    return UnitOffer(say_length(found.unit), say_share(found.loss), least)


def _refusal(would: Sequence[UnitOffer], needed: Role, got: str, sett: str) -> UnitError:
    keys = [
        Message(SettNeed.UNIT_LEAST if each.least else SettNeed.UNIT, {"unit": each.unit, "loss": each.loss})
        for each in would
    ]
    error = UnitError("sett.marking_unit", needed, got, either([*keys, Message(SettNeed.AS_MEASURED)]), sett=sett)
    error.would = tuple(would)
    return error


def either(ways: Sequence[Message]) -> Message:
    """One way or another, as one message."""
    said, *others = ways
    for other in others:
        said = Message(SettNeed.OR, {"before": said, "after": other})
    return said


def counted_to(per_mm: Fraction, made: Offer) -> str:
    """How a sett counts off in the unit of `made`: "5 winds to 4 cm", "10 ends to 4 cm"."""
    count = say_number(per_mm * made.unit.mm / made.by.ends)
    return ENGLISH.say(made.by.counted_to, count=count, unit=say_length(made.unit))


def say_share(share: Fraction) -> str:
    """A share of 1 in per cent, to one decimal: "7.4 %", "nothing"; a trace is not called nothing."""
    if not share:
        return ENGLISH.say(Counted.NOTHING)
    if share < Fraction(1, 2000):
        return ENGLISH.say(Counted.TRACE)
    return ENGLISH.say(Unit.PER_CENT, number=say_number(share * 100, 1))
