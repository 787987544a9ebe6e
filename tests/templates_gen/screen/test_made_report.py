"""What `make` says at its end: what to print, join, cut and mind; every file by --list, all of it by --json."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from commands import run
from kits import FLAT, KINDS, NAILS, TRAVEL, font_metrics, plan_of

from layout.drawing.shapes import Placing, Text
from layout.drawing.sheet import Part, Piece
from layout.messages.english import ENGLISH
from layout.messages.roles import Marking
from layout.messages.roles import Sheet as Said
from layout.paper.choice import Laying
from templates_gen.files.generate import Report
from templates_gen.files.output import joined_of
from templates_gen.files.outputs import Outputs
from templates_gen.files.proven import Made
from templates_gen.files.uses import uses_of
from templates_gen.screen.made_report import made_text

FEW_LINES = 10


def made(file: str, *parts: str, sheets: int = 1, cuts: int = 0) -> Made:
    """A file as a run reports it."""
    return Made(file, "", sheets, (200.0, 280.0), parts, 0, cuts, 0.0)


def test_make_ends_in_a_few_lines(demo_made: Path) -> None:
    """Print, join, cut, mind, proven, and what is new, each in its line; nobody reads a table of 35 files."""
    lines = (demo_made / "said").read_text(encoding="utf-8").splitlines()
    there = {path.name for path in (demo_made / "strips").iterdir()} - {"manifest.json"}
    assert len(lines) <= FEW_LINES
    first = [re.split("[: ]", line)[0] for line in lines if not line.startswith("  ")]
    assert first == ["Into", "Print", "Join", "Cut", "Mind", "Proven", "In"]
    assert set(re.findall(r"[\w.-]+\.(?:pdf|svg|dxf)", " ".join(lines))) <= there
    counts = r"\d+ marks, \d+ outlines to cut, largest deviation 0\.0\d micrometres"
    assert re.fullmatch(rf"Proven: {len(there)} files read back, {counts}\.", lines[-2])
    assert lines[-1] == f"In the folder: {len(there)} new, 0 changed, 0 the same, 0 removed."


def test_what_is_named_is_the_whole_kit(demo_made: Path) -> None:
    """Every part of the kit is in one file to print or to cut; the job sheet says how."""
    files = json.loads((demo_made / "strips" / "manifest.json").read_text(encoding="utf-8"))["files"]
    said = (demo_made / "said").read_text(encoding="utf-8")
    named = [each for each in files if each["file"] in said or each["file"].rpartition(".")[0] + " (svg or" in said]
    assert {part for each in named for part in each["parts"]} == {part for each in files for part in each["parts"]}
    assert "job.pdf says how" in said
    assert "strip-near" not in said


def test_how_to_join_stands_on_the_sheets() -> None:
    """A part in pieces is named with their number and its file; the sentence is on its sheets and not on the screen."""
    for kind in ("round bars", "pegged ends"):
        outputs = Outputs(plan_of(KINDS[kind] | {"paper.size": "148 x 210 mm"}), font_metrics())
        for file in ("strip-near.pdf", "winding.pdf"):
            output = outputs.output(file)
            words = {shape.words for sheet in output.sheets for shape in sheet.shapes if isinstance(shape, Text)}
            numbers = {(k, n) for n in range(2, 9) for k in range(1, n + 1)}
            named = [w for w in words if not w.startswith("Sheet")]
            found = {(k, n) for k, n in numbers if any(w.endswith(f"{k} of {n}") for w in named)}
            assert sum(pieces for _, pieces in output.joined) == len(found)
        assert outputs.output("strip-near.pdf").joined
        assert not any(note.startswith(("Marking strip", "Drilling template")) for note in outputs.notes)


def test_a_low_form_is_to_be_minded() -> None:
    """Where the full strip cannot be made, the screen says why."""
    notes = Outputs(plan_of({"frame.bar_diameter": "5 mm"}), font_metrics(), ["strip-near"]).notes
    why = ENGLISH.say(Said.LOW_FORM, why=ENGLISH.say(Marking.TOO_THIN))
    assert [note.partition(": ")[2] for note in notes] == [why]


def test_list_and_json_hold_every_file(tmp_path: Path) -> None:
    """--list puts the table of all files before the few lines; --json holds what the manifest does, and the rest."""
    few = ("--only", "strip-far", "--only", "comb")
    plain = run("make", "-o", tmp_path / "strips", *few).stdout.splitlines()
    there = {path.name for path in (tmp_path / "strips").iterdir()} - {"manifest.json"}
    rows = run("make", "-o", tmp_path / "strips", *few, "--list").stdout.splitlines()
    assert {row.split()[0] for row in rows[1 : 1 + len(there)]} == there
    assert [row for row in rows if row in plain] == [rows[0], *rows[1 + len(there) : -1]]
    result = run("make", "-o", tmp_path / "strips", *few, "--json")
    values: dict[str, Any] = json.loads(result.stdout)
    assert result.stderr == ""
    assert values["files"] == json.loads((tmp_path / "strips" / "manifest.json").read_text("utf-8"))["files"]
    assert values["print"] == ["strip-far.pdf"]
    assert [Path(name).suffix for name in values["cut"]] == [".svg", ".dxf"]
    assert sorted(values["changes"]["same"]) == sorted(there)
    assert values["cuts"] == sum(each["cuts"] for each in values["files"]) > 0
    assert values["folder"] == str(tmp_path / "strips")
    assert any("teeth" in note for note in values["notes"])
    page = (Path(__file__).parents[3] / "docs" / "commands.md").read_text("utf-8")
    section = page[page.index("## make") : page.index("$ templates-gen make")]
    assert [key for key in values if f"`{key}`" not in section] == []


def test_warnings_of_the_plan_are_minded(tmp_path: Path) -> None:
    """What a plan warns of, `make` says too: a bar that bends too far is not found after the warp is on."""
    kit = tmp_path / "kit.toml"
    run("new", kit)
    kit.write_text(kit.read_text("utf-8").replace('bar_diameter = "15 mm"', 'bar_diameter = "5 mm"'), encoding="utf-8")
    warnings = [said for said in json.loads(run("plan", kit, "--json").stdout)["warnings"] if "bends" in said]
    said = run("make", kit, "-o", tmp_path / "strips", "--only", "frame-check")
    assert said.exit_code == 0, said.output
    lines = said.stdout.splitlines()
    at = lines.index("Mind:")
    assert warnings
    assert [line for line in lines if line.startswith("  ")] == lines[at + 1 : at + 1 + len(warnings)]
    assert {line.strip() for line in lines} >= set(warnings)
    values = json.loads(run("make", kit, "-o", tmp_path / "strips", "--only", "frame-check", "--json").stdout)
    assert values["warnings"] == warnings


def test_what_a_larger_file_holds_is_not_printed_twice() -> None:
    """The one file of all guides stands for them; what it lacks is named beside it; drawings without paper are not."""
    few = [made("a.pdf", "a"), made("a.svg", "a"), made("grid.pdf", "grid", sheets=4), made("kit.pdf", "a", "b")]
    assert [each.file for each in uses_of(few).prints] == ["kit.pdf", "grid.pdf"]
    assert [each.file for each in uses_of(few[:2]).prints] == ["a.pdf"]
    assert [each.file for each in uses_of(few[1:2]).prints] == ["a.svg"]
    assert "Print: kit.pdf (1 sheet), grid.pdf (4 sheets), at 100 %." in made_text(Report(tuple(few), ()))


def test_a_drawing_of_what_is_cut_is_printed_only_where_nothing_cuts_it() -> None:
    """A comb's PDF is to look at; alone it is what there is."""
    drawing, cut = made("comb-9x9mm.pdf", "comb", cuts=2), made("comb-9x9mm.svg", "comb", cuts=1)
    both, alone = uses_of([cut, drawing]), uses_of([drawing])
    assert (both.prints, [each.files for each in both.cuts]) == ((), [("comb-9x9mm.svg",)])
    assert ([each.file for each in alone.prints], alone.cuts) == (["comb-9x9mm.pdf"], ())


