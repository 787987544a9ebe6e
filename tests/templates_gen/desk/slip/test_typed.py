"""What is typed and what stands in the file are the same, there and back."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from layout.kit.kit import kit_values, read_kit
from templates_gen.desk.slip.reading import read
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
