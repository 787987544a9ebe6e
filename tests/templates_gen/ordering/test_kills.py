"""Runs that are killed at any moment, and started again until they end: nothing is lost, doubled, half or left over."""

from __future__ import annotations

import hashlib
import json
import os
import signal
import subprocess
import sys
import time
from contextlib import suppress
from pathlib import Path
from random import Random
from threading import Event, Thread

import pytest
from order_tables import ONLY, files_below, made, orders

import templates_gen

ROOT = Path(__file__).parents[3]
NUMBER = 24
pytestmark = pytest.mark.skipif(not Path("/proc/self/task").exists(), reason="children are found in /proc")


def started(folder: Path, number: int = NUMBER) -> subprocess.Popen[str]:
    """A run with two workers."""
    paths = os.pathsep.join([str(ROOT), str(ROOT / "tests")])
    command = [sys.executable, str(ROOT / "tests" / "order_run.py"), str(folder), str(number), "2"]
    return subprocess.Popen(
        command,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": paths},
        start_new_session=True,  # so that it is a group, as a command in a terminal is
    )


def workers_of(parent: int) -> list[int]:
    """The worker processes that run now (proc(5), /proc/pid/task/tid/children)."""
    found = []
    with suppress(OSError):
        for children in Path(f"/proc/{parent}/task").glob("*/children"):
            for child in children.read_text("ascii").split():
                with suppress(OSError):
                    if b"spawn_main" in Path(f"/proc/{child}/cmdline").read_bytes():
                        found.append(int(child))
    return sorted(found)


def kill(process: int) -> None:
    """As kill -9 does it; one that has ended is left alone."""
    with suppress(ProcessLookupError):
        os.kill(process, signal.SIGKILL)


def ended(process: int) -> bool:
    """Whether a process is gone, or waits only to be asked how it ended."""
    try:
        return Path(f"/proc/{process}/stat").read_text("ascii").rpartition(")")[2].split()[0] in "ZX"
    except OSError:
        return True


def left_alone(workers: list[int]) -> bool:
    """Whether any of these workers goes on without its parent."""
    end = time.monotonic() + 20
    while not all(map(ended, workers)):
        if time.monotonic() > end:
            return True
        time.sleep(0.01)
    return False


class Run:
    """One run, of which every line is heard as it comes."""

    def __init__(self, folder: Path) -> None:
        self.process = started(folder)
        self.lines: list[str] = []
        self.begun = Event()
        self.hearing = Thread(target=self._hear)
        self.hearing.start()

    def _hear(self) -> None:
        assert self.process.stdout
        for line in self.process.stdout:
            if line.endswith("\n"):  # a run that is killed may be in the middle of one
                self.lines.append(line.strip())
            self.begun.set()
        self.begun.set()

    def wait(self) -> int:
        """Its exit code; every worker has ended too."""
        code = self.process.wait(timeout=120)
        self.hearing.join()
        assert self.process.stderr
        self.error = self.process.stderr.read()
        self.process.stderr.close()
        assert self.process.stdout
        self.process.stdout.close()
        return code


