"""Blocks by straight cuts right through what is left of a sheet, with the free rectangles of a packing library.

The library (rectpack) is asked for its guillotine bins alone: where a block fits best and how the rest is split in
two. Which sheet and which way a block lies is decided here, since the library turns all blocks or none.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from layout.nesting.bed import Block, FreeSpace, Sheets, Spot, Turn

_KINDS = ("GuillotineBssfSas", "GuillotineBssfMaxas", "GuillotineBafMinas", "GuillotineBlsfLas")
"""Pick a free rectangle by the shorter side, longer side or area left over; split it by its axis or by area."""


def by_splits(blocks: Sequence[Block], room: FreeSpace) -> list[Sheets]:
    """One placing for each kind of bin and each order of the blocks: by area, by long side, by short side."""
    from rectpack import guillotine  # not needed before something is placed

    kinds = [getattr(guillotine, kind) for kind in _KINDS]
    orders = [sorted(blocks, key=key, reverse=True) for key in (_area, _long_side, _short_side)]
    return [_placed(order, room, kind) for kind in kinds for order in orders]


def _area(block: Block) -> int:
    return block.ways[0].width * block.ways[0].height


def _long_side(block: Block) -> tuple[int, int]:
    return max(block.ways[0][1:]), min(block.ways[0][1:])


def _short_side(block: Block) -> tuple[int, int]:
    return min(block.ways[0][1:]), max(block.ways[0][1:])


def _placed(blocks: Sequence[Block], room: FreeSpace, kind: Any) -> Sheets:
    bins: list[Any] = []
    sheets: Sheets = []
    for block in blocks:
        place = next((place for place in enumerate(bins) if _fitting(place[1], block)), None)
        if place is None:
            # Merged rests could no longer be freed by straight cuts.
            place = len(bins), kind(*room, rot=False, merge=False)
            bins.append(place[1])
            sheets.append([])
        way = min(_fitting(place[1], block))[1]
        found = place[1].add_rect(way.width, way.height)
        sheets[place[0]].append(Spot(block.number, way, found.x, found.y))
    return sheets


def _fitting(one: Any, block: Block) -> list[tuple[int, Turn]]:
    """How well each way that finds room would fit, less being better."""
    fits = ((one.fitness(way.width, way.height), way) for way in block.ways)
    return [(fit, way) for fit, way in fits if fit is not None]
