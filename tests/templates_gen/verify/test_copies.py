"""Parts that are needed more than once: on the boards, on the job sheet, in the time, and in the proof."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace

import pytest
from kits import NOTCHED, font_metrics, plan_of

import templates_gen.files.board_drawings as module
from layout.cutting.job.parts_list import parts_section
from layout.cutting.job.work import work_of
from layout.cutting.products import CUT_PRODUCTS, CutProduct
from layout.cutting.stock.stock import Stock
from layout.drawing.shapes import Text
from layout.messages.english import ENGLISH
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.files.board_drawings import BoardDrawings
from templates_gen.files.board_records import JOB_FILE
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs.stock_file import built_in
from templates_gen.lettering.outlines import outlined

SPEEDS = {"engrave": 200.0, "score": 60.0, "cut": 12.0}
LARGE = replace(built_in(), width=600.0, height=900.0, speeds=SPEEDS)
KIT: dict[str, object] = NOTCHED | {"frame.thickness": "10 mm"}
LAYERS = 4  # of 3 mm, to reach 10 mm


def planned() -> Plan:
    """The test kit with notched ends of 10 mm, still to be made."""
    return plan_of(KIT)


def files(stock: Stock = LARGE) -> Outputs:
    """The files of its boards and its job sheet."""
    return Outputs(planned(), font_metrics(), ("board", "job"), stock)


def boards(stock: Stock = LARGE) -> BoardDrawings:
    """What is drawn for them."""
    found = files(stock).boards
    assert found is not None
    return found


@pytest.mark.parametrize("height", [900.0, 450.0])
def test_every_layer_lies_on_the_boards(height: float) -> None:
    """Four bars for each end, on one board or several; everything else once."""
    found = Counter(p.part.name for pieces in boards(replace(LARGE, height=height)).boards.sheets for p in pieces[:-1])
    assert {name: count for name, count in found.items() if count > 1} == {
        "end-bar-near": LAYERS,
        "end-bar-far": LAYERS,
    }


def test_the_job_sheet_counts_and_times_every_layer() -> None:
    """So many parts, with their numbers, and the time of all their lines: four times that of one bar of each end."""
    made = boards()
    list_ = parts_section(made.job, 1, 166.0, ENGLISH, font_metrics())
    words = " ".join(shape.words for shape in list_.shapes if isinstance(shape, Text))
    found = re.findall(r"\d ([A-Z][a-z, ]+) [\d.]+ x [\d.]+ x (\d+)", words)
    assert {title: int(count) for title, count in found} == {
        "Notched bar, near end": LAYERS,
        "Notched bar, far end": LAYERS,
        **dict.fromkeys(("Comb", "Wrap gauge", "Spacing guide", "Shed stick"), 1),
    }
    parts = {each.part.name: each.part for each in made.parts}
    once = [part for name, part in parts.items() if not name.startswith("end-bar")]
    wanted = [*once, *(part for name, part in parts.items() if name.startswith("end-bar") for _ in range(LAYERS))]
    assert made.job.work.cut == pytest.approx(sum(work_of(part.shapes).cut for part in wanted))
    assert made.job.work.score == pytest.approx(sum(work_of(part.shapes).score for part in wanted))


@pytest.mark.parametrize("number", [1, 3, 5])
def test_the_proof_misses_a_layer_by_itself(number: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """A builder that places another number of bars draws boards and job sheet alike; the proof counts for itself."""
    spoilt: dict[str, CutProduct] = {**CUT_PRODUCTS}
    spoilt["end-bars"] = spoilt["end-bars"]._replace(copies=lambda *_: number)
    monkeypatch.setattr(module, "CUT_PRODUCTS", spoilt)
    output = files().output(JOB_FILE)
    problems = "; ".join(findings(planned(), output, read(output, write(output))).sentences)
    assert f"is listed {number} times where kit and stock ask for {LAYERS}" in problems


def test_boards_and_job_sheet_with_copies_are_proven() -> None:
    """Nothing is found wrong with them."""
    made = files()
    for file in made.files:
        output = made.output(file)
        result = findings(planned(), output, read(output, write(output)))
        assert (result.problems, result.sound) == ((), True)


def test_more_layers_than_a_hand_glues_are_refused() -> None:
    """Ends of 10 mm of a film of 0.1 mm: one sentence, and what it offers works."""
    product = CUT_PRODUCTS["end-bars"]
    with pytest.raises(FieldError, match=r"thickness: needs .* at most 60 layers .* got 0.1 mm; .* = \"1 mm\""):
        product.builds(planned(), replace(LARGE, thickness=0.1), font_metrics())
    assert product.copies(planned(), replace(LARGE, thickness=1.0)) == 10
    assert outlined(boards(replace(LARGE, thickness=1.0)).boards.sheet(1)).shapes
