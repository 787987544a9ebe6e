"""The command `printer-check`: makes the sheet, or takes what was measured on it."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from layout.values.errors import shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.asked import printer_of, sentences
from templates_gen.screen.commands import JSON, NAME
from templates_gen.screen.terminal import refuse, say, say_json

if TYPE_CHECKING:
    from templates_gen.inputs.measured_check import CheckOptions


@click.command("printer-check", short_help="A sheet to check a printer by, or what it measured.")
@click.option("-o", "--out", default="printer-check", show_default=True, type=NAME, help="Folder for the sheet.")
@click.option("--paper", default="common", show_default=True, help='Its paper, as in a kit file: "a4", "148 x 210 mm".')
@click.option("--language", default="en", show_default=True, help="Of the words on the sheet: en, es, de or fr.")
@click.option("--x", metavar="LENGTH", help='From A to B as you measured it, such as "189.9 mm" or "7 15/32 in".')
@click.option("--y", metavar="LENGTH", help="From C to D.")
@click.option("--across", metavar="LENGTH", help="From E to F, the diagonal that rises.")
@click.option("--across-2", metavar="LENGTH", help="From G to H, the diagonal that falls; one of the two is enough.")
@click.option(
    "--within", metavar="LENGTH", help="How far off a reading may be; else half of the last digit, 0.25 mm at least."
)
@click.option("--printer", metavar="NAME", help="The printer that the sheet is made for, or was.")
@click.option("--store", metavar="NAME", help="Keep the printer under this name, for make --printer.")
@JSON
@sentences
def printer_check(out: Path, language: str, as_json: bool, **options: Any) -> None:
    """Make printer-check.pdf, a sheet to measure a printer by; or, given the spans measured on it, find its scale.

    First: templates-gen printer-check -o check. Print it at 100 %, and measure. Then: templates-gen printer-check --x
    "189.9 mm" --y "249.8 mm" --across "306.1 mm" --across-2 "305.9 mm" --store office.
    """
    from templates_gen.inputs.measured_check import CheckOptions, measured_check
    from templates_gen.screen.printer_check_report import check_text, check_values

    asked = CheckOptions(**options)
    if not asked.measured:
        _made(asked, language, out, as_json=as_json)
        return
    measured = measured_check(asked)
    say_json(check_values(measured)) if as_json else say(check_text(measured))


def _made(asked: CheckOptions, language: str, out: Path, *, as_json: bool) -> None:
    from templates_gen.files.for_printer import checked_printer
    from templates_gen.files.printer_check import CheckAsked, make_check
    from templates_gen.files.proven import ProofError
    from templates_gen.inputs.printer_check_options import check_paper
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.made_report import proven_rows

    paper, printer = check_paper(asked.paper, language), checked_printer(printer_of(asked.printer))
    try:
        made = make_check(CheckAsked(paper, printer), out, metrics(), refuse)
    except ProofError as error:
        refuse(error)
        sys.exit(1)
    if as_json:
        say_json({"folder": str(out), "files": [each.values for each in made.made], "notes": list(made.notes)})
        return
    say(message(Command.INTO, folder=shown_path(out)))
    say("\n".join([proven_rows(made), *made.notes]))
