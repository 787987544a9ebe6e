"""Few orders at a time to many workers: what is in flight is small, however long the table is, and nothing is lost.

Knows no files. A worker that dies costs nothing but time: what it had is given out again.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import BrokenExecutor, CancelledError, Future
from contextlib import suppress
from queue import Empty, SimpleQueue
from typing import Any, NamedTuple, Protocol

from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.engine import Stopped
from templates_gen.ordering.order import Order
from templates_gen.ordering.result import Result
from templates_gen.ordering.work import Done, said_of

SIZE = 8
"""Orders in a chunk: enough that flushing them together pays, few enough that little is lost with a worker."""
WINDOW = 3
"""Chunks for each worker that are given out at a time."""
MOST_DEATHS = 3


class Asked(NamedTuple):
    """An order, the number of its row in the table from 0, and its fingerprint."""

    row: int
    order: Order
    fingerprint: str


class Answer(NamedTuple):
    """What became of an order; None where every worker that began it ended without an answer, and perhaps `why`."""

    asked: Asked
    done: Done | None
    why: str = ""


class Workers(Protocol):
    """What a pool of workers has."""

    workers: int

    def submit(self, work: Any, *args: Any) -> Future[Any]:
        """Begins some work; BrokenExecutor where none can be begun."""

    def renew(self, why: str) -> None:
        """Makes a broken pool whole again; LayoutError where that cannot be."""

    def take_back(self, futures: Iterable[Future[Any]]) -> None:
        """Nobody waits for these any more."""


class _Task(NamedTuple):
    """Orders that are given out together, and how many workers died while they had them."""

    asked: tuple[Asked, ...]
    deaths: int = 0


def chunked(rows: Iterable[Result | Asked], workers: int, size: int = SIZE) -> Iterator[Result | tuple[Asked, ...]]:
    """Orders in chunks, results as they come. The last chunks are smaller, so that all workers end together."""
    waiting: deque[Asked] = deque()
    ahead = 2 * workers

    def taken(number: int) -> tuple[Asked, ...]:
        return tuple(waiting.popleft() for _ in range(number))

    for row in rows:
        if isinstance(row, Result):
            yield row
        else:
            waiting.append(row)
            if len(waiting) == size * (ahead + 1):
                yield taken(size)
    while waiting:
        yield taken(max(1, min(size, len(waiting) // ahead)))


class Engine:
    """Gives out orders to `pool`, of which `begin` begins some, and collects the answers as they come."""

    def __init__(self, pool: Workers, work: Callable[..., Sequence[Done]], *args: object) -> None:
        self._pool, self._work, self._args = pool, work, args
        self._flying: dict[Future[Sequence[Done]], _Task] = {}
        # concurrent.futures.wait would wait for ever for what an executor cancels when it is shut down
        self._ended: SimpleQueue[Future[Sequence[Done]]] = SimpleQueue()
        self._again: deque[_Task] = deque()

    def answers(self, rows: Iterable[Result | Asked]) -> Iterator[Result | list[Answer]]:
        """Every result of `rows` as it comes, and the answers to every order; those that come together, together.

        LayoutError where somebody else's executor is broken.
        """
        for item in chunked(rows, self._pool.workers):
            if isinstance(item, Result):
                yield item
            else:
                self._again.append(_Task(item))
                yield from self._give_out()
            yield from self._collect(timeout=0)
        while self._again or self._flying:
            yield from self._give_out()
            yield from self._collect()

    def _give_out(self) -> Iterator[list[Answer]]:
        """Begins all that waits; orders that two workers died with are begun alone, with nothing else in flight."""
        while self._again:
            task = self._again.popleft()
            room = 1 if task.deaths >= MOST_DEATHS - 1 else WINDOW * self._pool.workers
            while len(self._flying) >= room:
                yield from self._collect()
            yield from self._begin(task)
            if room == 1:
                yield from self._collect()

    def _begin(self, task: _Task) -> Iterator[list[Answer]]:
        orders = tuple(asked.order for asked in task.asked)
        try:
            future = self._pool.submit(self._work, *self._args, orders)
        except BrokenExecutor as error:
            self._again.appendleft(task)  # it was not begun: nothing speaks against it
            if not self._flying:
                self._pool.renew(said_of(error))
            yield from self._collect()
        else:
            self._flying[future] = task
            future.add_done_callback(self._ended.put)

    def _collect(self, timeout: float | None = None) -> Iterator[list[Answer]]:
        """The answers that are there, once there is one or the time is over."""
        done = list(self._done(timeout))
        broken = [said_of(error) for error in map(_error, done) if isinstance(error, BrokenExecutor)]
        if broken:  # then every other one is, or was done just before
            done += [self._ended.get() for _ in range(len(self._flying) - len(done))]
        answers = [answer for future in done for answer in self._answered(future, self._flying.pop(future))]
        if answers:
            yield answers
        if broken:
            self._pool.renew(broken[0])

    def _done(self, timeout: float | None) -> Iterator[Future[Sequence[Done]]]:
        """What ended, once something did or the time is over."""
        with suppress(Empty):
            if self._flying:
                yield self._ended.get(timeout=timeout)
            while True:
                yield self._ended.get_nowait()

    def _answered(self, future: Future[Sequence[Done]], task: _Task) -> list[Answer]:
        error = _error(future)
        if error is None:  # where the disk is full there are fewer, and the last one says so
            return [Answer(asked, done) for asked, done in zip(task.asked, future.result(), strict=False)]
        if isinstance(error, CancelledError):
            raise LayoutError(message(Stopped.EXECUTOR, why=said_of(error))) from error
        if again := _again(task):
            self._again.extend(again)
            return []
        return [
            Answer(asked, None, "" if isinstance(error, BrokenExecutor) else said_of(error)) for asked in task.asked
        ]

    def close(self) -> None:
        """Takes back what is not begun yet."""
        self._pool.take_back(self._flying)


def _again(task: _Task) -> list[_Task]:
    """What is given out again after a worker died with it: half as many together, then each alone, then none."""
    asked, deaths = task.asked, task.deaths + 1
    size = (len(asked) + 1) // 2 if deaths < MOST_DEATHS - 1 else 1
    parts = [asked[k : k + size] for k in range(0, len(asked), size)]
    return [_Task(part, deaths) for part in parts] if deaths < MOST_DEATHS else []


def _error(future: Future[Any]) -> BaseException | None:
    """Why a future that is done has no result."""
    try:
        return future.exception()
    except CancelledError as error:
        return error
