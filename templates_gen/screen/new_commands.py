"""The commands that write a file to start from."""

from __future__ import annotations

from pathlib import Path

import click

from layout.values.errors import shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.ranges import RangeFile
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.asked import sentences
from templates_gen.screen.commands import NAME
from templates_gen.screen.terminal import say

FILE = click.argument("file", type=NAME)


@click.command(short_help="Write a starter kit file to fill in.")
@FILE
@sentences
def new(file: Path) -> None:
    """Write a commented starter kit to FILE; never over a file that is there."""
    from templates_gen.inputs.kit_file import write_starter

    write_starter(file)
    say(message(Command.WROTE_KIT, file=shown_path(file)))


@click.command("new-stock", short_help="Write a starter file for the stock that parts are cut from.")
@FILE
@sentences
def new_stock(file: Path) -> None:
    """Write a commented stock file (sheet, kerf, operations of a cutter) to FILE; never over a file that is there."""
    from templates_gen.inputs.stock_file import write_starter

    write_starter(file)
    say(message(Command.WROTE_STOCK, file=shown_path(file)))


@click.command("new-range", short_help="Write a starter file for several kits that share values.")
@FILE
@sentences
def new_range(file: Path) -> None:
    """Write a commented range (several kits that share values) to FILE; never over a file that is there."""
    from templates_gen.inputs.range_file import write_range

    write_range(file)
    say(message(RangeFile.WROTE, file=shown_path(file)))
