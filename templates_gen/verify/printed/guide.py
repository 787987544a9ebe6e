"""A spacing guide, as its pieces show it, checked against the kit's numbers alone."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box
from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Mark, Spacing
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import Expected, ends_of, expected
from templates_gen.verify.printed.fan import End, Followed
from templates_gen.verify.printed.guide_words import FanWords, check_words
from templates_gen.verify.printed.height import woven_mm
from templates_gen.verify.printed.strip_marks import matched
from templates_gen.verify.printed.warp_words import said_of

_MARKS = {
    Pen.MARK: Mark.END,
    Pen.TEN: Mark.TEN,
    Pen.UNIT: Mark.UNIT,
    Pen.EDGE: Mark.LIMIT,
    Pen.CENTRE: Mark.CENTRE,
}
_TENTH = 10
_ROOM = 10.0  # where ten ends take so many mm, every tenth must be numbered
_BAND, _FIGURE = 3.5, 1.7  # numbers stand so close behind the limits; a figure is no wider, in mm


Faces = Callable[[int], bool]
"""Whether the end laid k-th is in front."""


class _End:
    """What the kit asks of one end: its x, its number from the side where winding begins, whether it is in front."""

    def __init__(self, kit: Kit, faces: Faces, k: int, count: int, pitch: Fraction) -> None:
        self.x = float((k + Fraction(1, 2)) * pitch - count * pitch / 2)
        self.number = k + 1 if kit.weaving.start == "left" else count - k
        self.face = faces(self.number - 1)


@dataclass(slots=True)
class _Shown:
    """What one piece shows: uprights by pen with their x and how deep they reach behind the edge, and its words."""

    uprights: dict[Pen, list[tuple[float, float]]] = field(default_factory=dict)
    words: list[tuple[float, float, str]] = field(default_factory=list)
    wrong: list[Finding] = field(default_factory=list)


def prove_guide(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one guide; numbers and sentences are read where words are real (`on_paper`)."""
    end = cast(End, pieces[0].part.name.removeprefix("spacing-"))
    kit, sett = plan.kit, plan.warp.sett
    count = ends_of(kit, sett.per_mm)
    marks = expected(kit, sett.per_mm, sett.unit.mm)
    truth = truth_of(kit)
    ends = [_End(kit, lambda k: truth.faces(kit, k)[end == "far"], k, count, 1 / sett.per_mm) for k in range(count)]
    way = -1 if (end == "near") == (kit.weaving.near_end == "bottom") else 1
    shown = [_look(seen, way) for seen in pieces]
    total = NOTHING
    for seen, each in zip(pieces, shown, strict=True):
        total += _piece(marks, ends, seen.part.box, each).at(seen.where)
    total += _layers(ends, shown) + _uncovered(ends, marks, pieces)
    if on_paper and not total.problems:
        warp, back = said_of(kit, sett.per_mm, sett.unit), any(not each.face for each in ends)
        asked = FanWords(kit, end, warp, back, -way, Followed(kit, woven_mm(plan), marks, count), sett.unit.imperial)
        total += _numbers(ends, shown, 1 / sett.per_mm) + check_words(asked, pieces)
    return total


def _look(seen: FoundPart, way: int) -> _Shown:
    """Depths are counted from y = 0, the edge to the weaving; `way` is the side of it on which the guide lies."""
    shown = _Shown()
    cuts = list(seen.paths(Pen.CUT))
    depths = [way * point.y for cut in cuts for point in cut.points()]
    if not depths or abs(min(depths)) > LIMIT:
        shown.wrong.append(finding(Spacing.EDGE))
    for start, ((end, _),), pen, _ in seen.lines():
        if pen in _MARKS and abs(start.x - end.x) < abs(start.y - end.y):
            shown.uprights.setdefault(pen, []).append((start.x, max(way * start.y, way * end.y)))
            if abs(start.x - end.x) > LIMIT:
                shown.wrong.append(finding(Spacing.UPRIGHT, what=_MARKS[pen]))
            if pen is not Pen.CENTRE and abs(min(way * start.y, way * end.y)) > LIMIT:
                shown.wrong.append(finding(Spacing.AT_EDGE, what=_MARKS[pen]))
    shown.words += [(-at.y, at.x, words) for at, words in seen.words()]
    return shown


