"""Things to do as a list: each with its number or letter in a ring."""

from __future__ import annotations

from collections.abc import Iterable

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Shape
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD
from layout.parts.winding.lines import downward, rows_of, step_of

WORDS = 4.6
"""From the middle of a ring to the words beside it, in mm."""
NEXT = 6.2
"""From the last line of an entry to the first of the next."""
_UP = 1.2


def listed(entries: Iterable[tuple[str, str]], at: Point, right: float, metrics: FontMetrics) -> list[Shape]:
    """Each label in a ring with its sentence, the first baseline at the height of `at`; lines end at `right`."""
    x, y, shapes = at.x + RING, at.y, list[Shape]()
    for label, words in entries:
        rows = rows_of(words, LEAD, right - x - WORDS, metrics)
        shapes += ring(Point(x, y + _UP), label, metrics)
        shapes += downward(rows, LEAD, Point(x + WORDS, y), metrics)
        y -= (len(rows) - 1) * step_of(rows, LEAD) + NEXT
    return shapes
