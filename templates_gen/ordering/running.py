"""A run of orders: rows in, results out as they come, and a folder in which every order is whole or not there."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import Executor
from contextlib import ExitStack, closing, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Protocol, Self

from templates_gen.disk.faults import FaultError
from templates_gen.disk.stopping import Stops, stoppable
from templates_gen.messages.language import message
from templates_gen.messages.roles.engine import Kept
from templates_gen.ordering.engine import Answer, Asked, Engine
from templates_gen.ordering.fingerprint import Fingerprints
from templates_gen.ordering.hidden import entered, staging
from templates_gen.ordering.job import Job
from templates_gen.ordering.keeping import Keeper, Settled
from templates_gen.ordering.order import Order, Unreadable
from templates_gen.ordering.outcomes import answered, unreadable
from templates_gen.ordering.result import Result
from templates_gen.ordering.result_lines import Spool
from templates_gen.ordering.work import work
from templates_gen.ordering.workers import pool_of


class Table(Protocol):
    """What rows come from."""

    def rows(self) -> Iterator[Order | Unreadable]:
        """Every row, in the order of the file."""


@contextmanager
def run(
    table: Table,
    job: Job,
    *,
    workers: int | None = None,
    executor: Executor | None = None,
    check: bool = False,
    tell: Callable[[str], None] = lambda _: None,
) -> Iterator[Run]:
    """A run of the orders of `table`: in the block an iterator of their results as they come.

    The orders are made by so many `workers`, processes of this run: without a number by one for each core, with 1 by
    this process itself. Or by an `executor`, any of `concurrent.futures`, which can make so many at once; it may be on
    other machines, where they have the job's folder under the same path. `tell` hears of what was put right.
    Where it is only a `check`, orders are read and planned, and nothing is made.

    The block holds the lock of the folder. Whatever ends it early, what was made stays, is written down, and is not
    made again by the next run. Raises FaultError where the folder cannot be used or written any more, LayoutError where
    the executor is at its end.
    """
    with stoppable() as stops, stops.held(), ExitStack() as stack:
        keeper, hidden = None, None
        if check:
            job = replace(job, check=True)
        else:
            hidden = stack.enter_context(entered(Path(job.folder)))
            job = replace(job, folder=str(hidden.parent), stage=str(stack.enter_context(staging(hidden))))
            keeper = stack.enter_context(closing(Keeper(hidden, tell)))
        spool = stack.enter_context(Spool(hidden))
        pool = stack.enter_context(pool_of(workers, executor))
        engine = stack.enter_context(closing(Engine(pool, work, job)))
        with _heeding(stops):
            yield Run(table, Fingerprints(job), keeper, spool, engine, stops, tell)


@contextmanager
def _heeding(stops: Stops) -> Iterator[None]:
    """Heeds stops while the block runs, which were held."""
    stops.let_go()
    try:
        stops.heed()
        yield
    finally:
        stops.hold()


class Run:
    """An iterator of results as they come; nothing is made before the first is asked for."""

    def __init__(
        self,
        table: Table,
        fingerprints: Fingerprints,
        keeper: Keeper | None,
        spool: Spool,
        engine: Engine,
        stops: Stops,
        tell: Callable[[str], None],
    ) -> None:
        self._table, self._fingerprints, self._keeper, self._tell = table, fingerprints, keeper, tell
        self._spool, self._engine, self._stops = spool, engine, stops
        self._coming = self._come()

    def __iter__(self) -> Self:
        return self

    def __next__(self) -> Result:
        return next(self._coming)

    def results(self) -> Iterator[Result]:
        """Those that came so far, in the order of their rows; they are read from a file, as often as wanted."""
        return iter(self._spool)

    def _come(self) -> Iterator[Result]:
        self._unread = set[str]()
        for item in self._engine.answers(self._rows()):
            if isinstance(item, Result):
                yield item
            else:
                yield from self._settled(item)
        self._say_others()

    def _rows(self) -> Iterator[Result | Asked]:
        """What is to be made; of all else, what became of it."""
        for row, order in enumerate(self._table.rows()):
            asked = Asked(row, order, self._fingerprints.of(order)) if isinstance(order, Order) else None
            if found := self._known(order, asked):
                self._spool.add(row, found)
                yield found
            elif asked:
                yield asked

    def _known(self, order: Order | Unreadable, asked: Asked | None) -> Result | None:
        if isinstance(order, Unreadable):
            self._unread.add(order.number)
            found = unreadable(order)
            return self._keeper.unread(found) if self._keeper else found
        return self._keeper.before(asked) if self._keeper and asked else None

    def _settled(self, answers: list[Answer]) -> Iterator[Result]:
        """Keeps what came together, then yields it; FaultError where nothing more can be kept."""
        with self._stops.held():
            settled = self._keeper.keep(answers) if self._keeper else _only_read(answers)
            for row, result in settled.results.items():
                self._spool.add(row, result)
        self._stops.heed()
        yield from settled.results.values()
        if settled.fault:
            raise FaultError(settled.fault)

    def _say_others(self) -> None:
        """How many folders are of orders that the table has no more; one that cannot be read now is still in it."""
        others = [each for each in self._keeper.unseen() if each.number not in self._unread] if self._keeper else []
        if others:
            self._tell(message(Kept.OTHERS, number=len(others)))


def _only_read(answers: list[Answer]) -> Settled:
    return Settled({answer.asked.row: answered(answer) for answer in answers})
