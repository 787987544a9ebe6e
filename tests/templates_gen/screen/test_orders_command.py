"""The command that makes a table of orders: what it makes, says and refuses, with which code it ends."""

from __future__ import annotations

import csv
import json
import signal
from collections.abc import Iterator
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest
from commands import refused, run
from pages import ROOT

import templates_gen
from templates_gen.disk.stopping import StoppedError
from templates_gen.messages.errors import OptionError
from templates_gen.ordering.hidden import entered
from templates_gen.ordering.result import Result
from templates_gen.screen.orders_report import MOST_SAID, Tally

RANGE = ROOT / "templates_gen" / "data" / "range.toml"
QUICK = ("--only", "spacing-guide.pdf", "--workers", "1")
HEAD = "order,kit,copies,buyer,weaving.width\n"
ROWS = {
    "1001": "weir-frame-small,1,Weir Studio,15 cm",
    "1002": "weir-frame-small,2,,",
    "1003": 'weir-frame-middle,1,Webstube Färö,"23,5 cm"',
    "1004": "weir-frame-small,1,,90 cm",
    "../1005": "weir-frame-small,1,,",
    "1006": "weir-frame-tiny,x,,",
}
"""Three orders that can be made, one that the frame is too small for, two that cannot be read."""


def table(folder: Path, rows: dict[str, str] | None = None, name: str = "orders.csv") -> Path:
    """A file of orders."""
    path = folder / name
    given = ROWS if rows is None else rows
    path.write_text(HEAD + "".join(f"{number},{rest}\n" for number, rest in given.items()), "utf-8")
    return path


def tree(folder: Path) -> dict[str, str]:
    """Every file below a folder, with its digest."""
    files = (path for path in folder.rglob("*") if path.is_file())
    return {str(path.relative_to(folder)): sha256(path.read_bytes()).hexdigest() for path in files}


