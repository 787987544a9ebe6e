"""What must be true of every cut part whatever its builder did: the table of proofs, by the part's name."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Piece, Sheet
from layout.messages.catalogue import Message
from layout.plan import Plan
from templates_gen.messages.roles.proof import Laid, Proof
from templates_gen.verify.cut_parts.bars import prove_end_bar, prove_peg_jig
from templates_gen.verify.cut_parts.combs import prove_comb, prove_winding_comb
from templates_gen.verify.cut_parts.gauges import prove_gauge, prove_guide
from templates_gen.verify.cut_parts.square_checks import prove_square_check
from templates_gen.verify.cut_parts.sticks import prove_shed_stick, prove_square, prove_stick_ends
from templates_gen.verify.cut_parts.trial import prove_trial_cut
from templates_gen.verify.finding import Findings, finding, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.printed.expected import sett_is_sound

CUT_PROOFS: Mapping[str, Callable[[Plan, Stock, FoundPart], Findings]] = {
    "comb": prove_comb,
    "winding-comb-near": prove_winding_comb,
    "winding-comb-far": prove_winding_comb,
    "shed-stick": prove_shed_stick,
    "trial-cut": prove_trial_cut,
    "square-check": prove_square_check,
    "wrap-gauge-cut": prove_gauge,
    "spacing-guide-cut": prove_guide,
    "end-bar-near": prove_end_bar,
    "end-bar-far": prove_end_bar,
    "peg-jig-near": prove_peg_jig,
    "peg-jig-far": prove_peg_jig,
    "reference-square": prove_square,
}
"""By the name of a part: `proof(plan, stock, seen)`."""


SHEET_1 = said(Proof.SHEET, number=1)


def prove_cut(plan: Plan, stock: Stock, sheet: Sheet, laid: Sequence[Piece], where: Message = SHEET_1) -> Findings:
    """Every cut part on a sheet, found by its crosses, against the numbers of kit and stock alone."""
    sett = plan.warp.sett
    if not sett_is_sound(plan.kit, sett.per_mm, sett.unit.mm):
        return Findings(0.0, (finding(Laid.SETT),))
    found, total = found_on(sheet, laid, where)
    ends = _in_ends(found)
    open_cuts = [
        path for path in sheet.shapes if isinstance(path, Curve) and path.pen is Pen.THROUGH and not path.closed
    ]
    if open_cuts and not ends:
        total += Findings(0.0, (finding(Laid.OPEN_CUT).at(where),))
    if total.problems:
        return total
    if ends:
        return total + prove_stick_ends(plan, stock, found).at(where)
    for seen in found:
        total += CUT_PROOFS[seen.part.name](plan, stock, seen).at(where)
    return total


def _in_ends(found: Sequence[FoundPart]) -> bool:
    """Whether a sheet shows the two ends of a plain stick, as only a drawing on paper does."""
    return len(found) == 2 and all(seen.part.name == "shed-stick" for seen in found)
