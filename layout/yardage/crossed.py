"""The way of a thread wound in a figure eight: a crossed belt round two equal bars or boards.

All lengths are mm and follow the centre line of the thread, which lies half its thickness off what it touches. A round
bar is a board as wide as it is thick, its edges rounded with half of that.
"""

from __future__ import annotations

import math
from typing import NamedTuple

from layout.messages.roles import YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import Number, plain
from layout.values.units import in_unit


class CrossedBelt(NamedTuple):
    """The parts of one wind: each of two `crossing` stretches, the `turn` round one end from where the thread comes to
    it to where it leaves it, and the angle `lean` in radians by which a stretch leans from face to back.
    """

    crossing: float
    turn: float
    lean: float

    @property
    def once_round(self) -> float:
        """Once round both ends."""
        return 2 * (self.crossing + self.turn)


def crossed_belt(
    outer_mm: Number, wide_mm: Number, thickness_mm: Number, radius_mm: Number, thread_mm: Number
) -> CrossedBelt:
    """A crossed belt on a frame of outer length L, whose ends are w wide and T thick, their edges of radius r.

    With R = r + d/2 for a thread d thick, a crossing stretch is the inner tangent of two circles of radius R that lie
    c = hypot(L - 2w + 2r, T - 2r) apart: sqrt(c^2 - 4R^2), leaning by phi = atan2(T - 2r, L - 2w + 2r) + asin(2R / c).
    The turn runs along both flats, round both inner edges by phi and round the outer ones: 2 (w - 2r) + 2 R phi +
    T - 2r + pi R. For round bars that is the textbook's crossed belt, 2 sqrt(C^2 - D^2) + D (pi + 2 asin(D / C)).

    Raises FieldError where the ends are too thick to be crossed between.
    """
    outer, wide, thick, radius, thread = map(float, (outer_mm, wide_mm, thickness_mm, radius_mm, thread_mm))
    middle = radius + thread / 2
    along, across = outer - 2 * wide + 2 * radius, thick - 2 * radius
    centres = math.hypot(along, across)
    if along <= 2 * radius or centres <= 2 * middle:
        least = outer + 2 * middle - along + thick
        example = f'outer_height = "{math.ceil(least + 2 * wide)} mm"'
        raise FieldError("frame.outer_height", YardageNeed.CROSSED, in_unit(plain(outer), "mm"), example)
    lean = math.atan2(across, along) + math.asin(2 * middle / centres)
    turn = 2 * (wide - 2 * radius) + 2 * middle * lean + across + math.pi * middle
    return CrossedBelt(math.sqrt(centres**2 - 4 * middle**2), turn, lean)