class Made:
    """Six orders that were made once, by the command and by nobody else."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.out, self.table = folder, folder / "out", table(folder)
        self.result = run("orders", self.table, "--range", RANGE, "-o", self.out, "--workers", "1")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Made:
    """Strips, guide and leaflet of the six orders."""
    return Made(tmp_path_factory.mktemp("orders"))


def report(folder: Path) -> list[dict[str, str]]:
    """The rows of report.csv, as Python's csv module reads them."""
    with (folder / "report.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_good_rows_are_made_and_bad_ones_said(made: Made) -> None:
    """Code 1; the counts on the screen, and each failed row with its line, column and sentence on the error stream."""
    assert made.result.exit_code == 1
    assert "3 made, 0 unchanged, 3 failed." in made.result.stdout
    lines = made.result.stderr.splitlines()
    assert [line.partition(":")[0] for line in lines] == [
        "line 6, column 'order'",
        "line 7, column 'kit'",
        "line 7, column 'copies'",
        "line 5, column 'weaving.width'",
    ]
    assert all("; for example " in line for line in lines)


def test_the_report_agrees_with_the_folder(made: Made) -> None:
    """Its folders are those that are there, its files are in them, and the sheets are those of the manifests."""
    rows = report(made.out)
    done = [row for row in rows if row["state"] == "made"]
    assert {row["folder"] for row in done} == {path.name for path in made.out.iterdir() if path.is_dir()} - {".orders"}
    for row in done:
        manifest = json.loads((made.out / row["folder"] / "manifest.json").read_text("utf-8"))
        assert row["files"].split(", ") == [each["file"] for each in manifest["files"]]
        assert int(row["sheets"]) == int(row["copies"]) * sum(each["sheets"] for each in manifest["files"])
    failed = [row for row in rows if row["state"] == "failed"]
    assert [(row["line"], row["column"].split("\n")) for row in failed] == [
        ("5", ["weaving.width"]),
        ("6", ["order"]),
        ("7", ["kit", "copies"]),
    ]


def test_what_was_made_checks_out(made: Made) -> None:
    """`check` reads each folder back and finds nothing."""
    folders = [made.out / number for number in ("1001", "1002", "1003")]
    assert run("check", *folders).exit_code == 0


def test_the_second_time_nothing_is_made(made: Made) -> None:
    """The same command finds all unchanged: no file of an order is other than it was; only the report says so."""
    before = tree(made.out)
    result = run("orders", made.table, "--range", RANGE, "-o", made.out, "--workers", "1")
    assert result.exit_code == 1
    assert "0 made, 3 unchanged, 3 failed." in result.stdout
    after = tree(made.out)
    assert {name for name in before if after[name] != before[name]} <= {"report.csv"}
    assert [row["state"] for row in report(made.out)] == ["unchanged"] * 3 + ["failed"] * 3


def test_json_lines_say_the_same(made: Made) -> None:
    """Each line is one JSON value: a row each, with digests of the files that lie there, and last the counts."""
    result = run("orders", made.table, "--range", RANGE, "-o", made.out, "--workers", "1", "--json")
    *rows, last = map(json.loads, result.stdout.splitlines())
    assert (result.exit_code, result.stderr) == (1, "")
    assert sorted(row["line"] for row in rows) == [2, 3, 4, 5, 6, 7]
    for row in rows:
        for file in row["files"]:
            data = (made.out / row["folder"] / file["file"]).read_bytes()
            assert file["sha256"] == sha256(data).hexdigest()
    (wide,) = (row["problems"] for row in rows if row["line"] == 5)
    assert wide[0]["column"] == "weaving.width"
    assert (last["summary"]["unchanged"], last["summary"]["failed"]) == (3, 3)


def test_all_made_is_code_0(tmp_path: Path) -> None:
    """Where no row failed, the command says so, and nothing stands on the error stream."""
    orders = table(tmp_path, {"1001": ROWS["1001"]})
    result = run("orders", orders, "--range", RANGE, "-o", tmp_path / "out", *QUICK)
    assert (result.exit_code, result.stderr) == (0, "")
    assert (tmp_path / "out" / "1001" / "spacing-guide.pdf").exists()


def test_a_check_writes_nothing(tmp_path: Path) -> None:
    """Every row is read and planned, the folder is not even made, and a row that cannot be made is code 1."""
    orders = table(tmp_path)
    result = run("orders", orders, "--range", RANGE, "-o", tmp_path / "out", "--check", "--workers", "1")
    assert result.exit_code == 1
    assert result.stdout == "Only read: 3 can be made, 3 cannot. Nothing was written.\n"
    assert len(result.stderr.splitlines()) == 4
    assert list(tmp_path.iterdir()) == [orders]


TABLES = {
    "absent": (None, "absent.csv"),
    "folder": ("", "orders"),
    "empty": (b"", "is empty"),
    "head alone": (b"order,kit\n", "no order"),
    "zip": (b"PK\x03\x04rest", "save it as CSV"),
    "unknown column": (b"order,kit,weaving.widht\n1,weir-frame-small,9 cm\n", "did you mean weaving.width?"),
    "no numbers": (b"kit\nweir-frame-small\n", "a column order"),
    "twice": (b"order,kit,kit\n1,a,b\n", "each column once"),
    "bytes": (b"order,kit\n1,\x00\xff\xfe\x81\n", ""),
}


@pytest.mark.parametrize("name", TABLES)
@pytest.mark.parametrize("check", [(), ("--check",)], ids=["make", "check"])
def test_a_table_that_is_none_starts_nothing(tmp_path: Path, name: str, check: tuple[str, ...]) -> None:
    """One sentence that names the file, code 2 (1 where a row alone is bad), no traceback, and no folder is made."""
    data, said = TABLES[name]
    path = tmp_path / ("absent.csv" if data is None else "orders.csv")
    if data == "":
        path.mkdir()
    elif isinstance(data, bytes):
        path.write_bytes(data)
    if name == "bytes":
        result = run("orders", path, "--range", RANGE, "-o", tmp_path / "out", *check, "--workers", "1")
        assert result.exit_code in (1, 2)
        assert "Traceback" not in result.stderr
        return
    sentence = refused("orders", path, "--range", RANGE, "-o", tmp_path / "out", *check, "--workers", "1")
    assert said in sentence
    assert not (tmp_path / "out").exists()


NUMBERS = (
    "..",
    "../x",
    "a/b",
    "a\\b",
    "/etc/x",
    "C:x",
    "con",
    "LPT1.txt",
    "x" * 300,
    "a\x07b",
    ".orders",
    "report.csv",
)
"""Order numbers that name no folder of their own; what Windows keeps is as in `test_order_numbers`."""


def test_no_number_leads_out_of_the_folder(tmp_path: Path) -> None:
    """Each is refused in its line, a second order of one number too; outside the folder nothing is written."""
    rows = dict.fromkeys(NUMBERS, "weir-frame-small,1,,")
    orders = table(tmp_path, rows | {"1001": "weir-frame-small,1,,\n1001,weir-frame-small,1,,"})
    result = run("orders", orders, "--range", RANGE, "-o", tmp_path / "in" / "out", *QUICK)
    assert result.exit_code == 1
    lines = [line.partition(",")[0] for line in result.stderr.splitlines()]
    assert lines == [f"line {line}" for line in [*range(2, 2 + len(NUMBERS)), 3 + len(NUMBERS)]]
    assert sorted(path.name for path in tmp_path.iterdir()) == ["in", "orders.csv"]
    assert [path.name for path in (tmp_path / "in").iterdir()] == ["out"]
    names = {path.name for path in (tmp_path / "in" / "out").iterdir()}
    assert names == {"1001", ".orders", "report.csv", "totals.csv", "to-buy.csv"}


ATTACKS = ("=1+1", "+1+1", "-1+1", "@SUM(1)", "\t=1", '=HYPERLINK("x")', "＝1+1")
"""OWASP, "CSV Injection", from memory."""


@pytest.mark.parametrize("attack", ATTACKS)
def test_a_formula_in_a_table_is_none_in_the_report(tmp_path: Path, attack: str) -> None:
    """In a number, a kit, a buyer or a value it is said as a text with an apostrophe before it, or not at all."""
    cell = '"{}"'.format(attack.replace('"', '""'))
    text = f"{HEAD}{cell},weir-frame-small,1,,\n1,{cell},1,,\n2,weir-frame-small,{cell},,\n"
    text += f"3,weir-frame-small,1,{cell},\n4,weir-frame-small,1,,{cell}\n"
    (tmp_path / "orders.csv").write_text(text, "utf-8")
    run("orders", tmp_path / "orders.csv", "--range", RANGE, "-o", tmp_path / "out", *QUICK)
    for name in ("report.csv", "totals.csv", "to-buy.csv"):
        with (tmp_path / "out" / name).open(encoding="utf-8", newline="") as file:
            cells = [cell for row in csv.reader(file) for cell in row]
        assert [cell for cell in cells if cell.lstrip().startswith(("=", "+", "-", "@", "＝"))] == []


OPTIONS: dict[tuple[str, ...], str] = {
    ("--workers", "0"): "--workers: needs a number from 1 to",
    ("--workers", "many"): "--workers: needs a number from 1 to",
    ("--print-run", "0"): "--print-run: needs",
    ("--only", "strip"): "--only: needs",
    ("--only", "nothing-like-it"): "--only: needs",
    ("--stock", "absent.toml"): "absent.toml",
    ("--printer", "absent"): "absent",
    ("--dask", "tcp://127.0.0.1:1"): "--dask: needs",
    ("--dask", "tls://127.0.0.1:1"): "--dask: needs",
}


@pytest.mark.parametrize("options", OPTIONS, ids=" ".join)
def test_an_option_that_cannot_be_starts_nothing(tmp_path: Path, options: tuple[str, ...]) -> None:
    """One sentence with the option, code 2, and no folder is made."""
    if options[0] == "--dask":
        pytest.importorskip("distributed")
    sentence = refused("orders", table(tmp_path), "--range", RANGE, "-o", tmp_path / "out", *options)
    assert OPTIONS[options] in sentence
    assert not (tmp_path / "out").exists()


def test_without_dask_the_sentence_says_how_to_get_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the extra is not installed, the command that installs it is the example."""
    monkeypatch.setitem(__import__("sys").modules, "distributed", None)
    said = refused("orders", table(tmp_path), "--range", RANGE, "--dask", "tcp://127.0.0.1:1")
    assert 'pip install "templates-gen[dask]"' in said


def test_a_second_run_into_the_folder_waits_for_nobody(tmp_path: Path) -> None:
    """While one run has the folder, another says so in one sentence, with code 2, and changes nothing."""
    out = tmp_path / "out"
    with entered(out):
        before = tree(out)
        assert "another run" in refused("orders", table(tmp_path), "--range", RANGE, "-o", out, *QUICK)
        assert tree(out) == before


def test_a_stop_says_how_to_go_on(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Code 128 and the number of the signal, what failed so far, and one sentence that what was made stays."""

    def stopped(*asked: Any) -> Iterator[Result]:
        yield Result(2, "1", "", "oak", 0, "failed")
        raise StoppedError(signal.SIGINT)

    monkeypatch.setattr("templates_gen.ordering.order_run.made", stopped)
    result = run("orders", table(tmp_path), "--range", RANGE, "-o", tmp_path / "out")
    assert (result.exit_code, result.stdout) == (130, "")
    assert result.stderr.splitlines()[-1].startswith("Stopped; what was made stays in ")


def test_a_stop_while_it_reads(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The same code and sentence before the first order is made."""

    def stopped(*asked: Any) -> Iterator[Result]:
        signal.raise_signal(signal.SIGINT)
        raise AssertionError(asked)

    monkeypatch.setattr("templates_gen.ordering.order_table.open_orders", stopped)
    result = run("orders", table(tmp_path), "--range", RANGE, "-o", tmp_path / "out")
    assert (result.exit_code, result.stdout) == (130, "")
    assert result.stderr.startswith("Stopped; ")


def test_only_the_first_sentences_are_said(tmp_path: Path) -> None:
    """Of many failed rows the first twenty, then how many more the report has."""
    rows = {f"{number}": "weir-frame-small,x,," for number in range(30)}
    result = run("orders", table(tmp_path, rows), "--range", RANGE, "-o", tmp_path / "out", *QUICK)
    lines = result.stderr.splitlines()
    assert len(lines) == MOST_SAID + 1
    assert lines[-1] == "10 more in report.csv"
    assert len(report(tmp_path / "out")) == 30


def test_a_table_that_is_changed_meanwhile_is_said(tmp_path: Path) -> None:
    """What was made is what it said before; from Python a sentence is heard, and the next run makes what is new."""
    orders = table(tmp_path, {"1001": ROWS["1001"], "1002": ROWS["1002"]})
    heard: list[str] = []

    def going() -> Iterator[Result]:
        options: dict[str, Any] = {"only": ["spacing-guide.pdf"], "workers": 1, "tell": heard.append}
        return templates_gen.orders(orders, RANGE, tmp_path / "out", **options)

    for _ in going():
        table(tmp_path, {"1001": ROWS["1001"], "1002": ROWS["1003"]})
    assert [row["kit"] for row in report(tmp_path / "out")] == ["Weir frame, small"] * 2
    assert len(heard) == 1
    assert "was changed while the orders were made" in heard[0]
    assert sorted((each.number, each.state) for each in going()) == [("1001", "unchanged"), ("1002", "made")]
    assert len(heard) == 1


@pytest.mark.parametrize("workers", [0, -1, "2", 1.5, True, 1000])
def test_workers_that_are_no_number_of_them(workers: Any, tmp_path: Path) -> None:
    """From Python they are refused as the command refuses them, before anything is made."""
    with pytest.raises(OptionError, match=r"^workers: needs a number from 1 to 999, got"):
        templates_gen.orders(table(tmp_path), RANGE, tmp_path / "out", workers=workers)
    assert not (tmp_path / "out").exists()


def test_who_breaks_off_leaves_the_tables(tmp_path: Path) -> None:
    """No table is written by a caller that stops early; the same call goes on from there and writes them."""
    orders = table(tmp_path, {"1001": ROWS["1001"], "1002": ROWS["1002"]})
    options: dict[str, Any] = {"only": ["spacing-guide.pdf"], "workers": 1}
    for each in templates_gen.orders(str(orders), str(RANGE), str(tmp_path / "out"), **options):
        assert each.state == "made"
        break
    assert not (tmp_path / "out" / "report.csv").exists()
    states = sorted(each.state for each in templates_gen.orders(orders, RANGE, tmp_path / "out", **options))
    assert states.count("made") + states.count("unchanged") == 2
    assert "unchanged" in states
    assert len(report(tmp_path / "out")) == 2


def test_a_print_run_is_of_all_orders(tmp_path: Path) -> None:
    """With --print-run their parts lie on sheets together too, and the command says on how many."""
    orders = table(tmp_path, {"1001": ROWS["1001"], "1002": ROWS["1002"], "1004": ROWS["1004"]})
    result = run("orders", orders, "--range", RANGE, "-o", tmp_path / "out", *QUICK, "--print-run", "20")
    assert result.exit_code == 1
    assert "print-run-1.pdf holds the parts of all orders on " in result.stdout
    assert (tmp_path / "out" / "print-run-1.pdf").read_bytes().startswith(b"%PDF")


def test_a_print_run_of_an_earlier_run_is_named(tmp_path: Path) -> None:
    """Where orders are made anew and no print run is asked for, the command says that one lies there that is older."""
    orders, out = table(tmp_path, {"1001": ROWS["1001"], "1002": ROWS["1002"]}), tmp_path / "out"
    asked = ("orders", orders, "--range", RANGE, "-o", out, *QUICK)
    assert "earlier run" not in run(*asked, "--print-run", "20").stderr
    assert "earlier run" not in run(*asked).stderr
    table(tmp_path, {"1001": ROWS["1001"], "1002": "weir-frame-small,3,,"})
    assert "print-run-1.pdf is of an earlier run" in run(*asked).stderr


def test_a_tally_of_nothing_is_sound() -> None:
    """No order at all is no failure."""
    assert not Tally(check=False).failed
