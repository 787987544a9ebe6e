"""The marks of a strip, found on the sheets from the part's own crosses and held against the kit's numbers alone."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal, cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Text
from layout.drawing.sheet import Part, Sheet
from layout.paper.choice import Piece
from layout.plan import Plan
from templates_gen.verify import LIMIT
from templates_gen.verify.bars import check_bars
from templates_gen.verify.compare import NOTHING, Findings
from templates_gen.verify.crosses import Lie, crosses_on, lie_of
from templates_gen.verify.expected import Expected, expected, sett_is_sound

End = Literal["near", "far"]


@dataclass(slots=True)
class _Seen:
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


def prove(plan: Plan, sheets: Sequence[Sheet], laid: Sequence[Sequence[Piece]], *, on_paper: bool) -> Findings:
    """Every strip on `sheets`, piece by piece.

    `on_paper` sheets must carry check bars, and their totals are read; elsewhere words are outlines and are only
    compared as shapes.
    """
    sett = plan.warp.sett
    if not sett_is_sound(plan.kit, sett.per_mm, sett.unit.mm):
        return Findings(0.0, ("the sett taken does not follow from the kit's readings",))
    wanted = expected(plan.kit, sett.per_mm, sett.unit.mm)
    total = NOTHING
    told: dict[End, set[int]] = {}
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        total += _named(_sheet(wanted, sheet, pieces, told), f"sheet {number}")
        if on_paper:
            total += _named(check_bars(sheet), f"sheet {number}")
    total += _uncovered(wanted, [piece.part for pieces in laid for piece in pieces])
    return total + _untold(wanted, told) if on_paper else total


def _uncovered(wanted: Expected, parts: Sequence[Part]) -> Findings:
    """The marks that lie beyond all pieces of their strip, where no piece by itself would miss them."""
    problems = []
    for end in dict.fromkeys(_end_of(part) for part in parts):
        reach = [(part.box[0], part.box[2]) for part in parts if _end_of(part) == end]
        marks = (*(wanted.near if end == "near" else wanted.far), *wanted.edges[end], *wanted.limits)
        beyond = sum(1 for mark in marks if not any(left <= mark <= right for left, right in reach))
        if beyond:
            problems.append(f"{end} end: the strip is too short for {beyond} of its marks")
    return Findings(0.0, tuple(problems))


def _end_of(part: Part) -> End:
    return cast(End, part.name.removeprefix("strip-"))


def _untold(wanted: Expected, told: Mapping[End, set[int]]) -> Findings:
    """The running totals that stand on no piece of their strip."""
    missing = [(end, k) for end, lines in told.items() for k in range(len(wanted.lines[end])) if k not in lines]
    return Findings(0.0, tuple([f"{end} end: no total at unit line {k + 1}" for end, k in missing]))


def _named(findings: Findings, where: str) -> Findings:
    return Findings(findings.deviation, tuple(f"{where}: {problem}" for problem in findings.problems))


def _sheet(wanted: Expected, sheet: Sheet, pieces: Sequence[Piece], told: dict[End, set[int]]) -> Findings:
    """One sheet; the unit lines whose totals it tells go into `told`."""
    crosses = crosses_on(sheet)
    count = sum(len(piece.part.datum) for piece in pieces)
    if len(crosses) != count:
        return Findings(0.0, (f"{len(crosses)} register crosses where {count} were wanted",))
    total = NOTHING
    for part, _ in pieces:
        own, crosses = crosses[: len(part.datum)], crosses[len(part.datum) :]
        lie, rest = lie_of(part.datum, own)
        total += Findings(rest, () if rest <= LIMIT else (f"{part.name} is not true to scale",))
        end = _end_of(part)
        seen = _look(sheet, lie, part.box)
        total += _piece(wanted, end, part.box, seen)
        lines, wrong = _lines_told(wanted.edges[end], [str(line) for _, line in wanted.lines[end]], seen.totals)
        told.setdefault(end, set()).update(lines)
        total += wrong
    return total


def _look(sheet: Sheet, lie: Lie, box: tuple[float, float, float, float]) -> _Seen:
    seen = _Seen()
    for shape in sheet.shapes:
        if isinstance(shape, Path) and len(shape.steps) == 1:
            start, end = lie.back(shape.start), lie.back(shape.steps[0].end)
            if _inside(start, box) and _inside(end, box) and abs(start.x - end.x) < abs(start.y - end.y):
                seen.uprights.setdefault(shape.pen, []).append((start.x + end.x) / 2)
                if shape.pen is Pen.UNIT:
                    seen.units += (start.y, end.y)
                if shape.pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE, Pen.CENTRE):
                    seen.lean = max(seen.lean, abs(start.x - end.x))
        elif isinstance(shape, Text) and shape.words.isdigit():
            at = lie.back(shape.at)
            if _inside(at, box):
                seen.figures.append((at, shape.words))
    return seen


def _inside(point: Point, box: tuple[float, float, float, float]) -> bool:
    left, bottom, right, top = box
    return left - LIMIT <= point.x <= right + LIMIT and bottom - LIMIT <= point.y <= top + LIMIT


def _piece(wanted: Expected, end: End, box: tuple[float, float, float, float], seen: _Seen) -> Findings:
    """Winds, tens, units, limits and centre of one piece against what the kit's numbers ask for."""
    left, _, right, _ = box

    def within(xs: Iterable[float]) -> list[float]:
        return [x for x in xs if left <= x <= right]

    first = 0 if end == "near" else 1
    contacts = list(enumerate(map(float, wanted.near if end == "near" else wanted.far), first))
    found = Findings(seen.lean, () if seen.lean <= LIMIT else ("marks do not stand upright",))
    for pen, xs in (
        (Pen.TEN, [x for number, x in contacts if number and number % 10 == 0]),
        (Pen.MARK, [x for number, x in contacts if not (number and number % 10 == 0)]),
        (Pen.UNIT, [float(x) for x, _ in wanted.lines[end]]),
        (Pen.EDGE, [float(x) for x in wanted.limits]),
        (Pen.CENTRE, [0.0, 0.0]),
    ):
        found += _matched(pen, within(xs), seen.uprights.get(pen, []))
    return found


def _matched(pen: Pen, wanted: list[float], found: list[float]) -> Findings:
    if len(wanted) != len(found):
        return Findings(0.0, (f"{len(found)} {pen.value} marks where the kit asks for {len(wanted)}",))
    off = max((abs(one - other) for one, other in zip(sorted(wanted), sorted(found), strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (f"a {pen.value} mark is {off * 1000:.1f} micrometres off",))


def _lines_told(
    edges: Sequence[Fraction], asked: Sequence[str], found: Sequence[tuple[float, str]]
) -> tuple[list[int], Findings]:
    """Which unit lines the totals of one piece belong to: each must stand inside the unit that it ends, and be right.

    Near a joint a total may stand on one of both pieces only, so that none is missed here.
    """
    told: list[int] = []
    wrong = []
    upward = sorted(map(float, edges))
    for x, words in found:
        place = bisect_right(upward, x) - 1
        inside = 0 <= place < len(asked)
        unit = (place if edges[0] < edges[-1] else len(asked) - 1 - place) if inside else None
        if unit is None or unit in told or words != asked[unit]:
            wanted = "no total" if unit is None or unit in told else asked[unit]
            wrong.append(f"a total reads {words} where the kit asks for {wanted}")
        else:
            told.append(unit)
    return told, Findings(0.0, tuple(wrong))
