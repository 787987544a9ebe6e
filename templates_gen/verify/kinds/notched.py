"""A warp between notches."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Count, Gauge, Strip, Winding
from layout.values.units import say_length
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening, square_cuts, ticks
from templates_gen.verify.kinds.truth import Form, Marks, Truth, board_inertia

_HELD = {
    Strip.WAY_EVERY_SECOND: (Strip.HELD_EVERY_SECOND, Strip.EMPTY),
    Strip.WAY_EVERY: (Strip.HELD_EVERY,),
    Strip.WAY_TWO: (Strip.HELD_TWO,),
}


class NotchedEnds(Truth[NotchedEnd]):
    """Boards with notches: still to be made, or of a `density` that is there."""

    laid = 1
    counted = Gauge.ENDS
    sett = (Count.SETT_INCH_ENDS, Count.SETT_CM_ENDS)
    legend = (Winding.ON_FACE, Winding.BEHIND_TOOTH, Winding.KNOT)

    def follow(self, ends: NotchedEnd, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """The first pass stands upright; every turn round a tooth leads on to the next notch that is used."""
        apart = max(pitch, 1 / ends.density.per_mm) if ends.density else pitch
        visits: list[Fraction] = []
        here = middles[0]
        for middle in middles:
            there = 2 * middle - here
            visits += [here, there]
            here = there + apart
        near, far = visits[0::4] + visits[3::4], visits[1::4] + visits[2::4]
        return tuple(sorted(set(near))), tuple(sorted(set(far)))

    def leans(self, ends: NotchedEnd, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """Upright, but where two ends share a notch: then every second one leads from one notch to the next."""
        while True:
            yield Fraction(0)
            yield 2 * pitch if in_pairs else Fraction(0)

    def touched(self, near: list[float], far: list[float], count: int) -> list[tuple[float, float]]:
        """Each in a notch of its own at both ends, or two ends in every notch."""
        if len(near) + len(far) > count + 1:
            return [(near[k], far[k]) for k in range(count)]
        return [(near[k // 2], far[(k + 1) // 2]) for k in range(count)]

    def lines(self, ends: NotchedEnd, form: str) -> list[tuple[float, Pen]]:
        """The edge."""
        if ends.density:
            return [(0.0, Pen.REGISTER)]
        return [(0.0, Pen.FOLD)] if form == "full" else []

    def paper(self, ends: NotchedEnd, form: str, low: float, high: float) -> Iterator[Finding]:
        """To the back of the board, or to its edge."""
        flap = -float(ends.thickness.mm) if form == "full" else 0.0
        if not ends.density and not abs(low - flap) <= LIMIT:
            yield finding(Strips.PAPER, low=low, flap=flap)

    def rows(self, ends: NotchedEnd) -> tuple[float, float]:
        """The ground of the notches that are still to be made."""
        ground = 0.0 if ends.density else float(ends.notch_depth.mm)
        return ground, ground

    def title(self, ends: NotchedEnd, end: str) -> Strip:
        """A template where the notches are still to be made."""
        if ends.density:
            return super().title(ends, end)
        return Strip.NOTCHING_NEAR if end == "near" else Strip.NOTCHING_FAR

    def way(self, ends: NotchedEnd, kit: Kit, sett: Fraction) -> Strip:
        """By how many ends lie in a notch that is there."""
        if ends.density is None:
            return Strip.WAY_TEETH
        return {1: Strip.WAY_EVERY_SECOND, 2: Strip.WAY_EVERY, 4: Strip.WAY_TWO}[int(2 * sett / ends.density.per_mm)]

    def use(self, ends: NotchedEnd, kit: Kit, sett: Fraction, form: Form) -> Iterator[str]:
        """How to saw, or which notches to take."""
        if ends.density:
            yield from map(ENGLISH.say, (*_HELD[self.way(ends, kit, sett)], Strip.DRIFT))
            return
        yield ENGLISH.say(Strip.OVER_EDGE if form == "full" else Strip.FLUSH)
        width, depth = say_length(ends.notch_width), say_length(ends.notch_depth)
        yield ENGLISH.say(Strip.NOTCH_SIZE, width=width, depth=depth)
        yield ENGLISH.say(Strip.SAW)

    def wanted(self, ends: NotchedEnd, marks: Sequence[Fraction], to_weaving: int) -> list[Opening]:
        """A notch at every mark; of a bar that is there, ticks at notches that stay empty."""
        if ends.density is None:
            deep = to_weaving * float(ends.notch_depth.mm)
            return [Opening(float(x), deep / 2, float(ends.notch_width.mm), abs(deep)) for x in marks]
        apart, low = 1 / ends.density.per_mm, min(marks)
        every = {low + k * apart for k in range(int((max(marks) - low) / apart) + 1)}
        return [Opening(float(x), to_weaving * 0.5, 0.0, 1.0) for x in every - set(marks)]

    def find(self, ends: NotchedEnd, seen: FoundPart) -> Iterator[Opening]:
        """Notches or ticks."""
        return ticks(seen) if ends.density else square_cuts(seen)

    def together(self, ends: NotchedEnd, kit: Kit, inside: float) -> float:
        """All ends lie on the face from the ground of the notches on."""
        return max(inside, float(ends.notch_depth.mm))

    def way_mm(self, ends: NotchedEnd, high: float) -> float:
        """From the middle of the frame to the ground of a notch, twice."""
        return 2 * (high / 2 - float(ends.notch_depth.mm))

    def inertia(self, ends: NotchedEnd, kit: Kit) -> float | None:
        """A board as far as notches leave it."""
        return board_inertia(kit, float(ends.thickness.mm), float(ends.notch_depth.mm))

    def asks_for(self, ends: NotchedEnd) -> tuple[str, ...]:
        """The bars, where they are still to be made."""
        return () if ends.density else ("end-bars",)

    def layers_of(self, ends: NotchedEnd) -> Fraction:
        """As thick as the kit has its ends."""
        return ends.thickness.mm
