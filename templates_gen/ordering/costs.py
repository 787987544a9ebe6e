"""What each order costs, where all of a run is bought together: it bears its share of every pack, and its own work."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.box.buying import Purchase, key_of
from layout.box.costs import Cost, Made, cost_of
from layout.box.needs import Need
from templates_gen.ordering.result import Result
from templates_gen.ordering.sums import Sums


class Costs:
    """The costs of the orders whose `sums` are known. Boards and the cutter's time are not among them."""

    def __init__(self, sums: Sums) -> None:
        self._shop, self._sheets = sums.shop, sums.sheets
        self.currency = sums.shop.currency
        self._paper = [each for each in sums.bought if each.kind == "paper"]
        self._bought = {each.key: each for each in sums.bought}

    def of_box(self, result: Result, needs: Sequence[Need]) -> Cost:
        """What one box of an order costs that takes these `needs`."""
        paper = Fraction(result.sheets, self._sheets) if self._sheets else Fraction(0)
        return cost_of(needs, list(self._parts(needs)), self._shop, Made(paper))

    def _parts(self, needs: Sequence[Need]) -> Iterator[Purchase]:
        """What it has a part in, so that an order is as quick among many as among few."""
        yield from (self._bought[key_of(need, self._shop)] for need in needs)
        yield from self._paper
