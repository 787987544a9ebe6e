"""Where everything of a printer check must stand, from the size of its sheet alone, said once more on purpose."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import NamedTuple

from layout.drawing.shapes import Point

LETTERS = "AB", "CD", "EF", "GH"
_ENDS = {True: (1.6, 3.4), False: (1.0, 2.3)}  # of spans along a side, and of diagonals
MARGINS = tuple(range(3, 13))
WIDTHS = 0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 0.9
CARD = 85.60, 53.98, 3.18  # ISO/IEC 7810, ID-1
LONG_RULE = 300.0  # a longer diagonal has a cross in its middle

_FIVE = 5
_RULE = 22.0, 24.8, 37.0  # from the left and the lower edge, and what it leaves free at the right
_UPRIGHT, _ACROSS = 27.0, 36.0
_RUNG, _NEXT = 3.8, 4.6
_INCH = 25.4
_MM_TICKS, _INCH_TICKS = ((10, 4.0), (5, 3.0), (1, 2.0)), ((16, 4.0), (8, 3.3), (4, 2.6), (2, 2.0), (1, 1.4))
_NUMBER_OFF, _LAST_CLEAR = 0.6, 8.0

Line = tuple[Point, Point]


class Span(NamedTuple):
    """A span from `one` to `other`, and its letters."""

    letters: str
    one: Point
    other: Point

    @property
    def long(self) -> float:
        """In mm."""
        return math.dist(self.one, self.other)


class Number(NamedTuple):
    """A number of a rule: where its tick ends, and whether the rule lies flat; `unit` is "mm", "in" or nothing."""

    value: int
    unit: str
    at: Point
    flat: bool
    side: int


def spans_on(width: float, height: float) -> tuple[Span, ...]:
    """Across and up in whole steps of 5 mm inside margins of 8 and 13 mm; diagonals in whole mm."""
    across = _FIVE * math.floor((width - 18) / _FIVE)
    up = _FIVE * math.floor((height - 28) / _FIVE)
    turn = math.atan2(height - 30.8, width - 30)
    long = math.floor(math.hypot(height - 30.8, width - 30))
    x, y = width / 2, height / 2
    dx, dy = long * math.cos(turn) / 2, long * math.sin(turn) / 2
    return (
        Span(LETTERS[0], Point(x - across / 2, _ACROSS), Point(x + across / 2, _ACROSS)),
        Span(LETTERS[1], Point(width - _UPRIGHT, y - up / 2), Point(width - _UPRIGHT, y + up / 2)),
        Span(LETTERS[2], Point(x - dx, y - dy), Point(x + dx, y + dy)),
        Span(LETTERS[3], Point(x - dx, y + dy), Point(x + dx, y - dy)),
    )


def marks_of(span: Span) -> Iterator[tuple[str, Line, tuple[Line, Line]]]:
    """Of each end its letter, its fine line, and the two bold ones that go on from it, square to the span."""
    ux, uy = (span.other.x - span.one.x) / span.long, (span.other.y - span.one.y) / span.long

    def at(end: Point, off: float) -> Point:
        return Point(end.x - uy * off, end.y + ux * off)

    fine, bold = _ENDS[span.letters in LETTERS[:2]]
    for letter, end in zip(span.letters, (span.one, span.other), strict=True):
        both = (at(end, fine), at(end, bold)), (at(end, -fine), at(end, -bold))
        yield letter, (at(end, -fine), at(end, fine)), both


def rules_on(width: float, height: float) -> tuple[list[Line], list[Number]]:
    """Every line of both rules, and their numbers."""
    flat = 10 * math.floor((width - _RULE[2] - _RULE[0]) / 10)
    span = spans_on(width, height)[1]
    lines: list[Line] = []
    numbers: list[Number] = []
    for origin, long, is_flat in ((Point(*_RULE[:2]), flat, True), (span.one, round(span.long), False)):
        way = (1.0, 0.0) if is_flat else (0.0, 1.0)
        lines.append((origin, Point(origin.x + long * way[0], origin.y + long * way[1])))
        for parts, per, ticks, side, unit in ((1, 1, _MM_TICKS, 1, "mm"), (16, _INCH, _INCH_TICKS, -1, "in")):
            count = math.floor(long * parts / per + 1e-9)
            kept = [k for k in range(count + 1) if is_flat or 0 < k * per / parts < long - 1e-9]
            every = ticks[0][0]
            numbered = [k for k in kept if k % every == 0 and (is_flat or k * per / parts < long - _LAST_CLEAR)]
            for k in kept:
                at = Point(origin.x + k * per / parts * way[0], origin.y + k * per / parts * way[1])
                reach = side * next(high for step, high in ticks if k % step == 0)
                end = Point(at.x - reach * way[1], at.y + reach * way[0])
                lines.append((at, end))
                if k in numbered:
                    value = k if unit == "mm" else k // every
                    off = side * _NUMBER_OFF
                    beyond = Point(end.x - off * way[1], end.y + off * way[0])
                    numbers.append(Number(value, unit if k == numbered[-1] else "", beyond, is_flat, side))
    return lines, numbers


class Rung(NamedTuple):
    """A line of a ladder of margins: so many mm from an edge, and the box in which its number stands."""

    margin: int
    edge: str
    line: Line
    number: tuple[float, float, float, float]


def rungs_on(width: float, height: float) -> Iterator[Rung]:
    """All lines of the four ladders."""
    target = 75.0 if width >= 160 else 0.36 * width
    below, above = target + 5, max(46.0, width / 2 - 54)
    aside = height - (52 if height >= 180 else 34)
    for k, margin in enumerate(MARGINS):
        off = k * _NEXT
        for edge, x, y, low in (("lower", below + off, margin, 13.0), ("upper", above + off, height - margin, 0.0)):
            box = (low, 16.5) if edge == "lower" else (height - 16.5, height - 13)
            yield Rung(margin, edge, (Point(x, y), Point(x + _RUNG, y)), (x - 0.5, box[0], x + _RUNG + 0.5, box[1]))
        for edge, x in (("left", float(margin)), ("right", width - margin)):
            y = aside - off
            sides = (13.0, 17.5) if edge == "left" else (width - 17.5, width - 13.0)
            yield Rung(margin, edge, (Point(x, y), Point(x, y - _RUNG)), (sides[0], y - _RUNG, sides[1], y))
