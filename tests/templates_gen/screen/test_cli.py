"""The commands, as people and programs call them: what they print, their codes, and one sentence for every refusal."""

from __future__ import annotations

import json
import math
import os
import re
import subprocess
import sys
from importlib import metadata
from pathlib import Path
from typing import Any

import click
import pytest
from commands import refused, run
from kits import DEMO_FILES as FILES

from templates_gen.__main__ import main as entry
from templates_gen.files import proven
from templates_gen.screen.cli import main

ROOT = Path(__file__).parents[3]
INCH = 25.4  # mm, exactly
FEW = ("--only", "strip-far", "--only", "comb")  # a file of every form: PDF, SVG and DXF


def process(*arguments: object, **environment: str) -> subprocess.CompletedProcess[str]:
    """One command as a process of its own."""
    code = "from templates_gen.screen.cli import main; main()"
    command = [sys.executable, "-c", code, *map(str, arguments)]
    surroundings = {**os.environ, "PYTHONPATH": str(ROOT), **environment}
    return subprocess.run(command, env=surroundings, capture_output=True, text=True, encoding="utf-8", check=False)


@pytest.fixture
def kit(tmp_path: Path) -> Path:
    """A starter kit to change."""
    path = tmp_path / "my-kit.toml"
    assert run("new", path).exit_code == 0
    return path


def changed(kit: Path, old: str, new: str) -> Path:
    """The kit with one piece of its text exchanged."""
    text = kit.read_text(encoding="utf-8")
    assert text.count(old) == 1
    kit.write_text(text.replace(old, new), encoding="utf-8")
    return kit


# new


def test_new_writes_a_kit_that_works(kit: Path) -> None:
    """The starter is a kit with remarks, and says the same as the demo that is built in."""
    assert kit.read_text(encoding="utf-8").startswith("#")
    assert run("plan", kit).stdout == run("plan").stdout


def test_new_never_writes_over_anything(kit: Path, tmp_path: Path) -> None:
    """A file that is there stays as it is, and so does a folder."""
    kit.write_text("mine", encoding="utf-8")
    assert str(kit) in refused("new", kit)
    assert kit.read_text(encoding="utf-8") == "mine"
    refused("new", tmp_path)
    refused("new", tmp_path / "nowhere" / "kit.toml")
    refused("new", kit / "below.toml")


# plan


def plan_of(*arguments: object) -> dict[str, Any]:
    """The plan as a program gets it."""
    result = run("plan", "--json", *arguments)
    assert (result.exit_code, result.stderr) == (0, "")
    values: dict[str, Any] = json.loads(result.stdout)
    return values


def test_the_keys_of_a_plan_are_those_of_the_docs() -> None:
    """Programs may count on these keys: each stands in the table of docs/commands.md once, and no others."""
    text = (ROOT / "docs" / "commands.md").read_text(encoding="utf-8")
    table = text[text.index("| key of the plan |") :].split("\n\n")[0].splitlines()[2:]
    documented: list[str] = []
    for row in table:
        for key, ranged in re.findall(r"`([^`]+)`( \(low, high\))?", row.split("|")[1]):
            documented += [f"{key}{end}" for end in (("", "_low", "_high") if ranged else ("",))]
    assert sorted(documented) == sorted(plan_of())


def test_what_programs_read_before_ranges_stands() -> None:
    """No key that was there is renamed; what a plan had first comes first."""
    before = (
        "sett_per_inch", "sett_per_cm", "pitch_mm", "ends", "winds", "winding_pitch_mm", "weaving_width_mm",
        "marking_unit_mm", "winds_per_unit", "threads", "near_marks_mm", "far_marks_mm", "end_pull_n", "end_pull_how",
        "end_bending_mm", "end_bending_how", "end_bending_most_mm", "warp_per_wind_mm", "warp_total_m", "warp_total_g",
        "heading_thread_m", "weft_take_up", "picks_per_cm", "weft_total_m", "weft_total_g", "weavable_height_mm",
        "weft_by_colour", "obtained", "warnings",
    )  # fmt: skip
    assert [key for key in plan_of() if key in before] == list(before)


