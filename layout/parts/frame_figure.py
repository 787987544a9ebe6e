"""A small picture of a frame in its true proportions: its sides and ends, both diagonals, and its outer dimensions."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, line
from layout.drawing.symbols import arrow_head, block, centred
from layout.drawing.typeset import SMALL
from layout.frames.frame import Frame
from layout.messages.english import ENGLISH
from layout.messages.roles import Check
from layout.values.units import Length, mm_in, say_length, say_number

WIDE, _HIGH = 72.0, 96.0
_BESIDE = 9.0  # what a dimension line and its words take
_BAR, _LEAST = 4.0, 1.2  # the height of a frame end in the picture, and the least width of a side


def frame_figure(frame: Frame, metrics: FontMetrics) -> tuple[list[Shape], float]:
    """The picture within WIDE mm from x = 0, its top at y = 0; and the y of its foot."""
    width, height = float(frame.outer_width.mm), float(frame.outer_height.mm)
    scale = min((WIDE - _BESIDE) / width, (_HIGH - _BESIDE) / height)
    wide, high = width * scale, height * scale
    left = _BESIDE + (WIDE - _BESIDE - wide) / 2
    shapes = Placing(0, left, -high).shapes(_frame(frame, wide, high, scale))
    shapes += _across(frame.outer_width, left, wide, -high - _BESIDE, metrics)
    shapes += _upward(frame.outer_height, left - _BESIDE, high, metrics)
    return shapes, -high - _BESIDE - 0.5


def _frame(frame: Frame, wide: float, high: float, scale: float) -> list[Shape]:
    """The frame from (0, 0): its parts, its outline as it is measured, both diagonals and its centre line."""
    side = min(max(float(frame.side_width.mm) * scale, _LEAST), wide / 3)
    wide_mm = frame.ends.wide_mm
    bar = min(_BAR if wide_mm is None else float(wide_mm) * scale, high / 4)
    shapes: list[Shape] = []
    for low in (0.0, high - bar):
        shapes += block(side, low, wide - side, low + bar)
    for x in (0.0, wide - side):
        shapes += block(x, 0.0, x + side, high)
    corners = [Point(0, 0), Point(wide, 0), Point(wide, high), Point(0, high)]
    shapes += [line(one, other, Pen.REGISTER) for one, other in zip(corners, corners[1:] + corners[:1], strict=True)]
    shapes += [line(corners[k], corners[k + 2], Pen.CENTRE) for k in (0, 1)]
    shapes.append(line(Point(wide / 2, 0), Point(wide / 2, high), Pen.CENTRE))
    return shapes


def _across(length: Length, left: float, wide: float, y: float, metrics: FontMetrics) -> list[Shape]:
    return Placing(0, left, y).shapes(_dimension(length, wide, wide / 2, metrics))


def _upward(length: Length, x: float, high: float, metrics: FontMetrics) -> list[Shape]:
    longer = metrics.width(both(length), SMALL) > high  # then the words end with the line, and begin before it
    middle = high - metrics.width(both(length), SMALL) / 2 if longer else high / 2
    return Placing(90, x + _BESIDE / 2 + 2.5, -high).shapes(_dimension(length, high, middle, metrics))


def _dimension(length: Length, span: float, middle: float, metrics: FontMetrics) -> list[Shape]:
    """A dimension line from x = 0 to `span` with its length in both systems under it, about x = `middle`."""
    y = SMALL + 2.0
    ends = (Point(0, y), Point(span, y))
    return [
        line(*ends, Pen.HELP),
        *(line(Point(x, y - 1.2), Point(x, y + 1.2), Pen.HELP) for x in (0.0, span)),
        arrow_head(Point(1.3, y), Point(-1, 0)),
        arrow_head(Point(span - 1.3, y), Point(1, 0)),
        centred(both(length), Point(middle, y - 2.6), metrics),
    ]


def both(length: Length) -> str:
    """A length in its own unit, and in the other system to 0.1 mm or 0.01 in."""
    metric, inches = f"{say_number(length.mm, 1)} mm", f"{say_number(length.mm / mm_in('in'), 2)} in"
    other = metric if length.imperial else inches
    return ENGLISH.say(Check.DIMENSION, length=say_length(length), other=other)
