"""The wrap gauge as a cut part: a board with windows of 1 in, 2 in and 5 cm between shoulders that hold the yarn."""

from __future__ import annotations

from layout.cutting.parts.blank import Blank, cut_part, small_part
from layout.cutting.parts.gauge_rows import ROW, engraved_table
from layout.cutting.parts.outline import Corner, outline
from layout.cutting.stock.kerf import Kerf, too_wide
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, SMALL, wrap
from layout.messages.roles import CutNeed, CutNote, CutWord
from layout.plan import Plan
from layout.values.numerals import say_number

WINDOWS = ((25.4, "1 in"), (50.8, "2 in"), (50.0, "5 cm"))
"""Width in mm and label of each window, from left to right."""

HEIGHT, DEPTH = 40.0, 3.0
"""Of the board, and of a window from its long edges, in mm."""

SLIT, SLIT_LENGTH = 1.2, 8.0
"""Width and length of the slits in the short edges, which hold the tails."""

_SHOULDER, _ROUND, _TIP, _IN = 8.0, 4.0, 0.8, 4.0
_UNDER, _LOWEST, _TEXT_FROM, _TABLE, _BETWEEN = 2.4, 1.5, 8.0, 60.0, 3.0


def gauge_board(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The gauge; FieldError where the kerf is no narrower than a slit, or the sheet is too small."""
    kerf = Kerf(stock.kerf_x, stock.kerf_y)
    if max(kerf.x, kerf.y) >= SLIT:
        raise too_wide(kerf, CutNeed.KERF_SLIT, SLIT, say_number(SLIT))
    shoulder = max(_SHOULDER, stock.thickness)
    starts = starts_of(shoulder)
    length = starts[-1] + WINDOWS[-1][0] + shoulder
    top, bottom = HEIGHT / 2, -HEIGHT / 2
    upper = [corner for start, (wide, _) in zip(starts, WINDOWS, strict=True) for corner in _window(start, wide, top)]
    lower = [Corner(x, -y, radius) for x, y, radius in upper]
    edge = [Corner(0.0, bottom, _ROUND), *lower, Corner(length, bottom, _ROUND), *_slits(length, -1)]
    edge += [Corner(length, top, _ROUND), *upper[::-1], Corner(0.0, top, _ROUND), *_slits(0.0, 1)]
    labels = _labels(starts, metrics)
    right = length - SLIT_LENGTH - _BETWEEN
    below = labels[0].at.y - _UNDER
    foot = bottom + DEPTH + _LOWEST - metrics.descent * SMALL
    table, scores = engraved_table(plan, (right - _TABLE, right), (below, foot), metrics)
    sides = starts[0] + _TEXT_FROM, right - _TABLE - _BETWEEN
    blank = Blank(
        "wrap-gauge-cut",
        plan.words.say(CutWord.GAUGE),
        outline(edge),
        (Point(_IN, bottom + _IN + 2), Point(length - _IN, bottom + _IN + 2), Point(_IN, top - _IN - 2)),
        scores=tuple(scores),
        words=(*labels, *_how(plan, sides, below, foot, metrics), *table),
        notes=(plan.words.say(CutNote.USE_GAUGE), small_part(plan.words)),
    )
    return cut_part(blank, stock, plan.words)


def starts_of(shoulder: float) -> list[float]:
    """Where each window begins, from the left edge of the board."""
    starts = [shoulder]
    for wide, _ in WINDOWS[:-1]:
        starts.append(starts[-1] + wide + shoulder)
    return starts


def _window(start: float, wide: float, top: float) -> list[Corner]:
    """A window in the upper edge, from left to right: shoulders a little rounded, square walls."""
    ground = top - DEPTH
    return [
        Corner(start, top, _TIP),
        Corner(start, ground),
        Corner(start + wide, ground),
        Corner(start + wide, top, _TIP),
    ]


def _slits(x: float, way: int) -> list[Corner]:
    """Two slits in a short edge, going up the right one (`way` -1) or down the left one (+1)."""
    found: list[Corner] = []
    half = SLIT / 2
    for y in (-7.0, 7.0) if way < 0 else (7.0, -7.0):
        near, far = (y - half, y + half) if way < 0 else (y + half, y - half)
        inner = x + way * SLIT_LENGTH
        found += [Corner(x, near), Corner(inner, near, half), Corner(inner, far, half), Corner(x, far)]
    return found


def _labels(starts: list[float], metrics: FontMetrics) -> list[Text]:
    """A label under each window."""
    found = []
    for start, (wide, label) in zip(starts, WINDOWS, strict=True):
        middle = start + wide / 2 - metrics.width(label, LEAD, Pen.ENGRAVE) / 2
        found.append(Text(Point(middle, HEIGHT / 2 - DEPTH - 2.0 - metrics.cap * LEAD), LEAD, label, pen=Pen.ENGRAVE))
    return found


def _how(plan: Plan, sides: tuple[float, float], top: float, floor: float, metrics: FontMetrics) -> list[Text]:
    """How to wrap, and as much of the kit's name as finds room under that."""
    say, (left, right) = plan.words.say, sides
    rows = [
        row
        for words in (say(CutWord.GAUGE_HOW), say(CutWord.ON_GAUGE, kit=plan.kit.name))
        for row in wrap(words, SMALL, right - left, metrics, Pen.ENGRAVE)
    ]
    first = top - metrics.cap * SMALL
    room = int((first - floor) / ROW) + 1
    return [Text(Point(left, first - k * ROW), SMALL, row, pen=Pen.ENGRAVE) for k, row in enumerate(rows[:room])]
