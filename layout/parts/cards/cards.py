"""All cards of a box, in the order in which they lie on their sheets."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, line
from layout.drawing.sheet import Part
from layout.kit.box import CARDS, LIST
from layout.messages.roles.cards import Card, CardNeed
from layout.parts.cards.card import MARGIN, card, half_of, size_of
from layout.parts.cards.label import face, label
from layout.parts.cards.legal_card import legal_card
from layout.parts.cards.packing_list import faces, packing_list
from layout.plan import Plan
from layout.values.errors import FieldError

_LESS = 1.0
"""A usual list that is folded over may be so much lower, in mm."""


def cards(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
    """Label, legal card and packing list.

    Label and list are one card where they are folded over. Raises FieldError on the card whose words find no room.
    """
    if plan.kit.box.fold:
        first, *others = _folded(plan, metrics)
        return first, legal_card(plan, metrics), *others
    return label(plan, metrics), legal_card(plan, metrics), *packing_list(plan, metrics)


def _folded(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
    """Label over list, which stands upside down, both as large as the list; what has no room there on more cards."""
    asked = plan.kit.box.list
    wide, high = size_of(plan, asked, CARDS[LIST])
    if not asked:
        high, usual = min(high, half_of(plan)), high
        if high < usual - _LESS:
            raise FieldError("box.fold", CardNeed.FOLD, plan.kit.paper.size.words, "fold = false")
    first, *others = faces(plan, (wide, high), metrics)
    shapes = [
        *Placing(0, 0, high).shapes(face(plan, (wide, high), "box.list", metrics)),
        *Placing(180, wide, high).shapes(first),
        line(Point(MARGIN, high), Point(wide - MARGIN, high), Pen.FOLD),
    ]
    say = plan.words.say
    both = card(plan, "folded-label", (wide, 2 * high), shapes, say(Card.FOLDED_FOR), metrics)
    more = (card(plan, "folded-label", (wide, high), each, say(Card.LIST_FOR), metrics) for each in others)
    return both, *more
