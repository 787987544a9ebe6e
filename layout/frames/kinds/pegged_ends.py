"""Pegged ends: boards with pegs on the face, each turning two ends of a warp that goes there and back."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from layout.frames.bar import Board
from layout.frames.kinds.frame_end import FrameEnd, board
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class PeggedEnd(FrameEnd):
    """Both frame ends are boards with pegs of one diameter on the face, each turning two ends, in two staggered rows.

    The centres of the outer row lie `edge_distance` from the outer edge, those of the inner row `row_distance` further
    in.
    """

    kind: ClassVar[str] = "pegged"
    name: ClassVar[str] = "pegged ends"
    thread_moves_ends: ClassVar[bool] = True
    thickness: Length
    peg_diameter: Length
    row_distance: Length
    edge_distance: Length

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the side of the inner pegs where the weaving is."""
        return self.edge_distance.mm + self.row_distance.mm + self.peg_diameter.mm / 2

    @property
    def deep_mm(self) -> Fraction:
        """From face to back of the board."""
        return self.thickness.mm

    def pass_mm(self, high: float) -> float:
        """From the weaving's side of the inner pegs to the same at the other end."""
        return high - 2 * float(self.inset_mm)

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """To the pegs, round half of one, and back."""
        round_a_peg = math.pi * float(self.peg_diameter.mm) / 2 + math.pi * thread / 2
        return 2 * (wide - float(self.inset_mm)) + round_a_peg

    def beam(self, strength: Strength, span: Fraction) -> Board | Role:
        """A board; its holes, which the pegs fill, are left aside."""
        return board(self.thickness, strength, span)

    @property
    def cut_parts(self) -> tuple[str, ...]:
        """The jig that its holes are drilled by."""
        return ("peg-jig",)
