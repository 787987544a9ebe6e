"""The command that makes the files of a kit, or of all kits of a range."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from layout.kit.range_values import MOST_COPIES
from layout.values.errors import shown, shown_path
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.ranges import RangeOption
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.asked import printer_of, range_at, sentences, stock_of
from templates_gen.screen.commands import JSON, NAME, PRINTER
from templates_gen.screen.plan_command import KITS
from templates_gen.screen.terminal import refuse, say, say_json

if TYPE_CHECKING:
    from layout.drawing.printer import Printer
    from layout.plan import Plan
    from templates_gen.files.generate import Report
    from templates_gen.files.run import RunReport
    from templates_gen.inputs.range_file import Range

STOCK = click.option("--stock", type=NAME, metavar="FILE", help="What parts are cut from; else 3 mm birch plywood.")


@click.command(short_help="Make every file of a kit or range, each proven.")
@click.argument("kit", required=False, type=NAME)
@click.option("-o", "--out", default="strips", show_default=True, type=NAME, help="Folder.")
@click.option(
    "--only",
    multiple=True,
    metavar="NAME",
    help="Make this alone: a part, strips, kit, board, job.pdf; again for more.",
)
@click.option("--copies", metavar="N", help="So many boxes of each kit, in a folder for each kit.")
@KITS
@STOCK
@PRINTER
@click.option("--list", "listed", is_flag=True, help="List every file that was made, too.")
@JSON
@sentences
def make(
    kit: Path | None,
    out: Path,
    only: tuple[str, ...],
    copies: str | None,
    kits: tuple[str, ...],
    stock: Path | None,
    printer: str | None,
    listed: bool,
    as_json: bool,
) -> None:
    """Make every file of KIT (without one: of the built-in demo kit), each read back and proven.

    Of a range, every kit is made in a folder of its own.
    """
    from templates_gen.disk.stopping import StoppedError, stoppable

    found = range_at(kit).of(kits).times(_copies(copies))
    known = printer_of(printer)
    with stoppable() as stops:
        try:
            if found.alone and not found.copies_said:
                _show(*_made(found, out, only, stock, known), out, listed=listed, as_json=as_json)
            else:
                _show_run(_made_run(found, out, only, stock, known), out, listed=listed, as_json=as_json)
        except StoppedError as error:
            if not stops.finished:
                refuse(message(Command.STOPPED, folder=shown_path(out)))
                sys.exit(128 + error.number)


def _copies(said: str | None) -> int | None:
    """The number of boxes that an option says."""
    if said is None:
        return None
    number = int(said) if said.isascii() and said.isdigit() and len(said) < 10 else 0
    if not 1 <= number <= MOST_COPIES:
        raise OptionError("--copies", RangeOption.COPIES, shown(said), "--copies 10", most=MOST_COPIES)
    return number


def _made(
    found: Range, out: Path, only: tuple[str, ...], stock: Path | None, printer: Printer | None
) -> tuple[Plan, Report]:
    from templates_gen.files import generate
    from templates_gen.files.for_printer import with_printer
    from templates_gen.files.proven import ProofError
    from templates_gen.files.run_plans import plans_of
    from templates_gen.inputs.families import products_of
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.progress import progress

    (planned,) = (with_printer(plan, printer) for plan in plans_of(found))
    names = products_of(planned, only)
    try:
        with progress() as show:
            return planned, generate.make(planned, out, metrics(), names, show, stock_of(stock), refuse)
    except ProofError as error:
        refuse(error)
        sys.exit(1)


def _made_run(found: Range, out: Path, only: tuple[str, ...], stock: Path | None, printer: Printer | None) -> RunReport:
    from templates_gen.files.proven import ProofError
    from templates_gen.files.run import make_run
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.progress import progress

    try:
        with progress() as show:
            return make_run(found, out, metrics(), only, show, stock_of(stock), refuse, printer)
    except ProofError as error:
        refuse(error)
        sys.exit(1)


def _show(planned: Plan, report: Report, out: Path, *, listed: bool, as_json: bool) -> None:
    from templates_gen.screen.made_report import made_rows, made_text, made_values

    try:
        if as_json:
            say_json(made_values(report, out, planned.warnings))
            return
        say(message(Command.INTO, folder=shown_path(out)))
        if listed:
            say(made_rows(report))
        say(made_text(report, planned.warnings))
    except OSError as error:
        error.add_note(message(Command.IN_PLACE, folder=shown_path(out)))
        raise


def _show_run(report: RunReport, out: Path, *, listed: bool, as_json: bool) -> None:
    from templates_gen.screen.run_report import run_text, run_values

    try:
        if as_json:
            say_json(run_values(report, out))
            return
        say(message(Command.INTO, folder=shown_path(out)))
        say(run_text(report, as_rows=listed))
    except OSError as error:
        error.add_note(message(Command.IN_PLACE, folder=shown_path(out)))
        raise
