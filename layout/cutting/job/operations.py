"""The operations of a job in their order: sign, colour, amount, and blanks for what the shop sets."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.cutting.job.job import OPERATION_WORDS, Job, amount, time_words
from layout.cutting.job.lists import FIRST, GAP, LIST_RING, RING_UP, RULE, WORDS_X, Section, ended, heading
from layout.cutting.job.swatches import SWATCH, swatch
from layout.cutting.stock.colours import called
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, line
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, SMALL, right
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet

_ROW, _COLOUR, _SETTING = 6.8, 3.6, 6.8
_BLANKS_FROM, _BLANKS_APART, _BLANK, _UNDER = 8.0, 5.0, 11.0, 0.8
_SETTINGS = (JobSheet.POWER, JobSheet.SPEED, JobSheet.PASSES)
Blanks = list[tuple[float, float]]
"""From where to where each of three lines to write on reaches."""


class _Row(NamedTuple):
    operation: str
    name: str
    colour: str
    amount: str


class _Columns(NamedTuple):
    """Where names begin, where colours do (None: under the names), where amounts end, and the blanks beside, if any."""

    name: float
    colour: float | None
    amount: float
    blanks: Blanks


def operations_section(job: Job, board: int, width: float, words: Catalogue, metrics: FontMetrics) -> Section:
    """Each operation in its order with its colour and amount on a board, and blanks for the shop's settings.

    The blanks stand beside the operations, or in a small table of their own where the field is narrow.
    """
    stock, work = job.boards.stock, job.works[board - 1]
    rows = [
        _Row(name, words.say(role), _colour_words(stock, name, words), amount(name, work, words))
        for name, role in OPERATION_WORDS.items()
    ]
    columns = _columns(rows, width, words, metrics)
    shapes, y = heading(words.say(JobSheet.ORDER), "", width, metrics)
    shapes.append(right(words.say(JobSheet.HOW_MUCH), SMALL, Point(columns.amount, y + RULE), metrics))
    shapes += _labels(columns.blanks, y + RULE, words)
    y -= FIRST + 0.8
    for number, row in enumerate(rows, 1):
        shapes += _operation(number, row, columns, y, metrics)
        y -= _ROW + (0.0 if columns.colour else _COLOUR)
    y += _ROW
    if not columns.blanks:  # in a table of their own
        shapes += _settings(y, width, words, metrics)
        y -= _ROW + len(_SETTINGS) * _SETTING
    said = [words.say(JobSheet.ORDER_IS), time_words(work, stock, words)]
    return ended(shapes, y, [words.paragraph(said)], width, metrics)


def _columns(rows: Sequence[_Row], width: float, words: Catalogue, metrics: FontMetrics) -> _Columns:
    """The widest of three arrangements that has room: one line a row, colours under names, blanks apart."""
    name = WORDS_X + SWATCH + 3.0
    after = name + max(metrics.width(row.name, LEAD, Pen.STRONG) for row in rows) + GAP
    much = metrics.width(words.say(JobSheet.HOW_MUCH), SMALL)
    widest = max(much, *(metrics.width(row.amount, LEAD) for row in rows))
    least = metrics.width(words.say(JobSheet.ORDER), LEAD, Pen.STRONG) + GAP + much
    colour = max(metrics.width(row.colour, SMALL) for row in rows)
    label = max(_BLANK, *(metrics.width(words.say(role), SMALL) for role in _SETTINGS))
    for colour_x, end in ((after, after + colour + GAP + widest), (None, after + widest)):
        end = max(end, least)
        blanks = _blanks(end + _BLANKS_FROM, width)
        if blanks[0][1] - blanks[0][0] >= label:
            return _Columns(name, colour_x, end, blanks)
    return _Columns(name, None, width, [])


def _operation(number: int, row: _Row, columns: _Columns, y: float, metrics: FontMetrics) -> list[Shape]:
    colour = Point(columns.name, y - _COLOUR) if columns.colour is None else Point(columns.colour, y)
    return [
        *ring(Point(RING, y + RING_UP), str(number), metrics, LIST_RING),
        *swatch(row.operation, Point(WORDS_X, y + RING_UP)),
        Text(Point(columns.name, y), LEAD, row.name, pen=Pen.STRONG),
        Text(colour, SMALL, row.colour),
        right(row.amount, LEAD, Point(columns.amount, y), metrics),
        *_lines(columns.blanks, y),
    ]


def _lines(blanks: Blanks, y: float) -> list[Shape]:
    return [line(Point(x, y - _UNDER), Point(end, y - _UNDER), Pen.HELP) for x, end in blanks]


def _labels(blanks: Blanks, y: float, words: Catalogue) -> list[Shape]:
    return [Text(Point(x, y), SMALL, words.say(role)) for (x, _), role in zip(blanks, _SETTINGS, strict=False)]


def _settings(top: float, width: float, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """A row for each setting, with a blank for each operation under its number."""
    said = [words.say(role) for role in _SETTINGS]
    blanks = _blanks(max(metrics.width(each, SMALL) for each in said) + GAP, width)
    y = top - _ROW
    shapes: list[Shape] = []
    for number, (x, _) in enumerate(blanks, 1):
        shapes += ring(Point(x + LIST_RING, y + RING_UP), str(number), metrics, LIST_RING)
    for k, each in enumerate(said, 1):
        below = y - k * _SETTING
        shapes += [Text(Point(0, below), SMALL, each), *_lines(blanks, below)]
    return shapes


def _colour_words(stock: Stock, operation: str, words: Catalogue) -> str:
    colour = stock.operations[operation].colour
    return words.say(JobSheet.COLOUR_IS, colour=called(colour), code=colour)


def _blanks(first: float, width: float) -> Blanks:
    wide = (width - first - 2 * _BLANKS_APART) / 3
    return [(first + k * (wide + _BLANKS_APART), first + k * (wide + _BLANKS_APART) + wide) for k in range(3)]
