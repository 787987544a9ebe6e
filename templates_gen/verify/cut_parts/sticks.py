"""Sticks and the reference square, proven from kit and stock alone."""

from __future__ import annotations

from itertools import pairwise

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.plan import Plan
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, xs, ys
from templates_gen.verify.cut_parts.lettering import areas, broken, prove_engraved
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart

_PASSES = 40  # mm by which a shed stick passes each side, unless the kit says; once more on purpose
_SQUARE = 50.0


def prove_shed_stick(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """It rests on both sides of the frame and passes them, and no corner of it is sharp."""
    cut = FoundCut(seen, stock, "x")
    outline = cut.outline
    given = plan.kit.amounts.room.stick_past
    edge, past = float(plan.kit.frame.outer_width.mm) / 2, float(given.mm) if given else _PASSES
    left, right = min(xs(outline)) + cut.beside("x"), max(xs(outline)) - cut.beside("x")
    total = matched(CutMark.STICK_PAST, [past, past], [-edge - left, right - edge])
    round_steps = [through is not None for _, through in outline.steps]
    sharp = any(not one and not other for one, other in pairwise(round_steps))
    text = f"{plan.kit.name} \N{MIDDLE DOT} shed stick"
    total += prove_engraved(areas(cut), (), broken(text), may_end=True)
    return total + (Findings(0.0, (finding(Cut.SHARP),)) if sharp else NOTHING)


def prove_square(_: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """The square measures 50 mm both ways; it is not drawn for a kerf, since nothing runs it."""
    squares = [path for path in FoundCut(seen, stock, stock.grain).paths(Pen.REFERENCE) if len(path.steps) == 3]
    found = [max(at(path)) - min(at(path)) for path in squares for at in (xs, ys)]
    return matched(CutMark.SQUARE, [_SQUARE, _SQUARE], found)
