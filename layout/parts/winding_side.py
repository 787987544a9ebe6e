"""The winding picture seen from the right side, cut through the middle: how the thread goes round both frame ends."""

from __future__ import annotations

from layout.drawing.figures import arrow_head, centred, knot
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Region, Shape, Step, Text, arc, circle
from layout.parts.winding_scale import Scale
from layout.plan import Plan

_OFF = 0.6  # the middle of the thread lies so far off the bar


def side_view(plan: Plan, scale: Scale, metrics: FontMetrics) -> list[Shape]:
    """Sections of both ends, the loop of the first wind with its two passes numbered, and what lies on which side."""
    x = scale.outer / 2 + scale.apart + scale.beside / 2
    radius = scale.bar / 2
    centres = (Point(x, radius), Point(x, scale.reach - radius))
    shapes: list[Shape] = []
    for centre in centres:
        outline = circle(centre, radius, Pen.TINT)
        shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.HELP)]
    shapes.append(_loop(centres, radius + _OFF))
    shapes += _passes(plan, scale, x, radius + _OFF, metrics)
    near = centres[0 if plan.kit.weaving.near_end == "bottom" else 1]
    shapes.append(knot(Point(near.x - radius - _OFF, near.y)))
    return shapes + _words(scale, x, metrics)


def _loop(centres: tuple[Point, Point], radius: float) -> Path:
    """The thread round both ends, from the face over the upper end and behind back to the lower one."""
    low, high = centres
    start = Point(low.x - radius, low.y)
    up = Step(Point(high.x - radius, high.y))
    down = Step(Point(low.x + radius, low.y))
    return Path(start, (up, *arc(high, radius, 180, 0), down, *arc(low, radius, 0, -180)), Pen.THREAD)


def _passes(plan: Plan, scale: Scale, x: float, radius: float, metrics: FontMetrics) -> list[Shape]:
    """An arrow and a number on each of the first two passes; the face lies to the left."""
    weaving = plan.kit.weaving
    up = 1 if weaving.near_end == "bottom" else -1
    face_first = weaving.first_pass == "face"
    shapes: list[Shape] = []
    for side, number, way in (
        (-1, 1 if face_first else 2, up if face_first else -up),
        (1, 2 if face_first else 1, -up if face_first else up),
    ):
        at = Point(x + side * radius, scale.reach / 2)
        shapes.append(arrow_head(at, Point(0, way)))
        shapes.append(centred(str(number), Point(at.x - side * 3.5, at.y), metrics))
    return shapes


def _words(scale: Scale, x: float, metrics: FontMetrics) -> list[Text]:
    y = scale.reach + scale.past + 0.5 * scale.row
    return [
        centred("face", Point(x - scale.bar / 2 - 4, y), metrics),
        centred("behind", Point(x + scale.bar / 2 + 5, y), metrics),
        centred("from the right", Point(x, -scale.past - 0.5 * scale.row), metrics),
    ]
