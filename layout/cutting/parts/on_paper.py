"""A part that is cut, as a drawing on paper: for the eye, at exact scale, in tiles where the sheet is smaller."""

from __future__ import annotations

from dataclasses import replace

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text
from layout.drawing.sheet import Part, painted

LASER = "Laser: trained people only, always watched, shop rules first."
"""The caution of every sheet with something to cut, in few words; the job sheet has them all."""

_TURN = Placing(-90)


def drawing_of(part: Part) -> Part:
    """The part lying along its length; crosses to find it by, and words as words, as all sheets have them."""
    placing = _TURN if part.height > part.length else Placing()
    shapes = [_on_paper(shape) for shape in placing.shapes(part.shapes)]
    corners = placing.points([Point(*part.box[:2]), Point(*part.box[2:])])
    (left, right), (bottom, top) = (sorted(along) for along in zip(*corners, strict=True))
    datum = tuple(placing.points(part.datum))
    notes = (f"A drawing at exact scale of the cutter's files. {LASER}", *part.notes)
    return replace(part, shapes=painted(shapes), datum=datum, box=(left, bottom, right, top), notes=notes, whole=False)


def _on_paper(shape: Shape) -> Shape:
    if isinstance(shape, Text):
        return shape._replace(pen=Pen.TEXT)
    if isinstance(shape, Curve) and shape.pen is Pen.REFERENCE:
        return shape._replace(pen=Pen.REGISTER)
    return shape
