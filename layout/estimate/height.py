"""How high is woven: as high as asked for, or as fits, in whole beads. All parts and amounts go by this height."""

from __future__ import annotations

from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason
from layout.values.quantity import Quantity, computed
from layout.yardage.given import WeftGiven

_FINEST = 10**6  # the finest part in which picks, and a height that fits, are said


class Woven(NamedTuple):
    """The height in mm, and of how many whole `rows` of beads it is; None where their height is not known."""

    height: Quantity
    rows: int | None


def height_asked(kit: Kit, weavable: Quantity) -> Fraction:
    """The height in mm that a kit asks for; the greatest of all where it asks for one as high as fits."""
    asked = kit.weaving.height
    return asked.mm if asked else Fraction(weavable.value).limit_denominator(_FINEST)


def bead_of(given: WeftGiven, picks_per_cm: Quantity) -> Fraction:
    """The height in mm of a bead, two picks: the plain fraction that was counted, or the likely one."""
    if given.picks:
        return 2 * given.picks.over.mm / given.picks.number
    if given.beads:
        return given.beads.over.mm / given.beads.number
    return 20 / Fraction(picks_per_cm.value).limit_denominator(_FINEST)


def woven_height(asked: Fraction, given: WeftGiven, picks_per_mm: Quantity | None) -> Woven:
    """As many whole beads as `asked` mm hold; all of it where picks are not known, or not one bead fits.

    Whatever the true bead is, what is left is less than one bead, and less than half of what is asked for.
    """
    if picks_per_mm is None:
        return Woven(computed(float(asked), ENGLISH.say(Reason.HEIGHT)), None)
    bead = bead_of(given, picks_per_mm.scaled(10))
    rows = floor(asked / bead)
    if not rows:
        thinner = (
            (float(asked) / 2, float(asked)) if 2 / picks_per_mm.high <= asked and not picks_per_mm.exact else None
        )
        return Woven(computed(float(asked), ENGLISH.say(Reason.HEIGHT), picks_per_mm, spread=thinner), None)
    height, tallest = float(rows * bead), 2 / picks_per_mm.low
    spread = (min(height, max(float(asked) - tallest, float(asked) / 2)), float(asked))
    said = ENGLISH.say(Reason.WOVEN_ROWS, rows=rows)
    exact = picks_per_mm.exact or spread[0] == spread[1]
    return Woven(computed(height, said, picks_per_mm, spread=None if exact else spread), rows)
