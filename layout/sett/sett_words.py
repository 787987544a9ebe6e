"""What is said of a sett: the one taken, what it costs, and what would have been possible. Words only."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from enum import Enum
from fractions import Fraction
from functools import lru_cache
from itertools import groupby

from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import SettNote, SettUnit
from layout.sett.marking_units import (
    MOST_LOST,
    NAILS,
    PEGS,
    SINGLY,
    WINDS,
    CountedThing,
    Offer,
    better,
    counted_to,
    say_share,
)
from layout.sett.readings import PER, say_in
from layout.values.units import say_length, say_number

_SETTS = 16  # whose sentences are kept: a kit asks for them when it is read and when it is planned


class SettOrigin(Enum):
    """How a sett came to be taken."""

    GIVEN = "given"
    MEASURED = "measured"
    COUNTED = "counted"


_TAKEN = {
    SettOrigin.GIVEN: SettNote.TAKEN_GIVEN,
    SettOrigin.MEASURED: SettNote.TAKEN_MEASURED,
    SettOrigin.COUNTED: SettNote.TAKEN_COUNTED,
}
_UNEVEN: dict[CountedThing, Role] = {
    WINDS: SettNote.UNEVEN_WINDS,
    PEGS: SettNote.UNEVEN_PEGS,
    NAILS: SettNote.UNEVEN_NAILS,
    SINGLY: SettNote.UNEVEN_ENDS,
}
_NOT_ONE: dict[CountedThing, Role] = {
    WINDS: SettNote.NO_WIND,
    PEGS: SettNote.NO_PEG,
    NAILS: SettNote.NO_NAIL,
    SINGLY: SettNote.NO_END,
}


def say_per_mm(per_mm: Fraction, *, imperial: bool) -> str:
    """A sett in both systems, the one in use first: "2.5 ends per cm (6.35 epi)"."""
    first, second = (say_in(per_mm, imperial=inches) for inches in (imperial, not imperial))
    return ENGLISH.say(SettUnit.BOTH, first=first, second=second)


@lru_cache(_SETTS)
def notes_on(
    low: Fraction, high: Fraction | None, made: Offer, offers: tuple[Offer, ...], how: SettOrigin
) -> tuple[str, ...]:
    """Sentences on the sett taken: what it is, what it loses, what other units would give, what was measured."""
    imperial = made.unit.imperial
    sett = say_per_mm(made.per_mm, imperial=imperial)
    notes = [ENGLISH.say(_TAKEN[how], sett=sett, counted=counted_to(made.per_mm, made))]
    if high is not None:
        notes.append(loses(made, low, high))
    notes += _other_units(made, offers, imperial=imperial)
    if how is SettOrigin.COUNTED:
        as_it_is = say_per_mm(low, imperial=imperial)
        notes.append(ENGLISH.say(SettNote.AS_MEASURED, sett=as_it_is, counted=counted_to(low, made)))
    return tuple(notes)


def loses(made: Offer, low: Fraction, high: Fraction) -> str:
    """A sentence on what the sett taken loses of the one measured."""
    inches = made.unit.imperial
    between = {"low": say_number(low * PER[inches]), "high": say_number(high * PER[inches])}
    return ENGLISH.say(SettNote.LOSES_INCH if inches else SettNote.LOSES_CM, loss=say_share(made.loss), **between)


def warnings_on(low: Fraction, made: Offer) -> tuple[str, ...]:
    """Sentences that ask for care: winds or ends that do not fall into the unit, a unit that loses much."""
    warnings = [*uneven(made)]
    if made.loss > MOST_LOST:
        lost = {"unit": say_length(made.unit), "loss": say_share(made.loss)}
        if usual := better(low, made):
            other, less = say_length(usual.unit), say_share(usual.loss)
            warnings.append(ENGLISH.say(SettNote.UNIT_LOSES, **lost, other=other, less=less))
        else:
            warnings.append(ENGLISH.say(SettNote.UNIT_LOSES_ANYHOW, **lost))
    return tuple(warnings)


def uneven(made: Offer) -> tuple[str, ...]:
    """A sentence where what is counted off does not fall evenly into the unit."""
    if made.count.denominator == 1:
        return ()
    return (ENGLISH.say(_UNEVEN[made.by], counted=counted_to(made.per_mm, made)),)


def _other_units(made: Offer, offers: Sequence[Offer], *, imperial: bool) -> list[str]:
    """One sentence for each system's usual units but the one in use."""
    sentences = []
    for inches in (imperial, not imperial):
        others = [found for found in offers if found.unit.imperial is inches and found.unit.mm != made.unit.mm]
        said = ENGLISH.listed([_offer_words(alike) for _, alike in groupby(others, lambda found: found.per_mm)])
        sentences.append(ENGLISH.say(SettNote.OTHER_INCHES if inches else SettNote.OTHER_CM, offers=said))
    return sentences


def _offer_words(alike: Iterable[Offer]) -> str:
    """What neighbouring units give that all come to the same sett."""
    first, *more = alike
    units = ENGLISH.all_of([say_length(found.unit) for found in (first, *more)])
    if not first.per_mm:
        return ENGLISH.say(_NOT_ONE[first.by], units=units)
    sett = say_in(first.per_mm, imperial=first.unit.imperial)
    return ENGLISH.say(SettNote.OFFER, sett=sett, units=units, loss=say_share(first.loss))
