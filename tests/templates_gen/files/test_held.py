"""What lies in a box is the same everywhere: what cannot be made is in no box, on no list and in no leaflet."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest
from cases import one_in
from cut_plans import stock_with
from hypothesis import given
from hypothesis import strategies as st
from kits import KINDS, font_metrics, kit_of

import layout.parts.held as held_module
from layout.box.weights import packed
from layout.cutting.stock.stock import Stock
from layout.drawing.shapes import Text
from layout.drawing.sheet import Part
from layout.kit.box import CAN_LIE, CUT, Box
from layout.kit.kit import kit_values, read_kit
from layout.parts.class_sheet import Lesson, class_pages
from layout.parts.held import held_each, held_once, is_held
from layout.parts.shop_card import shop_cards
from layout.plan import Plan
from layout.products import PRODUCTS
from templates_gen.document import ReadError
from templates_gen.files.check import Against, check
from templates_gen.files.embedded import embedded_inputs
from templates_gen.files.generate import make
from templates_gen.files.kept import cut_drawings, planned, with_stock
from templates_gen.files.outputs import Outputs
from templates_gen.files.proven import ProofError
from templates_gen.files.run import make_run
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.verify.printed import held as repeated
from templates_gen.verify.whole import lacking
from tests.plain_kits import changed
from tests.yarn_kits import STATED

METRICS = font_metrics()
STOCKS: dict[str, Stock | None] = {
    "none": None,
    "large": stock_with(),
    "usual": stock_with(width=600.0, height=400.0),
    "short": stock_with(width=300.0, height=300.0),
    "tiny": stock_with(width=60.0, height=60.0),
}
"""Boards that hold all parts, some, and none."""

PAPERS = ("", "a3", "148 x 210 mm", "210 x 148 mm")


def boxed(kind: str, paper: str, holds: list[str], once: list[str]) -> Plan:
    """A kit of that kind whose box holds these."""
    kit = kit_of(KINDS[kind] | ({"paper.size": paper} if paper else {}))
    return planned(replace(kit, box=Box(holds=tuple(holds), once=tuple(once))))


@given(
    st.sampled_from(list(KINDS)),
    st.sampled_from(list(STOCKS)),
    st.sampled_from(PAPERS),
    st.dictionaries(st.sampled_from(CAN_LIE), st.booleans()),
)
def test_what_is_held_is_what_can_be_made(kind: str, board: str, paper: str, where: dict[str, bool]) -> None:
    """Over kinds, stocks, papers and box lists: held is what was named and is made, cut or printed; twice the same."""
    stock = STOCKS[board]
    plan = with_stock(
        boxed(kind, paper, [name for name in where if where[name]], [name for name in where if not where[name]]),
        stock,
        METRICS,
    )
    outputs = Outputs(plan, METRICS, stock=stock, boxed=True)
    made = {record.product for record in outputs.records.values()}
    for name in where:
        is_made = name == "start-here" or name in made
        if stock is None and name in CUT:
            is_made = name != "winding-comb" or is_held(plan, name)
        assert is_held(plan, name) == is_made, name
    assert list(held_each(plan)) == repeated.held_each(plan)
    assert list(held_once(plan)) == repeated.held_once(plan)
    said = {note.partition(" ")[0] for note in outputs.box_notes}
    if any(name in ("leaflet", "help", "label") and is_held(plan, name) for name in where):
        assert said == {name for name in where if not is_held(plan, name)}


NAMED = {
    "comb": "Spacing comb",
    "winding-comb": "Winding combs, near and far",
    "shed-stick": "Shed stick, ",
    "spacing-guide-cut": "Spacing guide of wood",
    "wrap-gauge-cut": "Wrap gauge of wood",
}
"""What cut parts are called on lists."""


def words_of(*parts: Part) -> str:
    """All words of parts, in one line."""
    return " ".join(shape.words for part in parts for shape in part.shapes if isinstance(shape, Text))


@pytest.mark.parametrize("lists", ["holds", "once"])
@pytest.mark.parametrize("board", ["large", "short", "tiny"])
def test_no_sheet_names_what_is_refused(board: str, lists: str) -> None:
    """Packing list, shop card, class sheet and leaflet name every cut part that can be had, and no other."""
    stock = STOCKS[board] or stock_with()
    each, run = (("leaflet", "label", *CUT), ()) if lists == "holds" else (("leaflet", "label"), CUT)
    plan = with_stock(boxed("round bars", "", [*each], [*run]), stock, METRICS)
    refused = set(cut_drawings(plan, stock, METRICS).refused(CUT))
    assert plan.refused == refused == {"large": set(), "short": {"shed-stick"}, "tiny": set(CUT)}[board]
    sheets = {
        "class": words_of(*class_pages([plan], Lesson(2, 2), (166.0, 230.0), plan.words, METRICS)),
        "list": words_of(*PRODUCTS["label"].alone(plan, METRICS)),
        "shop": words_of(shop_cards([(plan, packed(plan))], plan.words, METRICS)),
    }
    for sheet, said in sheets.items():
        for name, called in NAMED.items():
            shown = name not in refused and (sheet == "class" or lists == "holds")
            assert (called in said) == shown, (sheet, name, said)
    leaflet = words_of(*PRODUCTS["leaflet"].alone(plan, METRICS))
    assert ("A flat stick, " in leaflet) == ("shed-stick" in refused)
    assert ("Winding combs: " in leaflet) == ("winding-comb" not in refused and lists == "holds")
    assert ("in each slot" in leaflet) == ("comb" not in refused and "spacing-guide-cut" in refused) or lists == "holds"


SHORT = {"box": {"holds": ["shed-stick", "leaflet", "label"], "once": []}}


def test_a_folder_is_read_back_without_what_is_refused(tmp_path: Path) -> None:
    """Made and checked by itself, with its kit, and with another stock, which refuses nothing; the reason is said."""
    kit, short = read_kit(changed(STATED, **SHORT), METRICS), stock_with(width=300.0, height=300.0)
    report = make(planned(kit), tmp_path, METRICS, stock=short)
    assert any(note.startswith("shed-stick is not in the box, nor on any sheet") for note in report.notes)
    assert not any("shed-stick is not made" in note for note in report.notes)
    assert not any(each.problems for each in check([tmp_path], Against(), METRICS))
    assert not any(each.problems for each in check([tmp_path], Against(kit), METRICS))
    assert not any(each.problems for each in check([tmp_path / "leaflet.pdf"], Against(), METRICS))
    other = check([tmp_path / "leaflet.pdf"], Against(stock=stock_with()), METRICS)
    assert other[0].problems
    alone = make(planned(kit), tmp_path / "alone", METRICS, ("leaflet",), stock=short)
    assert (tmp_path / "alone" / "leaflet.pdf").read_bytes() == (tmp_path / "leaflet.pdf").read_bytes()
    assert [note for note in alone.notes if note.startswith("shed-stick is not in the box")]


@pytest.mark.parametrize("known", one_in(3, [("stock", "found"), ("found",), ()]), ids=str)
def test_a_run_is_read_back_without_what_is_refused(known: tuple[str, ...], tmp_path: Path) -> None:
    """Its own files too, with its range and without; the job sheet says what is not there."""
    box = {"holds": ["comb", "shed-stick", "leaflet", "label"], "once": []}
    kit, short = read_kit(changed(STATED, box=box), METRICS), stock_with(width=300.0, height=300.0)
    found = Range("One", (RangeKit(kit, 2, 1),), copies_said=True)
    make_run(found, tmp_path / "run", METRICS, stock=short)
    against = Against(stock=short if "stock" in known else None, found=found if "found" in known else None)
    assert not [each for each in check([tmp_path / "run"], against, METRICS) if each.problems]


@pytest.mark.parametrize("file", ["leaflet", "label"])
def test_alarm_where_a_sheet_names_what_is_refused(file: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A builder that goes by the kit alone is found; so is a stick that was made and is called refused."""
    kit, short = read_kit(changed(STATED, **SHORT), METRICS), stock_with(width=300.0, height=300.0)
    monkeypatch.setattr(held_module, "can_have", lambda *_: True)
    with pytest.raises(ProofError):
        make(planned(kit), tmp_path, METRICS, (file,), stock=short)


def test_alarm_where_what_is_called_refused_is_made() -> None:
    """No whole kit has files of a part that it says it goes without."""
    outputs = Outputs(planned(read_kit(changed(STATED, **SHORT), METRICS)), METRICS, stock=stock_with())
    made = {name: outputs.output(name).parts for name in outputs.files}
    assert not lacking(outputs.plan.kit, made, outputs.without, stock_with())
    assert lacking(outputs.plan.kit, made, outputs.without | {"shed-stick"}, stock_with())


def test_what_a_file_says_it_goes_without_is_a_list_of_cut_parts() -> None:
    """Anything else is no file of ours."""
    kit = kit_values(read_kit(STATED, METRICS))
    for wrong in ("shed-stick", ["strips"], [3], {"comb": 1}, None, [["comb"]]):
        with pytest.raises(ReadError):
            embedded_inputs(json.dumps({"file": "leaflet.pdf", "kit": kit, "without": wrong}), METRICS)
    right = json.dumps({"file": "leaflet.pdf", "kit": kit, "without": ["comb"]})
    assert embedded_inputs(right, METRICS).without == {"comb"}
