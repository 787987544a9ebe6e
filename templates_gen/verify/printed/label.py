"""The label of a box proven from the kit alone: its size, all that it says, the band of its weave, a link as a code."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point
from layout.messages.roles.cards import Card
from layout.plan import Plan
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.card_form import (
    Sides,
    check_inside,
    check_outline,
    check_sheet,
    lines_of,
    on_card,
    sides_of,
)
from templates_gen.verify.printed.cards_numbers import sizes_of, warp_of
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.qr import check_link
from templates_gen.verify.printed.warp_words import order_on
from templates_gen.verify.said import account

_MOST, _PICKS = 30, 3
_LEAST_BAND = 10.0  # mm
_WHITE = 0.25  # at least so much is left out beside a thread that passes over, in mm

Lines = Sequence[tuple[Point, Point]]


def prove_label(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Each label of a file."""
    sides = sides_of(plan.kit, "label")
    total = Findings(0.0, ())
    for seen in pieces:
        total += check_outline(seen, sides) + check_link(plan.kit.box.link, seen, sides)
        if on_paper:
            found = on_card(seen, sides)
            wrong = [*account(found, said_on(plan)).wrong, *check_inside(found, sides), *check_band(plan, seen, sides)]
            total += Findings(0.0, tuple(wrong)) + check_sheet(plan, seen, sides, Card.LABEL_FOR)
    return total


def said_on(plan: Plan) -> list[str]:
    """Everything that a label says."""
    kit, say = plan.kit, plan.words.say
    says = kit.box.says or say(Card.MEASURED)
    yarns = plan.words.all_of((kit.warp, kit.weft))
    return [say(Card.KIT_FOR), says, *order_on(kit), kit.name, warp_of(plan), yarns, *sizes_of(plan)]


def check_band(plan: Plan, seen: FoundPart, sides: Sides, low: float = 0.0) -> Iterator[Finding]:
    """Where there is a band: as many uprights as there are winds, or ends, up to 30, each over and under three picks
    by turns; it stands on the lower edge of the label, at y = `low`.
    """
    uprights, picks = lines_of(seen, Pen.END_MARK), lines_of(seen, Pen.PICK)
    if not uprights and not picks:
        return
    ends = ends_of(plan.kit, plan.warp.sett.per_mm)
    count = min(ends // 2 if truth_of(plan.kit).winds and ends > 1 else ends, _MOST)
    xs, ys = _places(uprights, 0), _places(picks, 1)
    bottom, top = min(one.y for one, _ in uprights), max(other.y for _, other in uprights)
    if not (xs and ys):
        yield finding(Cards.BAND, count=count)
        return
    woven = len(xs) == count and len(ys) == _PICKS and _even(xs) and _even(ys)
    inside = abs(bottom - low) <= LIMIT and top - bottom >= _LEAST_BAND and xs[0] > 0 and xs[-1] < sides[0]
    crossings = [(_passes(uprights, x, y, 0), _passes(picks, x, y, 1)) for y in reversed(ys) for x in xs]
    turns = [(k % len(xs) + k // len(xs)) % 2 == 1 for k in range(len(crossings))]
    by_turns = all(found == (over, not over) for found, over in zip(crossings, turns, strict=True))
    under = turns.count(False)
    whole = len(uprights) == len(xs) + under and len(picks) == len(ys) + len(turns) - under
    if not (woven and inside and by_turns and whole):
        yield finding(Cards.BAND, count=count)


def _places(lines: Lines, axis: int) -> list[float]:
    """Where lines run that are upright (axis 0) or flat (axis 1), each once."""
    straight = [one[axis] for one, other in lines if abs(one[axis] - other[axis]) <= LIMIT]
    places: list[float] = []
    for at in sorted(straight):
        if not places or at - places[-1] > LIMIT:
            places.append(at)
    return places if len(straight) == len(lines) else []


def _even(places: Sequence[float]) -> bool:
    step = (places[-1] - places[0]) / max(1, len(places) - 1)
    return all(abs(at - places[0] - k * step) <= LIMIT for k, at in enumerate(places))


def _passes(lines: Lines, x: float, y: float, axis: int) -> bool:
    """Whether a line runs whole through a crossing, with room beside it; else it leaves it free."""
    at, along = (x, y) if axis == 0 else (y, x)
    for one, other in lines:
        on_it = abs(one[axis] - at) <= LIMIT
        if on_it and one[1 - axis] < along + _WHITE and other[1 - axis] > along - _WHITE:
            return True
    return False
