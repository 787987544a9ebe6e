"""The square that every file for a cutter has for reference: nothing runs it, and it must measure true anywhere."""

from __future__ import annotations

from layout.cutting.parts.blank import ARM
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD
from layout.messages.catalogue import Catalogue
from layout.messages.roles import CutWord, Unit
from layout.values.numerals import say_number

SIDE = 50.0
"""Of the square, in mm."""

_IN = 5.0


def reference_square(metrics: FontMetrics, words: Catalogue) -> Part:
    """The square with its length written in it."""
    said = words.say(Unit.MM, number=say_number(SIDE))
    at = Point((SIDE - metrics.width(said, LEAD)) / 2, (SIDE - metrics.cap * LEAD) / 2)
    datum = (Point(_IN, _IN), Point(SIDE - _IN, _IN), Point(_IN, SIDE - _IN))
    hairs = [hair for point in datum for hair in cross(point, ARM, Pen.REFERENCE)]
    square = rectangle(0, 0, SIDE, SIDE, Pen.REFERENCE)
    shapes: tuple[Shape, ...] = (square, Text(at, LEAD, said, pen=Pen.REFERENCE), *hairs)
    return Part("reference-square", words.say(CutWord.SQUARE), shapes, datum, (0, 0, SIDE, SIDE), whole=True)
