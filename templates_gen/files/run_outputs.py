"""The files of a run that are of no single kit: they lie beside the folders of the kits."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from layout.box.buying import Material
from layout.box.needs import needs
from layout.box.scopes import Boxed, Scope, to_buy
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.plan import Plan
from templates_gen.files.tables import TableRecord, to_buy_table
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.verify.finding import Findings
from templates_gen.verify.run.to_buy import Bought, Boxes, prove_to_buy

Rows = Sequence[Sequence[str]]
"""The cells of a table as they were read."""


class Planned(NamedTuple):
    """A kit of a run and its plan."""

    kit: RangeKit
    plan: Plan

    @property
    def folder(self) -> str:
        """Where its files lie."""
        return self.kit.folder


class RunTable(NamedTuple):
    """A table of a run, and what proves the rows that were read back from it."""

    record: TableRecord
    prove: Callable[[Rows], Findings]


class RunOutputs:
    """What is made of all kits of a run together; `stock` is what their cut parts are cut from."""

    def __init__(self, found: Range, plans: Sequence[Plan], metrics: FontMetrics, stock: Stock | None) -> None:
        self.range, self.metrics, self.stock = found, metrics, stock
        self.kits = tuple(Planned(kit, plan) for kit, plan in zip(found.kits, plans, strict=True))

    @property
    def scopes(self) -> tuple[Scope, ...]:
        """What to buy: for each kit, for a class, for the run."""
        boxed = [Boxed(each.kit.kit.name, needs(each.plan), each.kit.copies) for each in self.kits]
        return to_buy(boxed, self.range.shop, Material())

    @property
    def tables(self) -> tuple[RunTable, ...]:
        """The maker's tables."""
        return (RunTable(to_buy_table(self.scopes, self.range.shop.currency), self._prove_to_buy),)

    def _prove_to_buy(self, rows: Rows) -> Findings:
        from layout.box.shop_values import shop_values

        boxes = [Boxes(each.plan, each.kit.copies) for each in self.kits]
        return prove_to_buy(rows, boxes, shop_values(self.range.shop), Bought())
