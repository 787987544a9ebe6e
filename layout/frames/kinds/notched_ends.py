"""Notched ends: boards with notches in their outer edges, between which the warp goes there and back on the face."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from layout.frames.bar import Board
from layout.frames.kinds.frame_end import FrameEnd, board
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.values.units import Length, Sett


@dataclass(frozen=True, slots=True)
class NotchedEnd(FrameEnd):
    """Both frame ends are boards of one thickness with notches in their outer edges, in which the ends lie.

    The notches are `notch_width` wide and `notch_depth` deep from the edge. A `density` is that of the notches of a
    board that is there already; without one the board is still to be notched, one notch for every end.
    """

    kind: ClassVar[str] = "notched"
    name: ClassVar[str] = "notched ends"
    thickness: Length
    notch_width: Length
    notch_depth: Length
    density: Sett | None = None

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the ground of the notches."""
        return self.notch_depth.mm

    @property
    def deep_mm(self) -> Fraction:
        """From face to back."""
        return self.thickness.mm

    @property
    def notches(self) -> Sett | None:
        """How close the notches of a board are that is there already."""
        return self.density

    def pass_mm(self, high: float) -> float:
        """From ground to ground."""
        return high - 2 * float(self.inset_mm)

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """Through a notch, round the back of a tooth and through the next; a thread d thick makes it 3 d longer."""
        round_a_tooth = float(spacing + 2 * self.thickness.mm) + 3 * thread
        return 2 * (wide - float(self.inset_mm)) + round_a_tooth

    def beam(self, strength: Strength, span: Fraction) -> Board | Role:
        """A board as wide as what the notches leave."""
        return board(self.thickness, strength, span, self.notch_depth.mm)

    @property
    def cut_parts(self) -> tuple[str, ...]:
        """The bars themselves, where they are still to be made."""
        return () if self.density else ("end-bars",)
