"""Where the spans are written down, and a small map of the sheet that shows which is which."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, line, rectangle
from layout.drawing.typeset import LEAD, SMALL, longest_word
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from layout.paper.printer_check.marks import LETTERS
from layout.paper.printer_check.places import Places
from layout.parts.hanging import Hanging, rows_of
from layout.values.units import say_number

OPTIONS = "--x", "--y", "--across", "--across-2"
"""The option by which each span is given, from A to B on."""

MAP_WIDE, MAP_HIGH, MAP_ASIDE = 26.0, 34.0, 3.4
"""The most that the small map takes, and its letters at each side."""

_TITLE, _ROW, _FIRST, _AFTER, _BLANK = 3.0, 7.2, 9.6, 4.0, 0.4
_MIDDLE = 6.0  # from the middle of the sheet to what stands at both sides: the cross is there
_LEAST_BLANK = 18.0
_LETTER, _UNDER = 1.3, 2.6


def written(places: Places, wide: float, split: float, words: Catalogue, metrics: FontMetrics) -> Hanging:
    """The four spans with their lengths, options and blanks; beside them from `split` on printer, paper, rule and date.

    Where the two do not fit beside each other, these come under the spans.
    """
    say, spans = words.say, places.spans
    shapes: list[Shape] = [*rows_of(say(PrinterCheck.MEASURED), LEAD, wide, -_TITLE, metrics, Pen.STRONG)]
    names = [say(each) for each in (PrinterCheck.ACROSS, PrinterCheck.UP, PrinterCheck.RISING, PrinterCheck.FALLING)]
    lengths = [say_number(each) for each in (spans.across, spans.up, spans.diagonal, spans.diagonal)]
    columns, x = [], 0.0
    for each in (names, [words.figure(length) for length in lengths], OPTIONS):
        columns.append((x, each))
        x += max(metrics.width(said, SMALL) for said in each) + _AFTER
    beside = split - _MIDDLE - x >= _LEAST_BLANK and wide - split - _MIDDLE >= _beside(words, metrics)
    end = split - _MIDDLE if beside else wide
    for k in range(len(names)):
        y = -_FIRST - k * _ROW
        shapes += [Text(Point(left, y), SMALL, column[k]) for left, column in columns]
        shapes.append(line(Point(x, y - _BLANK), Point(end, y - _BLANK), Pen.HELP))
    left, top, right = (split + _MIDDLE, _FIRST, wide) if beside else (0.0, _FIRST + len(names) * _ROW, wide)
    blanks = [say(each) for each in (PrinterCheck.PRINTER, PrinterCheck.PAPER, PrinterCheck.RULE, PrinterCheck.DATE)]
    begin = left + max(metrics.width(said, SMALL) for said in blanks) + _AFTER / 2
    for k, said in enumerate(blanks):
        y = -top - k * _ROW
        shapes.append(Text(Point(left, y), SMALL, said))
        shapes.append(line(Point(begin, y - _BLANK), Point(right, y - _BLANK), Pen.HELP))
    return Hanging(tuple(shapes), top + 3 * _ROW + 1.0)


def _beside(words: Catalogue, metrics: FontMetrics) -> float:
    """How wide the blanks for printer, paper, rule and date must be."""
    blanks = (PrinterCheck.PRINTER, PrinterCheck.PAPER, PrinterCheck.RULE, PrinterCheck.DATE)
    return max(longest_word(words.say(each), SMALL, metrics) for each in blanks) + _AFTER + _LEAST_BLANK


def small_map(paper: Paper, places: Places, metrics: FontMetrics) -> Hanging:
    """The sheet in small, with its four spans and their letters."""
    share = min(MAP_WIDE / paper.width, MAP_HIGH / paper.height)
    high = paper.height * share
    shapes: list[Shape] = [rectangle(0, -high, paper.width * share, 0, Pen.HELP)]
    lowest = places.ends[0][0].y * share - high - _UNDER  # E and H stand under A and B
    for (one, other), letters in zip(places.ends, LETTERS, strict=True):
        first, last = (Point(at.x * share, at.y * share - high) for at in (one, other))
        shapes.append(line(first, last, Pen.OUTLINE))
        for at, letter, side in ((first, letters[0], -1), (last, letters[1], 1)):
            lowered = at._replace(y=lowest) if letters not in LETTERS[:2] and at.y < -high / 2 else at
            shapes.append(_letter(letter, lowered, side, high, paper.width * share, metrics))
    return Hanging(tuple(shapes), high + MAP_ASIDE)


def _letter(said: str, at: Point, side: int, high: float, width: float, metrics: FontMetrics) -> Text:
    """Outside of the page: over and under it for the span that stands up, else at its sides."""
    cap, wide = metrics.cap * SMALL, metrics.width(said, SMALL, Pen.STRONG)
    if said in LETTERS[1]:
        return Text(Point(at.x - wide / 2, -high - _LETTER - cap if side < 0 else _LETTER), SMALL, said, pen=Pen.STRONG)
    x = -_LETTER - wide if side < 0 else width + _LETTER
    return Text(Point(x, at.y - cap / 2), SMALL, said, pen=Pen.STRONG)
