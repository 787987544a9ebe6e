"""Blocks in rows, the simplest way to fill a sheet: one straight cut across it frees each row."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from layout.nesting.bed import Block, FreeSpace, Sheets, Spot, Turn


def in_rows(blocks: Sequence[Block], room: FreeSpace, *, flat: bool) -> Sheets:
    """Every block in the first row that takes it, the highest first; `flat` ones lie on their long side if they may.

    First fit by falling height: a row is as high as its first block, and a new one is opened only if no row of any
    sheet has room.
    """
    sheets: list[_Sheet] = []
    preferred = [Block(number, tuple(sorted(ways, key=lambda way: _height(way, flat)))) for number, ways in blocks]
    for block in sorted(preferred, key=lambda block: (-block.ways[0].height, -block.ways[0].width)):
        if any(sheet.join(block) for sheet in sheets) or any(sheet.open(block) for sheet in sheets):
            continue
        sheets.append(_Sheet(room))
        sheets[-1].open(block)
    return [sheet.spots for sheet in sheets]


def in_columns(blocks: Sequence[Block], room: FreeSpace, *, flat: bool) -> Sheets:
    """The same with rows that run up the sheet."""
    turned = [Block(number, tuple(map(_swapped, ways))) for number, ways in blocks]
    sheets = in_rows(turned, FreeSpace(room.height, room.width), flat=not flat)
    return [[Spot(spot.number, _swapped(spot.way), spot.y, spot.x) for spot in spots] for spots in sheets]


def _height(way: Turn, flat: bool) -> int:
    return way.height if flat else -way.height


def _swapped(way: Turn) -> Turn:
    return Turn(way.turn, way.height, way.width)


@dataclass(slots=True)
class _Row:
    y: int
    height: int
    used: int = 0


@dataclass(slots=True)
class _Sheet:
    """One sheet being filled from the top."""

    room: FreeSpace
    rows: list[_Row] = field(default_factory=list)
    spots: list[Spot] = field(default_factory=list)

    def join(self, block: Block) -> bool:
        """Whether a row that is there took the block."""
        return any(self._put(row, block, way) for row in self.rows for way in block.ways)

    def open(self, block: Block) -> bool:
        """Whether a new row under the others took it."""
        used = self.rows[-1].y + self.rows[-1].height if self.rows else 0
        for way in block.ways:
            row = _Row(used, way.height)
            if used + way.height <= self.room.height and self._put(row, block, way):
                self.rows.append(row)
                return True
        return False

    def _put(self, row: _Row, block: Block, way: Turn) -> bool:
        if way.height > row.height or row.used + way.width > self.room.width:
            return False
        self.spots.append(Spot(block.number, way, row.used, row.y))
        row.used += way.width
        return True
