"""Any kit, typed and written again, is the same kit; and whatever is typed is read or refused, never more."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from layout.box.shop_values import read_shop
from layout.cutting.stock.stock_values import read_stock
from layout.kit.kit import read_kit
from templates_gen.desk.slip.fields import OF_A_RUN
from templates_gen.desk.slip.judging import judged
from templates_gen.desk.slip.lines import lines, steps
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.typed import example, typed_of, values_of
from templates_gen.inputs.kit_file import KitFileError, load
from templates_gen.inputs.stock_file import built_in, built_in_values
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.english import ENGLISH
from tests.kits import font_metrics
from tests.strategies import kits
from tests.templates_gen.desk.slip.wrongs import wrong_texts

ROOT = Path(__file__).parents[4]
RANGES = sorted({*ROOT.glob("tests/sample_ranges/*.toml"), ROOT / "templates_gen" / "data" / "range.toml"})
NAMES = sorted(lines({**example(), "warp.threads[1].count": "8", "weft.strands[1].threads[1].count": "8"}))


@given(kits())
def test_any_kit_comes_back(values: dict[str, object]) -> None:
    """What is typed for the values of a kit file is written as values that read as the very same kit."""
    written = values_of(typed_of(values))
    assert read_kit(written, font_metrics()) == read_kit(values, font_metrics())
    assert typed_of(written) == typed_of(values)


@pytest.mark.parametrize("path", RANGES, ids=[path.stem for path in RANGES])
def test_what_a_file_says_of_a_run_comes_back(path: Path) -> None:
    """Copies, what is bought and sold and the class are typed beside the kit, and written where they stood."""
    values = tomllib.loads(path.read_text("utf-8"))
    written = values_of(typed_of(values))
    run = {key: values[key] for key in OF_A_RUN if key in values}
    assert len(run) > 2
    assert {key: written[key] for key in run} == run
    shop = {key: value for key, value in run.items() if key != "copies"}
    assert read_shop({key: written[key] for key in shop}, font_metrics()) == read_shop(shop, font_metrics())


def test_a_stock_file_comes_back() -> None:
    """The built-in stock, typed and written again, is the same; so is one that only says what is other in it."""
    typed = typed_of(built_in_values(), "stock/")
    kept = {key: value for key, value in built_in_values().items() if value != {}}
    assert values_of(typed, "stock/") == kept
    changed = read_stock(values_of({"stock/thickness": "4 mm"}, "stock/"), font_metrics())
    assert (changed.thickness, changed.name, changed.grain) == (4, built_in().name, built_in().grain)
    assert read({**example(), "stock/thickness": "4 mm"}, ENGLISH).stock == changed
    two = read({**example(), "stock/cutting.kerf_x": "0.2 mm", "stock/cutting.kerf_y": "0.1 mm"}, ENGLISH)
    assert two.stock is not None
    assert (two.stock.kerf_x, two.stock.kerf_y) == (0.2, 0.1)


def test_without_a_stock_typed_there_is_none() -> None:
    """A slip that says nothing of a stock writes no stock file, and none is read."""
    assert values_of(example(), "stock/") == {}
    assert read(example(), ENGLISH).stock is None


NASTY = st.one_of(
    st.text(max_size=200),
    st.sampled_from(
        ["\x00", "\x1b[2J", "9" * 5000, "10**5000", "1e400", "nan", "-inf", "\u202e40 cm", "🧶" * 50, "x" * 200,
         "\ud800", "[" * 200, "'" * 100, '"""', "40 cm\n50 cm", "1/0 in", "½", "٣ cm", "0x10", "1_000", "true", "none",
         "<b>", "{got}", "%s", "-0"]
    ),
)  # fmt: skip


@given(st.dictionaries(st.sampled_from(NAMES), NASTY, max_size=4))
@settings(max_examples=25)
def test_whatever_is_typed_is_read_or_refused(changes: dict[str, str]) -> None:
    """Control characters, endless numbers, half a surrogate: a sentence at a line, in any language, never an error."""
    typed = {**example(), **changes}
    steps(typed)
    for language in ("en", "de"):
        found = read(typed, catalogue_of(language))
        assert (found.kit is not None and found.plan is not None) or found.troubles
        for trouble in found.troubles:
            assert trouble.say.strip()
            assert "\x00" not in trouble.say
            assert "\x1b" not in trouble.say


@pytest.mark.parametrize(
    "text", ["9" * 5000, "\x00", "🧶" * 60, "-1", "\ud800", "none"], ids=lambda text: ascii(text)[:9]
)
def test_no_line_breaks_on_any_text(text: str) -> None:
    """The same text in every line, one line at a time: it is read, or refused at some field."""
    for name in NAMES:
        found = judged({**example(), name: text})
        assert found.plan is not None or found.refusals


MADE_UP = [
    "frame", "frame.outer_width.x", "sett.readings[0].pairs", "sett.readings[999].pairs", "a.b.c", "[", "", "run/x",
    "sett.readings[1]", "sett.readings", "frame[1].x", "__class__", "run/", "stock/", "warp.wrap", "run/kits",
    "version",
]  # fmt: skip


def test_names_that_lead_nowhere_are_refused_or_passed_over() -> None:
    """A form can be made up: names that are no line never raise, and what they say is refused at their name."""
    for name in MADE_UP:
        found = read({**example(), name: "1"}, ENGLISH)
        assert found.kit is not None or found.troubles


def test_an_unknown_key_of_a_file_is_refused_where_it_stands() -> None:
    """A key that no kit has is kept with its text, so that reading says so, and is gone once it is emptied."""
    typed = typed_of({**values_of(example()), "frames": "x"})
    (trouble,) = read(typed, ENGLISH).troubles
    assert trouble.field == "frames"
    assert read({**typed, "frames": ""}, ENGLISH).troubles == ()


def test_the_sentence_is_that_of_the_command_line(tmp_path: Path) -> None:
    """What is refused on the slip is refused in the same words where the command line reads the file."""
    base, compared = example(), 0
    for name, line in list(lines(base).items())[::5]:
        if name.startswith(("run/", "stock/")):
            continue
        for text in list(wrong_texts(line))[::3]:
            typed = {**base, name: text}
            troubles = read(typed, ENGLISH).troubles
            if not troubles or read(typed, ENGLISH).kit is not None:
                continue
            path = tmp_path / "kit.toml"
            path.write_text(_toml(values_of(typed)), encoding="utf-8")
            with pytest.raises(ValueError, match=r"\w") as error:
                load(path)
            assert not isinstance(error.value, KitFileError)
            assert str(error.value).splitlines() == [each.say for each in troubles]
            compared += 1
    assert compared > 20


def _toml(values: object) -> str:
    """Plain values as inline TOML."""
    if isinstance(values, dict):
        lines_ = (f"{key} = {_inline(value)}" for key, value in values.items())
        return "\n".join(lines_)
    raise TypeError


def _inline(value: object) -> str:
    if isinstance(value, dict):
        return "{" + ", ".join(f"{key} = {_inline(each)}" for key, each in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(map(_inline, value)) + "]"
    if isinstance(value, bool):
        return str(value).lower()
    return f"'{value}'" if isinstance(value, str) else repr(value)
