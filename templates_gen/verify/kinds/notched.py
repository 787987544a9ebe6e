"""A warp between notches."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.kit import Kit
from layout.messages.roles import Count, Gauge, Marking, SheetName, Template, Winding
from layout.values.units import say_length
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.kinds.truth import Asked, Form, Marks, Says, Sheets, Truth, board_inertia

_HELD = {1: Template.STEP_EVERY_SECOND, 2: Template.STEP_EVERY, 4: Template.STEP_TWO}
"""By how many ends lie in two notches of a bar that has them."""

_EDGE_PART, _SHORT, _BOX = 12.0, 2.0, 2.5
"""How far a template goes over the edge at most, how much its notches end before that, and how high the boxes are that
stand on notches which are there; mm."""


def skips_notches(ends: NotchedEnd, sett: Fraction) -> bool:
    """Whether every second notch of a bar that has them stays empty at `sett` ends per mm."""
    return ends.density is not None and 2 * sett == ends.density.per_mm


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
        """The edge, or the ground of notches that are there."""
        if ends.density:
            return [(0.0, Pen.REGISTER)]
        return [(0.0, Pen.FOLD)] if form == "full" else []

    def paper(self, ends: NotchedEnd, form: str, low: float, high: float) -> Iterator[Finding]:
        """Over the edge of the board, or to it."""
        flap = -self._over(ends) if form == "full" else 0.0
        if not ends.density and not abs(low - flap) <= LIMIT:
            yield finding(Strips.PAPER, low=low, flap=flap)

    def _over(self, ends: NotchedEnd) -> float:
        return min(float(ends.thickness.mm), _EDGE_PART)

    def sheets(self, ends: NotchedEnd) -> Sheets:
        """A template where the notches are still to be made."""
        if ends.density:
            names = SheetName.NAME_STRIPS, SheetName.NAME_STRIP_NEAR, SheetName.NAME_STRIP_FAR
            return Sheets(*names, Template.PURPOSE_HELD)
        names = SheetName.NAME_NOTCHES, SheetName.NAME_NOTCHES_NEAR, SheetName.NAME_NOTCHES_FAR
        return Sheets(*names, SheetName.PURPOSE_NOTCHES)

    def says(self, ends: NotchedEnd, asked: Asked) -> Says:
        """How to saw, or which notches to take."""
        say, words = asked.words.say, asked.words
        path = [say(Template.THROUGH_NOTCHES), say(Template.TIE_ON, number=1)]
        path += map(say, (Template.NEAR_BAR, Template.BEHIND, Template.NUMBER_NOTCH))
        if ends.density:
            use = int(2 * asked.sett / ends.density.per_mm)
            empty = [say(Template.AN_EMPTY_NOTCH)] if use == 1 else []
            held = (Marking.STEP_CUT, Template.STEP_LAY_GROUND, _HELD[use], Template.STEP_DRIFT)
            return Says(list(map(say, held)), [say(Marking.READING), *path, say(Template.A_USED_NOTCH), *empty], [], [])
        width, depth = say_length(ends.notch_width, words), say_length(ends.notch_depth, words)
        lies = [Template.HOW_IT_LIES, Template.BAR, Template.WEAVING, Template.FACE_PART, Template.A_NOTCH]
        full = asked.form == "full"
        lies += [Template.EDGE_PART, Template.FOLD_AT, Template.FOLD] if full else [Template.PLAIN_EDGE]
        beside = [say(Template.READING), *path, *map(say, lies), say(Template.NOTCH_DEEP, depth=depth)]
        steps = [
            say(Template.STEP_CUT),
            say(Template.STEP_FOLD if full else Template.STEP_LAY_FACE),
            say(Template.STEP_SAW, width=width, depth=depth),
            say(Template.STEP_SMOOTH),
        ]
        return Says(steps, beside, [say(Template.CAUTION_SAW), say(Template.CAUTION_AS_MAKER_SAW)], [])

    def dots(self, ends: NotchedEnd) -> Template:
        """Never sawn, where something is."""
        return Template.DOTS if ends.density else Template.DOTS_SAWN

    def filled(self, ends: NotchedEnd, marks: Sequence[Fraction], to_weaving: int, form: Form) -> list[Opening]:
        """A notch at every mark, over the edge too; of a bar that is there, a box on every notch that is used."""
        wide, deep, over = float(ends.notch_width.mm), float(ends.notch_depth.mm), 0.0
        if ends.density:
            deep = _BOX
        elif form == "full":
            over = self._over(ends) - min(_SHORT, self._over(ends) / 3)
        return [Opening(float(x), to_weaving * (deep - over) / 2, wide, deep + over) for x in marks]

    def empty(self, ends: NotchedEnd, marks: Sequence[Fraction], to_weaving: int) -> list[Opening]:
        """The notches of a bar that stay empty between those that are used."""
        if ends.density is None:
            return []
        apart, low = 1 / ends.density.per_mm, min(marks)
        every = {low + k * apart for k in range(int((max(marks) - low) / apart) + 1)}
        wide = float(ends.notch_width.mm)
        return [Opening(float(x), to_weaving * _BOX / 2, wide, _BOX) for x in every - set(marks)]

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
