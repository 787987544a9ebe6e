"""How a guide lies on the warp: a picture of the lower frame end, the guide and the heading rows, from the face."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Text, filled, line, rectangle
from layout.drawing.signs import dimension, leader
from layout.drawing.typeset import SMALL, leading, wrap
from layout.messages.roles import Guide
from layout.parts.guide_words import lies
from layout.plan import Plan
from layout.warps.warp import End

_MOST, _APART, _FIRST = 12, 5.6, 21.0  # ends that are shown, their distance, the x of the leftmost
_ROWS, _HALF_PICK, _WHITE = (-9.0, -13.0), 0.46, 0.5
_EDGE, _BEHIND, _BAR, _LOW = -16.4, -28.0, -41.0, -50.0  # of guide and bar, downward
_PAST, _BAR_PAST, _DIMENSION = 6.0, 6.0, 6.0
_BAND, _MARK, _NUMBER, _TICK = Pen.EDGE.ink.width, 4.0, 7.3, 1.2
_NAMED = 3  # so many ends at the side where winding begins are numbered


class Picture(NamedTuple):
    """The shapes of a picture that hangs down from (0, 0), and how far."""

    shapes: tuple[Shape, ...]
    high: float


def shown_at(plan: Plan) -> End:
    """The heading that the picture shows: the lower one as the frame stands."""
    return "near" if plan.kit.weaving.near_end == "bottom" else "far"


def guide_picture(plan: Plan, metrics: FontMetrics) -> Picture:
    """The guide of the lower heading: where its thick edge lies, and which end goes to which mark."""
    end = shown_at(plan)
    layers = plan.warp.layers_at(end)[:_MOST]
    xs = [_FIRST + _APART * k for k in range(len(layers))]
    left, right = xs[0] - _PAST, xs[-1] + _PAST
    shapes: list[Shape] = [*_bar(left, right), *_guide(plan, xs, left, right, metrics)]
    for k, (x, layer) in enumerate(zip(xs, layers, strict=True)):
        shapes += _end(x, k, behind=layer == "back")
        shapes.append(line(Point(x, _EDGE), Point(x, _EDGE - _MARK), _pen_of(layer == "back")))
    shapes += _heading_rows(xs)
    shapes += _labels(plan, end, left, metrics)
    return Picture(tuple(shapes), -_LOW)


def _pen_of(behind: bool) -> Pen:
    return Pen.END_MARK_BACK if behind else Pen.END_MARK


def _bar(left: float, right: float) -> Iterator[Shape]:
    """The frame end."""
    outline = rectangle(left - _BAR_PAST, _LOW, right + _BAR_PAST, _BAR, Pen.OUTLINE)
    yield filled(outline.points(), Pen.TINT)
    yield outline


def _guide(plan: Plan, xs: Sequence[float], left: float, right: float, metrics: FontMetrics) -> Iterator[Shape]:
    """The guide itself: thick edge, numbers, centre, units behind."""
    yield rectangle(left, _BEHIND, right, _EDGE, Pen.OUTLINE)
    yield line(Point(left, _EDGE - _BAND / 2), Point(right, _EDGE - _BAND / 2), Pen.EDGE)
    middle = (left + right) / 2
    for k in range(1, int((right - left) / (2 * _APART)) + 1):
        for x in (middle - k * _APART, middle + k * _APART):
            yield line(Point(x, _BEHIND), Point(x, _BEHIND + _TICK), Pen.UNIT)
    for number, x in _numbered(plan, xs):
        wide = metrics.width(number, SMALL, Pen.STRONG)
        yield Text(Point(x - wide / 2, _EDGE - _NUMBER), SMALL, number, pen=Pen.STRONG)


def _numbered(plan: Plan, xs: Sequence[float]) -> Iterator[tuple[str, float]]:
    """The first ends from where winding begins, and the last one."""
    ordered = list(xs)[:: plan.warp.toward]
    yield from ((str(k), x) for k, x in enumerate(ordered[:_NAMED], 1))
    if len(ordered) > _NAMED + 1:
        yield str(plan.warp.ends), ordered[-1]


def _end(x: float, k: int, *, behind: bool) -> Iterator[Curve]:
    """An end from above the heading to the frame end: over one row, under the other, hidden by the guide."""
    under = _ROWS[k % 2]
    clear = _HALF_PICK + _WHITE
    for high, low in ((0.0, under + clear), (under - clear, _EDGE)):
        yield line(Point(x, high), Point(x, low), Pen.THREAD)
    low, pen = (_BAR, Pen.THREAD_BACK) if behind else (_LOW, Pen.THREAD)
    yield line(Point(x, _BEHIND), Point(x, low), pen)


def _heading_rows(xs: Sequence[float]) -> Iterator[Curve]:
    """Two rows of weft that pass over the ends and under them by turns, broken where an end lies over them."""
    clear = Pen.THREAD.ink.width / 2 + _WHITE
    for row, y in enumerate(_ROWS):
        over = [x for k, x in enumerate(xs) if k % 2 != row]
        edges = [xs[0] - _APART * 0.8, *(side for x in over for side in (x - clear, x + clear)), xs[-1] + _APART * 0.8]
        for begin, end in list(pairwise(edges))[::2]:
            yield line(Point(begin, y), Point(end, y), Pen.PICK)
    x = xs[-1] + _APART * 0.8
    yield line(Point(x, _ROWS[0]), Point(x, _ROWS[1]), Pen.PICK)


def _labels(plan: Plan, end: End, left: float, metrics: FontMetrics) -> Iterator[Shape]:
    """What the rows are, how far the guide lies from the outer edge, and which frame end this is."""
    say = plan.words.say
    yield from dimension(Point(_DIMENSION, _LOW), Point(_DIMENSION, _EDGE), lies(plan, end).away, metrics)
    for y in (_EDGE, _LOW):
        yield line(Point(_DIMENSION - 1, y), Point(left - (1.0 if y == _EDGE else _BAR_PAST + 0.5), y), Pen.HELP)
    lines = wrap(say(Guide.ROWS), SMALL, left - 2.0, metrics)
    top = _ROWS[0] + 2.0
    for k, words in enumerate(lines):
        yield Text(Point(0.0, top - k * leading(SMALL)), SMALL, words)
    yield from leader(Point(_FIRST - _APART * 0.6, _ROWS[1]), Point(left - 3.5, _ROWS[1] - 0.4))
