"""Print runs over many orders: every piece once and under its own number, no more sheets than asked for, proven."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator
from hashlib import sha256
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from kits import font_metrics, kit_of
from pypdf import PdfReader
from run_cards import PAPERS, card

import layout.run.filling as filling
import templates_gen.files.print_run as print_run
from layout.kit.kit import kit_values
from layout.plan import Plan
from layout.run.bed import run_bed
from layout.run.filling import Boxful, Filling, filled
from layout.run.imposing import RunPart
from templates_gen.disk.faults import FaultError
from templates_gen.files.against import Against
from templates_gen.files.check import check
from templates_gen.files.formats import FORMATS
from templates_gen.files.proven import ProofError
from templates_gen.messages.errors import OptionError
from templates_gen.ordering.hidden import HIDDEN
from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order
from templates_gen.ordering.print_runs import print_runs
from templates_gen.ordering.result import OrderFile

GUTTER, ALONE = re.compile(r"For (Order \d+(, )?)+"), re.compile(r"Order \d+\b(?!:)")
WIDTHS = ("14 cm", "20 cm", "24 cm", "17 cm")


def order(number: str, copies: int = 1, **changes: object) -> Order:
    """An order of the usual kit, for a studio of its own."""
    said = {key.replace("__", "."): value for key, value in changes.items()}
    kit = kit_of({"order": {"number": number, "buyer": f"Studio {number}"}} | said)
    return Order(2, number, number, "Willow frame", copies, kit_values(kit), {})


def some(count: int) -> list[Order]:
    """Orders of several widths."""
    return [order(str(1001 + k), weaving__width=WIDTHS[k % len(WIDTHS)]) for k in range(count)]


def made(orders: list[Order], folder: Path, sheets: int, only: tuple[str, ...] = ()) -> list[OrderFile]:
    """The print runs of orders."""
    return list(print_runs(iter(orders), Job(str(folder), only), sheets, folder, font_metrics()))


def pages_of(folder: Path, files: list[OrderFile]) -> list[str]:
    """What each page says, read by pypdf."""
    every = (PdfReader(BytesIO((folder / file.file).read_bytes())) for file in files)
    return [page.extract_text() for each in every for page in each.pages]


def pieces(pages: list[str]) -> Counter[str]:
    """How often each order is named alone, as a piece does it: a head names its kit too, a gutter says "For"."""
    return Counter(said for page in pages for said in ALONE.findall(GUTTER.sub("", page)))


def test_every_piece_of_every_order_is_there_once(tmp_path: Path) -> None:
    """Two strips and two guides under the number of each, and a leaflet for its buyer; at most 9 sheets in a file."""
    orders = some(9)
    files = made(orders, tmp_path, 9)
    assert [file.file for file in files] == [f"print-run-{k}.pdf" for k in range(1, len(files) + 1)]
    assert len(files) > 1
    assert all(0 < file.sheets <= 9 for file in files)
    pages = pages_of(tmp_path, files)
    assert len(pages) == sum(file.sheets for file in files)
    assert pieces(pages) == {f"Order {each.number}": 4 for each in orders}
    for each in orders:
        assert sum(f"Made for Studio {each.number}:" in page for page in pages) == 1
        assert sum(f"Order {each.number}: " in page for page in pages) == 1


def test_orders_stay_in_their_order(tmp_path: Path) -> None:
    """No order is in an earlier file than the one before it."""
    files = made(some(9), tmp_path, 9)
    carried = (FORMATS["pdf"].read((tmp_path / file.file).read_bytes()).about.inputs for file in files)
    kits = [kit for inputs in carried for kit in json.loads(inputs)["run"]["kits"]]
    assert [kit["order"]["number"] for kit in kits] == [str(1001 + k) for k in range(9)]


def test_copies_are_printed_as_often(tmp_path: Path) -> None:
    """Three boxes of an order have their pieces three times, over two files where one has no room."""
    files = made([order("7"), order("8", copies=3)], tmp_path, 5)
    assert len(files) > 1
    assert pieces(pages_of(tmp_path, files)) == {"Order 7": 4, "Order 8": 12}


def test_a_file_has_one_paper(tmp_path: Path) -> None:
    """Orders on other paper are in files of their own, also where sheets are too small for pieces beside others."""
    sizes = ("a4", "letter", "148 x 210 mm")
    files = made([order(str(k), paper__size=sizes[k % 3]) for k in range(6)], tmp_path, 40)
    found = [{tuple(page.mediabox[2:]) for page in PdfReader(tmp_path / file.file).pages} for file in files]
    assert len(files) == 3
    assert all(len(each) == 1 for each in found)
    assert len(set[Any]().union(*found)) == 3


def test_the_bytes_are_the_same_again(tmp_path: Path) -> None:
    """Nothing in them is of the day, and earlier files that are no more are gone."""
    first, again = made(some(6), tmp_path, 5), made(some(6), tmp_path, 5)
    assert first == again
    fewer = made(some(2), tmp_path, 5)
    assert len(fewer) < len(first)
    assert {path.name for path in tmp_path.iterdir()} == {HIDDEN, *(file.file for file in fewer)}


def test_a_file_alone_can_be_checked(tmp_path: Path) -> None:
    """By what it carries, in several languages."""
    (file,) = made([order("1042", copies=2), order("1043", paper__language="de")], tmp_path, 20)
    (found,) = check([tmp_path / file.file], Against(), font_metrics())
    assert found.problems == ()
    assert found.found == found.asked
    assert found.found is not None


@pytest.mark.parametrize("name", ["ordered", "named"])
def test_two_orders_that_exchange_their_numbers_are_found(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On pieces, and in heads of leaflets; no file comes into the folder then."""
    right = getattr(Plan, name).fget
    other = {"1042": "1043", "1043": "1042"}

    def wrong(plan: Plan) -> str:
        number = plan.kit.order.number
        return str(right(plan)).replace(number, other[number])

    monkeypatch.setattr(Plan, name, property(wrong))
    with pytest.raises(ProofError, match=r"104[23]"):
        made([order("1042"), order("1043")], tmp_path, 20)
    assert [path.name for path in tmp_path.iterdir()] == [HIDDEN]


