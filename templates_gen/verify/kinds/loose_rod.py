"""A warp from a loose rod: round bars, and flat ends."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit
from layout.messages.roles import Count, Gauge, Winding
from templates_gen.verify.kinds.truth import Marks
from templates_gen.verify.kinds.wound import FlatEnds, RoundBars, Wound

_ROD, _BESIDE_ROD = 8.0, 50.0  # mm: a rod of which a kit says nothing, and what stays unwoven beside it


class FromRod(Wound[Ends]):
    """What is true of both."""

    laid = 1
    counted = Gauge.ENDS
    sett = (Count.SETT_INCH_ENDS, Count.SETT_CM_ENDS)
    legend = (Winding.ON_FACE, Winding.BEHIND, Winding.KNOT)
    first_near = 1
    winds = False
    on_rod = True
    cut = ()

    def follow(self, ends: Ends, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """Every end goes straight up at its place; at the rod it goes on to the next."""
        return tuple(middles), tuple(middles)

    def leans(self, ends: Ends, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """Upright."""
        while True:
            yield Fraction(0)

    def touched(self, near: list[float], far: list[float], count: int) -> list[tuple[float, float]]:
        """Each at a mark of its own at both ends."""
        return list(zip(near, far, strict=True))

    def faces(self, kit: Kit, k: int) -> tuple[bool, bool]:
        """Every end lies on the face, from frame end to frame end."""
        return True, True

    def open_mm(self, ends: Ends, kit: Kit) -> float:
        """Up the face and down behind, from outermost line to outermost line, less the rod and what stays beside it."""
        rod = kit.weaving.rod_diameter
        way = 2 * self.way_mm(ends, float(kit.frame.outer_height.mm))
        return way - (_ROD if rod is None else float(rod.mm)) - _BESIDE_ROD

    def together(self, ends: Ends, kit: Kit, inside: float) -> float:
        """One layer: at once."""
        return inside


class RodBars(FromRod[RoundBar], RoundBars):
    """Round bars."""

    def together(self, ends: RoundBar, kit: Kit, inside: float) -> float:
        """Within the bar."""
        return self.deep(ends)


class RodBoards(FromRod[FlatEnd], FlatEnds):
    """Boards."""
