"""The pile: every file that would be made, each sheet of it as it is printed, and why there is none."""

from __future__ import annotations

import pytest
from kits import KINDS, font_metrics, plan_of

import templates_gen
from layout.cutting.stock.stock import Stock
from templates_gen.desk.look.sheets import screen_sheet, sheet_name, sheet_names, sheet_view
from templates_gen.files.cut_drawings import CutDrawings
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import stock_file
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.english import ENGLISH
from templates_gen.readers.screen import read
from templates_gen.verify.compare import compare


def stock() -> Stock:
    """What is cut from where nobody says it."""
    return stock_file.built_in()


@pytest.mark.parametrize("name", KINDS)
def test_every_product_is_in_the_pile(name: str) -> None:
    """What is made of a kit and its stock, product by product, and nothing else; each has a title of its own."""
    plan = plan_of(KINDS[name])
    made = {file.product for file in Outputs(plan, font_metrics(), None, stock()).records.values()}
    refused = CutDrawings(plan, font_metrics(), stock()).refused()
    found = [each for each in sheet_names(plan, stock(), ENGLISH) if each.sheets]
    assert {each.file.partition(".")[0] for each in found} == made | set(refused)
    assert len({each.title for each in found}) == len(found)
    assert not any(each.title == each.file.partition(".")[0] for each in found)


def test_nothing_is_cut_without_a_stock() -> None:
    """Only what is printed is left."""
    files = [each.file for each in sheet_names(plan_of(), None)]
    assert files[-2:] == ["kit.pdf", "weaving-grid.pdf"]
    assert not {"comb.pdf", "board.svg", "job.pdf"} & set(files)


def test_what_the_stock_does_not_allow_says_why() -> None:
    """Notched bars that are longer along the grain than the board: once sheets are counted, the sentence."""
    plan = plan_of(KINDS["notched ends"])
    assert set(CutDrawings(plan, font_metrics(), stock()).refused()) == {"end-bars"}
    bars = next(each for each in sheet_names(plan, stock(), ENGLISH, counted=True) if each.file == "end-bars.pdf")
    assert (bars.sheets, bool(bars.why)) == (0, True)


def test_what_is_left_out_says_why() -> None:
    """The weaving grid of a kit without picks, with the line that gives them, in the language of the page."""
    grid = next(each for each in sheet_names(plan_of(), None, catalogue_of("de")) if each.file == "weaving-grid.pdf")
    assert grid.sheets == 0
    assert grid.gives == "weft.beads.number"
    assert grid.why != next(each.why for each in sheet_names(plan_of(), None, ENGLISH) if each.file == grid.file)


def test_sheets_are_counted_where_it_is_asked() -> None:
    """As many as the files hold that are made."""
    plan = plan_of({"paper.size": "148 x 210 mm"})
    outputs = Outputs(plan, font_metrics())
    found = {each.file: each.sheets for each in sheet_names(plan, None, counted=True) if each.sheets}
    assert found == {file: len(outputs.output(file).sheets) for file in outputs.files if file.endswith(".pdf")}
    assert max(found.values()) > 1


def test_one_file_is_counted_alone() -> None:
    """As in the whole pile; nothing where there is no such file."""
    plan = plan_of()
    every = {each.file: each for each in sheet_names(plan, None, ENGLISH, counted=True)}
    assert sheet_name(plan, None, "kit.pdf", ENGLISH) == every["kit.pdf"]
    assert sheet_name(plan, None, "comb.pdf", ENGLISH) is None


def test_a_sheet_is_the_one_that_is_printed() -> None:
    """Shape for shape, for every sheet of the demo kit on paper, and for its boards."""
    plan = templates_gen.plan(templates_gen.load())
    outputs = Outputs(plan, font_metrics(), None, stock())
    drawn = {record.product + "." + record.form: record.draw().sheets for record in outputs.records.values()}
    for name in sheet_names(plan, stock()):
        for number, sheet in enumerate(drawn[name.file], 1):
            view = sheet_view(plan, stock(), name.file, number)
            assert (view.number, view.sheets, view.why) == (number, len(drawn[name.file]), "")
            assert not compare([sheet], [read(view.svg, sheet.name)]).problems


def test_the_nearest_sheet_is_shown() -> None:
    """A number that a file no longer has, since the kit changed, shows its last sheet."""
    assert sheet_view(plan_of(), None, "strip-near.pdf", 9).number == 1
    assert sheet_view(plan_of(), None, "strip-near.pdf", -3).number == 1


@pytest.mark.parametrize("file", ["", "nothing.pdf", "../../etc/passwd", "strip-near", "strip-near.exe", "comb.pdf"])
def test_a_file_that_there_is_not_is_a_sentence(file: str) -> None:
    """Never an exception: the picture says it, and so does `why`."""
    view = sheet_view(plan_of(), None, file, 1, ENGLISH)
    assert (view.sheets, bool(view.why)) == (0, True)
    read(screen_sheet(plan_of(), None, file, 1))
