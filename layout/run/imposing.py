"""The parts of all boxes of a run on as few sheets of one paper as they need: which sheets, and how often each."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain
from typing import NamedTuple

from layout.drawing.shapes import Box, Placing, Point
from layout.drawing.sheet import Part, Piece
from layout.nesting.bed import Item
from layout.nesting.nest import nest
from layout.run.bed import GAP, RunBed
from layout.run.cuts import Cut, cuts_of

MOST_SETS, MOST_PIECES = 12, 170
"""No more boxes, and no more parts, are placed at once: more take long and save next to nothing."""


class RunPart(NamedTuple):
    """A part that lies once in every box of the `kit`th kit of a run, counted from 0.

    It is drawn without its scissors, since cuts take their place; its box holds words beside what is cut out, too.
    """

    part: Part
    kit: int


class Placed(NamedTuple):
    """One sheet that is printed so many `times`: its pieces, the kit of each, and how it is cut."""

    pieces: tuple[Piece, ...]
    kits: tuple[int, ...]
    cuts: tuple[Cut, ...]
    times: int


@dataclass(frozen=True, slots=True)
class Imposed:
    """All sheets of a run with parts placed on them. `least` sheets could not be fewer, by area alone.

    `waste` is the share of the room on all of them that no part covers, from 0 up to 1.
    """

    sheets: tuple[Placed, ...]
    least: int
    waste: float

    @property
    def papers(self) -> int:
        """How many sheets of paper are printed."""
        return sum(sheet.times for sheet in self.sheets)


_Page = tuple[tuple[int, Placing], ...]
"""What lies on a page: which of the parts, and where."""

_Pages = Mapping[_Page, int]
"""Each page that is unlike the others, and how often it is printed."""


def imposed(parts: Sequence[tuple[RunPart, int]], bed: RunBed) -> Imposed:
    """Every part so many times (its copies) on sheets of the bed.

    Parts of the same number of copies are placed together: so many boxes at a time as take the fewest sheets, then the
    fewest different ones. Few boxes in all are also tried all at once. One part to a page would never take fewer.
    FieldError, with an empty field, for a part larger than the bed.
    """
    placer = _Placer([each.part for each, _ in parts], bed)
    groups: dict[int, list[int]] = {}
    for k, (_, copies) in enumerate(parts):
        groups.setdefault(copies, []).append(k)
    ways = [_together([placer.best(group, copies) for copies, group in groups.items()])]
    boxes = {each.kit: copies for each, copies in parts}
    counts = {k: copies for k, (_, copies) in enumerate(parts)}
    if len(groups) > 1 and sum(boxes.values()) <= MOST_SETS and sum(counts.values()) <= MOST_PIECES:
        ways.append(_counted(placer.pages(counts), 1))
    pages = min(ways, key=_cost)
    covered = math.fsum(copies * _area(each.part.trim) for each, copies in parts)
    room = bed.area * sum(pages.values())
    sheets = [_placed(page, times, parts, placer) for page, times in pages.items()]
    in_order = tuple(sorted(sheets, key=lambda each: -each.times))
    return Imposed(in_order, placer.least(counts), 1 - covered / room if room else 0.0)


@dataclass(frozen=True, slots=True)
class _Placer:
    """Places parts, by their number, on sheets of one bed."""

    parts: Sequence[Part]
    bed: RunBed

    def least(self, counts: Mapping[int, int]) -> int:
        """The area bound: so many copies of each, with their gaps, have the area of so many sheets."""
        taken = math.fsum(copies * _area(self.parts[k].box, GAP) for k, copies in counts.items())
        return math.ceil(taken / ((self.bed.width + GAP) * (self.bed.height + GAP)) - 1e-9)

    def best(self, group: Sequence[int], copies: int) -> _Pages:
        """The pages of `copies` of each part of a group, with as many boxes at a time as take the fewest sheets."""
        least = self.least(dict.fromkeys(group, copies))
        kept: dict[int, list[_Page]] = {0: []}
        best: _Pages = {}
        for sets in range(1, min(copies, MOST_SETS, max(1, MOST_PIECES // len(group))) + 1):
            often, rest = divmod(copies, sets)
            for count in (sets, rest):
                if count not in kept:
                    kept[count] = self.pages(dict.fromkeys(group, count))
            found = _together([_counted(kept[sets], often), _counted(kept[rest], 1)])
            best = min(filter(None, (best, found)), key=_cost)
            if sum(best.values()) == least:
                break
        return best

    def pages(self, counts: Mapping[int, int]) -> list[_Page]:
        """The engine's sheets, in the coordinates of the paper."""
        numbers = {id(self.parts[k]): k for k in counts}
        items = [Item(self.parts[k], copies) for k, copies in counts.items()]
        sheets = nest(items, self.bed.for_nesting).sheets
        return [tuple((numbers[id(part)], self._on_paper(placing)) for part, placing in pieces) for pieces in sheets]

    def _on_paper(self, placing: Placing) -> Placing:
        return Placing(placing.degrees, placing.dx + self.bed.left, placing.dy + self.bed.bottom)


def _cost(pages: _Pages) -> tuple[int, int]:
    return sum(pages.values()), len(pages)


def _counted(pages: Iterable[_Page], times: int) -> _Pages:
    return _together([{page: times} for page in pages])


def _together(many: Sequence[_Pages]) -> _Pages:
    found: dict[_Page, int] = {}
    for page, times in chain.from_iterable(each.items() for each in many):
        found[page] = found.get(page, 0) + times
    return {page: times for page, times in found.items() if times}


def _placed(page: _Page, times: int, parts: Sequence[tuple[RunPart, int]], placer: _Placer) -> Placed:
    pieces = tuple(Piece(placer.parts[k], placing) for k, placing in page)
    cuts = cuts_of(list(trims_of(pieces)), placer.bed.sheet, list(boxes_of(pieces)))
    return Placed(pieces, tuple(parts[k][0].kit for k, _ in page), cuts, times)


def boxes_of(pieces: Iterable[Piece]) -> Iterator[Box]:
    """Left, bottom, right and top of each piece as it lies on its sheet."""
    for part, placing in pieces:
        left, bottom, right, top = part.box
        xs, ys = zip(*placing.points((Point(left, bottom), Point(right, top))), strict=True)
        yield min(xs), min(ys), max(xs), max(ys)


def trims_of(pieces: Iterable[Piece]) -> Iterator[Box]:
    """The same of what is left of each once it is cut out."""
    return boxes_of(piece._replace(part=replace(piece.part, box=piece.part.trim)) for piece in pieces)


def _area(box: Box, more: float = 0.0) -> float:
    left, bottom, right, top = box
    return (right - left + more) * (top - bottom + more)
