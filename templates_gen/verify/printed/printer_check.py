"""A printer check, as its file shows it: spans, rules, ladders and card, from the size of its sheet alone."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_printer_check import Checked
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, wrong
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.printer_check_places import (
    LONG_RULE,
    Line,
    Number,
    Rung,
    Span,
    marks_of,
    rules_on,
    rungs_on,
    spans_on,
)
from templates_gen.verify.printed.printer_check_things import prove_card, prove_widths

NAME = "printer-check"
_SMALL = 7.5 * 25.4 / 72
_NEAR = 0.05  # mm: a number whose middle is so close to its line stands at it
_CROSS = 3.0


def prove_measured(sheet: Sheet, words: Catalogue) -> Findings:
    """All that is measured on the first sheet, and what every sheet carries.

    Its ladders of margins alone may reach into the margins.
    """
    lines = list(_lines(sheet))
    spans = spans_on(sheet.width, sheet.height)
    total = _marks(spans, lines)
    total += _rules(sheet, lines, words)
    ladders, found = _margins(sheet, lines)
    total += ladders + prove_card(sheet) + Findings(0.0, (*prove_widths(sheet, words), *_cross(spans, lines)))
    inside = tuple(shape for shape in sheet.shapes if not any(shape is each for each in found))
    return total + check_furniture(replace(sheet, shapes=inside), [NAME])


Lines = Sequence[tuple[Curve, Line]]


def _lines(sheet: Sheet) -> Iterator[tuple[Curve, Line]]:
    """Every straight line of one step, and its ends in order."""
    for shape in sheet.shapes:
        if isinstance(shape, Curve) and len(shape.steps) == 1 and shape.steps[0].through is None:
            yield shape, _ordered((shape.start, shape.steps[0].end))


def _ordered(line: Line) -> Line:
    return min(line), max(line)


def _off(line: Line, other: Line) -> float:
    """How far the ends of two lines lie apart, whichever way they were drawn."""
    (a, b), (c, d) = line, other
    return min(max(math.dist(a, c), math.dist(b, d)), max(math.dist(a, d), math.dist(b, c)))


def _nearest(wanted: Line, pen: Pen, lines: Lines) -> tuple[float, Curve | None]:
    return min(
        ((_off(wanted, line), shape) for shape, line in lines if shape.pen is pen),
        key=lambda each: each[0],
        default=(math.inf, None),
    )


def _marks(spans: Sequence[Span], lines: Lines) -> Findings:
    """Both ends of every span: a fine line, bold on both sides, and no bold line more."""
    total = NOTHING
    bold = sum(1 for shape, _ in lines if shape.pen is Pen.EDGE)
    wanted = 4 * len(spans)
    if bold != wanted:
        return wrong(Checked.MARKS, found=bold, wanted=wanted)
    for span in spans:
        for letter, fine, both in marks_of(span):
            offs = [_nearest(fine, Pen.HELP, lines)[0], *(_nearest(each, Pen.EDGE, lines)[0] for each in both)]
            off = max(offs)
            total += Findings(off, ()) if off <= LIMIT else wrong(Checked.MARK, letter=letter)
    return total


def _cross(spans: Sequence[Span], lines: Lines) -> Iterator[Finding]:
    """Diagonals longer than a usual rule have a cross where they meet."""
    one, other = spans[2].one, spans[2].other
    if spans[2].long <= LONG_RULE:
        return
    x, y = (one.x + other.x) / 2, (one.y + other.y) / 2
    hairs = ((Point(x - _CROSS, y), Point(x + _CROSS, y)), (Point(x, y - _CROSS), Point(x, y + _CROSS)))
    if any(_nearest(hair, Pen.HELP, lines)[0] > LIMIT for hair in hairs):
        yield finding(Checked.CROSS)


def _rules(sheet: Sheet, lines: Lines, words: Catalogue) -> Findings:
    """Every line of both rules is there, no other is drawn with their pen, and each number stands at its line."""
    wanted, numbers = rules_on(sheet.width, sheet.height)
    found = [line for shape, line in lines if shape.pen is Pen.RULE]
    if len(found) != len(wanted):
        return wrong(Checked.TICKS, found=len(found), wanted=len(wanted))
    cells: dict[tuple[int, int], list[Line]] = {}
    for line in found:
        cells.setdefault(_cell(line), []).append(line)
    worst = 0.0
    for line in wanted:
        near = [(_off(line, other), cell, other) for cell in _cells(line) for other in cells.get(cell, [])]
        off, cell, other = min(near, default=(math.inf, (0, 0), line))
        if off > LIMIT:
            return wrong(Checked.TICK, x=line[0].x, y=line[0].y)
        worst = max(worst, off)
        cells[cell].remove(other)  # each is found once
    return Findings(worst, tuple(_numbers(sheet, numbers, words)))


def _cell(line: Line) -> tuple[int, int]:
    """The square of 0.1 mm in which the middle of a line lies."""
    (x, y), (to_x, to_y) = line
    return round((x + to_x) / 0.2), round((y + to_y) / 0.2)


def _cells(line: Line) -> Iterator[tuple[int, int]]:
    """That square and those around it."""
    column, row = _cell(line)
    return ((column + across, row + up) for across in (-1, 0, 1) for up in (-1, 0, 1))


def _numbers(sheet: Sheet, numbers: Sequence[Number], words: Catalogue) -> Iterator[Finding]:
    font = metrics()
    texts = [each for each in _texts(sheet) if each.pen is Pen.TEXT and abs(each.size - _SMALL) < LIMIT]
    units = {"mm": PrinterCheck.MM, "in": PrinterCheck.INCH}
    for number in numbers:
        said = words.say(units[number.unit], length=str(number.value)) if number.unit else str(number.value)
        wide, cap = font.width(said, _SMALL), font.cap * _SMALL
        if number.flat:
            at = Point(number.at.x - wide / 2, number.at.y - (cap if number.side < 0 else 0))
        else:
            at = Point(number.at.x - (wide if number.side > 0 else 0), number.at.y - cap / 2)
        if not any(each.words == said and math.dist(each.at, at) < _NEAR and not each.angle for each in texts):
            yield finding(Checked.NUMBER, words=said, x=number.at.x, y=number.at.y)


def _texts(sheet: Sheet) -> Iterator[Text]:
    return (shape for shape in sheet.shapes if isinstance(shape, Text))


def _margins(sheet: Sheet, lines: Lines) -> tuple[Findings, list[Curve]]:
    """The ladders at the four edges, and the lines that they are made of."""
    total, found = NOTHING, []
    texts = list(_texts(sheet))
    for rung in rungs_on(sheet.width, sheet.height):
        off, shape = _nearest(rung.line, Pen.HELP, lines)
        if off > LIMIT or shape is None or not _numbered(rung, texts):
            total += wrong(Checked.MARGIN, margin=rung.margin, edge=rung.edge)
        else:
            total += Findings(off, ())
            found.append(shape)
    return total, found


def _numbered(rung: Rung, texts: Sequence[Text]) -> bool:
    left, low, right, high = rung.number
    inside = [each.words for each in texts if left <= each.at.x <= right and low <= each.at.y <= high]
    return inside == [str(rung.margin)]
