"""A whole run of orders, for the command and for Python: results as they come, then the tables and print runs."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Iterator, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from layout.values.errors import FieldError, shown, shown_path
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_report import OrdersLine, OrdersOption
from templates_gen.ordering.hidden import HIDDEN
from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order
from templates_gen.ordering.order_table import OrderTable
from templates_gen.ordering.result import OrderFile, Result
from templates_gen.ordering.sums import DONE

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock
    from layout.drawing.printer import Printer
    from layout.plan import Plan
    from templates_gen.inputs.range_file import Range


MOST_WORKERS = 999


@dataclass(frozen=True, slots=True)
class RunOptions:
    """How a run is made: by `workers` or an `executor`, only as a `check`, with print runs of so many sheets.

    `tell` hears, as sentences, of what was put right, and of a table that was changed meanwhile; `printed` of each
    print run.
    """

    workers: int | None = None
    executor: Executor | None = None
    check: bool = False
    print_run: int | None = None
    tell: Callable[[str], None] = lambda _: None
    printed: Callable[[OrderFile], None] = lambda _: None


def checked_workers(workers: object) -> int | None:
    """So many processes, None for one a core; OptionError for what is no number of them."""
    if workers is None or (isinstance(workers, int) and not isinstance(workers, bool) and 1 <= workers <= MOST_WORKERS):
        return workers
    raise OptionError("workers", OrdersOption.NUMBER, shown(workers), "workers=2", most=MOST_WORKERS)


def checked_print_run(sheets: int | None) -> int | None:
    """So many sheets; OptionError for what a print run cannot have."""
    if sheets is None:
        return None
    from templates_gen.ordering.print_runs import checked_sheets

    return checked_sheets(sheets)


def job_of(
    kits: Range, folder: Path, only: Iterable[str] = (), stock: Stock | None = None, printer: Printer | None = None
) -> Job:
    """What all orders share; OptionError for a name in `only` that no kit of the range has a file of."""
    names = tuple(only)
    _check_names(kits, names)
    return Job(str(folder.absolute()), names, None if stock is None else _stock_values(stock), printer)


def _stock_values(stock: Stock) -> dict[str, object]:
    from layout.cutting.stock.stock_values import stock_values

    return stock_values(stock)


def _check_names(kits: Range, names: Sequence[str]) -> None:
    plans = list(_plans(kits)) if names else []
    for name in names if plans else ():
        errors = [error for plan in plans if (error := _refusal(plan, name))]
        if len(errors) == len(plans):
            raise errors[0]


def _plans(kits: Range) -> Iterator[Plan]:
    """Those of the kits that can be woven as the range says; an order may say otherwise."""
    from templates_gen.files.kept import planned

    for each in kits.kits:
        try:
            yield planned(each.kit)
        except FieldError:
            continue


def _refusal(plan: Plan, name: str) -> FieldError | None:
    from templates_gen.inputs.families import products_of

    try:
        products_of(plan, [name])
    except FieldError as error:
        return error
    return None


def made(table: OrderTable, job: Job, options: RunOptions) -> Generator[Result]:
    """The result of each row as it comes; once all came, the tables are written, then print runs, each proven.

    A run that ends before leaves them as they were. Raises FaultError where the folder cannot be used or written
    any more, ProofError where a table does not come back right.
    """
    from templates_gen.ordering.reports import write_reports
    from templates_gen.ordering.running import run

    folder, done, new = Path(job.folder), _Lines(), 0
    with run(
        table, job, workers=options.workers, executor=options.executor, check=options.check, tell=options.tell
    ) as results:
        for result in results:
            if result.state in DONE:
                done.add(result.line)
            new += result.state == "made"
            yield result
        if not options.check:
            write_reports(folder, folder / HIDDEN, results.results, table.kits)
    if options.print_run and not options.check:
        _print(table, job, done, options.print_run, options.printed)
    elif new and (earlier := _earlier(folder)):
        options.tell(message(OrdersLine.EARLIER, file=shown_path(earlier)))
    if table.changed():
        options.tell(message(OrdersLine.CHANGED, file=shown_path(table.path)))


class _Lines:
    """Lines of a file, of which each takes one byte."""

    def __init__(self) -> None:
        self._lines = bytearray()

    def add(self, line: int) -> None:
        self._lines.extend(bytes(max(0, line + 1 - len(self._lines))))
        self._lines[line] = 1

    def __contains__(self, line: int) -> bool:
        return line < len(self._lines) and self._lines[line] == 1


def _earlier(folder: Path) -> Path | None:
    """A print run that an earlier run of orders left."""
    from templates_gen.files.print_run import is_print_run

    return min((place for place in folder.iterdir() if is_print_run(place.name)), default=None)


def _print(table: OrderTable, job: Job, done: _Lines, sheets: int, printed: Callable[[OrderFile], None]) -> None:
    """Print runs of the orders in these lines, whose folders are whole."""
    from templates_gen.lettering.fonts import metrics
    from templates_gen.ordering.print_runs import print_runs

    orders = (row for row in table.rows() if isinstance(row, Order) and row.line in done)
    for file in print_runs(orders, job, sheets, Path(job.folder), metrics()):
        printed(file)
