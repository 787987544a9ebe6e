"""The frame that carries a warp: its two ends and its size."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar, Literal

from layout.values.units import Length, Sett

Kind = Literal["wound", "notched", "pegged"]
"""How a warp is carried: wound round both ends, or there and back on the face between notches or pegs."""


@dataclass(frozen=True, slots=True)
class RoundBar:
    """Both frame ends are round bars of one diameter."""

    kind: ClassVar[Kind] = "wound"
    name: ClassVar[str] = "round bars"
    diameter: Length

    @property
    def half_turn_mm(self) -> float:
        """The way round the bar from its face to its back: pi d / 2."""
        return math.pi * float(self.diameter.mm) / 2

    @property
    def inset_mm(self) -> Fraction:
        """How far within the outermost line of the frame no weaving can be: the bar itself."""
        return self.diameter.mm


@dataclass(frozen=True, slots=True)
class FlatEnd:
    """Both frame ends are flat boards of one thickness, their edges rounded with one radius."""

    kind: ClassVar[Kind] = "wound"
    name: ClassVar[str] = "flat ends"
    thickness: Length
    edge_radius: Length

    @property
    def half_turn_mm(self) -> float:
        """The way over the edge from the flat of the face to the flat of the back: T - 2r + pi r."""
        thickness, radius = float(self.thickness.mm), float(self.edge_radius.mm)
        return thickness - 2 * radius + math.pi * radius

    @property
    def inset_mm(self) -> Fraction:
        """None of the frame's height is lost: the weaving may lie before the boards."""
        return Fraction(0)


@dataclass(frozen=True, slots=True)
class NotchedEnd:
    """Both frame ends are boards of one thickness with notches in their outer edges, in which the ends lie.

    The notches are `notch_width` wide and `notch_depth` deep from the edge. A `density` is that of the notches of a
    board that is there already; without one the board is still to be notched, one notch for every end.
    """

    kind: ClassVar[Kind] = "notched"
    name: ClassVar[str] = "notched ends"
    thickness: Length
    notch_width: Length
    notch_depth: Length
    density: Sett | None = None

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the ground of the notches."""
        return self.notch_depth.mm


@dataclass(frozen=True, slots=True)
class PeggedEnd:
    """Both frame ends are boards with pegs of one diameter on the face, each turning two ends, in two staggered rows.

    The centres of the outer row lie `edge_distance` from the outer edge, those of the inner row `row_distance` further
    in.
    """

    kind: ClassVar[Kind] = "pegged"
    name: ClassVar[str] = "pegged ends"
    thickness: Length
    peg_diameter: Length
    row_distance: Length
    edge_distance: Length

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the side of the inner pegs where the weaving is."""
        return self.edge_distance.mm + self.row_distance.mm + self.peg_diameter.mm / 2


Ends = RoundBar | FlatEnd | NotchedEnd | PeggedEnd


@dataclass(frozen=True, slots=True)
class Frame:
    """`outer_width` runs along the frame ends, `outer_height` from end to end.

    `side_width` is the width of each side piece; `margin` is kept free between a side and the weaving.
    """

    ends: Ends
    outer_width: Length
    outer_height: Length
    side_width: Length
    margin: Length

    @property
    def widest_weaving(self) -> Length:
        """What is left between the sides less both margins; may be zero or negative on a frame that cannot be."""
        mm = self.outer_width.mm - 2 * self.side_width.mm - 2 * self.margin.mm
        return Length(mm, self.outer_width.unit)
