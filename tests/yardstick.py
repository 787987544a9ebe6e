"""How long something takes, as a multiple of work of a fixed size: the same on a slow machine as on a quick one."""

from __future__ import annotations

import statistics
from collections.abc import Callable
from time import process_time


def work() -> float:
    """Seconds that the processor takes for a fixed mixture of words, numbers and lists."""
    begun = process_time()
    kept = [(str(k), float(k) * 0.5, [k]) for k in range(60_000)]
    assert len(kept) == 60_000
    return process_time() - begun


def times(act: Callable[[], object]) -> float:
    """The processor time of `act`, as a multiple of the middle one of five such pieces of work before and after it."""
    beside = [work(), work()]
    begun = process_time()
    act()
    taken = process_time() - begun
    return taken / statistics.median([*beside, work(), work(), work()])
