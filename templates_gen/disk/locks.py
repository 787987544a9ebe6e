"""One run at a time: a lock file beside what is changed, which the system releases when its holder ends in any way."""

from __future__ import annotations

import errno
import os
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from layout.values.errors import shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import After, Fault

PATIENCE = 30.0
"""Seconds that a run waits for another one, unless it says otherwise."""

_PAUSE = 0.02
_FLAGS = os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0)


@contextmanager
def locked(
    lock: Path, changing: Path, patience: float = PATIENCE, heed: Callable[[], None] = lambda: None
) -> Iterator[None]:
    """Holds the file `lock` while the block runs, and takes it away afterwards; `heed` is called while it waits.

    FaultError naming `changing` where the lock cannot be had within `patience` seconds, or not made at all.
    """
    end = time.monotonic() + patience
    try:
        while (held := _held(lock)) is None:
            if time.monotonic() >= end:
                raise FaultError(message(After.OTHER_RUN, changed=shown_path(changing)))
            heed()
            time.sleep(_PAUSE)
    except OSError as error:
        raise fault(Fault.LOCK, changing, error) from error
    try:
        yield
    finally:
        _released(lock, held)


def _held(lock: Path) -> int | None:
    """The descriptor of the lock file once it is locked; None while another run has it, or has just given it up."""
    from filelock import lock_descriptor  # not needed before something is changed

    descriptor = os.open(lock, _FLAGS, 0o666)
    try:
        if lock_descriptor(descriptor, blocking=False) and _is_there(lock, descriptor):
            return descriptor
    except BaseException:
        os.close(descriptor)
        raise
    os.close(descriptor)
    return None


def _is_there(lock: Path, descriptor: int) -> bool:
    """Whether the file that was locked is the one that others would open now: its last holder took it away."""
    try:
        return os.path.samestat(os.fstat(descriptor), lock.lstat())
    except OSError as error:
        if error.errno == errno.ENOENT:
            return False
        raise


def _released(lock: Path, descriptor: int) -> None:
    """Takes the file away while it is still held; some systems take none away that is open."""
    gone = False
    with suppress(OSError):
        lock.unlink()
        gone = True
    os.close(descriptor)
    if not gone and os.name == "nt":  # where no file that is open goes, none goes that another run has opened by now
        with suppress(OSError):
            lock.unlink()


def held_elsewhere(lock: Path) -> bool:
    """Whether a run holds `lock` now; one that is not there is not made."""
    from filelock import lock_descriptor

    try:
        descriptor = os.open(lock, _FLAGS & ~os.O_CREAT)
    except OSError:
        return False
    try:
        return not lock_descriptor(descriptor, blocking=False)
    except OSError:
        return False
    finally:
        os.close(descriptor)
