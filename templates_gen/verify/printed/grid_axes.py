"""The columns and rows of a weaving grid, from the kit's numbers: limits, sett and picks."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Cells
from templates_gen.verify import LIMIT
from templates_gen.verify.printed.expected import expected

_FINEST = 10**6  # the finest part in which a guess is said

Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Axis:
    """The lines of one direction: `count` cells of `cell` mm from `start` on, and what they are called."""

    start: Fraction
    cell: Fraction
    count: int
    counts: Cells

    def at(self, number: float) -> float:
        """Where the line after so many cells lies."""
        return float(self.start + Fraction(number) * self.cell)

    def lines(self, window: Span) -> list[tuple[float, Pen]]:
        """Every line inside `window` with its pen, the centre once."""
        pens = {number: Pen.HELP if number % 10 else Pen.MARK for number in range(self.count + 1)}
        pens |= {0: Pen.EDGE, self.count: Pen.EDGE}
        found = {Fraction(number): pen for number, pen in pens.items()} | {Fraction(self.count, 2): Pen.EDGE}
        places = ((float(self.start + number * self.cell), pen) for number, pen in sorted(found.items()))
        return [(at, pen) for at, pen in places if window[0] - LIMIT <= at <= window[1] + LIMIT]

    def blocks(self, window: Span) -> Iterator[tuple[int, Span]]:
        """Every block of ten, numbered, with what of it lies inside `window`."""
        edges = [*range(0, self.count, 10), self.count]
        for number, (one, other) in enumerate(pairwise(edges)):
            low, high = max(self.at(one), window[0]), min(self.at(other), window[1])
            if high - low > LIMIT:
                yield number, (low, high)

    def block(self, span: Span) -> int:
        """The number of the block in which the middle of `span` lies."""
        return int(((span[0] + span[1]) / 2 - float(self.start)) // float(10 * self.cell))


def axes_of(plan: Plan) -> tuple[Axis, Axis]:
    """The columns and the rows that the kit asks for.

    Picks that were counted are taken from the kit itself; a guess can only be the one that the plan tells.
    """
    sett, weft, guess = plan.warp.sett, plan.kit.amounts.weft, plan.amounts.picks_per_cm
    left, right = expected(plan.kit, sett.per_mm, sett.unit.mm).limits
    bead = 20 / Fraction(guess.value).limit_denominator(_FINEST) if guess else Fraction(1)
    if weft.picks:
        bead = 2 * weft.picks.over.mm / weft.picks.number
    elif weft.beads:
        bead = weft.beads.over.mm / weft.beads.number
    ends = Axis(left, 1 / sett.per_mm, int((right - left) * sett.per_mm), Cells.ENDS)
    return ends, Axis(Fraction(0), bead, int(plan.kit.weaving.height.mm / bead), Cells.BEADS)
