"""Locks: one holder at a time, whoever asks and however a holder ends."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from templates_gen.disk.faults import FaultError
from templates_gen.disk.locks import locked

ADD_ONE = """
import sys, time
from pathlib import Path
from templates_gen.disk.locks import locked
lock, count = map(Path, sys.argv[1:])
for _ in range(20):
    with locked(lock, count):
        number = int(count.read_text())
        time.sleep(0.001)
        count.write_text(str(number + 1))
"""
HOLD = """
import sys, time
from pathlib import Path
from templates_gen.disk.locks import locked
with locked(Path(sys.argv[1]), Path("stock.toml")):
    print("held", flush=True)
    time.sleep(60)
"""


def test_no_count_is_lost_among_processes(tmp_path: Path) -> None:
    """Four processes that each add one twenty times make eighty, and the lock file is gone."""
    lock, count = tmp_path / ".lock", tmp_path / "count"
    count.write_text("0")
    runs = [subprocess.Popen([sys.executable, "-c", ADD_ONE, str(lock), str(count)]) for _ in range(4)]
    assert [run.wait(60) for run in runs] == [0] * 4
    assert count.read_text() == "80"
    assert [path.name for path in tmp_path.iterdir()] == ["count"]


def test_threads_exclude_each_other_too(tmp_path: Path) -> None:
    """Never are two threads of one process inside."""
    inside, most = threading.Semaphore(1), []

    def enter(_: int) -> None:
        with locked(tmp_path / ".lock", tmp_path):
            most.append(inside.acquire(blocking=False))
            inside.release()

    with ThreadPoolExecutor(8) as pool:
        list(pool.map(enter, range(80)))
    assert most == [True] * 80


def test_a_holder_that_was_killed_holds_no_longer(tmp_path: Path) -> None:
    """While it lives the lock is refused in one sentence; once it is killed the lock is free at once."""
    lock = tmp_path / ".lock"
    run = subprocess.Popen([sys.executable, "-c", HOLD, str(lock)], stdout=subprocess.PIPE)
    assert run.stdout is not None
    assert run.stdout.readline() == b"held\n"
    with pytest.raises(FaultError, match=r"^another run is changing stock\.toml; wait for it to end, then try again$"):
        locked(lock, Path("stock.toml"), patience=0.1).__enter__()
    os.kill(run.pid, signal.SIGKILL)
    run.wait(10)
    run.stdout.close()
    assert lock.exists()
    with locked(lock, Path("stock.toml"), patience=5):
        pass
    assert not lock.exists()


def test_an_error_inside_gives_the_lock_up(tmp_path: Path) -> None:
    """What goes wrong in the block is said as it is, and the next one gets in."""
    lock = tmp_path / ".lock"
    with pytest.raises(ZeroDivisionError), locked(lock, tmp_path):
        raise ZeroDivisionError
    with locked(lock, tmp_path, patience=1):
        assert lock.exists()


def test_a_link_in_its_place_is_not_followed(tmp_path: Path) -> None:
    """What a planted link leads to is neither made nor opened."""
    lock, target = tmp_path / ".lock", tmp_path / "target"
    lock.symlink_to(target)
    with pytest.raises(FaultError, match=r"could not lock stock\.toml"):
        locked(lock, Path("stock.toml")).__enter__()
    assert not target.exists()


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """A lock that cannot be made is a sentence."""
    with pytest.raises(FaultError, match=r"^could not lock stock\.toml: that place does not exist"):
        locked(tmp_path / "none" / ".lock", Path("stock.toml")).__enter__()
