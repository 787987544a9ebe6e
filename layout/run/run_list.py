"""The run list: which page of which file is printed how often, what it holds, and how all of it is cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD
from layout.messages.catalogue import Catalogue
from layout.messages.roles.run import RunList
from layout.parts.hanging import Hanging, rows_of, stack
from layout.parts.tables.ruled import Column, Row, ruled, ruled_pages
from layout.values.numerals import say_number

RUN_LIST = "run-list"

STEPS = (RunList.STEP_SCALES, RunList.STEP_PRINT, RunList.STEP_CUT, RunList.STEP_LAY)

_ARM, _APART, _FIRST = 0.5, 5.0, 3.0
_ANY = (166.0, 120.0)


class Printing(NamedTuple):
    """Pages of a file that are printed alike: its name, the first and the last page, how often, titles, kits' names."""

    file: str
    first: int
    last: int
    times: int
    holds: tuple[str, ...]
    kits: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Totals:
    """How many sheets of paper there are, how many it would take box by box, and what is known of the placed ones.

    `least` is the area bound of all sheets, `waste` the share of the room on the `placed` ones that no part covers.
    """

    sheets: int
    singly: int
    least: int
    placed: int
    waste: float


def run_list_probe(words: Catalogue) -> Part:
    """A part that says what a run list says beside its table."""
    return _part(Hanging((), 0.0), _ANY[0], words, first=True)


def run_list_pages(
    printings: Sequence[Printing],
    totals: Totals,
    heights: tuple[float, float],
    width: float,
    words: Catalogue,
    metrics: FontMetrics,
) -> tuple[Part, ...]:
    """A part for each page: the table, at most `heights` mm on the first page and on the others, and the totals."""
    columns = [
        Column(words.say(RunList.FILE), strong=True, broken=True),
        Column(words.say(RunList.PAGES), right=True),
        Column(words.say(RunList.TIMES), right=True),
        Column(words.say(RunList.HOLDS), broken=True),
        Column(words.say(RunList.KITS), broken=True),
    ]
    rows = [Row(cells_of(each, words)) for each in printings]
    said = Hanging((), 0.0)
    for sentence in totals_words(totals, words):
        lines = rows_of(sentence, LEAD, width, -_FIRST, metrics)
        said = stack([each for each in (said, Hanging(tuple(lines), 1.2 - lines[-1].at.y)) if each.shapes], 0.5)
    tables = _pages(columns, rows, width, heights, said.high + _APART, metrics)
    last = stack([tables[-1], said], _APART)
    return tuple(_part(page, width, words, first=k == 0) for k, page in enumerate((*tables[:-1], last)))


def _pages(
    columns: Sequence[Column],
    rows: Sequence[Row],
    width: float,
    heights: tuple[float, float],
    below: float,
    metrics: FontMetrics,
) -> tuple[Hanging, ...]:
    """The table on as few pages as leave room `below` the last one."""
    whole = ruled(columns, rows, width, metrics)
    if whole.high <= heights[0] - below:
        return (whole,)
    return ruled_pages(columns, rows, width, (heights[0] - below, heights[1] - below), metrics)


def cells_of(each: Printing, words: Catalogue) -> tuple[str, ...]:
    """What one row says, cell by cell."""
    first, last = say_number(each.first), say_number(each.last)
    pages = first if first == last else words.say(RunList.FROM_TO, first=first, last=last)
    times = words.say(RunList.TIMES_PRINTED, times=each.times)
    return each.file, pages, times, words.listed(each.holds), words.listed(each.kits)


def totals_words(totals: Totals, words: Catalogue) -> list[str]:
    """What is said of all sheets together."""
    said = [words.say(RunList.TOGETHER, sheets=totals.sheets, singly=totals.singly)]
    if totals.placed:
        waste = say_number(100 * totals.waste, 1)
        said.append(words.say(RunList.AREA, least=totals.least, waste=waste, sheets=totals.placed))
    return said


def _part(shown: Hanging, width: float, words: Catalogue, *, first: bool) -> Part:
    low = -shown.high
    datum = (Point(_ARM, low - _ARM), Point(width - _ARM, low - _ARM), Point(width - _ARM, _ARM))
    hairs: list[Shape] = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (-1.0, low - 2 * _ARM, width + _ARM, 2 * _ARM)
    return Part(
        RUN_LIST,
        words.say(RunList.NAME),
        (*hairs, *shown.shapes),
        datum,
        box,
        whole=True,
        purpose=words.say(RunList.PURPOSE),
        steps=tuple(map(words.say, STEPS)) if first else (),
        cautions=(words.say(RunList.CARE),) if first else (),
    )