def test_every_likely_value_lies_in_its_range() -> None:
    """Low, likely and high stand in this order, in numbers, for every kind of frame end."""
    for path in (None, *sorted((ROOT / "tests" / "sample_kits").glob("*.toml"))):
        values = plan_of(*([path] if path else []))
        for key in [key.removesuffix("_low") for key in values if key.endswith("_low")]:
            three = values[f"{key}_low"], values[key], values[f"{key}_high"]
            assert three == (None,) * 3 or sorted(three) == list(three)


def test_the_demo_load_by_hand() -> None:
    """Statics: 60 ends of 150 g (9.80665 m/s2) pull with 88.26 N; F (8 L^3 - 4 L W^2 + W^3) / (384 E I) in mm."""
    values = plan_of()
    force, span, width, inertia = 60 * 0.15 * 9.80665, 340.0, 240.0, math.pi * 15**4 / 64
    bent = force * (8 * span**3 - 4 * span * width**2 + width**3) / (384 * 70_000 * inertia)
    assert values["end_pull_n"] == pytest.approx(force)
    assert values["end_bending_mm"] == pytest.approx(bent)
    assert values["end_bending_most_mm"] == pytest.approx(340 / 500)
    assert (values["end_pull_how"], values["end_bending_how"]) == ("computed", "assumed")
    rows = run("plan").stdout
    assert re.search(r"Pull on each bar +88\.3 N, 19\.8 lb", rows)
    assert values["thread_pull_n"] == pytest.approx(0.15 * 9.80665)
    assert values["end_stress_n_mm2"] == pytest.approx(force * (2 * span - width) / 8 * 7.5 / inertia)
    assert "about 0.330 mm (0.321 to 0.340)" in rows  # the modulus of aluminium may differ by 3 % (from memory)


def test_the_demo_plan_by_hand() -> None:
    """At least 2.7 pairs a cm: 4 cm hold 10.8 ends, so five winds of two; all else follows by hand."""
    values = plan_of()
    assert values["sett_per_cm"] == 2.5
    assert values["sett_per_inch"] == pytest.approx(2.5 * 2.54, rel=1e-12)
    assert (values["pitch_mm"], values["winding_pitch_mm"]) == (4, 8)
    assert (values["ends"], values["winds"], values["weaving_width_mm"]) == (60, 30, 240)
    assert (values["marking_unit_mm"], values["winds_per_unit"]) == (40, 5)
    assert values["near_marks_mm"] == [-120 + 8 * j for j in range(31)]
    assert values["far_marks_mm"] == [-116 + 8 * j for j in range(30)]
    assert all(isinstance(each, str) for each in values["warnings"])


def test_a_plan_in_inches_by_hand(kit: Path) -> None:
    """8 epi given on 9 1/2 in, from the right, face straight: 38 winds of 1/4 in, both strips a quarter wind aside."""
    text = kit.read_text(encoding="utf-8")
    begin, end = text.index("readings = ["), text.index("# If you know")
    text = text[:begin] + 'given = "8 epi"\n' + text[end:]
    text = text.replace('width = "24 cm"', 'width = "9 1/2 in"').replace("# start = ", "start = ")
    text = text.replace("# slant = ", "slant = ").replace('start = "left"  ', 'start = "right"')
    kit.write_text(text.replace('slant = "shared"', 'slant = "face straight"'), encoding="utf-8")
    values = plan_of(kit)
    assert (values["sett_per_inch"], values["winds"], values["ends"]) == (8, 38, 76)
    assert values["winding_pitch_mm"] == pytest.approx(INCH / 4)
    assert values["weaving_width_mm"] == pytest.approx(9.5 * INCH)
    # from the right everything is mirrored: x = W/2 - (j + 1/4) P, the tie-off past the left limit
    near = sorted(9.5 * INCH / 2 - (j + 0.25) * INCH / 4 for j in range(39))
    assert values["near_marks_mm"] == pytest.approx(near)
    assert values["far_marks_mm"] == pytest.approx(near[1:])


def test_plan_for_people_gives_reasons() -> None:
    """An aligned table with the numbers above and sentences that say why."""
    result = run("plan")
    assert (result.exit_code, result.stderr) == (0, "")
    rows = result.stdout.splitlines()
    assert "Willow frame, small" in rows[0]
    assert any(row.startswith("  Sett ") and "6.35 per inch, 2.5 per cm" in row for row in rows)
    assert any(row.startswith("  Winds ") and " 30 " in row and "60 ends" in row for row in rows)
    assert "Why" in rows


