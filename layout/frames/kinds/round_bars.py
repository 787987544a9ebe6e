"""Round bars: a warp is wound round both."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from layout.frames.bar import Bar
from layout.frames.kinds.frame_end import FrameEnd
from layout.frames.materials import material_of
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.messages.roles import Beam
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class RoundBar(FrameEnd):
    """Both frame ends are round bars of one diameter."""

    kind: ClassVar[str] = "wound"
    name: ClassVar[str] = "round bars"
    diameter: Length

    @property
    def half_turn_mm(self) -> float:
        """The way round the bar from its face to its back: pi d / 2."""
        return math.pi * float(self.diameter.mm) / 2

    @property
    def inset_mm(self) -> Fraction:
        """The bar itself."""
        return self.diameter.mm

    @property
    def deep_mm(self) -> Fraction:
        """From face to back."""
        return self.diameter.mm

    @property
    def wide_mm(self) -> Fraction | None:
        """As wide as it is deep."""
        return self.diameter.mm

    def pass_mm(self, high: float) -> float:
        """From outermost line to outermost line: H - D + pi D / 2."""
        return high - float(self.diameter.mm) + self.half_turn_mm

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """On to the middle of the bar, half a turn, longer by pi d / 2 with a thread d thick, and back."""
        return 2 * (wide - float(self.diameter.mm) / 2) + self.half_turn_mm + math.pi * thread / 2

    def beam(self, strength: Strength, span: Fraction) -> Bar | Role:
        """A round bar, or a tube where it has a bore."""
        material = material_of(strength, self.diameter.mm)
        if material is None:
            return Beam.GIVE_MATERIAL
        return Bar(self.diameter.mm, span, material.modulus, strength.bar_bore.mm if strength.bar_bore else 0)

    @property
    def cut_parts(self) -> tuple[str, ...]:
        """The comb that keeps the winds apart."""
        return ("winding-comb",)
