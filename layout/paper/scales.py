"""The two check scales of a sheet that is measured from: flat beside the code, upright in the right gutter.

Each is a row of ten blocks of 10 mm over a row of eight blocks of half an inch (12.7 mm by definition), black and
white by turns: a ruler laid along it shows at once whether the sheet was printed at its size.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing, Point, Region, Shape, Text, line, rectangle
from layout.drawing.typeset import SMALL, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Scale
from layout.paper.area import SIDE
from layout.paper.regions import FIELD, FOOT, Regions

MILLIMETRES, INCHES = 100.0, 101.6
"""The lengths of the two rows in mm: 100 mm and 4 in."""

ROW, BLOCK, HALF_INCH = 1.6, 10.0, 12.7
"""The height of a row, and the length of its blocks, in mm."""

_ROWS = 2.4  # from the baseline of the inch numbers up to the rows
_TOP = _ROWS + 2 * ROW
_NUMBERS, _CAPTION = _TOP + 0.65, _TOP + 4.35
_TICK, _LEADING, _WHITE, _OVER = 0.7, 3.84, 1.0, 0.4
_UPRIGHT, _ASIDE = 10.0, 18.9  # from the right edge of the sheet to the zero of the upright scale; to its box
_MIRRORED_RIGHT, _MIRRORED_UP = 123.5, 14.7
_KEPT = 8  # scales: every sheet of a file has the same
_TICKED = [BLOCK * k for k in (1, 2, 3, 4, 6, 7, 8)]  # numbers stand over the others


_Ends = tuple[str, str]
"""What stands at the end of the row of millimetres, and at that of inches."""


def upright(at: Point, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """The scale along the y axis: it rises from its zero at `at`, its inch numbers at the right."""
    return Placing(90, *at).shapes(_scale(_ends(words), metrics))


def scales(
    regions: Regions, words: Catalogue, metrics: FontMetrics, *, printing: bool = True, mirrored: bool = False
) -> tuple[tuple[Shape, ...], tuple[Box, Box]]:
    """Both scales under their caption, and the boxes that nothing else may enter.

    The caption says how to print where `printing`. On a `mirrored` sheet, whose part lies across from the lower left
    to the upper right, the flat scale stands as far to the right and the upright one as high as they can.
    """
    caption = words.say(Scale.CHECK_AND_PRINT if printing else Scale.CHECK)
    return _drawn(regions, str(caption), _ends(words), metrics, mirrored=mirrored)


def _ends(words: Catalogue) -> _Ends:
    return str(words.say(Scale.MILLIMETRES, length=100)), str(words.say(Scale.INCHES, length=4))


@lru_cache(_KEPT)
def _drawn(
    regions: Regions, said: str, ends: _Ends, metrics: FontMetrics, *, mirrored: bool
) -> tuple[tuple[Shape, ...], tuple[Box, Box]]:
    lift = _MIRRORED_UP if mirrored else 0.0
    across = Point(regions.width - _MIRRORED_RIGHT if mirrored else regions.left, FIELD)
    up = Point(regions.width - _UPRIGHT, FIELD + lift)
    caption = _caption(said, across, max(regions.right - across.x, INCHES), metrics)
    widest = max(metrics.width(each.words, SMALL, Pen.STRONG) for each in caption)
    top = FOOT + _OVER + _LEADING * (len(caption) - 1)
    band = across.x, FIELD - _WHITE, across.x + max(INCHES, widest) + _WHITE, top
    gutter = regions.width - _ASIDE, FIELD + lift - _WHITE, regions.width - SIDE, FIELD + lift + INCHES + 2 * _WHITE
    scale = _scale(ends, metrics)
    flat, risen = Placing(0, *across).shapes(scale), Placing(90, *up).shapes(scale)
    return (*caption, *flat, *risen), (band, gutter)


def _caption(said: str, at: Point, width: float, metrics: FontMetrics) -> list[Text]:
    """The lines over the scale, the last one next to it."""
    rows = wrap(said, SMALL, width, replace(metrics, advances=metrics.strong))
    ups = (FIELD + _CAPTION + _LEADING * k for k in reversed(range(len(rows))))
    return [Text(Point(at.x, y), SMALL, row, pen=Pen.STRONG) for row, y in zip(rows, ups, strict=True)]


def _scale(ends: _Ends, metrics: FontMetrics) -> list[Shape]:
    """The scale from x = 0, the baseline of its inch numbers at y = 0."""
    low, middle, high = _ROWS, _ROWS + ROW, _TOP
    shapes: list[Shape] = _blocks(0.0, BLOCK, MILLIMETRES, middle) + _blocks(HALF_INCH, HALF_INCH, INCHES, low)
    shapes += [rectangle(0, middle, MILLIMETRES, high, Pen.RULE), rectangle(0, low, INCHES, middle, Pen.RULE)]
    shapes += [line(Point(x, high), Point(x, high + _TICK), Pen.RULE) for x in _TICKED]
    for length, half, whole, y in (
        (MILLIMETRES, "50", ends[0], _NUMBERS),
        (INCHES, "2", ends[1], 0.0),
    ):
        shapes.append(Text(Point(0, y), SMALL, "0"))
        shapes.append(Text(Point((length - metrics.width(half, SMALL)) / 2, y), SMALL, half))
        shapes.append(Text(Point(length - metrics.width(whole, SMALL), y), SMALL, whole))
    return shapes


def _blocks(begin: float, long: float, end: float, low: float) -> list[Shape]:
    """Every second block of a row, black, from `begin` on."""
    count = round((end - begin) / (2 * long))
    lefts = [begin + 2 * long * k for k in range(count)]
    return [Region(tuple(rectangle(x, low, x + long, low + ROW, Pen.SOLID) for x in lefts), Pen.SOLID)]
