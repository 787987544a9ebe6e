"""The sett: from wrap readings or as given, to the one taken, with what it costs. All in exact fractions."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.messages.english import ENGLISH
from layout.sett.marking_units import SINGLY, WINDS, CountedThing, Offer, chosen, offers_for, own_unit, taken
from layout.sett.notches import closest_on, given_on, notes_on_notches, offer_on, warnings_on_notches
from layout.sett.readings import Range, WrapReading, measured_range
from layout.sett.sett_words import SettOrigin, notes_on, uneven, warnings_on
from layout.values.units import Length, Sett, say_number


@dataclass(frozen=True, slots=True)
class SettInput:
    """What the kit says about the sett: wrap `readings`, or one `given`, never both.

    `loosest` lets the smallest reading stand alone, `as_measured` takes the sett measured without making it count off
    evenly, `marking_unit` is the distance between the long marks (None: chosen).
    """

    readings: tuple[WrapReading, ...] = ()
    given: Sett | None = None
    loosest: bool = False
    as_measured: bool = False
    marking_unit: Length | None = None


@dataclass(frozen=True, slots=True)
class SettTaken:
    """The sett taken, `per_mm` in ends per mm, and how it came about.

    The sett measured lies in `low` <= sett < `high` (of a sett given: `low` is that sett and `high` None). `unit` is
    the marking unit, in which `per_unit` winds, pegs or single ends are counted off: a whole number unless
    the sett was given or taken as measured. `loss` is (low - per_mm) / low, 0 to 1. `offers` tell what every usual unit
    would make of `low`, own system first. On a bar that is notched already, `to_a_notch` ends (1/2, 1 or 2) lie in a
    notch.
    """

    per_mm: Fraction
    low: Fraction
    high: Fraction | None
    unit: Length
    by: CountedThing
    loss: Fraction
    offers: tuple[Offer, ...]
    notes: tuple[str, ...]
    warnings: tuple[str, ...]
    to_a_notch: Fraction | None = None

    @property
    def per_unit(self) -> Fraction:
        """How many winds, pegs or single ends are laid in the marking unit."""
        return self.per_mm * self.unit.mm / self.by.ends

    @property
    def winds_per_unit(self) -> Fraction | None:
        """How many winds are laid in the marking unit; None where there are no winds."""
        return self.per_unit if self.by is WINDS else None

    @property
    def counted(self) -> str:
        """What is laid in the marking unit: "5 winds", "10 ends"."""
        return ENGLISH.say(self.by.counted, count=say_number(self.per_unit))


def take_sett(choice: SettInput, by: CountedThing = WINDS, notches: Sett | None = None) -> SettTaken:
    """The sett to warp at, counted off `by` winds, pegs or ends, or as the `notches` of a bar that is there allow.

    Raises FieldError where readings contradict each other, no marking unit does, or the notches do not fit.
    """
    if choice.given is not None:
        low, imperial = choice.given.per_mm, choice.given.unit == "in"
        found, high = Range(low, low), None
    else:
        found = measured_range(choice.readings, loosest=choice.loosest)
        low, high = found.low, found.high
        imperial = (choice.marking_unit or choice.readings[0].over).imperial
    if notches is not None:
        return _on_notches(choice, found, high, notches, imperial=imperial)
    if choice.given is not None or choice.as_measured:
        own = choice.marking_unit or own_unit(low, imperial=imperial, by=by)
        how = SettOrigin.MEASURED if choice.given is None else SettOrigin.GIVEN
        return _result(found, high, Offer(own, low, Fraction(0), by), how)
    unit = choice.marking_unit
    made = taken(low, unit, by) if unit else chosen(low, imperial=imperial, by=by)
    return _result(found, high, made, SettOrigin.COUNTED)


def _result(found: Range, high: Fraction | None, made: Offer, how: SettOrigin) -> SettTaken:
    offers = offers_for(found.low, imperial=made.unit.imperial, by=made.by)
    return SettTaken(
        per_mm=made.per_mm,
        low=found.low,
        high=high,
        unit=made.unit,
        by=made.by,
        loss=made.loss,
        offers=offers,
        notes=notes_on(found.low, high, made, offers, how),
        warnings=(*found.warnings, *warnings_on(found.low, made)),
    )


def _on_notches(choice: SettInput, found: Range, high: Fraction | None, notches: Sett, *, imperial: bool) -> SettTaken:
    ends = closest_on(found.low, notches) if choice.given is None else given_on(choice.given, notches)
    unit = choice.marking_unit or own_unit(ends * notches.per_mm, imperial=imperial, by=SINGLY)
    made = offer_on(ends, found.low, notches, unit)
    return SettTaken(
        per_mm=made.per_mm,
        low=found.low,
        high=high,
        unit=unit,
        by=made.by,
        loss=made.loss,
        offers=(),
        notes=notes_on_notches(found, high, made, notches),
        warnings=(*found.warnings, *uneven(made), *warnings_on_notches(made)),
        to_a_notch=ends,
    )


__all__ = ["Offer", "SettInput", "SettTaken", "WrapReading", "take_sett"]
