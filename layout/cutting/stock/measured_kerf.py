"""The kerf from a trial cut: a hole comes out a kerf larger than it was drawn, the part from it a kerf smaller.

So kerf = (hole - part) / 2, whatever the size that was drawn. A trial is cut along its lines as they are drawn.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Caliper
from layout.values.errors import FieldError, shown
from layout.values.limits import plain
from layout.values.units import mm_in, read_length

LARGEST = Fraction(5)
"""No cutter's kerf is wider, in mm."""

_SMALLEST, _FINEST = Fraction(5), Fraction(1, 20)
"""No hole of a trial is smaller, and with so small a kerf its size is in cm. In mm; kerfs from 0.08 mm (tables of
cutting services).
"""

_READING = re.compile(r"([0-9]{1,4}(?:[.,]([0-9]{1,4}))?)\s*(mm|in|\")?", re.ASCII)


class CaliperReading(NamedTuple):
    """What a caliper shows: a size in mm, and how far off it may be at most."""

    mm: Fraction
    within: Fraction


@dataclass(frozen=True, slots=True)
class MeasuredKerf:
    """The full width of the cut in mm: the mean of `count` measurements that lie between `low` and `high`.

    `reading` is by how much it may be off through the readings alone.
    """

    mm: Fraction
    low: Fraction
    high: Fraction
    reading: Fraction
    count: int

    @property
    def uncertainty(self) -> Fraction:
        """By how much it may be off: through the readings, or by half of the spread where that is more."""
        return max(self.reading, (self.high - self.low) / 2)


def read_caliper(text: object, field: str, within: Fraction | None = None, example: str = "20.14") -> CaliperReading:
    """A reading such as "20.14", "20,14 mm" or "0.793 in"; mm where no unit is said.

    It may be off by `within` mm, or else by half of its last digit. Raises FieldError naming `field`.
    """
    match = _READING.fullmatch(text.strip()) if isinstance(text, str) else None
    if match is None:
        raise FieldError(field, Caliper.SIZE, shown(text), f"{field} {example}")
    number, decimals, unit = match.groups()
    try:
        length = read_length(f"{number} {unit or 'mm'}")
    except FieldError as error:
        raise error.at(field) from None
    return CaliperReading(length.mm, within if within is not None else _half_digit(decimals, length.unit))


def _half_digit(decimals: str | None, unit: str) -> Fraction:
    return mm_in(unit) * Fraction("0.5") * Fraction("0.1") ** len(decimals or "")


def kerf_of(
    holes: Sequence[CaliperReading], parts: Sequence[CaliperReading], names: tuple[str, str], *, stated: bool = False
) -> MeasuredKerf:
    """The kerf from holes and the parts that came out of them, in the same order.

    `names` are what refusals call a hole and a part; `stated` says that --within says how far off a reading may be.
    Raises FieldError for a part that is not smaller than its hole, a kerf wider than any cutter's, and readings too
    coarse to tell a kerf at all.
    """
    hole, part = names
    example = f"{hole} 20.14 {part} 19.76"
    if len(holes) != len(parts) or not holes:
        got = ENGLISH.say(Caliper.PAIRS, parts=len(parts), holes=len(holes))
        raise FieldError(part, Caliper.IN_PAIRS, got, example, part=part, hole=hole)
    kerfs = [(one.mm - other.mm) / 2 for one, other in zip(holes, parts, strict=True)]
    for one, other, kerf in zip(holes, parts, kerfs, strict=True):
        got = ENGLISH.say(Caliper.HOLE_AND_PART, hole=plain(one.mm), part=plain(other.mm))
        if kerf <= 0:
            raise FieldError(hole, Caliper.LARGER_HOLE, got, example)
        if one.mm < _SMALLEST and kerf < _FINEST:
            tenfold = f"{hole} {plain(10 * one.mm)} {part} {plain(10 * other.mm)}"
            raise FieldError(hole, Caliper.IN_MM, got, tenfold, smallest=plain(_SMALLEST))
        if kerf > LARGEST:
            raise FieldError(hole, Caliper.KERF, got, example, most=plain(LARGEST))
    reading = max((one.within + other.within) / 2 for one, other in zip(holes, parts, strict=True))
    mean = sum(kerfs, Fraction()) / len(kerfs)
    if reading >= mean:
        got = ENGLISH.say(Caliper.OPEN_BY, open=plain(reading))
        finer = f"{example} --within 0.02" if stated else example
        raise FieldError(hole, Caliper.FINER, got, finer, kerf=plain(mean))
    return MeasuredKerf(mean, min(kerfs), max(kerfs), reading, len(kerfs))


def ease_of(slot: Fraction, drawn: Fraction, kerf: Fraction) -> Fraction:
    """The ease in mm that the slot engraved `slot` really had: it was drawn for the kerf `drawn` and cut with `kerf`.

    Raises FieldError where the slot was not wider than the yarn at all.
    """
    ease = slot + kerf - drawn
    if ease < 0:
        got = ENGLISH.say(Caliper.SLOT, slot=plain(slot), narrower=plain(drawn - kerf))
        works = max(ceil(10 * (drawn - kerf)), 3)
        raise FieldError("--slot", Caliper.WIDER_SLOT, got, f"--slot {works / 10:.2f}")
    return ease
