"""What a teacher would say of the two yarns at the sett taken. The wrap of both together always stands."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.yarn_facts import Pair, YarnFacts
from layout.sett.sett import SettTaken
from layout.sett.sett_words import say_per_mm
from layout.yarns.pairing import Guess, first_guess, ladder_warnings, pairing_warnings

UNLIKE = (
    "Warp and weft were not judged against each other: one is known as it lies soft, the other compressed, and these "
    "are never mixed; wrap both, or tell weight and fibre of both."
)


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
    stands = "the sett as it was given" if sett.high is None else "the wrap of both together"
    said = f"A first guess from the {pair[0].kind} diameters of the two yarns would be {first}"
    return f"{said}, and may as well be {low} to {high}: {guess.doubt}. What stands is {stands}."


def _far_off(guess: Guess, sett: SettTaken) -> tuple[str, ...]:
    """One sentence if the sett measured, or given, lies beyond what the two yarns apart make likely."""
    if guess.low <= float(sett.low) <= guess.high:
        return ()
    how = "closer" if sett.low > guess.high else "wider"
    source = "sett given" if sett.high is None else "wrap of both yarns together"
    span = f"{_say(guess.low, sett)} to {_say(guess.high, sett)}"
    said = f"The {source}, {_say(float(sett.low), sett)}, is {how} than the yarns apart make likely ({span})"
    return (
        f"{said}: wrap both together once more, since a thread squeezed or a turn miscounted is easily overlooked.",
    )


def _say(per_mm: float, sett: SettTaken) -> str:
    return say_per_mm(Fraction(per_mm).limit_denominator(10**6), imperial=sett.unit.imperial)
