"""What all commands share: names of files as arguments, and output that cannot be written."""

from __future__ import annotations

import os
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

import click

from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Command
from templates_gen.screen.terminal import Commands as VisibleCommands


class _Name(click.ParamType):  # type: ignore[type-arg]  # older versions take none
    """The name of a file or folder; an empty one would be the current folder, which nobody means by it."""

    name = "path"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Path:  # noqa: ARG002
        """The path."""
        if not str(value):
            raise _EmptyNameError(param)
        return Path(value)


class _EmptyNameError(click.ClickException):
    """A name with no letters in it."""

    exit_code = 2

    def __init__(self, param: click.Parameter | None) -> None:
        option = max(param.opts, key=len) if param else "path"
        name = option if option.startswith("-") else option.upper()
        super().__init__(message(Command.NO_NAME, option=name, example=_EXAMPLES.get(option, "demo.toml")))

    def show(self, file: Any = None) -> None:  # noqa: ARG002
        """The sentence alone."""
        click.echo(self.message, err=True)


_EXAMPLES = {
    "--out": "-o strips",
    "--stock": "--stock stock.toml",
    "--kit": "--kit demo.toml",
    "paths": "strips",
    "scans": "scan.png",
    "--picture": "--picture deviations.pdf",
}
NAME = _Name()
"""The type of an argument or option that names a file or folder."""

PRINTER = click.option("--printer", metavar="NAME", help="Correct printed sheets for a printer that was measured.")
JSON = click.option("--json", "as_json", is_flag=True, help="Print plain values for programs.")


class Commands(VisibleCommands):
    """The commands; where what they say cannot be written, a sentence on the error stream says so."""

    def main(self, *args: Any, **kwargs: Any) -> Any:
        """Runs one; code 2 where its output has no place."""
        try:
            return super().main(*args, **kwargs)
        except OSError as error:
            if error.filename is not None:  # that is no stream
                raise
            from templates_gen.disk.faults import reason

            said = message(Command.NO_OUTPUT, why=reason(error))
            for note in getattr(error, "__notes__", ()):
                said = message(Command.NO_OUTPUT_BUT, why=reason(error), note=note)
            _drop(sys.stdout)
            with suppress(OSError):
                click.echo(said, err=True)
            _drop(sys.stderr)
            sys.exit(2)


def _drop(stream: Any) -> None:
    """Sends what is still in a stream nowhere if it cannot be written: at its end Python would try again."""
    try:
        stream.flush()
    except (OSError, ValueError):
        with suppress(OSError, ValueError):
            nowhere = os.open(os.devnull, os.O_WRONLY)
            os.dup2(nowhere, stream.fileno())
            os.close(nowhere)
