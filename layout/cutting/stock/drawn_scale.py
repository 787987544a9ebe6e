"""What is cut, drawn against the scale of the cutter, so that it comes out as it is wanted.

The kerf is no matter of scale: it is drawn in before. Engraved words keep their size and move as a whole, and so does
the reference square: it is measured in the file, where nothing is off yet.
"""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple

from layout.drawing.boxes import box_around, box_of
from layout.drawing.correction import TRUE, Scale, corrected
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape
from layout.drawing.sheet import Sheet

LARGEST_DRAWN = 3500.0
"""No sheet may be drawn longer, in mm."""

_SIDE, _SAME = 50.0, 1e-6  # of the reference square, in mm


class Page(NamedTuple):
    """How large a sheet is drawn in mm, and how far its lower left corner lies from the left."""

    width: float
    height: float
    left: float


def drawn_page(width: float, height: float, scale: Scale) -> Page:
    """The smallest page that holds what a sheet of this size in mm is drawn as, which leans where the cutter does."""
    lean = scale.asked(Point(0.0, height)).x
    return Page(width / scale.x + abs(lean), height / scale.y, max(0.0, -lean))


def drawn_against(sheet: Sheet, scale: Scale) -> Sheet:
    """The sheet to give to a cutter with this scale, so that what is cut is `sheet`; its words must be outlines."""
    if scale == TRUE:
        return sheet
    page, middle = drawn_page(sheet.width, sheet.height, scale), Point(sheet.width / 2, sheet.height / 2)
    there = _plus(scale.asked(middle), Point(page.left, 0.0))
    on_page = Placing(0, there.x - middle.x, there.y - middle.y)
    moved = on_page.shapes(corrected(sheet, scale).shapes)
    last = max((k for k, shape in enumerate(sheet.shapes) if _is_square(shape)), default=None)
    square: Point | None = None
    for k, shape in enumerate(sheet.shapes):
        if isinstance(shape, Curve) and k == last:
            square = _middle((shape,))
        if isinstance(shape, Region):
            moved[k] = _whole(shape, _middle(shape.contours), scale, page)
        elif square is not None and shape.pen is Pen.REFERENCE:
            moved[k] = _whole(shape, square, scale, page)
    return replace(sheet, width=page.width, height=page.height, shapes=tuple(moved))


def _whole(shape: Shape, middle: Point, scale: Scale, page: Page) -> Shape:
    """The shape moved as `middle` moves."""
    there = _plus(scale.asked(middle), Point(page.left, 0.0))
    return Placing(0, there.x - middle.x, there.y - middle.y).shapes((shape,))[0]


def _is_square(shape: Shape) -> bool:
    """Whether it is the reference square, which comes last of what is for reference, with its words and crosses."""
    if not isinstance(shape, Curve) or shape.pen is not Pen.REFERENCE or not shape.closed or len(shape.steps) != 3:
        return False
    left, low, right, high = box_of(shape)
    return all(abs(side - _SIDE) < _SAME for side in (right - left, high - low))


def _middle(contours: tuple[Curve, ...]) -> Point:
    left, low, right, high = box_around(point for contour in contours for point in contour.points())
    return Point((left + right) / 2, (low + high) / 2)


def _plus(one: Point, other: Point) -> Point:
    return Point(one.x + other.x, one.y + other.y)
