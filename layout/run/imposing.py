"""The parts of all boxes of a run on as few sheets of one paper as they need: which sheets, and how often each."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from layout.drawing.boxes import placed
from layout.drawing.shapes import Box, Placing
from layout.drawing.sheet import Part, Piece
from layout.nesting.batches import MOST_PIECES, MOST_SETS, Batch, Page, fewest, least_of
from layout.nesting.bed import Item
from layout.run.bed import RunBed
from layout.run.cuts import Cut, cuts_of


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


def imposed(parts: Sequence[tuple[RunPart, int]], bed: RunBed) -> Imposed:
    """Every part so many times (its copies) on sheets of the bed.

    Parts of the same number of copies are placed together: so many boxes at a time as take the fewest sheets, then the
    fewest different ones. Few boxes in all are also tried all at once. One part to a page would never take fewer.
    FieldError, with an empty field, for a part larger than the bed.
    """
    batches = [Batch(Item(each.part), copies) for each, copies in parts]
    boxes = {each.kit: copies for each, copies in parts}
    few = sum(boxes.values()) <= MOST_SETS and sum(batch.copies for batch in batches) <= MOST_PIECES
    several = len({batch.sets for batch in batches}) > 1
    pages = fewest(batches, bed.for_nesting, at_once=several and few)
    covered = math.fsum(copies * _area(each.part.trim) for each, copies in parts)
    room = bed.area * sum(pages.values())
    sheets = [_placed(page, times, [each for each, _ in parts], bed) for page, times in pages.items()]
    in_order = tuple(sorted(sheets, key=lambda each: -each.times))
    return Imposed(in_order, least_of(batches, bed.for_nesting), 1 - covered / room if room else 0.0)


def _placed(page: Page, times: int, parts: Sequence[RunPart], bed: RunBed) -> Placed:
    """A page of the engine in the coordinates of the paper, and how it is cut."""
    pieces = tuple(Piece(parts[k].part, _on_paper(placing, bed)) for k, placing in page)
    cuts = cuts_of(list(trims_of(pieces)), bed.sheet, list(boxes_of(pieces)))
    return Placed(pieces, tuple(parts[k].kit for k, _ in page), cuts, times)


def _on_paper(placing: Placing, bed: RunBed) -> Placing:
    return Placing(placing.degrees, placing.dx + bed.left, placing.dy + bed.bottom)


def boxes_of(pieces: Iterable[Piece]) -> Iterator[Box]:
    """Left, bottom, right and top of each piece as it lies on its sheet."""
    for part, placing in pieces:
        yield placed(part.box, placing)


def trims_of(pieces: Iterable[Piece]) -> Iterator[Box]:
    """The same of what is left of each once it is cut out."""
    return boxes_of(piece._replace(part=replace(piece.part, box=piece.part.trim)) for piece in pieces)


def _area(box: Box) -> float:
    left, bottom, right, top = box
    return (right - left) * (top - bottom)
