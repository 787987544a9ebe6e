"""The commands `guess` and `sett` without a reading: a first guess from two yarns apart."""

from __future__ import annotations

import json
from typing import Any

import pytest
from commands import refused, run
from hypothesis import given
from hypothesis import strategies as st

TWELVE_SIX = ("--warp", "12 Ne x 6")


def guessed(*options: object) -> dict[str, Any]:
    """What `guess` says to programs."""
    result = run("guess", *options, "--json")
    assert result.exit_code == 0
    found: dict[str, Any] = json.loads(result.stdout)
    return found


@pytest.mark.parametrize(
    ("warp", "ends"), [("12 Ne x 12", 10), ("12 Ne x 18", 6), ("12 Ne x 6", 8), ("20 Ne x 6", 14), ("12 Ne x 15", 6)]
)
def test_what_makers_set_lies_in_the_guess(warp: str, ends: int) -> None:
    """12/12 at 10 ends an inch (E. Buckley 2015), 12/18 about 6 (a maker's page 2012), 20/6 at 14, and 12/15 rather
    than 12/6 at 6 (R. Mezoff 2018), 12/6 at 8 (common teaching, from memory); the warp alone being known.
    """
    found = guessed("--warp", warp)
    assert found["sett_per_inch_low"] < ends < found["sett_per_inch_high"]
    assert found["how"] == "assumed"


def test_both_labels_and_what_to_wrap_next() -> None:
    """1 / (warp + weft), both as they lie soft; the weft is known least."""
    found = guessed(*TWELVE_SIX, "--weft", "900 yd/lb")
    assert found["sett_per_cm"] == pytest.approx(10 / (found["warp_soft_mm"] + found["weft_soft_mm"]))
    assert "Wrap the weft next" in found["next"]


def test_two_strands_are_thicker_than_one() -> None:
    """Areas add (geometry): two strands are 1.414 times as thick, so the guess is wider."""
    one, two = (guessed(*TWELVE_SIX, "--weft", "900 yd/lb", "--strands", number) for number in (1, 2))
    assert two["weft_soft_mm"] == pytest.approx(2**0.5 * one["weft_soft_mm"])
    assert two["sett_per_cm"] < one["sett_per_cm"]


@given(st.integers(24, 36))
def test_a_wrap_that_the_label_allows_narrows_the_guess(turns: int) -> None:
    """Whatever is wrapped, as long as both can be true; and then the weft is asked for."""
    before = guessed(*TWELVE_SIX, "--weft", "900 yd/lb")
    after = guessed(*TWELVE_SIX, "--weft", "900 yd/lb", "--warp-wraps", turns, "--wrapped", "pushed together")
    assert not after["conflicts"]
    assert before["sett_per_cm_low"] <= after["sett_per_cm_low"] + 1e-9
    assert after["sett_per_cm_high"] <= before["sett_per_cm_high"] + 1e-9


def test_how_it_was_wrapped_narrows_it_too() -> None:
    """Pushed together is known best; both wrapped, the pair is wrapped next."""
    wraps = ("--warp-wraps", 22, "--weft-wraps", 12)
    open_, pushed = guessed(*wraps), guessed(*wraps, "--wrapped", "pushed together")
    span = [found["sett_per_cm_high"] - found["sett_per_cm_low"] for found in (open_, pushed)]
    assert span[1] < span[0] / 2
    assert "Wrap warp and weft together next" in pushed["next"]


def test_a_wrap_against_its_label_is_said() -> None:
    """60 turns of 12/6 in an inch cannot be: both are named, and the guess covers both."""
    found = guessed(*TWELVE_SIX, "--warp-wraps", 60)
    assert any("contradict each other" in said for said in found["conflicts"])


def test_people_read_it_beside_the_sett() -> None:
    """`sett` says the reading first and the guess after it, or the guess alone."""
    alone = run("sett", *TWELVE_SIX).stdout
    assert alone.startswith("First guess")
    both = run("sett", "--count", 11, "--over", "2 in", *TWELVE_SIX).stdout
    assert both.index("Sett ") < both.index("First guess")
    values = json.loads(run("sett", "--count", 11, "--over", "2 in", "--json").stdout)
    assert values["first_guess"] is None
    assert json.loads(run("sett", *TWELVE_SIX, "--json").stdout)["first_guess"]["sett_per_inch"] > 0


@pytest.mark.parametrize(
    ("options", "said"),
    [
        ((), "--warp: needs the warp by its label, or by --warp-wraps, got nothing"),
        (("--weft-wraps", 12), "--warp: needs"),
        (("--warp", "12/6"), "--warp: needs count and plies"),
        (("--warp", ""), "--warp: needs"),
        (("--warp-wraps", 0), "--warp-wraps: needs"),
        (("--warp-wraps", "many"), "--warp-wraps: needs"),
        (("--warp-wraps", 12, "--wraps-over", "1 kg"), "--wraps-over: needs"),
        (("--warp-wraps", 12, "--wraps-over", "0 mm"), "--wraps-over: needs"),
        (("--warp-wraps", 12, "--wrapped", "tight"), "--wrapped: needs"),
        ((*TWELVE_SIX, "--strands", 2), "--strands: needs"),
        ((*TWELVE_SIX, "--weft", "900 yd/lb", "--strands", 0), "--strands: needs"),
    ],
)
def test_bad_options_are_refused(options: tuple[object, ...], said: str) -> None:
    """In one sentence that names the option, with an example."""
    found = refused("guess", *options)
    assert found.startswith(said)
    assert "for example" in found


def test_sett_needs_something() -> None:
    """A reading, or yarns."""
    found = refused("sett")
    assert found.startswith("--count: needs a wrap reading of both yarns, or --warp")
