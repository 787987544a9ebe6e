"""The processes that make orders: begun apart, warmed, and ended with whoever began them."""

from __future__ import annotations

import gc
import multiprocessing
import os
import signal
import threading
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import BrokenExecutor, Executor, Future, ProcessPoolExecutor
from contextlib import contextmanager
from importlib import import_module
from multiprocessing import connection, resource_tracker
from multiprocessing.connection import Connection
from typing import Any, TypeVar

from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.engine import Stopped

_T = TypeVar("_T")
_UNKNOWN = 16
"""Workers of an executor that nobody counted."""
_NEEDED = ("reportlab.pdfgen.canvas", "templates_gen.files.generate", "templates_gen.inputs.stock_file")
_ALLOCATIONS = 200_000
"""As in `templates_gen.__main__`."""


def cores() -> int:
    """How many processes can run at once here."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def warm() -> None:
    """Loads what every order needs."""
    for name in _NEEDED:
        import_module(name)
    import_module("templates_gen.lettering.fonts").metrics()


def _begin(leash: Connection) -> None:
    """What a worker does first. It ends at once when its parent lets go of the `leash`, or dies."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # of a stop by keyboard the parent decides
    threading.Thread(target=_end_with_parent, args=(leash,), daemon=True).start()
    gc.set_threshold(_ALLOCATIONS)
    warm()
    gc.freeze()


def _end_with_parent(leash: Connection) -> None:
    parent = multiprocessing.parent_process()
    connection.wait([leash, *([parent.sentinel] if parent else [])])
    os._exit(1)


def _tidily(work: Callable[..., _T], *args: Any) -> _T:
    """Some work in a worker, then nothing of it left: each order leaves a few values in circles, which add up."""
    try:
        return work(*args)
    finally:
        gc.collect()  # quick, since what was loaded before is frozen


def _nothing() -> None:
    """What a worker is asked to see whether it lives."""


@contextmanager
def _no_interrupts() -> Iterator[None]:
    """Processes that begin in the block never hear the keyboard, not even before they could say so themselves."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    resource_tracker.ensure_running()  # which begins with the first process, and would lift the block
    former = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, former)


class OwnPool:
    """Worker processes of this run, made when the first order comes, and made anew when one of them dies.

    They are spawned: a copy of this process would hold its lock for as long as it lives.
    """

    def __init__(self, workers: int) -> None:
        self.workers = workers
        self._pool: ProcessPoolExecutor | None = None
        self._leash: tuple[Connection, Connection] | None = None

    def submit(self, work: Any, *args: Any) -> Future[Any]:
        """As that of an executor; BrokenExecutor where a worker has died."""
        if self._pool is None:
            self._pool = self._made()
        with _no_interrupts():
            return self._pool.submit(_tidily, work, *args)

    def _made(self) -> ProcessPoolExecutor:
        context = multiprocessing.get_context("spawn")
        self._leash = context.Pipe(duplex=False)
        return ProcessPoolExecutor(self.workers, context, _begin, (self._leash[0],))

    def renew(self, _why: str) -> None:
        """New workers in the place of all that there are; LayoutError where they die as soon as they begin."""
        self.end()
        try:
            self.submit(_nothing).result()
        except BrokenExecutor as error:
            self.end()
            raise LayoutError(message(Stopped.NO_WORKERS)) from error

    def take_back(self, _futures: Iterable[Future[Any]]) -> None:
        """Nothing: work ends with its workers."""

    def end(self) -> None:
        """Ends every worker at once, whatever it does."""
        if self._pool is None or self._leash is None:
            return
        pool, (kept, given) = self._pool, self._leash
        self._pool = self._leash = None
        given.close()  # and nothing is cancelled: a pool whose workers end trips over work that is
        pool.shutdown(wait=True)
        kept.close()


class GivenPool:
    """An executor that somebody else began, and will end; `workers` is how many orders it can make at once."""

    def __init__(self, executor: Executor, workers: int) -> None:
        self.workers, self._executor = workers, executor

    def submit(self, work: Any, *args: Any) -> Future[Any]:
        """As that of the executor; BrokenExecutor where it takes no more."""
        try:
            return self._executor.submit(work, *args)
        except RuntimeError as error:  # what is shut down says so
            raise BrokenExecutor(*error.args) from error

    def renew(self, why: str) -> None:
        """LayoutError: what somebody else began, we do not begin again."""
        raise LayoutError(message(Stopped.EXECUTOR, why=why))

    def take_back(self, futures: Iterable[Future[Any]]) -> None:
        """Takes back what is not begun yet; the executor goes on."""
        for future in futures:
            future.cancel()


class Here(Executor):
    """Does everything at once, in this very process."""

    def submit(self, fn: Any, /, *args: Any, **kwargs: Any) -> Future[Any]:
        """What has the result already."""
        future: Future[Any] = Future()
        try:
            future.set_result(fn(*args, **kwargs))
        except Exception as error:
            future.set_exception(error)
        return future


@contextmanager
def pool_of(workers: int | None, executor: Executor | None) -> Iterator[OwnPool | GivenPool]:
    """The workers of a run: those of an `executor`, or so many processes of its own, which end with the block."""
    if executor is not None:
        yield GivenPool(executor, workers or _UNKNOWN)
    elif (number := workers or cores()) == 1:
        yield GivenPool(Here(), 1)
    else:
        pool = OwnPool(number)
        try:
            yield pool
        finally:
            pool.end()
