"""The picture of a frame check: the frame with what is measured on it in rings, and its outer dimensions."""

from __future__ import annotations

import math
from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, filled, line, polygon, rectangle
from layout.drawing.signs import LARGE_RING, dimension, ring
from layout.drawing.symbols import centred
from layout.drawing.typeset import SMALL
from layout.messages.roles import Check
from layout.parts.check_items import ends_words
from layout.parts.hanging import Hanging
from layout.plan import Plan
from layout.values.by_rule import by_rule

BEND_HIGH = 25.0
"""How high the picture of a bent frame end is, in mm."""

_LEFT, _UNDER, _HALVES, _BOTH, _BESIDE, _LAST = 8.4, 17.0, 6.5, 13.0, 4.8, 0.8
_STEEPEST = 3  # a longer frame is drawn shorter, so that its rings find room
_BAR, _LEAST_BAR, _LEAST_SIDE, _MARK, _FROM_MARK = 4.0, 2.0, 3.8, 1.4, 4.2
_ALONG = 0.28  # where on a diagonal its ring stands
_SPAN, _SAG, _THICK, _THREADS, _LONG = 58.0, 2.5, 4.6, 7, 9.6


def frame_figure(plan: Plan, wide: float, high: float, metrics: FontMetrics) -> Hanging:
    """The frame within `wide` x `high` mm, its dimensions with it."""
    frame, imperial = plan.kit.frame, plan.kit.frame.outer_width.imperial
    width, height = float(frame.outer_width.mm), float(frame.outer_height.mm)
    ratio = min(max(width / height, 1 / _STEEPEST), _STEEPEST)
    across = min(wide - _LEFT, (high - _MARK - _UNDER) * ratio)
    up = across / ratio
    low = -_MARK - up
    shapes = Placing(0, _LEFT, low).shapes([*_frame(plan, across, up), *_rings(plan, across, up, metrics)])
    half, whole, upright = (
        by_rule(mm, plan.words, imperial=imperial)
        for mm in (frame.outer_width.mm / 2, frame.outer_width.mm, frame.outer_height.mm)
    )
    shapes += Placing(0, _LEFT, low).shapes(_dimensions(across, up, half, whole, upright, metrics))
    return Hanging(tuple(shapes), _BOTH + _LAST - low)


def _sizes(plan: Plan, wide: float, high: float) -> tuple[float, float]:
    """How wide a side and how high a frame end is drawn."""
    frame = plan.kit.frame
    scale = wide / float(frame.outer_width.mm)
    side = min(max(float(frame.side_width.mm) * scale, _LEAST_SIDE), wide / 5)
    deep = frame.ends.wide_mm if frame.end_width is None else frame.end_width.mm
    bar = _BAR if deep is None else max(float(deep) * scale, _LEAST_BAR)
    return max(side, _LEAST_SIDE), min(bar, high / 6)


def _frame(plan: Plan, wide: float, high: float) -> Iterator[Shape]:
    """From (0, 0): sides and ends in grey, the outline as it is measured, the pencil marks, both diagonals."""
    side, bar = _sizes(plan, wide, high)
    for left in (0.0, wide - side):
        yield filled(rectangle(left, 0, left + side, high, Pen.TINT).points(), Pen.TINT)
        x = left or side
        yield line(Point(x, 0), Point(x, high), Pen.OUTLINE)
    for low in (0.0, high - bar):
        yield filled(rectangle(side, low, wide - side, low + bar, Pen.TINT).points(), Pen.TINT)
        y = low or bar
        yield line(Point(side, y), Point(wide - side, y), Pen.OUTLINE)
    yield rectangle(0, 0, wide, high, Pen.OUTLINE)
    middle = wide / 2
    yield line(Point(middle, -_MARK), Point(middle, bar + _MARK), Pen.THREAD)
    yield line(Point(middle, high - bar - _MARK), Point(middle, high + _MARK), Pen.THREAD)
    free = LARGE_RING / math.hypot(wide, high)
    for begin, end in ((Point(0, high), Point(wide, 0)), (Point(wide, high), Point(0, 0))):
        yield line(begin, _between(begin, end, _ALONG - free), Pen.CENTRE)
        yield line(_between(begin, end, _ALONG + free), end, Pen.CENTRE)


