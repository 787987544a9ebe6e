"""The commands. Each reads its words, calls one function, prints what that found; errors leave with code 2."""

from __future__ import annotations

import io
import sys
from pathlib import Path
from typing import Any

import click

from layout.values.errors import shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.asked import printer_of, range_at, sentences, stock_of
from templates_gen.screen.commands import JSON, NAME, PRINTER, Commands
from templates_gen.screen.desk_command import desk
from templates_gen.screen.make_command import make
from templates_gen.screen.measure_command import measure
from templates_gen.screen.new_commands import new, new_range, new_stock
from templates_gen.screen.orders_command import orders
from templates_gen.screen.plan_command import plan
from templates_gen.screen.printer_check_command import printer_check
from templates_gen.screen.printer_commands import printers
from templates_gen.screen.terminal import refuse, say, say_json
from templates_gen.screen.yarn_commands import guess, sett, yarn


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


for command in (
    desk,
    new,
    new_stock,
    new_range,
    make,
    orders,
    measure,
    plan,
    sett,
    guess,
    yarn,
    printer_check,
    printers,
):
    main.add_command(command)


@main.command(short_help="Read made files back, and say what is wrong with them.")
@click.argument("paths", nargs=-1, required=True, type=NAME)
@click.option("--kit", type=NAME, help="Check against this kit or range, not the inputs a file carries.")
@click.option("--stock", type=NAME, help="Check what is cut against this stock, not the one a file carries.")
@JSON
@sentences
def check(paths: tuple[Path, ...], kit: Path | None, stock: Path | None, as_json: bool) -> None:
    """Read files, folders or zips back; code 1 when one is more than 1 micrometre off, incomplete, says another word.

    Code 2 when one cannot be read; the others are checked all the same.
    """
    from templates_gen.files.check import Against
    from templates_gen.files.check import check as check_paths
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.check_report import checked_table, checked_values

    found = range_at(kit) if kit else None
    one = found.kits[0].kit if found and found.alone and not found.copies_said else None
    against = Against(one, stock_of(stock) if stock else None, None if one else found)
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
@PRINTER
@sentences
def gauge(out: Path, unit: str, ends: str, printer: str | None) -> None:
    """Make a wrap gauge that needs no kit: gauge.pdf for paper and gauge.svg alone, read back and proven."""
    from templates_gen.files.for_printer import checked_printer
    from templates_gen.files.gauge import make_gauge
    from templates_gen.files.proven import ProofError
    from templates_gen.inputs.gauge_options import gauge_asked
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.made_report import proven_rows

    try:
        made = make_gauge(gauge_asked(unit, ends, checked_printer(printer_of(printer))), out, metrics(), refuse)
    except ProofError as error:
        refuse(error)
        sys.exit(1)
    say(message(Command.INTO, folder=shown_path(out)))
    say("\n".join([proven_rows(made), *made.notes]))


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


@main.command("square-check", short_help="How far off a cutter is, from a square check.")
@click.option("--x", multiple=True, metavar="SIZE", help="From flat to flat along X; again for every measurement.")
@click.option("--band-x", multiple=True, metavar="SIZE", help="The band between the window at X and its flat.")
@click.option("--y", multiple=True, metavar="SIZE", help="From flat to flat along Y.")
@click.option("--band-y", multiple=True, metavar="SIZE", help="The band between the window at Y and its flat.")
@click.option("--a", multiple=True, metavar="SIZE", help="From flat to flat along A, the diagonal up to the right.")
@click.option("--b", multiple=True, metavar="SIZE", help="From flat to flat along B, the diagonal down to the right.")
@click.option("--within", metavar="SIZE", help="How far off your caliper may be; else 0.03 mm.")
@click.option("--stock", type=NAME, metavar="FILE", help="The stock file to store the scale in.")
@JSON
@sentences
def square_check(stock: Path | None, as_json: bool, **sizes: Any) -> None:
    """Scale along x and y, and squareness, of a cutter, from a square check that it cut, apart from its kerf.

    make --only square-check draws the plate; --stock FILE stores the scale, and files are drawn against it then.
    """
    from templates_gen.inputs.square import SquareOptions, take
    from templates_gen.screen.square_report import square_text, square_values

    square, before = take(SquareOptions(**sizes), stock)
    say_json(square_values(square)) if as_json else say(square_text(square, stock, before))
