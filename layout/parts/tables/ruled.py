"""A table with a thin rule under every row: titles, rows, boxes to tick. It hangs down from y = 0, x from its left."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, line, rectangle
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, wrap
from layout.parts.hanging import Hanging
from layout.parts.tables.columns import TICK, Column, Row, lefts, widths

__all__ = ["Column", "Row", "ruled", "ruled_pages"]

_FIRST, _UNDER = {LEAD: 4.4, SMALL: 3.5}, {LEAD: 2.0, SMALL: 1.5}
"""From a rule to the first baseline under it, and from the last baseline to the next rule: rows of one line are 6.4 mm
apart in sentences' letters, 5.0 mm in small ones."""

_CAPITALS = 0.35  # the middle of a capital above its baseline, in ems


def ruled(
    columns: Sequence[Column], rows: Sequence[Row], width: float, metrics: FontMetrics, size: float = LEAD
) -> Hanging:
    """The whole table, `width` mm wide, its cells in letters of `size` (LEAD or SMALL), its titles in small ones."""
    return _drawn(columns, rows, widths(columns, rows, size, width, metrics), metrics, size)


def ruled_pages(
    columns: Sequence[Column],
    rows: Sequence[Row],
    width: float,
    heights: tuple[float, float],
    metrics: FontMetrics,
    size: float = LEAD,
) -> tuple[Hanging, ...]:
    """The same on as few pages as it needs, each with the titles: the first `heights[0]` mm high, others `heights[1]`.

    A row that is higher than a page stands on one of its own all the same.
    """
    wide = widths(columns, rows, size, width, metrics)
    pages, begin = list[Hanging](), 0
    while begin < len(rows) or not pages:
        most, end = heights[bool(pages)], begin + 1
        page = _drawn(columns, rows[begin:end], wide, metrics, size)
        while end < len(rows) and (longer := _drawn(columns, rows[begin : end + 1], wide, metrics, size)).high <= most:
            page, end = longer, end + 1
        pages.append(page)
        begin = end
    return tuple(pages)


def _drawn(
    columns: Sequence[Column], rows: Sequence[Row], wide: Sequence[float], metrics: FontMetrics, size: float
) -> Hanging:
    shapes: list[Shape] = []
    y, right = 0.0, lefts(columns, wide)[-1] + wide[-1]
    if any(column.title for column in columns):
        titles = Row(tuple(column.title for column in columns))
        y = _row(columns, titles, wide, y, SMALL, shapes, metrics)
        shapes.append(line(Point(0, y), Point(right, y), Pen.OUTLINE))
    for row in rows:
        top, y = y, _row(columns, row, wide, y, size, shapes, metrics)
        shapes += _boxes(columns, wide, top - _FIRST[size], size)
        shapes.append(line(Point(0, y), Point(right, y), Pen.HELP))
    return Hanging(tuple(shapes), -y + Pen.OUTLINE.ink.width / 2)


def _row(
    columns: Sequence[Column],
    row: Row,
    wide: Sequence[float],
    y: float,
    size: float,
    shapes: list[Shape],
    metrics: FontMetrics,
) -> float:
    """Puts the words of one row below y among the shapes; gives where the rule under it lies."""
    lowest = first = y - _FIRST[size]
    for column, words, x, room in zip(columns, row.cells, lefts(columns, wide), wide, strict=True):
        pen, base = row.pen(column), first
        for number, said in enumerate(wrap(words, size, room, metrics, pen)):
            base -= leading(size, tall=is_tall(said)) if number else 0.0
            at = x + room - metrics.width(said, size, pen) if column.right else x
            shapes.append(Text(Point(at, base), size, said, pen=pen))
        lowest = min(lowest, base)
    return lowest - _UNDER[size]


def _boxes(columns: Sequence[Column], wide: Sequence[float], base: float, size: float) -> list[Shape]:
    """The boxes to tick of a row with its first baseline at y = `base`."""
    low = base + _CAPITALS * size - TICK / 2
    at = (x for column, x in zip(columns, lefts(columns, wide), strict=True) if column.tick)
    return [rectangle(x, low, x + TICK, low + TICK, Pen.OUTLINE) for x in at]
