"""A sign for each operation, of a shape of its own: a block is engraved, dashes are scored, a bar is cut.

It has the colour that the operation has in the cutter's files.
"""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, rectangle

SWATCH = 10.0
"""How long each is, in mm."""

_BLOCK, _BAR, _DASH, _DASHES, _APART = 4.4, 1.6, 1.9, 4, 0.8


def swatch(operation: str, at: Point) -> list[Shape]:
    """The sign from `at`, the middle of its left side."""
    x, y = at
    if operation == "engrave":
        return [_box(x, y, SWATCH, _BLOCK, Pen.SWATCH_ENGRAVE)]
    if operation == "score":
        return [_box(x + k * (_DASH + _APART), y, _DASH, _BAR, Pen.SWATCH_SCORE) for k in range(_DASHES)]
    return [_box(x, y, SWATCH, _BAR, Pen.SWATCH_CUT)]


def _box(x: float, y: float, wide: float, high: float, pen: Pen) -> Region:
    return Region((rectangle(x, y - high / 2, x + wide, y + high / 2, pen),), pen)
