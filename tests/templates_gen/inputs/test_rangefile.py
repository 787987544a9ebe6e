"""Files that hold several kits."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from layout.kit.folder_names import folder_name
from layout.values.errors import FieldError, FieldErrors
from templates_gen.files.run_plans import plans_of
from templates_gen.inputs import kit_file
from templates_gen.inputs.kit_file import KitFileError
from templates_gen.inputs.range_file import load_range, range_of, write_range
from templates_gen.messages.errors import OptionError

PRICE = "buy.warp.price: needs a number from 0 to 1,000,000, without quotes, got "
SAMPLES = sorted(Path(__file__).parents[2].joinpath("sample_kits").glob("*.toml"))


@pytest.fixture
def weir(tmp_path: Path) -> Path:
    """The range to start from, in a file."""
    file = tmp_path / "weir.toml"
    write_range(file)
    return file


def test_the_starter_is_a_range_that_can_be_woven(weir: Path) -> None:
    """Three kits that share a yarn: 40, 60 and 90 ends, as 2.5 ends per cm over 16, 24 and 36 cm are."""
    found = load_range(weir)
    assert (found.name, found.alone, found.copies_said) == ("Weir frames", False, True)
    assert [(each.kit.name, each.copies, each.folder, each.number) for each in found.kits] == [
        ("Weir frame, small", 10, "weir-frame-small", 1),
        ("Weir frame, middle", 10, "weir-frame-middle", 2),
        ("Weir frame, large", 4, "weir-frame-large", 3),
    ]
    assert [planned.warp.ends for planned in plans_of(found)] == [40, 60, 90]
    assert (found.shop.currency, found.shop.people, found.shop.margin) == ("EUR", 10, Fraction(2, 5))
    assert found.text == weir.read_text("utf-8")


def test_every_commented_line_of_the_starter_works(weir: Path) -> None:
    """A line without its # is a key that is taken; tables that stand in comments are too."""
    text = weir.read_text("utf-8")
    keys = [line for line in text.split("\n") if line.startswith("# ") and (" = " in line or line.startswith("# ["))]
    assert len(keys) > 10
    for line in keys:
        text = text.replace(line, line.removeprefix("# "))
    weir.write_text(text, "utf-8")
    kit = load_range(weir).kits[0].kit
    assert kit.legal.address == ("1 Example Lane", "00000 Example")
    assert kit.box.link == "https://example.org/weir"
    assert kit.box.fold


@pytest.mark.parametrize("file", SAMPLES, ids=lambda file: file.stem)
def test_a_plain_file_is_a_range_of_one(file: Path) -> None:
    """With the same kit."""
    found = load_range(file)
    assert found.alone
    assert [(each.kit, each.copies) for each in found.kits] == [(kit_file.load(file), 1)]
    assert replace(range_of(found.kits[0].kit), text=found.text).kits[0].kit == found.kits[0].kit


def test_a_plain_file_may_say_what_is_of_a_run(tmp_path: Path) -> None:
    """Its kit is the same; what it says of a run is judged."""
    file = tmp_path / "kit.toml"
    kit_file.write_starter(file)
    plain = kit_file.load(file)
    text = file.read_text("utf-8")
    of_run = '\n[buy]\ncurrency = "EUR"\nhour = 5\n'
    file.write_text(text.replace("version = 1", "version = 1\ncopies = 7", 1) + of_run, "utf-8")
    assert kit_file.load(file) == plain
    found = load_range(file)
    assert (found.alone, found.copies_said, found.kits[0].copies, found.shop.hour) == (True, True, 7, 5)
    assert found.kits[0].folder == folder_name(plain.name)
    file.write_text(text.replace("version = 1", "version = 1\ncopies = 0", 1), "utf-8")
    for read in (kit_file.load, load_range):
        with pytest.raises(FieldErrors, match="copies: needs a whole number from 1 to 500, got 0"):
            read(file)


def test_a_range_is_no_single_kit(weir: Path) -> None:
    """What asks for one kit is told that there are several."""
    with pytest.raises(KitFileError, match=r"is a range of 3 kits; use load_range"):
        kit_file.load(weir)


def test_refusals_of_all_kits_come_at_once(weir: Path) -> None:
    """Each with the name of its kit."""
    text = weir.read_text("utf-8").replace('outer_width = "30 cm"', 'outer_widht = "30 cm"')
    weir.write_text(text.replace('width = "36 cm"', 'width = "wide"'), "utf-8")
    with pytest.raises(FieldErrors) as caught:
        load_range(weir)
    lines = str(caught.value).split("\n")
    assert [line.split(": ")[0] for line in lines] == [
        'frame.outer_widht of "Weir frame, small"',
        'weaving.width of "Weir frame, large"',
    ]
    assert "outer_width" in lines[0]


