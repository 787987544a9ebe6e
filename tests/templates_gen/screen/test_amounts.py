"""Lengths and weights as the command tells them: to programs, to people, and in refusals."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any

import pytest

from layout.plan import plan
from templates_gen.inputs import kit_file as kitfile
from tests.commands import refused, run

KEYS = [
    "warp_per_wind_mm", "warp_total_m", "warp_total_g", "heading_thread_m", "weft_take_up", "picks_per_cm",
    "weft_total_m", "weft_total_g", "weavable_height_mm", "weft_by_colour",
]  # fmt: skip
GRAM_OZ, METRE_YD = 1 / 28.349523125, 1 / 0.9144  # by definition: 453.59237 g a pound of 16 oz, 0.9144 m a yard


@pytest.fixture
def kit(tmp_path: Path) -> Path:
    """A starter kit to change."""
    path = tmp_path / "my-kit.toml"
    kitfile.write_starter(path)
    return path


def cut(kit: Path, *tables: str) -> Path:
    """The kit without these tables."""
    text = kit.read_text(encoding="utf-8")
    for table in tables:
        begin = text.index(f"\n[{table}]")
        text = text[:begin] + text[text.index("\n[", begin + 2) :]
    kit.write_text(text, encoding="utf-8")
    return kit


def plan_of(*arguments: object) -> dict[str, Any]:
    """The plan as a program gets it."""
    result = run("plan", "--json", *arguments)
    assert (result.exit_code, result.stderr) == (0, "")
    values: dict[str, Any] = json.loads(result.stdout)
    return values


def test_the_demo_kit_has_every_figure() -> None:
    """Each is a number, and each says how it is known."""
    values = plan_of()
    assert set(KEYS) < set(values["obtained"])
    assert all(isinstance(values[key], float | int) for key in KEYS[:-1])
    assert {"measured", "computed", "assumed"} <= set(values["obtained"].values())
    assert values["obtained"]["picks_per_cm"] == "measured"
    assert values["obtained"]["warp_per_wind_mm"] == "computed"
    assert values["obtained"]["warp_total_g"] == "assumed"


def test_the_demo_figures_by_hand() -> None:
    """36 beads in 5 cm are 14.4 picks a cm; 650 - 30 mm of frame; 443 tex: each figure from those it rests on.

    Its warp of 20/11 mm and its beads of 50/36 mm fill .818 of a pitch of 3.92 mm: 35.9 % taken up (Peirce 1937).
    """
    values = plan_of()
    assert values["picks_per_cm"] == pytest.approx(14.4)
    filled = (20 / 11 + 50 / 36) / (4 * 0.98)
    bent = math.sqrt(1 - filled**2) + filled * math.asin(filled) - 1
    assert values["weft_take_up"] == pytest.approx(bent)
    assert values["weavable_height_mm"] == 550 - 30 - 2 * 3 - 2 * 30 - 80
    by_rows = 2 * 0.240 * (1 + 0.272) + 4 * 0.05 + 6 * (0.030 + 0.015) + 0.15 + 0.1  # two rows, 27.2 % take-up
    assert values["heading_thread_m"] == pytest.approx(2 * by_rows, rel=0.001)
    way = 30 * values["warp_per_wind_mm"] / 1000
    assert values["warp_total_m"] == pytest.approx((way + values["heading_thread_m"] + 0.2) * 1.1)
    tex = 590.541 / 12 * 30  # ASTM D2260: tex times cotton count is 590.541
    assert values["warp_total_g"] == pytest.approx(values["warp_total_m"] * tex / 1000, rel=1e-5)
    picks = 2 * 244  # as many whole beads of 50 / 36 mm as 340 mm hold
    woven = 0.240 * 0.98 * picks * (1 + values["weft_take_up"])
    assert values["weft_total_m"] == pytest.approx(woven + 44 * 2 * 0.025)
    assert values["weft_total_g"] == pytest.approx(values["weft_total_m"] * 2 * 50 / 160)


def test_the_demo_colours_add_up() -> None:
    """Grams make the whole weft, metres both strands of it; the largest share takes most."""
    values = plan_of()
    colours = values["weft_by_colour"]
    assert list(colours) == ["madder", "ash grey", "indigo"]
    assert sum(each["g"] for each in colours.values()) == pytest.approx(values["weft_total_g"])
    assert sum(each["m"] for each in colours.values()) == pytest.approx(2 * values["weft_total_m"])


def test_the_demo_yarns_suit_its_wrap_readings() -> None:
    """What the yarns wrap to apart lies within what both wrapped together say, and a teacher would not warn."""
    yarns = kitfile.demo().amounts
    assert yarns.warp.soft is not None
    assert yarns.weft.wrap is not None
    apart = 10 / (yarns.warp.soft.mm + yarns.weft.wrap.diameter.mm)
    assert 2.7 <= apart < 2.8
    assert plan(kitfile.demo()).warnings == ()


def test_only_names_are_enough(kit: Path) -> None:
    """Without [warp], [weft] and [room] the plan stands; what is not known is null, and people read what to add."""
    values = plan_of(cut(kit, "warp", "weft", "room"))
    missing = {key for key, how in values["obtained"].items() if how is None}
    assert {key for key in KEYS if key in missing} == {
        "warp_total_g", "weft_take_up", "picks_per_cm", "weft_total_m", "weft_total_g", "weft_by_colour",
    }  # fmt: skip
    assert all(values[key] is None for key in missing)
    said = run("plan", kit).stdout
    assert "\nTo know more\n  For the weight of the warp, say under [warp]" in said


def test_people_read_both_systems_and_what_is_assumed() -> None:
    """Metres with yards, grams with ounces, each row with how it is known, and a list of all that was assumed."""
    values, said = plan_of(), run("plan").stdout
    rows = {row.strip().split("  ")[0]: row for row in said.splitlines() if row.strip()}
    metres, grams = values["warp_total_m"], values["warp_total_g"]
    assert f"about {metres:.1f} m (" in rows["Warp"]
    assert f"), {metres * METRE_YD:.1f} yd (" in rows["Warp"]
    assert f"about {grams:.1f} g (" in rows["Warp weight"]
    assert f"), {grams * GRAM_OZ:.2f} oz (" in rows["Warp weight"]
    assert "measured: 36 beads" in rows["Picks"]
    assert "assumed: " in rows["Weft weight"]
    assumed = said.split("\nAssumed\n")[1].splitlines()
    assert "  10 % of warp thread to spare." in assumed
    assert "about 1.80 mm (1.62 to 1.80), 0.071 in" in rows["Weft, soft"]
    assert "about 1.01 mm (0.90 to 1.15), 0.040 in" in rows["Weft, pressed"]


def test_a_kit_in_inches_reads_inches_first(kit: Path) -> None:
    """The kit's own system stands first."""
    text = kit.read_text(encoding="utf-8").replace('# marking_unit = "4 cm"', 'marking_unit = "1 in"')
    kit.write_text(text, encoding="utf-8")
    rows = run("plan", kit).stdout.splitlines()
    assert any(" yd (" in row.split(" m ")[0] and row.startswith("  Warp ") for row in rows)
    assert any(" oz (" in row.split(" g ")[0] and row.startswith("  Warp weight") for row in rows)


