"""The list of parts under the picture of a board: number, title, size, how many; and what the stock cannot give."""

from __future__ import annotations

from collections import Counter

from layout.cutting.job.job import Job, Kind
from layout.cutting.job.lists import FIRST, GAP, LIST_RING, RING_UP, WORDS_X, Section, ended, heading
from layout.drawing.correction import TRUE
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, is_tall, leading, right, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet
from layout.values.numerals import say_number

_ROW, _COLUMNS_APART = 5.6, 8.0


def parts_section(job: Job, board: int, width: float, words: Catalogue, metrics: FontMetrics) -> Section:
    """The kinds of parts on a board with number, size and how many; under them what the stock cannot give."""
    kinds = job.kinds(words)
    here = Counter(job.keys(board))
    sizes = JobSheet.SIZES if job.boards.stock.scale == TRUE else JobSheet.SIZES_BEFORE
    shapes, y = heading(words.say(JobSheet.PARTS), words.say(sizes), width, metrics)
    rows = [(kinds[key], count) for key, count in sorted(here.items(), key=lambda each: kinds[each[0]].number)]
    half = (width - _COLUMNS_APART) / 2
    two = len(rows) > 1 and all(_fits(kind, count, half, words, metrics) for kind, count in rows)
    wide, per = (half, -(-len(rows) // 2)) if two else (width, len(rows))
    lowest = low = y = y - FIRST
    for k, row in enumerate(rows):
        x, down = (half + _COLUMNS_APART) * (k // per), low if k % per == 0 else y
        drawn, last = _part_row(Point(x, down), row, wide, words, metrics)
        shapes += drawn
        lowest, y = min(lowest, last), last - _ROW
    why = [words.say(JobSheet.NOT_HERE, why=each) for each in job.left_out]
    return ended(shapes, lowest, why, width, metrics)


def _row_words(kind: Kind, count: int, words: Catalogue) -> tuple[str, str, str]:
    short, long = sorted((kind.part.length, kind.part.height))
    size = words.say(JobSheet.SIZE, length=say_number(long, 1), height=say_number(short, 1))
    return kind.title, size, words.say(JobSheet.TIMES, count=count)


def _widths(said: tuple[str, str, str], metrics: FontMetrics) -> float:
    title, size, times = said
    return WORDS_X + metrics.width(title, LEAD) + metrics.width(size, LEAD) + metrics.width(times, LEAD, Pen.STRONG)


def _fits(kind: Kind, count: int, wide: float, words: Catalogue, metrics: FontMetrics) -> bool:
    return _widths(_row_words(kind, count, words), metrics) + 2 * GAP <= wide


def _part_row(
    at: Point, row: tuple[Kind, int], wide: float, words: Catalogue, metrics: FontMetrics
) -> tuple[list[Shape], float]:
    """One entry, `wide` mm to its right end, and its last baseline: a title too long for one line goes on below."""
    title, size, times = _row_words(*row, words)
    end = at.x + wide
    times_x = end - metrics.width(times, LEAD, Pen.STRONG)
    size_x = times_x - GAP - metrics.width(size, LEAD)
    shapes: list[Shape] = [
        *ring(Point(at.x + RING, at.y + RING_UP), str(row[0].number), metrics, LIST_RING),
        right(size, LEAD, Point(times_x - GAP, at.y), metrics),
        Text(Point(times_x, at.y), LEAD, times, pen=Pen.STRONG),
    ]
    y = at.y
    for k, said in enumerate(wrap(title, LEAD, size_x - GAP - at.x - WORDS_X, metrics)):
        y -= leading(LEAD, tall=is_tall(said)) if k else 0.0
        shapes.insert(-2 if k == 0 else len(shapes), Text(Point(at.x + WORDS_X, y), LEAD, said))
    return shapes, y
