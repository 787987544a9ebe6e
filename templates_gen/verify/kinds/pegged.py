"""A warp between pegs."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.kit import Kit
from layout.messages.roles import Count, Gauge, SheetName, Template
from layout.values.units import say_length
from templates_gen.messages.roles.proof_printed import Mark
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.kinds.pins import Pin, Pins, beside_pins, far_pins, lay_of_holes
from templates_gen.verify.kinds.truth import Asked, Course, Form, Marks, Says, Sheets, board_inertia
from templates_gen.verify.printed.pegs import end_thickness, peg_centres, touching


class PeggedEnds(Pins[PeggedEnd]):
    """Boards with pegs."""

    counted = Gauge.PEGS
    sett = (Count.SETT_INCH_PEGS, Count.SETT_CM_PEGS)
    cut = ("peg-jig",)
    opening = Mark.HOLE

    def pin(self, ends: PeggedEnd) -> Pin:
        """As the kit has them."""
        return Pin(ends.edge_distance, ends.peg_diameter)

    def follow(self, ends: PeggedEnd, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """A peg stands between the two ends it turns, the far ones after the first end; the outer two as far out."""
        between = [middles[0] - pitch / 2, *((a + b) / 2 for a, b in pairwise(middles)), middles[-1] + pitch / 2]
        return tuple(between[0::2]), tuple(between[1::2])

    def lines(self, ends: PeggedEnd, form: str) -> list[tuple[float, Pen]]:
        """Both rows."""
        outer = float(ends.edge_distance.mm)
        return [(outer, Pen.HELP), (outer + float(ends.row_distance.mm), Pen.HELP)]

    def sheets(self, ends: PeggedEnd) -> Sheets:
        """Templates to drill by."""
        names = SheetName.NAME_PEGS, SheetName.NAME_PEGS_NEAR, SheetName.NAME_PEGS_FAR
        return Sheets(*names, SheetName.PURPOSE_PEGS)

    def says(self, ends: PeggedEnd, asked: Asked) -> Says:
        """How to lay it and to drill."""
        say = asked.words.say
        lay = lay_of_holes(asked, ends.edge_distance, float(ends.peg_diameter.mm))
        drill = say(Template.STEP_DRILL, peg=say_length(ends.peg_diameter, asked.words))
        cautions = [say(Template.CAUTION_DRILL), say(Template.CAUTION_AS_MAKER_DRILL)]
        roles = (Template.ROUND_PEGS, Template.TWO_TO_A_PEG, Template.A_PEG)
        beside = beside_pins(asked, roles, Template.NUMBER_PEG)
        return Says([say(Template.STEP_CUT), lay, drill, say(Template.STEP_PEGS)], beside, cautions, far_pins(asked))

    def dots(self, ends: PeggedEnd) -> Template:
        """Never drilled."""
        return Template.DOTS_DRILLED

    def filled(self, ends: PeggedEnd, marks: Sequence[Fraction], to_weaving: int, form: Form) -> list[Opening]:
        """A hole for every peg."""
        wide = float(ends.peg_diameter.mm)
        return [
            Opening(x, to_weaving * deep, wide, wide, True) for x, deep in peg_centres(ends, list(map(float, marks)))
        ]

    def together(self, ends: PeggedEnd, kit: Kit, inside: float) -> float:
        """All ends lie on the face from the inner row on."""
        radius = float(ends.peg_diameter.mm) / 2
        return max(inside, *(depth + radius for _, depth in peg_centres(ends, [0.0, 1.0])))

    def courses(self, ends: PeggedEnd, kit: Kit, near: list[float], far: list[float]) -> list[Course]:
        """The lines that touch two pegs, drawn on to both outer edges of the frame."""
        high = float(kit.frame.outer_height.mm)
        low_pegs = peg_centres(ends, near)
        high_pegs = [(x, high - depth) for x, depth in peg_centres(ends, far)]
        across = float(ends.peg_diameter.mm) + (end_thickness(kit) or 0.0)
        found = []
        for k in range(len(near) + len(far) - 1):
            line = touching(low_pegs[(k + 1) // 2], high_pegs[k // 2], across / 2, right=k % 2 == 0)
            found.append((line(0.0), line(high)))
        return found

    def inertia(self, ends: PeggedEnd, kit: Kit) -> float | None:
        """A board whose holes the pegs fill."""
        return board_inertia(kit, float(ends.thickness.mm))
