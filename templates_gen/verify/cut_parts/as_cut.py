"""What the cutter of a stock makes of a sheet that was read: the sheet that its parts and its kerf are proven on.

Stated again on purpose: the page leans with the cutter and stands on its lower left corner; engraved words and the
reference square move as a whole, each by its middle.
"""

from __future__ import annotations

from collections.abc import Sequence

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape
from layout.drawing.sheet import Sheet
from templates_gen.verify.cut_parts.as_made import all_made, moved_with

_CHECK = "square-check"
_SIDE, _CLOSE = 50.0, 1e-3  # mm


def as_cut(stock: Stock, sheet: Sheet, parts: Sequence[str] = ()) -> Sheet:
    """The sheet with these parts as it is cut from the stock, the kerf left out of account; a check of the scale as it
    stands.
    """
    across, up, skew = stock.scale
    if (across, up, skew) == (1.0, 1.0, 0.0) or _CHECK in parts:
        return sheet
    height = up * sheet.height
    lean = skew * sheet.height / across  # how far the drawn page leans to the left
    width = across * (sheet.width - abs(lean))
    corner = max(0.0, lean)

    def made(at: Point) -> Point:
        return Point(across * (at.x - corner) + skew * at.y, up * at.y)

    shapes = all_made(sheet.shapes, made)
    squares = [k for k, shape in enumerate(sheet.shapes) if _is_square(shape)]
    for k, shape in enumerate(sheet.shapes):
        if isinstance(shape, Region):
            shapes[k] = moved_with(shape, _middle(shape.contours), made)
        elif squares and k >= squares[-1] and shape.pen is Pen.REFERENCE:
            shapes[k] = moved_with(shape, _middle_of(sheet.shapes[squares[-1]]), made)
    return Sheet(sheet.name, width, height, tuple(shapes))


def _is_square(shape: Shape) -> bool:
    """Whether a shape is a square of 50 mm on the reference operation, upright."""
    if not isinstance(shape, Curve) or shape.pen is not Pen.REFERENCE or not shape.closed:
        return False
    points = shape.points()
    if len(points) != 4 or any(through for _, through in shape.steps):
        return False
    middle = _middle([shape])
    return all(abs(abs(x - middle.x) - _SIDE / 2) < _CLOSE > abs(abs(y - middle.y) - _SIDE / 2) for x, y in points)


def _middle_of(shape: Shape) -> Point:
    return _middle([shape] if isinstance(shape, Curve) else [])


def _middle(contours: Sequence[Curve]) -> Point:
    """The middle of the smallest upright box round contours."""
    points = [point for contour in contours for point in contour.points()]
    low, high = min(y for _, y in points), max(y for _, y in points)
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    return Point(left + (right - left) / 2, low + (high - low) / 2)
