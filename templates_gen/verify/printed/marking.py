"""A marking strip, as its pieces show it, checked against the kit's numbers alone.

Heights are distances in mm from the outermost line of the frame end, toward the weaving positive.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Mark, Strips, Wraps
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, end_place, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truth import Across
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import Expected, expected
from templates_gen.verify.printed.marking_numbers import Figure, check_numbers, figures_on, in_lane
from templates_gen.verify.printed.marking_words import check_marking_words
from templates_gen.verify.printed.strip_form import form_of, to_weaving
from templates_gen.verify.printed.strip_marks import End, matched

_HEAVY = 5
_TICK, _LONG_TICK = 0.9, 1.7
_INCH, _CENTIMETRE = Fraction("6.35"), Fraction(10)  # a quarter of an inch, and 1 cm
_CENTRE = 1.1  # half the triangle of the centre
_BLADE = 1.0  # mm: the sides of an arrow head are alike, those of a blade are not


@dataclass(frozen=True, slots=True)
class _Strip:
    """What the kit asks for: marks by their numbers, heights, and which way the weaving lies and the winding goes."""

    wanted: Expected
    end: End
    marks: dict[int, float]
    across: Across
    up: int
    toward: int
    unit: Fraction
    small: Fraction


def prove_marking(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one strip; numbers and words are read where they are real (`on_paper`)."""
    kit, sett = plan.kit, plan.warp.sett
    end = cast(End, pieces[0].part.name.removeprefix("strip-"))
    wanted = expected(kit, sett.per_mm, sett.unit.mm)
    form, total = form_of(kit, end, pieces)
    if total.problems:
        return total
    first = 0 if end == "near" and wanted.wound else 1
    marks = dict(enumerate(map(float, wanted.near if end == "near" else wanted.far), first))
    across = truth_of(kit).across(kit.frame.ends, form)
    toward = 1 if kit.weaving.start == "left" else -1
    small = _INCH if sett.unit.imperial else _CENTIMETRE
    strip = _Strip(wanted, end, marks, across, to_weaving(kit, end), toward, sett.unit.mm, small)
    for seen in pieces:
        figures = figures_on(seen, strip.up) if on_paper else None
        total += (_marks(strip, seen, figures) + _signs(strip, seen)).at(seen.where)
        if not across.low:
            total += _flap(strip, seen).at(seen.where)
    total += _uncovered(strip, pieces)
    if on_paper and not total.problems:
        total += check_numbers(marks, across, end, pieces, strip.up)
        total += check_marking_words(plan, end, form, pieces)
    return total


def _uncovered(strip: _Strip, pieces: Sequence[FoundPart]) -> Findings:
    """The marks that lie beyond all pieces of their strip, where no piece by itself would miss them."""
    reach = [(seen.part.box[0], seen.part.box[2]) for seen in pieces]
    places = [*strip.marks.values(), *map(float, strip.wanted.limits)]
    beyond = sum(1 for x in places if not any(left <= x <= right for left, right in reach))
    return Findings(0.0, (finding(Strips.TOO_SHORT, marks=beyond).at(end_place(strip.end)),) if beyond else ())


def _uprights(seen: FoundPart, pen: Pen, up: int) -> Iterator[tuple[float, float, float, float]]:
    """Every upright of a pen: where it stands, from where to where it reaches, and how far it leans."""
    for (x, y), ((end, _),), drawn, _ in seen.lines():
        if drawn is pen and abs(x - end.x) < abs(y - end.y):
            low, high = sorted((up * y, up * end.y))
            yield (x + end.x) / 2, low, high, abs(x - end.x)


def _marks(strip: _Strip, seen: FoundPart, figures: Sequence[Figure] | None) -> Findings:
    """Every wind has its mark, every fifth a heavy one; it runs over all that it must cross but a number."""
    left, _, right, _ = seen.part.box
    found = Findings(0.0, ())
    for heavy, pen, name in ((True, Pen.TEN, Mark.TEN), (False, Pen.MARK, Mark.WIND)):
        there = [x for number, x in strip.marks.items() if (number % _HEAVY == 0) == heavy and left <= x <= right]
        drawn = list(_uprights(seen, pen, strip.up))
        lean = max((lean for *_, lean in drawn), default=0.0)
        found += Findings(lean, () if lean <= LIMIT else (finding(Strips.UPRIGHT),))
        runs = _together(drawn)
        found += matched(name, there, list(runs))
        short = any(not _crosses(strip.across, x, spans, figures) for x, spans in runs.items())
        found += Findings(0.0, (finding(Wraps.REACH),) if short else ())
    return found


def _together(drawn: Sequence[tuple[float, float, float, float]]) -> dict[float, list[tuple[float, float]]]:
    """From where to where the uprights reach that stand at one place: a mark may leave out a number."""
    runs: dict[float, list[tuple[float, float]]] = {}
    for x, low, high, _ in sorted(drawn):
        last = next(reversed(runs), None)
        runs.setdefault(last if last is not None and x - last <= LIMIT else x, []).append((low, high))
    return runs


