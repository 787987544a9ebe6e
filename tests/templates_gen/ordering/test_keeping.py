"""Killed between any two steps on the disk, a folder is the earlier order or the new one, and nothing is lost."""

from __future__ import annotations

import shutil
import signal
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest
from forked import Ended, forks
from order_keeping import NUMBER, contents, keep
from order_tables import order

from templates_gen.ordering.engine import Asked
from templates_gen.ordering.keeping import Keeper

TESTS = Path(__file__).parents[2]
CHILD = """
import os, signal, sys
from pathlib import Path
from order_keeping import keep

stop, seen = int(sys.argv[2]), 0

def counted(real):
    def step(*arguments, **options):
        global seen
        seen += 1
        if seen == stop:
            os.kill(os.getpid(), signal.SIGKILL)
        return real(*arguments, **options)
    return step

for name in ("rename", "replace", "unlink", "rmdir", "mkdir", "fsync", "open"):
    setattr(os, name, counted(getattr(os, name)))
keep(Path(sys.argv[1]), "new")
print(seen)
"""
needs_kill = pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no such signal")
NOTE = b"by Friday, please"
Child = Callable[..., Ended]


@pytest.fixture(scope="module")
def child(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Child]:
    """New orders put into place by a process of its own, which kills itself before that step."""
    with forks(
        f"import sys; sys.path.insert(0, {str(TESTS)!r}); import order_keeping", tmp_path_factory.mktemp("said")
    ) as forked:

        def run(folder: Path, stop: int) -> Ended:
            return forked.run(CHILD, folder, stop)

        yield run


def filled(folder: Path) -> Path:
    """Earlier orders: one as it was made, one that a person changed, one with a file that is made no more."""
    keep(folder, "old")
    (folder / "w-1" / "note.txt").write_bytes(NOTE)
    (folder / "w-1" / "leaflet.pdf").write_bytes(NOTE)
    return folder


def there(folder: Path) -> dict[str, bytes]:
    """The files of an order."""
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def as_it_may_be(found: dict[str, bytes], number: int) -> set[str]:
    """In which states an order is whole; the file that a person changed aside."""
    ours = {name: data for name, data in found.items() if data != NOTE}
    states = {state: contents(number, state) for state in ("old", "new")}
    if number == 1:
        del states["old"]["leaflet.pdf"]
    return {state for state, files in states.items() if ours == files}


def known(folder: Path) -> list[set[str]]:
    """For each order, as what it is said to lie there by a run that begins now."""
    found = []
    for number in range(NUMBER):
        states = set()
        for state in ("old", "new"):
            with closing(Keeper(folder / ".orders", [].append)) as keeper:
                result = keeper.before(Asked(0, order(number), state))
                states |= {state} if result and result.state == "unchanged" else set()
        found.append(states)
    return found


@pytest.fixture(scope="module")
def steps(tmp_path_factory: pytest.TempPathFactory, child: Child) -> int:
    """How many steps on the disk it takes."""
    folder = filled(tmp_path_factory.mktemp("steps"))
    ran = child(folder, 0)
    assert ran.returncode == 0, ran.stderr
    assert all(as_it_may_be(there(folder / f"w-{k}"), k) == {"new"} for k in range(NUMBER))
    assert [name for name, data in there(folder / "w-1").items() if data == NOTE] != []
    return int(ran.stdout)


def recovered(folder: Path, stop: int) -> None:
    """What is true after the next run has begun: each order whole, what is written down is so, and notes are there."""
    for number, states in enumerate(known(folder)):
        found = there(folder / f"w-{number}")
        assert list(found.values()).count(NOTE) == (2 if number == 1 else 0)
        whole = as_it_may_be(found, number)
        assert whole, f"step {stop}, order {number}: {sorted(found)}"
        assert states <= whole


def killed_at(stop: int, folder: Path, child: Child) -> None:
    """Kills a run before that step, and starts it again."""
    assert child(filled(folder), stop).returncode == -signal.SIGKILL
    recovered(folder, stop)
    shutil.rmtree(folder / ".orders" / "stage-0", ignore_errors=True)
    settled = keep(folder, "new")
    assert settled.fault == ""
    for number in range(NUMBER):
        assert as_it_may_be(there(folder / f"w-{number}"), number) == {"new"}, f"step {stop}, order {number}"
    assert list(there(folder / "w-1").values()).count(NOTE) == 2
    assert [path.name for path in (folder / ".orders").glob("[bm]*/*")] == []
    shutil.rmtree(folder)


EACH = 4


@needs_kill
def test_killed_at_many_steps(steps: int, tmp_path: Path, child: Child) -> None:
    """After kill -9 at a step no order is mixed, none is called made that is not there, and the next run ends it."""
    assert steps > 40
    for stop in range(1, steps + 1, EACH):
        killed_at(stop, tmp_path / f"at {stop}", child)


@pytest.mark.slow
@needs_kill
def test_killed_at_every_step(steps: int, tmp_path: Path, child: Child) -> None:
    """The same at every other step."""
    for stop in (each for each in range(1, steps + 1) if each % EACH != 1):
        killed_at(stop, tmp_path / f"at {stop}", child)
