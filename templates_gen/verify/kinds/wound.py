"""A warp wound round both ends: round bars, and flat ends."""

from __future__ import annotations

import math
from abc import abstractmethod
from collections.abc import Iterator
from fractions import Fraction
from typing import cast

from layout.drawing.pens import Pen
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit
from layout.messages.roles import Count, Gauge, Winding
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.truth import Across, Form, Marks, Truth, board_inertia
from templates_gen.verify.search import root

_SLOPE = 0.25  # layers come together at 1 in 4, if a kit does not say


class Wound(Truth[Ends]):
    """What is true of both."""

    laid = 2
    counted = Gauge.WINDS
    sett = (Count.SETT_INCH_WINDS, Count.SETT_CM_WINDS)
    legend: tuple[Winding, ...] = (Winding.ON_FACE, Winding.BEHIND, Winding.KNOT)
    first_near = 0
    glued = True
    winds = True
    cut: tuple[str, ...] = ("winding-comb",)
    on_face = 0.0
    """How far a strip reaches on the flat of the face, in mm."""

    @abstractmethod
    def half_way(self, ends: Ends) -> float:
        """From the outermost line to the flat of the face, along what the thread goes round: the length of the
        section's outline there, added up from its corners and quarter circles.
        """

    @abstractmethod
    def deep(self, ends: Ends) -> float:
        """From face to back."""

    def follow(self, ends: Ends, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """The slant of the first pass fixes the first contact; then the thread goes on where it came."""
        face_slant = Fraction(1, 2) if kit.weaving.slant == "shared" else Fraction(0)
        first_slant = (face_slant if kit.weaving.first_pass == "face" else 1 - face_slant) * 2 * pitch
        contacts = [middles[0] - first_slant / 2]
        for middle in middles:
            contacts.append(2 * middle - contacts[-1])
        return tuple(contacts[0::2]), tuple(contacts[1::2])

    def leans(self, ends: Ends, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """A wind leads two pitches on; the face takes half of that or none, the back the rest, down means backward."""
        of_face = pitch if kit.weaving.slant == "shared" else Fraction(0)
        slants = (of_face, 2 * pitch - of_face)
        first, second = slants if kit.weaving.first_pass == "face" else slants[::-1]
        while True:
            yield first
            yield -second

    def faces(self, kit: Kit, k: int) -> tuple[bool, bool]:
        """Face and back by turns, from one frame end to the other."""
        face = (k % 2 == 0) == (kit.weaving.first_pass == "face")
        return face, face

    def across(self, ends: Ends, form: Form) -> Across:
        """Round the frame end, with a flap of 6 mm; or 1.5 mm to the back of the outermost line, and 8 mm before."""
        if form == "low":
            return Across(8.0, -0.5, -1.5, 2.85, 1.5, low=True)
        way = self.half_way(ends)
        edge = way + self.on_face
        return Across(edge, -way, -way - 6, edge - 3.8, edge, low=False)

    def lines(self, ends: Ends, form: str) -> list[tuple[float, Pen]]:
        """The outermost line, and folds where the back begins and where the flat of the face does."""
        if form == "low":
            return [(0.0, Pen.REGISTER)]
        way = self.half_way(ends)
        face = [(way, Pen.FOLD)] if self.on_face else []
        return [*face, (0.0, Pen.REGISTER), (-way, Pen.FOLD)]

    def paper(self, ends: Ends, form: str, low: float, high: float) -> Iterator[Finding]:
        """From the free edge of the flap to the weaving edge."""
        wanted = self.across(ends, cast(Form, form))
        if max(abs(high - wanted.edge), abs(low - wanted.free)) > LIMIT:
            yield finding(Strips.PAPER_ROUND)

    def together(self, ends: Ends, kit: Kit, inside: float) -> float:
        """Both layers leave the end apart, and come in at the slope until they meet."""
        apart, slope = self.deep(ends), float(kit.amounts.room.slope or _SLOPE)
        return inside + root(lambda way: (apart / 2 - slope * way) - (slope * way - apart / 2), 0.0, apart / slope)


class RoundBars(Wound[RoundBar]):
    """Round bars."""

    def half_way(self, ends: RoundBar) -> float:
        """A quarter of the round."""
        return float(ends.diameter.mm) / 2 * math.radians(90)

    def deep(self, ends: RoundBar) -> float:
        """The bar."""
        return float(ends.diameter.mm)

    def together(self, ends: RoundBar, kit: Kit, inside: float) -> float:
        """The bar is as wide as it is thick."""
        return super().together(ends, kit, self.deep(ends))

    def way_mm(self, ends: RoundBar, high: float) -> float:
        """From the middle of the frame to the outermost line of a bar, twice."""
        radius = float(ends.diameter.mm) / 2
        return 2 * (high / 2 - radius + math.pi * radius / 2)

    def inertia(self, ends: RoundBar, kit: Kit) -> float:
        """A round bar or a tube."""
        bore = kit.strength.bar_bore
        outer, inner = float(ends.diameter.mm) / 2, float(bore.mm) / 2 if bore else 0.0
        return math.pi / 4 * (outer**4 - inner**4)


class FlatEnds(Wound[FlatEnd]):
    """Boards."""

    on_face = 6.0

    def half_way(self, ends: FlatEnd) -> float:
        """Half the thickness, with a quarter circle in the place of a corner."""
        rounded = float(ends.edge_radius.mm)
        return float(ends.thickness.mm) / 2 - rounded + rounded * math.radians(90)

    def deep(self, ends: FlatEnd) -> float:
        """The board."""
        return float(ends.thickness.mm)

    def way_mm(self, ends: FlatEnd, high: float) -> float:
        """From the middle of the frame to the outermost line of a board, twice."""
        thick, radius = float(ends.thickness.mm), float(ends.edge_radius.mm)
        return 2 * (high / 2 - radius + math.pi * radius / 2 + thick / 2 - radius)

    def inertia(self, ends: FlatEnd, kit: Kit) -> float | None:
        """A board."""
        return board_inertia(kit, float(ends.thickness.mm))
