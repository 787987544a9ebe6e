"""The shop card of each kit: its name, sizes, what lies in the box and what that weighs, and a blank for the price."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from functools import reduce

from layout.box.weights import Weight
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, cross, line, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, NAME, SMALL
from layout.kit.box import CARDS
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import Count, Unit
from layout.messages.roles.buying import ShopCard
from layout.parts.contents import contents
from layout.parts.hanging import Hanging, rows_of, stack
from layout.parts.tables.ruled import Column, Row, ruled
from layout.plan import Plan
from layout.values.by_rule import by_rule
from layout.values.numerals import say_number
from layout.yarns.yarn_counts import OUNCE_G

SHOP_CARD = "shop-card"

WIDE, HIGH = float(CARDS["a6"].width.mm), float(CARDS["a6"].height.mm)
"""A card is A6 across (ISO 216)."""

_MARGIN, _APART, _ARM, _GAP, _FIRST, _LESS = 8.0, 6.0, 0.5, 3.0, 6.0, 2.6
_PRICE, _BLANK = 12.0, 60.0
_KG = 1000


def cards_on(height: float) -> int:
    """How many cards stand one under the other in a field so high; at least one."""
    return max(1, int((height + _APART) // (HIGH + _APART)))


def shop_cards(kits: Sequence[tuple[Plan, Weight]], words: Catalogue, metrics: FontMetrics) -> Part:
    """The cards of these kits one under the other, to be cut out, each in its own language; `words` are the sheet's."""
    shapes: list[Shape] = []
    low = 0.0
    for k, (plan, weight) in enumerate(kits):
        top = -k * (HIGH + _APART)
        low = top - HIGH
        shapes += [rectangle(0, low, WIDE, top, Pen.CUT), *Placing(0, 0, top).shapes(_card(plan, weight, metrics))]
    datum = (Point(3, low + 3), Point(WIDE - 3, low + 3), Point(WIDE - 3, -3))
    hairs: list[Shape] = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    name, purpose = words.say(ShopCard.NAME), words.say(ShopCard.PURPOSE)
    box = (-_ARM, low - _ARM, WIDE + _ARM, _ARM)
    return Part(SHOP_CARD, name, (*hairs, *shapes), datum, box, whole=True, purpose=purpose, measured=False)


def _card(plan: Plan, weight: Weight, metrics: FontMetrics) -> list[Shape]:
    """One card, its upper left corner at (0, 0)."""
    wide, room = WIDE - 2 * _MARGIN, HIGH - 2 * _MARGIN - _PRICE
    names = [line.name for line in contents(plan)]
    said = [plan.words.words_of(each) if isinstance(each, Message) else each for each in names]
    for size, kept in ((LEAD, len(said)), *((SMALL, kept) for kept in range(len(said), -1, -1))):
        shown = _shown(plan, weight, _listed(said, kept, plan.words), (wide, size), metrics)
        if shown.high <= room:
            break
    return [*shown.at(_MARGIN, -_MARGIN), *_blank(plan, metrics)]


def _listed(said: Sequence[str], kept: int, words: Catalogue) -> str:
    """The first so many names, which may hold commas, and how many more there are."""
    more = [words.say(ShopCard.MORE, number=len(said) - kept)] if kept < len(said) else []
    first, *others = [*said[:kept], *more]
    return reduce(lambda before, after: words.say(ShopCard.BETWEEN, before=before, after=after), others, first)


def _shown(plan: Plan, weight: Weight, holds: str, form: tuple[float, float], metrics: FontMetrics) -> Hanging:
    """Name, line of text and table, so wide and in letters of such a size, as high as they are."""
    wide, size = form
    name = rows_of(plan.kit.name, NAME, wide, -_FIRST, metrics, Pen.STRONG)
    blocks = [Hanging(tuple(name), -name[-1].at.y + 1.5)]
    if plan.kit.box.says:
        says = rows_of(plan.kit.box.says, LEAD, wide, -_GAP, metrics)
        blocks.append(Hanging(tuple(says), -says[-1].at.y + 1.0))
    rows = [Row(row) for row in _rows(plan, weight, holds)]
    blocks.append(ruled([Column(strong=True), Column(broken=True)], rows, wide, metrics, size))
    return stack(blocks, _LESS)


def _rows(plan: Plan, weight: Weight, holds: str) -> Iterator[tuple[str, str]]:
    """The table: sizes, warp, what the box holds, what it weighs, how large it is."""
    say, frame, box = plan.words.say, plan.kit.frame, plan.kit.box
    yield say(ShopCard.FRAME), _size(plan, frame.outer_width.mm, frame.outer_height.mm)
    yield say(ShopCard.WEAVING), _size(plan, *(side.value for side in plan.amounts.woven_mm))
    yield say(ShopCard.WARP), _facts(plan)
    yield say(ShopCard.HOLDS), holds
    yield say(ShopCard.PACKED), weight_words(plan, weight)
    if box.outside:
        sides = zip(("width", "height", "depth"), box.outside, strict=True)
        yield say(ShopCard.BOX), say(ShopCard.SIDES, **{name: _ruled(plan, side.mm) for name, side in sides})


def _facts(plan: Plan) -> str:
    return plan.words.listed((plan.sett_brief, plan.words.say(Count.ENDS, ends=plan.warp.ends), *plan.doubled))


def _size(plan: Plan, width: Fraction | float, height: Fraction | float) -> str:
    return plan.words.say(ShopCard.SIZE, width=_ruled(plan, width), height=_ruled(plan, height))


def _ruled(plan: Plan, mm: Fraction | float) -> str:
    return by_rule(mm, plan.words, imperial=plan.kit.frame.outer_width.imperial)


def weight_words(plan: Plan, weight: Weight) -> str:
    """What a packed box weighs, in kg or pounds and tenths; at least, and without what, where something is unknown."""
    say, grams = plan.words.say, weight.grams.value
    if plan.kit.frame.outer_width.imperial:
        said = say(Unit.OUNCE, number=say_number(grams / float(OUNCE_G), 1))
    elif grams < _KG:
        said = say(Unit.GRAM, number=say_number(grams, 0))
    else:
        said = say(Unit.KILOGRAM, number=say_number(grams / _KG, 1))
    if not weight.without:
        return said
    things = [plan.words.words_of(each) if isinstance(each, Message) else each for each in weight.without]
    return say(ShopCard.WITHOUT, weight=say(ShopCard.LEAST, weight=said), things=plan.words.listed(things))


def _blank(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """The word for the price and a line to write it on, at the foot; the address beside it where there is room."""
    base, word = -HIGH + _MARGIN, plan.words.say(ShopCard.PRICE)
    begin = _MARGIN + metrics.width(word, LEAD, Pen.STRONG) + 2.0
    shapes: list[Shape] = [
        Text(Point(_MARGIN, base), LEAD, word, pen=Pen.STRONG),
        line(Point(begin, base - 0.4), Point(_MARGIN + _BLANK, base - 0.4), Pen.HELP),
    ]
    link, left = plan.kit.box.link, _MARGIN + _BLANK + 4.0
    if link and (wide := metrics.width(link, SMALL)) <= WIDE - _MARGIN - left:
        shapes.append(Text(Point(WIDE - _MARGIN - wide, base), SMALL, link))
    return shapes
