"""Ladders of margins and of line widths, and the outline of a bank card."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Shape, Step, Text, arc, line
from layout.drawing.typeset import LEAD, SMALL
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from layout.paper.printer_check.places import Places
from layout.parts.hanging import Hanging, rows_of
from layout.values.numerals import say_fixed, say_number

MARGINS = range(3, 13)
"""The distances of the lines from the edge of the page, in mm."""

RUNG, RUNGS_APART = 3.8, 4.6
"""How long such a line is, and how far along the edge the next one begins, in mm."""

WIDTHS = Pen.GRID, Pen.HELP, Pen.RING, Pen.END_MARK, Pen.HALF, Pen.TEN, Pen.EDGE
"""Pens of 0.1, 0.2, 0.3, 0.4, 0.5, 0.7 and 0.9 mm."""

CARD_WIDE, CARD_HIGH, CARD_CORNER = 85.60, 53.98, 3.18
"""A card of size ID-1 in mm (ISO/IEC 7810; from memory)."""

LADDER_WIDE, LADDER_HIGH = 52.0, CARD_HIGH
_NUMBERS_SIDE, _NUMBERS_END = 13.3, 15.3  # where the numbers of margins stand, from the edge
_TITLE, _UNDER, _INSIDE, _FOOT = 3.0, 8.0, 6.0, 5.6
_STEP, _NUMBER = 6.2, 10.4


def margins(paper: Paper, places: Places, metrics: FontMetrics) -> list[Shape]:
    """At each edge a flight of lines along it, 3 to 12 mm from it, each with its number inside."""
    width, height = paper.width, paper.height
    cap = metrics.cap * SMALL
    shapes: list[Shape] = []
    for k, margin in enumerate(MARGINS):
        off = k * RUNGS_APART
        said = str(margin)
        wide = metrics.width(said, SMALL)
        x, y = places.below + off, places.aside - off
        shapes += [line(Point(x, margin), Point(x + RUNG, margin), Pen.HELP)]
        shapes += [Text(Point(x + (RUNG - wide) / 2, _NUMBERS_SIDE), SMALL, said)]
        shapes += [line(Point(margin, y), Point(margin, y - RUNG), Pen.HELP)]
        shapes += [Text(Point(_NUMBERS_SIDE, y - (RUNG + cap) / 2), SMALL, said)]
        shapes += [line(Point(width - margin, y), Point(width - margin, y - RUNG), Pen.HELP)]
        shapes += [Text(Point(width - _NUMBERS_SIDE - wide, y - (RUNG + cap) / 2), SMALL, said)]
        x = places.above + off
        shapes += [line(Point(x, height - margin), Point(x + RUNG, height - margin), Pen.HELP)]
        shapes += [Text(Point(x + (RUNG - wide) / 2, height - _NUMBERS_END), SMALL, said)]
    return shapes


def margin_boxes(paper: Paper, places: Places) -> Iterator[Box]:
    """What the flights and their numbers take."""
    long, reach = RUNGS_APART * len(MARGINS), _NUMBERS_SIDE + 4
    yield places.below, 0, places.below + long, reach
    yield places.above, paper.height - reach, places.above + long, paper.height
    yield 0, places.aside - long, reach, places.aside
    yield paper.width - reach, places.aside - long, paper.width, places.aside


def card(words: Catalogue, metrics: FontMetrics) -> Hanging:
    """The outline of a bank card, what it is for inside."""
    shapes: list[Shape] = [_outline()]
    y = -_UNDER
    for said, size, pen in (
        (PrinterCheck.CARD, LEAD, Pen.STRONG),
        (PrinterCheck.CARD_LAY, LEAD, Pen.TEXT),
        (PrinterCheck.CARD_SHOWS, SMALL, Pen.TEXT),
    ):
        rows = rows_of(words.say(said), size, CARD_WIDE - 2 * _INSIDE, y, metrics, pen)
        shapes += [row._replace(at=Point(_INSIDE, row.at.y)) for row in rows]
        y = rows[-1].at.y - (6.2 if size == LEAD else 0)
    measures = words.say(PrinterCheck.CARD_SIZE, wide=say_fixed(CARD_WIDE, 2), high=say_fixed(CARD_HIGH, 2))
    shapes.append(Text(Point(_INSIDE, _FOOT - CARD_HIGH), SMALL, measures))
    return Hanging(tuple(shapes), CARD_HIGH)


def _outline() -> Curve:
    """The outline below y = 0, counter-clockwise, with round corners."""
    wide, high, r = CARD_WIDE, CARD_HIGH, CARD_CORNER
    steps: list[Step] = []
    for begin, start, centre in (
        (-90, Point(wide - r, -high), Point(wide - r, r - high)),
        (0, Point(wide, -r), Point(wide - r, -r)),
        (90, Point(r, 0), Point(r, -r)),
        (180, Point(0, r - high), Point(r, r - high)),
    ):
        steps += [Step(start), *arc(centre, r, begin, begin + 90)]
    return Curve(Point(r, -high), tuple(steps), Pen.HELP, closed=True)


def widths(words: Catalogue, metrics: FontMetrics, wide: float = LADDER_WIDE) -> Hanging:
    """Lines of seven widths, each flat and upright, one inside the other, with their widths in mm."""
    title = rows_of(words.say(PrinterCheck.WIDTHS), LEAD, wide, -_TITLE, metrics, Pen.STRONG)
    shapes: list[Shape] = [*title]
    top = title[-1].at.y - 4.0
    low = top - _STEP * len(WIDTHS)
    for k, pen in enumerate(WIDTHS):
        x, y = _STEP * k + 0.5, low + _STEP * k
        end = wide - _NUMBER
        turn = (Step(Point(x, y)), Step(Point(end, y)))
        shapes.append(Curve(Point(x, top), turn, pen))
        said = say_number(pen.ink.width)
        said_mm = words.say(PrinterCheck.MM, length=said) if k == len(WIDTHS) - 1 else words.figure(said)
        shapes.append(Text(Point(end + 1.2, y - metrics.cap * SMALL / 2), SMALL, said_mm))
    return Hanging(tuple(shapes), -low + 0.5)