def _between(begin: Point, end: Point, share: float) -> Point:
    return Point(begin.x + (end.x - begin.x) * share, begin.y + (end.y - begin.y) * share)


def _on_diagonals(wide: float, high: float) -> tuple[Point, Point]:
    """Where the rings of the diagonals stand: in their upper halves, as far from either side."""
    y = high * (1 - _ALONG)
    return Point(wide * _ALONG, y), Point(wide * (1 - _ALONG), y)


def _rings(plan: Plan, wide: float, high: float, metrics: FontMetrics) -> Iterator[Shape]:
    side, bar = _sizes(plan, wide, high)
    inside = bar + _MARK + _FROM_MARK
    places = {
        "1": _on_diagonals(wide, high),
        "2": (Point(side / 2, high / 2), Point(wide - side / 2, high / 2)),
        "3": (Point(wide / 2, high - inside), Point(wide / 2, inside)),
    }
    for number, points in places.items():
        for at in points:
            yield from ring(at, number, metrics, LARGE_RING)


def _dimensions(wide: float, high: float, half: str, whole: str, upright: str, metrics: FontMetrics) -> Iterator[Shape]:
    """Half and whole width under the frame, its height beside it; the halves only where there is room for them."""
    yield from dimension(Point(0, -_BOTH), Point(wide, -_BOTH), whole, metrics)
    yield from dimension(Point(-_BESIDE, 0), Point(-_BESIDE, high), upright, metrics)
    for y in (0.0, high):
        yield line(Point(-_BESIDE - _LAST, y), Point(-1, y), Pen.HELP)
    for x in (0.0, wide):
        yield line(Point(x, -_BOTH - _LAST), Point(x, -1), Pen.HELP)
    if metrics.width(half, SMALL) + 4 <= wide / 2:
        yield from dimension(Point(0, -_HALVES), Point(wide / 2, -_HALVES), half, metrics)
        yield from dimension(Point(wide / 2, -_HALVES), Point(wide, -_HALVES), half, metrics)
        yield line(Point(wide / 2, -_HALVES - _LAST), Point(wide / 2, -_MARK - 1), Pen.HELP)


def bend_figure(plan: Plan, number: str, metrics: FontMetrics) -> Hanging:
    """A frame end that the warp bends, the thread stretched along it, and the gap between them."""
    say = plan.words.say
    shapes: list[Shape] = [*ring(Point(2.4, -2.4), number, metrics)]
    shapes.append(Text(Point(7.0, -3.4), SMALL, say(ends_words(plan).bent)))
    foot = -BEND_HIGH + 6.0
    arch = [Point(_SPAN * k / 24, _SAG * math.sin(math.pi * k / 24)) for k in range(25)]
    upper = [Point(x, foot + _THICK + y) for x, y in arch]
    lower = [Point(x, foot + y) for x, y in arch]
    outline = [*upper, *reversed(lower)]
    shapes += [filled(outline, Pen.TINT), polygon(outline, Pen.OUTLINE)]
    for k in range(_THREADS):
        x = _SPAN / 2 + (k - _THREADS // 2) * 8.0
        low = foot + _THICK + _SAG * math.sin(math.pi * x / _SPAN) + 0.3
        shapes.append(line(Point(x, low), Point(x, foot + _THICK + _LONG), Pen.THREAD))
    shapes.append(line(Point(-1.0, foot - 0.4), Point(_SPAN + 1, foot - 0.4), Pen.OUTLINE))
    middle = _SPAN / 2
    shapes.append(line(Point(middle, foot - 2.4), Point(middle, foot + _SAG - 0.3), Pen.HELP))
    shapes.append(centred(say(Check.GAP), Point(middle, foot - 4.4), metrics))
    shapes.append(Text(Point(_SPAN + 3.0, foot - 1.3), SMALL, say(Check.STRETCHED)))
    return Hanging(tuple(shapes), BEND_HIGH)
