"""The weft that a weaving takes: how high a bead stands, how long a pick is, and all of it, whole and by colour."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial
from typing import NamedTuple

from layout.estimate.weft_colours import colours_of, tails_of
from layout.kit.yarn_facts import YarnFacts
from layout.messages.english import ENGLISH
from layout.messages.roles import Add, Computed, Conflict, Reason
from layout.values.limits import plain
from layout.values.quantity import Origin, Quantity, combine, computed, met
from layout.yardage.amounts import ColourNeed
from layout.yardage.bead import Weave, bead_height, beads_counted, picks_counted, warp_guessed
from layout.yardage.given import WeftGiven
from layout.yardage.take_up import drawn, take_up
from layout.yardage.warp_thread import weight
from layout.yardage.weft_total import by_area, picks_of, scaled_from_sample, weft_length

_METRE = computed(1000.0, ENGLISH.say(Computed.AREA))

ADD_PICKS = ENGLISH.say(Add.PICKS)
ADD_TAKE_UP = ENGLISH.say(Add.TAKE_UP)
ADD_STRANDS = ENGLISH.say(Add.STRANDS)
ADD_COLOURS = ENGLISH.say(Add.COLOURS)


class Cloth(NamedTuple):
    """What is woven: the `pitch` as it is drawn in, `width` and `height`, all in mm."""

    pitch: Quantity
    width: Quantity
    height: Quantity


@dataclass(frozen=True, slots=True)
class WeftNeed:
    """Bead in mm, picks per mm, take-up, m and g of the bundle as woven, its colours, and what to add for the rest.

    `laid_m` is the weft without its tails, and `per_m2` what that weighs in g in a square metre.
    """

    bead: Quantity | None
    take_up: Quantity | None
    laid_m: Quantity | None
    tails_m: Quantity
    total_m: Quantity | None
    total_g: Quantity | None
    per_m2: Quantity | None
    colours: tuple[ColourNeed, ...]
    to_add: tuple[str, ...]

    @property
    def picks(self) -> Quantity | None:
        """Picks per mm."""
        return picks_of(self.bead) if self.bead else None


def picks_known(known: YarnFacts, given: WeftGiven, pitch: Quantity) -> Quantity | None:
    """Picks per mm, for those who need no more of the weft."""
    bead = _bead(_weave(known, pitch), given)
    return picks_of(bead) if bead else None


def weft_need(known: YarnFacts, given: WeftGiven, pitch: Quantity, width: Quantity, height: Quantity) -> WeftNeed:
    """The weft of a weaving as wide and as high as it is woven; `pitch` as it is drawn in."""
    cloth = Cloth(pitch, width, height)
    weave = _weave(known, pitch)
    bead = _bead(weave, given)
    more = _take_up(weave, bead, given)
    laid, total, grams = _total(known, given, (bead, more), cloth)
    per_m2 = _by_area(known, given, (bead, more))
    colours = colours_of(laid, given, known.weft) if laid and known.weft else ()
    lacking = (
        (bead, ADD_PICKS),
        (more, ADD_TAKE_UP),
        (grams, ADD_STRANDS if known.weft is None else ""),
        (colours or None, ADD_COLOURS),
    )
    to_add = tuple(words for figure, words in lacking if figure is None and words)
    return WeftNeed(
        bead, more, _metres(laid), tails_of(given).scaled(1 / 1000), _metres(total), grams, per_m2, colours, to_add
    )


def _metres(length: Quantity | None) -> Quantity | None:
    return length.scaled(1 / 1000) if length else None


def _weave(known: YarnFacts, pitch: Quantity) -> Weave | None:
    return Weave(known.weft_thick, known.lying or warp_guessed(pitch), pitch) if known.weft_thick else None


def _bead(weave: Weave | None, given: WeftGiven) -> Quantity | None:
    """The height of a bead in mm: by the yarns and the beat, by what was counted, or by both."""
    counted, key = None, ""
    if given.picks:
        counted, key = picks_counted(given.picks.number, float(given.picks.over.mm)), "weft.picks"
    elif given.beads:
        counted, key = beads_counted(given.beads.number, float(given.beads.over.mm)), "weft.beads"
    by_yarns = bead_height(weave, given.beat) if weave else None
    if counted is None or by_yarns is None:
        return counted or by_yarns
    return met(by_yarns, counted, partial(_apart, Conflict.BEADS_THICKNESS, 1, rows=key))


def _take_up(weave: Weave | None, bead: Quantity | None, given: WeftGiven) -> Quantity | None:
    """The take-up as a share: by what lies in the cloth, by a pick drawn out, or by both."""
    found = drawn(float(given.pick.straight.mm), float(given.pick.woven.mm)) if given.pick else None
    by_yarns = take_up(weave, bead) if weave and bead else None
    if found is None or by_yarns is None:
        return found or by_yarns
    return met(by_yarns, found, partial(_apart, Conflict.PICK_TAKE_UP, 100))


def _apart(role: Conflict, factor: float, known: Quantity, found: Quantity, **more: str) -> str:
    """What is said of a reading that lies outside what is known."""
    names = {"least": known.low, "most": known.high, "low": found.low, "high": found.high}
    return ENGLISH.say(role, **{name: plain(round(size * factor, 2)) for name, size in names.items()}, **more)


def _total(
    known: YarnFacts, given: WeftGiven, lies: tuple[Quantity | None, Quantity | None], cloth: Cloth
) -> tuple[Quantity | None, Quantity | None, Quantity | None]:
    """The weft in mm without and with its tails, and in g with them: pick by pick, by a weighed sample, or by both."""
    bead, more = lies
    tex = float(known.weft.tex) if known.weft else None
    laid = weft_length(cloth.width, cloth.height, bead, more) if bead and more else None
    total = _with_tails(laid, given) if laid else None
    grams = weight(total, known.weft.tex) if total and known.weft else None
    if given.sample is None:
        return laid, total, grams
    sample = scaled_from_sample(
        given.sample.grams, (given.sample.width.mm, given.sample.height.mm), (cloth.width, cloth.height)
    )
    grams = _by_both(grams, sample) if grams else sample
    if tex is None:
        return laid, total, grams
    total = grams.scaled(1e6 / tex).explained(ENGLISH.say(Reason.SAMPLE))
    return _without_tails(total, given), total, grams


def _by_area(known: YarnFacts, given: WeftGiven, lies: tuple[Quantity | None, Quantity | None]) -> Quantity | None:
    """The weft of a square metre in g, by the same two ways."""
    bead, more = lies
    found = by_area(bead, more, float(known.weft.tex)) if bead and more and known.weft else None
    if given.sample is None:
        return found
    sample = scaled_from_sample(given.sample.grams, (given.sample.width.mm, given.sample.height.mm), (_METRE, _METRE))
    return replace(_by_both(found, sample), conflicts=found.conflicts) if found else sample


def _with_tails(laid: Quantity, given: WeftGiven) -> Quantity:
    ends = tails_of(given)
    return combine(lambda way, ends: way + ends, ENGLISH.paragraph([laid.reason, ends.reason]), laid, ends)


def _without_tails(total: Quantity, given: WeftGiven) -> Quantity:
    """A weighed sample had its tails too; they take nothing where all of it would be less than them."""
    ends = tails_of(given).value
    return combine(lambda way: max(way - ends, 0.0), total.reason, total)


def _by_both(grams: Quantity, sample: Quantity) -> Quantity:
    """What a sample leaves of the weight computed; it rests on its own assumptions alone, as what is weighed does."""
    weighed = replace(sample, origin=Origin.MEASURED)
    found = met(grams, weighed, partial(_apart, Conflict.SAMPLE_COMPUTED, 1))
    return replace(found, origin=sample.origin)
