"""What is typed and what stands in the file are the same, there and back."""

from __future__ import annotations

import datetime
import tomllib
from pathlib import Path

import pytest

from layout.kit.kit import kit_values, read_kit
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.texts import plain_number
from templates_gen.desk.slip.typed import example, typed_of, values_of
from templates_gen.inputs.kit_file import demo
from templates_gen.messages.english import ENGLISH
from tests.kits import KINDS, font_metrics, kit_of

SAMPLES = sorted((Path(__file__).parents[3] / "sample_kits").glob("*.toml"))


def test_the_example_is_the_demo_kit() -> None:
    """The slip to start from reads as the built-in kit, without a trouble."""
    found = read(example(), ENGLISH)
    assert found.troubles == ()
    assert found.kit == demo()
    assert found.plan is not None


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_a_sample_kit_comes_back(path: Path) -> None:
    """The file of each sample kit, typed and written again, is the same values, so the same kit."""
    values = tomllib.loads(path.read_text("utf-8"))
    assert values_of(typed_of(values)) == values


@pytest.mark.parametrize("kind", KINDS)
def test_a_kit_of_every_kind_comes_back(kind: str) -> None:
    """Whatever the frame ends and the way of winding, the kit is the same."""
    kit = kit_of(KINDS[kind])
    assert read_kit(values_of(typed_of(kit_values(kit))), font_metrics()) == kit


def test_what_is_typed_stays_as_it_is() -> None:
    """Inches in fractions are written as they were typed."""
    typed = {**example(), "frame.outer_width": "15 3/4 in"}
    assert values_of(typed)["frame"]["outer_width"] == "15 3/4 in"  # type: ignore[index]


def test_keys_of_another_kind_of_ends_are_kept_and_not_written() -> None:
    """The bars of a frame that has notches now stay typed, and stand in no file."""
    typed = {**example(), "frame.ends": "notched ends", "frame.thickness": "10 mm"}
    frame = values_of(typed)["frame"]
    assert isinstance(frame, dict)
    assert "bar_diameter" not in frame
    assert frame["thickness"] == "10 mm"
    assert values_of({**typed, "frame.ends": "round bars"})["frame"]["bar_diameter"] == "15 mm"  # type: ignore[index]


@pytest.mark.parametrize(
    ("text", "value"),
    [("13", 13), (" 13 ", 13), ("2,5", 2.5), ("2.5", 2.5), (",5", 0.5), ("-0,13", -0.13), ("1e3", 1000.0), ("007", 7),
     ("1,000", "1,000"), ("12 x", "12 x"), ("1/2", "1/2"), ("9" * 5000, "9" * 5000), ("٣", "٣"), ("0,125", 0.125)],
)  # fmt: skip
def test_plain_numbers_take_a_decimal_comma(text: str, value: object) -> None:
    """A number is written as one, with either decimal sign; what may mean thousands stays as it was typed."""
    assert plain_number(text) == value


def test_a_length_takes_a_decimal_comma() -> None:
    """2,5 cm is read as it stands."""
    found = read({**example(), "frame.side_width": "2,5 cm"}, ENGLISH)
    assert found.kit is not None
    assert found.kit.frame.side_width.mm == 25


def test_an_empty_list_is_not_one_that_was_left_out() -> None:
    """Nothing bought in is written as an empty list; left empty, the usual things lie in the box."""
    values = {**values_of(example()), "box": {"also": [], "holds": []}}
    typed = typed_of(values)
    assert (typed["box.also"], typed["box.holds"]) == ("none", "none")
    assert values_of(typed) == values
    assert "box" not in values_of(example())


def test_what_a_file_says_too_often_is_refused() -> None:
    """More rows than a list may have, and a reading with both lengths, are kept, so that they are refused."""
    values = values_of(example())
    many = {**values, "weft": {"colours": [{"name": f"c{number}", "share": 1} for number in range(1, 61)]}}
    assert [each.field for each in read(typed_of(many), ENGLISH).troubles] == ["weft.colours[1].name"]
    assert len(lines(typed_of(many))) < 500
    both = {**values, "sett": {"readings": [{"pairs": 13, "window": "5 cm", "measure": "5 cm"}]}}
    assert [each.field for each in read(typed_of(both), ENGLISH).troubles] == ["sett.readings[1].over"]


def test_a_file_that_is_nested_without_end_is_read() -> None:
    """Tables in tables in tables: what is too deep for any key is refused like every unknown one."""
    deep: dict[str, object] = {"x": 1}
    for _ in range(3000):
        deep = {"frame": deep}
    found = read(typed_of({**values_of(example()), **deep, "when": datetime.date(2020, 1, 1)}), ENGLISH)
    assert {each.field.partition(".")[0] for each in found.troubles} >= {"when"}
