"""The one way to a screen: whatever is printed, a terminal shows it and does not act on it."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager

import click

from layout.values.errors import ascii_safe, shown_sentences


def say(text: str) -> None:
    """Prints a table or a sentence, whole."""
    click.echo("\n".join(map(ascii_safe, text.split("\n"))))


def refuse(error: object) -> None:
    """Prints the sentences of a refusal on the error stream; endless ones are cut short."""
    click.echo(shown_sentences(str(error)), err=True)


def say_json(values: object) -> None:
    """Prints values for programs; letters stay letters, and what a terminal would act on is escaped as JSON does."""
    _say_visible(json.dumps(values, indent=2, ensure_ascii=False))


def say_json_line(values: object) -> None:
    """The same in one line, written out at once."""
    _say_visible(json.dumps(values, ensure_ascii=False))


def _say_visible(text: str) -> None:
    click.echo("".join(letter if letter.isprintable() or letter == "\n" else _escaped(letter) for letter in text))


def _escaped(letter: str) -> str:
    said = json.dumps(letter)[1:-1]
    return said if said != letter else f"\\u{ord(letter):04x}"  # DEL is no control character to JSON


class Commands(click.Group):
    """A group of commands whose complaints about words that it does not know show these words, and no more."""

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        """What click does, its complaint made visible; without a word, what there is."""
        if not args:
            click.echo(ctx.get_help(), err=True)
            ctx.exit(2)
        with _visible():
            return super().parse_args(ctx, args)

    def invoke(self, ctx: click.Context) -> object:
        """What click does, its complaint made visible; a command's own words are read here."""
        with _visible():
            return super().invoke(ctx)


@contextmanager
def _visible() -> Iterator[None]:
    try:
        yield
    except click.UsageError as error:
        said = error.format_message()
        clean = shown_sentences(said.replace("\n", "\\n"))
        if clean == said:
            raise
        raise click.UsageError(clean, error.ctx) from None
