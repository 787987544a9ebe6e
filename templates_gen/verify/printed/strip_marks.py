"""The marks of a template, as its pieces show them, checked against the kit's numbers alone."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal, cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Mark, Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.expected import Expected, expected
from templates_gen.verify.printed.openings import prove_openings
from templates_gen.verify.printed.strip_form import form_of, marks_cross
from templates_gen.verify.printed.strip_words import check_arrows, check_strip_words
from templates_gen.verify.printed.warp_words import said_of

End = Literal["near", "far"]


@dataclass(slots=True)
class _Marks:
    """What one piece of a strip shows, in the part's coordinates."""

    uprights: dict[Pen, list[float]] = field(default_factory=dict)
    figures: list[tuple[Point, str]] = field(default_factory=list)
    units: list[float] = field(default_factory=list)  # the heights at which unit lines begin and end
    lean: float = 0.0

    @property
    def totals(self) -> list[tuple[float, str]]:
        """The figures that stand beside unit lines, left to right; a name may be made of figures too."""
        low, high = min(self.units, default=0.0), max(self.units, default=0.0)
        return sorted((at.x, words) for at, words in self.figures if low <= at.y <= high)


def prove_template(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one template against the kit's numbers; totals are read where words are real (`on_paper`)."""
    end = cast(End, pieces[0].part.name.removeprefix("strip-"))
    sett = plan.warp.sett
    wanted = expected(plan.kit, sett.per_mm, sett.unit.mm)
    total = _uncovered(wanted, end, pieces)
    total += prove_openings(plan.kit, end, wanted.near if end == "near" else wanted.far, pieces)
    numbered: set[int] = set()
    for seen in pieces:
        marks = _look(seen)
        total += _piece(wanted, end, seen.part.box, marks).at(seen.where)
        lines, wrong = _lines_told(wanted.edges[end], [str(line) for _, line in wanted.lines[end]], marks.totals)
        numbered.update(lines)
        total += wrong.at(seen.where)
    form, wrong = form_of(plan.kit, end, pieces)
    total += wrong + marks_cross(plan.kit, end, wanted.near if end == "near" else wanted.far, pieces)
    total += check_arrows(plan.kit, end, sett.per_mm, pieces)
    if not on_paper or total.problems:
        return total
    warp = said_of(plan.kit, sett.per_mm, sett.unit)
    return (
        total + _unnumbered(wanted, end, numbered) + check_strip_words(plan.kit, end, sett.per_mm, warp, form, pieces)
    )


def _uncovered(wanted: Expected, end: End, pieces: Sequence[FoundPart]) -> Findings:
    """The marks that lie beyond all pieces of their strip, where no piece by itself would miss them."""
    reach = [(seen.part.box[0], seen.part.box[2]) for seen in pieces]
    marks = map(float, (*(wanted.near if end == "near" else wanted.far), *wanted.edges[end], *wanted.limits))
    beyond = sum(1 for mark in marks if not any(left <= mark <= right for left, right in reach))
    return Findings(0.0, (finding(Strips.TOO_SHORT, marks=beyond).at(end_place(end)),) if beyond else ())


def _unnumbered(wanted: Expected, end: End, numbered: set[int]) -> Findings:
    """The running totals that stand on no piece of their strip."""
    missing = [k for k in range(len(wanted.lines[end])) if k not in numbered]
    return Findings(0.0, tuple(finding(Strips.NO_TOTAL, line=k + 1).at(end_place(end)) for k in missing))


def _look(seen: FoundPart) -> _Marks:
    marks = _Marks()
    for (x, y), ((end, _),), pen, _ in seen.lines():
        if abs(x - end.x) < abs(y - end.y):
            marks.uprights.setdefault(pen, []).append((x + end.x) / 2)
            if pen is Pen.UNIT:
                marks.units += (y, end.y)
            if pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE, Pen.CENTRE):
                marks.lean = max(marks.lean, abs(x - end.x))
    marks.figures += [(at, words) for at, words in seen.words() if words.isdigit()]
    return marks


def _piece(wanted: Expected, end: End, box: Box, seen: _Marks) -> Findings:
    """Winds, tens, units, limits and centre of one piece against what the kit's numbers ask for."""
    left, _, right, _ = box

    def within(xs: Iterable[float]) -> list[float]:
        return [x for x in xs if left <= x <= right]

    contacts = list(enumerate(map(float, wanted.near if end == "near" else wanted.far), 1))
    found = Findings(seen.lean, () if seen.lean <= LIMIT else (finding(Strips.UPRIGHT),))
    for pen, xs in (
        (Pen.TEN, [x for number, x in contacts if number % 10 == 0]),
        (Pen.MARK, [x for number, x in contacts if number % 10]),
        (Pen.UNIT, [float(x) for x, _ in wanted.lines[end]]),
        (Pen.EDGE, [float(x) for x in wanted.limits]),
        (Pen.CENTRE, [0.0, 0.0]),
    ):
        found += matched(_NAMES[pen], within(xs), seen.uprights.get(pen, []))
    return found


_NAMES = {
    Pen.MARK: Mark.WIND,
    Pen.TEN: Mark.TEN,
    Pen.UNIT: Mark.UNIT,
    Pen.EDGE: Mark.LIMIT,
    Pen.CENTRE: Mark.CENTRE,
}


def matched(what: Mark, wanted: Sequence[float], found: Sequence[float]) -> Findings:
    """Whether marks stand where they are wanted, and how far off the worst one is."""
    if len(wanted) != len(found):
        return Findings(0.0, (finding(Strips.COUNT, found=len(found), what=what, wanted=len(wanted)),))
    off = max((abs(one - other) for one, other in zip(sorted(wanted), sorted(found), strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (finding(Strips.OFF, what=what, micrometres=off * 1000),))


def _stray(words: str) -> Finding:
    return finding(Strips.TOTAL_STRAY, found=words)


def _lines_told(
    edges: Sequence[Fraction], asked: Sequence[str], found: Sequence[tuple[float, str]]
) -> tuple[list[int], Findings]:
    """Which unit lines the totals of one piece belong to: each must stand inside the unit that it ends, and be right.

    Near a joint a total may stand on one of both pieces only, so that none is missed here.
    """
    numbered: list[int] = []
    wrong = []
    upward = sorted(map(float, edges))
    for x, words in found:
        place = bisect_right(upward, x) - 1
        inside = 0 <= place < len(asked)
        unit = (place if edges[0] < edges[-1] else len(asked) - 1 - place) if inside else None
        if unit is None or unit in numbered or words != asked[unit]:
            stray = unit is None or unit in numbered
            wrong.append(_stray(words) if stray else finding(Strips.TOTAL, found=words, wanted=asked[unit or 0]))
        else:
            numbered.append(unit)
    return numbered, Findings(0.0, tuple(wrong))