def test_the_trial_cut_comes_first_and_boards_hold_the_rest() -> None:
    """Parts that lie on a board have no line of their own; of many boards the first is named, and how many more."""
    files = ["comb-9x9mm.svg", "trial-cut-9x9mm.svg", "board-1of2-9x9mm.svg", "board-1of2-9x9mm.dxf", "job.pdf"]
    parts = ["comb", "trial-cut", "comb", "comb", "job-board"]
    several = [made(file, part, cuts=file != "job.pdf") for file, part in zip(files, parts, strict=True)]
    said = made_text(Report(tuple(several), ()))
    assert "Cut: trial-cut-9x9mm.svg first, then board-1of2-9x9mm (svg or dxf); job.pdf says how." in said
    many = [made(f"board-{k}of9-9x9mm.dxf", "comb", cuts=1) for k in range(1, 10)]
    assert "Cut: board-1of9-9x9mm.dxf and 8 more." in made_text(Report(tuple(many), ()))
    assert "Cut: job.pdf says what, and how." in made_text(Report((several[-1],), ()))
    assert "Cut:" not in made_text(Report((made("kit.pdf", "a"),), ()))


def test_nothing_is_said_of_what_there_is_not() -> None:
    """Without pieces, cuts and warnings there are three lines."""
    said = made_text(Report((made("kit.pdf", "a"),), ())).splitlines()
    assert [line.split(":")[0] for line in said] == ["Print", "Proven", "In the folder"]
    noted = Report((made("kit.pdf", "a"),), ("Boards: two.", "x is left out."), board_notes=("Boards: two.",))
    assert made_text(noted).splitlines()[1:4] == ["  Boards: two.", "Mind:", "  x is left out."]
    assert replace(noted, notes=()).notes == ()


