"""A warp in a figure eight: round bars, and flat ends."""

from __future__ import annotations

import math
from abc import abstractmethod

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit
from templates_gen.verify.kinds.truth import Course
from templates_gen.verify.kinds.wound import FlatEnds, RoundBars, Wound
from templates_gen.verify.search import root


class Crossed(Wound[Ends]):
    """What is true of both."""

    def faces(self, kit: Kit, k: int) -> tuple[bool, bool]:
        """Every pass comes to the other side between the ends, and round an end the thread comes back to the first."""
        begins = kit.weaving.first_pass == "face"
        comes = not begins
        return (begins, comes) if k % 2 == 0 else (comes, begins)

    @abstractmethod
    def corner(self, ends: Ends, kit: Kit) -> tuple[float, float, float]:
        """Where the inner edge of a frame end is rounded: how far its centre lies within the outer edge of the frame,
        how far from the middle of the thickness, and its radius.
        """

    @abstractmethod
    def outside(self, ends: Ends, kit: Kit) -> float:
        """From the outermost line to where the inner edge begins to be round, along the outline."""

    def courses(self, ends: Ends, kit: Kit, near: list[float], far: list[float]) -> list[Course]:
        """Every pass drawn on, as it leans, to both outer edges of the frame."""
        high = float(kit.frame.outer_height.mm)
        inside, aside, radius = self.corner(ends, kit)
        up = high - 2 * inside

        def off(angle: float) -> float:
            """How far a line that leans by `angle` through the middle passes a centre, less the radius."""
            return up / 2 * math.sin(angle) - aside * math.cos(angle) - radius

        lean = root(off, 0.0, math.pi / 2)
        across = up * math.cos(lean) + 2 * aside * math.sin(lean)
        half = high / 2 / (across / 2 + lean * radius + self.outside(ends, kit)) / math.cos(lean)
        touched = self.touched(near, far, len(near) + len(far) - 1)
        drawn = [((low + top) / 2, (top - low) / 2 * half) for low, top in touched]
        return [(middle - aslant, middle + aslant) for middle, aslant in drawn]


class CrossedBars(Crossed[RoundBar], RoundBars):
    """Round bars."""

    def corner(self, ends: RoundBar, kit: Kit) -> tuple[float, float, float]:
        """The bar itself."""
        return float(ends.diameter.mm) / 2, 0.0, float(ends.diameter.mm) / 2

    def outside(self, ends: RoundBar, kit: Kit) -> float:
        """A quarter of the round, to the middle of its side."""
        return self.half_way(ends)


class CrossedBoards(Crossed[FlatEnd], FlatEnds):
    """Boards."""

    def corner(self, ends: FlatEnd, kit: Kit) -> tuple[float, float, float]:
        """As the kit has the board, or as wide as the side pieces."""
        wide, radius = float((kit.strength.end_width or kit.frame.side_width).mm), float(ends.edge_radius.mm)
        return wide - radius, float(ends.thickness.mm) / 2 - radius, radius

    def outside(self, ends: FlatEnd, kit: Kit) -> float:
        """Round the outer edge and along the flat."""
        wide = float((kit.strength.end_width or kit.frame.side_width).mm)
        return self.half_way(ends) + wide - 2 * float(ends.edge_radius.mm)
