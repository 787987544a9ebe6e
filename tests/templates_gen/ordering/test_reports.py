"""The tables of a run of orders: what they say, computed again, and that no wrong cell gets past their proof."""

from __future__ import annotations

import csv
import gc
import io
import tracemalloc
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from functools import partial
from pathlib import Path

import pytest
from order_files import LARGE, MIDDLE, SMALL, three_kits
from order_results import few, many, planned, result, unpriced, with_work

from layout.box.needs import needs
from layout.box.shop_values import shop_values
from templates_gen.disk.faults import FaultError
from templates_gen.files.proven import ProofError
from templates_gen.inputs.range_file import Range
from templates_gen.ordering import reports
from templates_gen.ordering.order import Problem
from templates_gen.ordering.report import REPORT_HEAD, report_rows
from templates_gen.ordering.reports import TABLES, write_reports
from templates_gen.ordering.result import Result
from templates_gen.ordering.sums import sums_of
from templates_gen.ordering.totals import TOTALS_HEAD, to_buy_rows, totals_rows
from templates_gen.readers.csv import read, read_rows
from templates_gen.verify.orders.tables import OrdersProof
from templates_gen.writers.csv import Cell, write

NAMES = [SMALL, MIDDLE, LARGE]
Rows = list[dict[str, str]]


def written(folder: Path, results: Sequence[Result], kits: Range | None = None) -> dict[str, Rows]:
    """The tables of these results by name, as Python's csv module reads them."""
    hidden = folder / ".orders"
    hidden.mkdir(exist_ok=True)
    write_reports(folder, hidden, lambda: iter(results), kits or three_kits())
    assert list(hidden.iterdir()) == []
    return {
        name: list(csv.DictReader(io.StringIO((folder / name).read_bytes().decode("utf-8"), newline="")))
        for name in TABLES
    }


def test_the_report_has_a_row_for_each_row_in_order(tmp_path: Path) -> None:
    """What was made with its folder, files and the sheets of all copies; what failed with all its problems."""
    rows = written(tmp_path, few())["report.csv"]
    assert [(row["line"], row["order"], row["state"]) for row in rows] == [
        ("2", "W-2", "made"),
        ("3", "W-3", "made"),
        ("4", "W-4", "failed"),
        ("5", "W-5", "unchanged"),
        ("6", "W-6", "failed"),
        ("7", "W-7", "failed"),
    ]
    assert rows[1]["files"] == "strips.pdf, spacing-guide.pdf, comb.svg"
    assert (rows[1]["copies"], rows[1]["sheets"], rows[1]["folder"]) == ("12", "36", "w-3")
    assert rows[2]["column"] == "weaving width\n"
    assert rows[2]["why"] == 'needs a length, got "x"\ncannot be woven'
    assert [rows[2][name] for name in ("copies", "folder", "sheets", "ends", "warp_g", "cost", "currency")] == [""] * 7
    assert rows[3]["notes"] == "Mind the gap.\nAnd the step."


def exact(kit: str, kind: str, unit: str, copies: int) -> Fraction:
    """What so many boxes take of a kind of yarn, from the plan."""
    each = [need for need in needs(planned(kit)) if need.kind == kind]
    assert all(unit in need.taken for need in each)
    return sum((copies * Fraction(need.figure(unit)) for need in each), Fraction(0))  # type: ignore[arg-type]


def is_of(cell: str, figure: Fraction, places: int) -> bool:
    """Whether a cell says that figure to so many places."""
    return len(cell.partition(".")[2]) == places and abs(Fraction(cell) - figure) <= Fraction(1, 2 * 10**places)


def test_yarn_of_an_order_is_that_of_its_plan(tmp_path: Path) -> None:
    """Warp and weft in g and m, spare and all copies with it, to the places of the other tables."""
    row = written(tmp_path, few())["report.csv"][3]
    for kind in ("warp", "weft"):
        assert is_of(row[f"{kind}_g"], exact(MIDDLE, kind, "g", 3), 1)
        assert is_of(row[f"{kind}_m"], exact(MIDDLE, kind, "m", 3), 2)
    assert row["ends"] == str(planned(MIDDLE).warp.ends)


def test_a_figure_that_is_not_known_of_every_yarn_is_empty(tmp_path: Path) -> None:
    """A weft of which one colour has no weight has none; its length stands."""
    made = result(2, MIDDLE)
    first = next(each for each in made.amounts if each.kind == "weft" and each.unit == "g")
    bare = replace(made, amounts=tuple(each for each in made.amounts if each != first))
    tables = written(tmp_path, [bare, result(3, MIDDLE)])
    assert tables["report.csv"][0]["weft_g"] == ""
    assert is_of(tables["report.csv"][0]["weft_m"], exact(MIDDLE, "weft", "m", 1), 2)
    (row,) = (each for each in tables["totals.csv"] if (each["what"], each["name"]) == ("weft", first.name)
              and each["colour"] == first.colour)  # fmt: skip
    assert (row["g"], row["orders"]) == ("", "2")
    assert row["m"]


