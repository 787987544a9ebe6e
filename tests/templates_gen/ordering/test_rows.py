"""Rows to orders: each kind of cell as a kit file would have it, and everything wrong with a row at once."""

from __future__ import annotations

import re
import tomllib
from dataclasses import replace
from pathlib import Path

import pytest
from order_files import LARGE, SMALL, one_kit, order, problems, rows, three_kits

from layout.kit.kit import Kit, read_kit
from layout.kit.merging import merged, without
from layout.kit.order import OrderGiven
from layout.values.errors import FieldErrors
from layout.values.units import read_length
from templates_gen.lettering.fonts import metrics
from templates_gen.ordering.order import Order, Problem, Unreadable
from templates_gen.ordering.problems import read_problems

AS_TOML = """
[yarns]
warp = "hemp, two-ply"
[sett]
given = "3.5 ends/cm"
[frame]
outer_width = "16 1/2 in"
outer_height = "60,5 cm"
margin = "12 mm"
[weaving]
width = "20,5 cm"
doubled_warp = true
doubled_selvedges = 2
draw_in = "2,5 %"
start = "right"
[paper]
size = "a4"
language = "de"
[weft]
beat = 0.25
colours = [{name = "madder", share = 60}, {name = "ash grey", share = 40}]
"""
ROW = """\
order;kit;Language;yarns.warp;sett.given;frame.outer_width;frame.outer_height;frame.margin;weaving.width;\
weaving.doubled_warp;weaving.doubled_selvedges;weaving.draw_in;weaving.start;paper.size;weft.beat;weft.colours
1;weir-frame-middle;Deutsch;hemp, two-ply;3,5 ends/cm;16 1/2 in;60,5 cm;12 mm;20,5 cm;TRUE;2,0;2,5%;Right;A4;0,25;\
"[{name = ""madder"", share = 60}, {name = ""ash grey"", share = 40}]"
"""


def kit_of(found: Order) -> Kit:
    """The kit of an order."""
    return read_kit(found.values, metrics())


def test_a_row_says_what_a_kit_file_says(tmp_path: Path) -> None:
    """Numbers, lengths, shares, flags, choices, texts and lists give the same kit as the same keys as TOML."""
    kit = three_kits().kits[1]
    expected = read_kit(merged(without(kit.values, ("sett.readings",)), tomllib.loads(AS_TOML)), metrics())
    expected = replace(expected, order=OrderGiven("1"))
    found = order(tmp_path, ROW)
    assert kit_of(found) == expected
    assert found.kit == kit.kit.name


def test_a_row_without_values_is_the_kit_of_the_range(tmp_path: Path) -> None:
    """An empty cell, and one that is not there, takes what the range says; it is one box."""
    found = order(tmp_path, f'order,kit,copies,weaving.width,sett.readings\n1,"{SMALL}",,  \n')
    assert (found.copies, found.number, found.folder, found.line) == (1, "1", "1", 2)
    assert without(found.values, ("order",)) == three_kits().kits[0].values


def test_order_and_buyer_are_values_of_the_kit(tmp_path: Path) -> None:
    """Zeros are kept; what has no buyer says none."""
    first, second = rows(tmp_path, "order,buyer\n007,Webstube Färö\n7,\n", one_kit())
    assert isinstance(first, Order)
    assert isinstance(second, Order)
    assert first.values["order"] == {"number": "007", "buyer": "Webstube Färö"}
    assert second.values["order"] == {"number": "7"}


def test_orders_share_nothing_that_one_changes(tmp_path: Path) -> None:
    """What one row says is not in the next one, nor in the range."""
    first, second = rows(tmp_path, "order,weaving.width\n1,20 cm\n2,\n", one_kit())
    assert isinstance(first, Order)
    assert isinstance(second, Order)
    assert first.values["weaving"] != second.values["weaving"] == one_kit().kits[0].values["weaving"]


def judged(folder: Path, text: str) -> list[Problem]:
    """The problems of the one row, or those that its kit has."""
    (found,) = rows(folder, text)
    if isinstance(found, Unreadable):
        return list(found.problems)
    with pytest.raises(FieldErrors) as error:
        kit_of(found)
    return list(read_problems(found, error.value))


BARE = {
    '"=""00123"""': "00123",  # how a spreadsheet is made to keep zeros (common practice, no source)
    '="00123"': "00123",
    " 12 ": "12",
    '"12"': "12",
    "\u00a012": "12",
}


