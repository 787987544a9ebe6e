"""The totals of all orders as rows of cells: by kit what to print and what yarn it takes, and what to buy for all."""

from __future__ import annotations

from collections.abc import Iterator

from layout.box.scopes import Scope
from templates_gen.files.tables import amount, to_buy_table
from templates_gen.ordering.sums import KitSums, Sums
from templates_gen.writers.csv import Cell

TOTALS, TO_BUY = "totals.csv", "to-buy.csv"

TOTALS_HEAD = ("kit", "what", "name", "colour", "orders", "failed", "boxes", "sheets", "g", "m")
"""`what` is "orders", "file" (to print) or a kind of yarn; at the end "unknown", if there are such rows, and "all"."""


def totals_rows(sums: Sums) -> Iterator[tuple[Cell, ...]]:
    """The table: each kit in the order of the range, rows whose kit could not be read, all."""
    yield TOTALS_HEAD
    for name, kit in sums.kits.items():
        yield _counts(name, "orders", kit)
        yield from _of_kit(name, kit)
    if sums.nowhere.orders:
        yield _counts("", "unknown", sums.nowhere)
    yield _counts("", "all", sums)


def _counts(kit: str, what: str, sums: KitSums | Sums) -> tuple[Cell, ...]:
    return (kit, what, "", "", sums.orders, sums.failed, sums.boxes, sums.sheets, "", "")


def _of_kit(name: str, kit: KitSums) -> Iterator[tuple[Cell, ...]]:
    """What is printed, then its yarns, in the order in which they were met."""
    for file, printed in kit.files.items():
        yield (name, "file", file, "", printed.orders, "", printed.boxes, printed.sheets, "", "")
    for (kind, yarn, colour), thread in kit.yarns.items():
        figures = (amount(thread.figure("g"), "g"), amount(thread.figure("m"), "m"))
        yield (name, kind, yarn, colour, thread.orders, "", thread.boxes, "", *figures)


def to_buy_rows(sums: Sums) -> Iterator[tuple[Cell, ...]]:
    """What to buy for all orders together, in the columns of that table of a run."""
    scope = Scope("run", "", sums.boxes, sums.bought)
    yield from to_buy_table([scope], sums.shop.currency).rows
