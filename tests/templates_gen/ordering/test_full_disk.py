"""A disk that takes no more stops the run with one sentence; what was made stays, and nothing is half."""

from __future__ import annotations

import errno
import json
import os
import shutil
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Any

import pytest
from order_tables import ONLY, files_below, made, order, orders

from templates_gen.disk.faults import FaultError
from templates_gen.ordering import hidden, keeping, stage
from templates_gen.ordering.entry import Entry
from templates_gen.ordering.job import Job
from templates_gen.ordering.journal import Journal
from templates_gen.ordering.order import Problem
from templates_gen.ordering.outcomes import failed
from templates_gen.ordering.result import Result
from templates_gen.ordering.result_lines import Spool
from templates_gen.ordering.running import run

NUMBER = 12


def run_until_full(folder: Path, **options: Any) -> tuple[list[Result], str]:
    """What came before the disk was full, and the sentence."""
    came: list[Result] = []
    with (
        pytest.raises(FaultError) as caught,
        run(orders(NUMBER), Job(str(folder), ONLY[:1]), **{"workers": 1, **options}) as going,
    ):
        came.extend(going)
    return came, str(caught.value)


def goes_on(folder: Path, came: list[Result], whole: dict[str, bytes]) -> None:
    """What was made is there and written down; nothing is left beside it; the next run makes the others alone."""
    there = {path.name for path in folder.iterdir()} - {".orders"}
    said = {each.folder for each in came if each.state == "made"}
    lines = (folder / ".orders" / "journal.jsonl").read_bytes().splitlines()[1:]
    assert {json.loads(line)["folder"] for line in lines} == said <= there
    assert {path.name for path in (folder / ".orders").iterdir()} <= {"journal.jsonl", "before"}
    assert all(whole[name] == data for name, data in files_below(folder).items())
    found = made(orders(NUMBER), folder, ONLY[:1])
    assert {each.folder for each in found if each.state == "unchanged"} == said
    assert files_below(folder) == whole


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    """The files on a disk with room."""
    folder = tmp_path_factory.mktemp("whole")
    made(orders(NUMBER), folder, ONLY[:1])
    return files_below(folder)


