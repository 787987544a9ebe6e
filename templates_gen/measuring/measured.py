"""What was measured on one sheet, and on parts that lie on several."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot
from typing import NamedTuple

from layout.drawing.correction import Scale
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.known_sheets import KnownSheet
from templates_gen.measuring.scales import Factor, Scales
from templates_gen.scan.seen import Seen, SeenLine

UNEVEN = 0.02
"""In mm: a sheet whose places are further off than that, as no scale explains, is not even."""

ENOUGH = 0.8
"""Of the lines of a row of marks so many must be found, else nothing is said of it."""


class SeenMark(NamedTuple):
    """How far a mark is off its place along its row, once the sheet's own scale is taken out, and how sure that is.

    In mm; positive where the places grow. None where the mark was not found. `beside` is how sure it is beside its
    neighbours, which are off together with it by what the targets are off.
    """

    mark: Mark
    off: float | None
    within: float | None
    beside: float = 0.0


class Gap(NamedTuple):
    """From one mark to its neighbour: how much too wide that is in mm, and how sure."""

    first: Mark
    second: Mark
    off: float
    within: float


class Length(NamedTuple):
    """How long a `nominal` length comes out, in mm, and how sure that is; it may have the scanner's error in it."""

    nominal: float
    mm: float
    within: float
    sure: bool

    @property
    def low(self) -> float:
        """The least that it may be at 95 %."""
        return self.mm - self.within

    @property
    def high(self) -> float:
        """The most."""
        return self.mm + self.within


@dataclass(frozen=True)
class Measured:
    """A row of marks as it was seen, under the `scale` in its direction."""

    group: Group
    marks: tuple[SeenMark, ...]
    scale: Factor | None

    @property
    def found(self) -> tuple[tuple[Mark, float, float], ...]:
        """The marks that were found, in order: how far off each is, and how sure."""
        found = ((each.mark, each.off, each.within) for each in self.marks)
        return tuple((mark, off, within) for mark, off, within in found if off is not None and within is not None)

    @property
    def enough(self) -> bool:
        """Whether so many marks were found that something can be said of them."""
        return len(self.found) > 1 and len(self.found) >= ENOUGH * len(self.marks)

    @property
    def length(self) -> Length | None:
        """From the first mark that was found to the last; None where the scale is not known."""
        if self.scale is None:
            return None
        (first, off_first, one), *_, (last, off_last, other) = self.found
        nominal = last.at - first.at
        within = hypot(nominal * self.scale.within, one, other)
        return Length(nominal, nominal * self.scale.value + off_last - off_first, within, self.scale.sure)

    @property
    def worst(self) -> tuple[Mark, float, float]:
        """The mark that is furthest off its place."""
        return max(self.found, key=lambda each: abs(each[1]))

    @property
    def gaps(self) -> tuple[Gap, ...]:
        """Between neighbours that were both found."""
        return tuple(self._gaps())

    def _gaps(self) -> Iterator[Gap]:
        for one, other in pairwise(self.marks):
            if one.off is not None and other.off is not None:
                yield Gap(one.mark, other.mark, other.off - one.off, hypot(one.beside, other.beside))

    @property
    def worst_gap(self) -> Gap:
        """The one that is furthest from what it should be."""
        return max(self.gaps, key=lambda gap: abs(gap.off))


@dataclass(frozen=True)
class MeasuredSheet:
    """One sheet on one page of a scan. `sheet` is None where no kit was given, or none that it is of."""

    scan: str
    page: int
    seen: Seen
    scales: Scales
    sheet: KnownSheet | None = None
    groups: tuple[Measured, ...] = ()
    remarks: tuple[str, ...] = ()

    @property
    def even(self) -> bool:
        """Whether what no scale explains is too little to mind."""
        return self.seen.uneven <= UNEVEN

    @property
    def across(self) -> Length | None:
        """What comes out of the distance of the targets across the sheet."""
        return _length(self.seen.label.rectangle[0], self.scales.x)

    @property
    def up(self) -> Length | None:
        """The same up the sheet."""
        return _length(self.seen.label.rectangle[1], self.scales.y)

    @property
    def scale(self) -> Scale | None:
        """What comes out of one millimetre; None where that is not known across and up."""
        x, y = self.scales.x, self.scales.y
        return Scale(x.value, y.value, self.scales.skew.value) if x and y else None

    @property
    def within(self) -> Scale:
        """The 95 % of it; 0 where it is not known."""
        x, y = self.scales.x, self.scales.y
        return Scale(x.within if x else 0.0, y.within if y else 0.0, self.scales.skew.within)


def _length(nominal: float, scale: Factor | None) -> Length | None:
    if scale is None:
        return None
    return Length(nominal, nominal * scale.value, nominal * scale.within, scale.sure)


def measured_groups(groups: Sequence[Group], lines: Sequence[SeenLine], scales: Scales) -> tuple[Measured, ...]:
    """Each row of marks with its lines as they were seen; `lines` are those of all rows, in order."""
    left = iter(lines)
    return tuple(
        Measured(group, tuple(_mark(mark, [next(left) for _ in mark.lines]) for mark in group.marks),
                 scales.along(group.along))
        for group in groups
    )  # fmt: skip


def _mark(mark: Mark, lines: Sequence[SeenLine]) -> SeenMark:
    """The mean of its lines; a mark that lacks one of them was not found."""
    offs = [line.off for line in lines if line.off is not None]
    withins = [line.within for line in lines if line.within is not None]
    if len(offs) < len(mark.lines) or len(withins) < len(mark.lines):
        return SeenMark(mark, None, None)
    beside = hypot(*withins) / len(withins)
    return SeenMark(mark, sum(offs) / len(offs), hypot(beside, max(line.placed for line in lines)), beside)
