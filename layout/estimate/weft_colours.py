"""The weft of every colour: how much of each strand is laid in it."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Reason
from layout.values.quantity import Quantity, assumed, combine
from layout.yardage.amounts import ColourNeed
from layout.yardage.given import ColourGiven, WeftGiven
from layout.yardage.weft_total import TAIL_MM, ColourPart, by_colour, tails
from layout.yarns.yarn import Bundle

NO_TAILS = assumed(0.0, ENGLISH.say(Reason.NO_TAILS))


def tails_of(given: WeftGiven) -> Quantity:
    """All tails in mm; none, as an assumption, where no lengths are stated."""
    lengths = sum(colour.lengths for colour in given.colours)
    return tails(lengths, tail_of(given)) if lengths else NO_TAILS


def tail_of(given: WeftGiven) -> Fraction | int:
    """One tail in mm."""
    return TAIL_MM if given.tail is None else given.tail.mm


class Laid(NamedTuple):
    """So much of one strand's length in mm in one colour, and how many of it lie side by side in how many g to a mm."""

    colour: str
    place: int
    length: Quantity
    number: int
    grams_per_mm: float


def laid_in_colours(weft: Quantity, given: WeftGiven, bundle: Bundle) -> Iterator[Laid]:
    """Every strand in every area. One with a colour of its own has it in all of them; others take the area's."""
    areas = given.colours or (ColourGiven("", Fraction(1)),)
    parts = [ColourPart(area.name, area.share, area.lengths) for area in areas]
    for name, length in by_colour(weft, parts, tail_of(given)).items():
        for place, strand in enumerate(bundle.strands):
            grams = float(strand.yarn.grams_per_metre) / 1000
            yield Laid(strand.colour or name, place, length, strand.number, grams)


def colours_of(weft: Quantity, given: WeftGiven, bundle: Bundle) -> tuple[ColourNeed, ...]:
    """The yarn of every colour, from the weft in mm without tails; nothing where no colour is named."""
    found: dict[str, list[Laid]] = {}
    for laid in laid_in_colours(weft, given, bundle):
        found.setdefault(laid.colour, []).append(laid)
    return () if set(found) == {""} else tuple(_need(name, of_it) for name, of_it in found.items())


def _need(name: str, of_it: list[Laid]) -> ColourNeed:
    strands = sum(number for _, number in {(laid.place, laid.number) for laid in of_it})
    said = ENGLISH.say(Reason.STRANDS, strands=strands)
    metres = sum_of(of_it, [laid.number / 1000 for laid in of_it], said)
    grams = sum_of(of_it, [laid.number * laid.grams_per_mm for laid in of_it], said)
    return ColourNeed(name or ENGLISH.say(Reason.NO_COLOUR), metres, grams)


def sum_of(of_it: list[Laid], factors: list[float], said: str) -> Quantity:
    """The lengths of all of them, each times its factor."""

    def total(*lengths: float) -> float:
        return sum(length * factor for length, factor in zip(lengths, factors, strict=True))

    return combine(total, said, *(laid.length for laid in of_it))
