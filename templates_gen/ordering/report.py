"""The report: a row for each row of the table of orders, in its order, and what became of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from layout.box.needs import Need
from layout.box.shop import Unit
from layout.values.exact_sum import ExactSum
from templates_gen.files.tables import amount, money
from templates_gen.ordering.amounts import needs_of
from templates_gen.ordering.costs import Costs
from templates_gen.ordering.result import Result
from templates_gen.ordering.sums import DONE, Sums
from templates_gen.writers.csv import Cell

REPORT = "report.csv"

REPORT_HEAD = (
    "line", "order", "kit", "copies", "state", "column", "why", "folder", "files", "sheets", "ends", "warp_g",
    "warp_m", "weft_g", "weft_m", "cost", "cost_is", "currency", "notes",
)  # fmt: skip
"""Sheets, yarns and cost are of all copies. Where there are several problems, `column` and `why` have a line for each.

`cost_is` "all", or "part" where something has no price.
"""


def report_rows(results: Iterable[Result], sums: Sums) -> Iterator[tuple[Cell, ...]]:
    """The table, row by row; what is not known is empty."""
    costs = Costs(sums) if sums.shop.currency else None
    yield REPORT_HEAD
    for result in results:
        yield (*_order(result), *(_made(result, costs) if result.state in DONE else _NOTHING), "\n".join(result.notes))


_NOTHING = ("",) * (len(REPORT_HEAD) - REPORT_HEAD.index("folder") - 1)


def _order(result: Result) -> Iterator[Cell]:
    yield from (result.line, result.number, result.kit, result.copies or "", result.state)
    yield "\n".join(problem.column for problem in result.problems)
    yield "\n".join(problem.sentence for problem in result.problems)


def _made(result: Result, costs: Costs | None) -> Iterator[Cell]:
    needs = needs_of(result.amounts)
    yield from (result.folder, ", ".join(file.file for file in result.files))
    yield from (result.copies * result.sheets, result.ends)
    for kind in ("warp", "weft"):
        of_kind = [need for need in needs if need.kind == kind]
        yield from (amount(_sum(of_kind, unit, result.copies), unit) for unit in _UNITS)
    yield from _cost(result, needs, costs) if costs else ("", "", "")


_UNITS: tuple[Unit, ...] = ("g", "m")


def _sum(needs: Sequence[Need], unit: Unit, copies: int) -> Fraction | None:
    """What all copies take with its spare; None where it is not known of every yarn, or there is none."""
    if not needs or not all(unit in need.taken for need in needs):
        return None
    whole = ExactSum()
    for need in needs:
        whole.add(need.figure(unit), copies)
    return whole.value


def _cost(result: Result, needs: Sequence[Need], costs: Costs) -> Iterator[Cell]:
    cost, whole = costs.of_order(result, needs)
    yield from (money(cost), "all" if whole else "part", costs.currency)
