"""The picture of deviations: every target and mark where it belongs, and how far off it was found, drawn larger.

One page a sheet, and more where it has many rows of marks. All deviations of a page are magnified alike; a ruler on it
shows how long so much is.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import hypot
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, circle, line, rectangle
from layout.drawing.sheet import Sheet, painted
from layout.drawing.typeset import LEAD, SMALL, leading, wrap
from layout.kit.paper_size import named_size
from layout.values.units import say_number
from templates_gen.measuring.measured import Measured, MeasuredSheet
from templates_gen.measuring.naming import row_name, sheet_name
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import Shown

WIDTH, HEIGHT = named_size("common").sides_mm
_LEFT, _RIGHT, _TOP, _BOTTOM = 16.0, WIDTH - 16.0, HEIGHT - 18.0, 18.0
_MAP, _ROOM, _AMPLITUDE = 88.0, 34.0, 9.0  # mm: height of the map, of a row of marks; half of what a row may take
_TIMES = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)
_RULERS = (0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0)
_RULER, _TICK, _WHISKER, _DOT = 30.0, 1.2, 0.5, 0.9
_LEAST = 0.004  # mm: less than that is not drawn larger still


class _Page(NamedTuple):
    shapes: list[Shape]
    floor: float
    """How low the page is taken."""


def deviations(sheets: Sequence[MeasuredSheet], metrics: FontMetrics) -> tuple[Sheet, ...]:
    """The pages of a picture of all these sheets."""
    return tuple(page for sheet in sheets for page in _of_sheet(sheet, metrics))


def _of_sheet(sheet: MeasuredSheet, metrics: FontMetrics) -> Iterator[Sheet]:
    rows = [row for row in sheet.groups if row.enough]
    times = magnification(sheet, rows)
    name = message(Shown.TITLE, sheet=sheet_name(sheet))
    page = _begun(name, sheet, times, metrics)
    page = _with_map(page, sheet, times, metrics)
    number = 1
    for row in rows:
        if page.floor - _ROOM < _BOTTOM:
            yield _finished(page, name, number)
            page, number = _begun(name, sheet, times, metrics), number + 1
        page = _with_row(page, row, times, metrics)
    yield _finished(page, name, number)


def _finished(page: _Page, name: str, number: int) -> Sheet:
    return Sheet(f"{name} {number}", WIDTH, HEIGHT, painted(page.shapes))


def magnification(sheet: MeasuredSheet, rows: Sequence[Measured]) -> int:
    """How many times as large deviations are drawn: as much as the largest allows, in round numbers."""
    offs = [abs(off) + within for row in rows for _, off, within in row.found]
    offs += [hypot(each.found.x - each.place.x, each.found.y - each.place.y) for each in sheet.seen.targets]
    largest = max([_LEAST, *offs])
    return max((times for times in _TIMES if times * largest <= _AMPLITUDE), default=_TIMES[0])


def _begun(name: str, sheet: MeasuredSheet, times: int, metrics: FontMetrics) -> _Page:
    """Title, what scale is taken out, and the ruler."""
    shapes: list[Shape] = []
    y = _TOP
    for words in wrap(_legible(name, metrics), LEAD, _RIGHT - _LEFT, metrics, Pen.STRONG):
        shapes.append(Text(Point(_LEFT, y), LEAD, words, pen=Pen.STRONG))
        y -= leading(LEAD)
    for words in wrap(message(Shown.SCALE_OUT, scale=_scale_words(sheet)), SMALL, _RIGHT - _LEFT, metrics):
        shapes.append(Text(Point(_LEFT, y), SMALL, words))
        y -= leading(SMALL)
    y -= 2.5
    mm = max(each for each in _RULERS if each * times <= _RULER or each == _RULERS[0])
    long = mm * times
    shapes += [line(Point(_LEFT, y), Point(_LEFT + long, y), Pen.RULE)]
    shapes += [
        line(Point(x, y - _TICK), Point(x, y + _TICK), Pen.RULE) for x in (_LEFT + long * k / 10 for k in range(11))
    ]
    said = message(Shown.RULER, mm=say_number(mm), times=times)
    shapes.append(Text(Point(_LEFT + long + 3, y - metrics.cap * SMALL / 2), SMALL, said))
    return _Page(shapes, y - 7)


def _scale_words(sheet: MeasuredSheet) -> str:
    x, y = sheet.scales.x, sheet.scales.y
    if x is None or y is None:
        return message(Shown.NO_SCALE)
    shares = {"x": say_number(100 * x.value, 2), "y": say_number(100 * y.value, 2)}
    return message(Shown.SHARES, **shares, skew=say_number(100 * sheet.scales.skew.value, 3))


def _legible(words: str, metrics: FontMetrics) -> str:
    """Words without letters that the font lacks: a scan may be called anything."""
    return "".join(letter if letter in metrics.advances else "?" for letter in words)


def _with_map(page: _Page, sheet: MeasuredSheet, times: int, metrics: FontMetrics) -> _Page:
    """The sheet made small, with its targets."""
    targets = sheet.seen.targets
    wide, high = sheet.seen.label.rectangle
    left, low = min(each.place.x for each in targets), min(each.place.y for each in targets)
    size = min((_MAP - 2 * _AMPLITUDE) / high, (_RIGHT - _LEFT - 2 * _AMPLITUDE) / wide)
    origin = Point((WIDTH - wide * size) / 2, page.floor - _AMPLITUDE - high * size)
    shapes = [*page.shapes, rectangle(*origin, origin.x + wide * size, origin.y + high * size, Pen.GRID)]
    for each in targets:
        at = Point(origin.x + (each.place.x - left) * size, origin.y + (each.place.y - low) * size)
        to = Point(at.x + times * (each.found.x - each.place.x), at.y + times * (each.found.y - each.place.y))
        shapes += [circle(at, _DOT, Pen.HELP), *([line(at, to, Pen.UNIT)] if at != to else [])]
    said = message(Shown.TARGETS)
    foot = origin.y - _AMPLITUDE - 3
    shapes.append(Text(Point((WIDTH - metrics.width(said, SMALL)) / 2, foot), SMALL, said))
    return _Page(shapes, foot - 8)


def _with_row(page: _Page, row: Measured, times: int, metrics: FontMetrics) -> _Page:
    """A row of marks along its length: upward is toward the right end of the row."""
    marks = row.marks
    begin, end = marks[0].mark.at, marks[-1].mark.at
    names = [ENGLISH.words_of(each.mark.name) for each in (marks[0], marks[-1])]
    said = message(Shown.ROW, row=row_name(row.group), first=names[0], last=names[1])
    shapes = [*page.shapes]
    y = page.floor
    for words in wrap(_legible(said, metrics), SMALL, _RIGHT - _LEFT, metrics):
        shapes.append(Text(Point(_LEFT, y), SMALL, words))
        y -= leading(SMALL)
    middle = y - _AMPLITUDE
    shapes.append(line(Point(_LEFT, middle), Point(_RIGHT, middle), Pen.GRID))
    worst = row.worst[0]
    for mark, off, within in row.found:
        x = _LEFT + 2 + (mark.at - begin) / (end - begin) * (_RIGHT - _LEFT - 4)
        top = middle + times * off
        if top != middle:
            shapes.append(line(Point(x, middle), Point(x, top), Pen.END_MARK))
        for edge in (off - within, off + within):
            level = middle + times * edge
            shapes.append(line(Point(x - _WHISKER, level), Point(x + _WHISKER, level), Pen.GRID))
        if mark is worst:
            name = _legible(ENGLISH.words_of(mark.name), metrics)
            long = metrics.width(name, SMALL)
            at = min(max(x - long / 2, _LEFT), _RIGHT - long)
            shapes.append(Text(Point(at, middle - _AMPLITUDE - 3.5), SMALL, name))
    return _Page(shapes, middle - _AMPLITUDE - 10)
