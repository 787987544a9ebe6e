"""The columns and rows of a weaving grid, from the kit's numbers: limits, sett and picks."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Cells
from templates_gen.verify import LIMIT
from templates_gen.verify.printed.expected import expected
from templates_gen.verify.printed.height import bead_mm, rows_of

Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Axis:
    """The lines of one direction: `count` cells of `cell` mm (less than none: to the left) from `start` on, and what
    they are called.
    """

    start: Fraction
    cell: Fraction
    count: int
    counts: Cells

    def at(self, number: float) -> float:
        """Where the line after so many cells lies."""
        return float(self.start + Fraction(number) * self.cell)

    def lines(self, window: Span) -> list[tuple[float, Pen]]:
        """Every line inside `window` with its pen, the centre once, from left to right or from below."""
        pens = {number: Pen.GRID if number % 10 else Pen.GRID_TEN for number in range(self.count + 1)}
        pens |= {0: Pen.LIMIT, self.count: Pen.LIMIT}
        found = {Fraction(number): pen for number, pen in pens.items()} | {Fraction(self.count, 2): Pen.CENTRE}
        places = sorted(((float(self.start + number * self.cell), pen) for number, pen in found.items()), key=_place)
        return [(at, pen) for at, pen in places if window[0] - LIMIT <= at <= window[1] + LIMIT]


def _place(line: tuple[float, Pen]) -> float:
    return line[0]


def axes_of(plan: Plan) -> tuple[Axis, Axis]:
    """The columns and the rows that the kit asks for."""
    sett = plan.warp.sett
    left, right = expected(plan.kit, sett.per_mm, sett.unit.mm).limits
    start, way = (right, -1) if plan.kit.weaving.cartoon == "mirrored" else (left, 1)
    ends = Axis(start, way / sett.per_mm, int((right - left) * sett.per_mm), Cells.ENDS)
    return ends, Axis(Fraction(0), bead_mm(plan) or Fraction(1), rows_of(plan), Cells.BEADS)
