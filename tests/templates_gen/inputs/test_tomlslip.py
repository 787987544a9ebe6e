"""Slips in the writing of a kit or stock file: the line with a caret, and what to write, which is then read."""

from __future__ import annotations

from importlib import resources
from pathlib import Path

import pytest
from yardstick import times

from layout.values.errors import FieldErrors
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.inputs.kit_file import KitFileError
from templates_gen.inputs.stock_file import StockFileError

KIT = resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8")
STOCK = resources.files("templates_gen").joinpath("data/stock.toml").read_text(encoding="utf-8")
NAME, WIDTH = 'name = "Willow frame, small"', 'outer_width = "40 cm"'
READING, BEADS = '{pairs = 13, window = "5 cm"}', 'beads = {number = 36, over = "5 cm"}'

MENDED = [
    (NAME, "name = Willow frame, small", NAME),
    (NAME, "name = \u201cWillow frame, small\u201d", NAME),
    (NAME, "name = \u201eWillow frame, small\u201c", NAME),
    (NAME, "name = \u2018Willow frame, small\u2019", "name = 'Willow frame, small'"),
    (NAME, 'name = "Willow frame, small', NAME),
    (NAME, 'name = Willow frame, small"', NAME),
    (NAME, 'name "Willow frame, small"', NAME),
    (NAME, "name Willow", 'name = "Willow"'),
    (NAME, 'name: "Willow frame, small"', NAME),
    (NAME, "name = 'it's'", 'name = "it\'s"'),
    (NAME, r'name = "a\q"', r'name = "a\\q"'),
    (WIDTH, "outer_width = 40 cm", WIDTH),
    (WIDTH, "\touter_width\t=\t40 cm", 'outer_width = "40 cm"'),
    (WIDTH, 'outer_width = "40" cm', WIDTH),
    (WIDTH, "outer_width = 40,5 cm", 'outer_width = "40,5 cm"'),
    (WIDTH, "outer_width = 15 1/2 in", 'outer_width = "15 1/2 in"'),
    (WIDTH, 'outer_width = 16"', 'outer_width = "16 in"'),
    (WIDTH, 'outer_width = "16""', 'outer_width = "16 in"'),
    (WIDTH, 'outer width = "40 cm"', WIDTH),
    (WIDTH, "outer_width = 40 cm  # the width", WIDTH),
    ("[sett]", "[sett", "[sett]"),
    ("[sett]", "sett]", "[sett]"),
    (READING, "{pairs = 13, window = 5 cm}", READING + ","),
    (READING, '{pairs = 13 window = "5 cm"}', READING + ","),
    (READING, '{pairs = 13, window = "5 cm"', READING + ","),
    (READING + ",", READING, READING + ","),
    (BEADS, 'beads = {number = 36, over = "5 cm"', BEADS),
    (BEADS, 'beads = number = 36, over = "5 cm"}', BEADS),
    ('draw_in = "2 %"', "draw_in = 2 %", 'draw_in = "2 %"'),
    ('draw_in = "2 %"', "draw_in = 0,02", "draw_in = 0.02"),
    ('draw_in = "2 %"', "draw_in = .02", "draw_in = 0.02"),
    ("count = 12", "count = 12\nweighed = True", "weighed = true"),
]


def refused(path: Path, text: str) -> list[str]:
    """The lines of the refusal of such a kit file."""
    path.write_text(text, encoding="utf-8")
    with pytest.raises(KitFileError) as caught:
        kitfile.load(path)
    lines = str(caught.value).split("\n")
    assert all(line.isprintable() for line in lines)
    return lines


