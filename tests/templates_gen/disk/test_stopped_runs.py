"""Runs that are killed or stopped between any two moves: after the next run all is as it was, or as it should be."""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from forked import Ended, forks

from templates_gen.disk.exchange import LOCK, Exchange
from templates_gen.disk.faults import FaultError
from templates_gen.disk.run_folder import RunFolder
from templates_gen.files.folder_contents import left_by_runs
from templates_gen.files.manifest import MANIFEST

ROOT = Path(__file__).parents[3]
NAMES = ("one.pdf", "two.svg", "fresh.dxf", MANIFEST)
OLD = {name: f"old {name}".encode() for name in ("one.pdf", "two.svg", "gone.svg", MANIFEST, "mine.txt")}
NEW = {name: f"new {name}".encode() for name in NAMES} | {"mine.txt": OLD["mine.txt"]}

CHILD = """
import os, signal, sys
from pathlib import Path
from templates_gen.disk.exchange import Exchange
from templates_gen.disk.stopping import StoppedError

folder, number, stop, after = Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), sys.argv[4] == "after"
seen = 0

def counted(real):
    def step(self, *arguments, **options):
        global seen
        seen += 1
        if seen == stop and not after:
            os.kill(os.getpid(), number)
        result = real(self, *arguments, **options)
        if seen == stop and after:
            os.kill(os.getpid(), number)
        return result
    return step

for name in ("replace", "unlink", "rmdir", "mkdir", "rename"):
    setattr(Path, name, counted(getattr(Path, name)))
try:
    with Exchange(folder, "manifest.json") as moving:
        for name in ("one.pdf", "two.svg", "fresh.dxf", "manifest.json"):
            moving.write(name, f"new {name}".encode())
        moving.settle(["gone.svg"])
except StoppedError:
    sys.exit(99)
print(seen)
"""


def there(folder: Path) -> dict[str, bytes]:
    """Every file of a folder by its name; hidden folders and the lock are said too."""
    return {path.name: path.read_bytes() if path.is_file() else b"" for path in folder.iterdir()}


def filled(folder: Path) -> Path:
    """A folder in which every former file stands."""
    folder.mkdir()
    for name, data in OLD.items():
        (folder / name).write_bytes(data)
    return folder


Child = Callable[..., Ended]


@pytest.fixture(scope="module")
def child(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Child]:
    """One exchange in a process of its own, which sends itself the signal at that step."""
    with forks("import templates_gen.disk.exchange", tmp_path_factory.mktemp("said")) as forked:

        def run(folder: Path, number: int, stop: int, when: str = "before") -> Ended:
            return forked.run(CHILD, folder, int(number), stop, when)

        yield run


@pytest.fixture(scope="module")
def steps(tmp_path_factory: pytest.TempPathFactory, child: Child) -> int:
    """How many times an exchange changes a name on the disk."""
    folder = filled(tmp_path_factory.mktemp("steps") / "strips")
    ran = child(folder, signal.SIGTERM, 0)
    assert ran.returncode == 0, ran.stderr
    assert there(folder) == NEW
    return int(ran.stdout)


needs_kill = pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no such signal")


@needs_kill
def test_killed_at_every_step(steps: int, tmp_path: Path, child: Child) -> None:
    """After kill -9 at any step the next run puts back every earlier file, or keeps every new one, and says which."""
    assert steps > 15  # 5 moves out, 4 in, the journal, the hidden folder
    seen = set()
    for stop in range(1, steps + 1):
        folder = filled(tmp_path / f"at {stop}")
        assert child(folder, signal.SIGKILL, stop).returncode == -signal.SIGKILL
        left, heard = bool(RunFolder.all_in(folder)), list[str]()
        assert bool(left_by_runs(folder)) == left  # `check` says so
        with Exchange(folder, MANIFEST, heard.append):
            pass
        after = there(folder)
        assert after in (OLD, NEW), f"mixed after step {stop}: {sorted(after)}"
        assert len(heard) == left
        seen.add((after == NEW, *(sentence.split(str(folder))[1] for sentence in heard)))
        shutil.rmtree(folder)
    stated = " ".join(sentence for _, *sentences in seen for sentence in sentences)
    assert {was_new for was_new, *_ in seen} == {True, False}
    assert "put back" in stated
    assert "no longer needed, were removed" in stated


