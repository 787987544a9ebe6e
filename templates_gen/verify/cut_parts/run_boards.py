"""The boards of a run: every copy proven from its own crosses by the numbers of its own kit, and all counted."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import combinations
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve
from layout.drawing.sheet import Piece, Sheet
from layout.kit.kit import Kit
from templates_gen.messages.roles.proof import Laid, Proof
from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.as_cut import as_cut
from templates_gen.verify.cut_parts.board_edges import prove_edges
from templates_gen.verify.cut_parts.job_amounts import refused_by
from templates_gen.verify.cut_parts.prove_cut import CUT_PROOFS
from templates_gen.verify.finding import Finding, Findings, finding, once, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.printed.expected import sett_is_sound
from templates_gen.verify.run.pages import RunKit, room_of
from templates_gen.verify.whole_boards import copies, times_in
from templates_gen.verify.whole_cut import CUT

_GAP = 3.0  # mm between two parts, or the thickness of the stock where that is more: stated again on purpose
_SQUARE = "reference-square"
_LIE = ("comb", "winding-comb", "shed-stick", "spacing-guide-cut", "wrap-gauge-cut")
_FRAME, _TOOL = "end-bars", "peg-jig"


class RunBoard(NamedTuple):
    """A board as it was read: its file, its pieces as planned, the square last, and the kit of each of the others."""

    file: str
    sheet: Sheet
    pieces: Sequence[Piece]
    kits: Sequence[int]


def prove_run_board(board: RunBoard, kits: Sequence[RunKit], stock: Stock) -> Findings:
    """Every part on a board by kit and stock alone, the outline of the sheet, and that nothing meets."""
    where = said(Proof.SHEET, number=1)
    for plan, _ in kits:
        if not sett_is_sound(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit.mm):
            return Findings(0.0, (finding(Laid.SETT),))
    sheet = as_cut(stock, board.sheet)
    found, total = found_on(sheet, board.pieces, where)
    paths = (shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH)
    if not all(path.closed for path in paths):
        total += Findings(0.0, (finding(Laid.OPEN_CUT),))
    if total.problems:
        return total
    for seen, kit in zip(found, (*board.kits, 0), strict=True):
        plan = kits[kit].plan
        result = CUT_PROOFS[seen.part.name](plan, stock, seen)
        if result.problems:
            named = (
                finding(RunProof.KIT, part=seen.part.name, kit=plan.kit.name, what=str(each))
                for each in result.problems
            )
            result = replace(result, problems=tuple(named))
        total += result
    return total + prove_edges(stock, sheet) + Findings(0.0, tuple(once(_apart(stock, found))))


def _apart(stock: Stock, found: Sequence[FoundPart]) -> Iterator[Finding]:
    """Every part on the sheet, and off all others; nothing runs the square."""
    rooms = [(seen.part.name, room_of(seen)) for seen in found if seen.part.name != _SQUARE]
    for name, (left, low, right, high) in rooms:
        if min(left, low, stock.width - right, stock.height - high) < -LIMIT:
            yield finding(RunProof.OFF_BOARD, part=name)
    for (name, room), (other, beside) in combinations(rooms, 2):
        if _between(room, beside) < max(_GAP, stock.thickness) - LIMIT:
            yield finding(RunProof.CLOSE_ON_BOARD, part=name, other=other)


def _between(one: Box, other: Box) -> float:
    """The white between two boxes along the wider way; negative where they meet."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def wrong_counts(boards: Sequence[RunBoard], kits: Sequence[RunKit], stock: Stock) -> Findings:
    """Where a part of a kit is not cut as often as the range asks for: boards count as often as their names say."""
    met: Counter[tuple[int, str]] = Counter()
    for board in boards:
        for piece, kit in zip(board.pieces, board.kits, strict=False):
            met[kit, piece.part.name] += times_in(board.file)
    wanted = {
        (k, part): count
        for k, (plan, boxes) in enumerate(kits)
        for name, counts in wanted_parts(plan.kit, boxes, stock).items()
        if name not in refused_by(plan, stock, [name])
        for part, count in counts.items()
    }
    wrong = []
    for key in sorted({*met, *wanted}):
        if met[key] != wanted.get(key, 0):
            kit, part = key
            name = kits[kit].plan.kit.name
            wrong.append(finding(RunProof.CUT_COPIES, part=part, kit=name, found=met[key], wanted=wanted.get(key, 0)))
    return Findings(0.0, tuple(wrong))


def wanted_parts(kit: Kit, boxes: int, stock: Stock) -> Mapping[str, Mapping[str, int]]:
    """By product how many of each part are cut for so many boxes of a kit: what each holds, and what there is once.

    Bars of the frame are cut for every box that holds a frame, in layers, and the jig that drills pegs once.
    """
    box = kit.box
    sets = {name: boxes for name in _LIE if name in box.each_holds}
    sets |= {name: 1 for name in _LIE if name in box.run_holds}
    sets |= {_FRAME: boxes, _TOOL: 1} if box.frame else {}
    layers = copies(kit, stock)
    asked = {name: number for name, number in sets.items() if CUT[name].when(kit)}
    return {name: {part: number * layers.get(part, 1) for part in CUT[name].parts} for name, number in asked.items()}
