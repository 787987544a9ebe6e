"""The job sheets of a kit: for each board its picture over its lists, on as few sheets as they need."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from layout.cutting.job.job import Job
from layout.cutting.job.leaders import ROUND
from layout.cutting.job.lists import Section, captions, placed
from layout.cutting.job.operations import operations_section
from layout.cutting.job.parts_list import parts_section
from layout.cutting.job.picture import board_shapes
from layout.cutting.job.safety import steps_section
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing, Point, Shape, cross
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet, SheetName
from layout.values.numerals import say_number

_APART, _LEAST = 8.0, 5.0  # mm of white between two sections, and where they would not fit otherwise
_LOWEST = 60.0  # mm: a lower picture than this is drawn only where the board itself is lower
_ARM, _UNDER = 0.5, 2.5


def job_pages(job: Job, size: tuple[float, float], words: Catalogue, metrics: FontMetrics) -> Iterator[Part]:
    """The parts of all job sheets, each for a sheet of its own, in at most `size` mm where that can be."""
    for board in range(1, len(job.works) + 1):
        yield from _of_board(job, board, size, words, metrics)


def bare_page(job: Job, words: Catalogue) -> Part:
    """What every job sheet says of itself, with nothing on it."""
    title, purpose = words.say(SheetName.NAME_JOB), _purpose(job, words)
    return Part("job-board", title, (), (), (0.0, 0.0, 0.0, 0.0), whole=True, purpose=purpose, measured=False)


def _of_board(
    job: Job, board: int, size: tuple[float, float], words: Catalogue, metrics: FontMetrics
) -> Iterator[Part]:
    width, height = size
    lists = [
        parts_section(job, board, width, words, metrics),
        operations_section(job, board, width, words, metrics),
        steps_section(job.boards.stock, width, words, metrics),
    ]
    under = captions(job, board, width, words, metrics)
    room = height - under.high - _UNDER
    beside = room - sum(each.high + _LEAST for each in lists)
    whole = width * job.boards.stock.height / job.boards.stock.width + 2 * ROUND
    high = min(whole, beside if beside >= min(_LOWEST, whole) else room)
    shapes, edges = board_shapes(job, board, width, high, words, metrics)
    drawn = _hanging(shapes, edges)
    first = Section((*drawn.shapes, *placed(under, -drawn.high - _UNDER)), drawn.high + _UNDER + under.high)
    left, low, right, top = edges
    corners = [Point(left, -top + low), Point(right, -top + low), Point(left, 0.0)]
    shift = Placing(0, 0, -(drawn.high - (top - low)) / 2)
    pages = _packed([first, *lists], height)
    for number, page in enumerate(pages):
        name, datum = ("job-board", shift.points(corners)) if number == 0 else ("job-more", None)
        yield _part(name, job, page, size, datum, words)


def _hanging(shapes: Sequence[Shape], edges: Box) -> Section:
    """The picture so that it hangs from y = 0, with as much white round the board above as below."""
    high = edges[3] + edges[1]
    return Section(tuple(Placing(0, 0, -high).shapes(shapes)), high)


def _packed(sections: Sequence[Section], height: float) -> list[list[Section]]:
    """In order, as many to a page as fit."""
    pages: list[list[Section]] = [[]]
    used = 0.0
    for section in sections:
        if pages[-1] and used + _LEAST + section.high > height + 1e-9:
            pages.append([])
        used = section.high + (used + _LEAST if pages[-1] else 0.0)
        pages[-1].append(section)
    return pages


def _part(
    name: str,
    job: Job,
    sections: Sequence[Section],
    size: tuple[float, float],
    datum: Sequence[Point] | None,
    words: Catalogue,
) -> Part:
    """One sheet's sections one under the other, with its crosses: on corners of the board, or of all."""
    shapes: list[Shape] = []
    (width, height), y = size, 0.0
    white = (height - sum(section.high for section in sections)) / max(1, len(sections) - 1)
    apart = max(_LEAST, min(_APART, white))
    for section in sections:
        shapes += placed(section, y)
        y -= section.high + apart
    low = y + apart
    found = tuple(datum or (Point(_ARM, low - _ARM), Point(width - _ARM, low - _ARM), Point(width - _ARM, _ARM)))
    hairs = [hair for point in found for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (-1.5, low - 2 * _ARM, width + _ARM, 2 * _ARM)
    return replace(bare_page(job, words), name=name, shapes=(*hairs, *shapes), datum=found, box=box)


def _purpose(job: Job, words: Catalogue) -> str:
    stock = job.boards.stock
    size = {"width": say_number(stock.width), "height": say_number(stock.height)}
    said = words.say(JobSheet.STOCK_IS, material=stock.material, thick=say_number(stock.thickness), **size)
    return words.say(SheetName.PURPOSE_JOB, boards=job.boards.count, stock=said)
