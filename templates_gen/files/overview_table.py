"""The overview of a run as rows of cells, a row for each kit: amounts of one box, always metric."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction

from layout.box.overview import Row
from layout.values.numerals import say_fixed
from layout.values.quantity import Quantity
from templates_gen.files.run_about import MAKERS
from templates_gen.files.tables import TableRecord, money
from templates_gen.writers.csv import Cell

OVERVIEW = f"{MAKERS}overview.csv"

OVERVIEW_HEAD = (
    "kit", "folder", "boxes", "sett_per_cm", "sett_per_inch", "ends", "winds", "width_mm", "height_mm", "warp_m",
    "warp_g", "weft_m", "weft_g", "weft_g_low", "weft_g_high", "leash_cord_m", "sheets_in_box", "sheets_once", "boards",
    "cost", "cost_is", "price", "currency",
)  # fmt: skip
"""`cost` and `price` are of one box where so many are made; `cost_is` "all", or "part" where something has no price."""


def overview_table(rows: Iterable[Row], currency: str) -> TableRecord:
    """What is not known is empty."""
    return TableRecord(OVERVIEW, (OVERVIEW_HEAD, *(tuple(_cells(row, currency)) for row in rows)))


def _cells(row: Row, currency: str) -> Iterable[Cell]:
    yield from (row.name, row.folder, row.boxes, _fixed(row.sett * 10, 3), _fixed(row.sett * Fraction("25.4"), 3))
    yield from (row.ends, "" if row.winds is None else row.winds, _fixed(row.width, 2), _fixed(row.height, 2))
    yield from (_likely(row.warp_m, 2), _likely(row.warp_g, 1), _likely(row.weft_m, 2), _likely(row.weft_g, 1))
    low, high = (row.weft_g.low, row.weft_g.high) if row.weft_g else (None, None)
    yield from (_number(low, 1), _number(high, 1), _likely(row.cord_m, 2))
    yield from (row.singly.each, row.singly.once, row.singly.boards)
    cost, price = row.quote.cost, row.quote.price
    yield from (
        money(cost.whole),
        "part" if cost.missing else "all",
        money(price.each if price else None),
        currency,
    )


def _likely(figure: Quantity | None, places: int) -> Cell:
    return _number(figure.value if figure else None, places)


def _number(value: float | None, places: int) -> Cell:
    return "" if value is None else _fixed(Fraction(value), places)


def _fixed(value: Fraction, places: int) -> Decimal:
    return Decimal(say_fixed(value, places))
