"""Flat ends: boards, a warp is wound round both."""

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
class FlatEnd(FrameEnd):
    """Both frame ends are flat boards of one thickness, their edges rounded with one radius."""

    kind: ClassVar[str] = "wound"
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

    @property
    def deep_mm(self) -> Fraction:
        """From face to back."""
        return self.thickness.mm

    def pass_mm(self, high: float) -> float:
        """From outermost line to outermost line: H - 2r + (T - 2r + pi r)."""
        return high - 2 * float(self.edge_radius.mm) + self.half_turn_mm

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """Over the face, half a turn, longer by pi d / 2 with a thread d thick, and over the back."""
        return 2 * (wide - float(self.edge_radius.mm)) + self.half_turn_mm + math.pi * thread / 2

    def beam(self, strength: Strength, span: Fraction) -> Board | Role:
        """A board."""
        return board(self.thickness, strength, span)

    @property
    def cut_parts(self) -> tuple[str, ...]:
        """The comb that keeps the winds apart."""
        return ("winding-comb",)
