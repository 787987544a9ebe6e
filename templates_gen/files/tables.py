"""The maker's tables as rows of cells: amounts always metric, money in the currency that the last column names."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from typing import NamedTuple

from layout.box.buying import Purchase
from layout.box.scopes import Scope
from layout.values.numerals import say_fixed
from templates_gen.writers.csv import Cell

TO_BUY = "maker-to-buy.csv"

TO_BUY_HEAD = (
    "scope", "kit", "boxes", "kind", "name", "colour", "unit", "needed", "needed_low", "needed_high", "spare",
    "bought_for", "pack", "pack_size", "packs", "left", "price_each", "paid", "currency",
)  # fmt: skip
"""`needed` is the likely figure, `bought_for` what packs are counted by, its spare with it; all in `unit`."""

_PLACES = {"g": 1, "m": 2, "sheet": 0, "piece": 0}
"""To how many decimals an amount is said."""


class TableRecord(NamedTuple):
    """A file of a table: its name, and its rows, the first one the names of its columns."""

    name: str
    rows: tuple[tuple[Cell, ...], ...]


def to_buy_table(scopes: Iterable[Scope], currency: str) -> TableRecord:
    """What to buy, a row a thing; what is not known is empty."""
    rows = [_row(scope, bought, currency) for scope in scopes for bought in scope.bought]
    return TableRecord(TO_BUY, (TO_BUY_HEAD, *rows))


def _row(scope: Scope, bought: Purchase, currency: str) -> tuple[Cell, ...]:
    amounts = (bought.likely, bought.low, bought.high, bought.spare, bought.needed)
    pack = bought.pack
    return (
        scope.scope,
        scope.kit,
        scope.boxes,
        bought.kind,
        bought.name,
        bought.colour,
        bought.unit,
        *(amount(each, bought.unit) for each in amounts),
        pack.pack if pack else "",
        amount(pack.size if pack else None, bought.unit),
        "" if bought.packs is None else bought.packs,
        amount(bought.left, bought.unit),
        money(pack.price if pack else None),
        money(bought.paid),
        currency,
    )


def amount(value: Fraction | None, unit: str) -> Cell:
    """An amount to the places of its unit; nothing where it is not known."""
    return "" if value is None else Decimal(say_fixed(value, _PLACES[unit]))


def money(value: Fraction | None) -> Cell:
    """Money to two decimals, halves away from zero; nothing where it is not known."""
    return "" if value is None else Decimal(say_fixed(value, 2))
