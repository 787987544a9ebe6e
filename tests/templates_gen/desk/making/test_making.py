"""Files that the desk makes: proven in a process of their own, stopped for sure, zipped alike each time."""

from __future__ import annotations

import os
import time
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner

from layout.kit.kit import read_kit
from templates_gen.desk.kits.opened import DeskError
from templates_gen.desk.making import job as job_module
from templates_gen.desk.making.asked import asked_all, asked_one, digest_of
from templates_gen.desk.making.job import Job
from templates_gen.desk.making.making import Making
from templates_gen.desk.making.outcome import Proof
from templates_gen.desk.making.zipped import write_zip
from templates_gen.desk.slip.typed import example, values_of
from templates_gen.files.kept import planned
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.readers import pdf
from templates_gen.screen.cli import main

ENGLISH = catalogue_of("en")
ONE = ("strip-near.svg",)
SMALL = {key: text for key, text in example().items() if key.partition(".")[0] not in ("warp", "weft")}


@pytest.fixture
def making() -> Iterator[Making]:
    """A desk that makes files; nothing of it is left."""
    desk = Making()
    yield desk
    folder = desk._folder
    desk.close()
    assert folder is None or not Path(folder.name).exists()


def test_strips_are_made_with_progress_and_the_line_of_proof(making: Making, tmp_path: Path) -> None:
    """Every file is counted on the way; the line is that of the command line, and so are the files."""
    job = making.start(asked_one(SMALL, ["strips"]))
    seen = set()
    while not job.ended:
        state = job.state
        seen.add((state.done, state.total, state.file))
        time.sleep(0.002)
    assert job.state.status == "made"
    assert {total for _, total, _ in seen} <= {0, 5}
    (tmp_path / "kit.toml").write_text(_toml(SMALL))
    said = CliRunner().invoke(
        main, ["make", str(tmp_path / "kit.toml"), "-o", str(tmp_path / "made"), "--only", "strips"]
    )
    assert job.state.said(ENGLISH) in said.output.split("\n")
    with zipfile.ZipFile(job.zip) as archive:
        assert archive.namelist() == sorted(path.name for path in (tmp_path / "made").iterdir())
        assert all(archive.read(name) == (tmp_path / "made" / name).read_bytes() for name in archive.namelist())
    assert job.state.size == job.zip.stat().st_size
    assert making.file(job.id, "strip-near.pdf").startswith(b"%PDF")


def _toml(typed: dict[str, str]) -> str:
    from templates_gen.data import text_of
    from templates_gen.inputs.toml_order import Order
    from templates_gen.inputs.toml_rewrite import rewritten

    return rewritten(text_of("demo.toml"), values_of(typed), Order(text_of("demo.toml")))


@pytest.mark.parametrize(
    ("files", "marks", "cuts", "line"),
    [
        (1, 5, 0, "Proven: 1 file read back, 5 marks, largest deviation 0.01 micrometres."),
        (2, 0, 1, "Proven: 2 files read back, 1 outline to cut, largest deviation 0.01 micrometres."),
        (3, 1, 2, "Proven: 3 files read back, 1 marks, 2 outlines to cut, largest deviation 0.01 micrometres."),
    ],
)
def test_the_line_of_proof(files: int, marks: int, cuts: int, line: str) -> None:
    """It says what the command line says, for marks, outlines and both."""
    from templates_gen.files.generate import Report
    from templates_gen.files.proven import Made
    from templates_gen.screen.made_report import _proven

    made = tuple(
        Made("a.pdf", "", 1, (1, 1), (), marks if k == 0 else 0, cuts if k == 0 else 0, 1e-5) for k in range(files)
    )
    assert Proof(files, marks, cuts, 1e-5).said(ENGLISH) == line == _proven(Report(made, ()))


def test_a_stop_ends_the_process_and_leaves_nothing(making: Making) -> None:
    """One run at a time; a stopped one is over at once, its process too, its folder is empty; the next can begin."""
    job = making.start(asked_one(example()))
    with pytest.raises(DeskError, match="being made"):
        making.start(asked_one(SMALL))
    while job.state.total == 0 and not job.ended:
        time.sleep(0.01)
    begun = time.monotonic()
    job.stop()
    state = job.wait(10)
    assert time.monotonic() - begun < 5
    assert (state.status, job.ended) == ("stopped", True)
    assert state.said(ENGLISH) == "Stopped; nothing new was made."
    assert job._process.returncode is not None
    assert list(job.folder.iterdir()) == []
    with pytest.raises(DeskError):
        making.file(job.id, "strip-near.pdf")
    assert making.start(asked_one(SMALL, ONE)).wait(60).status == "made"


def test_a_run_that_takes_too_long_is_stopped() -> None:
    """After its seconds it is ended, and says so."""
    desk = Making(seconds=0.3)
    state = desk.start(asked_one(example())).wait(20)
    assert (state.status, state.said(ENGLISH)[:28]) == ("refused", "Making took longer than 0 s ")
    desk.close()


