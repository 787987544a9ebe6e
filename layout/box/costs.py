"""What a box costs, and what it may be sold for. Money is exact; who shows it rounds it.

All that a run buys is borne by its boxes, each by what it takes: the costs of all boxes together are what is paid, and
what is left over is lost to nobody. A box of a smaller run bears more of it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from fractions import Fraction
from typing import Literal, NamedTuple

from layout.box.buying import Purchase, figure_of, key_of
from layout.box.needs import Kind, Need
from layout.box.shop import Shop

Work = Literal["cutting", "work"]
Spent = Kind | Work
"""What money is spent on: things that are bought, the cutter's minutes, work."""

_HOUR = 60
_CENT = Fraction(1, 100)


class Made(NamedTuple):
    """What one box takes of its run: shares of all paper and of all boards, and `minutes` of the cutter.

    The shares of all boxes are 1 together. `minutes` and `minute_price` are None where they are not known.
    """

    paper: Fraction = Fraction(0)
    boards: Fraction = Fraction(0)
    minutes: Fraction | None = None
    minute_price: Fraction | None = None


class Cost(NamedTuple):
    """What one box costs, by what is paid for; where something has no price (`missing`), it costs at least that."""

    parts: Mapping[Spent, Fraction]
    missing: tuple[Purchase | Work, ...]

    @property
    def whole(self) -> Fraction:
        """All that is known of it."""
        return sum(self.parts.values(), Fraction(0))


def cost_of(needs: Sequence[Need], bought: Sequence[Purchase], shop: Shop, made: Made) -> Cost:
    """What a box that takes these `needs` costs, where all of its run is `bought` together."""
    shares = {purchase: share for purchase, share in _shares(needs, bought, shop, made).items() if share}
    parts: dict[Spent, Fraction] = {}
    for purchase, share in shares.items():
        if purchase.paid is not None:
            parts[purchase.kind] = parts.get(purchase.kind, Fraction(0)) + share * purchase.paid
    missing: list[Purchase | Work] = [purchase for purchase in shares if purchase.paid is None]
    for work, paid in _work(shop, made).items():
        if paid is None:
            missing.append(work)
        else:
            parts[work] = paid
    return Cost(parts, tuple(missing))


def _shares(needs: Sequence[Need], bought: Sequence[Purchase], shop: Shop, made: Made) -> dict[Purchase, Fraction]:
    """Which share of each purchase one box bears."""
    by_key = {purchase.key: purchase for purchase in bought}
    found: dict[Purchase, Fraction] = {}
    for need in needs:
        purchase = by_key[key_of(need, shop)]
        if purchase.needed:
            share = figure_of(need, purchase.unit) / purchase.needed
            found[purchase] = found.get(purchase, Fraction(0)) + share
    for purchase in bought:
        if purchase.kind in ("paper", "board"):
            found[purchase] = made.paper if purchase.kind == "paper" else made.boards
    return found


def _work(shop: Shop, made: Made) -> dict[Work, Fraction | None]:
    """What the cutter's time and one's own cost; None where that is not known."""
    found: dict[Work, Fraction | None] = {}
    if made.boards:
        known = made.minutes is not None and made.minute_price is not None
        found["cutting"] = (made.minutes or 0) * (made.minute_price or Fraction(0)) if known else None
    found["work"] = None if shop.hour is None or shop.minutes is None else shop.hour * shop.minutes / _HOUR
    return found


class Price(NamedTuple):
    """For how much a box is sold, and which share of that is left once its cost is paid."""

    each: Fraction
    margin: Fraction


def price_of(cost: Fraction, less: Fraction, shop: Shop) -> Price | None:
    """The price of a box that costs so much, `less` a share, rounded up; None where the maker states no margin.

    A margin is a share of the price: price = cost / (1 - margin).
    """
    if shop.margin is None:
        return None
    step = shop.round_to or _CENT
    each = math.ceil(cost / (1 - shop.margin) * (1 - less) / step) * step
    return Price(each, 1 - cost / each if each else Fraction(0))
