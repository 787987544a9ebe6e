"""Making a kit's files: all of them proven and in place, or the folder is what it was, byte for byte."""

from __future__ import annotations

import hashlib
import json
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from importlib.metadata import version
from pathlib import Path
from typing import NamedTuple

import pytest
from forked import Ended, forks
from kits import DEMO_FILES as FILES
from kits import FILES as PLAIN_FILES
from kits import FLAT, plan_of

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, line
from layout.drawing.sheet import Sheet
from layout.plan import Plan
from layout.values.errors import FieldError, LayoutError
from templates_gen.disk import exchange
from templates_gen.document import Document
from templates_gen.files import generate, proven
from templates_gen.files.check import Against, check
from templates_gen.files.formats import FORMATS
from templates_gen.files.generate import Report, make
from templates_gen.files.manifest import MANIFEST, product_of
from templates_gen.files.outputs import Output
from templates_gen.files.proven import ProofError
from templates_gen.messages.roles.proof_printed import Spacing, Strips
from templates_gen.verify.finding import Findings, finding

MAKE = (
    "import sys; from templates_gen.screen.cli import main;"
    "main(['make', '-o', sys.argv[1], '--only', 'strip-near', '--only', 'strip-far', '--only', 'comb'])"
)
FEW = ("strip-near", "strip-far")
FEW_FILES = tuple(f"{name}.{form}" for name in FEW for form in ("pdf", "svg"))


def there(folder: Path) -> dict[str, bytes | None]:
    """Everything in a folder and below: each file's bytes, None for a folder."""
    found = {str(path.relative_to(folder)): path for path in folder.rglob("*")}
    return {name: path.read_bytes() if path.is_file() else None for name, path in found.items()}


class Made(NamedTuple):
    """The printed files of the demo kit: where they are, what was reported, and what a listener heard."""

    folder: Path
    report: Report
    heard: list[tuple[int, int, str]]


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory, demo_plan: Plan, metrics: FontMetrics) -> Made:
    """They are made once, into a folder that was not there."""
    folder, heard = tmp_path_factory.mktemp("made") / "new" / "strips", list[tuple[int, int, str]]()
    return Made(folder, make(demo_plan, folder, metrics, progress=lambda *step: heard.append(step)), heard)


@pytest.fixture(scope="module")
def sizes(demo_folder: Path) -> list[int]:
    """How many bytes each file takes that the processes below make."""
    return [path.stat().st_size for path in demo_folder.iterdir() if product_of(path.name) in (*FEW, "comb")]


@pytest.fixture
def used(tmp_path: Path) -> Path:
    """A folder where all files stand already, as others made them, and something of the maker's own."""
    folder = tmp_path / "strips"
    folder.mkdir()
    for name in (*FILES, MANIFEST, "my notes.txt"):
        (folder / name).write_bytes(f"as it was: {name}".encode())
    return folder


def test_every_file_is_there_and_reported(made: Made) -> None:
    """All files and the manifest are written, nothing else, and the report counts what was proven."""
    folder, report, _ = made
    assert set(there(folder)) == {*FILES, MANIFEST}
    assert [made.file for made in report.made] == list(FILES)
    marks = {made.file: made.marks for made in report.made}
    # 31 near marks, 30 far marks (30 winds in 24 cm at 8 mm) and a tick at each of 25 cm, by hand; on paper the signs
    # are explained once more: 4 marks and 5 ticks.
    assert [marks[f"strip-{end}.{form}"] for end in ("near", "far") for form in ("pdf", "svg")] == [65, 56, 64, 55]
    alone = ("kit.pdf", "weaving-grid.pdf", "strip-near.pdf", "strip-far.pdf")
    in_kit = [file for file in FILES if file.endswith("pdf") and file not in alone]
    assert marks["kit.pdf"] == sum(marks[file] for file in in_kit)
    assert report.marks == sum(marks.values())
    assert 0 <= report.deviation <= 0.001


