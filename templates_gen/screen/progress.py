"""A bar on the error stream that shows how far a long run is, where a person watches; a log gets nothing."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from time import monotonic
from typing import Any

import click

from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Command

_QUIET = 1.0  # s; what ends sooner needs no bar
_TEMPLATE = "%(label)s  [%(bar)s]  %(info)s"


def _watched() -> bool:
    """Whether the error stream is a person's screen."""
    return sys.stderr.isatty()


@contextmanager
def progress() -> Iterator[Callable[[int, int, str], None]]:
    """Hears how many of all files are done and which is next; leaves the line of the bar when the run ends."""
    begun, watched, bars = monotonic(), _watched(), list[Any]()
    with ExitStack() as ends:

        def show(done: int, total: int, file: str) -> None:
            if not watched or monotonic() - begun < _QUIET:
                return
            bar = bars[0] if bars else _bar(total)
            bar.update(done - bar.pos, file)
            if not bars:
                bars.append(ends.enter_context(bar))

        yield show
        for bar in bars:
            bar.update(bar.length - bar.pos, "")


def _bar(total: int) -> Any:
    return click.progressbar(
        length=total,
        label=message(Command.PROGRESS),
        file=sys.stderr,
        show_eta=False,
        show_pos=True,
        item_show_func=lambda file: file,
        bar_template=_TEMPLATE,
        width=24,
        update_min_steps=0,
    )
