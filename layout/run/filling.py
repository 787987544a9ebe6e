"""Boxes taken one after the other onto at most so many sheets of one paper."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.nesting.batches import MOST_PIECES, Batch, least_of
from layout.nesting.bed import Item
from layout.nesting.nest import nest
from layout.run.bed import RunBed
from layout.run.imposing import Imposed, RunPart, imposed


class Boxful(NamedTuple):
    """What is printed for one box: parts that may lie beside those of others, and how many pages are its own."""

    parts: tuple[RunPart, ...]
    pages: int


class Filling:
    """A stack of at most `most` sheets. Boxes come in their order, and none is passed over for a later one.

    So many parts at once as one placing may hold are placed together; the next ones begin on a sheet of their own.
    """

    def __init__(self, bed: RunBed, most: int) -> None:
        self._bed, self._most = bed, most
        self._pages = self._closed = 0
        self._placed = self._fresh = 0  # sheets of the open parts as they were placed, and the most that more may take
        self._open: list[RunPart] = []

    @property
    def sheets(self) -> int:
        """How many sheets it takes, with every page."""
        return self._pages + self._closed + len(_placed(self._open, self._bed))

    def takes(self, box: Boxful) -> bool:
        """Whether there was room for one box more, which is on it then."""
        closing = fills(self._open, box.parts)
        closed = self._closed + (len(_placed(self._open, self._bed)) if closing else 0)
        beside = [] if closing else self._open
        placed, fresh = (0, 0) if closing else (self._placed, self._fresh)
        fresh += len(_placed(box.parts, self._bed))
        pages = self._pages + box.pages
        if pages + closed + placed + fresh > self._most:
            if pages + closed + _least([*beside, *box.parts], self._bed) > self._most:
                return False
            placed, fresh = len(_placed([*beside, *box.parts], self._bed)), 0
            if pages + closed + placed > self._most:
                return False
        self._pages, self._closed, self._placed, self._fresh = pages, closed, placed, fresh
        self._open = [*beside, *box.parts]
        return True


def fills(parts: Sequence[RunPart], more: Sequence[RunPart]) -> bool:
    """Whether these parts are as many as are placed at once, so that `more` go on sheets of their own."""
    return bool(parts) and len(parts) + len(more) > MOST_PIECES


def filled(boxes: Sequence[Boxful], bed: RunBed) -> tuple[Imposed, ...]:
    """The parts of boxes on sheets, so many at once as a `Filling` takes them."""
    groups: list[list[RunPart]] = [[]]
    for box in boxes:
        if fills(groups[-1], box.parts):
            groups.append([])
        groups[-1] += box.parts
    return tuple(imposed([(each, 1) for each in parts], bed) for parts in groups if parts)


def _placed(parts: Sequence[RunPart], bed: RunBed) -> Sequence[object]:
    return nest([Item(each.part) for each in parts], bed.for_nesting).sheets if parts else ()


def _least(parts: Sequence[RunPart], bed: RunBed) -> int:
    """The area bound."""
    return least_of([Batch(Item(each.part), 1) for each in parts], bed.for_nesting)