BAD = [
    ('system = "ne"', "", "warp.system"),
    ('system = "ne"', 'system = "cut"', "warp.system"),
    ("count = 12\n", "count = 0\n", "warp.count"),
    ("count = 12\n", "count = -12\n", "warp.count"),
    ("count = 12\n", 'count = "12/30"\n', "warp.order"),
    ("count = 12\n", "count = 0.001\n", "warp.count"),
    ("plies = 30", "plies = 0", "warp.plies"),
    ("share = 45", "share = 44", "weft.colours"),
    ("share = 45", "share = -45", "weft.colours[1].share"),
    ("number = 2, grams = 50", "number = 2, grams = 0", "weft.strands[1].grams"),
    ('length = "160 m"', 'length = "0 m"', "weft.strands[1].length"),
    ('over = "5 cm"}\n# picks', 'over = "0 cm"}\n# picks', "weft.beads.over"),
    (
        '# sample = {grams = 9.2, width = "10 cm"', 'sample = {grams = 9.2, width = "0 cm"', "weft.sample.width",
    ),
    ('height = "34 cm"', 'height = "38 cm"', "weaving.height"),
    ('draw_in = "2 %"', "draw_in = 2", "weaving.draw_in"),
]  # fmt: skip


@pytest.mark.parametrize(("right", "wrong", "key"), BAD, ids=[f"{key}: {wrong}" for _, wrong, key in BAD])
@pytest.mark.parametrize("command", ["plan", "make"])
def test_bad_yarns_are_refused(command: str, right: str, wrong: str, key: str, kit: Path, tmp_path: Path) -> None:
    """One clear sentence that names the key, code 2, and nothing half-written."""
    text = kit.read_text(encoding="utf-8")
    assert right in text
    kit.write_text(text.replace(right, wrong, 1), encoding="utf-8")
    out = ("-o", tmp_path / "strips") if command == "make" else ()
    sentence = refused(command, kit, *out)
    assert sentence.startswith(f"{key}: needs ")
    assert "; for example " in sentence
    assert not (tmp_path / "strips").exists()


def test_files_carry_what_the_kit_tells(kit: Path, tmp_path: Path) -> None:
    """A file is checked against a kit that is said in full: another spare is another kit, the same one is right."""
    assert run("make", kit, "-o", tmp_path / "strips", "--only", "strip-far").exit_code == 0
    assert run("check", tmp_path / "strips", "--kit", kit).exit_code == 0
    text = kit.read_text(encoding="utf-8")
    kit.write_text(text.replace('# spare = "10 %"', 'spare = "20 %"'), encoding="utf-8")
    assert "inputs of another kit" in run("check", tmp_path / "strips", "--kit", kit).stdout
