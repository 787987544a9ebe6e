"""A run goes on where the last one was, makes nothing twice, and loses nothing of a person's."""

from __future__ import annotations

import os
from collections.abc import Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from dataclasses import replace
from functools import partial
from pathlib import Path
from random import Random
from threading import Event, Thread
from typing import Any

import pytest
from order_tables import ONLY, Rows, files_below, made, order, orders

import templates_gen
from layout.drawing.correction import Scale
from layout.drawing.printer import Printer
from layout.values.errors import LayoutError
from templates_gen.disk.faults import FaultError
from templates_gen.inputs.stock_file import built_in_values
from templates_gen.ordering import fingerprint
from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order, Problem, Unreadable
from templates_gen.ordering.result import Result
from templates_gen.ordering.running import run


def states(found: list[Result]) -> list[str]:
    """What became of each."""
    return [each.state for each in found]


@pytest.fixture
def two(tmp_path: Path) -> Path:
    """A folder of two orders, with what lies beside it out of reach."""
    folder = tmp_path / "orders"
    assert states(made(orders(2), folder)) == ["made", "made"]
    return folder


def test_nothing_is_made_twice(two: Path) -> None:
    """The same table again: every order unchanged, no file touched, the results otherwise the same."""
    times = {path: path.stat().st_mtime_ns for path in two.rglob("w-*/*")}
    first = made(orders(2), two)
    assert states(first) == ["unchanged", "unchanged"]
    assert {path: path.stat().st_mtime_ns for path in two.rglob("w-*/*")} == times
    assert all(each.files and each.amounts and each.ends for each in first)


def test_into_a_link(two: Path, tmp_path: Path) -> None:
    """The folder may be named by a link that leads to it."""
    (tmp_path / "link").symlink_to(two)
    assert states(made(orders(3), tmp_path / "link")) == ["unchanged", "unchanged", "made"]
    assert (two / "w-2" / "manifest.json").is_file()


def test_nothing_is_left_beside(two: Path) -> None:
    """After a run there are the folders of the orders and the journal, and nothing else."""
    assert sorted(path.name for path in two.iterdir()) == [".orders", "w-0", "w-1"]
    assert [path.name for path in (two / ".orders").iterdir()] == ["journal.jsonl"]


PRINTER = Printer("office", Scale(0.999, 1.0, 0.0), Scale(0.0002, 0.0002, 0.0002), "a4", "2026-03-01")


@pytest.mark.parametrize(
    ("changed", "job"),
    [
        (order(1, weaving={"width": "9 cm"}), {}),
        (replace(order(1), copies=2), {}),
        pytest.param(replace(order(1), kit="Weir frame, large"), {}, marks=pytest.mark.slow),
        (order(1), {"only": ONLY[:1]}),
        (order(1), {"stock": {**built_in_values(), "thickness": "4 mm"}}),
        (order(1), {"printer": PRINTER}),
    ],
    ids=["row", "copies", "kit", "files", "stock", "printer"],
)
def test_what_changed_is_made_again(two: Path, changed: Order, job: dict[str, Any]) -> None:
    """A changed row alone; with other files, another stock or printer all of them; the next run makes nothing."""
    options = {"only": ONLY, **job}
    for wanted in (["made" if job else "unchanged", "made"], ["unchanged", "unchanged"]):
        with run(Rows([order(0), changed]), Job(str(two), **options), workers=1) as going:
            assert [each.state for each in going] == wanted
    assert [each.problems for each in templates_gen.check(two / "w-1") if each.problems] == []
    if job.get("only"):
        assert not (two / "w-1" / ONLY[1]).exists()


