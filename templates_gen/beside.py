"""Part of a command's work done beside the rest of it, by a second process that begins as a copy of this one."""

from __future__ import annotations

import os
import pickle
import signal
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from typing import TypeVar

_T = TypeVar("_T")
_SIGNALS = ("SIGINT", "SIGTERM", "SIGHUP")
_allowed = False


def allow() -> None:
    """From now on work may be split, since this process is a command's own and no other program's."""
    global _allowed
    _allowed = True


def possible() -> bool:
    """Whether there is a second core, a system that can copy a process, and one thread alone to be copied."""
    if not _allowed or not hasattr(os, "fork") or threading.active_count() > 1:
        return False
    cores = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else 1
    return cores > 1


@contextmanager
def beside(work: Callable[[], _T], *, worth: bool = True) -> Iterator[Callable[[], _T | None]]:
    """Begins `work` in a copy of this process, and gives what waits for its value.

    The value must be one that pickle can carry. None comes out where the work raised an error, where the copy was
    ended, and where none is possible or `worth` its while: whoever asked then does the work, and meets the error.
    The copy ends with the block at the latest.
    """
    if not (worth and possible()):
        yield lambda: None
        return
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        _work(work, reading, writing)
    os.close(writing)
    with os.fdopen(reading, "rb") as answer:
        try:
            yield lambda: _value(answer.read())
        finally:
            with suppress(ProcessLookupError):
                os.kill(child, signal.SIGKILL)
            os.waitpid(child, 0)


def _work(work: Callable[[], object], reading: int, writing: int) -> None:
    """The whole life of the copy: it is ended by the usual signals, says its value once, and cleans up nothing."""
    try:
        for name in _SIGNALS:
            signal.signal(getattr(signal, name), signal.SIG_DFL)
        os.close(reading)
        said = pickle.dumps(work())
        with os.fdopen(writing, "wb") as answer:
            answer.write(said)
    finally:
        os._exit(0)


def _value(said: bytes) -> _T | None:
    return pickle.loads(said) if said else None  # noqa: S301 (from our own copy)
