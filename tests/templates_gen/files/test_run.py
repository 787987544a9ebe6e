"""Runs of several kits: a folder for each, what is of all of them beside, moved into place together, and read back."""

from __future__ import annotations

import csv
import hashlib
import json
import re
import shutil
from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from functools import partial
from pathlib import Path
from typing import Any

import pytest
from commands import refused, run
from kits import font_metrics, kit_of
from pypdf import PdfReader

from layout.box.shop import Shop
from layout.values.errors import shown_path
from templates_gen.disk.exchange import Exchange
from templates_gen.disk.faults import FaultError
from templates_gen.disk.together import Together
from templates_gen.document import ReadError
from templates_gen.files import check as check_module
from templates_gen.files import check_run, generate
from templates_gen.files.against import Against
from templates_gen.files.check import check
from templates_gen.files.checked import Checked
from templates_gen.files.embedded import embedded_run
from templates_gen.files.formats import FORMATS
from templates_gen.files.manifest import MANIFEST, read_manifest
from templates_gen.files.proven import ProofError
from templates_gen.files.run import RunReport, make_run
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.inputs import stock_file
from templates_gen.inputs.range_file import Range, RangeKit, load_range, write_range
from templates_gen.messages.errors import OptionError

METRICS = font_metrics()
SMALL, LARGE = "heron-frame-small", "heron-frame-large"
TO_BUY, OVERVIEW = "maker-to-buy.csv", "maker-overview.csv"
CARDS, SHEET = "shop-card.pdf", "maker-overview.pdf"


def of_two(height: str = "30 cm") -> Range:
    """A range of two kits."""
    small = kit_of({"name": "Heron frame, small", "weaving.width": "12 cm", "weaving.height": height})
    large = kit_of({"name": "Heron frame, large"})
    return Range("Heron frames", (RangeKit(small, 10, 1), RangeKit(large, 4, 2)), copies_said=True)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, RunReport]:
    """A whole run without cut parts, and what was said of it; never changed."""
    folder = tmp_path_factory.mktemp("run") / "heron"
    return folder, make_run(of_two(), folder, METRICS)


@pytest.fixture
def copied(whole: tuple[Path, RunReport], tmp_path: Path) -> Path:
    """The same to be damaged."""
    return Path(shutil.copytree(whole[0], tmp_path / "heron"))


@pytest.fixture(autouse=True)
def checked_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """The same bytes are not checked twice against the same: nothing here changes how a file is drawn or proven."""
    file, sheets = check_module._file, check_run._sheets

    def known_file(path: Path, data: bytes, against: Against, *others: Any) -> Checked:
        return _once(path, (path.suffix, data, repr(against), others[1:]), partial(file, path, data, against, *others))

    def known_sheets(path: Path, data: bytes, outputs: RunOutputs | None, *others: Any) -> Checked:
        of = outputs and (repr(outputs.range), repr(outputs.stock))
        return _once(path, (path.suffix, data, of, others[1:]), partial(sheets, path, data, outputs, *others))

    monkeypatch.setattr(check_module, "_file", known_file)
    monkeypatch.setattr(check_run, "_sheets", known_sheets)


_CHECKED: dict[object, Checked] = {}


def _once(path: Path, key: object, checked: Callable[[], Checked]) -> Checked:
    if key not in _CHECKED:
        _CHECKED[key] = checked()
    return replace(_CHECKED[key], file=shown_path(path))


def files_in(folder: Path) -> dict[str, bytes]:
    """Every file in a folder and those below."""
    return {str(path.relative_to(folder)): path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}


def test_each_kit_is_made_as_if_it_were_alone(whole: tuple[Path, RunReport], tmp_path: Path) -> None:
    """The very same bytes in a folder of the kit's own name, and what lies in its box; tables lie beside."""
    folder, _ = whole
    for each, plan in zip(of_two().kits, plans_of(of_two()), strict=True):
        generate.make(plan, tmp_path / each.folder, METRICS)
        alone, of_run = files_in(tmp_path / each.folder), files_in(folder / each.folder)
        assert {name: of_run[name] for name in alone if name != MANIFEST} == {
            name: data for name, data in alone.items() if name != MANIFEST
        }
        assert {"leaflet.pdf"} <= of_run.keys() - alone.keys() <= {"leaflet.pdf", "label.pdf", "help.pdf"}
    beside = {path.name for path in folder.iterdir() if not path.name.startswith("print-")}
    assert beside == {SMALL, LARGE, MANIFEST, TO_BUY, OVERVIEW, SHEET, CARDS}