BAD_VALUES = ('"0 cm"', '"-3 cm"', '"NaN cm"', '"inf cm"', '"1e9 m"', '""', '"24 kg"', "24", '"1,5mmm"', "[]", "nan")


@pytest.mark.parametrize("value", BAD_VALUES)
@pytest.mark.parametrize("command", ["plan", "make"])
def test_a_bad_value_in_a_kit(command: str, value: str, kit: Path, tmp_path: Path) -> None:
    """Zero, negative, not a number, infinite, far too large, empty, of another unit or type: named with an example."""
    changed(kit, 'width = "24 cm"', f"width = {value}")
    out = ("-o", tmp_path / "strips") if command == "make" else ()
    sentence = refused(command, kit, *out)
    assert sentence.startswith("weaving.width: needs ")
    assert "; for example " in sentence
    assert not (tmp_path / "strips").exists()


def test_all_errors_of_a_kit_at_once(kit: Path) -> None:
    """Three bad keys are three sentences, a misspelt one with what was meant."""
    changed(kit, 'height = "34 cm"', 'height = "34"')
    changed(kit, 'ends = "round bars"', 'ends = "round bar"')
    changed(kit, "margin = ", "margins = ")
    said = refused("plan", kit, lines=3)
    assert "weaving.height" in said
    assert "frame.ends" in said
    assert "did you mean frame.margin?" in said


@pytest.mark.parametrize("command", ["plan", "make"])
def test_a_kit_that_is_no_kit(command: str, kit: Path, tmp_path: Path) -> None:
    """No file, a folder, other bytes, or a slip of the pen: one sentence that names the file."""
    broken = changed(kit, '"24 cm"', '"24 cm').rename(tmp_path / "broken.toml")
    (tmp_path / "bytes.toml").write_bytes(bytes(range(256)))
    for path in (tmp_path / "nowhere.toml", tmp_path, tmp_path / "bytes.toml", broken, broken / "below"):
        out = ("-o", tmp_path / "strips") if command == "make" else ()
        assert str(path) in refused(command, path, *out, lines=3 if path == broken else 1)
    assert "line " in refused("plan", broken, lines=3)


# make


def test_make_one_part_only(tmp_path: Path) -> None:
    """--only picks parts by name; a name that the kit has not is refused with those that it has."""
    assert run("make", "-o", tmp_path / "far", "--only", "strip-far").exit_code == 0
    assert sorted(path.name for path in (tmp_path / "far").iterdir()) == [
        "manifest.json",
        "strip-far.pdf",
        "strip-far.svg",
    ]
    assert "did you mean strip-far?" in refused("make", "-o", tmp_path / "none", "--only", "strip-fat")
    assert not (tmp_path / "none").exists()


def test_make_where_a_file_is_in_the_way(tmp_path: Path) -> None:
    """A file where the folder should be is left alone."""
    (tmp_path / "strips").write_text("mine")
    sentence = refused("make", "-o", tmp_path / "strips")
    assert str(tmp_path / "strips") in sentence
    assert (tmp_path / "strips").read_text() == "mine"
    refused("make", "-o", tmp_path / "strips" / "below")
    refused("make", "-o", "a\0b")


def test_make_where_a_folder_is_in_the_way(tmp_path: Path) -> None:
    """A folder where a file should be is left alone."""
    (tmp_path / "kit.pdf").mkdir()
    assert str(tmp_path / "kit.pdf") in refused("make", "-o", tmp_path)
    assert list(tmp_path.iterdir()) == [tmp_path / "kit.pdf"]


def test_make_of_a_strip_that_cannot_fit(kit: Path, tmp_path: Path) -> None:
    """Forcing a long strip to lie straight is refused with what would do."""
    changed(kit, 'outer_width = "40 cm"', 'outer_width = "90 cm"')
    changed(kit, 'width = "24 cm"', 'width = "70 cm"')
    changed(kit, '# lay = "auto"', 'lay = "straight"')
    sentence = refused("make", kit, "-o", tmp_path / "strips")
    assert sentence.startswith("paper.lay: needs ")
    assert 'lay = "tiles"' in sentence


