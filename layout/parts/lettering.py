"""Phrases as they are drawn: words on their baseline with an arrow head before or behind them."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, Text, filled
from layout.drawing.typeset import SMALL
from layout.parts.phrases import ARROW, Set

FOOT = 0.92
"""The baseline of a row of words lies so far above its lower edge, in mm."""


def lettered(placed: Set, baseline: float, metrics: FontMetrics) -> list[Shape]:
    """The words of a phrase that has found its place, and its arrow head after them in the list."""
    phrase = placed.phrase
    shapes: list[Shape] = [Text(Point(placed.start + phrase.words_from(), baseline), SMALL, phrase.words)]
    if phrase.arrow:
        from_right = phrase.width(metrics) - ARROW if phrase.arrow == "right" else 0.0
        middle = baseline + metrics.cap * SMALL / 2
        shapes.append(_arrow(Point(placed.start + from_right + ARROW / 2, middle), phrase.arrow))
    return shapes


def _arrow(centre: Point, way: str) -> Region:
    """A filled arrow head, ARROW mm long, that points `way`."""
    long, wide = ARROW / 2, 0.8
    ahead = {"right": (1, 0), "left": (-1, 0), "up": (0, 1), "down": (0, -1)}[way]
    corners = ((long, 0.0), (-long, wide), (-long, -wide))
    dx, dy = ahead
    return filled([Point(centre.x + dx * a - dy * b, centre.y + dy * a + dx * b) for a, b in corners], Pen.SOLID)
