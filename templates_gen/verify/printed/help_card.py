"""The card of help and finish proven from the kit alone: its words and numbers in their order, and its pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape
from layout.messages.roles import SheetName
from layout.messages.roles.cards import HelpCard
from layout.plan import Plan
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.card_form import (
    Sides,
    check_inside,
    check_outline,
    check_sheet,
    half_of,
    lines_of,
    on_card,
    room_of,
    sides_of,
)
from templates_gen.verify.printed.cards_numbers import warp_of
from templates_gen.verify.printed.help_numbers import is_needled, is_rod, steps_of, troubles_of
from templates_gen.verify.printed.warp_words import order_on
from templates_gen.verify.said import Accounted, Word, account

_NAMED = SheetName.NAME_HELP, SheetName.PURPOSE_HELP
_PICTURED = 120.0  # so wide inside a card has pictures
_MARGIN, _WIDE, _ARROW = 8.0, 40.0, 2.2
_LOW, _HIGH = 4.4, 21.4  # a picture stands so far above the middle of its ring, in mm
_CUT, _TIED, _OUTWARD, _DRAWN = 3, 4, 5, 3
_EYE, _ARCS = 0.8, 8  # mm; steps round a circle


def prove_help(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Both halves on one card with a fold between them, or on two cards."""
    wide, high = sides = _sides(plan, pieces)
    folded = high <= half_of(plan.kit)
    own = (wide, 2 * high) if folded else sides
    total = sum((check_outline(seen, own) for seen in pieces), Findings(0.0, ()))
    folds = [line for seen in pieces for line in lines_of(seen, Pen.FOLD)]
    if len(folds) != folded or any(abs(at.y - high) > LIMIT for fold in folds for at in fold):
        total += Findings(0.0, (finding(Cards.FOLD),))
    if len(pieces) != (1 if folded else 2):
        return total + Findings(0.0, (finding(Cards.PICTURES),))
    if not on_paper:
        return total
    caption = HelpCard.FOR_FOLDED if folded else HelpCard.FOR_APART
    total += sum((check_sheet(plan, seen, own, caption, _NAMED) for seen in pieces), Findings(0.0, ()))
    help_half, finish_half = (_half(pieces[k if not folded else 0], own, high, k, folded=folded) for k in (0, 1))
    wrong = [*_help(plan, *help_half, sides), *_finish(plan, *finish_half, sides, folded=folded)]
    return total + Findings(0.0, tuple(wrong))


def _sides(plan: Plan, pieces: Sequence[FoundPart]) -> Sides:
    """The sides of the card; a usual one may be as high as the paper allows, where each half has a card of its own."""
    wide, high = sides_of(plan.kit, "help")
    most = room_of(plan.kit)[1]
    drawn = max((at.y for seen in pieces for path in seen.paths(Pen.CUT) for at in path.points()), default=high)
    return (wide, most) if plan.kit.box.help is None and len(pieces) > 1 and drawn > high + LIMIT else (wide, high)


def _half(seen: FoundPart, own: Sides, high: float, which: int, *, folded: bool) -> tuple[list[Word], list[Shape]]:
    """The words and shapes of a half, its lower left corner at (0, 0) where its words are looked for."""
    low = high if folded and which == 0 else 0.0
    words = [(Point(at.x, at.y - low), said) for at, said in on_card(seen, own) if low < at.y < low + high]
    inside = [shape for shape in seen.shapes() if low < _at(shape).y < low + high]
    return words, [_lowered(shape, low) for shape in inside]


def _at(shape: Shape) -> Point:
    if isinstance(shape, Region):
        return shape.contours[0].start
    return shape.start if isinstance(shape, Curve) else shape.at


def _lowered(shape: Shape, low: float) -> Shape:
    def moved(path: Curve) -> Curve:
        steps = (step._replace(end=Point(step.end.x, step.end.y - low)) for step in path.steps)
        return path._replace(start=Point(path.start.x, path.start.y - low), steps=tuple(steps))

    if isinstance(shape, Region):
        return Region(tuple(map(moved, shape.contours)), shape.pen)
    return moved(shape) if isinstance(shape, Curve) else shape


def _help(plan: Plan, words: list[Word], shapes: list[Shape], sides: Sides) -> Iterator[Finding]:
    """Every trouble with its remedies under it, one after the other; two arrows inward."""
    say, troubles = plan.words.say, troubles_of(plan)
    wanted = [say(HelpCard.HELP), say(HelpCard.HELP_IS), plan.kit.name, warp_of(plan), *order_on(plan.kit)]
    wanted += [said for each in troubles for said in each]
    found = account(words, wanted)
    yield from found.wrong
    yield from check_inside(words, sides)
    if not found.wrong:
        yield from _in_order([said for each in troubles for said in each], found)
    if _pictured(sides):
        ways = [(arrow.at.x, arrow.way) for arrow in _arrows(shapes)]
        if [way for _, way in sorted(ways)] != ["right", "left"]:
            yield finding(Cards.ARROWS)