def test_a_proof_that_fails_is_code_1(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file that would not come back right is one sentence and code 1: no input of the maker's was wrong."""
    right = proven.read
    monkeypatch.setattr(proven, "read", lambda output, data: right(output, data)._replace(sheets=()))
    result = run("make", "-o", tmp_path / "strips", *FEW)
    assert (result.exit_code, result.stdout) == (1, "")
    assert len(result.stderr.splitlines()) == 1
    assert not (tmp_path / "strips").exists()


# sett

SETT_KEYS = {"sett_per_inch", "sett_per_cm", "low_per_inch", "high_per_inch", "winds_per_unit"}
SETTS: dict[str, tuple[tuple[str, ...], dict[str, float]]] = {
    # 11 in 2 in: 5.5 to under 6 epi; five winds to 2 in lose 9 %, two to 1 in would lose 27 %
    "one reading": (("11", "2 in"), {"sett_per_inch": 5, "low_per_inch": 5.5, "high_per_inch": 6, "winds_per_unit": 5}),
    "a given unit": (
        ("11", "2 in", "--unit", "1 in"),
        {"sett_per_inch": 4, "low_per_inch": 5.5, "high_per_inch": 6, "winds_per_unit": 2},
    ),
    # common practice, no source: nine pairs in an inch are eight ends an inch, four winds
    "nine in an inch": (
        ("9", '1"', "--unit", "1 in"),
        {"sett_per_inch": 8, "low_per_inch": 9, "high_per_inch": 10, "winds_per_unit": 4},
    ),
    # 13 in 5 cm and 27 in 10 cm: 2.6 to under 2.8 and 2.7 to under 2.8 a cm; five winds to 4 cm
    "several readings": (
        ("13", "5 cm", "--count", "27", "--over", "10cm"),
        {"sett_per_cm": 2.5, "low_per_inch": 2.7 * 2.54, "high_per_inch": 2.8 * 2.54, "winds_per_unit": 5},
    ),
    # the same, counted over inches and over a millimetre window: 1/2 in holds three winds of 13 epi
    "other ways to write": (
        ("13", "1 inch", "--count", "52", "--over", "101,6 mm"),
        {"sett_per_inch": 12, "low_per_inch": 13, "high_per_inch": 53 / 4, "winds_per_unit": 3},
    ),
}


@pytest.mark.parametrize("name", SETTS)
def test_setts_by_hand(name: str) -> None:
    """What readings say together, and the largest sett that counts off in whole winds, as computed by hand."""
    (count, over, *more), wanted = SETTS[name]
    result = run("sett", "--count", count, "--over", over, *more, "--json")
    assert (result.exit_code, result.stderr) == (0, "")
    values = json.loads(result.stdout)
    assert values.keys() >= SETT_KEYS
    assert {key: values[key] for key in wanted} == pytest.approx(wanted)
    assert values["sett_per_inch"] == pytest.approx(2.54 * values["sett_per_cm"])


def test_sett_for_people() -> None:
    """The sett taken, the loss in per cent and what other units would give, in words."""
    words = run("sett", "--count", "11", "--over", "2 in").stdout
    assert "5 per inch" in words
    assert "9.1 %" in words
    assert "1 in (loses 27.3 %)" in words
    assert "As measured" in words


@pytest.mark.parametrize(
    "count", ["0", "-1", "1.5", "abc", "1e9", "", "10001", "99999999999999999999", "NaN", "²", "١"]
)
def test_a_bad_count(count: str) -> None:
    """What is no whole number from 1 to 10,000 is refused under the option's own name."""
    sentence = refused("sett", "--count", count, "--over", "2 in")
    assert sentence.startswith("--count: needs a whole number from 1 to 10,000, got ")
    assert sentence.endswith("; for example --count 11\n")


@pytest.mark.parametrize("over", ["0 in", "-2 in", "2", "", "2 kg", "1,5mmm", "NaN in", "inf cm", "1e400 mm", "2 in 3"])
def test_a_bad_window(over: str) -> None:
    """What is no length is refused under the option's own name."""
    sentence = refused("sett", "--count", "11", "--over", over)
    assert sentence.startswith("--over: needs a length")
    assert sentence.endswith('; for example --over "2 in"\n')


@pytest.mark.parametrize("unit", ["0 in", "1", "1 kg", "", "9 km", "-1 in"])
def test_a_bad_unit(unit: str) -> None:
    """What is no length to mark by is refused under the option's own name."""
    sentence = refused("sett", "--count", "11", "--over", "2 in", "--unit", unit)
    assert sentence.startswith("--unit: needs a length")
    assert "; for example --unit " in sentence


def test_a_unit_that_holds_no_wind() -> None:
    """The refusal names a unit that would do, as an option."""
    sentence = refused("sett", "--count", "1", "--over", "3 in", "--unit", "1 in")
    assert sentence.startswith("--unit: needs ")
    assert '--unit "6 in"' in sentence


def test_all_bad_readings_at_once() -> None:
    """Every bad reading is one sentence that says which it is."""
    said = refused(
        *("sett", "--count", "0", "--over", "2 in", "--count", "9", "--over", "2", "--unit", "x"),
        lines=3,
    )
    assert "--count of reading 1:" in said
    assert "--over of reading 2:" in said
    assert "--unit:" in said


@pytest.mark.parametrize(
    "readings",
    [
        ("--count", "11", "--over", "2 in", "--count", "30", "--over", "2 in"),
        ("--count", "10000", "--over", "1 mm"),
        ("--count", "11", "--over", "2 in", "--count", "12"),
        ("--count", "11", "--over", "2 in", "--over", "3 in"),
        (*("--count", "11", "--over", "2 in") * 51,),
    ],
    ids=["contradicting", "too dense", "a window too few", "a count too few", "too many"],
)
def test_readings_that_cannot_be_used_together(readings: tuple[str, ...]) -> None:
    """They are refused in terms of the options: no key of a kit file is named to someone who wrote none."""
    sentence = refused("sett", *readings)
    assert sentence.startswith("--")
    for key in ("sett.", "pairs =", "window =", "loosest", "as_measured", "marking_unit"):
        assert key not in sentence


@pytest.mark.parametrize("words", [("--count",), ("--speed", "3")])
def test_unknown_options_and_options_without_a_value(words: tuple[str, ...]) -> None:
    """Code 2 and a hint, as click has it."""
    result = run("sett", *words)
    assert (result.exit_code, result.stdout) == (2, "")
    assert "Error: " in result.stderr


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--count", "11"), "--over: needs one window for every --count"),
        (("--over", "2 in"), "--over: needs one window for every --count"),
        ((), "--count: needs a wrap reading"),
    ],
)
def test_half_a_reading_is_refused(words: tuple[str, ...], said: str) -> None:
    """In one sentence, with what works."""
    assert refused("sett", *words).startswith(said)


