"""The three tables of a run of orders proven, row by row, so that none of them is held whole."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from decimal import Decimal, localcontext
from typing import Any

from templates_gen.ordering.result import Result
from templates_gen.verify.finding import Findings
from templates_gen.verify.orders.figures import MADE, Purse, asked_in, sheets_in
from templates_gen.verify.orders.totals import totals_wanted
from templates_gen.verify.run.table_rows import CENT, PLACES, Amount, Wanted, compared
from templates_gen.verify.run.to_buy import Bought, prove_bought

_DIGITS = 60
REPORT_HEAD = (
    "line", "order", "kit", "copies", "state", "column", "why", "folder", "files", "sheets", "ends", "warp_g",
    "warp_m", "weft_g", "weft_m", "cost", "cost_is", "currency", "notes",
)  # fmt: skip
TOTALS_HEAD = ("kit", "what", "name", "colour", "orders", "failed", "boxes", "sheets", "g", "m")

Rows = Iterable[Sequence[str]]
"""The cells of a table as they are read."""


class OrdersProof:
    """What proves the tables of these results, which are read as often as is needed; `shop` are its plain values."""

    def __init__(self, results: Callable[[], Iterator[Result]], names: Sequence[str], shop: Mapping[str, Any]) -> None:
        self._results, self._names, self._shop = results, names, shop
        with localcontext() as context:
            context.prec = _DIGITS
            self._purse = Purse(results(), shop)

    def report(self, rows: Rows) -> Findings:
        """A row for each result."""
        with localcontext() as context:
            context.prec = _DIGITS
            return compared(rows, REPORT_HEAD, map(self._row, self._results()))

    def totals(self, rows: Rows) -> Findings:
        """The sums by kit and of all."""
        return compared(rows, TOTALS_HEAD, totals_wanted(self._results(), self._names))

    def to_buy(self, rows: Rows) -> Findings:
        """What is bought for all."""
        every = ((asked_in(each.amounts), each.copies) for each in self._results() if each.state in MADE)
        return prove_bought(rows, every, self._purse.boxes, self._shop, Bought(self._purse.sheets))

    def _row(self, result: Result) -> Wanted:
        columns, sentences = zip(*result.problems, strict=True) if result.problems else ((), ())
        made = tuple(self._made(result)) if result.state in MADE else ("",) * 11
        copies = str(result.copies) if result.copies else ""
        said = str(result.line), result.number, result.kit, copies, result.state
        return (*said, "\n".join(columns), "\n".join(sentences), *made, "\n".join(result.notes))

    def _made(self, result: Result) -> Iterator[str | Amount]:
        yield from (result.folder, ", ".join(each.file for each in result.files))
        yield from (str(result.copies * sheets_in(result)), str(result.ends))
        for kind in ("warp", "weft"):
            yield from (_taken(result, kind, unit) for unit in ("g", "m"))
        yield from self._cost(result)

    def _cost(self, result: Result) -> Iterator[str | Amount]:
        currency = self._shop.get("buy", {}).get("currency", "")
        if not currency:
            yield from ("", "", "")
            return
        cost, whole = self._purse.cost(result)
        yield from (Amount(cost, CENT), "all" if whole else "part", currency)


def _taken(result: Result, kind: str, unit: str) -> str | Amount:
    """What all copies take of yarns of a kind, where it is known of each."""
    things = [asked for asked in asked_in(result.amounts) if asked.kind == kind]
    if not things or any(unit not in asked.units for asked in things):
        return ""
    return Amount(sum((result.copies * Decimal(asked.counted(unit)) for asked in things), Decimal(0)), PLACES[unit])
