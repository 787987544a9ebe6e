"""The order on a strip: a phrase in its row of words that must find room there."""

from __future__ import annotations

from collections.abc import Iterable

from layout.messages.roles.order import OrderNeed
from layout.parts.marking.flap import Phrase, Placed
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_ORDER = "order"


def order_wish(plan: Plan) -> list[list[Phrase]]:
    """The wish for the order of a plan; none where it has no number."""
    return [[Phrase(_ORDER, plan.ordered)]] if plan.ordered else []


def check_order(plan: Plan, placed: Iterable[Placed], length: float) -> None:
    """FieldError where the order found no room on a strip so long, in mm: parts of several orders lie together."""
    if plan.ordered and all(each.phrase.thing != _ORDER for each in placed):
        got, said = f'"{plan.kit.order.number}"', say_number(length, 0)
        raise FieldError("order.number", OrderNeed.ROOM, got, 'number = "1"', length=said)
