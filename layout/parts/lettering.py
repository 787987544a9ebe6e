"""Phrases as they are drawn: words on their baseline with an arrow head before or behind them."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Region, Shape, Text
from layout.drawing.symbols import arrow_head
from layout.drawing.typeset import SMALL
from layout.parts.phrases import ARROW, PlacedPhrase

FOOT = 0.92
"""The baseline of a row of words lies so far above its lower edge, in mm."""


def lettered(placed: PlacedPhrase, baseline: float, metrics: FontMetrics) -> list[Shape]:
    """The words of a phrase that has found its place, and its arrow head after them in the list."""
    phrase = placed.phrase
    shapes: list[Shape] = [
        Text(Point(placed.start + phrase.words_from(), baseline), SMALL, phrase.words, pen=phrase.pen)
    ]
    if phrase.arrow:
        from_right = phrase.width(metrics) - ARROW if phrase.arrow == "right" else 0.0
        middle = baseline + metrics.cap * SMALL / 2
        shapes.append(_arrow(Point(placed.start + from_right + ARROW / 2, middle), phrase.arrow))
    return shapes


def _arrow(centre: Point, way: str) -> Region:
    """A filled arrow head, ARROW mm long, that points `way`."""
    ahead = {"right": Point(1, 0), "left": Point(-1, 0), "up": Point(0, 1), "down": Point(0, -1)}[way]
    return arrow_head(centre, ahead, ARROW, 1.6)
