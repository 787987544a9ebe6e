"""The tables of a run of orders: each is written beside the others, read back and proven before any of them changes."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial
from pathlib import Path
from typing import NamedTuple

from layout.box.shop_values import shop_values
from templates_gen.disk.faults import fault
from templates_gen.disk.flushed import flush_file, flush_folder
from templates_gen.disk.plain import open_plain, write_parts
from templates_gen.document import ReadError
from templates_gen.files.proven import ProofError
from templates_gen.inputs.range_file import Range
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Refused
from templates_gen.messages.roles.orders_report import OrdersLine
from templates_gen.ordering.report import REPORT, report_rows
from templates_gen.ordering.result import Result
from templates_gen.ordering.sums import sums_of
from templates_gen.ordering.totals import TO_BUY, TOTALS, to_buy_rows, totals_rows
from templates_gen.readers.csv import read_rows
from templates_gen.verify.finding import Findings
from templates_gen.verify.orders.tables import OrdersProof
from templates_gen.writers.csv import Cell, lines

TABLES = (REPORT, TOTALS, TO_BUY)
"""The names of the tables."""


class _Table(NamedTuple):
    name: str
    rows: Iterable[Sequence[Cell]]
    prove: Callable[[Iterator[Sequence[str]]], Findings]


def write_reports(folder: Path, hidden: Path, results: Callable[[], Iterator[Result]], kits: Range) -> None:
    """Writes the tables of these results, in the order of their rows, into `folder`; `hidden` is a folder beside them.

    The results are read several times and never held. Raises ProofError where a table does not come back right, before
    any is changed; FaultError where one cannot be written.
    """
    names = [each.kit.name for each in kits.kits]
    sums = sums_of(results(), names, kits.shop)
    proof = OrdersProof(results, names, shop_values(kits.shop))
    tables = (
        _Table(REPORT, report_rows(results(), sums), proof.report),
        _Table(TOTALS, totals_rows(sums), proof.totals),
        _Table(TO_BUY, to_buy_rows(sums), proof.to_buy),
    )
    new = {table.name: _written(hidden / f"{table.name}.part", table, folder) for table in tables}
    for name, path in new.items():
        _doing(Fault.REPLACE, folder / name, partial(path.replace, folder / name))
    _doing(Fault.WRITE_INTO, folder, partial(flush_folder, folder))


def _written(path: Path, table: _Table, folder: Path) -> Path:
    """One table in a file of that path, proven."""

    def write() -> None:
        path.unlink(missing_ok=True)
        write_parts(path, lines(table.rows))
        flush_file(path)

    _doing(Fault.WRITE, folder / table.name, write)
    _doing(Fault.READ, path, partial(_prove, path, table))
    return path


def _prove(path: Path, table: _Table) -> None:
    what = message(Refused.NOT_KEPT, file=table.name)
    try:
        with open_plain(path) as file:
            result = table.prove(read_rows(file))
    except ReadError as error:
        raise ProofError(what, [str(error)]) from error
    if not result.sound:
        raise ProofError(what, result.sentences)


def _doing(what: Fault, path: Path, do: Callable[[], object]) -> None:
    try:
        do()
    except OSError as error:
        raise fault(what, path, error, after=message(OrdersLine.STAYS)) from error
