"""The rows of a packing list: a box to tick, what a thing is called, how much of it there is; in columns."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, line, rectangle
from layout.drawing.typeset import LEAD
from layout.parts.cards.card import ends_at
from layout.parts.hanging import Hanging, rows_of, stack

TICK = 3.8
"""The side of a box to tick, in mm."""

_WORDS, _GAP = 6.6, 3.0
_FIRST, _UNDER = 4.4, 2.0  # from a rule to the baseline under it, and from the last one to the next rule
_CAPITALS = 0.35  # the middle of a capital above its baseline, in ems


class ListRow(NamedTuple):
    """A row in words."""

    name: str
    amount: str


def list_row(row: ListRow, wide: float, metrics: FontMetrics) -> Hanging:
    """One row `wide` mm wide with a rule under it; a long name takes several lines beside its amount."""
    room = wide - _WORDS - metrics.width(row.amount, LEAD, Pen.STRONG) - _GAP
    names = rows_of(row.name, LEAD, room, -_FIRST, metrics)
    low = -_FIRST + _CAPITALS * LEAD - TICK / 2
    y = names[-1].at.y - _UNDER
    shapes: tuple[Shape, ...] = (
        rectangle(0, low, TICK, low + TICK, Pen.OUTLINE),
        *Placing(0, _WORDS, 0).shapes(names),
        ends_at(row.amount, LEAD, Point(wide, -_FIRST), metrics, Pen.STRONG),
        line(Point(0, y), Point(wide, y), Pen.HELP),
    )
    return Hanging(shapes, -y)


def in_columns(rows: Sequence[ListRow], wide: float, high: float, metrics: FontMetrics) -> tuple[Hanging, ...]:
    """The rows in as many columns of `wide` x `high` mm as they take; none where one row is higher than that."""
    drawn = [list_row(row, wide, metrics) for row in rows]
    columns: list[list[Hanging]] = [[]]
    for each in drawn:
        if columns[-1] and sum(row.high for row in columns[-1]) + each.high > high + 1e-6:
            columns.append([])
        columns[-1].append(each)
    if any(each.high > high for each in drawn):
        return ()
    return tuple(stack(column, 0.0) for column in columns if column)
