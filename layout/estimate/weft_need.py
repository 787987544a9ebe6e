"""The weft that a weaving takes: how close the picks lie, how long each is, and all of it, whole and by colour."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from layout.kit.yarn_facts import YarnFacts
from layout.messages.english import ENGLISH
from layout.messages.roles import Add, Reason
from layout.values.limits import ROUNDING
from layout.values.quantity import Quantity, assumed, computed
from layout.yardage.amounts import ColourNeed, scaled
from layout.yardage.given import ColourGiven, WeftGiven
from layout.yardage.warp_thread import weight
from layout.yardage.weft import picks_counted, picks_estimated, picks_from_beads, take_up, take_up_measured
from layout.yardage.weft_total import (
    TAIL_MM,
    ColourPart,
    by_colour,
    scaled_from_sample,
    tails,
    weft_length,
)
from layout.yarns.diameter import together
from layout.yarns.yarn import Bundle, Strand

BEAT = Fraction(4, 5)
NO_TAILS = assumed(0.0, ENGLISH.say(Reason.NO_TAILS))

ADD_PICKS = ENGLISH.say(Add.PICKS)
ADD_TAKE_UP = ENGLISH.say(Add.TAKE_UP)
ADD_STRANDS = ENGLISH.say(Add.STRANDS)
ADD_COLOURS = ENGLISH.say(Add.COLOURS)


class WeftNeed(NamedTuple):
    """Picks per mm, take-up, m and g of the bundle as woven, its colours, and what to add where one is missing."""

    picks: Quantity | None
    take_up: Quantity | None
    total_m: Quantity | None
    total_g: Quantity | None
    colours: tuple[ColourNeed, ...]
    to_add: tuple[str, ...]


def weft_need(known: YarnFacts, given: WeftGiven, pitch: Quantity, width: Quantity, height: Quantity) -> WeftNeed:
    """The weft of a weaving as wide and as high as it is woven; `pitch` as it is drawn in."""
    picks, more = picks_of(known, given), take_up_of(known, given, pitch.value)
    length, weight, colours = _total(known, given, picks, more, (width, height))
    lacking = (
        (picks, ADD_PICKS),
        (more, ADD_TAKE_UP),
        (weight, ADD_STRANDS if known.weft is None else ""),
        (colours or None, ADD_COLOURS),
    )
    to_add = tuple(words for figure, words in lacking if figure is None and words)
    return WeftNeed(picks, more, scaled(length, 1 / 1000) if length else None, weight, colours, to_add)


def picks_of(known: YarnFacts, given: WeftGiven) -> Quantity | None:
    """Picks per mm: counted, from beads, or guessed from the bundle, soft if it was wrapped."""
    if given.picks:
        return picks_counted(given.picks.number, given.picks.over.mm)
    if given.beads:
        return picks_from_beads(given.beads.number, given.beads.over.mm)
    thick = known.weft_soft or known.weft_pressed
    return picks_estimated(thick, given.beat or BEAT) if thick else None


def take_up_of(known: YarnFacts, given: WeftGiven, pitch: float) -> Quantity | None:
    """The take-up: of a pick drawn out, by compressed diameters, or as an upper bound by soft ones.

    None too where warp and weft are thicker together than the pitch, since such ends do not fit.
    """
    if given.pick:
        return take_up_measured(given.pick.straight.mm, given.pick.woven.mm)
    pair = known.pressed or known.soft
    if pair is None or together(pair).mm > pitch * (1 + ROUNDING):
        return None
    return take_up(pitch, *pair)


def _total(
    known: YarnFacts, given: WeftGiven, picks: Quantity | None, more: Quantity | None, size: tuple[Quantity, Quantity]
) -> tuple[Quantity | None, Quantity | None, tuple[ColourNeed, ...]]:
    """All the weft in mm and in g, and its colours: scaled from a weighed sample, or computed pick by pick."""
    if given.sample:
        sides = (given.sample.width.mm, given.sample.height.mm)
        found = scaled_from_sample(given.sample.grams, sides, (size[0].value, size[1].value))
        grams = computed(found.value, found.reason, found, *size)
        if known.weft is None:
            return None, grams, ()
        length = computed(grams.value / float(known.weft.tex) * 1e6, ENGLISH.say(Reason.SAMPLE), grams)
        return length, grams, colours_of(length, given, known.weft, tailed=True)
    if picks is None or more is None:
        return None, None, ()
    found = weft_length(size[0].value, size[1].value, picks, more)
    length = computed(found.value, found.reason, found, *size)
    ends = _tails(given)
    total = computed(length.value + ends.value, ENGLISH.paragraph([length.reason, ends.reason]), length, ends)
    if known.weft is None:
        return total, None, ()
    return total, weight(total, known.weft.tex), colours_of(length, given, known.weft, tailed=False)


def _tails(given: WeftGiven) -> Quantity:
    lengths = sum(colour.lengths for colour in given.colours)
    return tails(lengths, given.tail.mm if given.tail else TAIL_MM) if lengths else NO_TAILS


def colours_of(weft: Quantity, given: WeftGiven, bundle: Bundle, *, tailed: bool) -> tuple[ColourNeed, ...]:
    """The yarn of every colour, from the whole weft in mm (`tailed`: which already has its tails).

    A strand with a colour of its own is of that colour in every area; one without takes the colour of the area.
    """
    areas = given.colours or (ColourGiven("", Fraction(1)),)
    parts = [ColourPart(area.name, area.share, 0 if tailed else area.lengths) for area in areas]
    found: dict[str, list[tuple[Quantity, Strand]]] = {}
    for name, laid in by_colour(weft, parts, given.tail.mm if given.tail else TAIL_MM).items():
        for strand in bundle.strands:
            found.setdefault(strand.colour or name, []).append((laid, strand))
    return () if set(found) == {""} else tuple(_need(name, of_it) for name, of_it in found.items())


def _need(name: str, laid: list[tuple[Quantity, Strand]]) -> ColourNeed:
    lengths = [length for length, _ in laid]
    metres = sum(length.value / 1000 * strand.number for length, strand in laid)
    grams = sum(length.value / 1000 * strand.number * float(strand.yarn.grams_per_metre) for length, strand in laid)
    strands = sum(strand.number for strand in {id(strand): strand for _, strand in laid}.values())
    said = ENGLISH.say(Reason.STRANDS, strands=strands)
    return ColourNeed(
        name or ENGLISH.say(Reason.NO_COLOUR), computed(metres, said, *lengths), computed(grams, said, *lengths)
    )