@needs_kill
def test_killed_and_made_again(steps: int, tmp_path: Path, child: Child) -> None:
    """The run after the killed one ends well and leaves exactly what it should."""
    for stop in range(1, steps + 1, 3):
        folder = filled(tmp_path / f"at {stop}")
        child(folder, signal.SIGKILL, stop)
        assert child(folder, signal.SIGTERM, 0).returncode == 0
        assert there(folder) == NEW


@pytest.mark.parametrize("name", ["SIGINT", "SIGTERM", "SIGHUP"])
def test_stopped_at_every_step(name: str, steps: int, tmp_path: Path, child: Child) -> None:
    """A signal before all is in place: as it was, nothing left, stated as stopped; after that it is no failure."""
    if not hasattr(signal, name):
        pytest.skip("this system has no such signal")
    codes = []
    for stop in range(1, steps + 1, 1 if name == "SIGTERM" else 4):
        folder = filled(tmp_path / f"at {stop}")
        ran = child(folder, getattr(signal, name), stop, "after")
        assert ran.returncode in (0, 99), ran.stderr
        assert there(folder) == (OLD if ran.returncode else NEW)
        codes.append(ran.returncode)
    assert codes == sorted(codes, reverse=True)  # stopped, up to the step from which on it is done
    assert set(codes) == {0, 99}


def halfway(folder: Path, child: Child, stop: int = 12) -> RunFolder:
    """What is left of a run that was killed between its moves."""
    child(filled(folder), signal.SIGKILL, stop)
    (run,) = RunFolder.all_in(folder)
    moves = run.journal()
    assert moves is not None
    assert not run.in_place(moves)
    assert run.before(MANIFEST).read_bytes() == OLD[MANIFEST]
    return run


@needs_kill
def test_what_was_changed_since_stays(tmp_path: Path, child: Child) -> None:
    """A file that somebody wrote after the kill is not written over; the earlier one comes beside it and is named."""
    run = halfway(tmp_path / "strips", child)
    (run.target / MANIFEST).write_bytes(b"mine")
    heard: list[str] = []
    with Exchange(run.target, MANIFEST, heard.append):
        pass
    assert there(run.target) == OLD | {MANIFEST: b"mine", f"{MANIFEST}.earlier-1": OLD[MANIFEST]}
    assert any(f"{MANIFEST}.earlier-1" in sentence for sentence in heard)


@needs_kill
@pytest.mark.parametrize(
    "text",
    [
        "",
        "{",
        "[]",
        '{"moves": 3}',
        '{"moves": []}',
        '{"moves": [{"name": "../mine.txt", "sha256": null, "was": false}]}',
        '{"moves": [{"name": "../mine.txt", "sha256": "00", "was": false}]}',
        "[" * 100_000,
    ],
    ids=range(8),
)
def test_a_journal_that_is_none(text: str, tmp_path: Path, child: Child) -> None:
    """A hidden folder with another's journal is left alone, and said; nothing outside of it is touched."""
    run = halfway(tmp_path / "strips", child)
    (tmp_path / "mine.txt").write_text("mine")
    (run.path / "journal.json").write_text(text)
    (run.target / LOCK).unlink()
    before, heard = there(run.target), list[str]()
    with Exchange(run.target, MANIFEST, heard.append):
        pass
    assert there(run.target) == before
    assert run.before(MANIFEST).read_bytes() == OLD[MANIFEST]
    assert (tmp_path / "mine.txt").read_text() == "mine"
    assert len(heard) == 1


@needs_kill
@pytest.mark.parametrize("inner", ["new", "before"])
def test_a_link_in_the_hidden_folder(inner: str, tmp_path: Path, child: Child) -> None:
    """A link in place of an inner folder is never followed."""
    run = halfway(tmp_path / "strips", child)
    elsewhere = tmp_path / "elsewhere"
    (run.path / inner).rename(elsewhere)
    (run.path / inner).symlink_to(elsewhere)
    before = there(elsewhere)
    with Exchange(run.target, MANIFEST):
        pass
    assert there(elsewhere) == before


