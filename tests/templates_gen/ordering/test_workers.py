"""Worker processes: the same bytes as without them, begun apart, and made anew when they die."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from order_tables import ONLY, files_below, made, orders

from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order
from templates_gen.ordering.running import run
from templates_gen.ordering.work import Done, work
from templates_gen.ordering.workers import OwnPool, cores

DEADLY = "w-5"
ROOT = Path(__file__).parents[3]


def deadly(job: Job, orders: tuple[Order, ...]) -> tuple[Done, ...]:
    """Work that ends its worker at one order."""
    if any(order.folder == DEADLY for order in orders):
        os._exit(3)
    return work(job, orders)


def test_two_workers_make_the_same_bytes(tmp_path: Path) -> None:
    """However many workers there are, every file is the same."""
    made(orders(5), tmp_path / "here", ONLY[:1])
    found = made(orders(5), tmp_path / "there", ONLY[:1], workers=2)
    assert [each.state for each in found] == ["made"] * 5
    assert files_below(tmp_path / "there") == files_below(tmp_path / "here")


@pytest.mark.slow
def test_an_order_that_ends_its_workers(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It fails with a sentence after three workers; all others are made."""
    monkeypatch.setattr("templates_gen.ordering.running.work", deadly)
    found = made(orders(7), tmp_path, ONLY[:1], workers=2)
    assert {each.folder: each.state for each in found} == {
        f"w-{k}": "failed" if f"w-{k}" == DEADLY else "made" for k in range(7)
    }
    (problem,) = next(each for each in found if each.folder == DEADLY).problems
    assert "ended without an answer, 3 times" in problem.sentence
    assert sorted(path.name for path in (tmp_path / ".orders").iterdir()) == ["journal.jsonl"]


@pytest.mark.slow
def test_workers_hold_nothing_of_their_parent(tmp_path: Path) -> None:
    """While they run, the lock and the journal are open in the parent alone."""
    if not Path("/proc/self/fd").exists():
        pytest.skip("open files are listed in /proc")
    with run(orders(20), Job(str(tmp_path), ONLY[:1]), workers=2) as going:
        next(going)
        children = [
            child
            for task in Path("/proc/self/task").iterdir()
            for child in (task / "children").read_text("ascii").split()
            if b"spawn_main" in Path(f"/proc/{child}/cmdline").read_bytes()
        ]
        assert len(children) == 2
        files = [str(path.readlink()) for child in children for path in Path(f"/proc/{child}/fd").iterdir()]
        assert [name for name in files if str(tmp_path) in name and "/stage-" not in name] == []


SCRIPT = """
from order_tables import ONLY, orders, made
import sys
from pathlib import Path
made(orders(3), Path(sys.argv[1]), ONLY[:1], workers=2)
"""


@pytest.mark.slow
def test_a_script_without_its_guard(tmp_path: Path) -> None:
    """Where worker processes cannot begin, since a script begins them again, a sentence says what to write."""
    (tmp_path / "script.py").write_text(SCRIPT)
    paths = os.pathsep.join([str(ROOT), str(ROOT / "tests")])
    ran = subprocess.run(
        [sys.executable, tmp_path / "script.py", tmp_path / "orders"],
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": paths},
        timeout=120,
    )
    assert ran.returncode == 1
    assert 'if __name__ == "__main__":' in ran.stderr.splitlines()[-1]


def test_as_many_as_there_are_cores() -> None:
    """Without a number there is a worker for each core that may be used, as Python counts them."""
    assert 1 <= cores() <= (os.cpu_count() or 1)


def test_a_pool_ends_whatever_it_does() -> None:
    """Ending it waits for no work."""
    pool = OwnPool(1)
    future = pool.submit(signal.pause) if hasattr(signal, "pause") else None
    if future is None:
        pytest.skip("nothing here waits for ever")
    pool.end()
    assert future.done()
