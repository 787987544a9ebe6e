"""The command `yarn`: the handbooks' worked examples as a person asks for them, both thicknesses, every refusal."""

from __future__ import annotations

import json
import re
from typing import Any

import pint
import pytest
from commands import refused, run


def values(*words: object) -> dict[str, Any]:
    """What a program gets."""
    result = run("yarn", *words, "--json")
    assert (result.exit_code, result.stderr) == (0, "")
    found: dict[str, Any] = json.loads(result.stdout)
    return found


@pytest.mark.parametrize(
    ("words", "key", "number"),
    [
        (["10 Ne"], "worsted", 15),  # ASTM D2260, worked example
        (["1 Ne"], "run", 0.525),  # ASTM D2260: run = 0.525 cotton
        (["1 Ne"], "lea", 2.8),  # ASTM D2260: lea = 2.8 cotton
        (["1 tex"], "denier", 9),  # BS definitions
        (["25 tex"], "nm", 40),  # BS definitions: metric count = 1000 / tex
        (["60 Ne", "40 Ne"], "ne", 24),  # J. T. Taylor, Cotton Weaving
        (["40 Ne", "20 Ne"], "ne", 40 / 3),  # C. P. Brooks, Cotton Manufacturing
        (["48 Ne", "24 Ne"], "ne", 16),  # W. Davis, Hosiery Manufacture
        (["40 Ne", "--plies", 2], "ne", 20),  # Taylor: 2/40s runs as 20 hanks a pound
        (["40 Ne x 2"], "ne", 20),
        (["2/40 Ne", "--order", "plies/count"], "ne", 20),
        (["8/2 Ne", "--order", "count/plies"], "yd_per_lb", 3360),
        (["8 Ne", "--plies", "2"], "yd_per_lb", 3360),  # as sold to craft weavers: 8/2 cotton
        (["20 grains in 120 yd", "--weighed"], "ne", 50),  # Taylor: 120 yd weighing 20 grains
        (["50 g in 120 m"], "m_per_100g", 240),  # arithmetic
    ],
)
def test_the_handbooks_examples_come_out(words: list[object], key: str, number: float) -> None:
    """Each worked example, asked for as a person would, to the last figure."""
    assert values(*words)[key] == pytest.approx(number, rel=1e-12)


@pytest.mark.parametrize(
    ("key", "product"), [("ne", 590.541), ("worsted", 885.812), ("run", 310.034), ("lea", 1653.52)]
)
def test_tex_times_a_count_is_the_published_constant(key: str, product: float) -> None:
    """ASTM D2260, Table 1, to the six figures printed there."""
    found = values("37 tex")
    assert float(f"{found['tex'] * found[key]:.6g}") == product
    assert found["yd_per_lb"] == pytest.approx(496.055 * found["nm"], rel=1e-6)


@pytest.mark.parametrize(
    ("key", "unit"), [("tex", "tex"), ("dtex", "dtex"), ("denier", "denier"), ("nm", "number_meter")]
)
def test_pint_converts_alike(key: str, unit: str) -> None:
    """pint's default registry in its `textile` context: 8 Ne in tex, decitex, denier and Nm."""
    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    with registry.context("textile"):
        theirs = (8 * registry.number_english).to(unit).magnitude
    assert values("8 Ne")[key] == pytest.approx(theirs, rel=1e-12)


def test_programs_get_these_keys_and_no_others() -> None:
    """Whatever was asked for; what was not is null."""
    keys = ["tex", "dtex", "denier", "nm", "ne", "worsted", "run", "lea", "m_per_100g", "yd_per_lb", "how", "because",
            "specific_volume_cm3_per_g", "compressed_diameter_mm", "soft_diameter_mm", "wraps_per_inch",
            "craft_yarn_classes", "pressed_mm", "soft_mm", "warnings"]  # fmt: skip
    label, wrap = values("8 Ne"), values("--wraps", 12, "--over", "1 in")
    assert list(label) == list(wrap) == keys
    assert [key for key in keys if label[key] is None] == keys[14:17]
    assert [key for key in keys if wrap[key] is None] == [*keys[:11], *keys[12:14]]


