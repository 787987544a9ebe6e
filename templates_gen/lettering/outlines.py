"""Words into outlines, for formats whose readers may lack the font. Curves become short straight lines."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import cache

from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, Text
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError, shown
from templates_gen.lettering import fonts

FURTHEST = 0.0015
"""How far in ems a straight line may lie off the curve that it stands for: 4 micrometres in the smallest words."""

Contour = tuple[Point, ...]
Units = tuple[float, float]


def outlined(sheet: Sheet) -> Sheet:
    """The same sheet, in the same order, with a region for every text, of its pen; blank words leave nothing.

    A pen that does not fill draws the outlines of the letters instead.
    """
    shapes: list[Shape] = []
    for shape in sheet.shapes:
        if not isinstance(shape, Text):
            shapes.append(shape)
        elif not shape.pen.ink.fills:
            shapes += outline(shape).contours
        elif (region := outline(shape)).contours:
            shapes.append(region)
    return Sheet(sheet.name, sheet.width, sheet.height, tuple(shapes))


def outline(text: Text) -> Region:
    """The closed contours of the words in mm, holes turning back; `LayoutError` if the font lacks a character."""
    metrics = fonts.metrics()
    if missing := metrics.missing(text.words):
        raise LayoutError(f"the print font cannot draw {shown(missing)} in {shown(text.words)}")
    placing = Placing(text.angle, text.at.x, text.at.y)
    contours, pen_x = [], 0.0
    for letter in text.words:
        for contour in _glyph(letter):
            points = placing.points([(text.size * (pen_x + x), text.size * y) for x, y in contour])
            start, *others = points
            contours.append(Curve(start, tuple([Step(point) for point in others]), text.pen, closed=True))
        pen_x += metrics.advances[letter]
    return Region(tuple(contours), text.pen)


@cache
def _glyph(letter: str) -> tuple[Contour, ...]:
    """The contours of one letter in em units, each at least a triangle, no point given twice running."""
    from fontTools.pens.recordingPen import DecomposingRecordingPen

    font = fonts.opened()
    glyphs = font.getGlyphSet()
    pen = DecomposingRecordingPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    em = font["head"].unitsPerEm
    contours = []
    for operator, points in pen.value:
        if operator == "moveTo":
            contours.append([points[0]])
        elif operator == "lineTo":
            contours[-1].append(points[0])
        elif operator == "qCurveTo":
            contours[-1].extend(_flattened(contours[-1][-1], points, FURTHEST * em))
    simple = (_without_repeats(contour) for contour in contours)
    return tuple([tuple([Point(x / em, y / em) for x, y in contour]) for contour in simple if len(contour) > 2])


def _flattened(start: Units, points: Sequence[Units], furthest: float) -> Iterator[Units]:
    """Points along a run of quadratic curves, in font units.

    A quadratic with corners A, B, C lies at most |A - 2B + C| / (4 n^2) off n chords of equal parameter steps.
    """
    from fontTools.pens.basePen import decomposeQuadraticSegment

    for (bend_x, bend_y), (end_x, end_y) in decomposeQuadraticSegment(points):
        bent = math.hypot(start[0] - 2 * bend_x + end_x, start[1] - 2 * bend_y + end_y)
        count = max(1, math.ceil(math.sqrt(bent / (4 * furthest))))
        for k in range(1, count + 1):
            t = k / count
            a, b, c = (1 - t) * (1 - t), 2 * t * (1 - t), t * t
            yield a * start[0] + b * bend_x + c * end_x, a * start[1] + b * bend_y + c * end_y
        start = (end_x, end_y)


def _without_repeats(contour: list[Units]) -> list[Units]:
    """The contour without points that repeat the one before, counted round its closing."""
    return [point for before, point in zip(contour[-1:] + contour[:-1], contour, strict=True) if point != before]
