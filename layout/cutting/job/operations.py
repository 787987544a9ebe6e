"""The operations of a job in their order: sign, colour, amount, and blanks for what the shop sets."""

from __future__ import annotations

from layout.cutting.job.job import OPERATION_WORDS, Job, amount, time_words
from layout.cutting.job.lists import FIRST, GAP, LIST_RING, RING_UP, RULE, WORDS_X, Section, ended, heading
from layout.cutting.job.swatches import SWATCH, swatch
from layout.cutting.stock.colours import called
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text, line
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, SMALL, right
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet

_OPERATION, _BLANKS_FROM, _BLANKS_APART, _BLANK = 6.8, 8.0, 5.0, 11.0


def operations_section(job: Job, board: int, width: float, words: Catalogue, metrics: FontMetrics) -> Section:
    """Each operation in its order with its colour and amount on a board, and blanks for the shop's settings."""
    stock, work = job.boards.stock, job.works[board - 1]
    rows = [(name, words.say(role), amount(name, work, words)) for name, role in OPERATION_WORDS.items()]
    colours = [_colour_words(stock, name, words) for name in OPERATION_WORDS]
    name_x = WORDS_X + SWATCH + 3.0
    colour_x = name_x + max(metrics.width(name, LEAD, Pen.STRONG) for _, name, _ in rows) + GAP
    much = words.say(JobSheet.HOW_MUCH)
    widest = max([metrics.width(much, SMALL), *(metrics.width(many, LEAD) for *_, many in rows)])
    amount_x = colour_x + max(metrics.width(each, SMALL) for each in colours) + GAP + widest
    narrow = width - amount_x - _BLANKS_FROM < 3 * _BLANK + 2 * _BLANKS_APART
    if narrow:
        amount_x = colour_x + widest
    blanks = _blanks(amount_x + _BLANKS_FROM, width)
    shapes, y = heading(words.say(JobSheet.ORDER), "", width, metrics)
    shapes.append(right(much, SMALL, Point(amount_x, y + RULE), metrics))
    settings = (JobSheet.POWER, JobSheet.SPEED, JobSheet.PASSES)
    shapes += [Text(Point(x, y + RULE), SMALL, words.say(role)) for (x, _), role in zip(blanks, settings, strict=True)]
    y -= FIRST + 0.8
    for number, ((operation, name, many), colour) in enumerate(zip(rows, colours, strict=True), 1):
        shapes += ring(Point(RING, y + RING_UP), str(number), metrics, LIST_RING)
        shapes += swatch(operation, Point(WORDS_X, y + RING_UP))
        shapes.append(Text(Point(name_x, y), LEAD, name, pen=Pen.STRONG))
        shapes.append(Text(Point(name_x, y - 3.6) if narrow else Point(colour_x, y), SMALL, colour))
        shapes.append(right(many, LEAD, Point(amount_x, y), metrics))
        shapes += [line(Point(x, y - 0.8), Point(end, y - 0.8), Pen.HELP) for x, end in blanks]
        y -= _OPERATION + (3.4 if narrow else 0.0)
    y += _OPERATION
    said = [words.say(JobSheet.ORDER_IS), time_words(work, stock, words)]
    return ended(shapes, y, [words.paragraph(said)], width, metrics)


def _colour_words(stock: Stock, operation: str, words: Catalogue) -> str:
    colour = stock.operations[operation].colour
    return words.say(JobSheet.COLOUR_IS, colour=called(colour), code=colour)


def _blanks(first: float, width: float) -> list[tuple[float, float]]:
    """From where to where the three lines to write on reach."""
    wide = (width - first - 2 * _BLANKS_APART) / 3
    return [(first + k * (wide + _BLANKS_APART), first + k * (wide + _BLANKS_APART) + wide) for k in range(3)]