def test_people_see_every_system() -> None:
    """Two threads of 8s cotton: 4s, 6s worsted (ASTM D2260: 1.5 cotton), 3360 yd a pound, 148 tex in round figures."""
    said = run("yarn", "8 Ne", "--plies", 2).stdout
    for row in (
        r"^tex +147\.635 +grams in 1000 m; about 148$",
        r"^cotton count Ne +4 +hanks of 840 yd in a pound$",
        r"^worsted count +6 +",
        r"^woollen run +2\.1 +1600 yd",
        r"^linen lea +11\.2 +300 yd",
        r"^yards in a pound +3360$",
        r"^a ball of 4 oz +768\.1 m +840 yd$",
        r"^compressed diameter +0\.455 mm +assumed; 55\.9 side by side to the inch$",
    ):
        assert re.search(row, said, re.MULTILINE), row
    assert "soft diameter" not in said
    assert "2 plies, the take-up of the twist left out" in said
    assert "No fibre stated; cotton taken" in said


def test_forgotten_quotes_do_no_harm() -> None:
    """A label typed as separate words is the same label; two labels stay two."""
    assert run("yarn", "8", "Ne", "--plies", 2).stdout == run("yarn", "8 Ne", "--plies", 2).stdout
    assert values("50", "g", "in", "120", "m") == values("50 g in 120 m")
    assert values("8 Ne", "8 Ne")["ne"] == 4


@pytest.mark.parametrize(
    ("options", "how", "thick"),
    [
        ([], "assumed", 34.14 * 1.1**0.5),
        (["--fibre", "cotton"], "computed", 34.14 * 1.1**0.5),
        (["--volume", "1"], "computed", 34.14),
        (["--fibre", "wool"], "assumed", 34.14 * (1.1 * 1.52 / 1.31) ** 0.5),  # densities from memory
    ],
)
def test_the_compressed_diameter_is_peirces(options: list[str], how: str, thick: float) -> None:
    """Peirce 1937: mils = 34.14 sqrt(v / N), v = 1.1 for cotton, and how its volume is known is said."""
    found = values("4 Ne", *options)["compressed_diameter_mm"]
    assert found["value"] / 0.0254 == pytest.approx(thick / 4**0.5, rel=2e-4)
    assert found["how"] == how
    assert "compressed" in found["because"]
    assert bool(found["assumptions"]) == (how == "assumed")


@pytest.mark.parametrize(
    ("wraps", "over", "per_inch", "classes"),
    [
        (12, "1 in", 12, [2, 3, 4]),
        (24, "2 in", 12, [2, 3, 4]),
        (9, "2 in", 4.5, []),
        (10, "254 mm", 1, [7]),
        (7, "1 in", 7, [5]),
    ],
)
def test_a_hand_wrap_is_soft_and_gives_every_class_that_fits(
    wraps: int, over: str, per_inch: float, classes: list[int]
) -> None:
    """Craft Yarn Council chart (second-hand): 14-30, 12-18, 11-15, 9-12, 6-9, 5-6, 1-4 wraps an inch, none at 4 1/2."""
    found = values("--wraps", wraps, "--over", over)
    assert (found["wraps_per_inch"], found["craft_yarn_classes"]) == (per_inch, classes)
    assert found["soft_diameter_mm"]["value"] == pytest.approx(25.4 / per_inch)
    assert found["soft_diameter_mm"]["how"] == "measured"
    listed = ", ".join(map(str, classes)) or "none"
    said = run("yarn", "--wraps", wraps, "--over", over).stdout
    assert re.search(rf"^Craft Yarn class +{listed} +for {per_inch:g} wraps", said, re.MULTILINE)
    assert "compressed" not in said


