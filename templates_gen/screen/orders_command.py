"""The command that makes a table of orders."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import closing, contextmanager
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from layout.values.errors import shown, shown_path
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_report import OrdersLine, OrdersOption
from templates_gen.screen.asked import printer_of, range_at, sentences, stock_of
from templates_gen.screen.commands import JSON, NAME, PRINTER
from templates_gen.screen.make_command import STOCK
from templates_gen.screen.terminal import refuse, say, say_json_line

if TYPE_CHECKING:
    from concurrent.futures import Executor

    from templates_gen.ordering.job import Job
    from templates_gen.ordering.order_run import RunOptions
    from templates_gen.ordering.order_table import OrderTable
    from templates_gen.screen.orders_report import Tally

_MOST_SHEETS = 999


@click.command(short_help="Make a table of orders: kits of a range, to measure.")
@click.argument("table", metavar="ORDERS", type=NAME)
@click.option("--range", "kits", required=True, type=NAME, metavar="FILE", help="The range that the orders are for.")
@click.option("-o", "--out", default="orders", show_default=True, type=NAME, help="Folder.")
@click.option("--check", is_flag=True, help="Read every row, and make nothing.")
@click.option("--only", multiple=True, metavar="NAME", help="Make only this of each order; again for more.")
@click.option("--print-run", metavar="N", help="Also lay all orders on sheets together, at most N a file.")
@STOCK
@PRINTER
@click.option("--workers", metavar="N", help="So many processes make them; else one for each core.")
@click.option("--dask", metavar="ADDRESS", help="The workers of this Dask scheduler make them.")
@JSON
@sentences
def orders(
    table: Path,
    kits: Path,
    out: Path,
    check: bool,
    only: tuple[str, ...],
    print_run: str | None,
    stock: Path | None,
    printer: str | None,
    workers: str | None,
    dask: str | None,
    as_json: bool,
) -> None:
    """Make the files of every row of ORDERS, a table in CSV: each proven, in a folder of its own.

    Orders that lie there unchanged are not made again. Code 1 when a row failed; the others are made all the same.
    """
    from templates_gen.ordering.order_run import MOST_WORKERS, RunOptions, checked_print_run, job_of
    from templates_gen.ordering.order_table import open_orders

    with _stopped(out):
        processes = _number("--workers", workers, MOST_WORKERS)
        sheets = checked_print_run(_number("--print-run", print_run, _MOST_SHEETS))
        found = range_at(kits)
        rows = open_orders(table, found)
        job = job_of(found, out, only, stock_of(stock) if stock else None, printer_of(printer))
        with _executor(dask) as (executor, threads):
            _show(rows, job, RunOptions(processes or threads, executor, check, sheets), out, as_json=as_json)


@contextmanager
def _stopped(out: Path) -> Iterator[None]:
    """Heeds a stop while the block runs, which may only be reading yet; leaves with one sentence and its code."""
    from templates_gen.disk.stopping import StoppedError, stoppable

    with stoppable():
        try:
            yield
        except StoppedError as error:
            refuse(message(OrdersLine.STOPPED, folder=shown_path(out)))
            sys.exit(128 + error.number)


def _number(option: str, said: str | None, most: int) -> int | None:
    """The number that an option says."""
    if said is None:
        return None
    number = int(said) if said.isascii() and said.isdigit() and len(said) < 10 else 0
    if not 1 <= number <= most:
        raise OptionError(option, OrdersOption.NUMBER, shown(said), f"{option} 2", most=most)
    return number


@contextmanager
def _executor(address: str | None) -> Iterator[tuple[Executor | None, int | None]]:
    """The workers of a Dask scheduler while the block runs, and how many there are now; None where none is named."""
    if address is None:
        yield None, None
        return
    try:
        distributed: Any = import_module("distributed")
    except ImportError:
        raise OptionError("--dask", OrdersOption.NO_DASK, shown(address), _WITH_DASK) from None
    try:
        client = distributed.Client(address, timeout=_PATIENCE)
    except Exception as error:  # each way to talk to a scheduler fails in its own way
        why = type(error).__name__
        raise OptionError("--dask", OrdersOption.NO_SCHEDULER, shown(address), _ADDRESS, why=why) from None
    with client:
        yield client.get_executor(), sum(client.ncores().values()) or None


_WITH_DASK, _ADDRESS, _PATIENCE = 'pip install "templates-gen[dask]"', "--dask tcp://192.168.0.2:8786", "10s"


def _show(rows: OrderTable, job: Job, options: RunOptions, out: Path, *, as_json: bool) -> None:
    """Makes them, says what became of each, and leaves with the code for it."""
    from templates_gen.files.proven import ProofError
    from templates_gen.screen.orders_report import Tally

    tally = Tally(check=options.check)
    try:
        _run(rows, job, options, tally, as_json=as_json)
    except ProofError as error:
        refuse(error)
        sys.exit(1)
    finally:
        for sentence in tally.problems if not as_json else ():
            refuse(sentence)
    if as_json:
        say_json_line(tally.values(out))
    else:
        say(tally.text(out))
    sys.exit(1 if tally.failed else 0)


def _run(rows: OrderTable, job: Job, options: RunOptions, tally: Tally, *, as_json: bool) -> None:
    from dataclasses import replace

    from templates_gen.ordering.order_run import made
    from templates_gen.screen.orders_progress import orders_progress
    from templates_gen.screen.orders_report import result_values

    with orders_progress(rows.count) as bar:
        heard = replace(options, tell=bar.say, printed=tally.print_runs.append)
        with closing(made(rows, job, heard)) as results:
            for result in results:
                tally.add(result)
                bar.step()
                if as_json:
                    say_json_line(result_values(result))
