"""Many sets of parts on as few sheets as they need: so many sets at a time, and each sheet made so many times."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from itertools import chain
from typing import NamedTuple

from layout.drawing.shapes import Placing
from layout.nesting.bed import Bed, Item
from layout.nesting.nest import nest

MOST_SETS, MOST_PIECES = 12, 170
"""No more sets, and no more parts, are placed at once: more take long and save next to nothing."""


class Batch(NamedTuple):
    """An item with the copies that one set takes, and how many sets there are."""

    item: Item
    sets: int

    @property
    def copies(self) -> int:
        """How many there are in all."""
        return self.item.copies * self.sets


Page = tuple[tuple[int, Placing], ...]
"""What lies on a sheet: which of the batches, by its place among them, and where."""

Pages = Mapping[Page, int]
"""Each sheet that is unlike the others, and how often it is made."""


def fewest(batches: Sequence[Batch], bed: Bed, *, at_once: bool, most_sets: int = MOST_SETS) -> Pages:
    """All copies on the fewest sheets; of equal counts on the fewest different ones.

    Batches of the same number of sets are placed together, so many sets at a time (up to `most_sets`) as take the
    fewest. All of them are also tried `at_once`, where that is asked for. FieldError, with an empty field, for a part
    larger than the bed.
    """
    groups: dict[int, list[int]] = {}
    for k, batch in enumerate(batches):
        groups.setdefault(batch.sets, []).append(k)
    pages = _together([_best(batches, group, sets, bed, most_sets) for sets, group in groups.items()])
    if at_once:
        counts = {k: batch.copies for k, batch in enumerate(batches)}
        pages = min((pages, _counted(_pages(batches, counts, bed), 1)), key=_cost)
    return pages


def least_of(batches: Iterable[Batch], bed: Bed) -> int:
    """The area bound: all copies, with their gaps, have the area of so many sheets."""
    sides = ((batch.copies, *batch.item.sides) for batch in batches)
    taken = math.fsum(copies * (wide + bed.gap) * (high + bed.gap) for copies, wide, high in sides)
    more = bed.gap - 2 * bed.edge
    return math.ceil(taken / ((bed.width + more) * (bed.height + more)) - 1e-9)


def _best(batches: Sequence[Batch], group: Sequence[int], sets: int, bed: Bed, most_sets: int) -> Pages:
    """So many sets of each batch of a group, with as many at a time as take the fewest sheets."""
    each = {k: batches[k].item.copies for k in group}
    least = least_of([batches[k] for k in group], bed)
    kept: dict[int, list[Page]] = {0: []}
    best: Pages = {}
    for together in range(1, min(sets, most_sets, max(1, MOST_PIECES // sum(each.values()))) + 1):
        often, rest = divmod(sets, together)
        bounds = [least_of([batches[k]._replace(sets=count) for k in group], bed) for count in (together, rest)]
        if best and often * bounds[0] + bounds[1] > sum(best.values()):
            continue  # it would take more sheets, however well they are filled
        for count in (together, rest):
            if count not in kept:
                kept[count] = _pages(batches, {k: count * copies for k, copies in each.items()}, bed)
        found = _together([_counted(kept[together], often), _counted(kept[rest], 1)])
        best = min(filter(None, (best, found)), key=_cost)
        if sum(best.values()) == least:
            break
    return best


def _pages(batches: Sequence[Batch], counts: Mapping[int, int], bed: Bed) -> list[Page]:
    """The engine's sheets for so many copies of each batch."""
    numbers = {id(batches[k].item.part): k for k in counts}
    sheets = nest([batches[k].item._replace(copies=copies) for k, copies in counts.items()], bed).sheets
    return [tuple((numbers[id(part)], placing) for part, placing in pieces) for pieces in sheets]


def _cost(pages: Pages) -> tuple[int, int]:
    return sum(pages.values()), len(pages)


def _counted(pages: Iterable[Page], times: int) -> Pages:
    return _together([{page: times} for page in pages])


def _together(many: Sequence[Pages]) -> Pages:
    found: dict[Page, int] = {}
    for page, times in chain.from_iterable(each.items() for each in many):
        found[page] = found.get(page, 0) + times
    return {page: times for page, times in found.items() if times}
