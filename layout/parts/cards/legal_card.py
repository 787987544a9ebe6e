"""The legal card: in the maker's own words what must stand on the box; what they left out is a line to fill in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL, is_tall, leading, wrap
from layout.messages.catalogue import Role
from layout.messages.roles.cards import Card, CardNeed
from layout.parts.cards.card import card, ends_at, room_of
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_SIZES = (57.0, 74.0), (74.0, 105.0), (105.0, 148.0), (148.0, 205.0)
"""The usual card; for many words A7 and A6 upright (ISO 216), and what the usual sheet holds."""

_MARGIN, _FIRST, _PITCH, _AFTER_NAME, _SECOND = 6.0, 4.0, 7.1, 1.6, 5.2
_AGE_LINE, _UNDER = 12.25, 0.5


class Row(NamedTuple):
    """One thing that is asked for: its name, its key in the kit file, the maker's words, and how many lines it has."""

    name: Role
    key: str
    said: tuple[str, ...]
    lines: int = 1


def rows(plan: Plan) -> tuple[Row, ...]:
    """What stands on the card but for cautions, in order."""
    legal = plan.kit.legal
    return (
        Row(Card.MAKER, "legal.maker", _said(legal.maker)),
        Row(Card.ADDRESS, "legal.address", legal.address, 2),
        Row(Card.CONTACT, "legal.contact", _said(legal.contact)),
        Row(Card.BATCH, "legal.batch", _said(legal.batch)),
        Row(Card.WARP_FIBRE, "legal.warp_fibre", _said(legal.warp_fibre)),
        Row(Card.WEFT_FIBRE, "legal.weft_fibre", _said(legal.weft_fibre)),
        Row(Card.CARE, "legal.care", _said(legal.care)),
        Row(Card.AGE, "legal.age", _said(legal.age)),
    )


def to_fill_in(plan: Plan) -> str:
    """A note to the maker that names the keys of what is left to fill in; empty where nothing is."""
    keys = [row.key for row in rows(plan) if not row.said]
    return plan.words.say(Card.FILL_IN, keys=plan.words.listed(keys)) if keys else ""


def legal_card(plan: Plan, metrics: FontMetrics) -> Part:
    """The card, larger where the maker's words need that.

    Raises FieldError on the longest of them where no card on this paper holds all.
    """
    wide, high = room_of(plan)
    for sides in ((min(each[0], wide), min(each[1], high)) for each in _SIZES):
        shapes, low = _drawn(plan, sides[0], metrics)
        if low >= -sides[1]:
            break
    else:
        raise _refusal(plan, sides)
    placed = Placing(0, 0, sides[1]).shapes(shapes)
    return card(plan, "legal-card", sides, placed, plan.words.say(Card.LEGAL_FOR), metrics)


def _refusal(plan: Plan, sides: tuple[float, float]) -> FieldError:
    longest = max(rows(plan), key=lambda row: sum(map(len, row.said)))
    got = f"{sum(map(len, longest.said))}"
    wide, high = (say_number(side) for side in sides)
    nothing = "[]" if longest.name is Card.ADDRESS else '""'
    example = f"{longest.key.partition('.')[2]} = {nothing}"
    return FieldError(longest.key, CardNeed.LEGAL, got, example, width=wide, height=high)


def _said(words: str) -> tuple[str, ...]:
    return (words,) if words else ()


def _drawn(plan: Plan, wide: float, metrics: FontMetrics) -> tuple[list[Shape], float]:
    """All rows one under the other, the order last, and how far down they reach with the white under them."""
    shapes: list[Shape] = []
    y, right = -_MARGIN - _FIRST + _PITCH, wide - _MARGIN
    for row in rows(plan):
        y -= _PITCH
        name = plan.words.say(row.name)
        shapes.append(Text(Point(_MARGIN, y), SMALL, name, pen=Pen.STRONG))
        begin = _MARGIN + metrics.width(name, SMALL, Pen.STRONG) + _AFTER_NAME
        if row.said:
            texts = list(_words(row.said, begin, right, y, metrics))
            shapes += texts
            y = texts[-1].at.y
        else:
            drawn, y = _lines(plan, row, begin, right, y, metrics)
            shapes += drawn
    for words in (*plan.kit.legal.cautions, *_said(plan.ordered)):
        y -= _SECOND
        texts = list(_words((words,), _MARGIN, right, y, metrics))
        shapes += texts
        y = texts[-1].at.y
    return shapes, y - _MARGIN / 2


def _words(said: Sequence[str], begin: float, right: float, y: float, metrics: FontMetrics) -> Iterator[Text]:
    """The maker's words from `begin` on; those that have no room there in lines under it."""
    first = True
    for words in said:
        beside = metrics.width(words, SMALL) <= right - begin
        if first and not beside:
            y -= leading(SMALL)
            begin = _MARGIN
        for text in wrap(words, SMALL, right - begin, metrics):
            y -= 0.0 if first else leading(SMALL, tall=is_tall(text))
            first = False
            yield Text(Point(begin, y), SMALL, text)


def _lines(
    plan: Plan, row: Row, begin: float, right: float, y: float, metrics: FontMetrics
) -> tuple[list[Shape], float]:
    """Lines to write on, and the last baseline."""
    end, shapes = right, list[Shape]()
    if row.name is Card.AGE:
        years = plan.words.say(Card.YEARS)
        room = right - metrics.width(years, SMALL) - _AFTER_NAME
        end = min(begin + _AGE_LINE, room)
        shapes.append(ends_at(years, SMALL, Point(right, y), metrics))
    shapes.append(line(Point(begin, y - _UNDER), Point(end, y - _UNDER), Pen.HELP))
    for _ in range(row.lines - 1):
        y -= _SECOND
        shapes.append(line(Point(_MARGIN, y - _UNDER), Point(right, y - _UNDER), Pen.HELP))
    return shapes, y