def test_another_version_of_the_program(two: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What another version made is made again."""
    monkeypatch.setattr(fingerprint, "version", lambda: "0.0.1")
    assert states(made(orders(2), two)) == ["made", "made"]


def test_moved_rows_are_unchanged(two: Path) -> None:
    """An order in another line, and with others round it, is what it was; its result says the new line."""
    found = made(Rows([order(5), replace(order(1), line=9), order(0)]), two)
    assert [(each.number, each.state, each.line) for each in found] == [
        ("W-5", "made", 7),
        ("W-1", "unchanged", 9),
        ("W-0", "unchanged", 2),
    ]


@pytest.mark.parametrize(
    "spoil",
    [
        lambda folder: (folder / ONLY[0]).unlink(),
        lambda folder: (folder / ONLY[0]).write_bytes(b"%PDF-half"),
        lambda folder: (folder / "manifest.json").unlink(),
        lambda folder: [path.unlink() for path in folder.iterdir()] and folder.rmdir(),
    ],
    ids=["a file gone", "a file changed", "no manifest", "no folder"],
)
def test_what_does_not_lie_there_is_made_again(two: Path, spoil: Callable[[Path], object]) -> None:
    """An order whose files are not those that were made is made again, and is right then."""
    before = files_below(two)
    spoil(two / "w-1")
    assert states(made(orders(2), two)) == ["unchanged", "made"]
    after = files_below(two)
    assert {name: after[name] for name in before} == before


def test_files_of_a_person_stay(two: Path) -> None:
    """What lies in a folder beside the files stays; one that was changed by hand gets another name, which is said."""
    (two / "w-1" / "note.txt").write_text("by Friday")
    (two / "w-1" / ONLY[1]).write_bytes(b"%PDF with remarks")
    (two / "w-1" / "photos").mkdir()
    (two / "w-1" / "photos" / "one.jpg").write_bytes(b"jpg")
    found = made(Rows([order(0), order(1, weaving={"width": "9 cm"})]), two)
    after = files_below(two / "w-1")
    assert after["note.txt"] == b"by Friday"
    assert after["photos/one.jpg"] == b"jpg"
    assert after[f"{ONLY[1]}.earlier-1"] == b"%PDF with remarks"
    assert any(f"{ONLY[1]} had been changed" in note and "earlier-1" in note for note in found[1].notes)
    assert {file.file for file in found[1].files} | {"manifest.json"} <= after.keys()
    assert states(made(Rows([order(0), order(1, weaving={"width": "9 cm"})]), two)) == ["unchanged", "unchanged"]


def test_a_folder_of_somebody_else(tmp_path: Path) -> None:
    """A folder that stood there before the first run keeps all it holds, a manifest of its own too."""
    (tmp_path / "w-0").mkdir()
    theirs = {"manifest.json": b"{}", "note.txt": b"mine", ONLY[0]: b"my own"}
    for name, data in theirs.items():
        (tmp_path / "w-0" / name).write_bytes(data)
    (result,) = made(orders(1), tmp_path)
    after = files_below(tmp_path / "w-0")
    assert result.state == "made"
    assert set(theirs.values()) <= set(after.values())
    assert len(result.notes) >= 2


@pytest.mark.parametrize("kind", ["link to a folder", "link to nothing", "file", "pipe"])
def test_what_is_no_folder_is_refused(kind: str, two: Path, tmp_path: Path) -> None:
    """Where anything but a folder stands in its place, the order fails with a sentence, and nothing is touched."""
    outside, place = tmp_path / "outside", two / "w-2"
    outside.mkdir()
    (outside / "mine.txt").write_text("mine")
    if kind.startswith("link"):
        place.symlink_to(outside if "folder" in kind else tmp_path / "nothing", target_is_directory=True)
    elif kind == "file":
        place.write_text("mine")
    else:
        os.mkfifo(place)
    was = place.lstat()
    found = made(orders(4), two)
    assert states(found) == ["unchanged", "unchanged", "failed", "made"]
    assert "w-2" in found[2].problems[0].sentence
    assert os.path.samestat(place.lstat(), was)
    assert files_below(outside) == {"mine.txt": b"mine"}
    assert not (tmp_path / "nothing").exists()


@pytest.mark.parametrize("name", [".orders", "before"])
def test_no_link_leads_out(name: str, tmp_path: Path) -> None:
    """Where the hidden folder, or the one in it, is a link, the run does not begin, and it leads nothing out."""
    outside, folder = tmp_path / "outside", tmp_path / "orders"
    outside.mkdir()
    place = folder / ".orders" if name == ".orders" else folder / ".orders" / name
    place.parent.mkdir(parents=True)
    place.symlink_to(outside, target_is_directory=True)
    with pytest.raises(FaultError, match="is a link, or not what belongs there"):
        made(orders(1), folder)
    assert list(outside.iterdir()) == []


@pytest.mark.parametrize("name", ["../out", "a/b", "..", ".hidden", "", "c:d", "a\\b", "a\0b", "x" * 300])
def test_no_name_leads_out(name: str, tmp_path: Path) -> None:
    """Whatever an order's folder is called, nothing is made outside of the folder of the run."""
    folder = tmp_path / "in" / "orders"
    found = made(Rows([replace(order(0), folder=name), order(1)]), folder)
    assert sorted(states(found)) == ["failed", "made"]
    assert sorted(path.name for path in tmp_path.rglob("*") if not path.is_relative_to(folder)) == ["in"]


def test_two_orders_of_one_folder(tmp_path: Path) -> None:
    """Of two orders that some system would put into one folder, the second fails; the first is whole."""
    found = made(Rows([order(0), replace(order(1), folder="W-0")]), tmp_path)
    assert states(found) == ["made", "failed"]
    assert sorted(path.name for path in tmp_path.iterdir()) == [".orders", "w-0"]


def test_a_row_that_failed_where_an_earlier_one_was_made(two: Path) -> None:
    """What lies in its folder stays, and the row says not to use it, whether it can be read or not."""
    lies = files_below(two)
    wrong = [order(0, weaving={"width": "80 cm"}), Unreadable(3, "w-1", "", (Problem("copies", "a sentence"),))]
    found = made(Rows(list(wrong)), two)
    assert states(found) == ["failed", "failed"]
    for result, name in zip(found, ("w-0", "w-1"), strict=True):
        *why, last = result.problems
        assert why
        assert last == (
            "",
            f"the folder {name} still holds the files of an earlier run: do not use them for this order",
        )
    assert files_below(two) == lies


def test_rows_that_cannot_be_read(tmp_path: Path) -> None:
    """They fail with their own problems, at their place; the others are made."""
    rows = [order(0), Unreadable(3, "W-1", "", (Problem("copies", "a sentence"),)), order(2)]
    with run(Rows(rows), Job(str(tmp_path), ONLY), workers=1) as going:
        list(going)
        found = list(going.results())
    assert states(found) == ["made", "failed", "made"]
    assert found[1].problems == (Problem("copies", "a sentence"),)


def test_orders_that_are_gone(two: Path) -> None:
    """An order that is no longer in the table keeps its folder; that is said once, and it is in no result."""
    before, heard = files_below(two), list[str]()
    found = made(Rows([order(1)]), two, tell=heard.append)
    assert [each.number for each in found] == ["W-1"]
    assert files_below(two) == before
    assert len(heard) == 1
    assert "1 order" in heard[0]


def test_an_order_that_cannot_be_read_is_not_gone(two: Path) -> None:
    """Where its row is still there, nobody says that it is not."""
    heard: list[str] = []
    with run(
        Rows([order(1), Unreadable(3, "W-0", "", ())]), Job(str(two), ONLY), workers=1, tell=heard.append
    ) as going:
        assert len(list(going)) == 2
    assert heard == []


def test_one_run_at_a_time(two: Path) -> None:
    """A second run into a folder is refused at once, by a sentence; the first one goes on."""
    with run(orders(2), Job(str(two), ONLY), workers=1) as first:
        next(first)
        with pytest.raises(FaultError, match="another run is changing"), run(orders(2), Job(str(two), ONLY)):
            pass
        assert len(list(first)) == 1
    assert states(made(orders(2), two)) == ["unchanged", "unchanged"]


def test_left_in_the_middle(tmp_path: Path) -> None:
    """Whoever stops asking for results has all that came, written down; the next run makes the others alone."""
    with run(orders(9), Job(str(tmp_path), ONLY[:1]), workers=1) as going:
        came = [next(going) for _ in range(3)]
        assert {each.folder for each in came} <= {each.folder for each in going.results()}
    found = made(orders(9), tmp_path, ONLY[:1])
    assert {each.folder for each in came} <= {each.folder for each in found if each.state == "unchanged"}
    assert states(found).count("made") >= 3


class InTurn(Executor):
    """An executor that lets work gather for a while, then does it one by one, as it was given or in another order."""

    def __init__(self, seed: int | None) -> None:
        self.chance = Random(seed) if seed is not None else None  # noqa: S311 (a draw, no secret)
        self.waiting: list[tuple[Future[Any], Callable[..., Any], tuple[Any, ...]]] = []
        self.order: list[int] = []
        self.given = 0
        self.ended = Event()
        self.thread = Thread(target=self._run)
        self.thread.start()

    def submit(self, fn: Any, /, *args: Any, **_: Any) -> Future[Any]:
        """Work that waits for its turn."""
        future: Future[Any] = Future()
        self.waiting.append((future, partial(self._noted, self.given, fn), args))
        self.given += 1
        return future

    def _noted(self, number: int, fn: Any, *args: Any) -> Any:
        self.order.append(number)
        return fn(*args)

    def _run(self) -> None:
        while not self.ended.wait(0.05):
            taken, self.waiting = self.waiting, []
            if self.chance:
                self.chance.shuffle(taken)
            for future, fn, args in taken:
                future.set_result(fn(*args))

    def shutdown(self, *_: Any, **__: Any) -> None:
        """Takes no more work."""
        self.ended.set()
        self.thread.join()


@pytest.mark.parametrize("seed", [pytest.param(None, marks=pytest.mark.slow), 1])
def test_any_executor(seed: int | None, tmp_path: Path) -> None:
    """Executors of other people, which do their work in order or out of order, make the same bytes as this process."""
    made(orders(6), tmp_path / "here")
    with InTurn(seed) as executor:
        assert states(made(orders(6), tmp_path / "there", executor=executor, workers=2)) == ["made"] * 6
    assert (executor.order == sorted(executor.order)) == (seed is None)
    assert files_below(tmp_path / "there") == files_below(tmp_path / "here")


class Twice(Executor):
    """An executor that does all work twice at once, as one does that misses a worker; the later answer is lost."""

    def __init__(self) -> None:
        self.pool = ThreadPoolExecutor(2)
        self.lost: list[Future[Any]] = []

    def submit(self, fn: Any, /, *args: Any, **_: Any) -> Future[Any]:
        """The answer that counts."""
        self.lost.append(self.pool.submit(fn, *args))
        return self.pool.submit(fn, *args)

    def shutdown(self, *_: Any, **__: Any) -> None:
        """Takes no more work."""
        self.pool.shutdown()


def test_work_that_is_done_twice(tmp_path: Path) -> None:
    """Orders that two workers make at once are there once, whole; nothing is left of the others."""
    made(orders(6), tmp_path / "here")
    with Twice() as executor:
        found = made(orders(6), tmp_path / "there", executor=executor, workers=1)
    assert states(found) == ["made"] * 6
    assert len(executor.lost) > 1
    assert files_below(tmp_path / "there") == files_below(tmp_path / "here")
    assert not list((tmp_path / "there" / ".orders").glob("stage-*"))


def test_workers_without_the_folder(tmp_path: Path) -> None:
    """Where a worker does not see the folder, the run stops with a sentence instead of failing every order."""

    class Elsewhere(ThreadPoolExecutor):
        def submit(self, fn: Any, /, job: Any, *args: Any) -> Future[Any]:  # type: ignore[override]
            return super().submit(fn, replace(job, stage=str(tmp_path / "elsewhere" / "stage")), *args)

    with Elsewhere(1) as executor, pytest.raises(FaultError, match="that place does not exist"):
        made(orders(2), tmp_path / "orders", executor=executor, workers=1)


def test_threads(tmp_path: Path) -> None:
    """Two threads make the same bytes as one."""
    made(orders(6), tmp_path / "here")
    with ThreadPoolExecutor(2) as pool:
        assert states(made(orders(6), tmp_path / "there", executor=pool, workers=2)) == ["made"] * 6
    assert files_below(tmp_path / "there") == files_below(tmp_path / "here")


def test_an_executor_that_is_shut_down(two: Path) -> None:
    """The run stops with a sentence; what is written down stays."""
    pool = ThreadPoolExecutor(1)
    pool.shutdown()
    with pytest.raises(LayoutError, match="takes no more work"):
        made(orders(4), two, executor=pool, workers=1)
    assert states(made(orders(4), two)) == ["unchanged", "unchanged", "made", "made"]