def test_the_manifest_of_a_run_lists_its_kits(whole: tuple[Path, RunReport]) -> None:
    """Each by its folder, name, copies and the sha256 of its manifest; the tables as files."""
    folder, report = whole
    values = json.loads((folder / MANIFEST).read_bytes())
    assert [(kit["folder"], kit["name"], kit["copies"]) for kit in values["kits"]] == [
        (SMALL, "Heron frame, small", 10),
        (LARGE, "Heron frame, large", 4),
    ]
    for kit in values["kits"]:
        assert kit["sha256"] == hashlib.sha256((folder / kit["folder"] / MANIFEST).read_bytes()).hexdigest()
    assert {(file["file"], file["sha256"]) for file in values["files"]} == {
        (path.name, hashlib.sha256(path.read_bytes()).hexdigest())
        for path in folder.iterdir()
        if path.is_file() and path.name != MANIFEST
    }
    assert report.files == sum(len(each.report.made) for each in report.kits) + len(values["files"])
    assert report.marks > 100
    assert report.deviation < 0.001


def test_a_run_is_right_when_it_is_read_back(whole: tuple[Path, RunReport]) -> None:
    """By what its files carry, and against the range; every cell of its tables is computed again then."""
    folder, report = whole
    for against in (Against(), Against(found=of_two())):
        checked = check([folder], against, METRICS)
        assert len(checked) == report.files
        assert [each for each in checked if each.problems] == []
    assert "computed again" in next(each.rows for each in checked if each.file.endswith(TO_BUY))


def problems(folder: Path, against: Against | None = None) -> dict[str, tuple[str, ...]]:
    """What is wrong, by the file or folder."""
    checked = check([folder], against or Against(), METRICS)
    return {str(Path(each.file).relative_to(folder)): each.problems for each in checked if each.problems}


