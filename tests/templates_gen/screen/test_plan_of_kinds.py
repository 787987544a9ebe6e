"""What the command `plan` says of notches, pegs and nails, and of warps that are doubled or odd, by hand."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from commands import refused, run

KITS = Path(__file__).parents[2] / "sample_kits"


def values_of(name: str) -> dict[str, Any]:
    """The plan of a sample kit as a program gets it."""
    result = run("plan", "--json", KITS / f"{name}-frame.toml")
    assert result.exit_code == 0
    values: dict[str, Any] = json.loads(result.stdout)
    return values


def test_notches_to_be_made() -> None:
    """At least 3.4 ends per cm: 3 to 1 cm, so 66 in 22 cm, each its own notch; the outer two doubled are 68 threads."""
    values = values_of("alder")
    assert (values["sett_per_cm"], values["ends"], values["threads"]) == (3, 66, 68)
    assert (values["winds"], values["winding_pitch_mm"], values["winds_per_unit"]) == (None, None, None)
    wanted = [(k + 0.5) * 10 / 3 - 110 for k in range(66)]
    assert values["near_marks_mm"] == pytest.approx(wanted)
    assert values["far_marks_mm"] == pytest.approx(wanted)


def test_notches_that_are_there() -> None:
    """At least 5.5 epi on ten notches an inch: every second one, 50 ends in 10 in."""
    values = values_of("maple")
    assert (values["sett_per_inch"], values["ends"], values["winds"]) == (5, 50, None)
    assert values["near_marks_mm"] == pytest.approx([(k + 0.5) * 5.08 - 127 for k in range(50)])


def test_pegs_of_an_odd_warp() -> None:
    """2 ends per cm, room for 40, odd: 39 ends, 195 mm; 20 pegs at each end, the far ones half a peg on."""
    values = values_of("hazel")
    assert (values["ends"], values["weaving_width_mm"], values["winds"]) == (39, 195, None)
    assert values["near_marks_mm"] == [-97.5 + 10 * j for j in range(20)]
    assert values["far_marks_mm"] == [-92.5 + 10 * j for j in range(20)]


def test_nails() -> None:
    """3 ends per cm over 15 cm: 45, odd, so tied off at the far end; 23 nails at each, 20/3 mm apart; 47 threads."""
    values = values_of("finch")
    assert (values["ends"], values["threads"], values["winds"], values["winds_per_unit"]) == (45, 47, None, None)
    assert values["near_marks_mm"] == pytest.approx([-75 + 20 * j / 3 for j in range(23)])
    assert values["far_marks_mm"] == pytest.approx([-75 + 10 / 3 + 20 * j / 3 for j in range(23)])


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("alder", ("Notches", "66  ", "the outer end at each side doubled", "tied off at the near end")),
        ("maple", ("an end in every second notch, of 10 notches an inch", "50 near, 50 far")),
        ("finch", ("from one nail to the next; each turns two ends", "3 nails to each", "23 near, 23 far")),
        ("hazel", ("each turns two ends", "39", "20 near, 20 far", "tied off at the far end", "0.5 cm more")),
    ],
)
def test_the_plan_for_people(name: str, said: tuple[str, ...]) -> None:
    """It speaks of notches, pegs and nails, never of winds, and says where the warp is tied off."""
    table = run("plan", KITS / f"{name}-frame.toml").stdout
    assert all(each in table for each in said)
    assert "wind" not in table.lower()


def test_a_sett_that_the_notches_refuse_is_one_sentence(tmp_path: Path) -> None:
    """The command leaves with code 2 and says what would fit."""
    text = (KITS / "maple-frame.toml").read_text("utf-8")
    kit = tmp_path / "kit.toml"
    kit.write_text(text.replace('readings = [{pairs = 11, window = "2 in"}]', 'given = "6 epi"'), "utf-8")
    said = refused("plan", kit)
    assert said.startswith("sett.given: needs a sett that the notches allow: 5 epi (an end in every second notch)")
