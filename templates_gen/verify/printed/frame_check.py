"""The frame check sheet proven from the kit's numbers alone: its picture, and all that it says."""

from __future__ import annotations

import math
from collections.abc import Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding, said
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.check_words import check_frame_words
from templates_gen.verify.printed.warp_words import said_of

_ARMS = 2.0  # a longer line than this is no hair of a register cross
_PICTURE = 150.0  # a part longer than this shows the frame


def prove_frame_check(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The frame's outline and diagonals in its own proportions; where words are real, every word."""
    kit, sett = plan.kit, plan.warp.sett.per_mm
    off, problems = 0.0, list[Finding]()
    for seen in pieces:
        if seen.part.length > _PICTURE:
            wrong, far = _picture(kit, seen)
            off = max(off, far)
            problems += wrong
        if on_paper:
            warp = said_of(kit, sett, plan.warp.sett.unit)
            problems += check_frame_words(kit, sett, warp, seen, low=seen.part.length <= _PICTURE).problems
    return Findings(off, tuple(problem.at(said(Frame.SHEET)) for problem in problems))


def _picture(kit: Kit, seen: FoundPart) -> tuple[list[Finding], float]:
    """Four edges in the frame's proportions, both diagonals from corner to corner, and the centre line between them."""
    edges, centres = (
        {tuple(path.points()) for path in seen.lines() if path.pen is pen and _length(path) > _ARMS}
        for pen in (Pen.REGISTER, Pen.CENTRE)
    )
    corners = [at for edge in edges for at in edge]
    if len(edges) != 4 or len(centres) != 3:
        return [finding(Frame.NO_FRAME)], 0.0
    (left, low), (right, high) = map(min, zip(*corners, strict=True)), map(max, zip(*corners, strict=True))
    middle = (left + right) / 2
    ratio = float(kit.frame.outer_width.mm / kit.frame.outer_height.mm)
    wanted = {
        ((left, low), (right, high)),
        ((left, high), (right, low)),
        ((middle, low), (middle, high)),
    }
    ends = [min(_apart(found, each) for each in wanted) for found in centres]
    off = max(abs((right - left) - ratio * (high - low)), *ends)
    return ([finding(Frame.OFF, micrometres=off * 1000)] if off > LIMIT else []), off


def _apart(found: Sequence[Point], other: Sequence[tuple[float, float]]) -> float:
    """How far the ends of two lines lie apart, whichever way each runs: what lies upright may begin at either end."""
    (a, b), (c, d) = found, other
    return min(max(math.dist(a, c), math.dist(b, d)), max(math.dist(a, d), math.dist(b, c)))


def _length(path: Curve) -> float:
    return math.dist(path.start, path.steps[0].end)
