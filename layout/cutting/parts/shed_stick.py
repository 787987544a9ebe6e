"""The shed stick: a flat stick that rests on both sides of the frame and keeps a shed open. Its ends are half round."""

from __future__ import annotations

from layout.cutting.parts.blank import Blank, cut_part
from layout.cutting.parts.outline import boxed, outline
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, wrap
from layout.messages.roles import CutNote, CutWord
from layout.plan import Plan
from layout.values.numerals import say_number

HEIGHT = 30.0
"""How wide the stick is, in mm: on edge it opens the shed so far (common practice, no source)."""

_CROSS_IN, _CROSS, _WORDS_FROM = 20.0, 6.0, 24.0


def shed_stick(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The stick, its length along the face grain. FieldError where the sheet is too small for it."""
    length = plan.amounts.shed_stick_mm
    half, low = length.value / 2, -HEIGHT / 2
    datum = (
        Point(-half + _CROSS_IN, low + _CROSS),
        Point(half - _CROSS_IN, low + _CROSS),
        Point(-half + _CROSS_IN, -low - _CROSS),
    )
    words, *_ = wrap(
        plan.words.say(CutWord.ON_STICK, kit=plan.kit.name), LEAD, 2 * (half - _WORDS_FROM), metrics, Pen.ENGRAVE
    )
    at = Point(-half + _WORDS_FROM, -metrics.cap * LEAD / 2)
    long = plan.words.say(CutNote.STICK_LENGTH, length=say_number(length.value), reason=length.reason)
    notes = (plan.words.say(CutNote.USE_STICK), long)
    title = plan.words.say(CutWord.STICK)
    shape = outline(boxed(-half, low, half, -low, HEIGHT / 2))
    blank = Blank("shed-stick", title, shape, datum, words=(Text(at, LEAD, words, pen=Pen.ENGRAVE),), notes=notes)
    return cut_part(blank, stock, plan.words)
