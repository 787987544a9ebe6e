"""The frame a warp is wound round: its two ends and its size."""

from __future__ import annotations

import math
from dataclasses import dataclass

from layout.units import Length


@dataclass(frozen=True, slots=True)
class RoundBar:
    """Both frame ends are round bars of one diameter."""

    diameter: Length

    @property
    def half_turn_mm(self) -> float:
        """The way round the bar from its face to its back: pi d / 2."""
        return math.pi * float(self.diameter.mm) / 2


@dataclass(frozen=True, slots=True)
class FlatEnd:
    """Both frame ends are flat boards of one thickness, their edges rounded with one radius."""

    thickness: Length
    edge_radius: Length

    @property
    def half_turn_mm(self) -> float:
        """The way over the edge from the flat of the face to the flat of the back: T - 2r + pi r."""
        thickness, radius = float(self.thickness.mm), float(self.edge_radius.mm)
        return thickness - 2 * radius + math.pi * radius


@dataclass(frozen=True, slots=True)
class Frame:
    """`outer_width` runs along the frame ends, `outer_height` from end to end.

    `side_width` is the width of each side piece; `margin` is kept free between a side and the weaving.
    """

    ends: RoundBar | FlatEnd
    outer_width: Length
    outer_height: Length
    side_width: Length
    margin: Length

    @property
    def widest_weaving(self) -> Length:
        """What is left between the sides less both margins; may be zero or negative on a frame that cannot be."""
        mm = self.outer_width.mm - 2 * self.side_width.mm - 2 * self.margin.mm
        return Length(mm, self.outer_width.unit)