def test_the_manifest_lists_each_file(made: Made) -> None:
    """File, sha256 (as hashlib has it of the bytes on disk), sheets, size, parts, marks and deviation."""
    manifest = json.loads((made.folder / MANIFEST).read_bytes())
    assert manifest["version"] == 1
    assert [entry["file"] for entry in manifest["files"]] == list(FILES)
    for entry in manifest["files"]:
        assert entry["sha256"] == hashlib.sha256((made.folder / entry["file"]).read_bytes()).hexdigest()
        assert set(entry) == {
            "file",
            "sha256",
            "sheets",
            "sheet_mm",
            "parts",
            "marks",
            "cuts",
            "deviation_um",
            "kit_sha256",
        }
        assert 0 <= entry["deviation_um"] <= 1
    near, kit = (
        next(each for each in manifest["files"] if each["file"] == f"{name}.pdf") for name in ("strip-near", "kit")
    )
    assert near["sheet_mm"] == [209.9028, 278.6944]  # 595 x 790 units of 1/72 in (ISO 32000)
    assert near["parts"] == ["strip-near"]
    assert {"strip-near", "strip-far"} < set(kit["parts"])
    assert (near["sheets"], kit["sheets"]) == (1, 6)  # strips and guides share a sheet each


def test_what_is_not_ours_stays(used: Path, made: Made, demo_plan: Plan, metrics: FontMetrics) -> None:
    """Files of our names are replaced by the same bytes as in any folder; anything else there is left alone."""
    make(demo_plan, used, metrics)
    assert there(used) == there(made.folder) | {"my notes.txt": b"as it was: my notes.txt"}


def test_made_twice_is_the_same(made: Made, tmp_path: Path, demo_plan: Plan, metrics: FontMetrics) -> None:
    """Making a kit again over its own files changes no byte."""
    folder = shutil.copytree(made.folder, tmp_path / "strips")
    make(demo_plan, folder, metrics, only=[*FEW, "weaving-grid"])
    assert there(folder) == there(made.folder)


