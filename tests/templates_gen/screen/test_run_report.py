"""What `make RANGE` says at its end: what to do with the folder in order, each thing once."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest
from commands import run
from kits import font_metrics
from pypdf import PdfReader

from templates_gen.files.run import RunReport, make_run
from templates_gen.inputs import stock_file
from templates_gen.inputs.range_file import load_range, write_range
from templates_gen.screen.run_report import run_text, run_values

METRICS = font_metrics()


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, RunReport]:
    """Two kits of the range to start from, one of them with some legal words, made from the built-in stock."""
    folder = tmp_path_factory.mktemp("run")
    file = folder / "weir.toml"
    write_range(file)
    text = file.read_text(encoding="utf-8").replace("copies = 10 ", "copies = 3 ")
    file.write_text(text + 'legal = {maker = "Shop by the Weir", care = "by hand"}\n', encoding="utf-8")
    found = load_range(file).of(["Weir frame, small", "Weir frame, large"])
    return folder / "weir", make_run(found, folder / "weir", METRICS, stock=stock_file.built_in())


@pytest.fixture(scope="module")
def said(made: tuple[Path, RunReport]) -> list[str]:
    """The lines."""
    return run_text(made[1]).split("\n")


def test_what_is_done_stands_in_its_order(said: list[str]) -> None:
    """Print, cut, buy, fill in, mind; then what was proven and what is new."""
    words = ("Print:", "Cut:", "Buy:", "Fill in:", "Mind:", "Proven:", "In the folder:")
    places = [next(k for k, line in enumerate(said) if line.strip().startswith(word)) for word in words]
    assert places == sorted(places)
    assert places[0] == 0


def test_sheets_to_print_are_those_of_the_files(made: tuple[Path, RunReport], said: list[str]) -> None:
    """Pages of each file and how often, counted by pypdf; together what the next line says."""
    folder, _ = made
    files = re.findall(r"(print-\d+-times?\.pdf) \((\d+) sheets?, (?:once|(\d+) times(?: each)?)\)", said[0])
    assert {file for file, _, _ in files} == {path.name for path in folder.glob("print-*.pdf")}
    together = 0
    for file, sheets, times in files:
        assert len(PdfReader(folder / file).pages) == int(sheets)
        assert file == ("print-1-time.pdf" if not times else f"print-{times}-times.pdf")
        together += int(sheets) * int(times or 1)
    assert f"Together {together} sheets of paper; each set by itself would take " in said[1]
    assert "begins print-1-time.pdf" in said[0]


def test_no_sheet_of_a_kits_folder_is_to_be_printed_for_a_box(said: list[str]) -> None:
    """Neither kit.pdf nor what lies in the boxes is named; the winding sheet, which does not, is."""
    text = "\n".join(said)
    for file in ("kit.pdf", "label.pdf", "leaflet.pdf", "strips.pdf", "weaving-grid.pdf", "help.pdf"):
        assert file not in text
    assert "Only there, for yourself: winding.pdf." in text


def test_every_file_of_the_run_is_named(made: tuple[Path, RunReport], said: list[str]) -> None:
    """Nothing lies in the folder of which nobody says what it is for; names in the text are those of files."""
    folder, _ = made
    text = "\n".join(said)
    beside = {path.name for path in folder.iterdir() if path.suffix == ".pdf" and not path.name.startswith("job")}
    assert {name for name in beside if name not in text} == set()
    every = {path.name for path in folder.rglob("*") if path.is_file()}
    assert set(re.findall(r"[\w.-]+\.(?:pdf|csv)\b", text)) <= every


def test_legal_words_are_one_line_for_those_who_lack_the_same(said: list[str]) -> None:
    """The large kit has a maker and care, the small one nothing; neither is repeated under what to mind."""
    (small, large) = (line for line in said if line.startswith("Fill in:"))
    assert "maker, address, contact" in small
    assert "on the legal card of Weir frame, small," in small
    assert (
        "Fill in: address, contact, batch, warp_fibre, weft_fibre, age on the legal card of Weir frame, large," in large
    )
    assert "legal card has lines" not in "\n".join(said)


def test_each_warning_is_said_once(made: tuple[Path, RunReport], said: list[str]) -> None:
    """With the names of its parts; without names of kits where it is said of all, else with them."""
    begin = said.index("Mind:") + 1
    mind = [line for line in said[begin:] if line.startswith("  ")]
    notes = [line.rpartition("Take care: ")[2] for line in mind]
    assert len(notes) == len(set(notes))
    wrap = [line for line in mind if "wrap = {turns" in line]
    assert [line.partition(": ")[0].strip() for line in wrap] == ["Comb, Winding comb, near end, Winding comb, far end"]
    assert any(line.startswith("  Weir frame, large: shed-stick is not in the box") for line in mind)
    of_report = {note for each in made[1].kits for note in each.report.notes if note not in each.report.board_notes}
    text = "\n".join(said)
    assert all(note.partition(": ")[2] in text or "legal card" in note for note in of_report)


def test_programs_get_the_same(made: tuple[Path, RunReport]) -> None:
    """Files to print with how often, sums, lines to fill in, what to mind with the names of kits."""
    folder, report = made
    values: dict[str, Any] = json.loads(json.dumps(run_values(report, folder)))
    assert sum(each["sheets"] * each["times"] for each in values["print"]) == values["sheets"]
    assert values["least"] <= values["sheets"] < values["singly"]
    assert 0 < values["waste"] < 1
    assert values["fill_in"][0]["kits"] == ["Weir frame, small"]
    assert values["fill_in"][1]["keys"] == ["address", "contact", "batch", "warp_fibre", "weft_fibre", "age"]
    assert {"kits", "note"} == set(values["mind"][0])
    assert any(each["kits"] == ["Weir frame, large"] for each in values["mind"])


def test_parts_that_are_named_are_told_as_ever(tmp_path: Path) -> None:
    """With --only there is no print run: each kit says what of it to print."""
    file = tmp_path / "weir.toml"
    write_range(file)
    only = ("--only", "frame-check", "--kit", "Weir frame, small")
    text = run("make", file, "-o", tmp_path / "weir", *only).stdout
    assert "weir-frame-small: 10 boxes\n  Print: frame-check.pdf (1 sheet), at 100 %." in text
    assert "Together" not in text
    assert "Fill in" not in text
    values = json.loads(run("make", file, "-o", tmp_path / "weir", *only, "--json").stdout)
    assert values["print"] == []
    assert values["sheets"] == 0
