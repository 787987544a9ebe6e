"""A card to be cut out: its outline, what stands on it, and beside it what it is for; and how large cards are."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, rectangle
from layout.drawing.sheet import Part
from layout.drawing.signs import scissors
from layout.drawing.typeset import LEAD, leading, wrap
from layout.kit.box import CardSize
from layout.messages.roles import SheetName
from layout.plan import Plan

BESIDE_CARD = 43.9, 73.6
"""What a sheet needs beside a card, and above and below it, in mm."""

_BESIDE_FOLDED, _BESIDE_ON_SMALL, _SMALL = 68.6, 90.0, 250.0
"""The same above and below a card of two halves; on a sheet less high than the last of them, the second."""

MARGIN = 8.0
"""White inside the outline of a card, in mm."""

_ARM, _INSIDE = 0.5, 1.5  # register crosses: half of a hair, and how far inside the corners they stand
_SCISSORS_FROM, _SCISSORS_WIDE, _EYES = 19.2, 8.0, 2.2
_CAPTION = 3.6  # the lowest line of a caption over the outline: clear of the scissors


def room_of(plan: Plan) -> tuple[int, int]:
    """The largest card that a sheet of this paper holds, in whole mm."""
    paper = plan.kit.paper
    return math.floor(paper.width - BESIDE_CARD[0]), math.floor(paper.height - BESIDE_CARD[1])


def half_of(plan: Plan) -> float:
    """The highest half of a folded card that a sheet of this paper holds, in whole mm."""
    high = plan.kit.paper.height
    return (high - (_BESIDE_FOLDED if high >= _SMALL else _BESIDE_ON_SMALL)) // 2


def size_of(plan: Plan, asked: CardSize | None, usual: CardSize) -> tuple[float, float]:
    """The sides of a card in mm: as it was asked for, else the usual one, smaller where the paper is."""
    if asked:
        return float(asked.width.mm), float(asked.height.mm)
    wide, high = room_of(plan)
    return min(float(usual.width.mm), wide), min(float(usual.height.mm), high)


def ends_at(words: str, size: float, at: Point, metrics: FontMetrics, pen: Pen = Pen.TEXT) -> Text:
    """`words` in the letters of `pen` that end at `at`."""
    return Text(Point(at.x - metrics.width(words, size, pen), at.y), size, words, pen=pen)


def card(
    plan: Plan,
    name: str,
    sides: tuple[float, float],
    shapes: Iterable[Shape],
    caption: str,
    metrics: FontMetrics,
    named: tuple[SheetName, SheetName] = (SheetName.NAME_LABEL, SheetName.PURPOSE_LABEL),
) -> Part:
    """The part `name`: a card of these sides in mm with its lower left corner at (0, 0), its `caption` over it.

    Its sheet is `named` so. What only helps a person who cuts it out by hand, caption and scissors, are its scissors.
    """
    wide, high = sides
    outline = rectangle(0, 0, wide, high, Pen.CUT)
    by_hand = [*scissors(Point(max(wide - _SCISSORS_FROM, wide / 2), high)), *_caption(caption, wide, high, metrics)]
    datum = Point(_INSIDE, _INSIDE), Point(wide - _INSIDE, _INSIDE), Point(wide - _INSIDE, high - _INSIDE)
    hairs = (hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER))
    ink = Pen.CUT.ink.width / 2
    top = max((text.at.y + metrics.ascent * LEAD for text in by_hand if isinstance(text, Text)), default=high + _EYES)
    title, purpose = map(plan.words.say, named)
    return Part(
        name,
        title,
        (outline, *shapes, *by_hand, *hairs),
        datum,
        (-ink, -ink, wide + ink, top),
        whole=True,
        purpose=purpose,
        measured=False,
        scissors=tuple(by_hand),
    )


def _caption(caption: str, wide: float, high: float, metrics: FontMetrics) -> Sequence[Shape]:
    rows = wrap(caption, LEAD, wide, metrics)
    lowest = high + _CAPTION
    return [Text(Point(0, lowest + leading(LEAD) * up), LEAD, row) for up, row in enumerate(reversed(rows))][::-1]
