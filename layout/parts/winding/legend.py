"""The legend under the winding picture: what its lines mean, and where its numbers are from."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, line
from layout.drawing.symbols import knot
from layout.drawing.typeset import SMALL
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.lines import Align, downward, row, rows_of

_SAMPLE, _KNOT, _TO_WORDS, _BETWEEN, _STEP = 10.0, 1.1, 2.0, 8.0, 4.8


def legend(face: Face, top: float, metrics: FontMetrics) -> list[Shape]:
    """Rows under y = `top`: samples with their words, and beside them or under them that nothing is to scale."""
    say, scale, kind = face.plan.words.say, face.scale, face.kind
    lower = metrics.cap * SMALL / 2
    left, right = scale.left, scale.right if scale.list_from is None else scale.list_from - _BETWEEN / 2
    x, y = left, top - lower
    shapes: list[Shape] = []
    for pen, role in _entries(kind.behind):
        said = say(role)
        wide = 2 * _KNOT if pen is Pen.SOLID else _SAMPLE
        width = wide + _TO_WORDS + metrics.width(said, SMALL)
        if x > left and x + width > right:
            x, y = left, y - _STEP
        shapes += [_sample(pen, x, y), row(said, SMALL, Point(x + wide + _TO_WORDS, y - lower), metrics)]
        x += width + _BETWEEN
    said = say(kind.source(face.plan))
    if x > left and x + metrics.width(said, SMALL) > right:
        x, y = left, y - _STEP
    rows = rows_of(said, SMALL, right - left, metrics)
    align: Align = "right" if x > left else "left"
    at = Point(right if x > left else left, y - lower)
    return [*shapes, *downward(rows, SMALL, at, metrics, align)]


def _entries(behind: Winding | None) -> Iterator[tuple[Pen, Winding]]:
    yield Pen.THREAD, Winding.ON_FACE
    if behind:
        yield Pen.THREAD_BACK, behind
    yield Pen.SOLID, Winding.KNOT


def _sample(pen: Pen, x: float, y: float) -> Shape:
    if pen is Pen.SOLID:
        return knot(Point(x + _KNOT, y), _KNOT)
    return line(Point(x, y), Point(x + _SAMPLE, y), pen)
