"""A bar on the error stream with the rate of a long run of orders and the time that is left; a log gets nothing."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_report import OrdersLine
from templates_gen.screen.terminal import refuse

_QUIET = 1.0  # s; what ends sooner needs no bar


class OrdersBar:
    """Hears of each order that is done, and says sentences so that they do not stand in the line of the bar."""

    def __init__(self, bar: Any = None) -> None:
        self._bar = bar

    def step(self) -> None:
        """One more is done."""
        if self._bar is not None:
            self._bar.update()

    def say(self, sentence: object) -> None:
        """A sentence on the error stream."""
        if self._bar is None or self._bar.last_print_t < self._bar.start_t + _QUIET:  # it does not stand there
            refuse(sentence)
            return
        with self._bar.external_write_mode(file=sys.stderr):
            refuse(sentence)


@contextmanager
def orders_progress(orders: int) -> Iterator[OrdersBar]:
    """The bar of so many orders, where a person watches and more than a second passes; gone when the block ends."""
    if not sys.stderr.isatty():
        yield OrdersBar()
        return
    from tqdm import tqdm

    tqdm.monitor_interval = 0  # no thread of its own: results come often enough
    said = message(OrdersLine.PROGRESS), message(OrdersLine.UNIT)
    with tqdm(
        total=orders, desc=said[0], unit=said[1], file=sys.stderr, leave=False, delay=_QUIET, dynamic_ncols=True
    ) as bar:
        yield OrdersBar(bar)
