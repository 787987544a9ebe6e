"""The wrap gauge: a card to wrap warp and weft round, with windows between bold edges, folded over stiff board.

x runs along the card from its left edge, y up from the fold; the front lies below the fold, the back above it. A bold
edge lies outside its window: the window is what is free between two inks. Nothing is measured on the back.
"""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, filled, line, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, LEADING, SMALL, centred, left, wrap
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge
from layout.parts.gauge_table import GaugeTable, gauge_table
from layout.plan import Plan

LENGTH, HEIGHT = 89.0, 40.0
"""The finished card in mm: it goes into any kit box, and unfolded on any sheet that may be asked for."""

_MARGIN, _GAP, _INK = 3.0, 4.0, Pen.EDGE.ink.width
_INCH = _MARGIN + _INK
_TWO_INCH = _INCH + 25.4 + _INK + _GAP + _INK
TOP = ((_INCH, 25.4, "1 in"), (_TWO_INCH, 50.8, "2 in"))
BOTTOM = ((_TWO_INCH, 50.0, "5 cm"),)
"""Windows at the fold and at the lower edge: where each begins, how wide it is, its label. 2 in and 5 cm begin on one
line, so that one wrapping gives both counts."""

_EDGE, _LABEL, _SLIT, _SLIT_UP = 9.0, 6.6, 7.5, 11.0
_FIRST_LINE, _CORNER, _ARM = 14.2, 0.8, 0.5
_NAMES, _HEADS, _RULE, _ROWS, _ROW = 33.4, (27.4, 23.8), 22.6, 19.3, 3.5
_COUNTS, _TABLE = 16.0, LENGTH - 2 * _MARGIN


def wrap_gauge(plan: Plan, metrics: FontMetrics) -> Part:
    """The card of a kit, unfolded."""
    return wrap_gauge_of(gauge_table(plan), metrics)


def wrap_gauge_of(table: GaugeTable, metrics: FontMetrics) -> Part:
    """The card with this table, unfolded."""
    datum = (
        Point(_CORNER, _CORNER - HEIGHT),
        Point(LENGTH - _CORNER, _CORNER - HEIGHT),
        Point(_CORNER, HEIGHT - _CORNER),
    )
    shapes: list[Shape] = [rectangle(0, -HEIGHT, LENGTH, HEIGHT, Pen.CUT)]
    shapes.append(line(Point(0, 0), Point(LENGTH, 0), Pen.FOLD))
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    shapes += [*_windows(TOP, 0.0, -1, metrics), *_windows(BOTTOM, -HEIGHT, 1, metrics), *_slits()]
    shapes += [left(words, SMALL, Point(_MARGIN, y)) for words, y in _instructions(metrics)]
    shapes.append(left(ENGLISH.say(Gauge.TITLE), LEAD, Point(_MARGIN, _LABEL - HEIGHT)))
    shapes += [*_names(metrics), *_table(table, metrics)]
    box = (0.0, -HEIGHT, LENGTH, HEIGHT)
    return Part(
        "wrap-gauge", ENGLISH.say(Gauge.TITLE), tuple(shapes), datum, box, (ENGLISH.say(Gauge.NOTE),), whole=True
    )


def _windows(windows: Sequence[tuple[float, float, str]], edge: float, way: int, metrics: FontMetrics) -> list[Shape]:
    """Bold edges from the long edge at y = `edge` inward (`way` +1 up, -1 down), and the label between them."""
    shapes: list[Shape] = []
    for start, wide, label in windows:
        sides = (start - _INK / 2, start + wide + _INK / 2)
        shapes += [line(Point(x, edge), Point(x, edge + way * _EDGE), Pen.EDGE) for x in sides]
        baseline = edge + way * _LABEL - (metrics.cap * LEAD if way < 0 else 0.0)
        shapes.append(centred(label, LEAD, Point(start + wide / 2, baseline), metrics))
    return shapes


def _slits() -> list[Shape]:
    """Cuts that hold the tails: between the windows from both long edges, and beside them from both short edges."""
    between = _TWO_INCH - _INK - _GAP / 2
    upright = [line(Point(between, y), Point(between, y + way * _SLIT), Pen.CUT) for y, way in ((0, -1), (-HEIGHT, 1))]
    level = [
        line(Point(x, y), Point(x + way * _SLIT, y), Pen.CUT)
        for y in (-_SLIT_UP, _SLIT_UP - HEIGHT)
        for x, way in ((0.0, 1), (LENGTH, -1))
    ]
    return [*upright, *level]


def _instructions(metrics: FontMetrics) -> list[tuple[str, float]]:
    """Each line of how to wrap and count, and how high it stands."""
    said = map(ENGLISH.say, (Gauge.WIND, Gauge.COUNT, Gauge.ALONE))
    lines = [line for one in said for line in wrap(one, SMALL, LENGTH - 2 * _MARGIN, metrics)]
    return [(words, -_FIRST_LINE - k * LEADING * SMALL) for k, words in enumerate(lines)]


def _names(metrics: FontMetrics) -> list[Shape]:
    """Lines to write the names of the yarns on."""
    shapes: list[Shape] = []
    half = LENGTH / 2
    names = (Gauge.WARP, _MARGIN, half - 2), (Gauge.WEFT, half + 2, LENGTH - _MARGIN)
    for role, start, stop in names:
        word = ENGLISH.say(role)
        shapes.append(left(word, SMALL, Point(start, _NAMES)))
        begin = start + metrics.width(word, SMALL) + 1.5
        shapes.append(line(Point(begin, _NAMES), Point(stop, _NAMES), Pen.HELP))
    return shapes


def _table(table: GaugeTable, metrics: FontMetrics) -> list[Shape]:
    """Counts down the left, then sett and winds for every unit; the kit's own unit stands on a tint."""
    group = (_TABLE - _COUNTS) / len(table.units)
    starts = [_MARGIN + _COUNTS + k * group for k in range(len(table.units))]
    middles = [_MARGIN + _COUNTS / 2, *(start + group * part for start in starts for part in (0.27, 0.73))]
    own = starts[table.own]
    corners = ((own, 0.8), (own + group, 0.8), (own + group, _HEADS[0] + 3.2), (own, _HEADS[0] + 3.2))
    shapes: list[Shape] = [filled([Point(*corner) for corner in corners], Pen.TINT)]
    shapes.append(line(Point(_MARGIN, _RULE), Point(LENGTH - _MARGIN, _RULE), Pen.HELP))

    def row(words: Sequence[str], xs: Sequence[float], y: float) -> list[Text]:
        return [centred(word, SMALL, Point(x, y), metrics) for word, x in zip(words, xs, strict=True)]

    pairs, window = ENGLISH.say(Gauge.PAIRS, window=table.over).split("\n")
    shapes += row(
        [pairs, *(ENGLISH.say(Gauge.TO_UNIT, unit=unit) for unit in table.units)],
        [middles[0], *(s + group / 2 for s in starts)],
        _HEADS[0],
    )
    shapes += row([window, *table.heads * len(table.units)], middles, _HEADS[1])
    for k, fields in enumerate(table.rows):
        shapes += row(fields, middles, _ROWS - k * _ROW)
    return shapes
