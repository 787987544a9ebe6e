"""How a wrap gauge is wound, in three pictures, with what their signs mean; everything hangs down from y = 0."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, Text, line, polygon, rectangle
from layout.drawing.signs import ring, scissors, triangle
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Gauge

_LONG, _HIGH, _BESIDE, _APART = 44.0, 16.0, 8.0, 5.0
_FIRST, _LAST, _NOTCH = 10.0, 34.0, (1.0, 2.6)  # notches of a card in a picture, and their size
_WARP, _WEFT, _PITCH = 0.2, 1.75, 3.1  # the first threads, from the first notch, and from warp to warp
_WEFT_WIDE, _BOW = 0.94, 0.6
_OVER_TAIL = 4.6
_TITLE, _OVER, _UNDER, _SAID, _ROW_GAP, _ENTRY_GAP, _SAMPLE_GAP = 8.6, 5.0, 4.2, 4.6, 3.0, 10.0, 2.0
_WARPS = 2, 8  # drawn while it is wound, and in a full window


class Hanging(NamedTuple):
    """Shapes that hang down from y = 0, and how far."""

    shapes: tuple[Shape, ...]
    high: float


def how_to_wind(width: float, words: Catalogue, metrics: FontMetrics) -> Hanging:
    """A title, the three pictures, as many beside each other as fit, and their sentences."""
    y = -metrics.cap * LEAD
    shapes: list[Shape] = [Text(Point(0, y), LEAD, words.say(Gauge.HOW), pen=Pen.STRONG)]
    y -= _TITLE
    each = _BESIDE + _LONG
    across = max(1, min(3, int((width + _APART) // (each + _APART))))
    apart = (width - across * each) / (across - 1) if across > 1 else 0.0
    said = (Gauge.CATCH, Gauge.WIND, Gauge.FILL)
    rows = [wrap(words.say(role), LEAD, _LONG, metrics) for role in said]
    for first in range(0, 3, across):
        here = range(first, min(first + across, 3))
        for k in here:
            picture = [*_picture(k, words, metrics), *_under(rows[k])]
            shapes += Placing(0, (k - first) * (each + apart) + _BESIDE, y - _HIGH).shapes(picture)
        y -= _HIGH + _UNDER + _SAID + max(len(rows[k]) - 1 for k in here) * leading(LEAD, tall=True)
        y -= _ROW_GAP + (_OVER if here[-1] < 2 else 0.0)
    return Hanging(tuple(shapes), -y)


def signs_of(width: float, words: Catalogue, metrics: FontMetrics) -> Hanging:
    """What the lines and threads mean, in a row; a second one where the first is full."""
    entries = (
        (12.0, [line(Point(0, 0), Point(12, 0), Pen.CUT), *scissors(Point(2.3, 0))], Gauge.IS_CUT),
        (10.0, [line(Point(0, 0), Point(10, 0), Pen.FOLD)], Gauge.IS_FOLD),
        (1.0, [line(Point(0.5, -1.5), Point(0.5, 1.5), Pen.THREAD)], Gauge.IS_WARP),
        (1.0, _strip(0.5, -1.5, 1.5), Gauge.IS_WEFT),
    )
    shapes: list[Shape] = []
    x, y = 0.0, -2.0
    for wide, sample, role in entries:
        said = words.say(role)
        long = wide + _SAMPLE_GAP + metrics.width(said, LEAD)
        if x and x + long > width:
            x, y = 0.0, y - 6.0
        shapes += Placing(0, x, y).shapes(sample)
        shapes.append(Text(Point(x + wide + _SAMPLE_GAP, y - metrics.cap * LEAD / 2), LEAD, said))
        x += long + _ENTRY_GAP
    return Hanging(tuple(shapes), 2.0 - y)


def sentences(said: Sequence[tuple[str, float]], width: float, metrics: FontMetrics) -> Hanging:
    """Each sentence, with the size of its letters, on lines of its own."""
    shapes: list[Shape] = []
    y = 0.0
    for words, size in said:
        for k, row in enumerate(wrap(words, size, width, metrics)):
            y -= leading(size, tall=is_tall(row)) if k or shapes else metrics.ascent * size
            y -= 0.0 if k or not shapes else 2.0
            shapes.append(Text(Point(0, y), size, row))
    return Hanging(tuple(shapes), -y - metrics.descent * LEAD)


def _under(rows: Sequence[str]) -> Iterator[Shape]:
    y = -_UNDER - _SAID
    for k, row in enumerate(rows):
        yield Text(Point(0, y - k * leading(LEAD, tall=is_tall(row))), LEAD, row)


def _picture(k: int, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """The card from its lower left corner, its letter beside it."""
    shapes: list[Shape] = [*ring(Point(-4.6, _HIGH - 3), "abc"[k], metrics), rectangle(0, 0, _LONG, _HIGH, Pen.OUTLINE)]
    for x in (_FIRST, _LAST):
        for edge, way in ((_HIGH, -1), (0.0, 1)):
            half, deep = _NOTCH
            corners = [Point(x - half, edge), Point(x, edge + way * deep), Point(x + half, edge)]
            shapes.append(Curve(corners[0], (Step(corners[1]), Step(corners[2])), Pen.OUTLINE))
    warps = (1, *_WARPS)[k]
    wefts = (0, 3, 8)[k]
    for n in range(max(warps, wefts)):
        x = _FIRST + _WARP + n * _PITCH
        shapes.append(line(Point(x, -0.6), Point(x, _HIGH + 0.6), Pen.THREAD))
        if n < wefts:
            shapes += _strip(x - _WARP + _WEFT, -0.5, _HIGH + 0.5)
    tail = Point(_FIRST + _WARP, _HIGH + 0.2)
    if k < 2:
        shapes.append(_bow(tail, Point(tail.x - 8.2, _HIGH + 3), -_BOW, Pen.THREAD))
    if k == 0:
        said = words.say(Gauge.SEEN_WARP)
        x = tail.x - 9.4 - metrics.width(said, SMALL)
        at = Point(x, _HIGH + 2.1) if x > -_BESIDE else Point(-_BESIDE, _HIGH + _OVER_TAIL)  # a long one over the yarn
        shapes.append(Text(at, SMALL, said))
    if k == 1:
        shapes += _weft_tail(words)
    return shapes if k < 2 else [*shapes, *_measured()]


def _strip(x: float, low: float, high: float) -> list[Shape]:
    """A thread of weft: white between two thin lines."""
    half, ink = _WEFT_WIDE / 2, Pen.HELP.ink.width / 2
    inner = polygon(
        (Point(x - half + ink, low + ink), Point(x + half - ink, low + ink), Point(x + half - ink, high - ink),
         Point(x - half + ink, high - ink)), Pen.PAPER
    )  # fmt: skip
    return [Region((inner,), Pen.PAPER), rectangle(x - half, low, x + half, high, Pen.HELP)]


def _weft_tail(words: Catalogue) -> list[Shape]:
    """The end of the weft that is wound, from the first thread of it to the right."""
    x, top = _FIRST + _WEFT, _HIGH + 0.5
    half = _WEFT_WIDE / 2
    shapes: list[Shape] = []
    for start, up in ((x - half, 3.5), (x + half, 2.5)):
        shapes.append(_bow(Point(start, top), Point(x + 8, top + up), _BOW, Pen.HELP))
    return [*shapes, Text(Point(x + 9.5, top + 2.1), SMALL, words.say(Gauge.SEEN_WEFT))]


def _bow(start: Point, end: Point, high: float, pen: Pen) -> Curve:
    """An arc that rises so high to the left of the way from `start` to `end`."""
    dx, dy = end.x - start.x, end.y - start.y
    long = math.hypot(dx, dy)
    through = Point((start.x + end.x) / 2 - dy / long * high, (start.y + end.y) / 2 + dx / long * high)
    return Curve(start, (Step(end, through),), pen)


def _measured() -> list[Shape]:
    """A line with two heads under the window, from notch to notch."""
    y = -3.2
    ticks = [line(Point(x, y - 1), Point(x, y + 1), Pen.HELP) for x in (_FIRST, _LAST)]
    return [*ticks, *double_arrow(_FIRST, _LAST, y)]


def double_arrow(left: float, right: float, y: float) -> list[Shape]:
    """A level line with a head at both ends."""
    return [
        line(Point(left + 1, y), Point(right - 1, y), Pen.HELP),
        triangle(Point(left, y), Point(-1, 0), 2.2, 1.4),
        triangle(Point(right, y), Point(1, 0), 2.2, 1.4),
    ]