def test_sheets_of_a_run_are_read_back_by_what_they_carry(copied: Path) -> None:
    """A card of other kits, or one that is spoilt, is found, with the range and without."""
    cards = copied / CARDS
    data = cards.read_bytes()
    cards.write_bytes(data[: len(data) // 2])
    assert CARDS in problems(copied)
    make_run(of_two("26 cm"), copied.parent / "other", METRICS)
    shutil.copy(copied.parent / "other" / CARDS, cards)
    assert set(problems(copied)) == {CARDS}
    assert "inputs" in str(problems(copied, Against(found=of_two()))[CARDS])
    cards.unlink()
    assert "missing" in problems(copied)[CARDS][0]


def test_prices_are_made_where_the_kits_are_sold(tmp_path: Path) -> None:
    """In a file of the maker's, which carries the shop; with a stock the boards have their price there too."""
    shop = Shop(people=10, at_a_table=2, currency="EUR", margin=Fraction(2, 5), hour=Fraction(18), minutes=Fraction(25))
    stock = replace(stock_file.built_in(), prices={"sheet": 7.5, "minute": 0.8})
    kit = RangeKit(kit_of({"name": "Heron frame", "box": {"holds": ["shed-stick", "leaflet"]}}), 3, shop=shop)
    sold = Range("Heron frames", (kit,), shop, copies_said=True)
    report = make_run(sold, tmp_path / "run", METRICS, stock=stock)
    beside = [made.file for made in report.made if not made.file.startswith("print-")]
    boards, beside = beside[:3], beside[3:]
    assert [name.rpartition(".")[2] for name in boards] == ["svg", "dxf", "pdf"]
    assert beside == [SHEET, "maker-prices.pdf", "class-sheet.pdf", CARDS]
    for against in (Against(), Against(found=sold), Against(found=sold, stock=stock)):
        assert [each for each in check([tmp_path / "run"], against, METRICS) if each.problems] == []
    carry = {name for name, data in files_in(tmp_path / "run").items() if re.search(rb'shop[\\]*":', data)}
    assert carry == {SHEET, "maker-prices.pdf"}
    dearer = replace(sold, kits=(replace(kit, shop=replace(shop, hour=Fraction(19))),))
    found = problems(tmp_path / "run", Against(found=dearer))
    assert set(found) == {"maker-prices.pdf", OVERVIEW, SHEET}


def test_every_damage_is_found(copied: Path) -> None:
    """A folder or a file that is gone, another file, another run of one kit, a table that was changed."""
    strips = copied / SMALL / "strips.pdf"
    kept = strips.read_bytes()
    strips.write_bytes(kept + b"\n")
    assert f"{SMALL}/strips.pdf" in problems(copied)
    strips.unlink()
    assert "missing" in problems(copied)[f"{SMALL}/strips.pdf"][0]
    strips.write_bytes(kept)
    assert problems(copied) == {}
    shutil.copy(strips, copied / SMALL / "kit.svg")
    shutil.copy(strips, copied / "strips.pdf")
    assert set(problems(copied)) >= {"strips.pdf"}
    (copied / SMALL / "kit.svg").unlink()
    (copied / "strips.pdf").unlink()
    shutil.move(copied / SMALL, copied / "elsewhere")
    assert "missing" in problems(copied)[SMALL][0]
    shutil.move(copied / "elsewhere", copied / SMALL)
    (copied / SMALL / MANIFEST).unlink()
    assert "incomplete" in problems(copied)[SMALL][0]


def test_a_second_copy_of_any_sheet_is_found(copied: Path) -> None:
    """Under a name that is none of ours, too: somebody might print both."""
    sheets = sorted(path for path in copied.iterdir() if path.suffix in (".pdf", ".svg", ".dxf"))
    for path in sheets:
        shutil.copy(path, path.with_stem(f"{path.stem} copy"))
    assert set(problems(copied)) == {f"{path.stem} copy{path.suffix}" for path in sheets}


def test_one_kit_of_another_run_is_found(copied: Path) -> None:
    """Its folder is whole by itself, but not the one that the run lists, and of another kit than the range has."""
    other = of_two("28 cm")
    generate.make(plans_of(other)[0], copied / SMALL, METRICS)
    assert set(problems(copied)) == {SMALL}
    assert "another" in str(problems(copied, Against(found=of_two())))


@pytest.mark.parametrize("name", [TO_BUY, OVERVIEW])
@pytest.mark.parametrize("damage", ["number", "row", "formula", "quotes", "gone"])
def test_a_changed_table_is_found(copied: Path, damage: str, name: str) -> None:
    """By its sha256, and where the manifest is changed with it, by the range."""
    file = copied / name
    lines = file.read_bytes().decode().split("\r\n")
    if damage == "gone":
        file.unlink()
        assert "missing" in problems(copied)[name][0]
        return
    if damage == "number":
        lines[1] = re.sub(
            r",(\d)(\d*\.\d+),", lambda found: f",{(int(found[1]) + 1) % 10}{found[2]},", lines[1], count=1
        )
    lines = lines[:1] + lines[2:] if damage == "row" else lines
    lines[1] = {"formula": "=1+1", "quotes": '"'}.get(damage, "") + lines[1]
    file.write_bytes("\r\n".join(lines).encode())
    assert name in problems(copied)
    values = json.loads((copied / MANIFEST).read_bytes())
    next(each for each in values["files"] if each["file"] == name)["sha256"] = hashlib.sha256(
        file.read_bytes()
    ).hexdigest()
    (copied / MANIFEST).write_text(json.dumps(values))
    assert set(problems(copied, Against(found=of_two()))) == {name}


def test_a_run_lists_all_its_tables(copied: Path) -> None:
    """A whole run without what is to be bought lacks it."""
    values = json.loads((copied / MANIFEST).read_bytes())
    values["files"] = [each for each in values["files"] if each["file"] != TO_BUY]
    (copied / MANIFEST).write_text(json.dumps(values))
    (copied / TO_BUY).unlink()
    assert f"lacks {TO_BUY}" in problems(copied)["."][0]


@pytest.mark.parametrize("folder", ["..", ".", "a/b", "", ".hidden", 5])
def test_a_manifest_leads_nowhere_else(copied: Path, folder: object) -> None:
    """A folder that is none of a run's own makes it no manifest of ours."""
    values = json.loads((copied / MANIFEST).read_bytes())
    values["kits"][0]["folder"] = folder
    with pytest.raises(ValueError, match="not a manifest"):
        read_manifest(json.dumps(values).encode())


def test_the_overview_says_what_a_kit_is(whole: tuple[Path, RunReport]) -> None:
    """Python's own reader of tables finds a row a kit: 30 and 50 ends at 2.5 per cm over 12 and 20 cm, by hand.

    2.5 ends per cm are 6.35 per inch (25.4 mm). In each box lie strips, guides, gauge and leaflet, a sheet each, and a
    label; once for the run there is a first sheet and a frame check, and no grid since no picks are known.
    """
    folder, _ = whole
    with (folder / OVERVIEW).open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    names = ("kit", "folder", "boxes", "sett_per_cm", "sett_per_inch", "ends", "winds", "width_mm", "sheets_once")
    assert [tuple(row[name] for name in names) for row in rows] == [
        ("Heron frame, small", SMALL, "10", "2.500", "6.350", "30", "15", "120.00", "2"),
        ("Heron frame, large", LARGE, "4", "2.500", "6.350", "50", "25", "200.00", "2"),
    ]
    assert all(4 <= int(row["sheets_in_box"]) <= 5 for row in rows)
    assert {row["cost_is"] for row in rows} == {"part"}  # nothing has a price


def test_sheets_of_a_run_are_those_of_its_files(whole: tuple[Path, RunReport]) -> None:
    """What the overview says of all sheets together is what there is to print: pages by how often, counted by pypdf."""
    folder, report = whole
    named = ((path, re.fullmatch(r"print-(\d+)-times?", path.stem)) for path in folder.glob("print-*.pdf"))
    printed = sum(int(times[1]) * len(PdfReader(path).pages) for path, times in named if times)
    text = PdfReader(folder / SHEET).pages[0].extract_text()
    (row,) = (line for line in text.split("All boxes")[1:])
    assert report.outputs.material.sheets == printed
    assert str(printed) in row.split()


@pytest.mark.parametrize("damage", ["values", "own", "kits", "shared"])
def test_an_overview_carries_where_values_come_from(copied: Path, damage: str) -> None:
    """A range in its inputs that is none is one sentence, not a fault of the program."""
    inputs = json.loads(FORMATS["pdf"].read((copied / SHEET).read_bytes()).about.inputs)
    spoilt = {**inputs["range"], **({"kits": [{damage: 5}]} if damage in ("values", "own") else {damage: 5})}
    with pytest.raises(ReadError):
        embedded_run(json.dumps({**inputs, "range": spoilt}), METRICS)
    assert embedded_run(json.dumps(inputs), METRICS).shared == inputs["range"]["shared"]


def test_what_is_named_is_made_of_each_kit(tmp_path: Path) -> None:
    """A part that one kit cannot have is made of the others; one that none has is refused. Tables are left alone."""
    gridded = replace(
        of_two().kits[1], kit=kit_of({"name": "Heron frame, large", "weft": {"picks": {"number": 40, "over": "5 cm"}}})
    )
    both = replace(of_two(), kits=(of_two().kits[0], gridded))
    report = make_run(both, tmp_path / "run", METRICS, ["weaving-grid.svg", "frame-check"])
    made = {name for name in files_in(tmp_path / "run") if not name.endswith(MANIFEST)}
    assert made == {f"{SMALL}/frame-check.pdf", f"{LARGE}/weaving-grid.svg", f"{LARGE}/frame-check.pdf"}
    assert report.tables == ()
    with pytest.raises(OptionError, match="--only: needs a part"):
        make_run(both, tmp_path / "run", METRICS, ["strop"])


def moves(monkeypatch: pytest.MonkeyPatch, stop: int) -> list[int]:
    """Counts every moving of a file, and lets the one of that number fail."""
    seen = [0]
    real = Path.replace

    def counted(self: Path, target: Path) -> Path:
        seen[0] += 1
        if seen[0] == stop:
            raise OSError(28, "no space left")
        return real(self, target)

    monkeypatch.setattr(Path, "replace", counted)
    return seen


OLD, NEW = {"one.svg": b"old", MANIFEST: b"old"}, {"one.svg": b"new", MANIFEST: b"new"}


def settled(folder: Path) -> None:
    """Two folders and their root changed together."""
    with Together(folder, ["a", "b"], MANIFEST, lambda _: None) as together:
        together.begin()
        for exchange in (*together.inside.values(), together.root):
            for name, data in NEW.items():
                exchange.write(name, data)
        together.settle({"a": [], "b": []}, [])


def states(folder: Path) -> Iterator[dict[str, bytes]]:
    """What lies in each of the three folders."""
    for place in (folder / "a", folder / "b", folder):
        yield {path.name: path.read_bytes() for path in place.iterdir() if path.is_file()}


def test_whatever_fails_each_folder_is_whole(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Old or new, the root new only where all are; the first failure changes nothing, a later one says what is new."""
    seen = 0
    for stop in range(1, 1000):
        folder = tmp_path / str(stop)
        for place in (folder, folder / "a", folder / "b"):
            place.mkdir()
            for name, data in OLD.items():
                (place / name).write_bytes(data)
        with monkeypatch.context() as patched:
            seen = moves(patched, stop)[0]
            try:
                settled(folder)
            except FaultError as error:
                failed = str(error)
            else:
                failed = ""
        found = list(states(folder))
        assert all(state in (OLD, NEW) for state in found)
        assert found == sorted(found, key=lambda state: state == OLD)
        if not failed:
            assert found == [NEW] * 3
            break
        assert found[2] == OLD
        assert ("run it again" in failed) == (found[0] == NEW)
    assert stop > 10
    assert seen == 0


def test_a_run_that_cannot_be_proven_changes_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever is wrong with the last kit, no folder is made for the first."""
    real = Exchange.write

    def spoilt(self: Exchange, name: str, data: bytes) -> bytes:
        return real(self, name, data[:-9] if self.folder.name == LARGE else data)

    monkeypatch.setattr(Exchange, "write", spoilt)
    with pytest.raises(ProofError):
        make_run(of_two("27 cm"), tmp_path / "run", METRICS, ["strip-near.svg"])
    assert not (tmp_path / "run").exists()


def test_legal_words_make_no_other_kit(tmp_path: Path) -> None:
    """Only the label carries them; with the others it is of one kit all the same, for `check` too."""
    kit = kit_of({"name": "Heron frame", "box": {"holds": ["label"]}, "legal": {"maker": "Shop by the Weir"}})
    made = Range("Heron frames", (RangeKit(kit, 2),), copies_said=True)
    make_run(made, tmp_path / "run", METRICS, ["label", "frame-check"])
    entries = read_manifest((tmp_path / "run" / "heron-frame" / MANIFEST).read_bytes())
    assert {entry["file"] for entry in entries.entries} == {"label.pdf", "frame-check.pdf"}
    assert len(entries.kits) == 1
    for against in (Against(), Against(found=made)):
        assert [each for each in check([tmp_path / "run"], against, METRICS) if each.problems] == []


# The commands.


def test_a_run_by_the_command(tmp_path: Path) -> None:
    """Kits by name and copies for all; the same again; an earlier kit's folder stays and is named."""
    file, out = tmp_path / "weir.toml", tmp_path / "weir"
    write_range(file)
    few = ("--only", "strip-near.svg", "--kit", "Weir frame, small")
    first = run("make", file, "-o", out, *few, "--kit", "Weir frame, middle", "--copies", "3")
    assert first.exit_code == 0
    assert "weir-frame-small: 3 boxes" in first.stdout
    assert "In the folder: 2 new" in first.stdout
    again = run("make", file, "-o", out, *few)
    assert "weir-frame-small: 10 boxes" in again.stdout
    assert "Of another run, and left as they are: weir-frame-middle." in again.stdout
    assert "0 new, 0 changed, 1 the same" in again.stdout
    assert run("check", out).exit_code == 0
    assert run("check", out, "--kit", file).exit_code == 0
    values = json.loads(run("make", file, "-o", out, *few, "--json").stdout)
    assert [(kit["name"], kit["copies"]) for kit in values["kits"]] == [("Weir frame, small", 10)]
    assert load_range(file).kits[0].copies == 10


def test_copies_of_a_plain_kit_are_a_run(tmp_path: Path) -> None:
    """In a folder of its name; without copies it is made as ever."""
    few = ("--only", "strip-near.svg")
    assert run("make", "-o", tmp_path / "run", *few, "--copies", "2").exit_code == 0
    assert run("make", "-o", tmp_path / "one", *few).exit_code == 0
    one = files_in(tmp_path / "one")
    assert files_in(tmp_path / "run" / "willow-frame-small") == one


@pytest.mark.parametrize("said", ["0", "501", "100000", "2.5", "ten", "-1", "", "9" * 40, "\u0663"])
def test_copies_that_cannot_be(said: str) -> None:
    """One sentence that names the option."""
    assert refused("make", "--copies", said).startswith("--copies: needs a whole number from 1 to 500, got ")


def test_a_file_of_a_run_is_checked_without_its_folder(whole: tuple[Path, RunReport], tmp_path: Path) -> None:
    """Under any name, against what it carries or the range; one of another range, and a damaged one, are not right."""
    alone = Path(shutil.copyfile(whole[0] / CARDS, tmp_path / "cards.pdf"))
    table = whole[0] / TO_BUY
    for against in (Against(), Against(found=of_two())):
        assert [each.problems for each in check([alone, table], against, METRICS)] == [(), ()]
    (other,) = check([alone], Against(found=of_two("31 cm")), METRICS)
    assert other.problems
    foreign = replace(of_two(), kits=of_two().kits[:1])
    (other,) = check([alone], Against(found=foreign), METRICS)
    assert other.problems == ("carries the inputs of another kit than the one given",)
    alone.write_bytes(alone.read_bytes().replace(b"Heron frames", b"Heron flames"))
    (damaged,) = check([alone], Against(), METRICS)
    assert damaged.problems
    table = tmp_path / TO_BUY
    table.write_bytes(b'"kit')
    (damaged,) = check([table], Against(), METRICS)
    assert damaged.problems