def failing(real: Callable[..., Any], after: int, number: int, *, half: bool = False) -> Callable[..., Any]:
    """The same function, which fails from some call on as a system does; perhaps with half of a file written."""
    calls = 0

    def call(*arguments: Any) -> Any:
        nonlocal calls
        calls += 1
        if calls > after:
            if half:
                arguments[0].write_bytes(arguments[1][: len(arguments[1]) // 2])
            raise OSError(number, os.strerror(number))
        return real(*arguments)

    return call


@pytest.mark.parametrize(
    "number",
    [errno.ENOSPC, *(pytest.param(each, marks=pytest.mark.slow) for each in (errno.EDQUOT, errno.EROFS, errno.EIO))],
)
def test_no_file_can_be_written(
    number: int, tmp_path: Path, whole: dict[str, bytes], monkeypatch: pytest.MonkeyPatch
) -> None:
    """In the middle of a file, in the middle of a chunk: the orders before it in the chunk are kept."""
    monkeypatch.setattr(stage, "write_new", failing(stage.write_new, 9, number, half=True))
    came, said = run_until_full(tmp_path)
    monkeypatch.undo()
    assert [each.folder for each in came] == ["w-0", "w-1", "w-2", "w-3"]
    assert said.count("\n") == 0
    assert "w-4" in said
    assert "run the same command again" in said
    goes_on(tmp_path, came, whole)


@pytest.mark.parametrize(
    ("module", "name", "after"),
    [(stage, "flush_file", 14), (stage, "flush_folder", 4), (keeping.Places, "flush", 1), (os, "fsync", 20)],
    ids=["bytes", "names", "the names of the orders", "anything"],
)
def test_nothing_can_be_flushed(
    module: Any, name: str, after: int, tmp_path: Path, whole: dict[str, bytes], monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is not sure to stay is not said to be made, nor written down, and is made again."""
    real = getattr(module, name)
    if module is keeping.Places:

        def flush(self: Any) -> None:
            if list(self._target.glob("w-*"))[7:]:
                raise FaultError("the disk is full")
            real(self)

        monkeypatch.setattr(module, name, flush)
    else:
        monkeypatch.setattr(module, name, failing(real, after, errno.ENOSPC))
    came, said = run_until_full(tmp_path)
    monkeypatch.undo()
    assert "the disk is full" in said
    assert len(came) < NUMBER
    goes_on(tmp_path, came, whole)


def test_a_stage_cannot_be_made(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The run stops with a sentence."""

    def full(*_: Any) -> Any:
        raise OSError(errno.ENOSPC, "")

    monkeypatch.setattr(stage.Stage, "__init__", full)
    came, said = run_until_full(tmp_path)
    assert (came, "the disk is full" in said) == ([], True)
    assert list((tmp_path / ".orders").glob("stage-*")) == []


@contextmanager
def disk_of(size: str) -> Iterator[Path]:
    """A disk of that size (mount(8), tmpfs), while the block runs."""
    place = Path(tempfile.mkdtemp(prefix="small-disk-"))
    mount = shutil.which("mount") or "mount"
    try:
        subprocess.run([mount, "-t", "tmpfs", "-o", f"size={size}", "tmpfs", place], capture_output=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        place.rmdir()
        pytest.skip("no disk can be mounted here")
    yield place
    subprocess.run([shutil.which("umount") or "umount", place], check=True)
    place.rmdir()


@pytest.mark.parametrize("workers", [1, pytest.param(2, marks=pytest.mark.slow)])
def test_a_disk_that_is_full(workers: int, tmp_path: Path, whole: dict[str, bytes]) -> None:
    """On a real disk that is too small, with workers of any number; moved to a larger one, the run goes on."""
    with disk_of("300k") as disk:
        came, said = run_until_full(disk / "orders", workers=workers)
        shutil.copytree(disk / "orders", tmp_path / "larger")
    assert "the disk is full" in said
    goes_on(tmp_path / "larger", came, whole)


FULL = Path("/dev/full")
"""On Linux each write into it fails as on a full disk (full(4))."""


def to_full(kept: Any) -> Any:
    """The same spool or journal, from now on in a file that takes nothing."""
    kept._file.close()
    kept._file = FULL.open("r+b")
    return kept


@pytest.mark.skipif(not FULL.exists(), reason="no such device here")
def test_said_once(tmp_path: Path) -> None:
    """What a disk did not take is said when it was not taken, and not again when its file is closed."""
    result = failed(order(0), Problem("", "no"))
    with to_full(Spool(tmp_path)) as spool, pytest.raises(FaultError, match="the disk is full"):
        spool.add(0, result)
    journal = to_full(Journal(tmp_path, [].append))
    with closing(journal), pytest.raises(FaultError, match="the disk is full"):
        journal.add([Entry("a", "1" * 64, result)])


def test_where_nothing_can_be_written(tmp_path: Path) -> None:
    """A folder below a file cannot be made, and a sentence says so."""
    (tmp_path / "file").write_text("mine")
    with (
        pytest.raises(FaultError, match="could not make the folder"),
        run(orders(1), Job(str(tmp_path / "file" / "in"))),
    ):
        pass
    assert hidden.HIDDEN not in {path.name for path in tmp_path.iterdir()}


@pytest.mark.parametrize(
    "size", ["8k", pytest.param("4k", marks=pytest.mark.slow), pytest.param("24k", marks=pytest.mark.slow)]
)
def test_a_disk_too_small_to_begin(size: str, tmp_path: Path) -> None:
    """Where there is no room for the journal or the first order, a sentence says so, too."""
    with disk_of(size) as disk:
        came, said = run_until_full(disk / "orders")
        assert "the disk is full" in said
        assert {each.folder for each in came} == {path.name for path in (disk / "orders").glob("w-*")}
