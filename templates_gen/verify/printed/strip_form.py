"""The form of a strip: its fold and register lines, how far its paper reaches, and marks that cross what they mark.

All heights are distances from the outermost line of the frame end, toward the weaving positive, from the kit alone.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.kit.kit import Kit
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truth import Form
from templates_gen.verify.kinds.truths import truth_of

_PENS = (Pen.REGISTER, Pen.FOLD, Pen.HELP)
_ALONG = 0.5  # a line along a piece takes more than this share of its length; hairs of crosses do not


def to_weaving(kit: Kit, end: str) -> int:
    """+1 where the weaving lies above a frame end as the frame stands, -1 where it lies below."""
    return 1 if (end == "near") == (kit.weaving.near_end == "bottom") else -1


def form_of(kit: Kit, end: str, pieces: Sequence[FoundPart]) -> tuple[Form, Findings]:
    """Which form the lines across a strip are those of, and how far they and its paper are off."""
    up = to_weaving(kit, end)
    truth, ends = truth_of(kit), kit.frame.ends
    total, form = NOTHING, "full"
    for seen in pieces:
        found = sorted((up * at, pen.value) for at, pen in _level(seen))
        low, high = _paper_of(seen, up)
        choices = {each: truth.lines(ends, each) for each in ("full", "low")}
        wanted = {each: sorted((v, pen.value) for v, pen in lines) for each, lines in choices.items()}
        fits = [each for each, lines in wanted.items() if _alike(lines, found)]
        if not fits:
            wrong = finding(Strips.LINES).at(seen.where)
            return "full", Findings(0.0, (wrong,))
        form = fits[0]
        if len(fits) == 2 and truth.full_is_flush:
            form = "low" if list(truth.paper(ends, "full", low, high)) else "full"
        off = max((abs(v - w) for (v, _), (w, _) in zip(wanted[form], found, strict=True)), default=0.0)
        total += Findings(
            off, () if off <= LIMIT else (finding(Strips.LINE_OFF, micrometres=off * 1000).at(seen.where),)
        )
        total += Findings(0.0, tuple(wrong.at(seen.where) for wrong in truth.paper(ends, form, low, high)))
    return ("full" if form == "full" else "low"), total


def _level(seen: FoundPart) -> Iterator[tuple[float, Pen]]:
    """The lines along a piece, from edge to edge: where each lies, and its pen."""
    for (x, y), ((end, _),), pen, _ in seen.lines():
        if pen in _PENS and abs(y - end.y) <= LIMIT and abs(x - end.x) > _ALONG * seen.part.length:
            yield (y + end.y) / 2, pen


def _paper_of(seen: FoundPart, up: int) -> tuple[float, float]:
    """From where to where the paper reaches across, as it is cut out."""
    heights = [up * point.y for path in seen.paths(Pen.CUT) for point in path.points()]
    return min(heights, default=math.nan), max(heights, default=math.nan)


def _alike(wanted: Sequence[tuple[float, str]], found: Sequence[tuple[float, str]]) -> bool:
    return len(wanted) == len(found) and all(
        pen == other and abs(v - w) < 0.5 for (v, pen), (w, other) in zip(wanted, found, strict=True)
    )