def test_two_thicknesses_are_told_apart() -> None:
    """Where both are known, both stand there by name, and the warning not to mix them."""
    said = run("yarn", "240 m/100 g", "--wraps", 10, "--over", "1 in").stdout
    assert re.search(r"^compressed diameter +0\.\d+ mm +assumed", said, re.MULTILINE)
    assert re.search(r"^soft diameter +2\.540 mm +measured", said, re.MULTILINE)


def test_label_and_wrap_narrow_both_thicknesses() -> None:
    """By the label alone soft wool may lie anywhere in its class; a wrap leaves less, and one that cannot be warns."""
    label, wrapped = (
        values("300 tex", "--fibre", "wool"),
        values("300 tex", "--fibre", "wool", "--wraps", 20, "--over", "2 in"),
    )
    for key in ("pressed_mm", "soft_mm"):
        assert label[key]["low"] <= wrapped[key]["low"] <= wrapped[key]["high"] <= label[key]["high"]
    assert wrapped["soft_mm"]["high"] - wrapped["soft_mm"]["low"] < label["soft_mm"]["high"] - label["soft_mm"]["low"]
    assert (label["warnings"], wrapped["warnings"]) == ([], [])
    (warning,) = values("300 tex", "--wraps", 2, "--over", "2 in")["warnings"]
    assert warning in run("yarn", "300 tex", "--wraps", 2, "--over", "2 in").stdout
    assert "--wraps" in warning
    assert re.search(r"^pressed, in cloth +about 0\.", run("yarn", "300 tex").stdout, re.MULTILINE)


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ([], "YARN"),
        (["--fibre", "wool"], "YARN"),
        (["--wraps", "12", "--over", "1 in", "--plies", "2"], "YARN"),
        (["--wraps", "12", "--over", "1 in", "--weighed"], "YARN"),
        (["8"], "YARN"),
        (["8/2"], "YARN"),
        (["12 cut"], "YARN"),
        (["8 lace"], "YARN"),
        (["0 Ne"], "YARN"),
        (["0.5 tex"], "YARN"),
        (["99999 tex"], "YARN"),
        (["30000 tex", "30000 tex"], "YARN"),
        (["0 g in 5 m"], "YARN"),
        (["8 Ne", "--weighed"], "YARN"),
        (["8 Ne x 2", "--plies", "2"], "YARN"),
        (["8 Ne", "--plies", "two"], "--plies"),
        (["8 Ne", "--plies", "0"], "--plies"),
        (["8 Ne", "9 Ne", "--plies", "2"], "--plies"),
        (["8/2 Ne", "--order", "count"], "--order"),
        (["8 Ne", "--order", "count/plies"], "YARN"),
        (["--wraps", "12", "--over", "1 in", "--order", "count/plies"], "YARN"),
        (["8 Ne", "--fibre", "moonlight"], "--fibre"),
        (["8 Ne", "--volume", "0"], "--volume"),
        (["8 Ne", "--volume", "1,100"], "--volume"),
        (["8 Ne", "--volume", "thick"], "--volume"),
        (["8 Ne", "--volume", "1.1", "--fibre", "wool"], "--volume"),
        (["8 Ne", "--wraps", "12"], "--over"),
        (["8 Ne", "--over", "1 in"], "--wraps"),
        (["--wraps", "12", "--over", "0 in"], "--over"),
        (["--wraps", "12", "--over", "1"], "--over"),
        (["--wraps", "12.5", "--over", "1 in"], "--wraps"),
        (["--wraps", "0", "--over", "1 in"], "--wraps"),
    ],
)
def test_what_cannot_be_is_refused_by_its_option(words: list[str], field: str) -> None:
    """One sentence, code 2: the option, what it needs, what came, and an example."""
    assert re.match(rf"{field}: needs .*, got .*; for example \S", refused("yarn", *words))


def test_both_meanings_are_told() -> None:
    """8/2 and "cut" are refused with what each may mean."""
    assert re.search("count 8 folded 2-ply, as today.*count 2 folded 8-ply, as older books", refused("yarn", "8/2"))
    assert re.search("300 yd a pound.*200 yd a pound", refused("yarn", "12 cut"))