def test_a_process_that_dies_is_said(making: Making) -> None:
    """Where the run ends in any other way, there is a sentence and no zip."""
    job = making.start(asked_one(example()))
    while job.state.total == 0 and not job.ended:
        time.sleep(0.01)
    job_module._killed(job._process)
    state = job.wait(10)
    assert (state.status, state.said(ENGLISH)) == (
        "refused",
        "Making ended before it was done; nothing new was made. Try again.",
    )
    assert not job.zip.exists()


def test_a_failed_run_leaves_the_last_zip(making: Making, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What cannot be made is refused in the words of the command line, and what was made before stays.

    No module is taken from the folder of the kits.
    """
    (tmp_path / "pickle.py").write_text("raise SystemExit")
    monkeypatch.chdir(tmp_path)
    good = making.start(asked_one(SMALL, ONE))
    good.wait(60)
    bad = making.start(asked_one({**SMALL, "weaving.height": "90 cm"}, ONE))
    assert bad.wait(60).status == "refused"
    assert bad.state.said(ENGLISH).startswith("weaving.height: needs less than the 52 cm")
    assert "Rahmen" in bad.state.said(catalogue_of("de"))
    assert making.file(good.id, "strip-near.svg").startswith(b"<")
    assert making.made(good.asked.digest) is good
    assert making.made(bad.asked.digest) is None


def test_all_kits_are_made_in_one_zip(making: Making) -> None:
    """Several slips are a run with a folder for each kit, as the command line makes of a range."""
    other = {**SMALL, "name": "Weir frame", "run/copies": "2", "run/buy.currency": "EUR"}
    asked = asked_all([SMALL, other], "My kits", ONE)
    assert asked.zip_name == "my-kits.zip"
    job = making.start(asked)
    assert job.wait(60).status == "made"
    with zipfile.ZipFile(job.zip) as archive:
        names = archive.namelist()
    assert {name.partition("/")[0] for name in names} == {"manifest.json", "weir-frame", "willow-frame-small"}
    assert "weir-frame/strip-near.svg" in names


@pytest.mark.parametrize(
    ("folder", "name"), [("My kits", "My kits"), ("", "Kits"), ("a/b", "Kits"), ("x" * 99, "Kits"), ("\u05d0", "Kits")]
)
def test_all_kits_have_a_name_that_sheets_can_bear(folder: str, name: str) -> None:
    """The name of a folder may be any; what is printed, and the zip, are called after it where that can be."""
    assert asked_all([SMALL], folder).name == name


def test_the_same_files_are_the_same_zip(tmp_path: Path) -> None:
    """Names in order, one date, nothing hidden, no link: the bytes do not depend on the disk or the day."""
    folders = [tmp_path / "one", tmp_path / "two"]
    for k, folder in enumerate(folders):
        (folder / "b").mkdir(parents=True)
        for name in ["b/x.pdf", "a.svg", ".lock"][:: -1 if k else 1]:
            (folder / name).write_bytes(name.encode() * 100)
        os.utime(folder / "a.svg", (k * 10**9, k * 10**9))
        (folder / "a.svg").chmod(0o600 if k else 0o644)
        (folder / "link").symlink_to("/etc/passwd")
        write_zip(folder, tmp_path / f"{k}.zip")
    assert (tmp_path / "0.zip").read_bytes() == (tmp_path / "1.zip").read_bytes()
    assert zipfile.ZipFile(tmp_path / "0.zip").namelist() == ["a.svg", "b/x.pdf"]


def test_a_digest_changes_with_what_is_typed() -> None:
    """The same slip has the same digest, however its lines are ordered; any other value another one."""
    assert digest_of(SMALL) == digest_of(dict(reversed(SMALL.items())))
    others = [{**SMALL, "frame.outer_width": "41 cm"}, {**SMALL, "run/copies": "2"}, {**SMALL, "stock/name": "card"}]
    assert len({digest_of(each) for each in (SMALL, *others)}) == 4


def test_single_files_are_proven_without_a_run(making: Making) -> None:
    """The PDF of a strip, that of all guides, and a name that is none."""
    plan = planned(read_kit(values_of(SMALL), metrics()))
    for file in ("strip-near.pdf", "kit.pdf"):
        assert pdf.read(making.single(plan, file)).sheets
    with pytest.raises(OptionError):
        making.single(plan, "../secret")


def test_old_zips_go(making: Making, monkeypatch: pytest.MonkeyPatch) -> None:
    """Only the last few are kept; an older one says that it is gone. Names that look like options or paths are none."""
    monkeypatch.setattr("templates_gen.desk.making.making._KEPT", 0)
    jobs: list[Job] = []
    for only in ("strip-near.svg", "strip-far.svg"):
        jobs.append(making.start(asked_one({**SMALL, "name": "--out= ..,etc"}, [only])))
        assert jobs[-1].asked.zip_name == "out-etc.zip"
        jobs[-1].wait(60)
    with pytest.raises(DeskError, match="no longer kept"):
        making.job(jobs[0].id)
    assert not jobs[0].folder.exists()
    assert making.job(jobs[1].id) is jobs[1]
