"""How the checks of a frame are set: each with its number in a ring, blanks to write on, a table; and the remedies."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, line
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, SMALL, leading, right
from layout.messages.roles import Check as Said
from layout.parts.check_items import Check
from layout.parts.frame_pull import Table
from layout.parts.hanging import Hanging, rows_of
from layout.plan import Plan

_INDENT = 4.6 + RING
_TITLE, _SENTENCE, _BLANKS, _UNDER = 3.6, 5.0, 7.2, 1.2
_ROW, _NAMES, _TABLE = 3.6, 17.0, 55.0
_AFTER_NAME, _BETWEEN = 1.6, 4.0
_REMEDY, _ABOVE_RULE, _FIRST = 46.0, 2.4, 5.2


def check_row(number: int, item: Check, wide: float, metrics: FontMetrics, beside: float = 0.0) -> Hanging:
    """One check in `wide` mm; its table stands under its words, or at x = `beside` beside them."""
    room = (beside - _BETWEEN if beside else wide) - _INDENT
    titles = rows_of(item.title, LEAD, room, -_TITLE, metrics, Pen.STRONG)
    shapes: list[Shape] = [*titles]
    y = titles[-1].at.y - _SENTENCE + leading(LEAD)
    for sentence in item.sentences:
        shapes += (says := rows_of(sentence, LEAD, room, y - leading(LEAD), metrics))
        y = says[-1].at.y
    if item.blanks:
        y -= _BLANKS
        shapes += blanks(item.blanks, room, y, metrics)
    shapes = Placing(0, _INDENT, 0).shapes(shapes)
    foot = y - _UNDER
    if item.table:
        left, top = (beside, titles[-1].at.y - _TITLE) if beside else (_INDENT, y - _UNDER)
        shapes += Placing(0, left, top).shapes(table(item.table, wide - left, metrics))
        foot = min(foot, top - len(item.table) * _ROW - _UNDER)
    return Hanging((*ring(Point(RING, -_TITLE + 1.2), str(number), metrics), *shapes), -foot)


def small_row(plan: Plan, number: int, item: Check, wide: float, metrics: FontMetrics) -> Hanging:
    """The same in small letters, title and sentences in one, for a small card."""
    room, words = wide - _INDENT, plan.words
    said = words.say(Said.TITLED, title=item.title, sentence=words.paragraph(item.sentences))
    says = rows_of(said, SMALL, room, -_TITLE, metrics)
    shapes: list[Shape] = [*says]
    y = says[-1].at.y
    if item.table:
        shapes += Placing(0, 0, y - _UNDER).shapes(table(item.table, room, metrics))
        y -= len(item.table) * _ROW + _UNDER
    if item.blanks:
        y -= 5.0
        shapes += blanks(item.blanks, room, y, metrics)
    placed = Placing(0, _INDENT, 0).shapes(shapes)
    return Hanging((*ring(Point(RING, -_TITLE + 1.0), str(number), metrics), *placed), max(-y + _UNDER, 2 * RING + 1.4))


def blanks(names: Sequence[str], wide: float, y: float, metrics: FontMetrics) -> list[Shape]:
    """Named lines to write on, side by side on the baseline y."""
    each = (wide - _BETWEEN * (len(names) - 1)) / len(names)
    shapes: list[Shape] = []
    for k, name in enumerate(names):
        x = k * (each + _BETWEEN)
        begin = x + metrics.width(name, SMALL) + _AFTER_NAME
        shapes += [Text(Point(x, y), SMALL, name), line(Point(begin, y - 0.4), Point(x + each, y - 0.4), Pen.HELP)]
    return shapes


def table(rows: Table, wide: float, metrics: FontMetrics) -> list[Shape]:
    """A table from y = 0 down, the name of each row before its figures, which stand under one another."""
    shapes: list[Shape] = []
    for number, (name, *figures) in enumerate(rows, 1):
        y = -number * _ROW
        shapes.append(Text(Point(0, y), SMALL, name))
        each = (wide - _NAMES) / len(figures)
        places = [Point(_NAMES + k * each, y) for k in range(1, len(figures) + 1)]
        shapes += [right(said, SMALL, at, metrics) for said, at in zip(figures, places, strict=True)]
    return shapes


def remedy_rows(plan: Plan, found: Sequence[tuple[str, str]], wide: float, metrics: FontMetrics) -> Hanging:
    """A ruled table: what is wrong, and what to do then."""
    heading = rows_of(plan.words.say(Said.REMEDIES), LEAD, wide, -_TITLE, metrics, Pen.STRONG)
    shapes: list[Shape] = [*heading]
    y = heading[-1].at.y - _ABOVE_RULE
    shapes.append(line(Point(0, y), Point(wide, y), Pen.HELP))
    for name, does in found:
        names = rows_of(name, LEAD, _REMEDY - _BETWEEN, y - _FIRST, metrics)
        says = rows_of(does, LEAD, wide - _REMEDY, y - _FIRST, metrics)
        shapes += [*names, *Placing(0, _REMEDY, 0).shapes(says)]
        y = min(names[-1].at.y, says[-1].at.y) - _ABOVE_RULE
        shapes.append(line(Point(0, y), Point(wide, y), Pen.HELP))
    return Hanging(tuple(shapes), -y + 0.2)
