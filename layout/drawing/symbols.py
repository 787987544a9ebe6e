"""What pictures are made of beside plain lines: arrow heads, knots, zigzag breaks, words set about a point."""

from __future__ import annotations

import math
from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, circle, filled, line, polygon, rectangle
from layout.drawing.typeset import SMALL


def arrow_head(centre: Point, ahead: Point, long: float = 2.6, wide: float = 1.8) -> Region:
    """A filled arrow head about `centre` that points the way of the vector `ahead`."""
    length = math.hypot(*ahead)
    dx, dy = ahead.x / length, ahead.y / length
    corners = ((long / 2, 0.0), (-long / 2, wide / 2), (-long / 2, -wide / 2))
    return filled([Point(centre.x + dx * a - dy * b, centre.y + dy * a + dx * b) for a, b in corners], Pen.SOLID)


def knot(centre: Point, radius: float = 1.15) -> Region:
    """A filled disc."""
    return Region((circle(centre, radius, Pen.SOLID),), Pen.SOLID)


def break_line(x: float, low: float, high: float) -> Curve:
    """An upright line with a zigzag in its middle, as drawings show that something is left out."""
    middle, tooth = (low + high) / 2, 1.2
    corners = (
        (x, middle - 2 * tooth),
        (x - tooth, middle - tooth),
        (x + tooth, middle + tooth),
        (x, middle + 2 * tooth),
    )
    return Curve(Point(x, low), tuple(Step(Point(*at)) for at in (*corners, (x, high))), Pen.HELP)


def block(left: float, low: float, right: float, high: float, pen: Pen = Pen.HELP) -> tuple[Shape, Shape]:
    """A piece of the frame: a tinted box with an outline."""
    outline = rectangle(left, low, right, high, pen)
    return filled(outline.points(), Pen.TINT), outline


def notched_block(
    left: float,
    right: float,
    edge: float,
    inner: float,
    notches: Sequence[float],
    wide: float,
    ground: float,
    pen: Pen = Pen.HELP,
) -> tuple[Shape, Shape]:
    """Such a piece with notches in its `edge`, each `wide` and as deep as to `ground`; it ends at y = `inner`."""
    corners = [Point(left, inner), Point(left, edge)]
    for x in notches:
        corners += [Point(x - wide / 2, edge), Point(x - wide / 2, ground), Point(x + wide / 2, ground)]
        corners.append(Point(x + wide / 2, edge))
    corners += [Point(right, edge), Point(right, inner)]
    return filled(corners, Pen.TINT), polygon(corners, pen)


def centred(words: str, at: Point, metrics: FontMetrics, size: float = SMALL) -> Text:
    """`words` with their middle, as high as capitals, at `at`."""
    return Text(Point(at.x - metrics.width(words, size) / 2, at.y - metrics.cap * size / 2), size, words)


def beside(words: str, at: Point, metrics: FontMetrics, side: int, size: float = SMALL) -> Text:
    """`words` that begin (`side` +1) or end (-1) at `at`, the middle of their capitals as high."""
    x = at.x if side > 0 else at.x - metrics.width(words, size)
    return Text(Point(x, at.y - metrics.cap * size / 2), size, words)


def stretch(one: Point, other: Point, low: float, high: float, pen: Pen) -> Curve:
    """The part of the line from `one` to `other` whose y lies between `low` and `high`."""

    def at(y: float) -> Point:
        return Point(one.x + (other.x - one.x) * (y - one.y) / (other.y - one.y), y)

    begin, end = (low, high) if one.y < other.y else (high, low)
    return line(at(begin), at(end), pen)
