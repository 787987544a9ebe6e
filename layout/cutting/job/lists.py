"""What lists on the job sheet are made of: a heading over a rule, rows, small sentences; and the words under a picture.

Everything hangs down from y = 0, x from the left edge of the field, in mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.cutting.job.job import Job
from layout.cutting.stock.colours import called
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, line
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, right, wrap
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import JobSheet
from layout.values.numerals import say_number

RULE, FIRST, WORDS_X, RING_UP, LIST_RING, GAP = 2.4, 5.2, 7.0, 1.2, 2.1, 4.0
"""From a heading to its rule and on to the first row; where words begin; how far the middle of a ring lies above their
baseline, and its radius in lists; the least white between words in a row. All in mm."""

_TITLE, _BEFORE_SMALL = 2.4, 2.0


class Section(NamedTuple):
    """Shapes that hang down from y = 0, and how far."""

    shapes: tuple[Shape, ...]
    high: float


def heading(title: str, beside: str, width: float, metrics: FontMetrics) -> tuple[list[Shape], float]:
    """A title over a rule as wide as the field, and where the rule lies."""
    y = -_TITLE
    shapes: list[Shape] = [Text(Point(0, y), LEAD, title, pen=Pen.STRONG)]
    x = metrics.width(title, LEAD, Pen.STRONG) + GAP
    if beside:
        shapes.append(Text(Point(x, y), SMALL, beside))
    return [*shapes, line(Point(0, y - RULE), Point(width, y - RULE), Pen.HELP)], y - RULE


def ended(shapes: Sequence[Shape], y: float, said: Sequence[str], width: float, metrics: FontMetrics) -> Section:
    """The section with small sentences under its last baseline `y`."""
    rows = [row for each in said for row in wrap(each, SMALL, width, metrics)]
    found = list(shapes)
    if rows:
        y -= _BEFORE_SMALL
    for row in rows:
        y -= leading(SMALL, tall=is_tall(row))
        found.append(Text(Point(0, y), SMALL, row))
    return Section(tuple(found), -y - metrics.descent * LEAD)


def captions(job: Job, board: int, width: float, words: Catalogue, metrics: FontMetrics) -> Section:
    """What stands under the picture: origin, form and what is left over, the board's files, the grain."""
    stock = job.boards.stock
    free = job.boards.left_over(board)
    size = {"width": say_number(free.width, 0), "height": say_number(free.height, 0)}
    grey = stock.operations["reference"].colour
    rows = [
        (
            words.say(JobSheet.ORIGIN, colour=called(grey), code=grey),
            words.say(JobSheet.BOARD_IS, number=board, total=len(job.works), **size),
        ),
        (words.say(JobSheet.FILES, file=job.files[board - 1]), words.words_of(grain_words(stock))),
    ]
    shapes: list[Shape] = []
    y = 0.0
    if (times := job.boards.times[board - 1]) > 1:
        for row in wrap(words.say(JobSheet.CUT_TIMES, times=times), LEAD, width, metrics, Pen.STRONG):
            y -= leading(LEAD, tall=is_tall(row))
            shapes.append(Text(Point(0, y), LEAD, row, pen=Pen.STRONG))
    for one, other in rows:
        if metrics.width(one, SMALL) + metrics.width(other, SMALL) + GAP <= width:
            y -= leading(SMALL, tall=is_tall(one + other))
            shapes += [Text(Point(0, y), SMALL, one), right(other, SMALL, Point(width, y), metrics)]
            continue
        for row in (row for each in (one, other) for row in wrap(each, SMALL, width, metrics)):
            y -= leading(SMALL, tall=is_tall(row))
            shapes.append(Text(Point(0, y), SMALL, row))
    return Section(tuple(shapes), -y - metrics.descent * SMALL)


def grain_words(stock: Stock) -> Message:
    """Along which axis the grain of the stock runs, if it has one."""
    if stock.grain == "none":
        return Message(JobSheet.GRAIN_NONE)
    return Message(JobSheet.GRAIN_ALONG, {"axis": stock.grain})


def placed(section: Section, top: float) -> list[Shape]:
    """A section that hangs from y = `top`."""
    return Placing(0, 0, top).shapes(section.shapes)
