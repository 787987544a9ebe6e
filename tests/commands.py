"""The commands as a person calls them, for the tests of what they print and refuse."""

from __future__ import annotations

import re

from click.testing import CliRunner, Result

from templates_gen.screen.cli import main


def run(*arguments: object) -> Result:
    """One command in this process; an error that is not its own stops the test."""
    result = CliRunner().invoke(main, [str(each) for each in arguments])
    if result.exception is not None and not isinstance(result.exception, SystemExit):
        raise result.exception
    return result


def refused(*arguments: object, lines: int = 1) -> str:
    """What a command says that must be refused: code 2, nothing printed, so many sentences."""
    result = run(*arguments)
    assert (result.exit_code, result.stdout) == (2, "")
    stated = [line for line in result.stderr.splitlines() if not re.match(r"\d+ of \d+ done, making ", line)]
    assert len(stated) == lines  # a busy machine also says how far it is
    assert "Traceback" not in result.stderr
    return "".join(f"{line}\n" for line in stated)
