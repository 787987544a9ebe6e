"""A spacing guide, as its pieces show it, checked against the kit's numbers alone."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Region
from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Mark, Spacing
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import Expected, ends_of, expected
from templates_gen.verify.printed.fan import End, Followed
from templates_gen.verify.printed.guide_numbers import check_numbers
from templates_gen.verify.printed.guide_words import FanWords, check_words
from templates_gen.verify.printed.height import woven_mm
from templates_gen.verify.printed.strip_marks import matched
from templates_gen.verify.printed.warp_words import said_of

_TENTH, _CLOSE = 10, 1.5  # a heavy mark stands at every tenth end, where the pitch in mm is not below this
_LONGER = 0.3  # mm: by so much at least marks of tens, and of units, are longer than the others
_INK = 0.45  # half of the thick edge's line, so deep lies its middle
_SMALL = {False: Fraction(10), True: Fraction(127, 10)}  # the scale counts in cm, or in half inches

Faces = Callable[[int], bool]
"""Whether the end laid k-th is in front."""


class GuideEnd:
    """What the kit asks of one end: its x, its number from the side where winding begins, whether it is in front."""

    def __init__(self, kit: Kit, faces: Faces, k: int, count: int, pitch: Fraction) -> None:
        self.x = (2 * k + 1 - count) * pitch.numerator / (2 * pitch.denominator)  # exact up to the one division
        self.number = k + 1 if kit.weaving.start == "left" else count - k
        self.face = faces(self.number - 1)
        self.ten = self.number % _TENTH == 0
        self.pen = _PENS[self.face, self.ten and pitch >= _CLOSE]


_PENS = {
    (True, False): Pen.END_MARK,
    (True, True): Pen.TEN,
    (False, False): Pen.END_MARK_BACK,
    (False, True): Pen.TEN_BACK,
}


Units = tuple[list[tuple[float, Fraction]], list[float]]


@dataclass(slots=True)
class _Shown:
    """What one piece shows: uprights by pen, each with its x and from where to where it reaches behind the edge."""

    uprights: dict[Pen, list[tuple[float, float, float]]] = field(default_factory=dict)
    wrong: list[Finding] = field(default_factory=list)
    behind: float = 0.0

    def xs(self, pen: Pen) -> list[float]:
        """Where the uprights of one pen stand."""
        return [x for x, _, _ in self.uprights.get(pen, [])]


def prove_guide(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one guide; numbers and sentences are read where words are real (`on_paper`)."""
    end = cast(End, pieces[0].part.name.removeprefix("spacing-"))
    kit, sett = plan.kit, plan.warp.sett
    count = ends_of(kit, sett.per_mm)
    marks = expected(kit, sett.per_mm, sett.unit.mm)
    truth = truth_of(kit)

    def of(side: int) -> list[GuideEnd]:
        return [GuideEnd(kit, lambda k: truth.faces(kit, k)[side], k, count, pitch) for k in range(count)]

    pitch = 1 / sett.per_mm
    sides = of(side=0), of(side=1)
    ends = sides[end == "far"]
    way = -1 if (end == "near") == (kit.weaving.near_end == "bottom") else 1
    shown = [_look(seen, way) for seen in pieces]
    units = _units(kit, marks, sett.unit.mm, imperial=sett.unit.imperial)
    total = NOTHING
    for seen, each in zip(pieces, shown, strict=True):
        total += _piece(ends, units, seen.part.box, each).at(seen.where)
    total += _lengths(ends, units, shown) + _limits(marks, pieces, way) + _uncovered(ends, marks, pieces)
    if on_paper and not total.problems:
        first = tuple(side[0 if kit.weaving.start == "left" else -1].face for side in sides)
        back = any(not each.face for side in sides for each in side)
        fan = Followed(kit, woven_mm(plan), marks, count)
        warp, imperial, whole = said_of(kit, sett.per_mm, sett.unit), sett.unit.imperial, units[0][-1][1]
        asked = FanWords(kit, end, warp, back, first, -way, fan, imperial, whole)
        total += check_numbers(ends, units[0], pieces, pitch) + check_words(asked, pieces)
    return total


def _units(
    kit: Kit, marks: Expected, unit: Fraction, *, imperial: bool
) -> tuple[list[tuple[float, Fraction]], list[float]]:
    """Marking units with their number in cm or inches, and the small units between them, each by its x."""
    low, high = marks.limits
    turn = 1 if kit.weaving.start == "left" else -1
    whole = Fraction(127, 5) if imperial else Fraction(10)

    def steps(size: Fraction) -> list[Fraction]:
        return [size * k for k in range(int((high - low) / size) + 1)]

    large = [(float(marks.start + turn * at), at / whole) for at in steps(unit)]
    return large, [float(marks.start + turn * at) for at in steps(_SMALL[imperial]) if at % unit]


