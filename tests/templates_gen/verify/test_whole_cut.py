"""A kit that lacks a part for the cutter, or a drawing nobody said it had to do without, is never called whole."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from kits import KINDS, font_metrics, parts_of, plan_of

import templates_gen.files.cut_drawings as cut_drawings_module
import templates_gen.files.drawings as drawings_module
from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.plan import plan
from layout.products import suiting
from layout.values.errors import FieldError
from templates_gen.files.check import Against, check
from templates_gen.files.generate import make
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.outputs import Outputs
from templates_gen.files.proven import ProofError
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.verify.whole import lacking
from templates_gen.verify.whole_cut import CUT

PATCH = pytest.MonkeyPatch
ROUND = ("comb", "winding-comb", "wrap-gauge-cut", "spacing-guide-cut", "shed-stick", "trial-cut")
CHECK = "square-check"
KIND_OF = dict.fromkeys(ROUND, "demo") | {"end-bars": "notched ends", "peg-jig": "pegged ends"}


@cache
def outputs_of(kind: str) -> Outputs:
    """All files of a kit of that kind, its parts cut from the stock that is built in."""
    planned = plan(kitfile.demo()) if kind == "demo" else plan_of(KINDS[kind])
    return Outputs(planned, font_metrics(), stock=stockfile.built_in())


def said(outputs: Outputs, change: Callable[[dict[str, tuple[str, ...]]], object] = lambda _: None) -> str:
    """What the kit must be said to lack, its files changed by `change`."""
    made = parts_of(outputs)
    change(made)
    return "; ".join(map(str, lacking(outputs.plan.kit, made, outputs.without, stockfile.built_in())))


def test_every_cut_product_stands_in_the_second_list() -> None:
    """What can be cut and what a whole kit must have cut are known apart, and name the same products."""
    assert set(CUT_PRODUCTS) == set(CUT) == {*KIND_OF, CHECK}


def test_a_check_of_the_cutter_is_made_only_where_it_is_asked_for() -> None:
    """A whole kit has none and lacks none; asked for, it comes in every form, on no board."""
    outputs = outputs_of("demo")
    assert not any(file.startswith(CHECK) for file in outputs.files)
    asked = Outputs(outputs.plan, font_metrics(), (CHECK, "board"), stock=stockfile.built_in())
    own = [file for file in asked.files if file.startswith(CHECK)]
    assert [file.rpartition(".")[2] for file in own] == ["svg", "dxf", "pdf"]
    boards = [asked.output(file) for file in asked.files if file.startswith("board-")]
    assert boards
    assert all(CHECK not in board.parts for board in boards)


def test_a_stock_too_small_for_a_check_says_nothing_of_it_unasked() -> None:
    """What nobody asked for is not named as left out; asked for, it is refused."""
    small = replace(stockfile.built_in(), width=130.0, height=130.0)
    outputs = Outputs(plan_of(), font_metrics(), stock=small)
    assert not any(CHECK in note for note in outputs.notes)
    with pytest.raises(FieldError, match="at least 141 mm for this part: Square check"):
        Outputs(plan_of(), font_metrics(), (CHECK,), stock=replace(small, grain="none")).files  # noqa: B018


@pytest.mark.parametrize("kind", ["demo", *KINDS])
def test_a_whole_kit_lacks_nothing_to_cut(kind: str) -> None:
    """Of every kind of frame, the files for the cutter and the parts in each are those of the second list."""
    assert said(outputs_of(kind)) == ""


@pytest.mark.parametrize("name", KIND_OF)
def test_a_cut_product_left_out_rings(name: str, monkeypatch: PATCH) -> None:
    """A product that is lost from the list is missed, since nothing said that the stock does not allow it."""
    planned = outputs_of(KIND_OF[name]).plan
    rest = tuple(each for each in cut_suiting(planned) if each != name)
    monkeypatch.setattr(cut_drawings_module, "cut_suiting", lambda _: rest)
    outputs = Outputs(planned, font_metrics(), stock=stockfile.built_in())
    assert said(outputs) == f"{name} is missing, which this kit must have for the cutter"


def test_nothing_is_kept_of_a_kit_that_lacks_a_comb(monkeypatch: PATCH, tmp_path: Path) -> None:
    """`make` refuses it before anything is kept."""
    monkeypatch.setattr(cut_drawings_module, "cut_suiting", lambda _: ("trial-cut",))
    with pytest.raises(ProofError, match="would not be whole: comb is missing"):
        make(plan_of(), tmp_path, font_metrics(), stock=stockfile.built_in())
    assert list(tmp_path.iterdir()) == []


def test_what_the_stock_does_not_allow_is_not_missed() -> None:
    """On a sheet too short for the stick it is said to be impossible, and the rest is whole."""
    short = replace(stockfile.built_in(), width=300.0)
    outputs = Outputs(plan_of(), font_metrics(), stock=short)
    assert "shed-stick" in outputs.without
    assert said(outputs) == ""


@pytest.mark.parametrize("form", ["svg", "dxf", "pdf"])
def test_half_a_product_rings(form: str) -> None:
    """Winding combs of which the near one is lost are no winding combs, in whichever file."""
    outputs = outputs_of("demo")
    (file,) = (each for each in outputs.files if each.startswith("winding-comb-") and each.endswith(form))
    found = said(outputs, lambda made: made.update({file: made[file][1:]}))
    assert f"{file} shows winding-comb-far" in found


@pytest.mark.parametrize("form", ["svg", "dxf"])
def test_a_product_in_one_form_rings(form: str) -> None:
    """What is cut comes in both of a cutter's forms."""
    outputs = outputs_of("demo")
    (file,) = (each for each in outputs.files if each.startswith("comb-") and each.endswith(form))
    assert f"comb is missing as {form}" in said(outputs, lambda made: made.pop(file))


def test_a_part_of_another_kind_of_frame_rings() -> None:
    """A drilling jig among the files of a frame without pegs is one too many."""
    stray = "peg-jig-300x93mm-kerf-0.20.svg"
    found = said(outputs_of("demo"), lambda made: made.update({stray: ("peg-jig-near", "peg-jig-far")}))
    assert f"{stray} is there, but this kit does not ask for it" in found


def test_a_grid_left_out_unsaid_rings(monkeypatch: PATCH) -> None:
    """A kit whose beads were counted must have its weaving grid; one without picks has said why not."""
    assert "weaving-grid" in outputs_of("notched ends").without
    planned = outputs_of("demo").plan
    rest = tuple(each for each in suiting(planned) if each != "weaving-grid")
    monkeypatch.setattr(drawings_module, "suiting", lambda _: rest)
    found = said(Outputs(planned, font_metrics(), stock=stockfile.built_in()))
    assert found == "; ".join(f"weaving-grid.{form} is missing, which this kit must have" for form in ("pdf", "svg"))


def test_a_folder_that_lost_a_part_and_its_lines_rings(tmp_path: Path, demo_folder: Path) -> None:
    """Files of a comb taken away together with their lines in the manifest are missed all the same."""
    shutil.copytree(demo_folder, tmp_path, dirs_exist_ok=True)
    stated = json.loads((tmp_path / MANIFEST).read_text("utf-8"))
    stated["files"] = [entry for entry in stated["files"] if not entry["file"].startswith("comb-")]
    (tmp_path / MANIFEST).write_text(json.dumps(stated), "utf-8")
    (first, *_) = check([tmp_path], Against(), font_metrics())
    assert first.problems[0] == "comb is missing, which this kit must have for the cutter"
