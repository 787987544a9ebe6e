"""Signs along the weaving edge of a strip, each between two marks: arrows to the weaving, and scissors."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from layout.drawing.shapes import Point, Shape
from layout.drawing.signs import scissors, small_arrow

_TIP, _ARROW_GAP = 0.8, 4.0  # an arrow's tip lies so far inside; the least gap between marks for it
_ARROW_HALF, _SCISSORS_HALF = 1.6, 3.1  # half of what they take along the edge, with white
_SCISSORS_GAP, _SCISSORS_BACK, _FROM_END = 6.6, 2.025, 30.0
_CENTRE, _CROSS, _JOINT = 1.1, 0.5, 1.3  # half widths of the centre, a register cross, a cross of a joint

Span = tuple[float, float]


class Room(NamedTuple):
    """What stands along the edge: ends of the paper, marks, numbers, a register cross, crosses of joints."""

    ends: Span
    marks: Sequence[float]
    numbers: Sequence[Span]
    cross: float
    joints: Sequence[float]

    @property
    def fixed(self) -> list[Span]:
        """What is taken at the very edge."""
        near = [(-_CENTRE, _CENTRE), (self.cross - _CROSS, self.cross + _CROSS)]
        return [*near, *((joint - _JOINT, joint + _JOINT) for joint in self.joints)]

    def middles(self, gap: float, half: float, taken: Sequence[Span]) -> list[float]:
        """The middles of gaps between marks, at least `gap` wide, in which `half` to each side is not `taken`."""
        places = [(one + other) / 2 for one, other in pairwise(sorted([*self.ends, *self.marks])) if other - one >= gap]
        return [x for x in places if all(high <= x - half or x + half <= low for low, high in taken)]


def signs(room: Room, edge: float, up: int) -> tuple[list[Shape], list[Shape]]:
    """Arrows that point at the weaving edge, at y = `edge`, and scissors on it, which reach `EYES` past it.

    `up` is +1 where the weaving lies above. What finds no room is left out.
    """
    left, right = room.ends
    free = room.middles(_SCISSORS_GAP, _SCISSORS_HALF, room.fixed)
    cut = min(free, key=lambda x: abs(x - (right - _FROM_END)), default=None)
    others = [] if cut is None else [(cut - _SCISSORS_HALF, cut + _SCISSORS_HALF)]
    free = room.middles(_ARROW_GAP, _ARROW_HALF, [*room.fixed, *room.numbers, *others])
    wanted = (left + (right - left) * part for part in (1 / 6, 1 / 2, 5 / 6))
    places = dict.fromkeys(min(free, key=lambda x: abs(x - at)) for at in wanted if free)
    shapes = [shape for x in places for shape in small_arrow(Point(x, edge - up * _TIP), Point(0, up))]
    return shapes, [] if cut is None else scissors(Point(cut - _SCISSORS_BACK, edge))
