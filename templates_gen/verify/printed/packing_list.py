"""The packing list proven from the kit alone: every row once, with its amount and a box to tick beside it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.messages.roles.cards import Card
from layout.plan import Plan
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.box_list import Listed, box_list
from templates_gen.verify.printed.card_form import (
    Sides,
    check_inside,
    check_outline,
    check_sheet,
    lines_of,
    on_card,
    sides_of,
)
from templates_gen.verify.printed.cards_numbers import warp_of
from templates_gen.verify.printed.label import check_band, said_on
from templates_gen.verify.printed.qr import check_link
from templates_gen.verify.printed.warp_words import order_on
from templates_gen.verify.said import Accounted, Word, account

_TICK, _CAPITALS, _LEAD = 3.8, 0.35, 9.5 * 25.4 / 72
_APART = 1000.0  # mm: cards are laid one under the other, so far apart
_LEVEL = 0.01


class _Face(NamedTuple):
    """A card of the list the right way up: its words, its boxes and the lines to write on."""

    words: list[Word]
    boxes: list[Point]
    lines: list[tuple[Point, Point]]


def prove_packing_list(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """All cards of a list together."""
    sides = sides_of(plan.kit, "list")
    total = sum((check_outline(seen, sides) for seen in pieces), Findings(0.0, ()))
    if on_paper:
        faces = [_face(seen, sides) for seen in pieces]
        total += Findings(0.0, tuple(_list(plan, faces, sides)))
        total += sum((check_sheet(plan, seen, sides, Card.LIST_FOR) for seen in pieces), Findings(0.0, ()))
    return total


def prove_folded(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Label and list on one card, the list upside down under the label; then what had no room there."""
    wide, high = sides = sides_of(plan.kit, "list")
    both, (first, *others) = (wide, 2 * high), pieces
    total = check_outline(first, both) + check_link(plan.kit.box.link, first, both)
    total += sum((check_outline(seen, sides) for seen in others), Findings(0.0, ()))
    folds = lines_of(first, Pen.FOLD)
    if len(folds) != 1 or any(abs(at.y - high) > LIMIT for at in folds[0]):
        total += Findings(0.0, (finding(Cards.FOLD),))
    if not on_paper:
        return total
    label = [(at, words) for at, words in on_card(first, both) if at.y > high]
    raised = [(Point(at.x, at.y - high), words) for at, words in label]
    wrong = [*account(label, said_on(plan)).wrong, *check_inside(raised, sides), *check_band(plan, first, both, high)]
    wrong += _list(plan, [_under(first, sides), *(_face(seen, sides) for seen in others)], sides)
    total += Findings(0.0, tuple(wrong)) + check_sheet(plan, first, both, Card.FOLDED_FOR)
    return total + sum((check_sheet(plan, seen, sides, Card.LIST_FOR) for seen in others), Findings(0.0, ()))


def _face(seen: FoundPart, sides: Sides) -> _Face:
    squares = (path for path in seen.paths(Pen.OUTLINE) if path.closed and len(path.steps) == 3)
    return _Face(on_card(seen, sides), [at for path in squares for at in _square(path)], lines_of(seen, Pen.HELP))


def _under(seen: FoundPart, sides: Sides) -> _Face:
    """The lower half of a card, turned the right way up."""
    wide, high = sides
    words, boxes, lines = _face(seen, sides)

    def turned(at: Point) -> Point:
        return Point(wide - at.x, high - at.y)

    below = [(turned(at), said) for at, said in words if at.y < high]
    flat = [(turned(other), turned(one)) for one, other in lines if one.y < high]
    return _Face(below, [Point(at.x - _TICK, at.y - _TICK) for at in map(turned, boxes)], flat)


def _square(path: Curve) -> Iterator[Point]:
    """The lower left corner of a box to tick."""
    left, low, right, high = box_of(path)
    if abs(right - left - _TICK) <= LIMIT and abs(high - low - _TICK) <= LIMIT:
        yield Point(left, low)


def _list(plan: Plan, faces: Sequence[_Face], sides: Sides) -> Iterator[Finding]:
    """Every row once over all cards; on each the name, the kit, blanks and cautions."""
    rows, say = box_list(plan), plan.words.say
    furniture = [say(Card.IN_BOX), say(Card.TICK), plan.kit.name, warp_of(plan), say(Card.CAUTION), *order_on(plan.kit)]
    furniture += [say(role) for role in (Card.KIT_NUMBER, Card.PACKED_BY, Card.ON)]
    total = len(faces)
    wanted = [*(row.name for row in rows), *(row.amount for row in rows), *furniture * total]
    wanted += [say(Card.OF_CARDS, number=k, total=total) for k in range(1, total + 1)] if total > 1 else []
    words = [(_lower(at, k), said) for k, face in enumerate(faces) for at, said in face.words]
    accounted = account(words, wanted)
    yield from accounted.wrong
    for face in faces:
        yield from check_inside(face.words, sides)
    boxes = [_lower(at, k) for k, face in enumerate(faces) for at in face.boxes]
    if len(boxes) != len(rows):
        yield finding(Cards.TICKS, found=len(boxes), wanted=len(rows))
    blanks = [say(role) for role in (Card.KIT_NUMBER, Card.PACKED_BY, Card.ON)]
    lines = [(_lower(one, k), _lower(other, k)) for k, face in enumerate(faces) for one, other in face.lines]
    if len(lines) != len(rows) + len(blanks) * total:
        yield finding(Cards.BLANKS, found=len(lines) - len(rows), wanted=len(blanks) * total)
    if not accounted.wrong:
        yield from _rows(rows, accounted, words, boxes)


def _lower(at: Point, card: int) -> Point:
    return Point(at.x, at.y - card * _APART)


def _rows(rows: Sequence[Listed], found: Accounted, words: Sequence[Word], boxes: Sequence[Point]) -> Iterator[Finding]:
    """Rows whose box or amount does not stand beside their name: the first words to its right on the same line."""
    for row in rows:
        places = found.places[row.name]
        if not any(_is_row(at, row.amount, words, boxes) for at in places):
            yield finding(Cards.ROW, name=row.name, amount=row.amount)


def _is_row(at: Point, amount: str, words: Sequence[Word], boxes: Sequence[Point]) -> bool:
    middle = at.y + _CAPITALS * _LEAD - _TICK / 2
    ticked = any(0 < at.x - box.x - _TICK < _TICK and abs(box.y - middle) <= _LEVEL for box in boxes)
    beside = sorted((x, said) for (x, y), said in words if abs(y - at.y) <= _LEVEL and x > at.x)
    return ticked and bool(beside) and beside[0][1] == amount
