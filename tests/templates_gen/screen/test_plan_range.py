"""The plan of a range: a row for each kit, one kit of it, and where each value comes from."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from commands import refused, run

from templates_gen.inputs import kit_file


@pytest.fixture
def weir(tmp_path: Path) -> Path:
    """The range to start from."""
    file = tmp_path / "weir.toml"
    assert run("new-range", file).exit_code == 0
    return file


WIDE = 132  # so many letters a line of a wide terminal shows


def cells(line: str) -> list[str]:
    """The columns of a row."""
    return re.split(r" {2,}", line.strip())


def test_a_row_for_each_kit(weir: Path) -> None:
    """40, 60 and 90 ends at 2.5 per cm, two to a wind; all boxes together in the last row.

    What all boxes take together is rounded up once, so that it is at most what the kits take added up.
    """
    result = run("plan", weir)
    assert result.exit_code == 0
    title, heads, *rows, together, of_one, of_all, costs, _, alone, other, large, every, buy, paid = (
        result.stdout.splitlines()
    )
    assert of_one.startswith("A row says what one box takes.")
    assert of_all.startswith("The last row is for all boxes")
    assert costs.startswith("A box costs so much where ")
    assert buy.startswith("Buy: 3 x cone of heron cord (500 g each; ")
    assert paid.startswith("That is at least ")
    assert title == "Weir frames: 3 kits, 24 boxes"
    assert cells(heads) == [
        *("Kit", "Boxes", "Ends per cm", "Ends", "Winds", "Warp, m", "Weft, g", "Sheets", "Boards"),
        *("Cost, EUR", "Price, EUR"),
    ]
    assert max(map(len, (heads, *rows, together))) <= WIDE
    assert [cells(row)[:5] for row in rows] == [
        ["Weir frame, small", "10", "2.5", "40", "20"],
        ["Weir frame, middle", "10", "2.5", "60", "30"],
        ["Weir frame, large", "4", "2.5", "90", "45"],
    ]
    assert cells(together)[:2] == ["All boxes", "24"]
    packs = [
        {name: int(count) for count, name in re.findall(r"(\d+) x (\w+)", row)} for row in (alone, other, large, every)
    ]
    by_hand = [int(count) for count in re.findall(r"(\d+) x ball", buy)]
    assert packs[-1]["ball"] == sum(by_hand)  # of two colours of the weft, and of cord
    for name in ("cone", "ball", "hank"):
        *each, all_boxes = (found[name] for found in packs)
        assert max(each) <= all_boxes <= sum(each)


def test_one_kit_of_a_range_is_planned_as_if_alone(weir: Path, tmp_path: Path) -> None:
    """What is shown of it is what a file with its values alone shows; others are not mentioned."""
    one = run("plan", weir, "--kit", "Weir frame, middle").stdout
    assert one.startswith("Weir frame, middle\n")
    text = weir.read_text("utf-8").split("\n[[kits]]\n")
    own = text[2].replace('name = "Weir frame, middle"', "")
    shared = text[0].replace('name = "Weir frames"', 'name = "Weir frame, middle"')
    alone = tmp_path / "alone.toml"
    frame, weaving = (re.search(rf"^{key} = {{(.*)}}", own, re.MULTILINE) for key in ("frame", "weaving"))
    assert frame is not None
    assert weaving is not None
    shared = shared.replace("[frame]", "[frame]\n" + frame[1].replace(", o", "\no"))
    shared = shared.replace("[weaving]", "[weaving]\n" + weaving[1].replace(", h", "\nh"))
    alone.write_text(shared, "utf-8")
    assert run("plan", alone).stdout == one


def test_two_kits_are_a_table(weir: Path) -> None:
    """In the order of the file."""
    lines = run("plan", weir, "--kit", "Weir frame, large", "--kit", "Weir frame, small").stdout.splitlines()
    assert lines[0] == "Weir frames: 2 kits, 14 boxes"
    assert [cells(line)[0] for line in lines[2:5]] == ["Weir frame, small", "Weir frame, large", "All boxes"]


def test_a_plain_kit_shows_what_it_always_did(tmp_path: Path) -> None:
    """With its own name for --kit too, and where its values come from if asked."""
    file = tmp_path / "kit.toml"
    kit_file.write_starter(file)
    plain = run("plan", file).stdout
    assert run("plan", file, "--kit", "Willow frame, small").stdout == plain
    more = run("plan", file, "--from").stdout
    assert more.startswith(plain)
    rows = [cells(line) for line in more.removeprefix(plain).strip().splitlines()[1:]]
    line = next(k for k, text in enumerate(file.read_text("utf-8").split("\n"), 1) if text.startswith("bar_diameter"))
    assert ["frame.bar_diameter", "15 mm", f"this file, line {line}"] in rows
    assert ["weaving.start", "left", "left out, so the usual"] in rows
    assert run("plan", "--from").stdout == more


def test_where_each_value_comes_from(weir: Path) -> None:
    """The range, the kit with its line, or left out by the kit."""
    text = weir.read_text("utf-8").split("\n")
    rows = [cells(line) for line in run("plan", weir, "--kit", "Weir frame, large", "--from").stdout.splitlines()]
    line = {
        key: next(k for k, each in enumerate(text, 1) if each.startswith(key)) for key in ("bar_diameter", "without")
    }
    width = next(k for k, each in enumerate(text, 1) if '"36 cm"' in each)
    assert ["weaving.width", "36 cm", f"this kit, line {width}"] in rows
    assert ["frame.bar_diameter", "15 mm", f"the range, line {line['bar_diameter']}"] in rows
    said = f"the range says 2 %; this kit goes without (line {line['without']})"
    assert ["weaving.draw_in", "left out", said] in rows
    assert [
        "copies",
        "4",
        f"this kit, line {next(k for k, each in enumerate(text, 1) if each == 'copies = 4')}",
    ] in rows
    every = run("plan", weir, "--from").stdout
    assert every.count("Where each value of Weir frame") == 3


def test_a_range_for_programs(weir: Path) -> None:
    """Each kit as `plan` gives it, with its copies, folder and origins."""
    values = json.loads(run("plan", weir, "--json").stdout)
    assert (values["name"], values["boxes"]) == ("Weir frames", 24)
    assert [(kit["name"], kit["copies"], kit["folder"], kit["ends"]) for kit in values["kits"]] == [
        ("Weir frame, small", 10, "weir-frame-small", 40),
        ("Weir frame, middle", 10, "weir-frame-middle", 60),
        ("Weir frame, large", 4, "weir-frame-large", 90),
    ]
    assert values["kits"][2]["from"]["weaving.draw_in"]["from"] == "without"
    assert values["cost"] == pytest.approx(sum(kit["copies"] * kit["cost"] for kit in values["kits"]))
    assert values["price"] == pytest.approx(sum(kit["copies"] * kit["price"] for kit in values["kits"]))
    assert {kit["cost_is"] for kit in values["kits"]} == {"part"}
    assert values["least"] <= values["sheets"] < values["singly"]
    assert 0 < values["boards"] <= sum(kit["copies"] * kit["boards"] for kit in values["kits"])
    assert next(each["needed"] for each in values["buy"] if each["kind"] == "paper") >= values["sheets"]
    assert values["kits"][0]["from"]["weaving.width"]["value"] == "16 cm"
    alone = json.loads(run("plan", weir, "--kit", "Weir frame, large", "--json").stdout)
    assert all(values["kits"][2][key] == value for key, value in alone.items())
    cone = next(each for each in values["buy"] if each["kind"] == "warp")
    assert cone["pack"] == "cone"
    assert cone["packs"] * cone["pack_size"] >= cone["needed"] > (cone["packs"] - 1) * cone["pack_size"]


@pytest.mark.parametrize("said", ["weir-frame-large", "weir frame large", "WEIR FRAME, LARGE", " Weir frame,large "])
def test_a_kit_is_known_by_its_folder(weir: Path, said: str) -> None:
    """Capitals, spaces and signs do not count, as they do not in names of folders."""
    assert run("plan", weir, "--kit", said).stdout.startswith("Weir frame, large\n")


@pytest.mark.parametrize("said", ["Weir frame, lagre", "weir frame, larg", "Wier frame, large"])
def test_a_misspelt_kit_is_refused_with_the_one_that_is_meant(weir: Path, said: str) -> None:
    """One sentence, and its example is that kit."""
    told = refused("plan", weir, "--kit", said)
    assert '("Weir frame, large" is meant)' in told
    assert told.endswith('for example --kit "Weir frame, large"\n')


def test_what_is_refused(weir: Path, tmp_path: Path) -> None:
    """A kit that the range has not, and a starter over a file that is there; all kits' faults together."""
    assert refused("plan", weir, "--kit", "Oak").startswith(
        '--kit: needs the name of a kit in this range ("Weir frame, '
    )
    assert refused("new-range", weir).endswith("already exists and stays as it is; choose another name\n")
    text = weir.read_text("utf-8").replace('height = "20 cm"', 'height = "41 cm"').replace('"48 cm"', '"74 cm"')
    other = tmp_path / "other.toml"
    other.write_text(text, "utf-8")
    said = refused("plan", other, lines=2)
    assert [line.split(": ")[0] for line in said.splitlines()] == [
        'weaving.height of "Weir frame, small"',
        'weaving.height of "Weir frame, large"',
    ]


def test_without_prices_there_are_no_empty_columns(weir: Path, tmp_path: Path) -> None:
    """Neither costs nor prices where nothing is bought or sold; in inches no centimetres, metres or grams."""
    text = weir.read_text("utf-8")
    begin, end = text.index("[buy]"), text.index("# For a class")
    readings = next(line for line in text.splitlines() if line.startswith("readings"))
    bare = tmp_path / "bare.toml"
    bare.write_text((text[:begin] + text[end:]).replace(readings, 'given = "6 epi"'), "utf-8")
    said = run("plan", bare).stdout
    heads = cells(said.splitlines()[1])
    assert heads[2] == "Ends per inch"
    assert {"Warp, yd", "Weft, oz", "Sheets", "Boards"} < set(heads)
    assert not {each for each in heads if "Cost" in each or "Price" in each}
    assert "A box costs" not in said