def test_totals_are_the_sums_of_the_plans(tmp_path: Path) -> None:
    """By kit and yarn, in fractions from the plans; files with their sheets; failed rows and rows of no kit."""
    rows = written(tmp_path, few())["totals.csv"]
    counts = {(row["kit"], row["what"]): row for row in rows if row["what"] in ("orders", "unknown", "all")}
    said = {key: tuple(row[name] for name in ("orders", "failed", "boxes", "sheets")) for key, row in counts.items()}
    assert said == {
        (SMALL, "orders"): ("3", "1", "13", "39"),
        (MIDDLE, "orders"): ("1", "0", "3", "9"),
        (LARGE, "orders"): ("0", "0", "0", "0"),
        ("", "unknown"): ("2", "2", "0", "0"),
        ("", "all"): ("6", "3", "16", "48"),
    }
    assert rows[-1]["what"] == "all"
    files = [(row["name"], row["orders"], row["boxes"], row["sheets"]) for row in rows if row["what"] == "file"]
    assert files[:2] == [("strips.pdf", "2", "13", "13"), ("spacing-guide.pdf", "2", "13", "26")]
    assert "comb.svg" not in {name for name, *_ in files}
    for kit, boxes in ((SMALL, 13), (MIDDLE, 3)):
        for need in needs(planned(kit)):
            if need.kind in ("warp", "weft"):
                (row,) = (row for row in rows if (row["kit"], row["what"], row["name"], row["colour"])
                          == (kit, need.kind, need.name, need.colour))  # fmt: skip
                assert is_of(row["g"], boxes * Fraction(need.figure("g")), 1)
                assert is_of(row["m"], boxes * Fraction(need.figure("m")), 2)


