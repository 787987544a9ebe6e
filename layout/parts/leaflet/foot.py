"""The foot of a leaf: the caution, what else lies in the box, and what the lines of the pictures mean."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, line
from layout.drawing.typeset import SMALL
from layout.messages.roles import Leaflet, Winding
from layout.parts.leaflet.in_box import beside_the_steps
from layout.parts.leaflet.panels import FOLD_WHITE, Room, SetStep
from layout.parts.winding.kinds.pictures import picture_of
from layout.parts.winding.lines import rows_of, step_of
from layout.plan import Plan

_BASE, _OVER = 2.4, 4.0
_SAMPLE, _TO_WORDS, _BETWEEN = 10.0, 2.0, 6.0


def foot_of(plan: Plan, room: Room, metrics: FontMetrics, *, whole: bool) -> tuple[list[Shape], float]:
    """Its shapes at the lower edge of a leaf, and how high they stand with the white over them.

    One that is not `whole` does not name what else lies in the box. In two columns the caution stands left, the legend
    right, and what else lies in the box where there is more room.
    """
    wide = 2 * room.half if room.columns == 1 else room.half - FOLD_WHITE
    left = rows_of(plan.words.say(Leaflet.TENSION), SMALL, wide, metrics)
    said = [rows_of(each, SMALL, wide, metrics) for each in beside_the_steps(plan) if whole]
    step = step_of([row for rows in (left, *said) for row in rows], SMALL)
    base = -room.high + _BASE
    if room.columns == 1:
        left += [row for rows in said for row in rows]
        legend, count = _legend(plan, room, Point(-room.half, base + len(left) * step + 0.6), wide, metrics)
        return [*_rows(left, -room.half, base, step), *legend], _BASE + (len(left) + count) * step + 0.6 + _OVER
    legend, count = _legend(plan, room, Point(FOLD_WHITE, base), wide, metrics)
    right: list[str] = []
    for rows in said:
        shorter = left if len(left) + len(rows) <= len(right) + count + len(rows) else right
        shorter += rows
    shapes = [*_rows(left, -room.half, base, step), *_rows(right, FOLD_WHITE, base + count * step, step)]
    return [*shapes, *legend], _BASE + max(len(left), len(right) + count) * step + _OVER


def last_of(plan: Plan, wide: float, metrics: FontMetrics) -> list[SetStep]:
    """What else lies in the box, to stand after the last step; nothing where there is nothing."""
    rows = [row for each in beside_the_steps(plan) for row in rows_of(each, SMALL, wide, metrics)]
    step = step_of(rows, SMALL)
    return [SetStep(tuple(_rows(rows, 0.0, -len(rows) * step, step)), len(rows) * step + 1.0)] if rows else []


def _rows(rows: list[str], left: float, base: float, step: float) -> list[Shape]:
    """Lines of words, the last on a baseline."""
    return [Text(Point(left, base + k * step), SMALL, row) for k, row in enumerate(reversed(rows))]


def _legend(plan: Plan, room: Room, at: Point, wide: float, metrics: FontMetrics) -> tuple[list[Shape], int]:
    """What the lines mean, upward from a baseline, and in how many rows."""
    say, behind = plan.words.say, picture_of(plan.kit.frame.ends, plan.warp.winding).behind
    entries = [(Pen.THREAD, say(Winding.ON_FACE))]
    entries += [(Pen.THREAD_BACK, say(behind))] if behind else []
    entries += [(Pen.FOLD, say(Leaflet.FOLD))] if room.columns > 1 else []
    placed: list[tuple[int, float, Pen, str]] = []
    x, row = 0.0, 0
    for pen, said in entries:
        width = _SAMPLE + _TO_WORDS + metrics.width(said, SMALL)
        if x and x + width > wide:
            x, row = 0.0, row + 1
        placed.append((row, x, pen, said))
        x += width + _BETWEEN
    step = step_of([said for _, said in entries], SMALL)
    shapes: list[Shape] = []
    for up, off, pen, said in placed:
        y, x = at.y + (row - up) * step, at.x + off
        middle = y + metrics.cap * SMALL / 2
        shapes.append(line(Point(x, middle), Point(x + _SAMPLE, middle), pen))
        shapes.append(Text(Point(x + _SAMPLE + _TO_WORDS, y), SMALL, said))
    return shapes, row + 1
