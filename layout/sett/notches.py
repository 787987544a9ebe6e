"""What a bar that is notched already allows: an end in every second notch, in every notch, or two ends to a notch."""

from __future__ import annotations

from fractions import Fraction

from layout.sett.marking_units import MOST_LOST, SINGLY, Offer, say_share
from layout.sett.readings import PER, Range
from layout.sett.sett_words import say_per_mm
from layout.values.errors import FieldError
from layout.values.units import Length, Sett, exact_sett, say_number, say_sett

USES = {
    Fraction(1, 2): "an end in every second notch",
    Fraction(1): "an end in every notch",
    Fraction(2): "two ends to a notch",
}
"""How many ends a notch carries on the average, and what to do then."""


def given_on(sett: Sett, density: Sett) -> Fraction:
    """How many ends a notch carries at this `sett`; FieldError naming what fits where the notches do not allow it."""
    ends = sett.per_mm / density.per_mm
    if ends in USES:
        return ends
    fits = [f"{say_sett(Sett(each * density.per_mm, sett.unit))} ({use})" for each, use in USES.items()]
    needed = f"a sett that the notches allow: {', '.join(fits[:-1])} or {fits[-1]}"
    raise FieldError("sett.given", needed, say_sett(sett), f'given = "{exact_sett(Sett(density.per_mm, sett.unit))}"')


def closest_on(low: Fraction, density: Sett) -> Fraction:
    """How many ends a notch carries at the largest sett up to `low`; FieldError where even every second is too many."""
    allowed = [ends for ends in USES if ends * density.per_mm <= low]
    if allowed:
        return max(allowed)
    most = say_density(Sett(2 * low, density.unit))
    needed = f"at most {most}, so that an end in every second notch is no closer than the sett measured"
    example = f'notch_density = "{exact_sett(Sett(low, density.unit))}"'
    raise FieldError("frame.notch_density", needed, say_density(density), example)


def say_density(density: Sett) -> str:
    """How close notches are, for people: "4 notches per cm"."""
    said = say_sett(density)
    return said.replace("epi", "notches per inch") if density.unit == "in" else said.replace("ends", "notches")


def offer_on(ends: Fraction, low: Fraction, density: Sett, unit: Length) -> Offer:
    """The sett with so many ends to a notch, and what it loses of `low`."""
    per_mm = ends * density.per_mm
    return Offer(unit, per_mm, (low - per_mm) / low, SINGLY)


def notes_on_notches(found: Range, high: Fraction | None, made: Offer, density: Sett) -> tuple[str, ...]:
    """Sentences on the sett taken, what it loses of the one measured, and what else the notches would give."""
    imperial = made.unit.imperial
    per, name = PER[imperial]
    use = made.per_mm / density.per_mm
    notches = f"{say_number(density.per_mm * per)} notches {'an inch' if imperial else 'per cm'}"
    notes = [f"The sett taken is {say_per_mm(made.per_mm, imperial=imperial)}: {USES[use]}, of {notches}."]
    if high is not None:
        span = f"at least {say_number(found.low * per)} and less than {say_number(high * per)} {name}"
        notes.append(f"It loses {say_share(made.loss)} of the sett measured, {span}.")
    others = [
        f"{say_number(ends * density.per_mm * per)} {name} with {words}{_too_close(ends, found.low, high, density)}"
        for ends, words in USES.items()
        if ends != use
    ]
    notes.append(f"These notches could also give {' or '.join(others)}.")
    return tuple(notes)


def _too_close(ends: Fraction, low: Fraction, high: Fraction | None, density: Sett) -> str:
    return " (closer than the sett measured)" if high is not None and ends * density.per_mm > low else ""


def warnings_on_notches(made: Offer) -> tuple[str, ...]:
    """A sentence where the notches of the bar lose much of the sett measured."""
    if made.loss <= MOST_LOST:
        return ()
    lost = say_share(made.loss)
    return (f"The notches that are there lose {lost} of the sett measured; a bar notched anew would lose less.",)
