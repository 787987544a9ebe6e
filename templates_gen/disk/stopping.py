"""Being stopped: TERM and HUP are heeded like an interrupt, and none of them between two moves of files."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

_NAMES = ("SIGINT", "SIGTERM", "SIGHUP", "SIGBREAK")  # not every system has every one


class StoppedError(KeyboardInterrupt):
    """Somebody stopped this run by the signal of that `number`."""

    def __init__(self, number: int) -> None:
        self.number = number
        super().__init__(number)


class Stops:
    """What was asked while it is active. Raises StoppedError at once, or when it is safe to."""

    def __init__(self) -> None:
        self.finished = False
        self._held, self._noted = 0, 0

    def arrived(self, number: int, _frame: FrameType | None = None) -> None:
        """The handler of the signals."""
        if not self._held:
            raise StoppedError(number)
        self._noted = number

    def hold(self) -> None:
        """From now on a stop waits for `heed` or `let_go`; holds add up."""
        self._held += 1

    def let_go(self) -> None:
        """Ends one `hold`."""
        self._held -= 1

    @contextmanager
    def held(self) -> Iterator[None]:
        """Holds while the block runs."""
        self.hold()
        try:
            yield
        finally:
            self.let_go()

    def heed(self) -> None:
        """Raises StoppedError if a stop is waiting and not everything is finished."""
        if self._noted and not self.finished:
            number, self._noted = self._noted, 0
            raise StoppedError(number)


_active: list[Stops] = []


@contextmanager
def stoppable() -> Iterator[Stops]:
    """Listens to the signals while the block runs; within another such block, it is that one.

    Signals that are ignored (as by nohup) stay so. Outside the main thread nothing is listened to.
    """
    if _active:
        yield _active[0]
        return
    stops = Stops()
    _active.append(stops)
    former = {}
    try:
        for number in _numbers():
            former[number] = signal.getsignal(number)
            signal.signal(number, stops.arrived)
        yield stops
    finally:
        stops.hold()
        for number, handler in former.items():
            signal.signal(number, handler)
        _active.clear()


def _numbers() -> list[signal.Signals]:
    import threading

    if threading.current_thread() is not threading.main_thread():
        return []
    there = [getattr(signal, name) for name in _NAMES if hasattr(signal, name)]
    return [number for number in there if signal.getsignal(number) not in (signal.SIG_IGN, None)]
