"""The door for Python: what docs/python.md shows, run as it stands, and each function by itself."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from pages import blocks_of, write_files

import templates_gen
from layout.values.errors import FieldError, LayoutError
from templates_gen.desk.look.sheets import sheet_names
from templates_gen.files import one_file
from templates_gen.files.outputs import kept_outputs
from templates_gen.files.proven import ProofError
from templates_gen.inputs.families import products_of
from templates_gen.lettering.fonts import metrics

ROOT = Path(__file__).parents[2]
PAGE = (ROOT / "docs" / "python.md").read_text(encoding="utf-8")
ENVIRONMENT = {**os.environ, "PYTHONPATH": str(ROOT)}


def test_the_code_of_the_page_runs_as_it_stands(tmp_path: Path) -> None:
    """In a process of its own: it loads, plans, writes one sheet, makes all and checks them; the two are one file.

    Then it makes a run of the range that its own page shows, and orders of it.
    """
    code = "".join(blocks_of(PAGE, "python"))
    for page in ("ranges", "orders"):
        write_files((ROOT / "docs" / f"{page}.md").read_text("utf-8"), tmp_path)
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=tmp_path, env=ENVIRONMENT, capture_output=True, text=True, check=True
    )
    one = r".+ \d+ ends, [\d.]+ mm wide\n\d+ files, the worst [\d.e-]+ mm off\n"
    run = "Weir frame, small 2 boxes in weir-frame-small\n"
    assert re.fullmatch(one + run + r"(100\d made \d sheets\n){3}", done.stdout)
    assert (tmp_path / "orders" / "report.csv").exists()
    assert (tmp_path / "run" / "print-1-time.pdf").exists()
    assert (tmp_path / "run" / "weir-frame-small" / "leaflet.pdf").exists()
    alone = (tmp_path / "strip-near.svg").read_bytes()
    assert alone == (tmp_path / "strips" / "strip-near.svg").read_bytes()


def test_importing_the_door_imports_nothing_else() -> None:
    """Neither a library nor a module of ours, nor what typing would need."""
    code = "import sys; before = set(sys.modules); import templates_gen; print(sorted(set(sys.modules) - before))"
    done = subprocess.run([sys.executable, "-c", code], env=ENVIRONMENT, capture_output=True, text=True, check=True)
    new = set(re.findall(r"'(.*?)'", done.stdout))
    assert {name for name in new if name.partition(".")[0] not in sys.stdlib_module_names} == {"templates_gen"}


def test_the_module_is_the_command() -> None:
    """`python -m templates_gen` is `templates-gen`."""
    command = [sys.executable, "-m", "templates_gen", "--help"]
    done = subprocess.run(command, env=ENVIRONMENT, capture_output=True, text=True, check=True)
    assert done.stdout.startswith("Usage: templates-gen ")


@pytest.mark.parametrize(
    "file", ["", "strip-nearer.svg", "strip-near", "strip-near.dxf", "strips.svg", "board.svg,job.pdf", "../a.pdf"]
)
def test_what_is_not_one_file_is_refused(file: str) -> None:
    """One sentence with an example, and nothing drawn."""
    with pytest.raises(FieldError, match="for example"):
        templates_gen.sheet(templates_gen.load(), file)


def test_every_file_of_the_pile_can_be_had_alone() -> None:
    """By the name that the desk shows it by: the file of both strips too, whose name also means all files of strips."""
    plan, stock = templates_gen.plan(templates_gen.load()), templates_gen.load_stock()
    for each in sheet_names(plan, stock):
        found = kept_outputs(plan, metrics(), products_of(plan, (each.file,)), stock).records
        assert each.file in found or len(found) == 1
    assert templates_gen.sheet(templates_gen.load(), "strips.pdf").startswith(b"%PDF")


def test_one_sheet_is_proven(monkeypatch: pytest.MonkeyPatch) -> None:
    """A writer that loses its last line is found out before anybody gets the bytes."""
    right = one_file.write

    def wrong(output: object) -> bytes:
        head, _, tail = right(output).rpartition(b"<path")  # type: ignore[arg-type]
        return head + tail[tail.index(b"/>") + 2 :]

    monkeypatch.setattr(one_file, "write", wrong)
    with pytest.raises(ProofError, match="strip-near"):
        templates_gen.sheet(templates_gen.load(), "strip-near.svg")


def test_files_are_read_and_made_by_options_as_the_command_has_them(tmp_path: Path) -> None:
    """A path that cannot be read is refused; `only` makes what it names; `check` names a file that is not there."""
    with pytest.raises(LayoutError, match=r"nowhere\.toml"):
        templates_gen.load(tmp_path / "nowhere.toml")
    report = templates_gen.make(templates_gen.load(), tmp_path / "out", ["strip-far.svg"])
    assert [made.file for made in report.made] == ["strip-far.svg"]
    right, missing = templates_gen.check(tmp_path / "out" / "strip-far.svg", tmp_path / "other.svg")
    assert (right.problems, missing.unread) == ((), True)


def test_readings_that_contradict_still_give_proven_sheets() -> None:
    """Beads higher than the weft's thickness allows: the plan warns and names them, and a strip is proven."""
    kit = templates_gen.load()
    weft = replace(kit.amounts.weft, beads=replace(kit.amounts.weft.beads, number=10))
    kit = replace(kit, amounts=replace(kit.amounts, weft=weft))
    assert any("weft.beads" in warning for warning in templates_gen.plan(kit).warnings)
    assert templates_gen.sheet(kit, "strip-near.svg")
