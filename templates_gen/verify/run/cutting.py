"""The cuts of a sheet made one after the other on what was read: from edge to edge, until every part is alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Text
from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.run.pages import ClaimedCut, PlacedPage, trim_of

_THIN = 0.5  # mm: so much may stay beside a part
_NEAR = 12.0  # mm: how far beyond the end of its cut a mark may reach
_BESIDE = 12.0  # mm: how far from its line a number may stand


def prove_cuts(page: PlacedPage, found: Sequence[FoundPart]) -> Findings:
    """Numbers, marks and what the cuts leave."""
    trims = [trim_of(seen) for seen in found]
    lines = [
        shape
        for shape in page.sheet.shapes
        if isinstance(shape, Curve) and shape.pen is Pen.HELP and not any(map(_holding(shape), found))
    ]
    wrong = [*_numbers(page, found, trims), *_marks(page.cuts, lines, page.sheet.width, page.sheet.height)]
    return Findings(0.0, (*wrong, *_panels(page, found, trims)))


def _holding(path: Curve):  # type: ignore[no-untyped-def]
    return lambda seen: seen.holds_all(map(seen.lie.back, path.points()))


def _numbers(page: PlacedPage, found: Sequence[FoundPart], trims: Sequence[Box]) -> Iterator[Finding]:
    """Each number once, along its cut, in its gap or beside its line, off every part."""
    texts = [shape for shape in page.sheet.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    outside = [text for text in texts if not any(seen.holds(seen.lie.back(text.at)) for seen in found)]
    for want, cut in enumerate(sorted(page.cuts, key=lambda each: each.number), 1):
        if cut.number != want:
            yield finding(RunProof.NUMBERS, found=cut.number, wanted=len(page.cuts))
            return
        mine = [text for text in outside if text.words == str(cut.number) and _along(text, cut)]
        if len(mine) != 1 or any(_on(mine[0], trim) for trim in trims):
            yield finding(RunProof.ASIDE, number=cut.number)


def _along(text: Text, cut: ClaimedCut) -> bool:
    """Whether a number stands along a cut and close to it."""
    turned = abs(text.angle - (90.0 if cut.axis == "x" else 0.0)) < LIMIT
    across, along = (text.at.x, text.at.y) if cut.axis == "x" else (text.at.y, text.at.x)
    if not turned or not cut.begin - LIMIT <= along <= cut.end + LIMIT:
        return False
    return cut.at - _BESIDE <= across <= cut.at + cut.gap + _BESIDE


def _on(text: Text, trim: Box) -> bool:
    left, low, right, high = trim
    return left + LIMIT < text.at.x < right - LIMIT and low + LIMIT < text.at.y < high - LIMIT


def _marks(cuts: Sequence[ClaimedCut], lines: Sequence[Curve], width: float, height: float) -> Iterator[Finding]:
    """A mark beyond one end of every line at least, and no mark elsewhere."""
    used: set[int] = set()
    for cut in cuts:
        for at in _lines(cut):
            mine = [
                k for k, path in enumerate(lines) if _marks_line(path, cut, at, width if cut.axis == "y" else height)
            ]
            used.update(mine)
            if not mine:
                yield finding(RunProof.MARK, number=cut.number)
    if len(used) < len(lines):
        yield finding(RunProof.STRAY)


def _marks_line(path: Curve, cut: ClaimedCut, at: float, size: float) -> bool:
    left, low, right, high = box_of(path)
    span, off = ((low, high), (left, right)) if cut.axis == "x" else ((left, right), (low, high))
    if max(abs(each - at) for each in off) > LIMIT:
        return False
    if span[1] <= cut.begin + LIMIT:
        return cut.begin - span[0] <= _NEAR
    if span[0] >= cut.end - LIMIT:
        return span[1] - cut.end <= _NEAR
    margin = 24.0 + LIMIT  # a cut right across the sheet is marked in its margins
    return (cut.begin <= 0 and span[1] <= margin) or (cut.end >= size - LIMIT and span[0] >= size - margin)


def _lines(cut: ClaimedCut) -> tuple[float, ...]:
    return (cut.at, cut.at + cut.gap) if cut.gap else (cut.at,)


def _panels(page: PlacedPage, found: Sequence[FoundPart], trims: Sequence[Box]) -> Iterator[Finding]:
    """Cuts the sheet, and looks at what is left in the end."""
    panels: list[Box] = [(0.0, 0.0, page.sheet.width, page.sheet.height)]
    for cut in sorted(page.cuts, key=lambda each: each.number):
        for at in _lines(cut):
            low, high, ends = (0, 2, (1, 3)) if cut.axis == "x" else (1, 3, (0, 2))
            met = [
                panel
                for panel in panels
                if panel[low] < at < panel[high]
                and panel[ends[0]] < cut.end - LIMIT
                and panel[ends[1]] > cut.begin + LIMIT
            ]
            whole = [panel for panel in met if abs(panel[ends[0]] - cut.begin) + abs(panel[ends[1]] - cut.end) <= LIMIT]
            if len(met) != 1 or not whole:
                yield finding(RunProof.EDGE, number=cut.number)
                return
            for seen, trim in zip(found, trims, strict=True):
                if trim[low] + LIMIT < at < trim[high] - LIMIT and _inside(trim, whole[0]):
                    yield finding(RunProof.THROUGH, number=cut.number, part=seen.part.name)
            panels.remove(whole[0])
            panels += _halves(whole[0], low, high, at)
    for seen, trim in zip(found, trims, strict=True):
        held = [panel for panel in panels if _inside(trim, panel)]
        over = max((abs(one - other) for one, other in zip(held[0], trim, strict=True)), default=0.0) if held else 0.0
        others = sum(_inside(other, held[0]) for other in trims) if held else 0
        if len(held) != 1 or others != 1 or over > _THIN + LIMIT:
            yield finding(RunProof.APART, part=seen.part.name)


def _halves(panel: Box, low: int, high: int, at: float) -> tuple[Box, Box]:
    one, other = list(panel), list(panel)
    one[high], other[low] = at, at
    return (one[0], one[1], one[2], one[3]), (other[0], other[1], other[2], other[3])


def _inside(trim: Box, panel: Box) -> bool:
    return (
        panel[0] <= trim[0] + LIMIT
        and panel[1] <= trim[1] + LIMIT
        and panel[2] >= trim[2] - LIMIT
        and panel[3] >= trim[3] - LIMIT
    )