def _crosses(across: Across, x: float, spans: Sequence[tuple[float, float]], figures: Sequence[Figure] | None) -> bool:
    spans = sorted(spans)
    if spans[0][0] > across.back + LIMIT or spans[-1][1] < across.marks_to - LIMIT:
        return False
    if not across.low and abs(spans[-1][1] - across.edge) > LIMIT:
        return False
    if len(spans) == 1:
        return True
    (_, low), (high, _) = spans if len(spans) == 2 else (spans[0], (math.inf, 0.0))
    numbered = figures is None or any(each.may_cover(x) for each in figures)
    return numbered and in_lane(across, low, high)


def _flap(strip: _Strip, seen: FoundPart) -> Findings:
    """The grey of the flap, the line of the centre across it, and the small scale on its free edge."""
    left, _, right, _ = seen.part.box
    across, wrong = strip.across, list[Finding]()
    greys = [shape for shape in seen.shapes() if isinstance(shape, Region) and shape.pen is Pen.TINT]
    heights = [strip.up * point.y for grey in greys for path in grey.contours for point in path.points()]
    cut = [point.x for path in seen.paths(Pen.CUT) for point in path.points()]
    sides = [point.x for grey in greys for path in grey.contours for point in path.points()]
    same = (
        heights
        and cut
        and all(
            abs(one - other) <= LIMIT
            for one, other in (
                (min(heights), across.free),
                (max(heights), across.back),
                (min(sides), min(cut)),
                (max(sides), max(cut)),
            )
        )
    )
    if not same:
        wrong.append(finding(Wraps.FLAP))
    centre = [x for x, *_ in _uprights(seen, Pen.CENTRE_SHORT, strip.up)]
    found = matched(Mark.CENTRE, [0.0] if left <= 0 <= right else [], centre)
    ticks = list(_uprights(seen, Pen.UNIT, strip.up))
    asked = {float(x): long for x, long in _scale(strip) if left <= x <= right}
    found += matched(Mark.UNIT, list(asked), [x for x, *_ in ticks])
    if not found.problems:
        for (_, low, high, _), long in zip(sorted(ticks), (asked[x] for x in sorted(asked)), strict=True):
            if abs(low - across.free) > LIMIT or abs(high - low - (_LONG_TICK if long else _TICK)) > LIMIT:
                wrong.append(finding(Wraps.TICKS))
    return found + Findings(0.0, tuple(once(wrong)))


def _scale(strip: _Strip) -> Iterator[tuple[Fraction, bool]]:
    """Where the ticks of the small scale stand, and whether each is a long one: counted from where winding begins."""
    low, high = strip.wanted.limits
    for unit, long in ((strip.unit, True), (strip.small, False)):
        at = Fraction(0)
        while at <= high - low:
            if long or at % strip.unit:
                yield strip.wanted.start + strip.toward * at, long
            at += unit


def _signs(strip: _Strip, seen: FoundPart) -> Findings:
    """The triangle of the centre, arrows between marks to the weaving, and the way of winding."""
    left, _, right, _ = seen.part.box
    across, up, wrong, centres, ways = strip.across, strip.up, list[Finding](), list[float](), list[str]()
    for tip, foot, wide in _triangles(seen):
        if abs(tip.y - foot.y) < abs(tip.x - foot.x):
            ways.append("right" if tip.x > foot.x else "left")
        elif up * tip.y > across.edge - LIMIT:
            centres.append(tip.x)
            if not up * foot.y < across.edge - 1:
                wrong.append(finding(Wraps.CENTRE))
        elif up * (tip.y - foot.y) < 0 or any(abs(tip.x - x) < wide / 2 for x in strip.marks.values()):
            wrong.append(finding(Wraps.ARROW))
    shown = left + _CENTRE <= 0 <= right - _CENTRE
    if len(centres) > 1 or (shown and not centres) or any(abs(x) > LIMIT for x in centres):
        wrong.append(finding(Wraps.CENTRE))
    way = "right" if strip.toward > 0 else "left"
    if any(each != way for each in ways):
        wrong.append(finding(Wraps.WAY, found=ways[0], wanted=way))
    return Findings(max(map(abs, centres), default=0.0), tuple(once(wrong)))


def _triangles(seen: FoundPart) -> Iterator[tuple[Point, Point, float]]:
    """Tip, middle of the side opposite, and the length of that side, of every filled triangle."""
    for shape in seen.shapes():
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == 2:
            tip, one, other = shape.contours[0].points()
            if abs(math.dist(tip, one) - math.dist(tip, other)) > _BLADE:
                continue  # half of a pair of scissors
            yield tip, Point((one.x + other.x) / 2, (one.y + other.y) / 2), math.dist(one, other)
