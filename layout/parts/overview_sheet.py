"""The overview of a range, for the maker alone: all kits beside each other, what differs, where each value is from."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles.buying import Prices
from layout.messages.roles.ranges import OverviewSheet
from layout.parts.hanging import Hanging, rows_of, stack
from layout.parts.overview_tables import Shown, Table, tables_of
from layout.parts.price_sheet import lacking
from layout.parts.tables.columns import Row, parted
from layout.parts.tables.ruled import ruled_pages

OVERVIEW_SHEET = "overview"

_FIRST, _UNDER, _APART, _ARM = 3.0, 1.0, 7.0, 0.5


def overview_pages(shown: Shown, size: tuple[float, float], words: Catalogue, metrics: FontMetrics) -> tuple[Part, ...]:
    """A part for each sheet, in `size` mm. Tables that are too wide are parted between columns, the first repeated;
    those that are too high, between rows.
    """
    width, height = size
    pages: list[list[Hanging]] = [[]]
    used = 0.0
    for block in _blocks(shown, width, height, words, metrics):
        if pages[-1] and used + _APART + block.high > height:
            pages.append([])
        used = block.high + (used + _APART if pages[-1] else 0.0)
        pages[-1].append(block)
    return tuple(_part(stack(page, _APART), width, shown, words) for page in pages)


def notes_of(shown: Shown, words: Catalogue) -> list[str]:
    """What is said of the figures, sentence by sentence."""
    said = [words.say(OverviewSheet.OF_ONE), words.say(OverviewSheet.OF_ALL)]
    if shown.priced:
        said.append(words.say(OverviewSheet.COSTS))
        missing = dict.fromkeys(name for row in shown.rows for name in lacking(row.quote.cost, words))
        said += [words.say(Prices.MISSING, things=words.listed([*missing]))] if missing else []
    return said


def _blocks(shown: Shown, width: float, height: float, words: Catalogue, metrics: FontMetrics) -> Iterator[Hanging]:
    for number, table in enumerate(tables_of(shown, words, metrics)):
        yield from _table(table, width, height, metrics)
        if not number:
            yield _notes(notes_of(shown, words), width, metrics)


def _notes(sentences: Sequence[str], width: float, metrics: FontMetrics) -> Hanging:
    """Each from a line of its own."""
    said = [rows_of(sentence, LEAD, width, -_FIRST, metrics) for sentence in sentences]
    return stack([Hanging(tuple(rows), _UNDER - rows[-1].at.y) for rows in said], 0.5)


def _table(table: Table, width: float, height: float, metrics: FontMetrics) -> Iterator[Hanging]:
    """The parts of a table, each as high as a sheet at most; the heading stands over the first."""
    head = Hanging(tuple(rows_of(table.heading, LEAD, width, -_FIRST, metrics, Pen.STRONG)), _FIRST + _UNDER)
    heading = [head] if table.heading else []
    first = height - (head.high if heading else 0.0)
    for which in parted(table.columns, table.rows, SMALL, width, metrics):
        columns = [table.columns[k] for k in which]
        rows = [Row(tuple(row.cells[k] for k in which), row.total) for row in table.rows]
        for part in ruled_pages(columns, rows, width, (first, height), metrics, SMALL):
            yield stack([*heading, part], 0.0)
            heading, first = [], height


def _part(content: Hanging, width: float, shown: Shown, words: Catalogue) -> Part:
    low = -content.high
    datum = (Point(_ARM, low - _ARM), Point(width - _ARM, low - _ARM), Point(width - _ARM, _ARM))
    hairs: list[Shape] = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (-1.0, low - 2 * _ARM, width + _ARM, 2 * _ARM)
    purpose = words.say(OverviewSheet.PURPOSE)
    if shown.currency:
        purpose = words.say(OverviewSheet.PURPOSE_IN, currency=shown.currency)
    title = words.say(OverviewSheet.NAME)
    return Part(
        OVERVIEW_SHEET, title, (*hairs, *content.shapes), datum, box, whole=True, purpose=purpose, measured=False
    )
