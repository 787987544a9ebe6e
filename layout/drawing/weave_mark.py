"""The mark of plain weave: three ends and three picks, each over and under by turns, white on a black square."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, polygon, rectangle

MARK_SIDE = 12.0
"""The side of the black square, in mm."""

_BOUNDS, _MIDDLES, _HALF = (1.7, 4.5, 7.5, 10.3), (3.0, 6.0, 9.0), 0.7
"""Between which places on the square each piece of a thread is seen, where the threads lie, half the width of one."""


def weave_mark(corner: Point) -> Region:
    """The mark with its lower left corner at `corner`, as one area: where a thread is seen, it has a hole."""
    square = rectangle(corner.x, corner.y, corner.x + MARK_SIDE, corner.y + MARK_SIDE, Pen.SOLID)
    places = [(column, row) for row in range(3) for column in range(3)]
    return Region((square, *(_hole(corner, column, row) for column, row in places)), Pen.SOLID)


def _hole(corner: Point, column: int, row: int) -> Curve:
    """One piece of a thread, upright and across by turns; it turns against the square around it."""
    along = _MIDDLES[column] - _HALF, _MIDDLES[column] + _HALF
    up = _BOUNDS[row], _BOUNDS[row + 1]
    if (column + row) % 2:
        along, up = (_BOUNDS[column], _BOUNDS[column + 1]), (_MIDDLES[row] - _HALF, _MIDDLES[row] + _HALF)
    corners = (along[0], up[0]), (along[0], up[1]), (along[1], up[1]), (along[1], up[0])
    return polygon([Point(corner.x + x, corner.y + y) for x, y in corners], Pen.SOLID)