def _look(seen: FoundPart, way: int) -> _Shown:
    """Depths are counted from y = 0, the edge to the weaving; `way` is the side of it on which the guide lies."""
    shown = _Shown()
    cuts = list(seen.paths(Pen.CUT))
    depths = [way * point.y for cut in cuts for point in cut.points()]
    xs = [point.x for cut in cuts for point in cut.points()]
    if not depths or abs(min(depths)) > LIMIT:
        shown.wrong.append(finding(Spacing.EDGE))
        return shown
    shown.behind = max(depths)
    pens = {*_PENS.values(), Pen.UNIT, Pen.CENTRE_SHORT}
    for start, ((end, _),), pen, _ in seen.lines():
        if pen is Pen.EDGE:
            along = min(start.x, end.x) <= min(xs) + LIMIT and max(start.x, end.x) >= max(xs) - LIMIT
            if not along or max(abs(way * y - _INK) for y in (start.y, end.y)) > LIMIT:
                shown.wrong.append(finding(Spacing.THICK_EDGE))
        elif pen in pens:
            shallow, deep = sorted((way * start.y, way * end.y))
            shown.uprights.setdefault(pen, []).append((start.x, shallow, deep))
            if abs(start.x - end.x) > LIMIT:
                shown.wrong.append(finding(Spacing.UPRIGHT, what=Mark.END))
    if not any(pen is Pen.EDGE for _, _, pen, _ in seen.lines()):
        shown.wrong.append(finding(Spacing.THICK_EDGE))
    return shown


def _piece(ends: Sequence[GuideEnd], units: Units, box: Box, shown: _Shown) -> Findings:
    left, _, right, _ = box

    def within(xs: Iterable[float]) -> list[float]:
        return [x for x in xs if left <= x <= right]

    found = Findings(0.0, tuple(once(shown.wrong)))
    large, small = units
    for pen in _PENS.values():
        what = Mark.TEN if pen in (Pen.TEN, Pen.TEN_BACK) else Mark.END
        found += matched(what, within(end.x for end in ends if end.pen is pen), shown.xs(pen))
    found += matched(Mark.UNIT, within([*(x for x, _ in large), *small]), shown.xs(Pen.UNIT))
    return found + matched(Mark.CENTRE, within([0.0]), shown.xs(Pen.CENTRE_SHORT))


def _lengths(ends: Sequence[GuideEnd], units: Units, shown: Sequence[_Shown]) -> Findings:
    """Marks begin at the edge, those of tens all as long and longer than the others; units alike at the edge behind."""
    tens = {round(end.x, 6) for end in ends if end.ten}
    large = {round(x, 6) for x, _ in units[0]}
    found: dict[tuple[str, bool], list[float]] = {}
    off = 0.0
    for each in shown:
        for pen, uprights in each.uprights.items():
            for x, shallow, deep in uprights:
                if pen is Pen.UNIT:
                    off = max(off, abs(deep - each.behind))
                    found.setdefault(("unit", _is_in(x, large)), []).append(each.behind - shallow)
                elif pen is not Pen.CENTRE_SHORT:
                    off = max(off, abs(shallow))
                    found.setdefault(("end", _is_in(x, tens)), []).append(deep)
    alike = all(max(each) - min(each) <= LIMIT for each in found.values())
    longer = all(
        min(found[what, True]) > max(found[what, False]) + _LONGER
        for what in ("end", "unit")
        if (what, True) in found and (what, False) in found
    )
    wrong = [] if alike and longer else [finding(Spacing.LENGTHS)]
    return Findings(off, (*wrong, *([finding(Spacing.AT_EDGE, what=Mark.END)] if off > LIMIT else [])))


def _is_in(x: float, places: set[float]) -> bool:
    return any(round(x, 6) + step in places for step in (0.0, 1e-6, -1e-6)) or any(
        abs(x - place) <= LIMIT for place in places
    )


def _limits(marks: Expected, pieces: Sequence[FoundPart], way: int) -> Findings:
    """A triangle stands at each limit: upright along it, and outside of it."""
    solids = [
        shape for seen in pieces for shape in seen.shapes() if isinstance(shape, Region) and shape.pen is Pen.SOLID
    ]
    off = 0.0
    for x, out in zip(map(float, marks.limits), (-1, 1), strict=True):
        off = max(off, min((_corner_off(solid, x, out, way) for solid in solids), default=LIMIT * 2))
    return Findings(min(off, LIMIT), () if off <= LIMIT else (finding(Spacing.LIMITS),))


def _corner_off(solid: Region, x: float, out: int, way: int) -> float:
    """How far the right angle of a triangle is from the limit at `x`, its sides along the limit and the edge."""
    points = solid.contours[0].points()
    if len(points) != 3:
        return LIMIT * 2
    at_edge = [point for point in points if abs(point.y) <= LIMIT]
    deep = [point for point in points if way * point.y > 1]
    if len(at_edge) != 2 or len(deep) != 1:
        return LIMIT * 2
    inner = min(at_edge, key=lambda point: abs(point.x - x))
    outer = next(point for point in at_edge if point is not inner)
    wrong_side = out * (outer.x - x) <= 0
    return LIMIT * 2 if wrong_side else max(abs(inner.x - x), abs(deep[0].x - x))


def _uncovered(ends: Sequence[GuideEnd], marks: Expected, pieces: Sequence[FoundPart]) -> Findings:
    """What lies beyond all pieces, where no piece by itself would miss it."""
    reach = [(seen.part.box[0], seen.part.box[2]) for seen in pieces]
    xs = [*(end.x for end in ends), *map(float, marks.limits)]
    beyond = sum(1 for x in xs if not any(left <= x <= right for left, right in reach))
    return Findings(0.0, (finding(Spacing.TOO_SHORT, marks=beyond),) if beyond else ())
