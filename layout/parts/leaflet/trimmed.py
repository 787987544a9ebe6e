"""On large paper a leaf is a block of four A6 panels that is trimmed before it is folded, with its name in it.

What is read begins 40 mm under the upper edge of the block, in the middle between its sides.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Shape, Text, line
from layout.drawing.typeset import NAME, SMALL
from layout.messages.roles import Count, Leaflet, SheetName
from layout.messages.roles.order import OrderWord
from layout.parts.leaflet.panels import Room
from layout.parts.winding.lines import downward, rows_of, upward
from layout.plan import Plan

WIDE, HIGH, HEAD, FOOT = 210.0, 297.0, 40.0, 18.0
"""Four panels of A6 (105 x 148.5; ISO 216 has 148), and what stays white over and under what is read, in mm."""

_MARK, _OFF, _WORDS = 3.0, 1.0, 5.5
_INSET = 22.0
_TO_KIT, _TO_FACTS = 6.2, 3.6
_NAME = 23.75  # the name's first baseline, from the upper edge


def block_room() -> Room:
    """The room in a block."""
    return Room(WIDE / 2 - _INSET, HIGH - HEAD - FOOT, 2, HIGH / 2 - HEAD, trimmed=True)


def around(read: Box) -> Box:
    """The box of a block with its marks, by the box of what is read on it."""
    _, low, _, top = read
    past = _MARK + _OFF
    return -WIDE / 2 - past, low - FOOT - past, WIDE / 2 + past, top + HEAD + past + _WORDS


def trimmed(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """Two marks at each corner of the block, what is done with them, and the name within."""
    low, top = HEAD - HIGH, HEAD
    shapes: list[Shape] = []
    for side in (-1, 1):
        x = side * WIDE / 2
        for y, way in ((low, -1), (top, 1)):
            shapes.append(line(Point(x, y + way * _OFF), Point(x, y + way * (_OFF + _MARK)), Pen.HELP))
            shapes.append(line(Point(x + side * _OFF, y), Point(x + side * (_OFF + _MARK), y), Pen.HELP))
    said = rows_of(plan.words.say(Leaflet.TRIM), SMALL, WIDE - 2 * _INSET, metrics)
    shapes += upward(said, SMALL, Point(_INSET - WIDE / 2, top + _OFF + _MARK + 1.0), metrics)
    names = rows_of(plan.words.say(SheetName.NAME_LEAFLET), NAME, WIDE - 2 * _INSET, metrics, Pen.STRONG)
    kits = rows_of(plan.named, SMALL, WIDE - 2 * _INSET, metrics, Pen.STRONG)
    buyer = rows_of(_made_for(plan), SMALL, WIDE - 2 * _INSET, metrics)
    higher = _TO_FACTS * (len(kits) - 1 + len(buyer))
    named = downward(names, NAME, Point(_INSET - WIDE / 2, top - _NAME + higher), metrics, pen=Pen.STRONG)
    facts = plan.words.listed((plan.sett_brief, plan.words.say(Count.ENDS, ends=plan.warp.ends), *plan.doubled))
    rows = rows_of(facts, SMALL, WIDE - 2 * _INSET, metrics)
    left, y = named[-1].at.x, named[-1].at.y - _TO_KIT
    shapes += named
    for row, pen in [*((row, Pen.STRONG) for row in kits), *((row, Pen.TEXT) for row in buyer)]:
        shapes.append(Text(Point(left, y), SMALL, row, pen=pen))
        y -= _TO_FACTS
    return [*shapes, *downward(rows, SMALL, Point(left, y), metrics)]


def _made_for(plan: Plan) -> str:
    """For whom it was made; empty where the kit does not say."""
    buyer = plan.kit.order.buyer
    return plan.words.say(OrderWord.FOR, buyer=buyer) if buyer else ""
