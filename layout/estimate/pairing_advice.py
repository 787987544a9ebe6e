"""What a teacher would say of the two yarns at the sett taken. The wrap of both together always stands."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from layout.kit.yarn_facts import Pair, YarnFacts
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Pairing
from layout.sett.sett import SettTaken
from layout.sett.sett_words import say_per_mm
from layout.yarns.pairing import Guess, first_guess, ladder_warnings, pairing_warnings

UNLIKE = ENGLISH.say(Pairing.UNLIKE)


def pairing_of(sett: SettTaken, known: YarnFacts) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Notes and warnings on the pair of yarns and on the sett."""
    ladder = ladder_warnings(sett.per_mm)
    pair = known.soft or known.pressed
    if pair is None:
        return ((UNLIKE,) if _one_of_each(known) else ()), ladder
    guess = first_guess(*pair)
    return (_guess_words(guess, pair, sett),), (
        *ladder,
        *pairing_warnings(1 / sett.per_mm, *pair),
        *_far_off(guess, sett),
    )


def _one_of_each(known: YarnFacts) -> bool:
    warp, weft = known.warp_soft or known.warp_pressed, known.weft_soft or known.weft_pressed
    return bool(warp and weft)


def _guess_words(guess: Guess, pair: Pair, sett: SettTaken) -> str:
    first, low, high = (_say(value, sett) for value in (guess.per_mm.value, guess.low, guess.high))
    values = {"kind": pair[0].named, "first": first, "low": low, "high": high, "doubt": guess.doubt}
    return ENGLISH.say(Pairing.GUESS_GIVEN if sett.high is None else Pairing.GUESS_WRAPPED, **values)


def _far_off(guess: Guess, sett: SettTaken) -> tuple[str, ...]:
    """One sentence if the sett measured, or given, lies beyond what the two yarns apart make likely."""
    if guess.low <= float(sett.low) <= guess.high:
        return ()
    role = _FAR_OFF[sett.high is None, sett.low > guess.high]
    values = {"sett": _say(float(sett.low), sett), "low": _say(guess.low, sett), "high": _say(guess.high, sett)}
    return (ENGLISH.say(role, **values),)


_FAR_OFF: Mapping[tuple[bool, bool], Role] = {
    (True, True): Pairing.GIVEN_CLOSER,
    (True, False): Pairing.GIVEN_WIDER,
    (False, True): Pairing.WRAP_CLOSER,
    (False, False): Pairing.WRAP_WIDER,
}
"""By whether the sett was given, and whether it is closer than likely."""


def _say(per_mm: float, sett: SettTaken) -> str:
    return say_per_mm(Fraction(per_mm).limit_denominator(10**6), imperial=sett.unit.imperial)