@pytest.fixture(scope="module")
def never_killed(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    """Every file of a run that nobody killed, by its path."""
    folder = tmp_path_factory.mktemp("whole")
    made(orders(NUMBER), folder, ONLY[:1])
    return files_below(folder)


def killed(folder: Path, chance: Random) -> list[str]:
    """Starts a run and kills its parent, a worker or both at a drawn moment; what it said. All its processes end."""
    run = Run(folder)
    if chance.random() < 0.8:  # else it may be before the first order
        run.begun.wait(60)
    time.sleep(chance.random() ** 2 * 0.9)
    parent, workers = run.process.pid, workers_of(run.process.pid)
    whom = chance.choice(["parent", "worker", "worker", "both"])
    victims = ([chance.choice(workers)] if workers and whom != "parent" else []) + ([parent] * (whom != "worker"))
    for victim in victims:
        kill(victim)
    code = run.wait()
    assert code in ((-signal.SIGKILL, 0) if parent in victims else (0,)), run.error
    assert not left_alone(workers)
    return run.lines


def settled(folder: Path, never_killed: dict[str, bytes], said: list[list[str]]) -> None:
    """What must be true after the run that ended by itself."""
    assert files_below(folder) == never_killed
    states = [line.split() for line in said[-1] if line.startswith(("made ", "unchanged ", "failed "))]
    assert sorted(name for _, name in states) == sorted(f"w-{k}" for k in range(NUMBER))
    assert {state for state, _ in states} <= {"made", "unchanged"}
    lines = [json.loads(line) for line in (folder / ".orders" / "journal.jsonl").read_bytes().splitlines()[1:]]
    last = {line["folder"]: line for line in lines}
    assert {f"{name}/{file[0]}": file[1] for name, line in last.items() for file in line["files"]} == {
        name: digest(data) for name, data in never_killed.items() if not name.endswith("manifest.json")
    }
    assert sorted(path.name for path in folder.iterdir()) == sorted([".orders", *last])
    assert [path.name for path in (folder / ".orders").rglob("*") if path.name != "before"] == ["journal.jsonl"]
    reported = [name for lines in said for state, name in map(str.split, lines) if state == "made"]
    assert len(reported) == len(set(reported)), "an order that was made and said so was made again"


def digest(data: bytes) -> str:
    """Its sha256."""
    return hashlib.sha256(data).hexdigest()


def killed_until_done(folder: Path, seed: int, kills: int, never_killed: dict[str, bytes]) -> None:
    """So many kills, then a run that ends by itself."""
    chance = Random(seed)  # noqa: S311 (a draw, no secret)
    said = [killed(folder, chance) for _ in range(kills)]
    last = Run(folder)
    assert last.wait() == 0, last.error
    settled(folder, never_killed, [*said, last.lines])
    for k in range(NUMBER):
        found = templates_gen.check(folder / f"w-{k}")
        assert len(found) >= 1
        assert [each.problems for each in found if each.problems] == []


@pytest.mark.parametrize("seed", range(2))
def test_killed_and_started_again(seed: int, tmp_path: Path, never_killed: dict[str, bytes]) -> None:
    """Afterwards every order is there once, proven, as a run that nobody killed makes it; journal and results agree."""
    killed_until_done(tmp_path, seed, 1, never_killed)


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(2, 66))
def test_killed_and_started_again_at_other_moments(seed: int, tmp_path: Path, never_killed: dict[str, bytes]) -> None:
    """The same at many more moments, up to four kills one after the other."""
    killed_until_done(tmp_path, seed, 1 + seed % 4, never_killed)


@pytest.mark.parametrize(
    ("number", "begun"),
    [
        (signal.SIGINT, False),
        pytest.param(signal.SIGINT, True, marks=pytest.mark.slow),
        pytest.param(signal.SIGTERM, True, marks=pytest.mark.slow),
    ],
)
def test_stopped(number: signal.Signals, begun: bool, tmp_path: Path, never_killed: dict[str, bytes]) -> None:
    """A stop ends the run and its workers at once, with its own code; what it said stays, and no stage is left.

    From the keyboard it goes to all of them, also to workers that have only begun.
    """
    run = Run(tmp_path)
    while not (workers := workers_of(run.process.pid)):
        time.sleep(0.01)
    run.begun.wait(60 if begun else 0.3)  # in which they load what they need
    (os.killpg if number == signal.SIGINT else os.kill)(run.process.pid, number)
    assert run.wait() == 128 + number, run.error
    assert not left_alone(workers)
    assert [path.name for path in (tmp_path / ".orders").iterdir()] == ["journal.jsonl"]
    assert run.error == ""
    last = Run(tmp_path)
    assert last.wait() == 0, last.error
    settled(tmp_path, never_killed, [run.lines, last.lines])
