"""The back of a wrap gauge: the yarns of the kit and the table, with the kit's own row and column picked out."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, filled, line, rectangle
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Gauge
from layout.parts.gauge_columns import Columns, columns_of
from layout.parts.gauge_form import NOTCH_DEEP, Form
from layout.parts.gauge_table import GaugeTable

_TOP, _UNDER, _RULE, _FIRST, _ROW = 4.6, 3.2, 1.2, 3.8, 4.1
_LOW_TOP, _LOW_UNDER, _LOW_FIRST = 3.8, 2.8, 3.1  # the same on a card that is lower than _LOW
_TINT_DOWN, _CLEAR = 1.05, 1.4
_MARGIN, _TABLE_FROM, _TABLE_TO, _NAMES_TO, _LOWEST, _LOW = 5.0, 44.0, 161.2, 41.0, 1.6, 40.0
_NARROW_MARGIN, _NARROW_COUNTS, _NARROW_TOP, _BLANK = 3.0, 16.0, 10.0, 1.5


class Names(NamedTuple):
    """The yarns of a kit, empty where there is none; and what else its sett gives in words."""

    warp: str = ""
    weft: str = ""
    more: str = ""


def back_of(form: Form, table: GaugeTable, names: Names, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """Everything on the back, below the fold."""
    back = _Back(form, table, words, metrics)
    return [*(back.names_beside(names) if form.wide else back.names_above(names)), *back.table_shapes()]


class _Back:
    def __init__(self, form: Form, table: GaugeTable, words: Catalogue, metrics: FontMetrics) -> None:
        self.form, self.table, self.words, self.metrics = form, table, words, metrics

    def names_beside(self, names: Names) -> list[Shape]:
        """The yarns at the left of the table, in large letters or in small ones, else lines to write them on."""
        room = self.form.half - _TOP - NOTCH_DEEP
        for size, more in ((LEAD, names.more), (SMALL, names.more), (SMALL, "")):
            shapes, high = self._names(names, size, more)
            if high <= room:
                return shapes
        return self._names(Names(), LEAD, "")[0]

    def _names(self, names: Names, size: float, more: str) -> tuple[list[Shape], float]:
        shapes: list[Shape] = []
        width, y = _NAMES_TO - _MARGIN, -_TOP
        for role, name in ((Gauge.WARP, names.warp), (Gauge.WEFT, names.weft)):
            y -= self.metrics.cap * SMALL + 1.2
            shapes.append(Text(Point(_MARGIN, y), SMALL, self.words.say(role)))
            if not name:
                y -= 7.0
                shapes.append(line(Point(_MARGIN, y), Point(_NAMES_TO, y), Pen.HELP))
                continue
            y, set_lines = self._lines(name, size, Pen.STRONG, width, y - 0.4)
            shapes += set_lines
            y -= 2.0
        if more:
            y, set_lines = self._lines(more, SMALL, Pen.TEXT, width, y - 1.0)
            shapes += set_lines
        return shapes, -y - _TOP + 1.0

    def _lines(self, said: str, size: float, pen: Pen, width: float, y: float) -> tuple[float, list[Shape]]:
        """Lines under `y`, and the last baseline."""
        shapes: list[Shape] = []
        for row in wrap(said, size, width, self.metrics, pen):
            y -= leading(size, tall=is_tall(row))
            shapes.append(Text(Point(_MARGIN, y), size, row, pen=pen))
        return y, shapes

    def names_above(self, names: Names) -> list[Shape]:
        """The yarns beside each other over the table, each where it fits on its line."""
        shapes: list[Shape] = []
        half, y = self.form.length / 2, -7.4
        both = (Gauge.WARP, names.warp, _NARROW_MARGIN, half - 2), (Gauge.WEFT, names.weft, half + 2, self._right)
        for role, name, start, stop in both:
            said = self.words.say(role)
            shapes.append(Text(Point(start, y), SMALL, said))
            begin = start + self.metrics.width(said, SMALL) + _BLANK
            if name and not is_tall(name) and begin + self.metrics.width(name, SMALL, Pen.STRONG) <= stop:
                shapes.append(Text(Point(begin, y), SMALL, name, pen=Pen.STRONG))
            else:
                shapes.append(line(Point(begin, y), Point(stop, y), Pen.HELP))
        return shapes

    @property
    def _right(self) -> float:
        return _TABLE_TO if self.form.wide else self.form.length - _NARROW_MARGIN

    def _columns(self) -> Columns:
        """Those of the table, with their heads."""
        left = _TABLE_FROM if self.form.wide else _NARROW_MARGIN
        counts = None if self.form.wide else _NARROW_COUNTS
        return columns_of(left, self._right, counts, self.table, self.words, self.metrics)

    def table_shapes(self) -> list[Shape]:
        """Heads over a rule, rows under it; the kit's own row and column on grey, a box where they cross."""
        columns = self._columns()
        table, counts, _, middles, heads = columns
        low_form = self.form.half <= _LOW
        top = -(_LOW_TOP if low_form else _TOP if self.form.wide else _NARROW_TOP)
        rule = (
            top
            - (_LOW_UNDER if low_form else _UNDER)
            - max(head.up + len(head.lines) - 1 for head in heads) * leading(SMALL)
            - _RULE
        )
        shapes: list[Shape] = [line(Point(counts[0], rule), Point(self._right, rule), Pen.HELP)]
        for said, x, first, pen in heads:
            for up, row in enumerate(reversed(said), first):
                shapes.append(self._middled(row, Point(x, rule + _RULE + up * leading(SMALL)), pen))
        y = rule - (_LOW_FIRST if low_form else _FIRST)
        lowest = _LOWEST if low_form and self._beside_notches(table, middles) else _LOWEST + NOTCH_DEEP
        step = min(_ROW, (y + self.form.half - lowest) / (len(table.rows) - 1))
        low = y - (len(table.rows) - 1) * step - _TINT_DOWN
        shapes += self._picked(columns, (top, low), y, step)
        own = (0, 1 + 2 * table.own, 2 + 2 * table.own)
        for k, fields in enumerate(table.rows):
            for place, (field, x) in enumerate(zip(fields, middles, strict=True)):
                pen = Pen.STRONG if k == table.own_row and place in own else Pen.TEXT
                shapes.append(self._middled(field, Point(x, y - k * step), pen))
        return shapes

    def _beside_notches(self, table: GaugeTable, middles: Sequence[float]) -> bool:
        """Whether the last row keeps clear of the notches of the outer edge, so that it may stand between them."""
        notches = [x for window in self.form.windows for x in window.edges]
        wide = [self.metrics.width(field, SMALL, Pen.STRONG) / 2 + _CLEAR for field in table.rows[-1]]
        return all(abs(x - notch) > half for x, half in zip(middles, wide, strict=True) for notch in notches)

    def _picked(self, columns: Columns, reach: tuple[float, float], y: float, step: float) -> list[Shape]:
        (table, counts, units, *_), (top, low) = columns, reach
        own = units[table.own]
        shapes: list[Shape] = [_grey(own[0], low, own[1], top)]
        if (k := table.own_row) is not None:
            half = min(_ROW, step) / 2
            middle = y - k * step + self.metrics.cap * SMALL / 2
            shapes.append(_grey(counts[0], middle - half, self._right, middle + half))
            shapes.append(rectangle(own[0], middle - half, own[1], middle + half, Pen.OUTLINE))
        return shapes

    def _middled(self, said: str, at: Point, pen: Pen) -> Text:
        return Text(Point(at.x - self.metrics.width(said, SMALL, pen) / 2, at.y), SMALL, said, pen=pen)


def _grey(left: float, low: float, right: float, high: float) -> Shape:
    corners = (Point(left, low), Point(right, low), Point(right, high), Point(left, high))
    return filled(corners, Pen.TINT)
