"""The packing list: everything in the box with a box to tick, blanks for who packed it, and the usual cautions."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, NAME, SMALL, leading, wrap
from layout.drawing.weave_mark import MARK_SIDE, weave_mark
from layout.kit.box import CARDS, LIST
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import Count
from layout.messages.roles.cards import Card, CardNeed
from layout.parts.cards.card import MARGIN, card, ends_at, size_of
from layout.parts.cards.list_rows import ListRow, in_columns
from layout.parts.check_rows import blanks
from layout.parts.contents import Line, contents
from layout.parts.hanging import Hanging, rows_of
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_NAME, _UNDER_NAME, _LEFT, _RULES = 5.75, 6.2, 14.0, 4.0
_TWO_COLUMNS, _APART = 110.0, 8.0  # from this inner width on the rows stand in two columns
_BLANKS, _OVER_BLANKS, _FOOT = 6.6, 4.0, 4.0
_LEAST_ROWS = 12.0  # in mm
_KIT = 2.4


def packing_list(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
    """The list on as many cards as it needs.

    Raises FieldError on box.list where not even one row has room.
    """
    sides = size_of(plan, plan.kit.box.list, CARDS[LIST])
    caption = plan.words.say(Card.LIST_FOR)
    found = faces(plan, sides, metrics)
    return tuple(card(plan, "packing-list", sides, shapes, caption, metrics) for shapes in found)


def faces(plan: Plan, sides: tuple[float, float], metrics: FontMetrics) -> list[list[Shape]]:
    """What stands on each card of these sides in mm, its lower left corner at (0, 0)."""
    rows = [row_of(plan.words, line) for line in contents(plan)]
    card = _Card(plan, *sides, metrics)
    columns = card.columns(rows)
    if not columns:
        raise _refusal(plan, sides, rows, metrics)
    each = [columns[k : k + card.count] for k in range(0, len(columns), card.count)]
    return [card.drawn(shown, (k, len(each))) for k, shown in enumerate(each, 1)]


def row_of(words: Catalogue, line: Line) -> ListRow:
    """A row of the list as it is printed."""
    name = words.words_of(line.name) if isinstance(line.name, Message) else line.name
    return ListRow(name, words.words_of(line.amount))


class _Foot(NamedTuple):
    """What stands under the rows, and how high that reaches from the lower edge."""

    shapes: list[Shape]
    high: float


class _Card:
    """The cards of one size; y from their upper edge, downward negative."""

    def __init__(self, plan: Plan, wide: float, high: float, metrics: FontMetrics) -> None:
        self.plan, self.wide, self.high, self.metrics = plan, wide, high, metrics
        self.inner = wide - 2 * MARGIN
        self.count = 2 if self.inner >= _TWO_COLUMNS else 1

    def columns(self, rows: Sequence[ListRow]) -> tuple[Hanging, ...]:
        """The columns of all cards: as equal as they can be where one card holds them; none where it has no room."""
        room = self._room((1, 1))
        if self.inner < _LEAST_ROWS or room < _LEAST_ROWS:
            return ()
        found = self._in_columns(rows, room)
        if len(found) > self.count:
            return self._in_columns(rows, self._room((len(rows), len(rows))))
        if self.count == len(found) == 2:  # as even as they can be
            first = self._in_columns(rows[: -(-len(rows) // 2)], room)
            if len(first) == 1 and len(even := self._in_columns(rows, first[0].high)) == 2:
                return even
        return found

    def _room(self, number: tuple[int, int]) -> float:
        """Between head and foot, in mm."""
        return self.high + self._head(number).high - self._foot().high - _RULES

    def _in_columns(self, rows: Sequence[ListRow], room: float) -> tuple[Hanging, ...]:
        return in_columns(rows, self._column, room, self.metrics)

    @property
    def _column(self) -> float:
        return (self.inner - _APART * (self.count - 1)) / self.count

    def drawn(self, columns: Sequence[Hanging], number: tuple[int, int]) -> list[Shape]:
        """One card with these columns, `number` of how many."""
        head = self._head(number)
        shapes = [*head.shapes]
        for k, column in enumerate(columns):
            shapes += column.at(MARGIN + k * (self._column + _APART), head.high - _RULES)
        return [*Placing(0, 0, self.high).shapes(shapes), *self._foot().shapes]

    def _head(self, number: tuple[int, int]) -> _Foot:
        """The mark, the name, what to do, the kit at the right; and how far down that reaches."""
        say, plan, metrics = self.plan.words.say, self.plan, self.metrics
        top, right, room = -MARGIN, self.wide - MARGIN, self.inner - _LEFT
        names = rows_of(say(Card.IN_BOX), NAME, room, top - _NAME, metrics, Pen.STRONG)
        widest = max(metrics.width(text.words, NAME, Pen.STRONG) for text in names)
        y = names[-1].at.y - _UNDER_NAME
        does = rows_of(say(Card.TICK), LEAD, room, y, metrics)
        facts = plan.words.listed((plan.sett_brief, say(Count.ENDS, ends=plan.warp.ends), *plan.doubled))
        said = [(plan.kit.name, Pen.STRONG), (facts, Pen.TEXT)]
        if plan.ordered:
            said.append((plan.ordered, Pen.TEXT))
        if number[1] > 1:
            said.append((say(Card.OF_CARDS, number=number[0], total=number[1]), Pen.TEXT))
        free = [widest, widest, *(metrics.width(text.words, LEAD) for text in does[:1])]
        fits = len(names) == 1 and all(
            metrics.width(words, SMALL, pen) <= room - wide - _RULES
            for (words, pen), wide in zip(said, free, strict=False)
        )
        shapes: list[Shape] = [weave_mark(Point(MARGIN, top - MARK_SIDE))]
        shapes += Placing(0, MARGIN + _LEFT, 0).shapes([*names, *does])
        low = min(top - MARK_SIDE, does[-1].at.y)
        if fits:
            shapes += [
                ends_at(words, SMALL, Point(right, top - _KIT - k * leading(SMALL)), metrics, pen)
                for k, (words, pen) in enumerate(said)
            ]
            return _Foot(shapes, low)
        for words, pen in said:
            for row in wrap(words, SMALL, self.inner, metrics, pen):
                low -= leading(SMALL) + (_KIT if words is plan.kit.name and row == words else 0.0)
                shapes.append(rows_of(row, SMALL, self.inner, low, metrics, pen)[0]._replace(at=Point(MARGIN, low)))
        return _Foot(shapes, low)

    def _foot(self) -> _Foot:
        """Cautions at the lower edge, and over them the blanks."""
        say, metrics = self.plan.words.say, self.metrics
        caution = wrap(say(Card.CAUTION), SMALL, self.inner, metrics)
        base = _FOOT + leading(SMALL) * (len(caution) - 1)
        shapes: list[Shape] = list(
            Placing(0, MARGIN, 0).shapes(rows_of(say(Card.CAUTION), SMALL, self.inner, base, metrics))
        )
        names = [say(role) for role in (Card.KIT_NUMBER, Card.PACKED_BY, Card.ON)]
        y = base + _BLANKS
        shapes += Placing(0, MARGIN, 0).shapes(blanks(names, self.inner, y, metrics))
        return _Foot(shapes, y + _OVER_BLANKS)


def _refusal(plan: Plan, sides: tuple[float, float], rows: Sequence[ListRow], metrics: FontMetrics) -> FieldError:
    """How large the card must be."""
    for each in sorted(CARDS.values(), key=lambda card: card.width.mm):
        name, wide, high = each.name, float(each.width.mm), float(each.height.mm)
        if _Card(plan, wide, high, metrics).columns(rows):
            break
    said = f"{say_number(sides[0])} x {say_number(sides[1])} mm"
    return FieldError(
        "box.list", CardNeed.WORDS, said, f'list = "{name}"', width=say_number(wide), height=say_number(high)
    )
