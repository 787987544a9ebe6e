"""The card of help and finish: what to do when something is not right, and how the piece comes off the frame."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, line
from layout.drawing.sheet import Part
from layout.drawing.signs import RING, STEP_TILE, ring, step_tile
from layout.drawing.typeset import LEAD, NAME, SMALL, leading, wrap
from layout.drawing.weave_mark import MARK_SIDE, weave_mark
from layout.kit.box import CARDS, HELP
from layout.messages.roles import Count, SheetName, SheetNeed
from layout.messages.roles.cards import CardNeed, HelpCard
from layout.parts.cards import help_pictures as pictures
from layout.parts.cards.card import MARGIN, card, ends_at, half_of, room_of, size_of
from layout.parts.cards.help_words import finish_words, help_words
from layout.parts.hanging import Hanging, rows_of
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_NAMED = SheetName.NAME_HELP, SheetName.PURPOSE_HELP
_NAME, _UNDER_NAME, _LEFT, _BESIDE, _FIRST_SMALL = 5.75, 6.2, 14.0, 4.0, 2.0
_PICTURES_FROM = 120.0  # so wide inside a card has pictures; a smaller one has words alone
_WORDS, _FIRST, _ROW, _UNDER = 33.0, 3.4, 15.0, 1.6
_STEP_WORDS, _RING_DOWN, _APART, _UNDER_STEP = 6.6, 4.4, 6.0, 4.0
_HEAD_WHITE = 3.0
_LESS = 1.0  # a usual card that is folded may be so much lower, in mm

_HELP_PICTURES = (pictures.slack, pictures.broken, pictures.pulling_in, pictures.showing, pictures.new_weft)
_FINISH_PICTURES: dict[HelpCard, Callable[[], list[Shape]]] = {
    HelpCard.STEP_HEM: pictures.woven,
    HelpCard.STEP_WEAVE: pictures.woven,
    HelpCard.STEP_GLASSES: pictures.hand,
    HelpCard.STEP_CUT: pictures.cut,
    HelpCard.STEP_KNOT: pictures.knotted,
    HelpCard.STEP_NEEDLE: pictures.needled,
    HelpCard.STEP_OUTWARD: pictures.outward,
    HelpCard.STEP_DARN: pictures.trimmed,
    HelpCard.STEP_SLACKEN: pictures.hand,
    HelpCard.STEP_DRAW: pictures.drawn_out,
}


class _Half(NamedTuple):
    """One side of the card: its mark, name, line, and what stands in small letters at the right; what is under them."""

    mark: Sequence[Shape]
    name: str
    purpose: str
    beside: tuple[tuple[str, Pen], ...]
    body: Sequence[Hanging]


def help_card(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
    """Both halves on one card that is folded in the middle; on two cards where the paper is too small for that.

    A card of no asked size is as high as the paper allows where its words have no room on the usual one.
    Raises FieldError on box.help, or on the paper, where they find none there either.
    """
    say, half, choices = plan.words.say, half_of(plan), _choices(plan)
    found = ((sides, halves) for sides in choices if (halves := _halves(plan, sides, metrics)))
    (wide, high), halves = next(found, (choices[0], []))
    if not halves:
        raise _refusal(plan, choices[0])
    if high <= half:
        fold = line(Point(MARGIN, high), Point(wide - MARGIN, high), Pen.FOLD)
        shapes = [*Placing(0, 0, high).shapes(halves[0]), *halves[1], fold]
        return (card(plan, "help", (wide, 2 * high), shapes, say(HelpCard.FOR_FOLDED), metrics, _NAMED),)
    return tuple(card(plan, "help", (wide, high), each, say(HelpCard.FOR_APART), metrics, _NAMED) for each in halves)


def _choices(plan: Plan) -> list[tuple[float, float]]:
    """The sides in mm that a card may have, the best first."""
    wide, high = size_of(plan, plan.kit.box.help, CARDS[HELP])
    if plan.kit.box.help is not None:
        return [(wide, high)]
    half = half_of(plan)
    return [(wide, half if half < high <= half + _LESS else high), (wide, room_of(plan)[1])]


def _halves(plan: Plan, sides: tuple[float, float], metrics: FontMetrics) -> list[list[Shape]]:
    """Both halves on cards of these sides; none where one of them has no room."""
    apart = sides[1] > half_of(plan)
    halves = _help(plan, sides[0], metrics), _finish(plan, sides[0], metrics, apart=apart)
    drawn = [_drawn(each, sides, metrics) for each in halves]
    return [each for each in drawn if each is not None] if None not in drawn else []


def _drawn(half: _Half, sides: tuple[float, float], metrics: FontMetrics) -> list[Shape] | None:
    """A half on a card of these sides, its lower left corner at (0, 0); None where it has no room."""
    wide, high = sides
    inner, top = wide - 2 * MARGIN, -MARGIN
    room = inner - _LEFT
    names = rows_of(half.name, NAME, room, top - _NAME, metrics, Pen.STRONG)
    does = rows_of(half.purpose, LEAD, room, names[-1].at.y - _UNDER_NAME, metrics)
    shapes: list[Shape] = [*half.mark, *Placing(0, MARGIN + _LEFT, 0).shapes([*names, *does])]
    low = min(top - MARK_SIDE, does[-1].at.y)
    free = room - _BESIDE - max(metrics.width(text.words, NAME, Pen.STRONG) for text in names)
    if all(metrics.width(words, SMALL, pen) <= free for words, pen in half.beside):
        for k, (words, pen) in enumerate(half.beside):
            at = Point(wide - MARGIN, top - _FIRST_SMALL - k * leading(SMALL))
            shapes.append(ends_at(words, SMALL, at, metrics, pen))
    else:
        for words, pen in half.beside:
            for row in wrap(words, SMALL, inner, metrics, pen):
                low -= leading(SMALL) + 0.6
                shapes += Placing(0, MARGIN, 0).shapes(rows_of(row, SMALL, inner, low, metrics, pen))
    y = low - _HEAD_WHITE
    for each in half.body:
        shapes += each.at(MARGIN, y)
        y -= each.high
    return Placing(0, 0, high).shapes(shapes) if y >= -high + MARGIN / 2 else None


def _refusal(plan: Plan, sides: tuple[float, float]) -> FieldError:
    """A larger card, where one was asked for; else larger paper."""
    if plan.kit.box.help is None:
        return FieldError("paper.size", SheetNeed.WHOLE, plan.kit.paper.size.words, 'size = "a4"')
    said = f"{say_number(sides[0])} x {say_number(sides[1])} mm"
    usual = CARDS[HELP]
    values = {"width": say_number(usual.width.mm), "height": say_number(usual.height.mm)}
    return FieldError("box.help", CardNeed.WORDS, said, f'help = "{HELP}"', **values)


def _help(plan: Plan, wide: float, metrics: FontMetrics) -> _Half:
    say, inner = plan.words.say, wide - 2 * MARGIN
    facts = plan.words.listed((plan.sett_brief, say(Count.ENDS, ends=plan.warp.ends), *plan.doubled))
    shown = zip(_HELP_PICTURES, help_words(plan), strict=True)
    rows = [
        _row(picture, title, does, inner, metrics, first=k == 0) for k, (picture, (title, *does)) in enumerate(shown)
    ]
    mark = [weave_mark(Point(MARGIN, -MARGIN - MARK_SIDE))]
    kit = ((plan.kit.name, Pen.STRONG), (facts, Pen.TEXT), *_order(plan))
    return _Half(mark, say(HelpCard.HELP), say(HelpCard.HELP_IS), kit, rows)


def _order(plan: Plan) -> list[tuple[str, Pen]]:
    """The order of a plan in small letters; nothing where it has none."""
    return [(plan.ordered, Pen.TEXT)] if plan.ordered else []


def _row(
    picture: Callable[[], list[Shape]],
    title: str,
    does: Sequence[str],
    inner: float,
    metrics: FontMetrics,
    *,
    first: bool,
) -> Hanging:
    """A picture, what went wrong in strong letters, what to do under it; a rule over all but the first."""
    pictured = inner >= _PICTURES_FROM
    left = _WORDS if pictured else 0.0
    texts = rows_of(title, LEAD, inner - left, -_FIRST, metrics, Pen.STRONG)
    for each in does:
        texts += rows_of(each, LEAD, inner - left, texts[-1].at.y - leading(LEAD), metrics)
    low = -texts[-1].at.y + _UNDER
    shapes: list[Shape] = [] if first else [line(Point(0, 0), Point(inner, 0), Pen.HELP)]
    shapes += Placing(0, left, 0).shapes(texts)
    if pictured:
        shapes += Placing(0, 0, -pictures.HELP_HIGH - 1.2).shapes(picture())
    return Hanging(tuple(shapes), max(low, _ROW if pictured else 0.0))


def _finish(plan: Plan, wide: float, metrics: FontMetrics, *, apart: bool) -> _Half:
    """The second half; `apart` from the first it names the order too."""
    say, inner = plan.words.say, wide - 2 * MARGIN
    steps = finish_words(plan)
    rod = plan.kit.weaving.how_wound == "loose rod"
    columns = 3 if inner >= _PICTURES_FROM else 1
    each = (inner - _APART * (columns - 1)) / columns
    shown = dict(_FINISH_PICTURES)
    if HelpCard.STEP_NEEDLE in dict(steps):
        shown[HelpCard.STEP_OUTWARD] = pictures.needled_outward
    cells = [
        _step(k, shown[role], does, each, metrics, pictured=columns > 1) for k, (role, does) in enumerate(steps, 1)
    ]
    rows = [_beside(cells[k : k + columns], each + _APART) for k in range(0, len(cells), columns)]
    middle = Point(MARGIN + STEP_TILE / 2, -MARGIN - STEP_TILE / 2)
    purpose = say(HelpCard.FINISH_ROD if rod else HelpCard.FINISH_CUT)
    tile = step_tile(middle, "8", metrics)
    order = _order(plan) if apart else []
    return _Half(tile, say(HelpCard.FINISH), purpose, ((say(HelpCard.TENSION), Pen.TEXT), *order), rows)


def _beside(cells: Sequence[Hanging], step: float) -> Hanging:
    shapes = tuple(shape for k, cell in enumerate(cells) for shape in cell.at(k * step, 0))
    return Hanging(shapes, max(cell.high for cell in cells) + _UNDER_STEP)


def _step(
    number: int, drawn: Callable[[], list[Shape]], does: str, wide: float, metrics: FontMetrics, *, pictured: bool
) -> Hanging:
    """A picture over its number in a ring and what to do."""
    y = -pictures.FINISH_HIGH - _RING_DOWN if pictured else -RING
    texts = rows_of(does, LEAD, wide - _STEP_WORDS, y - 1.2, metrics)
    shapes: list[Shape] = [*ring(Point(RING, y), str(number), metrics), *Placing(0, _STEP_WORDS, 0).shapes(texts)]
    if pictured:
        shapes += Placing(0, 0, -pictures.FINISH_HIGH).shapes(drawn())
    return Hanging(tuple(shapes), max(-texts[-1].at.y, -y + RING))
