"""The label of a box: what it is, the kit's name and sizes, a band of its weave, a line of text, a link as a code."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text
from layout.drawing.sheet import Part
from layout.drawing.typeset import FIGURE, LEAD, NAME, SMALL, is_tall, leading, wrap
from layout.drawing.weave_mark import MARK_SIDE, weave_mark
from layout.kit.box import CARDS, LABEL
from layout.messages.roles import Count
from layout.messages.roles.cards import Card, CardNeed
from layout.parts.cards.band import MOST_UPRIGHTS, band
from layout.parts.cards.card import MARGIN, card, ends_at, size_of
from layout.parts.cards.qr import WHITE, module_in, modules_of, most_bytes, qr
from layout.parts.hanging import rows_of
from layout.plan import Plan
from layout.values.by_rule import by_rule
from layout.values.errors import FieldError
from layout.values.numerals import say_number
from layout.values.units import say_length

_SMALL_CARD, _SMALL_MARGIN = 80.0, 5.0  # a card less wide than this has less white inside
_FIRST_SMALL, _BESIDE, _UNDER_SMALL = 2.4, 4.0, 1.0
_NAME_DOWN, _NAME_CLOSE, _FACTS = 13.2, 9.4, 7.2
_OVER_BAND, _LEAST_BAND, _MOST_BAND = 6.0, 10.0, 24.0
_UNDER_WORDS, _UNDER_NAME = 1.2, 2.2


class _Form(NamedTuple):
    """How a label is set: the size of its name, how far that lies under the mark, whether mark and band are drawn."""

    name: float
    down: float
    mark: bool = True
    band: bool = True


_FORMS = (
    _Form(NAME, _NAME_DOWN),
    _Form(NAME, _NAME_CLOSE),
    _Form(NAME, _NAME_CLOSE, band=False),
    _Form(FIGURE, _NAME_CLOSE, band=False),
    _Form(FIGURE, FIGURE, mark=False, band=False),
)
"""From what looks best to what takes the least room."""


def label(plan: Plan, metrics: FontMetrics) -> Part:
    """The label as a card of the size that the kit asks for.

    Raises FieldError on box.label where its words find no room, and on box.link where its code does not.
    """
    sides = size_of(plan, plan.kit.box.label, CARDS[LABEL])
    return card(plan, "label", sides, face(plan, sides, "box.label", metrics), plan.words.say(Card.LABEL_FOR), metrics)


def face(plan: Plan, sides: tuple[float, float], key: str, metrics: FontMetrics) -> Sequence[Shape]:
    """What stands on a label of these sides in mm, its lower left corner at (0, 0); `key` asks for the size."""
    for form in _FORMS:
        if (found := _Face(plan, *sides, form, metrics).shapes) is not None:
            return found
    raise _refusal(plan, sides, key, metrics)


class _Face:
    """A label in one form; y from its upper edge, downward negative."""

    def __init__(self, plan: Plan, wide: float, high: float, form: _Form, metrics: FontMetrics) -> None:
        self.plan, self.wide, self.high, self.form, self.metrics = plan, wide, high, form, metrics
        self.margin = MARGIN if wide >= _SMALL_CARD else _SMALL_MARGIN
        self.right = wide - self.margin

    @property
    def shapes(self) -> Sequence[Shape] | None:
        """Everything on it; None where it has no room."""
        box = self.plan.kit.box
        head, y = self._head()
        names = rows_of(
            self.plan.kit.name, self.form.name, self.right - self.margin, y - self.form.down, self.metrics, Pen.STRONG
        )
        y = names[-1].at.y
        shapes: list[Shape] = [*head, *Placing(0, self.margin, 0).shapes(names)]
        right, code = self.right, None
        if box.link:
            if (code := self._code(y)) is None:
                return None
            right = code[1]
            shapes.append(code[0])
        facts = self._facts(y - _FACTS, right, alone=code is not None)
        if any(self.metrics.width(text.words, text.size) > right - self.margin + 0.01 for text in facts):
            return None
        low = min(text.at.y for text in facts)
        shapes += facts
        room = self.high + low
        if room < (_OVER_BAND + _LEAST_BAND if self.form.band else self.margin / 2 + _UNDER_WORDS):
            return None
        if self.form.band:
            shapes += self._band(right, low - _OVER_BAND)
        return Placing(0, 0, self.high).shapes(shapes)

    def _head(self) -> tuple[list[Shape], float]:
        """The mark and what stands beside it, and how far down they reach."""
        say, box, top = self.plan.words.say, self.plan.kit.box, -self.margin
        room = self.right - self.margin - (MARK_SIDE + _BESIDE if self.form.mark else 0.0)
        y = top - _FIRST_SMALL
        shapes: list[Shape] = []
        for k, words in enumerate(wrap(say(Card.KIT_FOR), SMALL, room, self.metrics, Pen.STRONG)):
            y -= leading(SMALL, tall=is_tall(words)) if k else 0.0
            shapes.append(ends_at(words, SMALL, Point(self.right, y), self.metrics, Pen.STRONG))
        says = (box.says or say(Card.MEASURED), *([self.plan.ordered] if self.plan.ordered else []))
        for words in (row for each in says for row in wrap(each, SMALL, room, self.metrics)):
            y -= leading(SMALL, tall=is_tall(words))
            shapes.append(ends_at(words, SMALL, Point(self.right, y), self.metrics))
        if not self.form.mark:
            return shapes, y - _UNDER_SMALL
        return [weave_mark(Point(self.margin, top - MARK_SIDE)), *shapes], min(top - MARK_SIDE, y - _UNDER_SMALL)

    def _code(self, y: float) -> tuple[Shape, float] | None:
        """The code under the name, at the right, and where the words beside it end; None where it has no room."""
        modules, (side, high) = modules_of(self.plan.kit.box.link), self._code_room(y)
        module = module_in(modules, min(side, high))
        if module is None:
            return None
        white, size = WHITE * module, len(modules) * module
        corner = Point(self.right, -self.high + max(self.margin, white) + size)
        return qr(modules, corner, module), self.right - size - max(white, _BESIDE)

    def _code_room(self, y: float) -> tuple[float, float]:
        """Width and height that a code may take under a name with its last baseline at y."""
        return (self.right - self.margin) / 2, self.high + y - self.margin - _UNDER_NAME - WHITE * 0.4

    def most_bytes(self) -> int:
        """How many bytes a code holds for which there is room."""
        _, y = self._head()
        names = rows_of(
            self.plan.kit.name, self.form.name, self.right - self.margin, y - self.form.down, self.metrics, Pen.STRONG
        )
        return most_bytes(min(self._code_room(names[-1].at.y)))

    def _facts(self, y: float, right: float, *, alone: bool) -> list[Text]:
        """Sett and sizes: in pairs on one line where they have room, else one under the other."""
        warp, yarns, woven, frame = facts_of(self.plan)
        metrics, room = self.metrics, right - self.margin
        pairs = [(warp, woven), (yarns, frame)]
        wide = max(metrics.width(one, LEAD) + metrics.width(other, LEAD) for one, other in pairs)
        if not alone and wide + _BESIDE <= room:
            rows = []
            for k, (one, other) in enumerate(pairs):
                base = y - k * leading(LEAD)
                rows += [Text(Point(self.margin, base), LEAD, one), ends_at(other, LEAD, Point(right, base), metrics)]
            return rows
        texts: list[Text] = []
        for words in (warp, yarns, woven, frame):
            for row in wrap(words, LEAD, room, metrics):
                y -= leading(LEAD, tall=is_tall(row)) if texts else 0.0
                texts.append(Text(Point(self.margin, y), LEAD, row))
        return texts

    def _band(self, right: float, top: float) -> list[Shape]:
        warp = self.plan.warp
        top = min(top, -self.high + _MOST_BAND)
        return band(self.margin, right, -self.high, top, min(warp.winds or warp.ends, MOST_UPRIGHTS))


def facts_of(plan: Plan) -> Iterator[str]:
    """Sett and ends, the yarns, the sizes of weaving and frame: as the kit says them, else by a ruler."""
    words, kit = plan.words, plan.kit
    yield words.listed((plan.sett_brief, words.say(Count.ENDS, ends=plan.warp.ends), *plan.doubled))
    yield words.all_of((kit.warp, kit.weft))
    imperial = kit.frame.outer_width.imperial
    stated = (kit.weaving.width, kit.weaving.height)
    woven = (by_rule(side.value, words, imperial=imperial) for side in plan.amounts.woven_mm)
    width, height = (say_length(own, words) if own else each for own, each in zip(stated, woven, strict=True))
    yield words.say(Card.WEAVING, width=width, height=height)
    width, height = (say_length(side, words) for side in (kit.frame.outer_width, kit.frame.outer_height))
    yield words.say(Card.FRAME, width=width, height=height)


def _refusal(plan: Plan, sides: tuple[float, float], key: str, metrics: FontMetrics) -> FieldError:
    """That the link is too long for the card, else how large the card must be."""
    link, last = plan.kit.box.link, _Face(plan, *sides, _FORMS[-1], metrics)
    most = last.most_bytes() if link else 0
    if link and len(link.encode()) > most >= len("https://a.b"):
        got = f"{len(link.encode())}"
        return FieldError("box.link", CardNeed.LINK, got, 'link = "https://a.b"', most=most)
    for each in sorted(CARDS.values(), key=lambda card: card.width.mm):
        name, wide, high = each.name, float(each.width.mm), float(each.height.mm)
        if any(_Face(plan, wide, high, form, metrics).shapes is not None for form in _FORMS):
            break
    said = f"{say_number(sides[0])} x {say_number(sides[1])} mm"
    values = {"width": say_number(wide), "height": say_number(high)}
    return FieldError(key, CardNeed.WORDS, said, f'{key.partition(".")[2]} = "{name}"', **values)
