"""What all orders of a run come to, result by result: counts, sheets, yarn by kit, and what is to be bought."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from layout.box.buying import Basket, Material, Purchase
from layout.box.needs import Need
from layout.box.shop import Shop, Unit
from layout.values.exact_sum import ExactSum
from templates_gen.ordering.amounts import needs_of
from templates_gen.ordering.result import Result

DONE = ("made", "unchanged")
"""The states of an order whose files lie in the folder."""

YARNS = ("warp", "weft", "leash_cord")
"""The kinds of needs that are thread."""

Yarn = tuple[str, str, str]
"""A thread: its kind, name and colour."""


class Thread:
    """How much of a yarn all boxes take, its spare included; None in a unit that is not known of every box."""

    def __init__(self) -> None:
        self.orders = self.boxes = 0
        self._sums: dict[Unit, ExactSum] = {}
        self._known: dict[Unit, int] = {}

    def add(self, need: Need, boxes: int) -> None:
        """What so many boxes of an order take."""
        self.orders, self.boxes = self.orders + 1, self.boxes + boxes
        for unit in need.taken:
            self._sums.setdefault(unit, ExactSum()).add(need.figure(unit), boxes)
            self._known[unit] = self._known.get(unit, 0) + 1

    def figure(self, unit: Unit) -> Fraction | None:
        """The sum, exactly."""
        return self._sums[unit].value if self._known.get(unit) == self.orders else None


class Printed:
    """A file that is printed: how many orders have it, for how many boxes, and its sheets for all of them."""

    def __init__(self) -> None:
        self.orders = self.boxes = self.sheets = 0

    def add(self, sheets: int, boxes: int) -> None:
        """That of an order."""
        self.orders, self.boxes = self.orders + 1, self.boxes + boxes
        self.sheets += boxes * sheets


class KitSums:
    """The orders of one kit. Boxes, files and yarns are those of orders that did not fail."""

    def __init__(self) -> None:
        self.orders = self.failed = self.boxes = self.sheets = 0
        self.files: dict[str, Printed] = {}
        self.yarns: dict[Yarn, Thread] = {}

    def add(self, result: Result, needs: Iterable[Need]) -> None:
        """One order and what one box of it takes."""
        self.orders += 1
        if result.state not in DONE:
            self.failed += 1
            return
        self.boxes += result.copies
        self.sheets += result.copies * result.sheets
        for file in result.files:
            if file.file.endswith(".pdf"):
                self.files.setdefault(file.file, Printed()).add(file.sheets, result.copies)
        for need in needs:
            if need.kind in YARNS:
                self.yarns.setdefault((need.kind, need.name, need.colour), Thread()).add(need, result.copies)


class Sums:
    """All orders, by the kits of these `names`; `nowhere` counts rows whose kit could not be read."""

    def __init__(self, names: Iterable[str], shop: Shop) -> None:
        self.shop, self.nowhere = shop, KitSums()
        self.kits = {name: KitSums() for name in names}
        self._basket = Basket(shop)

    def add(self, result: Result) -> None:
        """What became of one row."""
        needs = needs_of(result.amounts)
        self.kits.get(result.kit, self.nowhere).add(result, needs)
        if result.state in DONE:
            self._basket.add(needs, result.copies)

    def _of_all(self, what: str) -> int:
        return sum(getattr(each, what) for each in (*self.kits.values(), self.nowhere))

    @property
    def orders(self) -> int:
        """All rows."""
        return self._of_all("orders")

    @property
    def failed(self) -> int:
        """The rows of which nothing lies in the folder."""
        return self._of_all("failed")

    @property
    def boxes(self) -> int:
        """All boxes."""
        return self._of_all("boxes")

    @property
    def sheets(self) -> int:
        """The sheets that are printed for all boxes."""
        return self._of_all("sheets")

    @property
    def bought(self) -> tuple[Purchase, ...]:
        """What is bought for all orders together."""
        return self._basket.bought(Material(self.sheets))


def sums_of(results: Iterable[Result], names: Iterable[str], shop: Shop) -> Sums:
    """The sums of all results, of which one at a time is held."""
    sums = Sums(names, shop)
    for result in results:
        sums.add(result)
    return sums
