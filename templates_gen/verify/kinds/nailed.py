"""A warp between nails in a single row."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.frames.kinds.nails import NailEnd
from layout.kit.kit import Kit
from layout.messages.roles import Count, Gauge, SheetName, Template
from layout.values.units import say_length
from templates_gen.messages.roles.proof_printed import Mark
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.kinds.pins import Pin, Pins, beside_pins, far_pins, lay_of_holes
from templates_gen.verify.kinds.truth import Asked, Course, Form, Marks, Says, Sheets, board_inertia
from templates_gen.verify.printed.pegs import end_thickness, touching


class NailEnds(Pins[NailEnd]):
    """Boards with nails."""

    counted = Gauge.NAILS
    sett = (Count.SETT_INCH_NAILS, Count.SETT_CM_NAILS)
    opening = Mark.NAIL

    def pin(self, ends: NailEnd) -> Pin:
        """As the kit has them."""
        return Pin(ends.edge_distance, ends.nail_diameter)

    def follow(self, ends: NailEnd, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """Every nail is as far from the end before it as from the one after it, half a pitch: near and far by turns."""
        nails = [middles[0] - pitch / 2]
        for middle in middles:
            nails.append(2 * middle - nails[-1])
        return tuple(nails[::2]), tuple(nails[1::2])

    def lines(self, ends: NailEnd, form: str) -> list[tuple[float, Pen]]:
        """The row."""
        return [(float(ends.edge_distance.mm), Pen.HELP)]

    def sheets(self, ends: NailEnd) -> Sheets:
        """Templates to nail by."""
        names = SheetName.NAME_NAILS, SheetName.NAME_NAILS_NEAR, SheetName.NAME_NAILS_FAR
        return Sheets(*names, SheetName.PURPOSE_NAILS)

    def says(self, ends: NailEnd, asked: Asked) -> Says:
        """How to lay it and to nail."""
        say, nail = asked.words.say, say_length(ends.nail_diameter, asked.words)
        lay = lay_of_holes(asked, ends.edge_distance, float(ends.nail_diameter.mm))
        if ends.nail_length:
            drive = say(Template.STEP_NAIL_OUT, nail=nail, out=say_length(ends.nail_length, asked.words))
        else:
            drive = say(Template.STEP_NAIL, nail=nail)
        roles = (Template.ROUND_NAILS, Template.TWO_TO_A_NAIL, Template.A_NAIL)
        beside = beside_pins(asked, roles, Template.NUMBER_NAIL)
        cautions = [say(Template.CAUTION_NAIL), say(Template.CAUTION_COVER)]
        return Says([say(Template.STEP_CUT), lay, say(Template.STEP_PRICK), drive], beside, cautions, far_pins(asked))

    def filled(self, ends: NailEnd, marks: Sequence[Fraction], to_weaving: int, form: Form) -> list[Opening]:
        """A circle as wide as a nail at every mark."""
        y, wide = to_weaving * float(ends.edge_distance.mm), float(ends.nail_diameter.mm)
        return [Opening(float(x), y, wide, wide, True) for x in marks]

    def together(self, ends: NailEnd, kit: Kit, inside: float) -> float:
        """All ends lie on the face from the nails on."""
        return max(inside, float(ends.edge_distance.mm) + float(ends.nail_diameter.mm) / 2)

    def courses(self, ends: NailEnd, kit: Kit, near: list[float], far: list[float]) -> list[Course]:
        """The lines that touch two nails, drawn on to both outer edges of the frame."""
        high, deep = float(kit.frame.outer_height.mm), float(ends.edge_distance.mm)
        radius = (float(ends.nail_diameter.mm) + (end_thickness(kit) or 0.0)) / 2
        found = []
        for k in range(len(near) + len(far) - 1):
            low, up = (near[(k + 1) // 2], deep), (far[k // 2], high - deep)
            line = touching(low, up, radius, right=k % 2 == 0)
            found.append((line(0.0), line(high)))
        return found

    def inertia(self, ends: NailEnd, kit: Kit) -> float | None:
        """A board; what the nails take of it is left aside."""
        return board_inertia(kit, float(ends.thickness.mm))
