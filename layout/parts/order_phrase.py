"""The order on a strip: a phrase on each of its pieces that has room, on one at the least."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from layout.messages.roles.order import OrderNeed
from layout.parts.marking.flap import Phrase, Placed
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_ORDER = "order"


def order_wishes(plan: Plan, edges: Sequence[float]) -> list[list[Phrase]]:
    """A wish for each piece between these `edges` that it names the order of a plan; none where that has no number."""
    if not plan.ordered:
        return []
    return [[Phrase(f"{_ORDER} {k}", plan.ordered, between=span)] for k, span in enumerate(pairwise(edges), 1)]


def check_order(plan: Plan, placed: Iterable[Placed], length: float) -> None:
    """FieldError where the order found no room on a strip so long, in mm: parts of several orders lie together."""
    if plan.ordered and not any(each.phrase.thing.startswith(_ORDER) for each in placed):
        got, said = f'"{plan.kit.order.number}"', say_number(length, 0)
        raise FieldError("order.number", OrderNeed.ROOM, got, 'number = "1"', length=said)
