"""Words in rows: as many lines as they need within a width, downward or upward from a place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.typeset import is_tall, leading, wrap

Align = Literal["left", "centre", "right"]
_SHARES = {"left": 0.0, "centre": 0.5, "right": 1.0}


def rows_of(words: str, size: float, width: float, metrics: FontMetrics, pen: Pen = Pen.TEXT) -> list[str]:
    """`words` in lines of at most `width` mm, measured in the letters of `pen`."""
    rows = wrap(words, size, width, metrics, pen)
    if len(rows) > 1 and " " not in rows[-1]:
        rows = next((each for each in _narrower(words, size, width, metrics, pen) if len(each) == len(rows)), rows)
    return rows


def _narrower(words: str, size: float, width: float, metrics: FontMetrics, pen: Pen) -> Iterator[list[str]]:
    """The words in lines so much shorter that the last one has more than one word."""
    for k in range(1, _TRIES):
        rows = wrap(words, size, width * (1 - k / (2 * _TRIES)), metrics, pen)
        if " " in rows[-1]:
            yield rows


_TRIES = 10


def row(words: str, size: float, at: Point, metrics: FontMetrics, align: Align = "left", pen: Pen = Pen.TEXT) -> Text:
    """One line of words on a baseline that begins, has its middle or ends at `at`."""
    return Text(Point(at.x - _SHARES[align] * metrics.width(words, size, pen), at.y), size, words, pen=pen)


def step_of(rows: Sequence[str], size: float) -> float:
    """From baseline to baseline in mm: further where an accent stands on a capital."""
    return leading(size, tall=any(map(is_tall, rows)))


def downward(
    rows: Sequence[str], size: float, at: Point, metrics: FontMetrics, align: Align = "left", pen: Pen = Pen.TEXT
) -> list[Text]:
    """`rows` one under the other, the first on a baseline at `at`."""
    step = step_of(rows, size)
    return [row(words, size, Point(at.x, at.y - k * step), metrics, align, pen) for k, words in enumerate(rows)]


def upward(
    rows: Sequence[str], size: float, at: Point, metrics: FontMetrics, align: Align = "left", pen: Pen = Pen.TEXT
) -> list[Text]:
    """The same with the last row on a baseline at `at`."""
    top = at.y + (len(rows) - 1) * step_of(rows, size)
    return downward(rows, size, Point(at.x, top), metrics, align, pen)
