"""The hidden folder beside those of the orders: one run has it at a time, and a stage in it that ends with the run."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from layout.values.errors import shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.locks import locked
from templates_gen.disk.plain import kind_at, token
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Stopped

HIDDEN = ".orders"
"""Its name; in it lie the journal, the lock, and stages of runs."""
_LOCK, _STAGE = "lock", "stage-"
_TRIES, _PAUSE = 20, 0.05


@contextmanager
def entered(folder: Path) -> Iterator[Path]:
    """The hidden folder of `folder`, made where there is none, and locked while the block runs.

    FaultError, at once, where another run has it; where it cannot be made; where it is a link.
    """
    hidden = folder / HIDDEN
    try:
        hidden.mkdir(parents=True, exist_ok=True)
    except (OSError, ValueError) as error:
        raise fault(Fault.MAKE_FOLDER, folder, error) from error
    if kind_at(hidden) != "folder":
        raise FaultError(message(Stopped.LINK, path=shown_path(hidden)))
    with locked(hidden / _LOCK, folder, 0.0):
        yield hidden


@contextmanager
def staging(hidden: Path) -> Iterator[Path]:
    """A new folder that workers write into while the block runs; those of runs that were killed are taken away."""
    stage = hidden / f"{_STAGE}{token()}"
    try:
        _remove_all(hidden)
        stage.mkdir()
    except OSError as error:
        raise fault(Fault.WRITE_INTO, hidden, error) from error
    try:
        yield stage
    finally:
        _remove_all(hidden)


def _remove_all(hidden: Path) -> None:
    """Every stage; a worker that outlived its run may still be writing, and finds nothing to write into."""
    for stage in hidden.glob(f"{_STAGE}*"):
        for _ in range(_TRIES):
            shutil.rmtree(stage, ignore_errors=True)
            if kind_at(stage) != "folder":
                break
            time.sleep(_PAUSE)
