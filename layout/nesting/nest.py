"""The one engine that places parts and copies of them on sheets of board or paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.shapes import Placing
from layout.drawing.sheet import Piece
from layout.nesting.bed import Bed, FreeSpace, Item, Sheets, Spot, blocks_of, least_sheets
from layout.nesting.rows import in_columns, in_rows
from layout.nesting.splits import by_splits


@dataclass(frozen=True, slots=True)
class Nest:
    """Where every part lies on each sheet. `least` is the area bound: fewer sheets could not hold the parts.

    `waste` is the share of the sheets, edges and gaps included, that no part's rectangle covers: 0 up to 1.
    """

    sheets: tuple[tuple[Piece, ...], ...]
    least: int
    waste: float


def nest(wanted: Sequence[Item], bed: Bed) -> Nest:
    """Every copy of every part on as few sheets as the best of several placings needs; the same for the same input.

    Rows and columns (first fit by falling height) are tried against a packing library's guillotine bins, and the first
    with the fewest sheets, then with the largest rest in one piece, is taken. Straight cuts free every part of each.
    Raises FieldError, with an empty field, for a part that is larger than the sheet.
    """
    blocks = blocks_of(wanted, bed)
    rows = [way(blocks, bed.room, flat=flat) for way in (in_rows, in_columns) for flat in (True, False)]
    best = min([*rows, *by_splits(blocks, bed.room)], key=lambda sheets: (len(sheets), -_rest(sheets, bed.room)))
    covered = sum(item.copies * wide * high for item in wanted for wide, high in [item.sides])
    area = len(best) * bed.width * bed.height
    laid = tuple(tuple(_piece(spot, wanted, bed) for spot in sorted(spots, key=_reading)) for spots in best)
    return Nest(laid, least_sheets(blocks, bed), 1 - covered / area if area else 0.0)


def _reading(spot: Spot) -> tuple[int, int]:
    return spot.y, spot.x


def _rest(sheets: Sheets, room: FreeSpace) -> int:
    """The largest rectangle below or beside everything on the last sheet."""
    last = sheets[-1] if sheets else []
    right = max((spot.x + spot.way.width for spot in last), default=0)
    foot = max((spot.y + spot.way.height for spot in last), default=0)
    return max(room.width * (room.height - foot), room.height * (room.width - right))


def _piece(spot: Spot, wanted: Sequence[Item], bed: Bed) -> Piece:
    item = wanted[spot.number]
    part, (left, _, right, top) = item.part, item.box
    x, y = bed.edge + spot.x / 1000, bed.height - bed.edge - spot.y / 1000
    if spot.way.turn == 0:
        return Piece(part, Placing(0, x - left, y - top))
    return Piece(part, Placing(90, x + top, y - right))
