"""The commands as a person calls them, for the tests of what they print and refuse."""

from __future__ import annotations

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
    assert len(result.stderr.splitlines()) == lines
    assert "Traceback" not in result.stderr
    return result.stderr
