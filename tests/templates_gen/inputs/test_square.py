"""The command square-check: sizes in, a scale out, into the stock file, and files that are drawn against it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from layout.drawing.correction import Scale
from templates_gen.inputs.stock_file import load, write_starter
from templates_gen.screen.cli import main

GOOD = "--x 140.02 --band-x 9.79 --y 139.66 --band-y 9.80 --a 139.90 --b 139.78"
TRUE_ONE = "--x 139.80 --band-x 9.79 --y 139.81 --band-y 9.80 --a 139.80 --b 139.79"

TOO_FAR = (
    "--x: needs spans of 140 mm that came out within 3 %, since no cutter is further off: open the file at its size, "
    "in mm, and cut again, "
)


def run(words: str, *more: str) -> Result:
    """The command, as it would be typed."""
    return CliRunner().invoke(main, ["square-check", *words.split(), *more])


@pytest.fixture
def stock(tmp_path: Path) -> Path:
    """A stock file as a person begins with it."""
    path = tmp_path / "birch.toml"
    write_starter(path)
    return path


def test_six_sizes_become_a_scale() -> None:
    """(140.02 - 9.79) / 130 = 1.00177; (139.66 - 9.80) / 130 = 0.99892; (139.90 - 139.78) / 140 = 0.00086."""
    result = run(GOOD)
    assert (result.exit_code, result.stderr) == (0, "")
    assert result.output.splitlines() == [
        "Along x  0.177 % too long, within 0.033 %: 300 mm come out 300.53 mm",
        "Along y  0.108 % too short, within 0.033 %: 300 mm come out 299.68 mm",
        "Square   leans 0.086 % to the right, within 0.03 %: 0.26 mm on 300 mm up",
        "Not stored; give --stock FILE to put it into a stock file.",
    ]


def test_only_the_scale_changes_in_the_file(stock: Path) -> None:
    """Every line of the file stays, remarks too; four lines are new."""
    before = stock.read_text("utf-8").splitlines()
    result = run(GOOD, "--stock", str(stock))
    assert result.exit_code == 0
    after = stock.read_text("utf-8").splitlines()
    new = ['x = "0.177 %"', 'y = "-0.108 %"', 'skew = "0.086 %"', 'uncertainty = "0.033 %"']
    assert [line for line in after if line not in before] == new
    assert [line for line in after if line not in new] == before
    found = load(stock)
    assert (found.scale, found.scale_uncertainty) == (Scale(1.00177, 0.99892, 0.00086), 0.00033)


def test_a_second_check_is_measured_from_nothing(stock: Path) -> None:
    """The plate is drawn without a scale, so the same plate measured again says the same, and stands for the old."""
    run(GOOD, "--stock", str(stock))
    first = stock.read_bytes()
    result = run(GOOD, "--stock", str(stock))
    assert "It stands for what was stored before" in result.output
    assert stock.read_bytes() == first


def test_what_is_less_than_its_readings_is_not_stored(stock: Path) -> None:
    """It is said that correcting is pointless, the file stays, and a scale that is there goes."""
    before = stock.read_bytes()
    result = run(TRUE_ONE, "--stock", str(stock))
    assert "Along x  right as far as the readings show, within 0.033 %" in result.output
    assert "there is nothing that correcting would make better" in result.output
    assert stock.read_bytes() == before
    run(GOOD, "--stock", str(stock))
    assert "is taken out" in run(TRUE_ONE, "--stock", str(stock)).output
    assert stock.read_bytes() == before


def test_more_than_one_per_cent_is_said_to_be_an_import(stock: Path) -> None:
    """It is stored, with the likelier cause; leaning so far, the machine should be set square."""
    result = run("--x 142.0 --band-x 9.95 --y 142.0 --band-y 9.95 --a 142.0 --b 142.0", "--stock", str(stock))
    assert "More than 1 % off: a file that was not opened at its size is likelier" in result.output
    assert load(stock).scale.x == pytest.approx(1.01577)
    leaning = run("--x 139.8 --band-x 9.8 --y 139.8 --band-y 9.8 --a 140.9 --b 138.7")
    assert "More than 1 % off square: set the axes" in leaning.output


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("", "--x: needs a size measured on the square check; all six are needed, got nothing"),
        (GOOD.replace("--b 139.78", ""), "--b: needs a size measured on the square check"),
        (GOOD.replace("140.02", "wide"), "--x: needs a size as the caliper shows it, in mm or inches, got 'wide'"),
        (GOOD.replace("9.79", "139.79"), "--band-x: needs the band beside the window, about 10 mm, not the span of"),
        (GOOD.replace("139.78", "138.78"), "--a: needs diagonals that are together as long as X and Y together"),
        (GOOD.replace("140.02", "104.02"), "--a: needs diagonals that are together as long as X and Y together"),
        (
            "--x 186.5 --band-x 13.13 --y 186.4 --band-y 13.12 --a 186.40 --b 186.48",
            TOO_FAR + "got 33.362 % too long (as from a drawing whose pixels a program takes for 72, 90 or 96",
        ),
        (
            "--x 5.31 --band-x 0.19 --y 5.31 --band-y 0.19 --a 5.31 --b 5.31",
            TOO_FAR + "got 96.062 % too short (as from a drawing in another unit",
        ),
        (
            "--x 139.8 --band-x 9.8 --y 139.8 --band-y 9.8 --a 143.9 --b 135.7",
            "--a: needs a cutter that is within 3 % of square",
        ),
        (GOOD + " --within -1", "--within: needs a size as the caliper shows it"),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(words: str, said: str, stock: Path) -> None:
    """Code 2, the option's name, one line, and the file stays as it was."""
    before = stock.read_bytes()
    result = run(words, "--stock", str(stock))
    assert (result.exit_code, result.stdout) == (2, "")
    assert result.stderr.startswith(said)
    assert result.stderr.count("\n") == 1
    assert stock.read_bytes() == before


def test_several_measurements_are_their_mean() -> None:
    """Readings further apart than the caliper may be off say how sure their mean is."""
    found = json.loads(run(GOOD + " --x 140.22", "--json").output)
    assert found["x"] == pytest.approx((140.12 - 9.79) / 130)
    assert found["within"]["x"] == pytest.approx((0.1**2 + 0.03**2) ** 0.5 / 130, abs=1e-7)


def test_values_for_programs() -> None:
    """What comes out of one millimetre, how sure that is, and what is to be thought of it."""
    found = json.loads(run(GOOD, "--within", "0.02", "--json").output)
    assert list(found) == ["x", "y", "skew", "within", "known", "likely_import", "causes"]
    assert found["within"]["skew"] == pytest.approx(0.02 * 2**0.5 / 140, abs=1e-7)
    assert (found["known"], found["likely_import"], found["causes"]) == (True, False, [])


def test_a_sheet_that_would_be_drawn_too_large_keeps_its_file(stock: Path) -> None:
    """The stock's own sentence, and nothing is stored."""
    text = stock.read_text("utf-8").replace('width = "600 mm"', 'width = "3500 mm"')
    stock.write_text(text, "utf-8")
    result = run("--x 139.5 --band-x 9.8 --y 139.5 --band-y 9.8 --a 139.5 --b 139.5", "--stock", str(stock))
    assert (result.exit_code, result.stderr.startswith("sheet.width: needs at most 34")) == (2, True)
    assert stock.read_text("utf-8") == text
