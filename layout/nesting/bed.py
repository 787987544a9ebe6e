"""What is placed and on what: parts and copies, the sheet that takes them, and both in whole micrometres.

Whole numbers make sums of sizes exact, so that a row which just fits does fit and every run gives the same result. All
are rounded up: what is as large as the room fits, and nothing lies more than a micrometre over an edge.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.shapes import Box
from layout.drawing.sheet import Part
from layout.messages.catalogue import Figure, Message
from layout.messages.roles import SheetNeed
from layout.values.errors import FieldError
from layout.values.limits import whole

_MICRO = 1000
_NOISE = 1e-3  # of a micrometre: what sums of floats may leave on a size
_MOST = 1000  # copies of one part


class Item(NamedTuple):
    """`copies` of a part, each turned by one of `turns` (degrees: 0, 90 or both; a part with a grain has only one).

    What takes room is its `trim`: the box that the part is trimmed to, or all that is drawn where that is None.
    """

    part: Part
    copies: int = 1
    turns: tuple[int, ...] = (0, 90)
    trim: Box | None = None

    @property
    def box(self) -> Box:
        """What is placed, in part coordinates."""
        return self.part.box if self.trim is None else self.trim

    @property
    def sides(self) -> tuple[float, float]:
        """From left to right and from bottom to top, in mm."""
        left, bottom, right, top = self.box
        return right - left, top - bottom


class FreeSpace(NamedTuple):
    """What one sheet offers to parts with their gaps, in micrometres."""

    width: int
    height: int


@dataclass(frozen=True, slots=True)
class Bed:
    """A sheet of `width` x `height` mm: parts keep `gap` from each other and `edge` from the sheet's edges."""

    width: float
    height: float
    gap: float
    edge: float

    @property
    def room(self) -> FreeSpace:
        """What is left inside the edges, with one gap more, which the last part of a row does not need."""
        taken = 2 * self.edge - self.gap
        return FreeSpace(_up(self.width - taken), _up(self.height - taken))


class Turn(NamedTuple):
    """One way a block may lie: turned by `turn` degrees it is `width` x `height` micrometres with its gap."""

    turn: int
    width: int
    height: int


class Block(NamedTuple):
    """One copy of the `number`th part that is wanted, in every way it may lie."""

    number: int
    ways: tuple[Turn, ...]


class Spot(NamedTuple):
    """Where a block lies: `x` and `y` in micrometres from the upper left corner of the room, y downward."""

    number: int
    way: Turn
    x: int
    y: int


Sheets = list[list[Spot]]
"""The spots on each sheet."""


def blocks_of(wanted: Sequence[Item], bed: Bed) -> list[Block]:
    """Every copy as a block, in the order wanted.

    Raises FieldError (with an empty field) for a part that no sheet holds, or copies that cannot be meant.
    """
    blocks: list[Block] = []
    for number, item in enumerate(wanted):
        whole(item.copies, "copies", Message(SheetNeed.COPIES, {"part": item.part.title}), "2", most=_MOST)
        ways = tuple(_way(item, turn, bed.gap) for turn in item.turns)
        fitting = tuple(way for way in ways if way.width <= bed.room.width and way.height <= bed.room.height)
        if not fitting:
            raise _too_large(item.part, ways[0], bed)
        blocks += [Block(number, fitting)] * item.copies
    return blocks


def least_sheets(blocks: Sequence[Block], bed: Bed) -> int:
    """The area bound: no placing needs fewer sheets than the parts with their gaps have area."""
    width, height = bed.room
    return math.ceil(sum(block.ways[0].width * block.ways[0].height for block in blocks) / (width * height))


def _way(item: Item, turn: int, gap: float) -> Turn:
    wide, high = item.sides
    sides = _up(wide + gap), _up(high + gap)
    return Turn(turn, *(sides if turn == 0 else sides[::-1]))


def _up(mm: float) -> int:
    return math.ceil(mm * _MICRO - _NOISE)


def _too_large(part: Part, way: Turn, bed: Bed) -> FieldError:
    more = 2 * bed.edge - bed.gap
    width, height = (math.ceil(side / _MICRO + more) for side in (way.width, way.height))
    values = {"width": width, "height": height, "edge": Figure(f"{bed.edge:g}"), "part": part.title}
    got, example = f"{bed.width:g} x {bed.height:g} mm", f"{width} x {height} mm"
    return FieldError("", SheetNeed.NESTED, got, example, **values)