# check


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A few of the demo kit's files, of every form."""
    folder = tmp_path_factory.mktemp("made")
    assert run("make", "-o", folder, *FEW).exit_code == 0
    return folder


def test_check_of_what_is_right(made: Path, demo_folder: Path) -> None:
    """Code 0; for people every file with asked, found and deviation, for programs the same as values."""
    result = run("check", made)
    assert (result.exit_code, result.stderr) == (0, "")
    count = len(list(made.iterdir())) - 1  # all but the manifest
    assert result.stdout.count("right  ") == count
    assert result.stdout.count("largest deviation 0.0") == count
    whole = run("check", demo_folder, "--json")
    assert (whole.exit_code, whole.stderr) == (0, "")
    listed = json.loads(whole.stdout)
    assert len(listed) == len(list(demo_folder.iterdir())) - 1
    assert [Path(each["file"]).name for each in listed[: len(FILES)]] == list(FILES)
    for each in listed:
        assert list(each) == ["file", "asked", "found", "deviation_um", "problems"]
        assert list(each["asked"]) == ["sheets", "sheet_mm", "marks", "cuts"]
        assert each["asked"] == each["found"]
        assert 0 <= each["deviation_um"] <= 1
        assert each["problems"] == []
    assert all((each["found"]["cuts"] > 0) == ("kerf" in each["file"]) for each in listed)


