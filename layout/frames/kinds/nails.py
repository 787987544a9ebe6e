"""Nails: boards with one row of nails on the face, each turning two ends of a warp that goes there and back."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from layout.frames.bar import Board
from layout.frames.kinds.frame_end import FrameEnd, board
from layout.frames.nail import nail_warnings
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class NailEnd(FrameEnd):
    """Both frame ends are boards with nails of one diameter on the face in a single row, each turning two ends.

    Their centres lie `edge_distance` from the outer edge. They stand `nail_length` out of the board, if that is known.
    """

    kind: ClassVar[str] = "nailed"
    name: ClassVar[str] = "nails"
    thread_moves_ends: ClassVar[bool] = True
    thickness: Length
    nail_diameter: Length
    edge_distance: Length
    nail_length: Length | None = None

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the side of the nails where the weaving is."""
        return self.edge_distance.mm + self.nail_diameter.mm / 2

    @property
    def deep_mm(self) -> Fraction:
        """From face to back of the board."""
        return self.thickness.mm

    def pass_mm(self, high: float) -> float:
        """From the weaving's side of the nails to the same at the other end."""
        return high - 2 * float(self.inset_mm)

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """To the nails, round half of one, and back."""
        round_a_nail = math.pi * (float(self.nail_diameter.mm) + thread) / 2
        return 2 * (wide - float(self.inset_mm)) + round_a_nail

    def beam(self, strength: Strength, span: Fraction) -> Board | Role:
        """A board; what the nails take of it is left aside."""
        return board(self.thickness, strength, span)

    def pulled_by(self, newtons: float) -> tuple[str, ...]:
        """What two ends do to a nail that pull at its head, where it is known how long it is."""
        if self.nail_length is None:
            return ()
        return nail_warnings(float(self.nail_diameter.mm), float(self.nail_length.mm), newtons)
