"""What a teacher would say of the two yarns at the sett taken. The wrap of both together always stands."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from layout.kit.yarn_facts import YarnFacts
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Pairing
from layout.sett.readings import PER
from layout.sett.sett import SettTaken
from layout.sett.sett_words import say_per_mm
from layout.values.quantity import Quantity
from layout.yarns.pairing import FirstGuess, Said, first_guess, ladder_warnings, pairing_said


def guess_of(known: YarnFacts) -> FirstGuess | None:
    """A first guess of the sett from the yarns apart; None where the warp is not known."""
    return first_guess(known.warp_thick.soft, _weft(known)) if known.warp_thick else None


def pairing_of(sett: SettTaken, known: YarnFacts) -> Said:
    """Notes and warnings on the pair of yarns and on the sett."""
    said = Said((), ladder_warnings(sett.per_mm))
    guess = guess_of(known)
    if guess is None or known.warp_thick is None:
        return said
    said += pairing_said(1 / sett.per_mm, known.warp_thick.soft, _weft(known))
    return Said((_guess_words(guess, sett), *said.notes), (*said.warnings, *_far_off(guess.per_mm, sett)))


def _weft(known: YarnFacts) -> Quantity | None:
    return known.weft_thick.soft if known.weft_thick else None


def _guess_words(guess: FirstGuess, sett: SettTaken) -> str:
    per_mm = guess.per_mm
    first, low, high = (_say(value, sett) for value in (per_mm.value, per_mm.low, per_mm.high))
    role = Pairing.GUESS_GIVEN if sett.high is None else Pairing.GUESS_WRAPPED
    return ENGLISH.say(role, first=first, low=low, high=high)


def _far_off(guess: Quantity, sett: SettTaken) -> tuple[str, ...]:
    """One sentence if the sett measured, or given, is closer than the two yarns apart make possible.

    A wider one is no fault: tapestry is usually set wider than its yarns would lie, and rugs much wider. What is too
    wide for the yarns, the thickness of the warp shows.
    """
    if float(sett.low) <= guess.high:
        return ()
    role = _FAR_OFF[sett.high is None]
    values = {"sett": _say(float(sett.low), sett), "low": _say(guess.low, sett), "high": _say(guess.high, sett)}
    return (ENGLISH.say(role, **values),)


_FAR_OFF: Mapping[bool, Role] = {True: Pairing.GIVEN_CLOSER, False: Pairing.WRAP_CLOSER}
"""By whether the sett was given."""


def _say(per_mm: float, sett: SettTaken) -> str:
    """A guess, to the tenth of an end in the unit of the kit."""
    per = PER[sett.unit.imperial]
    return say_per_mm(Fraction(round(per_mm * per * 10), 10) / per, imperial=sett.unit.imperial)
