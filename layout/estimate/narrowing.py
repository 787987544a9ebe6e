"""Which measurement that a kit does not have yet would narrow its weft most.

Each is tried as it would likely come out: the weft is computed once more with it, and the narrowest wins.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from layout.estimate.weft_need import WeftNeed
from layout.messages.english import ENGLISH
from layout.messages.roles import Narrow
from layout.values.quantity import Quantity
from layout.values.units import Length
from layout.yardage.amounts import Narrowing
from layout.yardage.given import AmountsGiven, CountedRows, DrawnPick
from layout.yarns.label import Wrap
from layout.yarns.thickness import Wrapped

_OVER = Length(Fraction(50), "mm")
_FINE = 10**3
_ENOUGH = 0.1
"""A weft between 95 and 105 m is bought the same way: below this share nothing more is asked for. Our choice."""

Trial = tuple[str, Narrow, AmountsGiven]


class Soft(NamedTuple):
    """How thick in mm warp and weft are where nothing presses them; None where that is not known."""

    warp: Quantity | None
    weft: Quantity | None


def narrows_most(
    given: AmountsGiven, weft: WeftNeed, soft: Soft, weft_of: Callable[[AmountsGiven], WeftNeed]
) -> Narrowing | None:
    """The measurement after which the range of the weft would be smallest; None where it is narrow or unknown.

    `weft_of` computes the weft of a kit that says this of its yarns.
    """
    total = weft.total_m
    if total is None or total.conflicts or _width(total) <= _ENOUGH * total.value:
        return None
    trials = (*_cloth(given, weft), *_wraps(given, soft))
    after = [(_width(found), key, role) for key, role, more in trials if (found := weft_of(more).total_m)]
    width, key, role = min(after, key=lambda each: each[0], default=(_width(total), "", Narrow.SAMPLE))
    if width >= (1 - _ENOUGH) * _width(total):
        return Narrowing("weft.sample", ENGLISH.say(Narrow.SAMPLE)) if given.weft.sample is None else None
    return Narrowing(key, ENGLISH.say(role))


def _width(figure: Quantity) -> float:
    return figure.high - figure.low


def _cloth(given: AmountsGiven, weft: WeftNeed) -> Iterator[Trial]:
    """Each measurement of a sample that is lacking, as it would likely come out, the easiest first."""
    if given.weft.picks is None and given.weft.beads is None and weft.picks:
        beads = CountedRows(max(1, round(weft.picks.value / 2 * float(_OVER.mm))), _OVER)
        yield "weft.beads", Narrow.BEADS, replace(given, weft=replace(given.weft, beads=beads))
    if given.weft.pick is None and weft.take_up:
        straight = Length(Fraction(100 * (1 + weft.take_up.value)).limit_denominator(_FINE), "mm")
        pick = DrawnPick(straight, Length(Fraction(100), "mm"))
        yield "weft.pick", Narrow.PICK, replace(given, weft=replace(given.weft, pick=pick))
    if given.draw_in is None:
        yield "weaving.draw_in", Narrow.DRAW_IN, replace(given, draw_in=Fraction(0))


def _wraps(given: AmountsGiven, soft: Soft) -> Iterator[Trial]:
    """The wraps that are lacking, as they would likely come out."""
    if soft.weft and given.weft.wrap is None:
        yield "weft.wrap", Narrow.WRAP_WEFT, replace(given, weft=replace(given.weft, wrap=_wrap(soft.weft)))
    if soft.warp and given.warp.wrap is None:
        yield "warp.wrap", Narrow.WRAP_WARP, replace(given, warp=replace(given.warp, wrap=_wrap(soft.warp)))


def _wrap(thick: Quantity) -> Wrap:
    return Wrap(max(2, round(float(_OVER.mm) / thick.value)), _OVER, str(Wrapped.PUSHED))
