"""What a box costs and is sold for, from one box on: computed anew for every number of boxes that are made together."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.box.buying import Material, Wanted, purchases
from layout.box.costs import Cost, Made, Price, cost_of, price_of
from layout.box.needs import Need
from layout.box.shop import Shop


class Takes(NamedTuple):
    """What a number of boxes take together: sheets of paper, boards, minutes of the cutter (None if not known)."""

    sheets: int = 0
    boards: int = 0
    minutes: Fraction | None = None


class Rates(NamedTuple):
    """What a board and a minute of the cutter cost; None where that is not known."""

    board: Fraction | None = None
    minute: Fraction | None = None


NO_RATES = Rates()


class Quote(NamedTuple):
    """For `boxes` made together: what one costs, by what share its price is less, and the price; None if none is asked.

    Where the cost lacks something, so does the price.
    """

    boxes: int
    less: Fraction
    cost: Cost
    price: Price | None


def quotes(
    needs: Sequence[Need], shop: Shop, takes: Callable[[int], Takes], rates: Rates = NO_RATES
) -> tuple[Quote, ...]:
    """A quote for each quantity of the shop, `takes` of so many boxes."""
    return tuple(quote(needs, shop, step.start, takes(step.start), rates, step.less) for step in shop.steps)


def quote(
    needs: Sequence[Need], shop: Shop, boxes: int, takes: Takes, rates: Rates = NO_RATES, less: Fraction = Fraction(0)
) -> Quote:
    """The quote for so many boxes, all alike."""
    material = Material(takes.sheets, takes.boards, rates.board)
    bought = purchases([Wanted(tuple(needs), boxes)], shop, material)
    each = Fraction(1, boxes)
    minutes = None if takes.minutes is None else takes.minutes * each
    made = Made(each, each if takes.boards else Fraction(0), minutes, rates.minute)
    cost = cost_of(needs, bought, shop, made)
    return Quote(boxes, less, cost, price_of(cost.whole, less, shop))
