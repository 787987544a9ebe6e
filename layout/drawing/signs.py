"""The signs of the sheets: scissors, numbers in rings and tiles, triangles, arrows, dots, leaders, dimensions, maps."""

from __future__ import annotations

import math
from collections.abc import Iterable

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Region, Shape, Text, circle, filled, line, rectangle
from layout.drawing.symbols import arrow_head
from layout.drawing.typeset import LEAD, SMALL

RING, LARGE_RING, STEP_TILE = 2.4, 3.2, 8.0
"""Radius of a ring for an action and of a large one in a picture, and the side of a small step tile, in mm."""

DOT = 0.5
"""Radius of a unit dot and of the dot at the end of a leader, in mm."""

PIECE_WIDE, PIECE_HIGH = 12.0, 17.0
"""The size of one piece in a key map, in mm."""

_EYE, _EYE_APART = 0.8, 1.15
_BLADE = (0.55, -0.5), (0.85, -0.85), (4.85, 0.5)
_SHAFT, _HEAD, _HEAD_WIDE, _OVERLAP = 2.0, 2.2, 1.8, 0.5
_DIMENSION_WIDE, _DIMENSION_OFF, _WORDS_UP = 1.4, 0.1, 1.4


EYES = 1.95 + 0.17
"""How far the eyes of scissors reach past the line that they stand on, with their own line, in mm."""


def scissors(at: Point, turn: float = 0.0) -> list[Shape]:
    """A pair of scissors on a cut line through `at`, where its eyes stand at both sides; the blades lie along `turn`.

    `turn` is in degrees from the x axis. The blades end 4.85 mm from `at`, and the eyes reach 1.95 mm to each side.
    """
    shapes: list[Shape] = []
    for side in (1, -1):
        shapes.append(circle(Point(0, side * _EYE_APART), _EYE, Pen.OUTLINE))
        shapes.append(filled([Point(x, -side * y) for x, y in _BLADE], Pen.SOLID))
    return Placing(turn, at.x, at.y).shapes(shapes)


def ring(at: Point, words: str, metrics: FontMetrics, radius: float = RING) -> list[Shape]:
    """A number or a letter in a ring about `at`, white inside: a thing to do, here and in the list."""
    large = radius > RING
    size, pen = (LEAD, Pen.OUTLINE) if large else (SMALL, Pen.RING)
    white = Region((circle(at, radius - pen.ink.width / 2, Pen.PAPER),), Pen.PAPER)  # it is painted over the ring
    return [white, circle(at, radius, pen), _in_the_middle(words, at, size, Pen.STRONG, metrics)]


def step_tile(at: Point, words: str, metrics: FontMetrics) -> list[Shape]:
    """A black square of 8 mm about `at` with a white number: a step of the work."""
    half = STEP_TILE / 2
    outline = rectangle(at.x - half, at.y - half, at.x + half, at.y + half, Pen.SOLID)
    return [Region((outline,), Pen.SOLID), _in_the_middle(words, at, LEAD, Pen.ON_BLACK, metrics)]


def triangle(tip: Point, way: Point, long: float = 2.1, wide: float = 2.2) -> Region:
    """A filled triangle with its tip at `tip` that points the way of the vector `way`."""
    length = math.hypot(*way)
    middle = Point(tip.x - way.x / length * long / 2, tip.y - way.y / length * long / 2)
    return arrow_head(middle, way, long, wide)


def small_arrow(tip: Point, way: Point) -> list[Shape]:
    """A short arrow with its tip at `tip`, 3.7 mm long, that points the way of the vector `way`."""
    length = math.hypot(*way)
    x, y = way.x / length, way.y / length
    near, far = _HEAD - _OVERLAP, _HEAD - _OVERLAP + _SHAFT
    shaft = line(Point(tip.x - far * x, tip.y - far * y), Point(tip.x - near * x, tip.y - near * y), Pen.OUTLINE)
    return [shaft, triangle(tip, way, _HEAD, _HEAD_WIDE)]


def dots(points: Iterable[Point], *, full: bool) -> list[Shape]:
    """A dot at each point, `full` or open: units that no one takes for a line to cut or saw along."""
    if full:
        return [Region((circle(at, DOT, Pen.SOLID),), Pen.SOLID) for at in points]
    return [circle(at, DOT, Pen.UNIT) for at in points]


def leader(thing: Point, words: Point) -> list[Shape]:
    """A thin line from a dot on the `thing` that is named to where its `words` stand."""
    return [line(thing, words, Pen.HELP), *dots([thing], full=True)]


def dimension(one: Point, other: Point, words: str, metrics: FontMetrics) -> list[Shape]:
    """A line between two places with a head at both, and `words` over its middle, read from the left or from below."""
    if (one.x, one.y) > (other.x, other.y):
        one, other = other, one
    long = math.hypot(other.x - one.x, other.y - one.y)
    angle = math.degrees(math.atan2(other.y - one.y, other.x - one.x))
    near, far = Point(_DIMENSION_OFF, 0), Point(long - _DIMENSION_OFF, 0)
    shapes: list[Shape] = [
        line(Point(near.x + 1, 0), Point(far.x - 1, 0), Pen.HELP),
        triangle(near, Point(-1, 0), _HEAD, _DIMENSION_WIDE),
        triangle(far, Point(1, 0), _HEAD, _DIMENSION_WIDE),
        Text(Point((long - metrics.width(words, SMALL)) / 2, _WORDS_UP), SMALL, words),
    ]
    return Placing(angle, one.x, one.y).shapes(shapes)


def key_map(at: Point, rows: int, columns: int, mine: int, metrics: FontMetrics) -> list[Shape]:
    """All pieces of a drawing from their lower left corner `at`, numbered from the lower left, `mine` filled."""
    shapes: list[Shape] = []
    for k in range(rows * columns):
        row, column = divmod(k, columns)
        left, low = at.x + column * PIECE_WIDE, at.y + row * PIECE_HIGH
        outline = rectangle(left, low, left + PIECE_WIDE, low + PIECE_HIGH, Pen.OUTLINE)
        is_mine = k + 1 == mine
        if is_mine:
            shapes.append(filled(outline.points(), Pen.HELD))
        middle = Point(left + PIECE_WIDE / 2, low + PIECE_HIGH / 2)
        pen = Pen.STRONG if is_mine else Pen.TEXT
        shapes += [outline, _in_the_middle(str(k + 1), middle, LEAD, pen, metrics)]
    return shapes


def _in_the_middle(words: str, at: Point, size: float, pen: Pen, metrics: FontMetrics) -> Text:
    x, y = at.x - metrics.width(words, size, pen) / 2, at.y - metrics.cap * size / 2
    return Text(Point(x, y), size, words, pen=pen)
