"""A print run: parts of all boxes placed together, proven copy by copy, and every change of a sheet is found."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from cases import one_in
from hypothesis import given
from hypothesis import strategies as st
from kits import FLAT, NOTCHED, PEGGED, font_metrics, kit_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text
from layout.drawing.sheet import Sheet
from layout.run.bed import run_bed
from layout.run.cuts import Cut
from layout.run.run import Run, RunKit
from layout.run.run_list import Printing, Totals, run_list_pages
from layout.run.run_sheet import Gutter, run_sheet
from templates_gen.files.kept import planned, printed_drawings
from templates_gen.files.print_files import PrintFiles
from templates_gen.files.print_pages import PrintPages
from templates_gen.files.print_proof import print_findings
from templates_gen.files.proof import read, write
from templates_gen.files.run_about import SoldKit
from templates_gen.inputs.kit_file import demo
from templates_gen.inputs.range_file import NO_SHOP
from templates_gen.messages.english import ENGLISH
from templates_gen.verify.run import pages as verified
from templates_gen.verify.run.counts import wrong_copies, wrong_names
from templates_gen.verify.run.list_cells import Listed, cells_of
from templates_gen.verify.run.pages import PlacedPage
from templates_gen.verify.run.placed import prove_placed

METRICS = font_metrics()


def files_of(*kits: tuple[Any, int]) -> PrintFiles:
    """What a run of these kits prints."""
    plans = [(planned(kit), copies) for kit, copies in kits]
    run = Run("Some frames", tuple(RunKit(plan, copies) for plan, copies in plans))
    sold = tuple(SoldKit(plan, copies, NO_SHOP) for plan, copies in plans)
    return PrintFiles(run, sold, lambda k, name: printed_drawings(plans[k][0], METRICS).layings(name), METRICS)


def wrong_of(files: PrintFiles) -> list[str]:
    """What the proof says of every file as it is read back from its bytes."""
    said: list[str] = []
    for name in files.names:
        output = files.output(name)
        said += print_findings(files, output, read(output, write(output))).sentences
    return said


@pytest.mark.parametrize(
    "changes",
    one_in(
        3,
        [
            {},
            {"paper.size": "a4"},
            {"paper.size": "letter"},
            {"paper.size": "148 x 210 mm"},
            {"paper.size": "a3"},
            {"weaving.winding": "figure eight"},
            PEGGED,
            FLAT,
            NOTCHED,
        ],
    ),
    ids=lambda changes: str(sorted(changes.items()))[:40],
)
def test_every_file_of_a_run_is_proven(changes: dict[str, object]) -> None:
    """Two kits of unlike counts, on every paper and with every kind of frame end: no finding."""
    one = kit_of({"name": "Heron frame, one", **changes})
    other = kit_of({"name": "Heron frame, two", "weaving.width": "12 cm", **changes})
    assert wrong_of(files_of((one, 5), (other, 3))) == []


def test_kits_of_two_papers_have_files_of_their_own() -> None:
    """A file is printed on one paper, which its name says."""
    files = files_of((kit_of({"name": "one"}), 4), (kit_of({"name": "two", "paper.size": "a3"}), 4))
    assert all(name.startswith(("print-common-", "print-a3-")) for name in files.names)
    assert wrong_of(files) == []


def test_ten_sets_take_a_third_of_the_sheets_of_ten_times_one() -> None:
    """The built-in kit, whose grid is printed once, with its first sheet, which stands in the one file of its guides.

    The run list, which no set made by itself has, is left out.
    """
    files = files_of((demo(), 10))
    totals, lists, first = files.totals, len(files.lists), 1
    assert 3 * (totals.sheets - lists + first) <= totals.singly + 10 * first
    assert totals.least <= totals.sheets <= 1.15 * totals.least


def test_a_list_on_two_cards_has_pages_of_its_own() -> None:
    """Each card says but a share of what lies in the box, so both are proven together."""
    files = files_of((kit_of({"paper.language": "fr", "box": {"list": "120 x 90 mm"}}), 3))
    assert not any(part.part.name == "packing-list" for prints in files.pages.prints for part in prints.parts)
    assert files.output("print-3-times.pdf").parts.count("packing-list") == 1
    assert wrong_of(files) == []


def test_a_run_of_one_box_is_printed_once() -> None:
    """One file, whose name says so."""
    assert files_of((demo(), 1)).names == ("print-1-time.pdf",)


@pytest.fixture(scope="module")
def files() -> PrintFiles:
    """A run of two kits; never changed."""
    return files_of((kit_of({"name": "one"}), 3), (kit_of({"name": "two", "weaving.width": "12 cm"}), 3))


def page_of(files: PrintFiles) -> PlacedPage:
    """The first sheet of it with parts of both kits, or the first at all."""
    every = [page for file in files.pages.files for page in file.placed]
    page = next((each for each in every if len(set(each.placed.kits)) > 1), every[0])
    said = Gutter(
        files.run.name,
        page.number,
        page.total,
        page.placed.times,
        tuple(files.run.kits[k].plan.kit.name for k in sorted(set(page.placed.kits))),
    )
    drawn = run_sheet(page.placed, said, run_bed(page.paper), files.run.words, METRICS)
    placed = page.placed
    return PlacedPage(drawn.sheet, placed.pieces, placed.kits, placed.cuts, page.number, page.total, placed.times)


def sentences(files: PrintFiles, page: PlacedPage) -> tuple[str, ...]:
    """What is said of a page."""
    kits = [verified.RunKit(kit.plan, kit.copies) for kit in files.run.kits]
    return prove_placed(page, kits, files.run.name, 1).sentences


def changed(page: PlacedPage, change: Callable[[Shape], Shape | None]) -> PlacedPage:
    """A page with every shape changed, or left out."""
    shapes = tuple(new for shape in page.sheet.shapes if (new := change(shape)) is not None)
    return page._replace(sheet=replace(page.sheet, shapes=shapes))


def test_a_whole_page_is_right(files: PrintFiles) -> None:
    """What the alarms below begin with."""
    assert sentences(files, page_of(files)) == ()


def test_words_that_say_another_number_of_times_are_found(files: PrintFiles) -> None:
    """Printed so often, there would be too few."""
    page = page_of(files)
    assert sentences(files, page._replace(times=page.times + 1))


def test_the_copy_of_another_kit_is_found(files: PrintFiles) -> None:
    """Its numbers are not those of the kit that the sheet counts it for."""
    page = page_of(files)
    assert sentences(files, page._replace(kits=tuple(1 - kit for kit in page.kits)))


def test_cuts_in_another_order_are_found(files: PrintFiles) -> None:
    """The first and the last change their numbers."""
    page = page_of(files)
    first, *others, last = page.cuts
    cuts = [*others, replace_number(first, last.number), replace_number(last, first.number)]
    assert sentences(files, page._replace(cuts=cuts))


def replace_number(cut: Any, number: int) -> Cut:
    """The same cut under another number."""
    return Cut(number, cut.axis, cut.at, cut.gap, cut.begin, cut.end)


def test_a_cut_that_is_lacking_is_found(files: PrintFiles) -> None:
    """Two parts would stay together, or a margin would stay on."""
    page = page_of(files)
    for cut in page.cuts:
        rest = [each for each in page.cuts if each.number != cut.number]
        assert sentences(files, page._replace(cuts=rest))


def test_a_cut_through_a_part_is_found(files: PrintFiles) -> None:
    """One line moved by 10 mm."""
    page = page_of(files)
    for cut in page.cuts:
        moved = [
            Cut(each.number, "x" if each.axis == "x" else "y", each.at + 10 * (each.number == cut.number), each.gap,
                each.begin, each.end)
            for each in page.cuts
        ]  # fmt: skip
        assert sentences(files, page._replace(cuts=moved))


def test_a_mark_that_is_a_little_off_is_found(files: PrintFiles) -> None:
    """By a tenth of a mm; every one of them, whether it is drawn here or there."""
    page = page_of(files)
    marks = [
        shape
        for shape in page.sheet.shapes
        if isinstance(shape, Curve) and shape.pen is Pen.HELP and len(shape.steps) == 1 and shape.start.x < 23.9
    ]
    assert marks
    for mark in marks:

        def moved(shape: Shape, mark: Curve = mark) -> Shape:
            return Placing(0, 0, 0.1).shapes([shape])[0] if shape is mark else shape

        assert sentences(files, changed(page, moved))


def test_a_number_that_is_lacking_is_found(files: PrintFiles) -> None:
    """Every number of a cut, and every such number in a part."""
    page = page_of(files)
    here = page.sheet.shapes
    for cut in page.cuts:
        for k, shape in enumerate(here):
            if isinstance(shape, Text) and shape.words == str(cut.number) and shape.pen is Pen.TEXT and shape.at.x > 20:
                without = replace(page.sheet, shapes=(*here[:k], *here[k + 1 :]))
                assert sentences(files, page._replace(sheet=without)), (cut.number, shape.at)


def test_a_copy_that_is_a_little_too_small_is_found(files: PrintFiles) -> None:
    """All that lies in one part, shrunk by a thousandth round a corner of the sheet."""
    page = page_of(files)

    def shrunk(shape: Shape) -> Shape:
        if isinstance(shape, Curve) and shape.pen is Pen.REGISTER:
            at = shape.start
            return Placing(0, -0.001 * at.x, -0.001 * at.y).shapes([shape])[0]
        return shape

    assert sentences(files, changed(page, shrunk))


def test_a_lost_copy_is_found(files: PrintFiles) -> None:
    """Every part of every kit, as often as there are boxes."""
    kits = [verified.RunKit(kit.plan, kit.copies) for kit in files.run.kits]
    pages = [
        PlacedPage(Sheet("", 1, 1, ()), page.placed.pieces, page.placed.kits, (), 1, 1, page.placed.times)
        for file in files.pages.files
        for page in file.placed
    ]
    wanted = {
        (k, each.part.name): kits[k].copies for k, prints in enumerate(files.pages.prints) for each in prints.parts
    }
    assert list(wrong_copies(pages, wanted, kits)) == []
    less = [pages[0]._replace(pieces=pages[0].pieces[1:], kits=pages[0].kits[1:]), *pages[1:]]
    assert list(wrong_copies(less, wanted, kits))
    assert list(wrong_copies([pages[0]._replace(times=pages[0].times + 1), *pages[1:]], wanted, kits))


def test_a_file_that_says_another_number_is_found(files: PrintFiles) -> None:
    """Its name is what a person goes by."""
    from templates_gen.verify.run.counts import Stack

    assert list(wrong_names([Stack("print-9-times.pdf", 10, 1)]))
    assert not list(wrong_names([Stack("print-10-times.pdf", 10, 1), Stack("print-a4-1-time.pdf", 1, 1)]))


def test_a_run_list_that_says_another_sum_is_found(files: PrintFiles, monkeypatch: pytest.MonkeyPatch) -> None:
    """A builder that counts one sheet too few, and one that says too small a bound."""
    good = PrintPages.totals
    for change in ({"sheets": -1}, {"singly": 1}, {"least": -1}):

        def wrong(self: Any, lists: int, change: dict[str, int] = change) -> Any:
            found = good(self, lists)
            return replace(found, **{key: getattr(found, key) + more for key, more in change.items()})

        monkeypatch.setattr(PrintPages, "totals", wrong)
        again = PrintFiles(files.run, files.sold, files.layings, METRICS)
        output = again.output("print-1-time.pdf")
        assert print_findings(again, output, read(output, write(output))).problems


def list_of(*holds: tuple[str, ...]) -> tuple[Sheet, list[Listed]]:
    """A run list with a row for each of these, as it stands on a sheet, and its rows."""
    kits = [("one", "two, a kit of a long name"), ("one",)]
    rows = [Listed("print-1-time.pdf", 1, k, k, each, kits[k % 2]) for k, each in enumerate(holds, 1)]
    printings = [Printing(row.file, row.first, row.last, row.times, row.holds, row.kits) for row in rows]
    totals = Totals(9, 9, 9, 0, 0.0)
    (part,) = run_list_pages(printings, totals, (900.0, 900.0), 170.0, ENGLISH, METRICS)
    row = next(shape for shape in part.shapes if isinstance(shape, Text) and shape.words == rows[0].file)
    aside = Text(Point(199.0, row.at.y), 3.0, "2", 90.0)
    return Sheet("list", 210.0, 900.0, (*part.shapes, aside)), rows


HOLDS = ("Label", "Spacing guides", "Label, packing list", "Near marking strip", "Far marking strip", "Wrap gauge")


@given(st.lists(st.lists(st.sampled_from(HOLDS), min_size=1, max_size=5).map(tuple), min_size=1, max_size=12))
def test_cells_of_the_run_list_are_found_whatever_they_share(holds: list[tuple[str, ...]]) -> None:
    """A line may be all of one cell and the end of another: each row is read by itself, and a wrong one is found."""
    sheet, rows = list_of(*holds)
    assert cells_of([sheet], rows, ENGLISH).wrong == ()
    for k, row in enumerate(rows):
        for other in (row._replace(holds=("Leaflet",)), row._replace(kits=("three",)), row._replace(first=77)):
            assert cells_of([sheet], [*rows[:k], other, *rows[k + 1 :]], ENGLISH).wrong


def test_what_is_drawn_twice_is_the_same(files: PrintFiles) -> None:
    """The same bytes for the same run."""
    again = PrintFiles(files.run, files.sold, files.layings, METRICS)
    assert [write(files.output(name)) for name in files.names] == [write(again.output(name)) for name in again.names]


def test_long_names_of_files_break_on_narrow_paper() -> None:
    """Where kits are printed on several papers each name says its own, and one may take two lines."""
    first, other = kit_of({"name": "one", "paper.size": "148 x 210 mm"}), kit_of({"name": "two", "paper.size": "a3"})
    assert wrong_of(files_of((first, 3), (other, 3))) == []