SLOW = """
import sys, time
from pathlib import Path
from templates_gen.disk.exchange import Exchange
right = Path.replace
def replace(path, target):
    time.sleep(0.05)
    return right(path, target)
Path.replace = replace
mark = sys.argv[2]
with Exchange(Path(sys.argv[1]), "manifest.json") as moving:
    print("in", flush=True)
    for name in ("one.pdf", "two.svg", "manifest.json"):
        moving.write(name, f"{mark} {name}".encode())
    moving.settle()
"""


def slow(folder: Path, mark: str) -> subprocess.Popen[str]:
    """An exchange with slow moves."""
    command = [sys.executable, "-c", SLOW, str(folder), mark]
    return subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, cwd=ROOT)


def test_two_at_once(tmp_path: Path) -> None:
    """With slow moves the one waits for the other: all files are of one run, and nothing is left beside them."""
    for number in range(3):
        folder = tmp_path / str(number)
        runs = [slow(folder, mark) for mark in ("a", "b", "c")]
        assert [run.wait(60) for run in runs] == [0, 0, 0], [run.communicate()[1] for run in runs]
        for run in runs:
            run.communicate()
        found = there(folder)
        assert set(found) == {"one.pdf", "two.svg", MANIFEST}
        assert len({data.split()[0] for data in found.values()}) == 1


HOLD = """
import sys, time
from pathlib import Path
from templates_gen.disk.exchange import Exchange
with Exchange(Path(sys.argv[1]), "manifest.json"):
    print("in", flush=True)
    time.sleep(60)
"""


def test_a_long_run_is_told_and_a_dead_one_holds_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, child: Child
) -> None:
    """While another run holds the folder: one sentence, nothing changed. When that was killed, the next run goes on."""
    monkeypatch.setattr("templates_gen.disk.exchange.PATIENCE", 0.2)
    folder = filled(tmp_path / "strips")
    command = [sys.executable, "-c", HOLD, str(folder)]
    run = subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=ROOT)
    try:
        assert run.stdout is not None
        assert run.stdout.readline() == "in\n"
        assert "at work in it now" in left_by_runs(folder)[0]
        with pytest.raises(FaultError, match="another run is changing"), Exchange(folder, MANIFEST):
            pass
        assert run.poll() is None, "answered only when the other run had ended"
    finally:
        run.kill()
        run.communicate()
    assert (folder / LOCK).exists()
    assert child(folder, signal.SIGTERM, 0).returncode == 0
    assert there(folder) == NEW


def test_what_nohup_ignores_stays_ignored(tmp_path: Path) -> None:
    """A signal that is ignored when a run begins does not stop it."""
    if not hasattr(signal, "SIGHUP"):
        pytest.skip("this system has no such signal")
    folder = filled(tmp_path / "strips")
    code = f"import signal; signal.signal(signal.SIGHUP, signal.SIG_IGN)\n{CHILD}"
    command = [sys.executable, "-c", code, str(folder), str(int(signal.SIGHUP)), "8", "before"]
    assert subprocess.run(command, cwd=ROOT, check=False, timeout=60, stdout=subprocess.DEVNULL).returncode == 0
    assert there(folder) == NEW


@pytest.mark.parametrize("name", ["one.pdf", MANIFEST])
def test_a_pipe_in_the_way(name: str, tmp_path: Path) -> None:
    """A pipe of our name is neither waited for nor replaced."""
    if not hasattr(os, "mkfifo"):
        pytest.skip("this system has no pipes among its files")
    folder = filled(tmp_path / "strips")
    (folder / name).unlink()
    os.mkfifo(folder / name)
    with pytest.raises(FaultError, match="pipe or a device"), Exchange(folder, MANIFEST) as moving:
        moving.write(name, b"new")
    assert (folder / name).is_fifo()
    assert not RunFolder.all_in(folder)


def test_a_link_at_the_name_of_the_lock(tmp_path: Path) -> None:
    """A link planted there is not followed: what it leads to is not made, and the run is refused in a sentence."""
    folder = filled(tmp_path / "strips")
    (folder / LOCK).symlink_to(tmp_path / "elsewhere")
    with pytest.raises(FaultError, match="a link is in the way"), Exchange(folder, MANIFEST):
        pass
    assert not (tmp_path / "elsewhere").exists()
    assert {name: there(folder).get(name) for name in OLD} == OLD
