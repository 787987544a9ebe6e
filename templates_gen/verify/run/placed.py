"""Sheets with parts of several boxes: every copy proven from its own crosses, by the numbers of its own kit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import combinations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Text
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Scale
from layout.messages.roles.run import RunSheet
from templates_gen.messages.roles.proof import Proof
from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding, once, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.printed.furniture import check_gutter
from templates_gen.verify.prove import PROOFS
from templates_gen.verify.run.cutting import prove_cuts
from templates_gen.verify.run.pages import PlacedPage, RunKit, called, room_of
from templates_gen.verify.said import account

_KNIFE = 1.5  # mm between two parts, at least
_LEFT, _RIGHT, _UP = 24.0, 12.2, 17.0
_TILE = "B"


def prove_placed(page: PlacedPage, kits: Sequence[RunKit], name: str, where: int) -> Findings:
    """Page `where` of a file: `name` is that of the range."""
    place = said(Proof.SHEET, number=where)
    found, total = found_on(page.sheet, page.pieces, place)
    if not found or total.problems:
        return total
    for seen, kit in zip(found, page.kits, strict=True):
        plan = kits[kit].plan
        own = replace(seen, spoken=plan.words, in_run=True, file=(page.sheet,))
        result = PROOFS[seen.part.name](plan, [own], on_paper=True)
        if result.problems:
            what = RunProof.KIT
            problems = tuple(
                finding(what, part=seen.part.name, kit=called(plan), what=str(each)) for each in result.problems
            )
            result = replace(result, problems=problems)
        total += result
    words = kits[0].plan.words
    wrong = (*_apart(page, found), *_gutter(page, found, kits, name, words))
    return (
        total
        + check_gutter(page.sheet)
        + Findings(0.0, tuple(once(wrong))).at(place)
        + prove_cuts(page, found).at(place)
    )


def _apart(page: PlacedPage, found: Sequence[FoundPart]) -> Iterator[Finding]:
    """Every copy inside the bed, and off all others."""
    rooms = [room_of(seen) for seen in found]
    width, height = page.sheet.width, page.sheet.height
    bed = _LEFT, _UP, width - _RIGHT, height - _UP
    for seen, (left, low, right, high) in zip(found, rooms, strict=True):
        inside = left >= bed[0] - LIMIT and low >= bed[1] - LIMIT and right <= bed[2] + LIMIT and high <= bed[3] + LIMIT
        if not inside:
            yield finding(RunProof.BED, part=seen.part.name)
    for (one, room), (other, beside) in combinations(zip(found, rooms, strict=True), 2):
        if _between(room, beside) < _KNIFE - LIMIT:
            yield finding(RunProof.CLOSE, part=one.part.name, other=other.part.name)


def _between(one: Box, other: Box) -> float:
    """The white between two boxes along the wider way; negative where they meet."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def _gutter(
    page: PlacedPage, found: Sequence[FoundPart], kits: Sequence[RunKit], name: str, words: Catalogue
) -> Iterator[Finding]:
    """The words outside all parts: the range, the sheet, how often, for which kits; the scale's figures, the tile."""
    texts = [shape for shape in page.sheet.shapes if isinstance(shape, Text)]
    outside = [text for text in texts if not any(seen.holds(seen.lie.back(text.at)) for seen in found)]
    upward = [text.at._replace(x=text.at.y, y=-text.at.x) for text in outside]
    figures = {str(cut.number) for cut in page.cuts}
    there = [
        (at, text.words)
        for at, text in zip(upward, outside, strict=True)
        if text.pen is not Pen.ON_BLACK and text.words not in figures
    ]
    names = [called(kits[k].plan) for k in sorted(set(page.kits))]
    wanted = [
        words.say(RunSheet.PLACED, range=name, number=page.number, total=page.total),
        words.say(RunSheet.CUT, times=page.times),
        words.say(Scale.MILLIMETRES, length=100),
        words.say(Scale.INCHES, length=4),
    ]
    ways = [words.say(RunSheet.HOLDS, kits=words.listed(names)), words.say(RunSheet.HOLDS_MANY, kits=len(names))]
    yield from min((account(there, [*wanted, way]).wrong for way in ways), key=len)
    tiles = [text.words for text in outside if text.pen is Pen.ON_BLACK]
    if tiles != [_TILE]:
        yield finding(RunProof.ASIDE, number=_TILE)


def copies_found(pages: Sequence[PlacedPage]) -> dict[tuple[int, str], int]:
    """How often each part of each kit is printed on these pages."""
    counts: dict[tuple[int, str], int] = {}
    for page in pages:
        for piece, kit in zip(page.pieces, page.kits, strict=True):
            key = kit, piece.part.name
            counts[key] = counts.get(key, 0) + page.times
    return counts
