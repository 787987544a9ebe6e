"""The first sheet of a run says where each part lies, goes by the leaflet for what is not there, and is proven."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import KINDS, font_metrics, kit_of

import layout.paper.first_sheet as first_module
from layout.box.shop import Shop
from layout.drawing.shapes import Text
from layout.kit.box import PRINTED, START, Box
from layout.paper.sheets import Printed
from layout.paper.sheets import printed as laid_out
from layout.parts.start_here import Contents
from layout.plan import Plan
from templates_gen.codes.modules import codes_for
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.files.kept import planned
from templates_gen.files.output import Output, titled
from templates_gen.files.print_files import print_files
from templates_gen.files.run_about import SoldKit
from templates_gen.verify.prove import prove

METRICS = font_metrics()


def kit_with(box: Box, kind: str = "round bars", **more: str) -> Plan:
    """A kit whose box holds that."""
    changes = {f"paper.{key}": value for key, value in more.items()}
    return planned(replace(kit_of(KINDS[kind] | changes), box=box))


def printed(plan: Plan, times: int = 3) -> dict[str, Output]:
    """What a run of that kit prints, by the names of its files."""
    files = print_files("a range", [SoldKit(plan, times, Shop())], METRICS)
    return {name: files.output(name) for name in files.names}


def sheets_of(plan: Plan) -> list[Printed]:
    """The first sheet, or sheets, of that kit in a run."""
    layings = PrintedDrawings(plan, METRICS).layings(START)
    about = titled(plan, "start", "start.pdf")
    return list(laid_out(plan, layings, METRICS, lambda total: codes_for(about, plan.kit.paper, total)))


def start_of(plan: Plan) -> tuple[str, ...]:
    """What is wrong with it, by the second computation alone."""
    sheets = sheets_of(plan)
    assert sheets
    return prove(plan, [each.sheet for each in sheets], [each.pieces for each in sheets], on_paper=True).sentences


def steps_on(plan: Plan) -> list[str]:
    """All its words."""
    return [shape.words for each in sheets_of(plan) for shape in each.sheet.shapes if isinstance(shape, Text)]


def test_what_lies_where_by_hand() -> None:
    """The usual box: gauge, strips and guides in it, the frame check once, the rest by the leaflet's steps."""
    words = steps_on(kit_with(Box()))
    assert words.count("in the box") == 3
    assert words.count("one for all") == 1
    assert [each for each in words if each.startswith("leaflet, step")] == [
        f"leaflet, step {number}" for number in (4, 7, 9, 11, 12)
    ]
    assert not [each for each in words if each.startswith(("sheet ", "sheets "))]


def test_what_is_nowhere_is_left_out() -> None:
    """Without a leaflet, steps whose part lies nowhere are not there, and no gauge is ever in the leaflet."""
    bare = steps_on(kit_with(Box(holds=(), once=("start-here",))))
    assert not {"Frame check", "Wrap gauge", "Marking strips", "Spacing guides", "Winding"} & set(bare)
    assert {"Shed stick, heading rows", "Leashes", "Weaving", "Finish"} <= set(bare)
    led = steps_on(kit_with(Box(holds=("leaflet",), once=("start-here",))))
    assert {"Check the frame", "Mark the bars", "Wind", "Space the ends"} <= set(led)
    assert "Wrap gauge" not in led


def test_it_is_printed_as_often_as_it_is_needed() -> None:
    """Once for a run, or in each box."""
    once = {name: output.parts for name, output in printed(kit_with(Box())).items()}
    assert [name for name, parts in once.items() if START in parts] == ["print-1-time.pdf"]
    each = {name: output.parts for name, output in printed(kit_with(Box(holds=(START,), once=()))).items()}
    assert [name for name, parts in each.items() if START in parts] == ["print-3-times.pdf"]


@given(
    st.sampled_from(list(KINDS)),
    st.sampled_from(("common", "148 x 210 mm", "letter", "210 x 148 mm")),
    st.sampled_from(("en", "de", "es", "fr")),
    st.dictionaries(st.sampled_from([name for name in PRINTED if name != START]), st.booleans()),
)
def test_it_is_proven_for_every_box(kind: str, size: str, language: str, where: dict[str, bool]) -> None:
    """Over kinds, papers, languages and lists of boxes."""
    holds, run = ([name for name in where if where[name] is there] for there in (True, False))
    plan = kit_with(Box(holds=tuple(holds), once=(*run, START)), kind, size=size, language=language)
    assert start_of(plan) == ()


def _wrong(change: str, contents: Contents) -> Contents:
    steps, places = contents.steps, dict(contents.places or {})
    if change == "a step less":
        return contents._replace(steps=steps[1:])
    if change == "another place":
        return contents._replace(places=places | {"2": places["1"]})
    if change == "another step of the leaflet":
        return contents._replace(places=places | {"6": places["4"]})
    if change == "no place":
        return contents._replace(places=places | {"G": ""})
    if change == "a sheet":
        return contents._replace(places=None, sheets={"1": (2, 2)})
    return contents._replace(steps=(steps[0]._replace(does="Drill."), *steps[1:]))


@pytest.mark.parametrize(
    "change",
    ["a step less", "another place", "another step of the leaflet", "no place", "a sheet", "other words"],
)
def test_alarm(change: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever else the sheet says, it is found."""
    right = first_module.contents_in_run
    assert start_of(kit_with(Box())) == ()
    monkeypatch.setattr(first_module, "contents_in_run", lambda plan: _wrong(change, right(plan)))
    assert start_of(kit_with(Box())) != ()