@pytest.mark.parametrize("only", ["board", "job.pdf", "strip-near.svg"])
def test_every_choice_of_files_says_what_to_do(only: str, tmp_path: Path) -> None:
    """Whatever is asked for, a line says what to do with it."""
    said = run("make", "-o", tmp_path / "strips", "--only", only)
    assert said.exit_code == 0
    assert re.search(rf"^(Print|Cut): .*{only.partition('.')[0]}", said.stdout, re.MULTILINE)


def test_two_parts_in_pieces_on_shared_sheets_are_two_joins() -> None:
    """Pieces are counted part by part, whichever sheets they share; a part in one piece is not joined."""

    def part(name: str) -> Piece:
        return Piece(Part(name, name.upper(), (), (), (0.0, 0.0, 1.0, 1.0)), Placing())

    sheets = ((part("a"), part("b"), part("a")), (part("b"), part("b"), part("c")))
    layings = [Laying("tiles", sheets[0][0].part, sheets, ()), Laying("straight", sheets[0][0].part, sheets, ())]
    assert joined_of(layings) == (("A", 2), ("B", 3))


@pytest.mark.parametrize("paper", ["common", "148 x 210 mm", "210 x 148 mm"])
@pytest.mark.parametrize("kind", [{}, FLAT, NAILS], ids=["bars", "flat", "nails"])
def test_energy_in_a_tightened_frame_is_said_on_the_screen(kind: dict[str, object], paper: str) -> None:
    """Rods and wedges can fly: whoever makes the sheets reads so once, and nothing of it on a frame without them."""
    for changes, times in ((TRAVEL, 1), ({}, 0)):
        notes = Outputs(plan_of(kind | changes | {"paper.size": paper}), font_metrics(), ["kit"]).notes
        assert sum("stores energy" in note for note in notes) == times
