"""The sett: from wrap readings or as given, to the one taken, with what it costs. All in exact fractions."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.setting.marking import Offer, chosen, offers_for, own_unit, taken
from layout.setting.readings import Range, Reading, measured_range
from layout.setting.sett_words import How, notes_on, warnings_on
from layout.units import Length, Sett


@dataclass(frozen=True, slots=True)
class SettInput:
    """What the kit says about the sett: wrap `readings`, or one `given`, never both.

    `loosest` lets the smallest reading stand alone, `as_measured` takes the sett measured without making it count off
    evenly, `marking_unit` is the distance between the long marks (None: chosen).
    """

    readings: tuple[Reading, ...] = ()
    given: Sett | None = None
    loosest: bool = False
    as_measured: bool = False
    marking_unit: Length | None = None


@dataclass(frozen=True, slots=True)
class SettTaken:
    """The sett taken, `per_mm` in ends per mm, and how it came about.

    The sett measured lies in `low` <= sett < `high` (of a sett given: `low` is that sett and `high` None). `unit` is
    the marking unit; `winds_per_unit` is whole unless the sett was given or taken as measured. `loss` is
    (low - per_mm) / low, 0 to 1. `offers` tell what every usual unit would make of `low`, own system first.
    """

    per_mm: Fraction
    low: Fraction
    high: Fraction | None
    unit: Length
    winds_per_unit: Fraction
    loss: Fraction
    offers: tuple[Offer, ...]
    notes: tuple[str, ...]
    warnings: tuple[str, ...]


def take_sett(choice: SettInput) -> SettTaken:
    """The sett to wind at. Raises FieldError where readings contradict each other or no marking unit does."""
    if choice.given is not None:
        low, unit = choice.given.per_mm, choice.marking_unit
        unit = unit or own_unit(low, imperial=choice.given.unit == "in")
        return _result(Range(low, low), Offer(unit, low, Fraction(0)), How.GIVEN)
    found = measured_range(choice.readings, loosest=choice.loosest)
    imperial = (choice.marking_unit or choice.readings[0].over).imperial
    if choice.as_measured:
        unit = choice.marking_unit or own_unit(found.low, imperial=imperial)
        return _result(found, Offer(unit, found.low, Fraction(0)), How.MEASURED)
    unit = choice.marking_unit
    return _result(found, taken(found.low, unit) if unit else chosen(found.low, imperial=imperial), How.COUNTED)


def _result(found: Range, made: Offer, how: How) -> SettTaken:
    offers = offers_for(found.low, imperial=made.unit.imperial)
    high = None if how is How.GIVEN else found.high
    return SettTaken(
        per_mm=made.per_mm,
        low=found.low,
        high=high,
        unit=made.unit,
        winds_per_unit=made.per_mm * made.unit.mm / 2,
        loss=made.loss,
        offers=offers,
        notes=notes_on(found.low, high, made, offers, how),
        warnings=(*found.warnings, *warnings_on(found.low, made)),
    )


__all__ = ["Offer", "Reading", "SettInput", "SettTaken", "take_sett"]
