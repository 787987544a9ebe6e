"""Wrap readings and what they say together: the sett lies where all of them are true. Never an average.

A reading of n whole pairs over w says n/w <= sett < (n+1)/w (pairs side by side per unit are ends per unit).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor
from typing import NamedTuple

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import SettNeed, Unit, WrapWords
from layout.values.errors import FieldError, shown
from layout.values.units import Length, Sett, say_length, say_number, say_sett
from layout.values.uses import Use

PER = {True: Fraction(127, 5), False: Fraction(10)}
"""Over how many mm a sett is counted where it is said, by whether inches are used."""

_LOOSEST = Message(SettNeed.LOOSEST)
_TAKE_LOOSEST = Use("sett.loosest", value=True)


@dataclass(frozen=True, slots=True)
class WrapReading:
    """One wrap count: `pairs` whole warp-and-weft pairs that fit in a window `over` wide.

    `measured` says that so many pairs were laid first and then measured; the sett is bounded in the same way.
    """

    pairs: int
    over: Length
    measured: bool

    @property
    def low(self) -> Fraction:
        """The smallest sett this reading allows, ends per mm."""
        return self.pairs / self.over.mm

    @property
    def high(self) -> Fraction:
        """The sett this reading stays below, ends per mm."""
        return (self.pairs + 1) / self.over.mm

    @property
    def words(self) -> Message:
        """The reading in words."""
        role = WrapWords.MEASURED if self.measured else WrapWords.WINDOW
        return Message(role, {"pairs": self.pairs, "over": say_length(self.over)})


class Range(NamedTuple):
    """The setts that readings allow, `low` <= sett < `high` in ends per mm, and sentences that ask for care."""

    low: Fraction
    high: Fraction
    warnings: tuple[str, ...] = ()


def measured_range(readings: Sequence[WrapReading], *, loosest: bool) -> Range:
    """What `readings` say together; with `loosest` the smallest n/w stands alone.

    Raises FieldError on `sett.readings` where they contradict each other, naming the odd one out.
    """
    if not readings:
        raise FieldError("sett.readings", SettNeed.A_READING, shown(None), '[{pairs = 13, window = "5 cm"}]')
    together = _common(readings)
    if not loosest:
        if together.low >= together.high:
            raise _contradiction(readings)
        return together
    stands = min(readings, key=lambda reading: (reading.low, reading.high))
    alone = Range(stands.low, stands.high)
    return alone if alone == together else alone._replace(warnings=(_loosest_words(readings, stands),))


def _common(readings: Sequence[WrapReading]) -> Range:
    return Range(max(reading.low for reading in readings), min(reading.high for reading in readings))


def _agree(readings: Sequence[WrapReading]) -> bool:
    low, high, _ = _common(readings)
    return low < high


def _loosest_words(readings: Sequence[WrapReading], stands: WrapReading) -> str:
    if not _agree(readings):
        return ENGLISH.say(WrapWords.LOOSEST_DESPITE, reading=stands.words)
    return ENGLISH.say(WrapWords.LOOSEST, reading=stands.words, least=_say(*_lowest(readings)))


def _contradiction(readings: Sequence[WrapReading]) -> FieldError:
    """The refusal: the odd one out (else the two that disagree most), by how much, and what that implies."""
    odd = _odd_one(readings)
    if odd is None:
        tight = max(range(len(readings)), key=lambda i: readings[i].low)
        loose = min(range(len(readings)), key=lambda i: readings[i].high)
        return _two_sides(readings, tight, loose)
    return _one_side(readings, odd)


def _odd_one(readings: Sequence[WrapReading]) -> int | None:
    """The reading without which all others agree, if there is just one such."""
    if len(readings) < 3:
        return None
    alone = [i for i in range(len(readings)) if _agree([*readings[:i], *readings[i + 1 :]])]
    return alone[0] if len(alone) == 1 else None


def _one_side(readings: Sequence[WrapReading], odd: int) -> FieldError:
    reading, others = readings[odd], [*readings[:odd], *readings[odd + 1 :]]
    rest = _common(others)
    squeezed = reading.low >= rest.high
    own = (reading.low, reading) if squeezed else (reading.high, reading)
    gap = _gap(_highest(others), own) if squeezed else _gap(own, _lowest(others))
    values = {"number": odd + 1, "others": _span(_lowest(others), _highest(others)), "gap": gap}
    role = SettNeed.ODD_SQUEEZED if squeezed else SettNeed.ODD_LOOSE
    error = FieldError("sett.readings", role, _said(reading), _LOOSEST, **values, count=_off_by(reading, rest))
    return error.offering(_without(odd), _TAKE_LOOSEST)


def _two_sides(readings: Sequence[WrapReading], tight: int, loose: int) -> FieldError:
    high, low = readings[tight], readings[loose]
    off = min(_off_by(high, Range(low.low, low.high)), _off_by(low, Range(high.low, high.high)))
    values = {"tight": tight + 1, "loose": loose + 1, "other": _said(low), "count": off}
    gap = _gap((low.high, low), (high.low, high))
    error = FieldError("sett.readings", SettNeed.TWO_APART, _said(high), _LOOSEST, **values, gap=gap)
    return error.offering(_TAKE_LOOSEST, _without(tight), _without(loose))


def _without(reading: int) -> Use:
    return Use(f"sett.readings[{reading + 1}]", None)


Bound = tuple[Fraction, WrapReading]
"""A sett that a reading bounds, in ends per mm, and that reading: in its units the bound is said."""


def _lowest(readings: Sequence[WrapReading]) -> Bound:
    return max(((reading.low, reading) for reading in readings), key=lambda bound: bound[0])


def _highest(readings: Sequence[WrapReading]) -> Bound:
    return min(((reading.high, reading) for reading in readings), key=lambda bound: bound[0])


def _said(reading: WrapReading) -> Message:
    span = _span((reading.low, reading), (reading.high, reading))
    return Message(WrapWords.SAID, {"reading": reading.words, "span": span})


def say_in(per_mm: Fraction, *, imperial: bool) -> str:
    """A sett in ends per mm, said in the unit of one system: "2.5 ends per cm" or "6.35 epi"."""
    return say_sett(Sett(per_mm, "in" if imperial else "cm"))


def _say(sett: Fraction, like: WrapReading) -> str:
    return say_in(sett, imperial=like.over.imperial)


def _span(low: Bound, high: Bound) -> Message:
    """From one bound to the other; the unit stands once where both have the same."""
    inches = low[1].over.imperial
    if inches == high[1].over.imperial:
        values = {"low": say_number(low[0] * PER[inches]), "high": say_number(high[0] * PER[inches])}
        return Message(WrapWords.SPAN_INCH if inches else WrapWords.SPAN_CM, values)
    return Message(WrapWords.SPAN_OF_BOTH, {"low": _say(*low), "high": _say(*high)})


def _gap(below: Bound, above: Bound) -> Message:
    """How far apart two bounds lie: in their unit and in per cent, or in per cent alone where the units differ."""
    if below[0] == above[0]:
        return Message(WrapWords.TOUCH)
    share = Message(Unit.PER_CENT, {"number": say_number((above[0] - below[0]) / below[0] * 100, 1)})
    if below[1].over.imperial != above[1].over.imperial:
        return Message(WrapWords.GAP_SHARE, {"share": share})
    return Message(WrapWords.GAP, {"gap": _say(above[0] - below[0], below[1]), "share": share})


def _off_by(reading: WrapReading, others: Range) -> int:
    """By how many pairs the count would have to change to agree with `others`."""
    if reading.low >= others.high:
        return reading.pairs - (ceil(others.high * reading.over.mm) - 1)
    return floor(others.low * reading.over.mm) - reading.pairs