def _in_order(said: Sequence[str], found: Accounted) -> Iterator[Finding]:
    heights = [found.places[words][0].y for words in said]
    for one, other, words in zip(heights, heights[1:], said[1:], strict=False):
        if other >= one:
            yield finding(Cards.ORDER, words=words)


def _finish(plan: Plan, words: list[Word], shapes: list[Shape], sides: Sides, *, folded: bool) -> Iterator[Finding]:
    """Every step beside its number; the cut and the knot at the two middle ends, and arrows outward from there."""
    say, steps = plan.words.say, steps_of(plan)
    purpose = HelpCard.FINISH_ROD if is_rod(plan) else HelpCard.FINISH_CUT
    order = [] if folded else order_on(plan.kit)
    found = account(words, [say(HelpCard.FINISH), say(purpose), say(HelpCard.TENSION), *order, *steps])
    yield from found.wrong
    yield from check_inside(words, sides)
    rings = [_middle(shape) for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.RING]
    numbers = {said: at for at, said in words if said.isdigit() and any(dist(at, ring) < 2.4 for ring in rings)}
    if found.wrong:
        return
    for number, step in enumerate(steps, 1):
        at, own = found.places[step][0], numbers.get(str(number))
        if own is None or not (0 < at.x - own.x < 7 and abs(at.y - own.y) < 1):
            yield finding(Cards.ORDER, words=step)
    if len(rings) != len(steps):
        yield finding(Cards.PICTURES)
    elif _pictured(sides):
        places = [numbers[str(number)] for number in range(1, len(steps) + 1)]
        yield from _pictures(plan, [min(rings, key=lambda ring: dist(ring, at)) for at in places], shapes)


def _pictures(plan: Plan, rings: Sequence[Point], shapes: Sequence[Shape]) -> Iterator[Finding]:
    """What stands over each ring."""
    boxes = [[shape for shape in shapes if _over(ring, _at(shape))] for ring in rings]
    if not all(any(shape.pen is Pen.WEFT for shape in box) for box in boxes):
        yield finding(Cards.PICTURES)
        return
    ways = [[arrow.way for arrow in sorted(_arrows(box), key=lambda arrow: arrow.at.x)] for box in boxes]
    pointing, there = (_DRAWN, ["right"]) if is_rod(plan) else (_OUTWARD, ["left", "right"])
    wanted = [there if number == pointing else [] for number in range(1, len(rings) + 1)]
    if ways != wanted:
        yield finding(Cards.ARROWS)
    if is_rod(plan):
        return
    middles = [ring.x - 2.4 + _WIDE / 2 for ring in rings]
    eyes = list(_eyes(boxes[_CUT - 1]))
    cut = middles[_CUT - 1]
    if len(eyes) != 2 or not all(eye.x <= cut <= eye.x + 4.85 for eye in eyes):
        yield finding(Cards.MIDDLE, number=_CUT)
    knots = list(_knots(boxes[_TIED - 1]))
    tied = [abs(knot.x - middles[_TIED - 1]) <= LIMIT for knot in knots]
    if tied != ([] if is_needled(plan) else [True]):
        yield finding(Cards.MIDDLE, number=_TIED)


def _over(ring: Point, at: Point) -> bool:
    return -3 < at.x - ring.x < _WIDE and _LOW - 0.1 <= at.y - ring.y <= _HIGH + 0.1


def _pictured(sides: Sides) -> bool:
    return sides[0] - 2 * _MARGIN >= _PICTURED


def _arrows(shapes: Sequence[Shape]) -> list[Arrow]:
    return [arrow for arrow in arrows_in(shapes) if abs(dist((0, 0), arrow.ahead) - _ARROW) < 0.01]


def _eyes(shapes: Sequence[Shape]) -> Iterator[Point]:
    """The middle of each eye of scissors."""
    for shape in shapes:
        if isinstance(shape, Curve) and shape.pen is Pen.OUTLINE and len(shape.steps) == _ARCS:
            at = _middle(shape)
            if abs(dist(shape.start, at) - _EYE) <= LIMIT:
                yield at


def _knots(shapes: Sequence[Shape]) -> Iterator[Point]:
    """The middle of each filled disc."""
    for shape in shapes:
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == _ARCS:
            yield _middle(shape.contours[0])


def _middle(path: Curve) -> Point:
    points = path.points()[:-1]
    return Point(sum(point.x for point in points) / len(points), sum(point.y for point in points) / len(points))