def test_a_second_make_draws_nothing_again(
    tmp_path: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The bytes that were proven are written again, for the same kit and stock alone, and `check` finds them right."""
    first = make(demo_plan, tmp_path / "one", metrics, FEW)
    monkeypatch.setattr(generate, "write", lambda _: pytest.fail("a file is drawn again"))
    assert make(demo_plan, tmp_path / "two", metrics, FEW).made == first.made
    assert there(tmp_path / "two") == there(tmp_path / "one")
    assert not any(each.problems for each in check([tmp_path / "two"], Against(), metrics))
    other = replace(demo_plan, kit=replace(demo_plan.kit, name="another"))
    with pytest.raises(pytest.fail.Exception):
        make(other, tmp_path / "three", metrics, FEW)


def test_a_disk_that_alters_bytes_which_were_proven_before(
    tmp_path: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """That a file passed once says nothing of what the disk keeps now."""
    make(demo_plan, tmp_path, metrics, FEW)
    before, right = there(tmp_path), exchange.write_new
    monkeypatch.setattr(exchange, "write_new", lambda path, data: right(path, data.replace(b' d="M', b' d="M1', 1)))
    with pytest.raises(ProofError, match=r"^[a-z-]+\.svg was not kept"):
        make(demo_plan, tmp_path, metrics, FEW)
    assert there(tmp_path) == before


def test_progress_names_each_file(made: Made) -> None:
    """Whoever listens hears of every file before it is made."""
    assert made.heard == [(done, len(FILES), file) for done, file in enumerate(FILES)]


def test_one_part_alone(tmp_path: Path, demo_plan: Plan, metrics: FontMetrics) -> None:
    """Only the parts that are asked for are made."""
    make(demo_plan, tmp_path, metrics, only=["strip-far"])
    assert set(there(tmp_path)) == {"strip-far.pdf", "strip-far.svg", MANIFEST}


# Faults on the way.


def _altered(found: Document) -> Document:
    one, *others = found.sheets
    (*shapes, _) = one.shapes
    return found._replace(sheets=(Sheet(one.name, one.width, one.height, tuple(shapes)), *others))


FAULTS: dict[str, BaseException] = {
    "a refusal": LayoutError("cannot be drawn"),
    "a broken library": RuntimeError("broken"),
    "the memory is used up": MemoryError(),
    "a keystroke": KeyboardInterrupt(),
}


@pytest.mark.parametrize("file", [FEW_FILES[0], FEW_FILES[-1]])
@pytest.mark.parametrize("name", FAULTS)
def test_a_writer_that_fails(
    name: str, file: str, used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whatever stops a writer at whichever file: the folder is as it was and nothing temporary is left."""
    right = generate.write

    def write(output: Output) -> bytes:
        if output.file == file:
            raise FAULTS[name]
        return right(output)

    monkeypatch.setattr(generate, "write", write)
    before = there(used)
    with pytest.raises(type(FAULTS[name])):
        make(demo_plan, used, metrics, only=FEW)
    assert there(used) == before


@pytest.mark.parametrize("file", [FEW_FILES[0], FEW_FILES[1], FEW_FILES[-1]])
def test_a_proof_that_fails(
    file: str, used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A file that does not come back as it was drawn is not kept, and neither are those before it."""
    right = proven.read

    def read(output: Output, data: bytes) -> Document:
        found = right(output, data)
        return _altered(found) if output.file == file else found

    monkeypatch.setattr(proven, "read", read)
    before = there(used)
    with pytest.raises(ProofError, match=rf"^{file} was not kept") as caught:
        make(demo_plan, used, metrics, only=FEW)
    assert len(str(caught.value).splitlines()) == 1
    assert there(used) == before


def test_a_disk_that_alters_what_it_keeps(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is proven is what stands on the disk, not what was handed to it."""
    right = exchange.write_new

    def write_new(path: Path, data: bytes) -> None:
        right(path, data.replace(b' d="M', b' d="M1', 1))

    before = there(used)
    monkeypatch.setattr(exchange, "write_new", write_new)
    with pytest.raises(ProofError, match=r"^[a-z-]+\.svg was not kept"):
        make(demo_plan, used, metrics, only=FEW)
    assert there(used) == before


def test_a_writer_that_draws_wrong(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A writer that adds a line of its own is found out before its file exists."""

    def write(output: Output) -> bytes:
        one, *others = output.sheets
        more = Sheet(one.name, one.width, one.height, (*one.shapes, line(Point(9, 9), Point(9, 20), Pen.MARK)))
        return FORMATS[output.format].write([more, *others], output.about)

    monkeypatch.setattr(generate, "write", write)
    before = there(used)
    with pytest.raises(ProofError):
        make(demo_plan, used, metrics, only=FEW)
    assert there(used) == before


def test_a_proof_that_fails_says_each_problem_once_and_what_to_do(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A problem that comes three times is said once, with a count; then that the kit is kept and reported."""
    lean, glue = finding(Strips.UPRIGHT), finding(Spacing.TENTHS)
    monkeypatch.setattr(proven, "findings", lambda *_: Findings(0.0, (lean, glue, lean, lean)))
    with pytest.raises(ProofError) as caught:
        make(demo_plan, used, metrics, only=FEW)
    said = str(caught.value)
    assert f": 3 times: {lean}; {glue}. This is a mistake of the program" in said
    assert "keep the kit file as it is, and report it together with the version" in said
    assert said.endswith(f"(templates-gen {version('templates-gen')}).")


def test_a_proof_that_fails_in_a_hundred_ways_can_still_be_read(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Twelve problems are said, and how many more there are."""
    many = Findings(0.0, tuple(finding(Strips.TOO_SHORT, marks=number) for number in range(100)))
    monkeypatch.setattr(proven, "findings", lambda *_: many)
    with pytest.raises(ProofError, match=r"for 11 of its marks; and 88 more\. This") as caught:
        make(demo_plan, used, metrics, only=FEW)
    assert "for 12 of" not in str(caught.value)


def test_a_file_that_its_reader_refuses_is_reported_too(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What cannot even be read back is a failed proof, not a mistake in the kit."""
    monkeypatch.setattr(generate, "write", lambda _: b"nothing that could be read")
    with pytest.raises(ProofError, match=r"was not kept.*report it together"):
        make(demo_plan, used, metrics, only=FEW)


def test_other_inputs_than_were_given(
    used: Path, demo_plan: Plan, metrics: FontMetrics, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A file that would carry the inputs of another kit is not kept."""

    def write(output: Output) -> bytes:
        about = output.about._replace(inputs=output.about.inputs.replace("34", "35"))
        return FORMATS[output.format].write(output.sheets, about)

    monkeypatch.setattr(generate, "write", write)
    with pytest.raises(ProofError, match="the code is not that of this file"):
        make(demo_plan, used, metrics, only=FEW)


def test_what_cannot_be_laid_makes_no_folder(tmp_path: Path, metrics: FontMetrics) -> None:
    """A kit whose strips cannot lie on its paper as it asks is refused before anything is touched."""
    wide = {"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper": {"lay": "straight"}}
    with pytest.raises(FieldError, match=r"paper\.lay"):
        make(plan_of(wide), tmp_path / "strips", metrics)
    assert there(tmp_path) == {}


@pytest.mark.parametrize(
    "changes",
    [
        {},
        FLAT | {"frame.edge_radius": "4 mm", "weaving.slant": "face straight", "weaving.start": "right"},
        {"weaving.near_end": "top", "weaving.first_pass": "back", "name": "Zoë Łukasz Ольга"},
        {"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper": {"size": "letter", "lay": "tiles"}},
        {"paper": {"size": "a3", "lay": "diagonal"}, "sett": {"given": "7 1/2 epi"}},
    ],
)
def test_other_kits(changes: dict[str, object], tmp_path: Path, metrics: FontMetrics) -> None:
    """Frames, ways of winding, papers and names of every kind are made and proven."""
    report = make(plan_of(changes), tmp_path, metrics)
    assert [made.file for made in report.made] == list(PLAIN_FILES)
    assert report.deviation <= 0.001


# Full disks, in processes of their own.


Maker = Callable[[str, Path], Ended]


@pytest.fixture(scope="module")
def made_by(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Maker]:
    """A process that makes the demo kit into a folder after some code."""
    with forks("import templates_gen.screen.cli", tmp_path_factory.mktemp("said")) as forked:
        yield lambda code, folder: forked.run(f"{code}\n{MAKE}", folder)


@pytest.mark.skipif(sys.platform == "win32", reason="this system sets no limits to a process")
@pytest.mark.parametrize("share", [0.01, 0.8])
def test_files_that_may_not_grow(share: float, sizes: list[int], used: Path, made_by: Maker) -> None:
    """Where the system stops a file in the middle of it: one sentence, code 2, and the folder as it was."""
    limit = int(share * max(sizes))
    before = there(used)
    ran = made_by(f"import resource; resource.setrlimit(resource.RLIMIT_FSIZE, ({limit}, {limit}))", used)
    assert (ran.returncode, ran.stdout) == (2, "")
    (sentence,) = [row for row in ran.stderr.splitlines() if "done, making" not in row]
    assert "larger than this system allows" in sentence
    assert there(used) == before


@pytest.fixture
def small_disk(tmp_path: Path) -> Callable[[int], Path]:
    """Mounts a disk of so many bytes; skips where this system does not let us."""
    place = tmp_path / "disk"
    place.mkdir()
    mounted = []

    def mount(size: int) -> Path:
        command = ["mount", "-t", "tmpfs", "-o", f"size={size}", "tmpfs", str(place)]
        try:
            ran = subprocess.run(command, capture_output=True, text=True, check=False)
        except OSError as error:
            pytest.skip(f"cannot mount a small disk: {error}")
        if ran.returncode:
            pytest.skip(f"cannot mount a small disk: {ran.stderr.strip()}")
        mounted.append(place)
        return place

    yield mount  # type: ignore[misc]
    for disk in mounted:
        subprocess.run(["umount", str(disk)], check=True)  # noqa: S607


@pytest.mark.parametrize("share", [0.05, 0.5, 0.9])
def test_a_disk_that_is_full(share: float, sizes: list[int], small_disk: Callable[[int], Path], made_by: Maker) -> None:
    """Wherever the disk runs full: one sentence, code 2, what was there still there, and all its room given back."""
    folder = small_disk(int(share * sum(sizes)))
    (folder / "kit.pdf").write_bytes(b"as it was")
    before = there(folder)
    ran = made_by("", folder)
    assert (ran.returncode, ran.stdout) == (2, "")
    (sentence,) = [row for row in ran.stderr.splitlines() if "done, making" not in row]
    assert "the disk is full" in sentence
    assert there(folder) == before
