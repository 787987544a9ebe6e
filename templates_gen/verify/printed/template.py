"""A template for notches, pegs or nails, as its pieces show it, checked against the kit's numbers alone.

Heights are distances in mm from the outermost line of the frame end, toward the weaving positive.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import cast

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Mark, Openings, Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import arrows_in
from templates_gen.verify.boxes import middle_of
from templates_gen.verify.finding import Finding, Findings, end_place, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import Expected, expected
from templates_gen.verify.printed.openings import prove_openings
from templates_gen.verify.printed.over_openings import nothing_over
from templates_gen.verify.printed.strip_form import form_of, to_weaving
from templates_gen.verify.printed.strip_marks import End, matched
from templates_gen.verify.printed.template_numbers import check_numbers
from templates_gen.verify.printed.template_words import check_template_words

_PAST = 1.6  # a cross reaches so far past its hole, in mm
_RADIUS = 0.5  # of a dot
_JOINT = 2.5  # mm about a cross, where a dot may be left out
_PAPER = 1.0  # the paper goes on at least so far past every opening, toward the weaving
_INCH, _CENTIMETRE = Fraction("6.35"), Fraction(10)  # a quarter of an inch, and 1 cm


@dataclass(frozen=True, slots=True)
class _Template:
    """What the kit asks for: openings by their marks, the way to the weaving, the units along it."""

    wanted: Expected
    end: End
    openings: list[Opening]
    up: int
    units: dict[float, bool]


def prove_template(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one template; numbers and words are read where they are real (`on_paper`)."""
    kit, sett = plan.kit, plan.warp.sett
    end = cast(End, pieces[0].part.name.removeprefix("strip-"))
    wanted = expected(kit, sett.per_mm, sett.unit.mm)
    truth, ends, up = truth_of(kit), kit.frame.ends, to_weaving(kit, end)
    form, total = form_of(kit, end, pieces)
    if total.problems:
        return total
    marks = wanted.near if end == "near" else wanted.far
    openings = truth.filled(ends, marks, up, form)
    empty = truth.empty(ends, marks, up)
    total += prove_openings(openings, empty, truth.opening, end, pieces)
    small = _INCH if sett.unit.imperial else _CENTIMETRE
    units = dict(_units(wanted, sett.unit.mm, small, 1 if kit.weaving.start == "left" else -1))
    template = _Template(wanted, end, openings, up, units)
    for seen in pieces:
        found = _crosses(template, seen) + _dots(template, seen, len(pieces)) + _signs(template, seen)
        found += Findings(0.0, tuple(nothing_over(seen, [*openings, *empty])))
        total += found.at(seen.where)
    total += _uncovered(template, pieces)
    if on_paper and not total.problems:
        total += check_numbers(openings, truth.first_near if end == "near" else 1, end, pieces)
        total += check_template_words(plan, end, form, pieces)
    return total


def _units(wanted: Expected, unit: Fraction, small: Fraction, toward: int) -> Iterator[tuple[float, bool]]:
    """Where dots stand, counted from where winding begins, and whether each is a full one."""
    low, high = wanted.limits
    for step, full in ((small, False), (unit, True)):
        at = Fraction(0)
        while at <= high - low:
            yield float(wanted.start + toward * at), full
            at += step


def _uncovered(template: _Template, pieces: Sequence[FoundPart]) -> Findings:
    """The marks that lie beyond all pieces of their template, where no piece by itself would miss them."""
    reach = [(seen.part.box[0], seen.part.box[2]) for seen in pieces]
    places = [*(each.x for each in template.openings), *map(float, template.wanted.limits)]
    beyond = sum(1 for x in places if not any(left <= x <= right for left, right in reach))
    return Findings(0.0, (finding(Strips.TOO_SHORT, marks=beyond).at(end_place(template.end)),) if beyond else ())


