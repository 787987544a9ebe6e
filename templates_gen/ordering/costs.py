"""What each order costs, where all of a run is bought together: it bears its share of every pack, and its own work.

As `layout.box.costs` has it, with what is paid for one unit of each thing worked out once, since orders are many.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.box.buying import Key, Purchase, figure_of, key_of
from layout.box.costs import Made, cost_of
from layout.box.needs import Need
from templates_gen.ordering.result import Result
from templates_gen.ordering.sums import Sums


class Costs:
    """The costs of the orders whose `sums` are known. Boards and the cutter's time are not among them."""

    def __init__(self, sums: Sums) -> None:
        self._shop, self.currency = sums.shop, sums.shop.currency
        bought = sums.bought
        self._rates: dict[Key, Fraction | None] = {each.key: _rate(each) for each in bought}
        self._sheet = next((_sheet(each) for each in bought if each.kind == "paper"), Fraction(0))
        self._work = cost_of((), (), sums.shop, Made())

    def of_order(self, result: Result, needs: Sequence[Need]) -> tuple[Fraction, bool]:
        """What all boxes of an order cost, of which one takes these `needs`, and whether everything has a price."""
        shares = [*self._shares(needs), self._paper(result.sheets)]
        known = sum((share for share in shares if share is not None), self._work.whole)
        return result.copies * known, None not in shares and not self._work.missing

    def _paper(self, sheets: int) -> Fraction | None:
        return None if sheets and self._sheet is None else sheets * (self._sheet or Fraction(0))

    def _shares(self, needs: Sequence[Need]) -> Iterator[Fraction | None]:
        """What a box pays of each thing that it takes any of."""
        for need in needs:
            key = key_of(need, self._shop)
            figure, rate = figure_of(need, key[3]), self._rates[key]
            if figure:
                yield None if rate is None else figure * rate


def _rate(each: Purchase) -> Fraction | None:
    """What is paid for one unit of it."""
    paid = each.paid
    return None if paid is None else paid / each.needed if each.needed else Fraction(0)


def _sheet(paper: Purchase) -> Fraction | None:
    """What is paid for one printed sheet, with its part of what is misprinted."""
    return None if paper.paid is None else paper.paid / paper.likely
