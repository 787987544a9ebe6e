"""The square check: a plate that tells with a caliper how far off a cutter is along x, along y, and from square.

It is an octagon, so that four spans of 140 mm lie between the flat jaws of a caliper of 150 mm: X, Y and the two
diagonals A and B. A band beside a window is cut by the same beam as its span and loses as much; so a span less its band
is free of the kerf, and so is the difference of the diagonals. The plate is solid: a ring would give way to the jaws.
It is drawn without the scale of its stock, so what is measured on it is the whole scale, however often it is cut.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from layout.cutting.parts.blank import Blank, cut_part, small_part
from layout.cutting.parts.outline import Corner, boxed, outline
from layout.cutting.stock.measured_scale import BAND, SPAN
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, LEADING, SMALL, wrap
from layout.messages.roles import CutNote, CutWord
from layout.plan import Plan
from layout.values.numerals import say_number

_DEEP, _HALF = 15.0, 10.0  # of a window, in mm: jaws of a caliper go in
_LETTER, _SIDE, _DIAGONAL = 62.0, 40.0, 44.0  # from the middle to the middles of letters
_LEFT, _WIDE, _TOP = -50.0, 80.0, 22.0  # where the words begin, how wide they may be
_CROSS = Point(50.0, 32.0)


def square_check(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The plate as it lies on the stock, never turned, so that X is measured along x of the cutter.

    Raises FieldError where the sheet is too small.
    """
    far = SPAN / 2
    near = far - BAND
    half = far * (sqrt(2) - 1)  # of a side, so that the slanting flats are as far apart
    corners = [(far, -half), (far, half), (half, far), (-half, far)]
    corners += [(-x, -y) for x, y in corners]
    said = {"span": say_number(SPAN), "band": say_number(BAND)}
    blank = Blank(
        "square-check",
        plan.words.say(CutWord.CHECK),
        outline([Corner(x, y) for x, y in corners]),
        (Point(-_CROSS.x, -_CROSS.y), Point(_CROSS.x, -_CROSS.y), Point(-_CROSS.x, _CROSS.y)),
        holes=(
            outline(boxed(near - _DEEP, -_HALF, near, _HALF)),
            outline(boxed(-_HALF, near - _DEEP, _HALF, near)),
        ),
        words=(*_letters(metrics), *_words(plan, stock, metrics)),
        notes=(
            plan.words.say(CutNote.CHECK_CUT),
            plan.words.say(CutNote.CHECK_MEASURE, **said),
            small_part(plan.words),
        ),
        grain="y" if stock.grain == "y" else "x",
    )
    return cut_part(blank, stock, plan.words)


def _letters(metrics: FontMetrics) -> Iterator[Text]:
    """The letter of every span at both of its flats, that of a band beside its window."""
    places = {
        "X": ((-_LETTER, 0.0), (_SIDE, 0.0)),
        "Y": ((0.0, -_LETTER), (0.0, _SIDE)),
        "A": ((-_DIAGONAL, -_DIAGONAL), (_DIAGONAL, _DIAGONAL)),
        "B": ((-_DIAGONAL, _DIAGONAL), (_DIAGONAL, -_DIAGONAL)),
    }
    for letter, middles in places.items():
        half = metrics.width(letter, LEAD, Pen.ENGRAVE) / 2
        for x, y in middles:
            yield Text(Point(x - half, y - metrics.cap * LEAD / 2), LEAD, letter, pen=Pen.ENGRAVE)


def _words(plan: Plan, stock: Stock, metrics: FontMetrics) -> Iterator[Text]:
    """What the plate is, for which stock, and how large it was drawn."""
    on_it = plan.words.say(CutWord.ON_CHECK, stock=stock.name, span=say_number(SPAN), band=say_number(BAND))
    for k, row in enumerate(wrap(on_it, SMALL, _WIDE, metrics, Pen.ENGRAVE)):
        yield Text(Point(_LEFT, _TOP - k * LEADING * SMALL), SMALL, row, pen=Pen.ENGRAVE)
