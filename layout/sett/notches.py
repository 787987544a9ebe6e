"""What a bar that is notched already allows: an end in every second notch, in every notch, or two ends to a notch."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import NotchNote, SettNeed
from layout.sett.marking_units import MOST_LOST, SINGLY, Offer, say_share
from layout.sett.readings import PER, Range, say_in
from layout.sett.sett_words import loses, say_per_mm
from layout.values.errors import FieldError
from layout.values.units import Length, Sett, exact_sett, say_density, say_number, say_sett

USES = (Fraction(1, 2), Fraction(1), Fraction(2))
"""How many ends a notch carries on the average: every second notch carries one, every notch one, every notch two."""

_TAKEN: Mapping[tuple[Fraction, bool], Role] = {
    (Fraction(1, 2), False): NotchNote.SECOND_PER_CM,
    (Fraction(1, 2), True): NotchNote.SECOND_INCH,
    (Fraction(1), False): NotchNote.EVERY_PER_CM,
    (Fraction(1), True): NotchNote.EVERY_INCH,
    (Fraction(2), False): NotchNote.TWO_PER_CM,
    (Fraction(2), True): NotchNote.TWO_INCH,
}
_WITH: Mapping[Fraction, Role] = {
    Fraction(1, 2): NotchNote.WITH_SECOND,
    Fraction(1): NotchNote.WITH_EVERY,
    Fraction(2): NotchNote.WITH_TWO,
}


def given_on(sett: Sett, density: Sett) -> Fraction:
    """How many ends a notch carries at this `sett`; FieldError naming what fits where the notches do not allow it."""
    ends = sett.per_mm / density.per_mm
    if ends in USES:
        return ends
    fits = (say_sett(Sett(each * density.per_mm, sett.unit)) for each in USES)
    values = dict(zip(("second", "every", "two"), fits, strict=True))
    example = f'given = "{exact_sett(Sett(density.per_mm, sett.unit))}"'
    raise FieldError("sett.given", SettNeed.NOTCHES_ALLOW, say_sett(sett), example, **values)


def closest_on(low: Fraction, density: Sett) -> Fraction:
    """How many ends a notch carries at the largest sett up to `low`; FieldError where even every second is too many."""
    allowed = [ends for ends in USES if ends * density.per_mm <= low]
    if allowed:
        return max(allowed)
    most = say_density(Sett(2 * low, density.unit))
    example = f'notch_density = "{exact_sett(Sett(low, density.unit))}"'
    raise FieldError("frame.notch_density", SettNeed.NOTCH_DENSITY, say_density(density), example, most=most)


def offer_on(ends: Fraction, low: Fraction, density: Sett, unit: Length) -> Offer:
    """The sett with so many ends to a notch, and what it loses of `low`."""
    per_mm = ends * density.per_mm
    return Offer(unit, per_mm, (low - per_mm) / low, SINGLY)


def notes_on_notches(found: Range, high: Fraction | None, made: Offer, density: Sett) -> tuple[str, ...]:
    """Sentences on the sett taken, what it loses of the one measured, and what else the notches would give."""
    imperial = made.unit.imperial
    use = made.per_mm / density.per_mm
    sett, notches = say_per_mm(made.per_mm, imperial=imperial), say_number(density.per_mm * PER[imperial])
    notes = [ENGLISH.say(_TAKEN[use, imperial], sett=sett, notches=notches)]
    if high is not None:
        notes.append(loses(made, found.low, high))
    others = []
    for ends in (ends for ends in USES if ends != use):
        said = ENGLISH.say(_WITH[ends], sett=say_in(ends * density.per_mm, imperial=imperial))
        too_close = high is not None and ends * density.per_mm > found.low
        others.append(ENGLISH.say(NotchNote.TOO_CLOSE, use=said) if too_close else said)
    notes.append(ENGLISH.say(NotchNote.COULD_GIVE, one=others[0], other=others[1]))
    return tuple(notes)


def warnings_on_notches(made: Offer) -> tuple[str, ...]:
    """A sentence where the notches of the bar lose much of the sett measured."""
    if made.loss <= MOST_LOST:
        return ()
    return (ENGLISH.say(NotchNote.LOSES_MUCH, loss=say_share(made.loss)),)
