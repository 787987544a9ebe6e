from __future__ import annotations

import difflib
import json
import os
import stat
from dataclasses import replace
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from templates_gen.disk.faults import FaultError
from templates_gen.inputs.stock_file import built_in, load, write_starter
from templates_gen.inputs.stock_store import changed, kept
from templates_gen.screen.cli import main

ONE = ("--hole", "20.14", "--part", "19.76")
MEASURED = replace(built_in(), kerf_uncertainty=0.005, trial_kerf=0.2)
"""The built-in stock once its kerf is measured: its trial was drawn for 0.20 mm."""


@pytest.fixture
def stock(tmp_path: Path) -> Path:
    """A stock file as a person begins with it."""
    path = tmp_path / "birch.toml"
    write_starter(path)
    return path


def run(*words: str) -> Result:
    """The command, as it would be typed."""
    return CliRunner().invoke(main, ["trial-cut", *words])


def put_in(path: Path, cutting: dict[str, str | None]) -> None:
    """These entries into the table [cutting]."""
    with kept(path) as (_, put):
        put({"cutting": cutting})


def difference(before: str, after: str) -> list[str]:
    """The lines that are gone (-) and new (+)."""
    lines = difflib.ndiff(before.splitlines(keepends=True), after.splitlines(keepends=True))
    return [line for line in lines if line[0] in "+-"]


def test_sizes_become_a_kerf() -> None:
    """Hole 20.14 and part 19.76 make 0.19 mm; two digits leave 0.005 mm open."""
    result = run(*ONE)
    assert result.exit_code == 0
    assert result.output.splitlines() == [
        "Kerf          0.19 mm, within 0.005 mm   1 measurement",
        "Not stored; give --stock FILE to put it into a stock file.",
    ]


def test_several_measurements_have_a_mean_and_a_range() -> None:
    """Kerfs of 0.19 and 0.21 mm: 0.2, and the range is said."""
    result = run(*ONE, "--hole", "20.16", "--part", "19.74")
    assert result.output.startswith("Kerf          0.2 mm, within 0.01 mm   2 measurements from 0.19 mm to 0.21 mm\n")


def test_only_the_measured_values_change(stock: Path) -> None:
    """The kerf's line has its new value, its uncertainty is added, and every other byte of the file stays."""
    before = stock.read_text("utf-8")
    result = run(*ONE, "--stock", str(stock))
    assert result.exit_code == 0
    assert f'Stored in {stock}: kerf = "0.19 mm", kerf_uncertainty = "0.005 mm"' in result.output
    assert difference(before, stock.read_text("utf-8")) == [
        '- kerf = "0.20 mm"\n',
        '+ kerf = "0.19 mm"\n',
        '+ kerf_uncertainty = "0.005 mm"\n',
        '+ kerf = "0.2 mm"\n',
    ]
    assert 'Kept there, so that the trial can be measured again: kerf = "0.2 mm"\n' in result.output
    assert load(stock) == replace(MEASURED, kerf_x=0.19, kerf_y=0.19)


def test_x_and_y_are_kept_apart(stock: Path) -> None:
    """Measured along both, the one kerf gives way to two; measured once more alike, two give way to one."""
    assert run(*ONE, "--hole-y", "20.10", "--part-y", "19.76", "--stock", str(stock)).exit_code == 0
    assert load(stock) == replace(MEASURED, kerf_x=0.19, kerf_y=0.17)
    assert run("--hole", "20.24", "--part", "19.78", "--stock", str(stock)).exit_code == 0
    assert load(stock) == replace(MEASURED, kerf_x=0.23, kerf_y=0.23)


def test_the_ease_of_the_slot_that_held_the_yarn(stock: Path) -> None:
    """The slot engraved 0.30, drawn for 0.20 mm of kerf and cut with 0.19, had an ease of 0.29 mm."""
    before = stock.read_text("utf-8")
    assert run(*ONE, "--slot", "0.30", "--stock", str(stock)).exit_code == 0
    assert load(stock).ease == 0.29
    kept = [line for line in difference(before, stock.read_text("utf-8")) if "ease" in line]
    remark = "                   # how much wider a slot is than the yarn that it holds\n"
    assert kept == [f'- ease = "0.15 mm"{remark}', f'+ ease = "0.29 mm"{remark}']


