"""Several whole parts that share sheets of paper: the engine that places parts on board places them here too."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.shapes import Box, Placing
from layout.drawing.sheet import Part, Piece
from layout.kit.kit import Paper
from layout.messages.english import ENGLISH
from layout.messages.roles import SheetNeed
from layout.nesting.bed import Bed, Item
from layout.nesting.nest import nest
from layout.paper.area import Area
from layout.paper.choice import Furnish, Laying
from layout.values.errors import FieldError

GAP = 4.0
"""Between parts that share a sheet, in mm."""


class Free(NamedTuple):
    """A free rectangle of a sheet, in mm."""

    left: float
    bottom: float
    right: float
    top: float

    @property
    def size(self) -> tuple[float, float]:
        """Width and height."""
        return self.right - self.left, self.top - self.bottom


def free_rectangle(furnish: Furnish, part: Part) -> Free:
    """The largest rectangle that head and foot leave of a sheet with `part`'s head."""
    area = furnish(part)
    return max(_rectangles(area), key=lambda free: free.size[0] * free.size[1])


def share(parts: Sequence[Part], paper: Paper, furnish: Furnish) -> Laying:
    """`parts`, none of them turned, on as few sheets as they need; every sheet has the first one's head.

    Raises FieldError on paper.size where one of them finds no room on a sheet of its own.
    """
    free = free_rectangle(furnish, parts[0])
    try:
        laid = nest([Item(part, turns=(0,)) for part in parts], Bed(*free.size, gap=GAP, edge=0))
    except FieldError as error:
        size = {"width": f"{free.size[0]:.0f}", "height": f"{free.size[1]:.0f}"}
        room = ENGLISH.say(SheetNeed.FREE, **size, sheet=f"{paper.width:.0f} x {paper.height:.0f} mm")
        raise FieldError("paper.size", error.needed, room, 'size = "a3"') from None
    sheets = tuple(tuple(_moved(piece, free) for piece in pieces) for pieces in laid.sheets)
    return Laying("shared", parts[0], sheets, ())


def _moved(piece: Piece, free: Free) -> Piece:
    placing = piece.placing
    return Piece(piece.part, Placing(placing.degrees, placing.dx + free.left, placing.dy + free.bottom))


def _rectangles(area: Area) -> list[Free]:
    """Every rectangle between the sides of what is taken and of the area that holds nothing taken."""
    lefts = sorted({area.left, *(box[2] for box in area.taken)})
    rights = sorted({area.right, *(box[0] for box in area.taken)})
    bottoms = sorted({area.bottom, *(box[3] for box in area.taken)})
    tops = sorted({area.top, *(box[1] for box in area.taken)})
    found = [
        Free(left, bottom, right, top)
        for left in lefts
        for right in rights
        for bottom in bottoms
        for top in tops
        if left < right and bottom < top
    ]
    return [free for free in found if not any(_meet(free, box) for box in area.taken)]


def _meet(free: Box, other: Box) -> bool:
    return free[0] < other[2] and other[0] < free[2] and free[1] < other[3] and other[1] < free[3]
