"""The commands. Each reads its words, calls one function, prints what that found; errors leave with code 2."""

from __future__ import annotations

import io
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from layout.values.errors import shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.asked import kit_of, planned_of, sentences, stock_of
from templates_gen.screen.commands import JSON, NAME, Commands
from templates_gen.screen.terminal import refuse, say, say_json
from templates_gen.screen.yarn_commands import guess, sett, yarn

if TYPE_CHECKING:
    from layout.plan import Plan
    from templates_gen.files.generate import Report

KIT = click.argument("kit", required=False, type=NAME)
STOCK = click.option("--stock", type=NAME, metavar="FILE", help="What parts are cut from; else 3 mm birch plywood.")


@click.group(
    cls=Commands,
    context_settings={"help_option_names": ["-h", "--help"]},
    epilog="To begin: templates-gen new mine.toml, fill it in, then templates-gen make mine.toml -o mine.",
)
@click.version_option(package_name="templates-gen")
def main() -> None:
    """Exact-scale guides and cut parts for loom kits, from one kit file; every file is proven before it exists."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):  # a screen that lacks a letter of a name gets its number instead
            stream.reconfigure(errors="backslashreplace")


@main.command(short_help="Write a starter kit file to fill in.")
@click.argument("file", type=NAME)
@sentences
def new(file: Path) -> None:
    """Write a commented starter kit to FILE; never over a file that is there."""
    from templates_gen.inputs.kit_file import write_starter

    write_starter(file)
    say(message(Command.WROTE_KIT, file=shown_path(file)))


@main.command("new-stock", short_help="Write a starter file for the stock that parts are cut from.")
@click.argument("file", type=NAME)
@sentences
def new_stock(file: Path) -> None:
    """Write a commented stock file (sheet, kerf, operations of a cutter) to FILE; never over a file that is there."""
    from templates_gen.inputs.stock_file import write_starter

    write_starter(file)
    say(message(Command.WROTE_STOCK, file=shown_path(file)))


@main.command(short_help="Make every file of a kit, or of the demo kit, each proven.")
@KIT
@click.option("-o", "--out", default="strips", show_default=True, type=NAME, help="Folder.")
@click.option(
    "--only",
    multiple=True,
    metavar="NAME",
    help="Make this alone: a part, strips, kit, board, job.pdf; again for more.",
)
@STOCK
@click.option("--list", "listed", is_flag=True, help="List every file that was made, too.")
@JSON
@sentences
def make(kit: Path | None, out: Path, only: tuple[str, ...], stock: Path | None, listed: bool, as_json: bool) -> None:
    """Make every file of KIT (without one: of the built-in demo kit), each read back and proven."""
    from templates_gen.disk.stopping import StoppedError, stoppable

    with stoppable() as stops:
        try:
            _show(_made(kit, out, only, stock), out, listed=listed, as_json=as_json)
        except StoppedError as error:
            if not stops.finished:
                refuse(message(Command.STOPPED, folder=shown_path(out)))
                sys.exit(128 + error.number)


def _made(kit: Path | None, out: Path, only: tuple[str, ...], stock: Path | None) -> tuple[Plan, Report]:
    from templates_gen.files import generate
    from templates_gen.inputs.families import products_of
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.progress import progress

    planned = planned_of(kit)
    names = products_of(planned, only)
    try:
        with progress() as show:
            return planned, generate.make(planned, out, metrics(), names, show, stock_of(stock), refuse)
    except generate.ProofError as error:
        refuse(error)
        sys.exit(1)


def _show(made: tuple[Plan, Report], out: Path, *, listed: bool, as_json: bool) -> None:
    from templates_gen.screen.made_report import made_rows, made_text, made_values

    planned, report = made
    try:
        if as_json:
            return say_json(made_values(report, out, planned.warnings))
        say(message(Command.INTO, folder=shown_path(out)))
        if listed:
            say(made_rows(report))
        say(made_text(report, planned.warnings))
    except OSError as error:
        error.add_note(message(Command.IN_PLACE, folder=shown_path(out)))
        raise


@main.command(short_help="Show the numbers of a kit, with reasons.")
@KIT
@JSON
@sentences
def plan(kit: Path | None, as_json: bool) -> None:
    """Show the numbers of KIT (without one: of the built-in demo kit), with reasons."""
    from templates_gen.files.outputs import Outputs
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen import report

    planned = planned_of(kit)
    notes = Outputs(planned, metrics()).notes
    if as_json:
        say_json(report.plan_values(planned, notes))
    else:
        say(report.plan_table(planned, notes))


for command in (sett, guess, yarn):
    main.add_command(command)


@main.command(short_help="Read made files back, and say what is wrong with them.")
@click.argument("paths", nargs=-1, required=True, type=NAME)
@click.option("--kit", type=NAME, help="Check against this kit, not the inputs a file carries.")
@click.option("--stock", type=NAME, help="Check what is cut against this stock, not the one a file carries.")
@JSON
@sentences
def check(paths: tuple[Path, ...], kit: Path | None, stock: Path | None, as_json: bool) -> None:
    """Read files or a folder back; code 1 when one is more than 1 micrometre off, incomplete or says another word.

    Code 2 when one cannot be read; the others are checked all the same.
    """
    from templates_gen.files.check import Against
    from templates_gen.files.check import check as check_paths
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.check_report import checked_table, checked_values

    against = Against(kit_of(kit) if kit else None, stock_of(stock) if stock else None)
    checked = check_paths(paths, against, metrics())
    if as_json:
        say_json(checked_values(checked))
    elif read := [each for each in checked if not each.unread]:
        say(checked_table(read))
    unread = [problem for each in checked if each.unread for problem in each.problems]
    for problem in unread:
        refuse(problem)
    sys.exit(2 if unread else 1 if any(each.problems for each in checked) else 0)


@main.command(short_help="Make a wrap gauge that needs no kit.")
@click.option("-o", "--out", default="gauge", show_default=True, type=NAME, help="Folder.")
@click.option("--unit", default="4 cm", show_default=True, help='Marking unit, such as "1 in": its system is used.')
@click.option("--ends", default="round bars", show_default=True, help="What carries the warp, as in a kit file.")
@sentences
def gauge(out: Path, unit: str, ends: str) -> None:
    """Make a wrap gauge that needs no kit: gauge.pdf for paper and gauge.svg alone, read back and proven."""
    from templates_gen.files.gauge import make_gauge
    from templates_gen.files.generate import ProofError
    from templates_gen.inputs.gauge_options import gauge_asked
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.made_report import proven_rows

    try:
        made = make_gauge(gauge_asked(unit, ends), out, metrics(), refuse)
    except ProofError as error:
        refuse(error)
        sys.exit(1)
    say(message(Command.INTO, folder=shown_path(out)))
    say(proven_rows(made))


@main.command("trial-cut", short_help="Kerf and ease from a trial cut, in mm.")
@click.option("--hole", "holes", multiple=True, metavar="SIZE", help="A hole along x; again for every measurement.")
@click.option("--part", "parts", multiple=True, metavar="SIZE", help="The part that came out of that hole.")
@click.option("--hole-y", "holes_y", multiple=True, metavar="SIZE", help="A hole along y, where y is measured apart.")
@click.option("--part-y", "parts_y", multiple=True, metavar="SIZE", help="The part that came out of that one.")
@click.option("--within", metavar="SIZE", help="How far off your caliper may be; else half of the last digit.")
@click.option("--slot", metavar="EASE", help="What is engraved at the slot that held the yarn well.")
@click.option("--drawn-for", metavar="KERF", help="The kerf engraved on the trial, if it is not the stock's.")
@click.option("--stock", type=NAME, metavar="FILE", help="The stock file to store the values in.")
@JSON
@sentences
def trial_cut(stock: Path | None, as_json: bool, **sizes: Any) -> None:
    """Kerf and ease from a trial cut, in mm: kerf = (hole - part) / 2; --stock FILE stores them."""
    from templates_gen.inputs.trial import TrialOptions, take
    from templates_gen.screen.trial_report import trial_text, trial_values

    taken = take(TrialOptions(**sizes), stock)
    say_json(trial_values(taken)) if as_json else say(trial_text(taken, stock))
