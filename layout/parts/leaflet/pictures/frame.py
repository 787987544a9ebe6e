"""Steps 1 and 2: the frame with its diagonals and the middles of both ends; the marks on the near end."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, circle, line, rectangle
from layout.drawing.signs import triangle
from layout.drawing.symbols import block, notched_block
from layout.drawing.typeset import SMALL
from layout.parts.held import is_held
from layout.parts.leaflet.pictures.ground import HIGH, WIDE
from layout.parts.leaflet.winds import mark_of
from layout.plan import Plan

_MOST_WIDE, _TICK = 26.0, 2.0
_MARKS, _APART, _FIRST = 8, 3.6, 5.0
_LOW, _TOP, _FIFTH, _PAPER = 6.0, 18.0, 5, 2.4


def frame(plan: Plan, _: FontMetrics) -> list[Shape]:
    """The frame in its own proportions."""
    size, ends = plan.kit.frame, plan.kit.frame.ends
    wide, high = float(size.outer_width.mm), float(size.outer_height.mm)
    scale = min(_MOST_WIDE / wide, (HIGH - 2 * _TICK) / high)
    half, tall = wide * scale / 2, high * scale / 2
    middle = Point(WIDE / 2, HIGH / 2)
    side = min(half / 2, max(1.2, float(size.side_width.mm) * scale))
    end = min(tall / 2, max(1.2, float(ends.wide_mm or size.side_width.mm) * scale))
    left, right, low, top = middle.x - half, middle.x + half, middle.y - tall, middle.y + tall
    boxes = (
        (left, low, left + side, top),
        (right - side, low, right, top),
        (left + side, low, right - side, low + end),
        (left + side, top - end, right - side, top),
    )
    shapes: list[Shape] = [shape for each in boxes for shape in block(*each, Pen.OUTLINE)]
    inner = rectangle(left + side, low + end, right - side, top - end, Pen.HELP).points()
    shapes += [line(inner[k], inner[k + 2], Pen.CENTRE) for k in (0, 1)]
    for edge, way in ((low, 1), (top, -1)):
        shapes.append(
            line(Point(middle.x, edge - way * _TICK / 2), Point(middle.x, edge + way * (end + 0.6)), Pen.THREAD)
        )
    return shapes


def marks(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """The near end with its first marks, numbered from the side where the winding begins, and the pencil mark."""
    toward, count = plan.warp.toward, min(_MARKS, len(plan.warp.near))
    first = _FIRST if toward > 0 else WIDE - _FIRST
    places = [first + toward * _APART * k for k in range(count)]
    draw = _ALONE.get(plan.warp.kind, _strip) if is_held(plan, "strips", "strip-near", "strip-far") else _pencilled
    shapes = draw(plan, places)
    number = mark_of(plan, 0, "near")
    for k, x in enumerate(places):
        if k == 0 or (number + k) % _FIFTH == 0:
            said = str(number + k)
            at = Point(x - metrics.width(said, SMALL, Pen.STRONG) / 2, _TOP + 1.6)
            shapes.append(Text(at, SMALL, said, pen=Pen.STRONG))
    return shapes


def _board() -> list[Shape]:
    return list(block(0, _LOW, WIDE, _TOP, Pen.OUTLINE))


def _pen(plan: Plan, k: int) -> Pen:
    return Pen.TEN if k == 0 or (mark_of(plan, 0, "near") + k) % _FIFTH == 0 else Pen.MARK


def _strip(plan: Plan, places: list[float]) -> list[Shape]:
    """A strip wrapped round a bar; its triangle meets the pencil mark in the middle of the bar."""
    paper = rectangle(_PAPER, _LOW - 1.2, WIDE - _PAPER, _TOP, Pen.OUTLINE)
    shapes: list[Shape] = [*block(0, _LOW, _PAPER, _TOP - 1.2, Pen.OUTLINE)]
    shapes += [*block(WIDE - _PAPER, _LOW, WIDE, _TOP - 1.2, Pen.OUTLINE), paper]
    shapes += [line(Point(x, _LOW - 1.2), Point(x, _TOP), _pen(plan, k)) for k, x in enumerate(places)]
    return [*shapes, *_centre()]


def _pencilled(plan: Plan, places: list[float]) -> list[Shape]:
    marked = [line(Point(x, _LOW), Point(x, _TOP), _pen(plan, k)) for k, x in enumerate(places)]
    return [*_board(), *marked, *_centre()]


def _centre() -> list[Shape]:
    """A pencil mark on the bar, and the triangle that meets it."""
    low = _LOW - 1.2
    return [
        triangle(Point(WIDE / 2, low), Point(0, 1)),
        line(Point(WIDE / 2, low - 4.6), Point(WIDE / 2, low - 2.1), Pen.THREAD),
    ]


def _notches(_: Plan, places: list[float]) -> list[Shape]:
    shapes: list[Shape] = list(notched_block(0, WIDE, _TOP, _LOW, sorted(places), 1.2, _TOP - 4, Pen.OUTLINE))
    return shapes


def _pegs(_: Plan, places: list[float]) -> list[Shape]:
    """Two rows by turns."""
    holes = [circle(Point(x, _TOP - (3.4 if k % 2 == 0 else 7.0)), 1.0, Pen.HOLE) for k, x in enumerate(places)]
    return [*_board(), *holes]


def _nails(_: Plan, places: list[float]) -> list[Shape]:
    return [*_board(), *(circle(Point(x, (_LOW + _TOP) / 2), 0.7, Pen.HOLE) for x in places)]


_ALONE: Mapping[str, Callable[[Plan, list[float]], list[Shape]]] = {
    "notched": _notches,
    "pegged": _pegs,
    "nailed": _nails,
}
