"""The body of a comb below its teeth: handle edge, hanging hole, scored marks and engraved words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.cutting.parts.blank import ARM, Blank
from layout.cutting.parts.outline import Corner, outline
from layout.cutting.parts.teeth import Teeth
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, circle, line
from layout.drawing.typeset import LEAD, SMALL, wrap

MARK_FROM = 1.5
"""Scored marks begin so far below the roots of the teeth, in mm."""
CENTRE_MARK, UNIT_MARK, LIMIT_MARK = 2.5, 4.0, 6.0
"""How long they are."""

HOLE = 3.0
"""Radius of the hanging hole."""

_SAME = 1e-6
_WORDS_FROM, _SIDE, _FOOT, _ROUND = 9.5, 8.0, 5.0, 6.0
_ROOMY, _HOLE_ZONE, _LEADING = 90.0, 12.0, 1.35
_WEB, _CROSS = 5.0, 3.0


@dataclass(frozen=True, slots=True)
class Mark:
    """A scored mark at `x` that is `length` long."""

    x: float
    length: float


def marks(centre: float, units: Sequence[float], limits: Sequence[float]) -> list[Mark]:
    """The marks of a comb, each place once: a limit counts before a unit, a unit before the centre."""
    found: list[Mark] = []
    for xs, length in ((limits, LIMIT_MARK), (units, UNIT_MARK), ((centre,), CENTRE_MARK)):
        found += [Mark(x, length) for x in xs if not any(same_place(x, mark.x) for mark in found)]
    return sorted(found, key=lambda mark: mark.x)


def same_place(one: float, other: float) -> bool:
    """Whether two places in mm are one: no two that are meant apart lie so close."""
    return abs(one - other) < _SAME


def comb_blank(
    name: str,
    title: str,
    teeth: Teeth,
    scored: Sequence[Mark],
    words: Sequence[str],
    notes: Sequence[str],
    stock: Stock,
    metrics: FontMetrics,
) -> Blank:
    """The whole comb, teeth up. No web round the hanging hole is narrower than the stock is thick."""
    left, right, web = teeth.left, teeth.right, max(_WEB, stock.thickness)
    roomy = right - left >= _ROOMY
    size = LEAD if roomy else SMALL
    width = right - left - 2 * _SIDE - (_HOLE_ZONE if roomy else 0.0)
    rows = [row for one in words for row in wrap(one, size, width, metrics, Pen.ENGRAVE)]
    words_to = _WORDS_FROM + len(rows) * size * _LEADING
    deep = max(words_to + _FOOT, 2 * (web + HOLE)) if roomy else words_to + 2 * HOLE + web + 1.0
    hole = Point(right - max(_SIDE, web) - HOLE if roomy else (left + right) / 2, -deep + web + HOLE)
    body = [Corner(left, -deep, _ROUND), Corner(right, -deep, _ROUND)]
    low, high = -deep + _ROUND + 1.0, -MARK_FROM - LIMIT_MARK - 2 * ARM
    datum = (Point(left + _CROSS, low), Point(right - _CROSS, low), Point(left + _CROSS, high))
    return Blank(
        name,
        title,
        outline([*body, *teeth.corners()]),
        datum,
        holes=(circle(hole, HOLE, Pen.THROUGH),),
        scores=tuple(scored_line(mark) for mark in scored),
        words=tuple(_rows(rows, size, left + _SIDE, metrics)),
        notes=tuple(notes),
        grain="y",
    )


def scored_line(mark: Mark) -> Curve:
    """A mark as it is drawn, below roots at y = 0."""
    return line(Point(mark.x, -MARK_FROM), Point(mark.x, -MARK_FROM - mark.length), Pen.SCORE)


def _rows(rows: Sequence[str], size: float, left: float, metrics: FontMetrics) -> list[Text]:
    """The rows one under the other, capitals of the first just below where words begin."""
    first = -_WORDS_FROM - metrics.cap * size
    return [Text(Point(left, first - k * size * _LEADING), size, row, pen=Pen.ENGRAVE) for k, row in enumerate(rows)]
