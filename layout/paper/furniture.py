"""What stands on every sheet: the head (kit, part, sett, number, notes), the foot (check bars, printing, caution)."""

from __future__ import annotations

from dataclasses import dataclass, replace

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing, Point, Shape, Text, line
from layout.drawing.typeset import FIGURE, LEAD, SMALL, paragraph, paragraph_height, wrap
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet
from layout.paper.area import Area

BARS = ((100.0, "100 mm"), (101.6, "4 in"))
"""Length in mm and label of each check bar."""

_OVERHANG = 1.0  # some letters reach past where they begin or end: the head keeps so far inside the margins
_HEAD_WIDTH, _BAR_GAP, _BAR_BAND, _TICK, _LABEL_UP, _SPACE = 140.0, 5.4, 12.0, 1.4, 1.0, 3.0
_TEXT_WIDTH = 82.0


@dataclass(frozen=True, slots=True)
class Head:
    """What the head says: `title` large, `lines` under it, `notes` small under these."""

    title: str
    lines: tuple[str, ...]
    notes: tuple[str, ...]


def furnish(area: Area, head: Head, metrics: FontMetrics) -> tuple[Area, list[Shape]]:
    """The shapes of head and foot, and the area with their boxes taken."""
    top, top_box = _head(area, head, metrics)
    foot, foot_boxes = _foot(area, metrics)
    return replace(area, taken=(*area.taken, top_box, *foot_boxes)), [*top, *foot]


def _head(area: Area, head: Head, metrics: FontMetrics) -> tuple[list[Shape], Box]:
    width = min(_HEAD_WIDTH, area.width)
    shapes: list[Shape] = []
    y = area.top
    for size, words, gap in ((FIGURE, (head.title,), 0.0), (LEAD, head.lines, 0.4), (SMALL, head.notes, 1.2)):
        y -= gap
        lines = [row for one in words for row in wrap(one, size, width - 2 * _OVERHANG, metrics)]
        shapes += paragraph(lines, size, Point(area.left + _OVERHANG, y), metrics)
        y -= paragraph_height(len(lines), size, metrics)
    return shapes, (area.left, y - _SPACE, area.left + width, area.top)


def _foot(area: Area, metrics: FontMetrics) -> tuple[list[Shape], list[Box]]:
    """An L of check bars in the lower right corner, with its sentences in the angle."""
    longest = max(length for length, _ in BARS)
    across = Placing(0, area.right - longest - 0.5, area.bottom)
    upward = Placing(90, area.right, area.bottom + _BAR_BAND + 1)
    bars = [*across.shapes(_bars()), *upward.shapes(_bars())]
    words, text_box = _sentences(area, metrics)
    taken = [
        (area.right - longest - _SPACE, area.bottom, area.right, area.bottom + _BAR_BAND + 1),
        (area.right - _BAR_BAND - 1, area.bottom, area.right, area.bottom + _BAR_BAND + longest + _SPACE),
        text_box,
    ]
    return [*bars, *words], taken


def _bars() -> list[Shape]:
    """Both bars from x = 0, one above the other, each with end ticks and its length written on it."""
    shapes: list[Shape] = []
    for row, (length, label) in enumerate(BARS):
        y = _TICK + 0.4 + row * _BAR_GAP
        shapes.append(line(Point(0, y), Point(length, y), Pen.RULE))
        shapes += [line(Point(x, y - _TICK), Point(x, y + _TICK), Pen.RULE) for x in (0.0, length)]
        shapes.append(Text(Point(2, y + _LABEL_UP), SMALL, label))
    return shapes


def _sentences(area: Area, metrics: FontMetrics) -> tuple[list[Text], Box]:
    said = map(ENGLISH.say, (Sheet.PRINTING, Sheet.KNIFE))
    lines = [row for one in said for row in wrap(one, SMALL, _TEXT_WIDTH, metrics)]
    height = paragraph_height(len(lines), SMALL, metrics)
    right = area.right - _BAR_BAND - _SPACE
    corner = Point(right - _TEXT_WIDTH, area.bottom + _BAR_BAND + 1 + height)
    box = (corner.x - _SPACE, area.bottom + _BAR_BAND, right, corner.y + _SPACE)
    return paragraph(lines, SMALL, corner, metrics), box
