"""Words and shapes that hang down from y = 0, as the sheets that are read are put together from them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text
from layout.drawing.typeset import is_tall, leading, wrap


class Hanging(NamedTuple):
    """Shapes below y = 0 and to the right of x = 0, and how far down they reach."""

    shapes: tuple[Shape, ...]
    high: float

    def at(self, x: float, y: float) -> list[Shape]:
        """The same with its upper left corner at (x, y)."""
        return Placing(0, x, y).shapes(self.shapes)


def rows_of(
    words: str, size: float, wide: float, first: float, metrics: FontMetrics, pen: Pen = Pen.TEXT
) -> list[Text]:
    """`words` in lines of at most `wide` mm from x = 0, the first baseline at y = `first`."""
    rows: list[Text] = []
    y = first
    for row in wrap(words, size, wide, metrics, pen):
        y -= leading(size, tall=is_tall(row)) if rows else 0.0
        rows.append(Text(Point(0, y), size, row, pen=pen))
    return rows


def stack(parts: Sequence[Hanging], gap: float) -> Hanging:
    """One under the other, so far apart."""
    shapes: list[Shape] = []
    y = 0.0
    for part in parts:
        y -= gap if shapes else 0.0
        shapes += part.at(0, y)
        y -= part.high
    return Hanging(tuple(shapes), -y)


def beside(parts: Sequence[Hanging], step: float) -> Hanging:
    """One beside the other, each begins `step` mm after the one before."""
    shapes = [shape for k, part in enumerate(parts) for shape in part.at(k * step, 0)]
    return Hanging(tuple(shapes), max(part.high for part in parts))
