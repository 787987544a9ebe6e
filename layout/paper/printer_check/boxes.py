"""The boxes of what is drawn on a printer check, words by their letters, so that targets keep clear of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.boxes import box_around
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text


def boxes_of(shapes: Sequence[Shape], metrics: FontMetrics) -> Iterator[Box]:
    """The box of each shape with its ink; of words that of their letters."""
    for shape in shapes:
        if isinstance(shape, Text):
            wide, high = metrics.width(shape.words, shape.size, shape.pen), metrics.ascent * shape.size
            low = metrics.descent * shape.size
            (x, y) = shape.at
            yield (x, y + low, x + wide, y + high) if shape.angle == 0 else (x - high, y, x - low, y + wide)
            continue
        points = [at for path in (shape.contours if isinstance(shape, Region) else (shape,)) for at in _points(path)]
        ink = 0.0 if shape.pen is Pen.SOLID else shape.pen.ink.width / 2
        yield box_around(points, ink)


def _points(path: Curve) -> Iterator[Point]:
    yield path.start
    for end, through in path.steps:
        yield end
        if through:
            yield through
