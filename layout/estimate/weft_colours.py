"""The weft of every colour, and the balls to buy of every yarn in every colour."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from layout.kit.yarn_facts import YarnFacts, stated
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Stated
from layout.values.quantity import Quantity, assumed, combine
from layout.yardage.amounts import BallsNeed, ColourNeed
from layout.yardage.balls import MANY_COLOURS, SPARE, SPARE_MANY, Wanted, balls, balls_notes
from layout.yardage.given import ColourGiven, WeftGiven
from layout.yardage.weft_total import TAIL_MM, ColourPart, by_colour, tails
from layout.yarns.label import StrandGiven
from layout.yarns.yarn import Bundle

NO_TAILS = assumed(0.0, ENGLISH.say(Reason.NO_TAILS))


def tails_of(given: WeftGiven) -> Quantity:
    """All tails in mm; none, as an assumption, where no lengths are stated."""
    lengths = sum(colour.lengths for colour in given.colours)
    return tails(lengths, _tail(given)) if lengths else NO_TAILS


def _tail(given: WeftGiven) -> Fraction | int:
    return TAIL_MM if given.tail is None else given.tail.mm


class _Laid(NamedTuple):
    """So much of one strand's length in mm in one colour, and how many of it lie side by side in how many g to a mm."""

    colour: str
    place: int
    length: Quantity
    number: int
    grams_per_mm: float


def _laid(weft: Quantity, given: WeftGiven, bundle: Bundle) -> Iterator[_Laid]:
    """Every strand in every area. One with a colour of its own has it in all of them; others take the area's."""
    areas = given.colours or (ColourGiven("", Fraction(1)),)
    parts = [ColourPart(area.name, area.share, area.lengths) for area in areas]
    for name, length in by_colour(weft, parts, _tail(given)).items():
        for place, strand in enumerate(bundle.strands):
            grams = float(strand.yarn.grams_per_metre) / 1000
            yield _Laid(strand.colour or name, place, length, strand.number, grams)


def colours_of(weft: Quantity, given: WeftGiven, bundle: Bundle) -> tuple[ColourNeed, ...]:
    """The yarn of every colour, from the weft in mm without tails; nothing where no colour is named."""
    found: dict[str, list[_Laid]] = {}
    for laid in _laid(weft, given, bundle):
        found.setdefault(laid.colour, []).append(laid)
    return () if set(found) == {""} else tuple(_need(name, of_it) for name, of_it in found.items())


def _need(name: str, of_it: list[_Laid]) -> ColourNeed:
    strands = sum(number for _, number in {(laid.place, laid.number) for laid in of_it})
    said = ENGLISH.say(Reason.STRANDS, strands=strands)
    metres = _sum(of_it, [laid.number / 1000 for laid in of_it], said)
    grams = _sum(of_it, [laid.number * laid.grams_per_mm for laid in of_it], said)
    return ColourNeed(name or ENGLISH.say(Reason.NO_COLOUR), metres, grams)


def _sum(of_it: list[_Laid], factors: list[float], said: str) -> Quantity:
    def total(*lengths: float) -> float:
        return sum(length * factor for length, factor in zip(lengths, factors, strict=True))

    return combine(total, said, *(laid.length for laid in of_it))


def spare_of(given: WeftGiven) -> Quantity:
    """The share of weft to spare: as stated, else more where there are many colours."""
    return stated(given.spare, SPARE_MANY if len(given.colours) >= MANY_COLOURS else SPARE, Stated.WEFT_SPARE)


class ToBuy(NamedTuple):
    """Balls of every yarn in every colour that is sold by the ball, and what is to be said of them."""

    balls: tuple[BallsNeed, ...]
    notes: tuple[str, ...]


def balls_of(known: YarnFacts, given: WeftGiven, weft: Quantity, more: float, name: str) -> ToBuy:
    """The balls for a weft in mm without tails; `more` times that, besides, is hem or waste; `name` is the weft's.

    Strands of one yarn in one colour are added up before they are rounded to balls.
    """
    if known.weft is None:
        return ToBuy((), ())
    found: dict[tuple[StrandGiven, str], list[_Laid]] = {}
    for laid in _laid(weft.scaled(1 + more), given, known.weft):
        yarn = replace(given.strands[laid.place], number=1, colour="")
        found.setdefault((yarn, laid.colour), []).append(laid)
    yarns = list(dict.fromkeys(yarn for yarn, _ in found))
    spare, sampled = spare_of(given), bool(given.beads or given.picks or given.sample)
    made, notes = list[BallsNeed](), list[str]()
    for (yarn, colour), of_it in found.items():
        if (ball := yarn.ball_g) is None:
            continue
        grams = _sum(of_it, [laid.number * laid.grams_per_mm for laid in of_it], weft.reason)
        called = name if len(yarns) == 1 else ENGLISH.say(Reason.STRAND, weft=name, strand=yarns.index(yarn) + 1)
        wanted = Wanted(called, colour, grams, ball)
        made.append(balls(wanted, spare, sampled=sampled))
        notes += balls_notes(wanted, spare, made[-1])
    return ToBuy(tuple(made), tuple(notes))