def test_values_for_programs() -> None:
    """Plain millimetres; null for what was not measured."""
    found = json.loads(run(*ONE, "--within", "0.02", "--json").output)
    kerf = {"mm": 0.19, "uncertainty_mm": 0.02, "low_mm": 0.19, "high_mm": 0.19, "measurements": 1}
    assert found == {"kerf_x": kerf, "kerf_y": kerf, "ease_mm": None, "drawn_for_mm": None}


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ((), "--hole: needs a size measured on the trial cut, got nothing; for example --hole 20.14 --part 19.76"),
        (("--hole", "19", "--part", "20"), "--hole: needs a hole larger than the part that came out of it"),
        (("--hole", "20.14"), "--part: needs one --part for every --hole, got 0 for 1"),
        (("--hole", "wide", "--part", "19"), "--hole: needs a size as the caliper shows it, in mm or inches, got"),
        (("--hole-y", "20.14", "--part-y", "19.7"), "--hole: needs a measurement along x beside the one along y"),
        ((*ONE, "--within", "-1"), "--within: needs a size as the caliper shows it"),
        ((*ONE, "--within", "1"), "--hole: needs readings fine enough for a kerf of about 0.19 mm"),
        (("--slot", "0.3"), "--slot: needs the stock file, or --drawn-for and a measured kerf"),
        (("--slot", "x", "--drawn-for", "0.2"), "--slot: needs a size as the caliper shows it"),
        ((*ONE, "--slot", "0.1", "--drawn-for", "0.4"), "--slot: needs a slot that came out wider than the yarn"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_in_one_sentence(words: tuple[str, ...], said: str) -> None:
    """Code 2, the option's name, and nothing on the other stream."""
    result = run(*words)
    assert (result.exit_code, result.stdout) == (2, "")
    assert result.stderr.startswith(said)
    assert result.stderr.count("\n") == 1


def test_a_refusal_leaves_the_file_as_it_was(stock: Path) -> None:
    """Neither bad sizes nor an ease that no stock has touch the file."""
    before = stock.read_bytes()
    assert run("--hole", "19", "--part", "20", "--stock", str(stock)).exit_code == 2
    result = run("--slot", "9", "--drawn-for", "0.2", "--stock", str(stock))
    assert (result.exit_code, "--slot: needs a slot whose ease is a length from 0 mm to 5 mm" in result.stderr) == (
        2,
        True,
    )
    assert stock.read_bytes() == before
    assert list(stock.parent.iterdir()) == [stock]


def test_a_file_that_is_no_stock_file_stays(tmp_path: Path) -> None:
    """A missing file, a file of another kind and a folder are each named in one sentence."""
    other = tmp_path / "other.toml"
    other.write_text("version = 1\n")
    for path in (tmp_path / "none.toml", other, tmp_path):
        assert run(*ONE, "--stock", str(path)).exit_code == 2
    assert other.read_text() == "version = 1\n"


@pytest.mark.parametrize(
    "text",
    [
        'version = 1\ncutting = {kerf = "0.2 mm", ease = "0.1 mm"} # mine\n',
        'cutting.kerf = "0.2 mm" # mine\ncutting.ease = "0.1 mm"\n',
        "[ cutting ] # mine\n\tkerf   =   '0.2 mm'\t# as measured\n[colours]\ncut = \"#000000\"",
    ],
)
def test_a_value_is_found_however_it_is_written(text: str) -> None:
    """Inline, dotted, indented: the value changes, the rest of the text stays."""
    new = changed(text, {"cutting": {"kerf": "0.19 mm"}})
    assert new.replace("0.19 mm", "0.2 mm").replace('"', "'") == text.replace('"', "'")


def test_marks_line_ends_rights_and_links_stay(stock: Path) -> None:
    """A byte order mark, Windows line ends, the file's rights, and a link that leads to it."""
    text = stock.read_text("utf-8").replace("\n", "\r\n")
    stock.write_bytes(b"\xef\xbb\xbf" + text.encode())
    stock.chmod(0o640)
    link = stock.with_name("link.toml")
    link.symlink_to(stock)
    put_in(link, {"kerf": "0.19 mm", "kerf_uncertainty": "0.01 mm"})
    data = stock.read_bytes()
    assert data.startswith(b"\xef\xbb\xbf#")
    assert data.count(b"\n") == data.count(b"\r\n") == text.count("\n") + 1
    assert stat.S_IMODE(stock.stat().st_mode) == 0o640
    assert link.is_symlink()
    assert load(stock).kerf_x == 0.19


def test_a_replacement_that_fails_leaves_the_old_file(stock: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """When the new file cannot be moved into place, the old one stands and nothing lies beside it."""
    before = stock.read_bytes()

    def refuse(*_: object) -> None:
        raise OSError(28, os.strerror(28))

    monkeypatch.setattr(Path, "replace", refuse)
    with pytest.raises(
        FaultError, match=r"could not replace .*birch\.toml: the disk is full; nothing was changed there"
    ):
        put_in(stock, {"kerf": "0.19 mm"})
    assert stock.read_bytes() == before
    assert list(stock.parent.iterdir()) == [stock]
