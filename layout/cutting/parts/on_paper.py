"""A part that is cut, as a drawing on paper: for the eye, at exact scale, in tiles where the sheet is smaller."""

from __future__ import annotations

from dataclasses import replace

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text
from layout.drawing.sheet import OnScreen, Part, painted
from layout.messages.catalogue import Catalogue
from layout.messages.roles import CutNote

_TURN = Placing(-90)


def drawing_of(part: Part, words: Catalogue, *, scaled: bool = False) -> Part:
    """The part lying along its length; crosses to find it by, and words as words, as all sheets have them.

    Where the cutter's files are `scaled`, the drawing says so; it is not.
    """
    placing = _TURN if part.height > part.length else Placing()
    shapes = [_on_paper(shape) for shape in placing.shapes(part.shapes)]
    corners = placing.points([Point(*part.box[:2]), Point(*part.box[2:])])
    (left, right), (bottom, top) = (sorted(along) for along in zip(*corners, strict=True))
    datum = tuple(placing.points(part.datum))
    said = (note for note in part.notes if not isinstance(note, OnScreen))
    notes = (words.say(CutNote.DRAWING_SCALED if scaled else CutNote.DRAWING), *said)
    return replace(
        part, shapes=painted(shapes), datum=datum, box=(left, bottom, right, top), notes=notes, whole=False, below=True
    )


def _on_paper(shape: Shape) -> Shape:
    if isinstance(shape, Text):
        return shape._replace(pen=Pen.STRONG)
    if isinstance(shape, Curve) and shape.pen is Pen.REFERENCE:
        return shape._replace(pen=Pen.REGISTER)
    return shape