def test_check_of_what_is_wrong(made: Path, tmp_path: Path, kit: Path) -> None:
    """Code 1 for an altered file, another kit, or what was never ours; each problem stands under its file."""
    altered = tmp_path / "strip-far.svg"
    altered.write_bytes((made / "strip-far.svg").read_bytes().replace(b' d="M', b' d="M1', 1))
    (tmp_path / "empty.pdf").write_bytes(b"")
    result = run("check", altered, tmp_path / "empty.pdf", made / "strip-far.pdf")
    assert (result.exit_code, result.stderr) == (1, "")
    assert (result.stdout.count("WRONG  "), result.stdout.count("right  ")) == (2, 1)
    listed = json.loads(run("check", altered, "--json").stdout)
    assert listed[0]["problems"]
    other = changed(kit, 'width = "24 cm"', 'width = "23 cm"')
    assert run("check", made, "--kit", other).exit_code == 1
    assert run("check", made, "--kit", changed(other, 'width = "23 cm"', 'width = "24 cm"')).exit_code == 0


def test_check_of_what_is_not_there(made: Path, tmp_path: Path) -> None:
    """A path that leads nowhere, or a kit that cannot be read, is one sentence and code 2."""
    assert str(tmp_path / "nowhere.pdf") in refused("check", tmp_path / "nowhere.pdf")
    assert "nowhere.toml" in refused("check", made, "--kit", tmp_path / "nowhere.toml")
    assert run("check").exit_code == 2


# As processes of their own.


def test_the_console_command_is_ours() -> None:
    """The installed command, where there is one, leads to these commands."""
    commands = [each for each in metadata.entry_points(group="console_scripts") if each.name == "templates-gen"]
    if not commands:
        pytest.skip("not installed as a package here")
    assert commands[0].load() is entry


def test_a_process_that_makes_and_checks(tmp_path: Path) -> None:
    """The same commands from outside: codes, and nothing on the error stream but progress."""
    ran = process("make", "-o", tmp_path / "strips", *FEW)
    assert ran.returncode == 0
    assert all("done, making" in row for row in ran.stderr.splitlines())
    ran = process("check", tmp_path / "strips")
    assert (ran.returncode, ran.stderr) == (0, "")
    (tmp_path / "strips" / "manifest.json").unlink()
    ran = process("check", tmp_path / "strips")
    assert (ran.returncode, ran.stderr) == (1, "")
    assert "incomplete" in ran.stdout


def test_a_process_that_is_refused(tmp_path: Path) -> None:
    """One sentence on the error stream, code 2, no traceback."""
    ran = process("plan", tmp_path / "nowhere.toml")
    assert (ran.returncode, ran.stdout) == (2, "")
    assert len(ran.stderr.splitlines()) == 1


def test_a_screen_that_lacks_a_letter(kit: Path) -> None:
    """Names in any script are printed where the screen has them, and by number where it has not."""
    changed(kit, 'name = "Willow frame, small"', 'name = "Ольга"')
    assert process("plan", kit, PYTHONIOENCODING="utf-8").stdout.startswith("Ольга")
    ran = process("plan", kit, PYTHONIOENCODING="latin-1")
    assert (ran.returncode, ran.stderr) == (0, "")
    assert ran.stdout.startswith("\\u041e\\u043b\\u044c\\u0433\\u0430")


@pytest.mark.skipif(sys.platform == "win32", reason="names are bytes elsewhere only")
def test_a_name_that_is_no_text(tmp_path: Path) -> None:
    """A path of bytes that are no letters is named without falling over."""
    ran = process("check", os.fsdecode(os.fsencode(tmp_path) + b"/\xff.pdf"))
    assert (ran.returncode, ran.stdout) == (2, "")
    assert "\\udcff" in ran.stderr
    assert len(ran.stderr.splitlines()) == 1


def test_without_a_word_it_says_what_there_is() -> None:
    """The whole list of commands as `--help` shows it, each in a whole sentence, and how to begin."""
    alone, asked = process(), process("--help")
    assert (alone.returncode, alone.stdout) == (2, "")
    assert alone.stderr == asked.stdout
    listed = alone.stderr.partition("Commands:")[2]
    assert "\\n" not in alone.stderr
    assert "..." not in listed
    assert isinstance(main, click.Group)
    for name, command in main.commands.items():
        assert any(line.split() == [name, *str(command.short_help).split()] for line in listed.split("\n")), name
    assert listed.rstrip().endswith("-o mine.")


def test_help_is_there_for_every_command() -> None:
    """Each command says in a sentence what it does."""
    assert isinstance(main, click.Group)
    for name in ("new", "make", "plan", "sett", "check"):
        assert name in main.commands
        result = run(name, "--help")
        assert result.exit_code == 0
        assert main.commands[name].help
