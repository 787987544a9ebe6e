"""The command `desk`: a page in the browser for people who do not type commands."""

from __future__ import annotations

from pathlib import Path

import click

from layout.values.errors import LayoutError, shown_path
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.desk_server import DeskCommand
from templates_gen.screen.asked import sentences
from templates_gen.screen.commands import NAME
from templates_gen.screen.terminal import say


@click.command(short_help="Open a page in the browser to do all this in.")
@click.option("--folder", default=".", type=NAME, help="Where your kit files lie; the current folder if left out.")
@click.option("--port", type=int, metavar="NUMBER", help="The port to listen on; a free one if left out.")
@click.option("--no-browser", is_flag=True, help="Print the address and open no browser.")
@click.option("--network", is_flag=True, help="Let other devices of this network in, with a code. Read the warning.")
@click.option("--starters", type=NAME, metavar="FOLDER", help="Write files to double-click into FOLDER, and end.")
@sentences
def desk(folder: Path, port: int | None, no_browser: bool, network: bool, starters: Path | None) -> None:
    """Open the desk: a page in the browser for what you measured, the sheets that come of it, and the files.

    It is served by this computer for this computer alone, and nothing leaves it. Ctrl-C closes it.
    """
    if starters is not None:
        _write(starters)
        return
    if not folder.is_dir():
        raise LayoutError(message(DeskCommand.NO_FOLDER, folder=shown_path(folder)))
    from templates_gen.desk.server.serving import Asked, serve

    serve(Asked(folder.resolve(), port, network, not no_browser), say)


def _write(folder: Path) -> None:
    """Writes the files to double-click, for all systems."""
    from templates_gen.disk.faults import fault
    from templates_gen.messages.roles.disk import Fault
    from templates_gen.starters import NAMES, write_starters

    try:
        write_starters(folder)
    except FileExistsError as error:
        raise LayoutError(message(DeskCommand.STARTER_THERE, file=shown_path(error.filename))) from None
    except OSError as error:
        raise fault(Fault.WRITE, folder, error) from error
    say(message(DeskCommand.STARTERS, folder=shown_path(folder), files=listed(NAMES)))
