"""What is told about a sett: the one taken, what it costs, and what would have been possible. Words only."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from enum import Enum
from fractions import Fraction
from itertools import groupby

from layout.sett.marking_units import MOST_LOST, Offer, better, say_share
from layout.sett.readings import PER
from layout.values.units import say_length, say_number


class SettOrigin(Enum):
    """How a sett came to be taken; the value is what a sentence says of it."""

    GIVEN = "as it was given"
    MEASURED = "as it was measured"
    COUNTED = "the largest that counts off evenly in that unit"


def say_per_mm(per_mm: Fraction, *, imperial: bool) -> str:
    """A sett in both systems, the one in use first: "2.5 ends per cm (6.35 epi)"."""
    first, second = (f"{say_number(per_mm * per)} {name}" for per, name in (PER[imperial], PER[not imperial]))
    return f"{first} ({second})"


def notes_on(
    low: Fraction, high: Fraction | None, made: Offer, offers: Sequence[Offer], how: SettOrigin
) -> tuple[str, ...]:
    """Sentences on the sett taken: what it is, what it loses, what other units would give, what was measured."""
    imperial = made.unit.imperial
    sett = say_per_mm(made.per_mm, imperial=imperial)
    notes = [f"The sett taken is {sett}: {_counted(made.per_mm, made)}, {how.value}."]
    if high is not None:
        per, name = PER[imperial]
        measured = f"the sett measured, at least {say_number(low * per)} and less than {say_number(high * per)} {name}"
        notes.append(f"It loses {say_share(made.loss)} of {measured}.")
    notes += _other_units(made, offers, imperial=imperial)
    if how is SettOrigin.COUNTED:
        as_it_is = say_per_mm(low, imperial=imperial)
        notes.append(f"As measured (as_measured = true) it would be {as_it_is}, {_counted(low, made)}.")
    return tuple(notes)


def warnings_on(low: Fraction, made: Offer) -> tuple[str, ...]:
    """Sentences that ask for care: winds or ends that do not fall into the unit, a unit that loses much."""
    warnings = [*uneven(made)]
    if made.loss > MOST_LOST:
        usual = better(low, made)
        instead = f"a unit of {say_length(usual.unit)} would lose {say_share(usual.loss)}" if usual else ""
        instead = instead or "as_measured = true would lose nothing"
        lost = say_share(made.loss)
        warnings.append(f"A marking unit of {say_length(made.unit)} loses {lost} of the sett measured; {instead}.")
    return tuple(warnings)


def uneven(made: Offer) -> tuple[str, ...]:
    """A sentence where what is counted off does not fall evenly into the unit."""
    if made.count.denominator == 1:
        return ()
    counted, many = _counted(made.per_mm, made), made.by.many
    return (f"{counted} is no whole number, so the long marks will fall between {many}.",)


def _counted(per_mm: Fraction, made: Offer) -> str:
    """How a sett counts off in the unit of `made`: "5 winds to 4 cm", "10 ends to 4 cm"."""
    count = per_mm * made.unit.mm / made.by.ends
    return f"{say_number(count)} {made.by.noun(count)} to {say_length(made.unit)}"


def _other_units(made: Offer, offers: Sequence[Offer], *, imperial: bool) -> list[str]:
    """One sentence for each system's usual units but the one in use."""
    sentences = []
    for inches in (imperial, not imperial):
        others = [found for found in offers if found.unit.imperial is inches and found.unit.mm != made.unit.mm]
        told = ", ".join(_offer_words(alike) for _, alike in groupby(others, lambda found: found.per_mm))
        sentences.append(f"Counting off evenly, other units in {'inches' if inches else 'cm'} would give {told}.")
    return sentences


def _offer_words(alike: Iterable[Offer]) -> str:
    """What neighbouring units give that all come to the same sett."""
    first, *more = alike
    units = " and ".join(say_length(found.unit) for found in (first, *more))
    if len(more) > 1:
        units = units.replace(" and ", ", ", len(more) - 1)
    if not first.per_mm:
        return f"not one {first.by.one} at {units}"
    per, name = PER[first.unit.imperial]
    return f"{say_number(first.per_mm * per)} {name} at {units} (loses {say_share(first.loss)})"
