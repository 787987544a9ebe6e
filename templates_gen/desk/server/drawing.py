"""Drawing with a limit of time: who waits for a picture gets an answer in any case."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from concurrent.futures import TimeoutError as TooLong
from typing import TypeVar

_T = TypeVar("_T")
WHILE_TYPING, OF_A_PAGE = 2.0, 20.0
"""Seconds: for what is drawn while somebody types, and for a whole page with its pile of sheets."""
_WORKERS = 2


class Drawing:
    """A few threads that draw; what takes too long there ends by itself, and nobody waits for it."""

    def __init__(self) -> None:
        self._pool = ThreadPoolExecutor(_WORKERS, thread_name_prefix="drawing")

    def within(self, seconds: float, draw: Callable[[], _T]) -> _T | None:
        """What `draw` gives; None where that takes longer. Its errors are raised here."""
        future = self._pool.submit(draw)
        try:
            return future.result(seconds)
        except TooLong:
            future.cancel()
            return None
