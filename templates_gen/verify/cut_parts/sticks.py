"""Sticks and the reference square, proven from kit and stock alone."""

from __future__ import annotations

import math
from collections.abc import Sequence

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.messages.roles import CutWord, Unit
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.found_cuts import FoundCut, every_point, matched, straight_sides, xs, ys
from templates_gen.verify.cut_parts.lettering import areas, broken, prove_engraved
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart

_PASSES = 40  # mm by which a shed stick passes each side, unless the kit says; once more on purpose
_SQUARE = 50.0


def prove_shed_stick(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """It rests on both sides of the frame and passes them, and its ends are half round, with no straight side."""
    cut = FoundCut(seen, stock, "x")
    outline = cut.outline
    given = plan.kit.amounts.room.stick_past
    edge, past = float(plan.kit.frame.outer_width.mm) / 2, float(given.mm) if given else _PASSES
    left, right = min(xs(outline)) + cut.beside("x"), max(xs(outline)) - cut.beside("x")
    total = matched(CutMark.STICK_PAST, [past, past], [-edge - left, right - edge])
    text = plan.words.say(CutWord.ON_STICK, kit=plan.kit.name)
    total += prove_engraved(areas(cut), (), broken(text), may_end=True)
    return total + (NOTHING if _half_round(cut, (left, right)) else Findings(0.0, (finding(Cut.NOT_ROUND),)))


def _half_round(cut: FoundCut, ends: tuple[float, float]) -> bool:
    """Whether there are two straight sides alone, each from one half circle to the other, and only arcs beside them.

    A kerf moves a point of an arc outward by half its width at most.
    """
    left, right = ends
    low, high = min(ys(cut.outline)) + cut.beside("y"), max(ys(cut.outline)) - cut.beside("y")
    radius, middle = (high - low) / 2, (low + high) / 2
    most = max(cut.beside("x"), cut.beside("y"))
    sides = straight_sides([cut.outline])
    bends = [Point(left + radius, middle), Point(right - radius, middle)]
    off = [min(math.dist(point, bend) for bend in bends) - radius for point in every_point(cut.outline)]
    reach = sorted(sorted((one.x, other.x)) for one, other in sides)
    return (
        len(sides) == len(bends)
        and all(abs(x - bend.x) <= LIMIT for side in reach for x, bend in zip(side, bends, strict=True))
        and all(-LIMIT <= each <= most + LIMIT for each in off)
    )


def prove_stick_ends(plan: Plan, stock: Stock, ends: Sequence[FoundPart]) -> Findings:
    """The same of a drawing that shows both ends alone, and says how long and how wide the whole stick is."""
    cuts = [FoundCut(seen, stock, "x") for seen in ends]
    given = plan.kit.amounts.room.stick_past
    reach = float(plan.kit.frame.outer_width.mm) / 2 + (float(given.mm) if given else _PASSES)
    total, sides, levels = NOTHING, list[int](), list[float]()
    for cut in cuts:
        paths = cut.paths(Pen.THROUGH)
        points = [point for path in paths for point in every_point(path)]
        side = -1 if min(x for x, _ in points) < 0 else 1
        sides.append(side)
        levels += [y for _, y in points]
        end = max(side * x for x, _ in points) - cut.beside("x")
        total += matched(CutMark.STICK_PAST, [reach], [end])
        if not _ends_round(cut, paths, points, side * end):
            total += Findings(0.0, (finding(Cut.NOT_ROUND),))
    if sorted(sides) != [-1, 1]:
        return total + Findings(0.0, (finding(Cut.ENDS, found=len(ends)),))
    text = plan.words.say(CutWord.ON_STICK, kit=plan.kit.name)
    total += prove_engraved([area for cut in cuts for area in areas(cut)], (), broken(text), may_end=True)
    sizes = 2 * (reach + cuts[0].beside("x")), max(levels) - min(levels)
    said = {shape.words for shape in ends[0].sheet.shapes if isinstance(shape, Text)}
    missing = [size for size in sizes if said.isdisjoint(_said_of(plan, size))]
    return total + Findings(0.0, tuple(finding(Cut.SIZE, size=size) for size in missing))


def _said_of(plan: Plan, size: float) -> set[str]:
    """What may be said of a size that was read: it may lie on either side of a rounding."""
    return {plan.words.say(Unit.MM, number=say_number(size + off, 1)) for off in (-LIMIT, 0.0, LIMIT)}


def _ends_round(cut: FoundCut, paths: Sequence[Curve], points: Sequence[Point], end: float) -> bool:
    """Whether two straight sides alone run from a half circle at `end` to where the stick is broken off."""
    low, high = min(y for _, y in points), max(y for _, y in points)
    radius, middle = (high - low) / 2 - cut.beside("y"), (low + high) / 2
    bend = Point(end - math.copysign(radius, end), middle)
    sides = straight_sides(paths)
    starts = sorted(abs(one.x) for side in sides for one in side)
    most = max(cut.beside("x"), cut.beside("y"))
    off = [math.dist(at, bend) - radius for at in points if abs(at.x) > abs(bend.x) + LIMIT]
    return (
        len(sides) == 2
        and starts[1] - starts[0] <= LIMIT
        and all(abs(x - abs(bend.x)) <= LIMIT for x in starts[2:])
        and all(-LIMIT <= each <= most + LIMIT for each in off)
    )


def prove_square(_: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """The square measures 50 mm both ways; it is not drawn for a kerf, since nothing runs it."""
    squares = [path for path in FoundCut(seen, stock, stock.grain).paths(Pen.REFERENCE) if len(path.steps) == 3]
    found = [max(at(path)) - min(at(path)) for path in squares for at in (xs, ys)]
    return matched(CutMark.SQUARE, [_SQUARE, _SQUARE], found)