@pytest.mark.parametrize("times", [0, 2])
@pytest.mark.parametrize("which", [0, 3])
def test_a_piece_that_is_lost_or_twice_is_found(
    which: int, times: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whichever of an order it is."""
    right = print_run.printable

    def wrong(*given: Any) -> print_run.Printable:
        found = right(*given)
        parts = [part for k, part in enumerate(found.parts) for _ in range(times if k == which else 1)]
        return print_run.Printable(found.plan, tuple(parts), found.pages, found.counts)

    monkeypatch.setattr(print_run, "printable", wrong)
    with pytest.raises(ProofError, match="1042"):
        made([order("1042")], tmp_path, 20)


def test_a_leaflet_that_is_lost_is_found(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Though it has pages of its own."""
    right = print_run.printable
    lost: Any = lambda *given: print_run.Printable(given[0], right(*given).parts, (), ())  # noqa: E731
    monkeypatch.setattr(print_run, "printable", lost)
    with pytest.raises(ProofError, match=r"leaflet.*1042"):
        made([order("1042")], tmp_path, 20)


@pytest.mark.parametrize("sheets", [0, -1, 1000, 2.5, True])
def test_a_number_of_sheets_that_can_be_none_is_refused(sheets: Any, tmp_path: Path) -> None:
    """Before anything is made."""
    with pytest.raises(OptionError, match=r"^--print-run: needs a whole number of sheets from 1 to 999"):
        made([order("7")], tmp_path, sheets)
    assert list(tmp_path.iterdir()) == []


def test_an_order_that_takes_more_sheets_is_named(tmp_path: Path) -> None:
    """With the number that would do, which then does."""
    with pytest.raises(OptionError, match=r"at least 2 sheets, since one box of order '7'.*--print-run 2"):
        made([order("7")], tmp_path, 1)
    assert [file.sheets for file in made([order("7")], tmp_path, 2)] == [2]


def test_earlier_files_stay_where_a_run_is_refused(tmp_path: Path) -> None:
    """A number of sheets that is too small takes nothing away."""
    (before,) = made([order("7")], tmp_path, 2)
    with pytest.raises(OptionError):
        made([order("7")], tmp_path, 1)
    assert sha256((tmp_path / before.file).read_bytes()).hexdigest() == before.sha256


def test_what_is_no_file_is_left_alone(tmp_path: Path) -> None:
    """A folder by the name of a print run is named, and stays."""
    (tmp_path / "print-run-2.pdf").mkdir()
    with pytest.raises(FaultError, match=r"print-run-2\.pdf"):
        made([order("7")], tmp_path, 9)
    assert (tmp_path / "print-run-2.pdf").is_dir()


def test_what_is_asked_for_is_printed(tmp_path: Path) -> None:
    """Guides and gauge alone, by names as `make --only` takes them; what is not printed is passed over."""
    files = made([order("7")], tmp_path, 9, ("spacing-guide", "wrap-gauge.pdf", "comb.svg"))
    pages = pages_of(tmp_path, files)
    assert pieces(pages) == {"Order 7": 3}
    assert not any("Made for" in page for page in pages)


@pytest.mark.parametrize("only", ["strips.svg", "comb"])
def test_nothing_that_is_printed(only: str, tmp_path: Path) -> None:
    """Print runs of drawings for the screen, or of what is cut, are refused, and nothing is written."""
    with pytest.raises(OptionError, match="--only: needs something that is printed"):
        list(print_runs([order("1")], Job(str(tmp_path), (only,)), 4, tmp_path, font_metrics()))
    assert not list(tmp_path.glob("print-run*"))


def test_orders_are_read_as_sheets_fill(tmp_path: Path) -> None:
    """Of a hundred orders no more than a few are read before the first file is there."""
    read: list[str] = []

    def orders() -> Iterator[Order]:
        for each in (order(str(k)) for k in range(100)):
            read.append(each.number)
            yield each

    first = next(print_runs(orders(), Job(str(tmp_path)), 4, tmp_path, font_metrics()))
    assert first.sheets <= 4
    assert len(read) < 5


@pytest.mark.parametrize("most", [3, 5, 8])
def test_a_filling_takes_what_has_room_and_no_more(most: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """The sheets that it counts are those that are placed, in groups too, and never more than asked for."""
    monkeypatch.setattr(filling, "MOST_PIECES", 5)
    bed, stack, taken = run_bed(PAPERS[0]), Filling(run_bed(PAPERS[0]), most), list[Boxful]()
    for k in range(9):
        parts = tuple(RunPart(card(f"{k}-{n}", 90 + 20 * n, 70 + 9 * k), k) for n in range(2))
        if not stack.takes(box := Boxful(parts, k % 2)):
            break
        taken.append(box)
    sheets = sum(found.papers for found in filled(taken, bed)) + sum(each.pages for each in taken)
    assert stack.sheets == sheets <= most
    more = sum(found.papers for found in filled([*taken, box], bed)) + sum(each.pages for each in [*taken, box])
    assert more > most