@pytest.mark.parametrize(("right", "slip", "write"), MENDED, ids=[slip for _, slip, _ in MENDED])
def test_what_to_write_is_said_and_is_read(tmp_path: Path, right: str, slip: str, write: str) -> None:
    """The line is shown with a caret below it; with the line that is offered the file is read as TOML."""
    path = tmp_path / "kit.toml"
    text = KIT.replace(right, slip, 1)
    said, line, caret = refused(path, text)
    assert said.endswith(f"; write {write}")
    number, column = (int(each) for each in said.split(" yet, line ")[1].split(":")[0].split(", column "))
    wrong = text.split("\n")[number - 1].replace("\t", " ")
    assert caret.strip() == "^"
    if len(wrong) <= 76:
        assert (line, len(caret)) == (f"  {wrong}", 2 + column)
    lines = text.split("\n")
    lines[number - 1] = write
    path.write_text("\n".join(lines), encoding="utf-8")
    try:
        kitfile.load(path)
    except FieldErrors:
        return  # read, and another complaint


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("version = 1\nname = Willow", "line 2, column 8: text must stand in straight quotes"),
        ('version = 1\nname = "Willow\n', "line 2, column 15: the quotes are not closed"),
        ("[sett", "line 1, column 6: a table's name stands between [ and ]"),
        ('name = "a"\nname = "b"', "line 2, column 1: the same key or table for a second time; name is in line 1"),
        ("[sett]\n[sett]\n", "line 2, column 1: the same key or table for a second time; [sett] is in line 1"),
        ("version = 1\r\nname =\r\n", "line 2, column 7: a value is missing behind the ="),
        ("gr\u00f6\u00dfe", "line 1, column 3: a key has only the letters a to z"),
        ('name = "\x07"', r"line 1, column 9: illegal character '\x07'"),
        ("[sett]\nreadings = [\n{pairs = 1},\n[frame]\n", "line 2, column 12: this bracket is not closed"),
        ('a = {b = 1, b = 2}', "line 1, column 1: the same key or table for a second time"),
    ],
)  # fmt: skip
def test_every_slip_is_placed(tmp_path: Path, text: str, place: str) -> None:
    """The sentence names the file and the place counted from 1."""
    path = tmp_path / "kit.toml"
    path.write_bytes(text.encode())
    with pytest.raises(KitFileError) as caught:
        kitfile.load(path)
    assert str(caught.value).startswith(f"{path} is no kit file yet, {place}")


def test_a_long_line_is_cut_round_the_place(tmp_path: Path) -> None:
    """No shown line is wider than 80 characters, and the caret stands below the slip."""
    said, line, caret = refused(tmp_path / "kit.toml", KIT.replace(NAME, f'name = "{"x" * 300}" cm {"y" * 300}'))
    assert len(line) <= 80
    assert line[len(caret) - 1] == "c"
    assert said.count("\n") == 0


def test_control_characters_are_shown_and_the_caret_still_fits(tmp_path: Path) -> None:
    """What a screen would act on is spelled out; the caret moves along."""
    _, line, caret = refused(tmp_path / "kit.toml", 'name = "\x1b[2J\x07"\n')
    assert r"\x1b[2J" in line
    assert line[len(caret) - 1 :].startswith(r"\x1b")


@pytest.mark.parametrize("slip", ["thickness = 3 mm", 'thickness = "3" mm', "thickness = \u201c3 mm\u201d"])
def test_a_stock_file_is_answered_alike(tmp_path: Path, slip: str) -> None:
    """Both kinds of file go one way."""
    path = tmp_path / "stock.toml"
    path.write_text(STOCK.replace('thickness = "3 mm"', slip, 1), encoding="utf-8")
    with pytest.raises(StockFileError) as caught:
        stockfile.load(path)
    assert 'write thickness = "3 mm"\n  ' in str(caught.value)


@pytest.mark.parametrize(
    "text", ["[" + " " * 900_000, "x = [\n" * 50_000, "a" * 900_000, "[a" * 300_000, "a\n" * 400_000]
)
def test_hostile_text_is_answered_at_once(tmp_path: Path, text: str) -> None:
    """No pattern that looks into a line runs away."""
    path = tmp_path / "kit.toml"
    path.write_text(text)

    def answer() -> None:
        with pytest.raises(KitFileError):
            kitfile.load(path)

    assert times(answer) < 10
