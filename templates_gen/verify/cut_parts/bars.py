"""Notched bars and drilling jigs as a file shows them, proven from kit and stock alone."""

from __future__ import annotations

from fractions import Fraction

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.roles import CutWord
from layout.plan import Plan
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify.cut_parts.combs import wanted_of
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, rounds, uprights, xs, ys
from templates_gen.verify.cut_parts.lettering import areas, broken, prove_engraved
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.pegs import peg_centres

_SCREW = 4.0  # mm across a hole for a screw


def prove_end_bar(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A notch for every end, as wide and deep as the kit says; as long as the frame is wide; screws over the sides."""
    ends, cut = plan.kit.frame.ends, FoundCut(seen, stock, "y")
    if not isinstance(ends, NotchedEnd):
        return Findings(0.0, (finding(Cut.NO_NOTCHES),))
    half = float(ends.notch_width.mm) / 2 - cut.beside("x")
    centres = [float(x) for x in _marks(plan, seen)]
    walls = uprights([cut.outline])[1:-1]
    total = matched(CutMark.NOTCH_WALL, [x + side for x in centres for side in (-half, half)], walls)
    total += matched(CutMark.BAR_END, _sides(plan, cut), [min(xs(cut.outline)), max(xs(cut.outline))])
    low = min(ys(cut.outline))
    if not total.problems:
        edge = [y for x, y in cut.outline.points() if walls[0] - 1e-6 <= x <= walls[-1] + 1e-6 and y > low + 1]
        total += matched(CutMark.NOTCH_DEPTH, [float(ends.notch_depth.mm)], [max(ys(cut.outline)) - min(edge)])
    near = seen.part.name.endswith("near")
    text = plan.words.say(CutWord.ON_BAR_NEAR if near else CutWord.ON_BAR_FAR, kit=plan.kit.name)
    total += prove_engraved(areas(cut), (), broken(text), may_end=True)
    return total + _scored(plan, seen, cut) + _screws(plan, cut)


def _scored(plan: Plan, seen: FoundPart, cut: FoundCut) -> Findings:
    """A mark at the limits, at every unit line and at the middle, as the bar lies with its outer edge up."""
    wanted, end = wanted_of(plan), seen.part.name.rpartition("-")[2]
    lines = {*wanted.limits, Fraction(0), *(at for at, _ in wanted.lines[end])}
    turned = [float(-x if _at_bottom(plan, seen) else x) for x in lines]
    return matched(CutMark.SCORED, turned, uprights(cut.paths(Pen.SCORE)))


def _screws(plan: Plan, cut: FoundCut) -> Findings:
    """Holes, if there are any, stand over the middle of the side pieces."""
    frame, found = plan.kit.frame, rounds(cut.paths(Pen.THROUGH))
    out = float(frame.outer_width.mm - frame.side_width.mm) / 2
    total = matched(CutMark.SCREW, [-out, out], [each.x for each in found]) if found else NOTHING
    return total + matched(CutMark.SCREW_SIZE, [_SCREW - 2 * cut.beside("x")] * len(found), [e.across for e in found])


def prove_peg_jig(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A hole for every peg, as wide as the peg, in its row; the edge with the holes is the frame's outer edge."""
    ends, cut = plan.kit.frame.ends, FoundCut(seen, stock, "x")
    if not isinstance(ends, PeggedEnd):
        return Findings(0.0, (finding(Cut.NO_PEGS),))
    wide, found = float(ends.peg_diameter.mm), rounds(cut.paths(Pen.THROUGH))
    wanted = sorted(peg_centres(ends, list(map(float, _marks(plan, seen)))))
    edge = max(ys(cut.outline)) - cut.beside("y")
    total = matched(CutMark.HOLE, [x for x, _ in wanted], [each.x for each in found])
    total += matched(CutMark.HOLE_ROW, [edge - deep for _, deep in wanted], [each.y for each in found])
    for axis, sizes in (("x", [each.across for each in found]), ("y", [each.up for each in found])):
        total += matched(CutMark.HOLE_SIZE, [wide - 2 * cut.beside(axis)] * len(sizes), sizes)
    near = seen.part.name.endswith("near")
    text = plan.words.say(CutWord.ON_JIG_NEAR if near else CutWord.ON_JIG_FAR, kit=plan.kit.name)
    total += prove_engraved(areas(cut), (), broken(text), may_end=True)
    total += matched(CutMark.CENTRE_LINE, [0.0], uprights(cut.paths(Pen.SCORE)))
    return total + matched(CutMark.JIG_END, _sides(plan, cut), [min(xs(cut.outline)), max(xs(cut.outline))])


def _marks(plan: Plan, seen: FoundPart) -> list[Fraction]:
    """The marks in the order of winding, as they lie with the outer edge up: turned half round at the bottom."""
    wanted, end = wanted_of(plan), seen.part.name.rpartition("-")[2]
    return [-x if _at_bottom(plan, seen) else x for x in (wanted.near if end == "near" else wanted.far)]


def _at_bottom(plan: Plan, seen: FoundPart) -> bool:
    """Whether a part is for the end that stands at the bottom."""
    return seen.part.name.endswith("near") == (plan.kit.weaving.near_end == "bottom")


def _sides(plan: Plan, cut: FoundCut) -> list[float]:
    half = float(plan.kit.frame.outer_width.mm) / 2 + cut.beside("x")
    return [-half, half]