def _piece(marks: Expected, ends: Sequence[_End], box: Box, shown: _Shown) -> Findings:
    left, _, right, _ = box

    def within(xs: Iterable[float]) -> list[float]:
        return [x for x in xs if left <= x <= right]

    found = Findings(0.0, tuple(once(shown.wrong)))
    for pen, xs in (
        (Pen.TEN, [end.x for end in ends if end.number % _TENTH == 0]),
        (Pen.MARK, [end.x for end in ends if end.number % _TENTH]),
        (Pen.UNIT, [float(x) for x, _ in marks.lines["near"]]),
        (Pen.EDGE, [float(x) for x in marks.limits]),
        (Pen.CENTRE, [0.0, 0.0]),
    ):
        found += matched(_MARKS[pen], within(xs), [x for x, _ in shown.uprights.get(pen, [])])
    return found


def _layers(ends: Sequence[_End], shown: Sequence[_Shown]) -> Findings:
    """Marks of the face are all of one length, those of the back all of another that is shorter by a millimetre."""
    reach = sorted(mark for each in shown for pen in (Pen.MARK, Pen.TEN) for mark in each.uprights.get(pen, []))
    known = [(end, deep) for end in ends if (deep := _near(reach, end.x)) is not None]
    face = [deep for end, deep in known if end.face]
    back = [deep for end, deep in known if not end.face]
    one_length = all(max(deeps) - min(deeps) <= LIMIT for deeps in (face, back) if deeps)
    if one_length and (not face or not back or min(face) > max(back) + 1):
        return NOTHING
    return Findings(0.0, (finding(Spacing.LAYERS),))


def _near(reach: Sequence[tuple[float, float]], x: float) -> float | None:
    """How deep the first mark within the limit of `x` reaches."""
    k = bisect_left(reach, (x - LIMIT,))
    return reach[k][1] if k < len(reach) and reach[k][0] <= x + LIMIT else None


def _uncovered(ends: Sequence[_End], marks: Expected, pieces: Sequence[FoundPart]) -> Findings:
    """What lies beyond all pieces, where no piece by itself would miss it."""
    reach = [(seen.part.box[0], seen.part.box[2]) for seen in pieces]
    xs = [*(end.x for end in ends), *map(float, marks.limits)]
    beyond = sum(1 for x in xs if not any(left <= x <= right for left, right in reach))
    return Findings(0.0, (finding(Spacing.TOO_SHORT, marks=beyond),) if beyond else ())


def _numbers(ends: Sequence[_End], shown: Sequence[_Shown], pitch: Fraction) -> Findings:
    """Every number stands under the end it counts, and every tenth end has one where there is room."""
    by_number = {end.number: end.x for end in ends}
    limit = max(deep for each in shown for _, deep in each.uprights.get(Pen.EDGE, []))
    numbered: set[int] = set()
    wrong = []
    for each in shown:
        for down, x, words in each.words:
            if not words.isdigit() or not limit < abs(down) < limit + _BAND:
                continue
            number, wide = int(words), _FIGURE * len(words)
            at = by_number.get(number)
            if number % _TENTH or at is None or not 0 < at - x < wide:
                wrong.append(finding(Spacing.NUMBER, words=words))
            numbered.add(number)
    step = min(numbered, default=_TENTH)
    asked = set(range(step, len(ends) + 1, step))
    if asked != numbered or (step != _TENTH and _TENTH * pitch >= _ROOM and len(ends) >= _TENTH):
        wrong.append(finding(Spacing.TENTHS))
    return Findings(0.0, tuple(wrong))