def test_all_is_bought_together(tmp_path: Path) -> None:
    """To the pack: of the warp as many cones as hold what all orders take, not what each does."""
    tables = written(tmp_path, few())
    (row,) = (row for row in tables["to-buy.csv"] if row["kind"] == "warp")
    grams = exact(SMALL, "warp", "g", 13) + exact(MIDDLE, "warp", "g", 3)
    assert is_of(row["bought_for"], grams, 1)
    assert int(row["packs"]) == -(-grams // Fraction(row["pack_size"]))
    (paper,) = (row for row in tables["to-buy.csv"] if row["kind"] == "paper")
    assert (paper["needed"], paper["boxes"]) == ("48", "16")


@pytest.mark.parametrize("number", [1, 7, 60])
def test_orders_together_bear_what_is_paid(tmp_path: Path, number: int) -> None:
    """Their costs add up to the packs that are bought and the work, but for cents; none is known only in part."""
    kits = with_work()
    tables = written(tmp_path, list(many(number)), kits)
    costs = [Decimal(row["cost"]) for row in tables["report.csv"]]
    paid = sum(Decimal(row["paid"]) for row in tables["to-buy.csv"])
    work = 24 * Decimal(20) / 60 * int(tables["totals.csv"][-1]["boxes"])
    assert abs(sum(costs) - paid - work) <= Decimal("0.005") * number
    assert {row["cost_is"] for row in tables["report.csv"]} == {"all"}
    assert {row["currency"] for row in tables["report.csv"]} == {"EUR"}


def test_a_cost_without_some_price_says_so(tmp_path: Path) -> None:
    """The range to start from has no price for its rods: "part"; one without money has no cost at all."""
    assert written(tmp_path, few())["report.csv"][0]["cost_is"] == "part"
    row = written(tmp_path, few(), unpriced())["report.csv"][0]
    assert (row["cost"], row["cost_is"], row["currency"]) == ("", "", "")


SIGNS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")  # OWASP, "CSV Injection", from memory


@pytest.mark.parametrize("sign", SIGNS)
def test_no_cell_is_a_formula(tmp_path: Path, sign: str) -> None:
    """Whatever stands in number, kit, column, sentence, note or yarn: no program for tables runs it."""
    attack = f"{sign}cmd|' /C calc'!A0"
    problem = Problem(attack, attack)
    made = result(2, number=attack, notes=(attack,), amounts=tuple(
        each._replace(name=attack, colour=attack) for each in result(2).amounts))  # fmt: skip
    bad = Result(3, attack, "", attack, 0, "failed", problems=(problem,))
    for name, rows in written(tmp_path, [made, bad]).items():
        cells = [cell for row in rows for cell in row.values()]
        assert any(attack in cell for cell in cells), name
        assert [cell for cell in cells if cell.lstrip(" ").startswith(SIGNS)] == []


Table = Callable[[Iterator[Sequence[str]]], object]


def tables_of(results: Sequence[Result], kits: Range) -> list[tuple[list[tuple[Cell, ...]], Table]]:
    """The rows of each table, and what proves it."""
    sums = sums_of(iter(results), NAMES, kits.shop)
    proof = OrdersProof(lambda: iter(results), NAMES, shop_values(kits.shop))
    return [
        (list(report_rows(results, sums)), proof.report),
        (list(totals_rows(sums)), proof.totals),
        (list(to_buy_rows(sums)), proof.to_buy),
    ]


def other(cell: str) -> str:
    """Another word, or the next figure."""
    try:
        number = Decimal(cell)
    except ArithmeticError:
        return f"{cell}x"
    return str(number + Decimal((0, (2,), number.as_tuple().exponent)))  # type: ignore[arg-type]


@pytest.mark.parametrize("kits", [three_kits, unpriced, with_work], ids=["priced", "unpriced", "work"])
@pytest.mark.parametrize("place", range(3), ids=TABLES)
def test_every_wrong_cell_is_found(kits: Callable[[], Range], place: int) -> None:
    """As it is, a table is proven; with any one cell changed, a row left out or twice, it is not."""
    rows, prove = tables_of(few(), kits())[place]
    good = [list(row) for row in read(write(rows))]
    assert prove(iter(good)).sound  # type: ignore[attr-defined]
    for number, row in enumerate(good):
        for column, cell in enumerate(row):
            wrong = [*good[:number], [*row[:column], other(cell), *row[column + 1 :]], *good[number + 1 :]]
            assert not prove(iter(wrong)).sound, (number, column)  # type: ignore[attr-defined]
        assert not prove(iter(good[:number] + good[number + 1 :])).sound  # type: ignore[attr-defined]
        assert not prove(iter(good[: number + 1] + good[number:])).sound  # type: ignore[attr-defined]


def test_a_table_that_comes_back_wrong_is_not_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """All three tables stay as they were, and the sentence names the one that is wrong."""
    before = written(tmp_path, few())

    def spoiled(*asked: object) -> Iterator[tuple[Cell, ...]]:
        *rows, last = totals_rows(*asked)  # type: ignore[arg-type]
        yield from rows
        yield (*last[:4], 99, *last[5:])

    monkeypatch.setattr(reports, "totals_rows", spoiled)
    with pytest.raises(ProofError, match=r"totals\.csv"):
        written(tmp_path, [*few(), result(8)])
    monkeypatch.undo()
    assert written(tmp_path, few()) == before


def test_a_place_that_is_taken_is_said(tmp_path: Path) -> None:
    """A folder where a table should stand stays, and the sentence names it and says that all orders are in place."""
    (tmp_path / "report.csv").mkdir()
    with pytest.raises(FaultError, match=r"report\.csv.*orders that were made are in place"):
        written(tmp_path, few())


def test_a_link_is_replaced_not_followed(tmp_path: Path) -> None:
    """Where report.csv is a link to a file elsewhere, that file stays as it is."""
    outside = tmp_path / "outside.csv"
    outside.write_text("mine", "utf-8")
    folder = tmp_path / "orders"
    folder.mkdir()
    (folder / "report.csv").symlink_to(outside)
    written(folder, few())
    assert outside.read_text("utf-8") == "mine"
    assert not (folder / "report.csv").is_symlink()


def test_the_columns_are_those_of_the_docs() -> None:
    """The page about orders names each column of report.csv and totals.csv."""
    text = (Path(__file__).parents[3] / "docs" / "orders.md").read_text("utf-8")
    assert [name for name in (*REPORT_HEAD, *TOTALS_HEAD) if f"`{name}`" not in text] == []


def test_tables_of_many_orders_take_no_more_memory(tmp_path: Path) -> None:
    """Eight times as many orders, at most a tenth more at the peak, once what makes them up is cleared away."""

    def results(number: int) -> Iterator[Result]:
        for place, each in enumerate(many(number)):
            if place % 20 == 0:
                gc.collect()
            yield each

    gc.freeze()  # what earlier tests left need not be looked through at every collection
    peaks = []
    for number in (40, 40, 320):
        (tmp_path / "hidden").mkdir(exist_ok=True)
        tracemalloc.start()
        write_reports(tmp_path, tmp_path / "hidden", partial(results, number), three_kits())
        peaks.append(tracemalloc.get_traced_memory()[1])
        tracemalloc.stop()
    assert peaks[2] <= 1.1 * peaks[1]
    with (tmp_path / "report.csv").open("rb") as file:
        assert sum(1 for _ in read_rows(file)) == 321