def refusals_of(path: Path) -> tuple[FieldError, ...]:
    """What is refused of a range."""
    try:
        load_range(path)
    except FieldErrors as error:
        return tuple(error.errors)
    return ()


@pytest.mark.parametrize(
    ("ends", "key"), [('"flat ends", thickness = "18 mm"', "frame.bar_diameter"), ('"nails"', "frame.bar_diameter")]
)
def test_what_a_kit_must_go_without_is_said_so(weir: Path, ends: str, key: str) -> None:
    """Where a kit may not have what stands above it, the example takes it out of that kit alone, and works."""
    text = weir.read_text("utf-8").replace(
        'frame = {outer_width = "30 cm"', f'frame = {{ends = {ends}, outer_width = "30 cm"'
    )
    weir.write_text(text, "utf-8")
    (said,) = (error for error in refusals_of(weir) if error.field == key)
    assert f'{key} of "Weir frame, small"' in str(said)
    assert said.example == f'without = ["{key}"]'
    weir.write_text(text.replace('weaving = {width = "16 cm"', f'{said.example}\nweaving = {{width = "16 cm"'), "utf-8")
    assert key not in {error.field for error in refusals_of(weir)}


def test_kits_that_cannot_be_woven_are_refused_together(weir: Path) -> None:
    """Each with the name of its kit; a kit alone is refused as it always was."""
    text = weir.read_text("utf-8").replace('height = "20 cm"', 'height = "38.9 cm"')
    weir.write_text(text.replace('height = "48 cm"', 'height = "71.9 cm"'), "utf-8")
    with pytest.raises(FieldErrors) as caught:
        plans_of(load_range(weir))
    names = [str(error).split(": ")[0] for error in caught.value.errors]
    assert names == ['weaving.height of "Weir frame, small"', 'weaving.height of "Weir frame, large"']


def test_kits_are_picked_by_name(weir: Path) -> None:
    """In the order of the file, and copies are set for all."""
    found = load_range(weir)
    picked = found.of(["Weir frame, large", "Weir frame, small"])
    assert [each.kit.name for each in picked.kits] == ["Weir frame, small", "Weir frame, large"]
    assert found.of([]) == found
    assert [each.copies for each in found.times(3).kits] == [3, 3, 3]
    assert found.times(None) == found
    with pytest.raises(OptionError) as caught:
        found.of(["Oak"])
    assert str(caught.value) == (
        "--kit: needs the name of a kit in this range "
        '("Weir frame, small", "Weir frame, middle", "Weir frame, large"), '
        "got 'Oak'; for example --kit \"Weir frame, small\""
    )


def test_a_kit_has_terms_of_sale_of_its_own(weir: Path) -> None:
    """Over those of the range; what it buys is that of the range."""
    text = weir.read_text("utf-8").replace("copies = 4\n", 'copies = 4\nsell = {margin = "50 %"}\n')
    weir.write_text(text, "utf-8")
    kits = load_range(weir).kits
    assert [each.shop.margin for each in kits] == [Fraction(2, 5), Fraction(2, 5), Fraction(1, 2)]
    assert kits[2].shop.round_to == kits[0].shop.round_to
    assert kits[2].shop.warp == kits[0].shop.warp


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        (
            "price = 14.50",
            'price = "four"',
            f"{PRICE}'four'",
        ),
        ("price = 14.50", "price = -1", f"{PRICE}-1"),
        ("price = 14.50", "price = nan", f"{PRICE}nan"),
        (
            "price = 14.50",
            "price = true",
            f"{PRICE}True",
        ),
        ('currency = "EUR"', "", "buy.currency: "),
        ('margin = "40 %"', 'margin = "100 %"', "sell.margin: "),
        ("{from = 5", "{from = 1", "sell.quantities: "),
        ("copies = 4\n", 'copies = 4\nsell = {margin = "150 %"}\n', 'sell.margin of "Weir frame, large": '),
    ],
)
def test_what_the_shop_cannot_be(weir: Path, old: str, new: str, said: str) -> None:
    """One sentence with its key."""
    weir.write_text(weir.read_text("utf-8").replace(old, new, 1), "utf-8")
    with pytest.raises(FieldErrors) as caught:
        load_range(weir)
    assert str(caught.value).startswith(said)
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize(
    ("old", "new", "key"),
    [('"indigo", pack', '"violet", pack', "buy.colours"), ('"beater", price', '"paddle", price', "buy.also")],
)
def test_what_is_bought_is_of_a_kit(weir: Path, old: str, new: str, key: str) -> None:
    """A colour or a thing that no kit has is refused."""
    weir.write_text(weir.read_text("utf-8").replace(old, new), "utf-8")
    with pytest.raises(FieldErrors, match=f"^{key}: "):
        plans_of(load_range(weir))
