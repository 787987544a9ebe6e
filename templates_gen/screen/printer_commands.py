"""The commands about printers that were measured: list them, show one, forget one."""

from __future__ import annotations

import sys

import click

from layout.values.errors import LayoutError, shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.printers import PrinterLine
from templates_gen.screen.asked import sentences
from templates_gen.screen.commands import JSON
from templates_gen.screen.terminal import refuse, say, say_json


@click.group(invoke_without_command=True, short_help="List, show and forget printers that were measured.")
@JSON
@click.pass_context
@sentences
def printers(context: click.Context, as_json: bool) -> None:
    """List the printers that were measured: name, paper, day, and what comes out of 100 mm.

    Code 2 when the file of one cannot be used; the others are listed all the same.
    """
    if context.invoked_subcommand is not None:
        return
    from templates_gen.inputs.printer_store import folder, kept
    from templates_gen.screen.printer_report import printer_json, printer_rows

    found = kept()
    wrong = [each.printer for each in found if isinstance(each.printer, LayoutError)]
    if as_json:
        say_json({"folder": str(folder()), "printers": [printer_json(each) for each in found]})
    elif len(wrong) < len(found) or not found:
        say(printer_rows([each.printer for each in found if not isinstance(each.printer, LayoutError)]))
    for error in wrong:
        refuse(error)
    if wrong:
        sys.exit(2)


@printers.command(short_help="Show one printer.")
@click.argument("name")
@JSON
@sentences
def show(name: str, as_json: bool) -> None:
    """Show the printer that is kept under NAME, and its file."""
    from templates_gen.inputs.printer_store import Kept, load, place_of
    from templates_gen.screen.printer_report import printer_json, printer_text

    printer, path = load(name, "NAME"), place_of(name)
    say_json(printer_json(Kept(path, printer))) if as_json else say(printer_text(printer, path))


@printers.command("forget", short_help="Take one printer away.")
@click.argument("name")
@JSON
@sentences
def forget_one(name: str, as_json: bool) -> None:
    """Take the printer away that is kept under NAME; its file is deleted."""
    from templates_gen.inputs.printer_store import forget

    path = forget(name)
    gone = {"name": name, "file": str(path)}
    say_json(gone) if as_json else say(message(PrinterLine.FORGOTTEN, name=name, file=shown_path(path)))