@pytest.mark.parametrize("cell", BARE)
def test_what_stands_round_a_cell_is_taken_off(cell: str, tmp_path: Path) -> None:
    """Quotes, spaces, and a formula that only says a text."""
    assert order(tmp_path, f"order,buyer\n{cell},x\n", one_kit()).number == BARE[cell]


@pytest.mark.parametrize("buyer", ["=SUM(A1)", "-Weir", "+Weir", "@Weir", "'=Weir"])
def test_the_guard_of_a_formula_is_taken_off(buyer: str, tmp_path: Path) -> None:
    """An apostrophe before such a text (OWASP, "CSV Injection", from memory) is none of its letters."""
    assert order(tmp_path, f"order,buyer\n1,'{buyer}\n", one_kit()).values["order"] == {"number": "1", "buyer": buyer}


def test_another_apostrophe_stays(tmp_path: Path) -> None:
    """A name may begin with one."""
    found = order(tmp_path, "order,buyer\n1,'t Weefhuis\n", one_kit())
    assert found.values["order"] == {"number": "1", "buyer": "'t Weefhuis"}


# Key and cell, and what the sentence must say.
WRONG = [
    ("weaving.width", "24", "a length with its unit.*got '24'; for example 24 cm"),
    ("weaving.width", "1.234,5 mm", "a length with its unit"),
    ("weaving.width", "1,234 mm", "read in one way only"),
    ("weft.beat", "1.234,5", "nothing between thousands, got '1.234,5'; for example 0.5"),
    ("weft.beat", "1,234.5", "nothing between thousands"),
    ("weft.beat", "1.234.567", "nothing between thousands"),
    ("weft.beat", "1 234", "nothing between thousands"),
    ("weft.beat", "1,234", "may mean 1234 or 1.234"),
    ("warp.ball", "1.500", "may mean 1500 or 1,500"),
    ("weaving.width", "1.234 mm", "may mean 1234 or 1,234"),
    ("weft.beat", "7", "a number from 0 to 1"),
    ("weft.beat", "1e3", "nothing between thousands"),
    ("weft.beat", "inf", "nothing between thousands"),
    ("weft.beads.number", "2,5", "a whole number from 1 to 10,000"),
    ("weaving.doubled_warp", "yes", "needs true or false, got 'yes'; for example true"),
    ("weaving.start", "lefft", "did you mean left.*example left"),
    ("language", "nl", '"de" .German.*example de'),
    ("paper.size", "a44", "did you mean a4"),
    ("sett.readings", "[{pairs = 13", "as TOML has it .*got '.{pairs = 13'"),
    ("sett.readings", "13", "a list as TOML has it, and nothing else"),
    ("sett.readings", '"[1]\nversion = 2"', "and nothing else"),
    ("sett.readings", "[2024-01-01]", "and nothing else"),
    ("sett.readings", "[" * 900 + "]" * 900, "TOML"),
    ("sett.readings", "[" * 30 + "]" * 30, "and nothing else"),
    ("sett.readings", "[" + "1" * 3000 + "]", "at most 2000 characters"),
    ("box.holds", "strips", "a list as TOML has it"),
    ("box.holds", '["stripes"]', "strips is meant"),
    ("buyer", '"a\nb"', "one line .*in line 2 takes in all up to line 3"),
    ("buyer", "a\0b", r"U\+0000"),
    ("buyer", "a\x1bb", r"U\+001B"),
    ("weaving.width", "2\x854 cm", r"U\+0085"),
    ("copies", "0", "a whole number from 1 to 500, got 0"),
    ("copies", "501", "a whole number from 1 to 500"),
    ("copies", "1,5", "a whole number from 1 to 500"),
    ("copies", "two", "a number"),
    ("kit", "Weir frame, smal", f'"{SMALL}" is meant.*for example weir-frame-small'),
    ("kit", "Heron", "of a kit in this range"),
    ("order", "../1", "letters, figures"),
]


@pytest.mark.parametrize(("name", "cell", "said"), WRONG)
def test_a_wrong_cell_is_refused(name: str, cell: str, said: str, tmp_path: Path) -> None:
    """One problem in that column, found in the row or by its kit, whose example stands in a cell."""
    good = {"order": "1", "kit": SMALL.replace(",", "")} | {name: cell}
    ((column, sentence),) = judged(tmp_path, f"{';'.join(good)}\n{';'.join(good.values())}\n")
    assert column == name
    assert re.search(said, sentence), sentence


def test_points_are_clear_where_commas_are_between_columns(tmp_path: Path) -> None:
    """There a point stands before decimals, three of them too."""
    kit = kit_of(order(tmp_path, "order,kit,weaving.width\n1,weir-frame-small,101.125 mm\n"))
    assert kit.weaving.width == read_length("101.125 mm")


