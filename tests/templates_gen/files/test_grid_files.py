"""The files of the weaving grid: when there are any, what else is said, and how large they are."""

from __future__ import annotations

from pathlib import Path

import pytest
from commands import refused, run
from kits import font_metrics, plan_of

from layout.drawing.metrics import FontMetrics
from templates_gen.files.generate import make
from templates_gen.files.outputs import KIT_FILE, Outputs
from templates_gen.files.proof import write

BEADS: dict[str, object] = {"weft": {"beads": {"number": 22, "over": "5 cm"}}}
LARGE: dict[str, object] = BEADS | {
    "weaving.width": "90 cm",
    "weaving.height": "70 cm",
    "frame.outer_width": "1 m",
    "frame.outer_height": "1 m",
}


def test_the_grid_has_files_of_its_own() -> None:
    """It is printed as often as a design is begun, so that it stays out of the kit's one file."""
    outputs = Outputs(plan_of(BEADS), font_metrics())
    assert {"weaving-grid.pdf", "weaving-grid.svg"} < set(outputs.files)
    assert "weaving-grid" not in outputs.output(KIT_FILE).parts
    assert set(outputs.output("weaving-grid.pdf").parts) == {"weaving-grid"}
    assert outputs.absent == ()


def test_a_kit_without_picks_is_told_what_would_give_it_a_grid(tmp_path: Path, metrics: FontMetrics) -> None:
    """Everything else is made, and one sentence says why there is no grid, with the key that helps; it helps."""
    report = make(plan_of({}), tmp_path, metrics)
    assert all("weaving-grid" not in made.file for made in report.made)
    (said,) = (note for note in report.notes if "weaving-grid" in note)
    assert said.startswith("weaving-grid is left out: no picks are known")
    assert "weft.beads" in said
    assert not any("weaving-grid" in note for note in make(plan_of(BEADS), tmp_path / "2", metrics).notes)


def test_what_was_not_asked_for_is_not_missed() -> None:
    """With --only, nothing is said of what is left out."""
    assert Outputs(plan_of({}), font_metrics(), ["strip-near"]).absent == ()


def test_asking_for_a_grid_that_cannot_be_says_why(tmp_path: Path) -> None:
    """--only weaving-grid for a kit without picks: one sentence with the reason, and nothing is written."""
    kit = tmp_path / "kit.toml"
    run("new", kit)
    text = kit.read_text(encoding="utf-8")
    kit.write_text(text[: text.index("\n[warp]\n")] + text[text.index("\n[paper]\n") :], encoding="utf-8")
    said = refused("make", kit, "-o", tmp_path / "strips", "--only", "weaving-grid")
    assert said.startswith("--only: needs a part that this kit has (")
    assert "no picks are known" in said
    assert not (tmp_path / "strips").exists()


def test_the_demo_kit_has_its_grid(tmp_path: Path) -> None:
    """Made alone, proven, and read back by `check`."""
    made = run("make", "-o", tmp_path, "--only", "weaving-grid", "--list")
    assert made.exit_code == 0
    assert "weaving-grid.pdf  4 sheets" in made.stdout
    assert run("check", tmp_path).exit_code == 0


@pytest.mark.parametrize("form", ["pdf", "svg"])
def test_a_large_grid_is_a_small_file(form: str) -> None:
    """Long lines, not cells: a grid of 225 ends and more than 300 beads, some 70,000 cells, takes under 400 kB."""
    wanted = Outputs(plan_of(LARGE), font_metrics()).output(f"weaving-grid.{form}")
    assert len(write(wanted)) < 400_000