def _crosses(template: _Template, seen: FoundPart) -> Findings:
    """An upright through the middle of every hole, as far past it on both sides; the paper beyond all openings."""
    left, _, right, _ = seen.part.box
    holes = [each for each in template.openings if each.round]
    hairs = [
        Opening((x + end.x) / 2, (y + end.y) / 2, abs(x - end.x), abs(y - end.y))
        for (x, y), ((end, _),), pen, _ in seen.lines()
        if pen is Pen.HELP and abs(x - end.x) < abs(y - end.y)
    ]
    wrong, off = list[Finding](), 0.0
    for hole in holes:
        own = [hair for hair in hairs if abs(hair.x - hole.x) <= hole.across]
        off_by = [max(abs(h.x - hole.x), abs(h.y - hole.y), h.across, abs(h.up - hole.up - 2 * _PAST)) for h in own]
        whole = left + hole.across / 2 + LIMIT < hole.x < right - hole.across / 2 - LIMIT
        if len(off_by) > 1 or (whole and not off_by) or any(each > LIMIT for each in off_by):
            wrong.append(finding(Openings.CROSS))
        else:
            off = max(off, *off_by, 0.0)
    if len(hairs) > len(holes):
        wrong.append(finding(Openings.CROSS))
    edge = max((template.up * point.y for path in seen.paths(Pen.CUT) for point in path.points()), default=0.0)
    if not all(template.up * each.y + each.up / 2 + _PAPER <= edge for each in template.openings):
        wrong.append(finding(Openings.PAPER))
    return Findings(off, tuple(once(wrong)))


def _dots(template: _Template, seen: FoundPart, pieces: int) -> Findings:
    """Open dots at small units and full ones at marking units, all of one size in one row."""
    left, _, right, _ = seen.part.box
    dots = [(*_middle(path), full) for path, full in _circles(seen)]
    rows = [y for _, y, _ in dots]
    row = rows[0] if rows else 0.0
    wrong = [] if all(abs(y - row) <= LIMIT for y in rows) else [finding(Openings.DOTS)]
    joints = seen.part.datum if pieces > 1 else ()
    crosses = [point.x for point in joints if abs(point.y - row) < _JOINT]

    def must(x: float) -> bool:
        inside = left + _RADIUS < x < right - _RADIUS
        return inside and not any(abs(x - other) < _JOINT for other in crosses)

    found = Findings(0.0, tuple(wrong))
    for full in (False, True):
        there = [x for x, _, is_full in dots if is_full == full]
        asked = [x for x, is_full in template.units.items() if is_full == full]
        near = [x for x in asked if must(x) or any(abs(x - other) <= _RADIUS for other in there)]
        found += matched(Mark.UNIT, near, there)
    return found


def _circles(seen: FoundPart) -> Iterator[tuple[Curve, bool]]:
    """Every dot, and whether it is full."""
    for shape in seen.shapes():
        path = shape.contours[0] if isinstance(shape, Region) else shape
        full = isinstance(shape, Region) and shape.pen is Pen.SOLID
        if isinstance(path, Curve) and (full or shape.pen is Pen.UNIT) and path.steps and path.steps[0].through:
            yield path, full


def _middle(path: Curve) -> tuple[float, float]:
    """The middle of a circle that is as large as a dot; of another one, no place at all."""
    x, y = middle_of(path)
    even = all(abs(math.dist(point, (x, y)) - _RADIUS) <= LIMIT for point in path.points())
    return (x, y) if even else (math.inf, y)


def _signs(template: _Template, seen: FoundPart) -> Findings:
    """The line of the centre, and an arrow that points to the weaving."""
    left, _, right, _ = seen.part.box
    centre = [
        (x + end.x) / 2
        for (x, y), ((end, _),), pen, _ in seen.lines()
        if pen is Pen.CENTRE_SHORT and abs(x - end.x) <= LIMIT < abs(y - end.y)
    ]
    found = matched(Mark.CENTRE, [0.0] if left <= 0 <= right else [], centre)
    way = "up" if template.up > 0 else "down"
    ways = [arrow.way for arrow in arrows_in(seen.shapes()) if not _is_blade(seen, arrow.at.y)]
    if any(each != way for each in ways):
        found += Findings(0.0, (finding(Openings.ARROW, found=ways[0], wanted=way),))
    return found


def _is_blade(seen: FoundPart, y: float) -> bool:
    """Whether it lies along the cut edge, where scissors stand."""
    return any(abs(point.y - y) < 1.0 for path in seen.paths(Pen.CUT) for point in path.points())