def test_all_that_is_wrong_with_a_row_is_said_at_once(tmp_path: Path) -> None:
    """In the order of its columns: what is no value, and what the kit would refuse of a single cell."""
    text = "weaving.width;order;kit;copies;weft.beat;language\n24;..;;0;x;xx;more\n"
    found = problems(tmp_path, text)
    assert [problem.column for problem in found] == [*text.split("\n")[0].split(";"), ""]
    assert "column 7 has no name in the first line, but 'more' stands in it" in found[-1].sentence


def test_a_cell_beyond_the_columns_is_a_problem(tmp_path: Path) -> None:
    """A decimal comma without quotes moves all that stands behind it; empty cells there are nothing."""
    assert problems(tmp_path, "order,weaving.width,buyer\n1,20,5 cm,x,\n", one_kit())[-1].sentence.startswith(
        "column 4"
    )
    assert order(tmp_path, "order,,buyer,\n1,,x,,\n", one_kit()).number == "1"


def test_an_order_of_an_earlier_number_is_judged(tmp_path: Path) -> None:
    """Even where the first one cannot be read, or both rows are the same; the line of the first is said."""
    found = rows(tmp_path, "order,weft.beat\n7,x\na7,\n7,0.5\nA7,\n7,0.5\n", one_kit())
    assert [type(each) for each in found] == [Unreadable, Order, Unreadable, Unreadable, Unreadable]
    lines = [each.problems[0].sentence for each in found[2:] if isinstance(each, Unreadable)]
    assert ["line 2 has it" in lines[0], "line 3 has it" in lines[1], "line 2 has it" in lines[2]] == [True] * 3


def test_what_a_kit_refuses_is_said_of_the_column(tmp_path: Path) -> None:
    """With the header as it was written, the sentence of the kit, and an example for the cell."""
    text = f"order;kit;Weaving.Width\n1;{SMALL};99 cm\n"
    said = "needs at most the 21 cm that the frame leaves between its margins, got 99 cm; for example as wide as fits"
    assert judged(tmp_path, text) == [("Weaving.Width", said)]


def test_what_is_wrong_inside_a_list_is_said_of_its_column(tmp_path: Path) -> None:
    """With the key inside, and its example as TOML."""
    text = f'order;kit;sett.readings\n1;{SMALL};"[{{pairs = 13, window = ""5""}}]"\n'
    ((column, sentence),) = judged(tmp_path, text)
    assert column == "sett.readings"
    assert sentence.startswith("sett.readings[1].window: needs a length")
    assert sentence.endswith('for example window = "5 cm"')


def test_what_comes_from_the_range_says_so(tmp_path: Path) -> None:
    """Where the row makes a value of the range wrong, no column is named, and what nobody said is missing."""
    found = judged(tmp_path, f"order;kit;frame.ends\n1;{SMALL};nails\n")
    assert {column for column, _ in found} == {""}
    said = dict(sentence.split(": ", 1) for _, sentence in found)
    assert "the value comes from the range" in said["frame.bar_diameter"]
    assert said["frame.thickness"].endswith('got nothing; for example thickness = "18 mm"')


def test_what_is_wrong_with_a_table_is_said_of_its_first_column(tmp_path: Path) -> None:
    """Half of a count of picks is refused as a whole."""
    ((column, sentence),) = judged(tmp_path, f"order;kit;weft.picks.number\n1;{SMALL};26\n")
    assert column == "weft.picks.number"
    assert sentence.startswith("weft.picks: needs number and over")


INSTEAD = {
    "sett.given": "3 ends/cm",
    "weft.picks.number;weft.picks.over": "26;5 cm",
    "warp.grams;warp.length": "100;400 m",
}


@pytest.mark.parametrize("keys", INSTEAD)
def test_a_row_may_say_it_another_way(keys: str, tmp_path: Path) -> None:
    """A sett given stands instead of the readings of the range, picks instead of beads, weight instead of a count."""
    kit_of(order(tmp_path, f"order;kit;{keys}\n1;{LARGE};{INSTEAD[keys]}\n"))


def test_both_ways_in_one_row_are_judged(tmp_path: Path) -> None:
    """What a row says twice is for the kit to refuse."""
    text = f'order;kit;sett.given;sett.readings\n1;{SMALL};6 epi;"[{{pairs = 13, window = ""5 cm""}}]"\n'
    ((column, sentence),) = judged(tmp_path, text)
    assert column == "sett.given"
    assert "the only one of given and readings" in sentence
