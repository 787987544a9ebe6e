"""One trial measured, in any order and however often, and by several people at once, says one thing."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from fractions import Fraction
from itertools import permutations
from pathlib import Path

import pytest
from click.testing import CliRunner
from cut_plans import parts_of
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import plan_of

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from templates_gen.inputs.stock_file import load, write_starter
from templates_gen.inputs.trial import TrialOptions, measured, take
from templates_gen.screen.cli import main

KERF, SLOT = ("--hole", "20.20", "--part", "19.60"), ("--slot", "0.20")


def run(path: Path, *words: str) -> None:
    """The command, which ends well."""
    result = CliRunner().invoke(main, ["trial-cut", *words, "--stock", str(path)])
    assert result.exit_code == 0, result.output


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A stock file with a kerf of 0.20 mm, as a person begins with it."""
    write_starter(tmp_path / "birch.toml")
    return tmp_path / "birch.toml"


AT_ONCE = """
import json, os, sys
from click.testing import CliRunner
from templates_gen.screen.cli import main
loads = CliRunner().invoke(main, ["trial-cut", "--stock", sys.argv[2], "--slot", "0.20"])
assert loads.exit_code == 0, loads.output
children = []
for command in json.loads(sys.argv[1]):
    if (child := os.fork()) == 0:
        main(command)
    children.append(child)
sys.exit(any(os.waitpid(child, 0)[1] for child in children))
"""
"""A process that has loaded all that the commands need, and runs each in a process forked from it, all at once."""


ORDERS = [
    [(*KERF, *SLOT)],
    [(*KERF, *SLOT), (*KERF, *SLOT)],
    [KERF, SLOT],
    [SLOT, KERF],
    [KERF, KERF, SLOT, KERF],
    [SLOT, SLOT, KERF, SLOT],
    [(*KERF, *SLOT), SLOT, KERF],
]


@pytest.mark.parametrize("order", ORDERS)
def test_any_order_of_storing_gives_one_answer(path: Path, order: list[tuple[str, ...]]) -> None:
    """Hole 20.20 and part 19.60 are a kerf of 0.30 mm, so the slot engraved 0.20, drawn for 0.20, had 0.30 of ease."""
    for words in order:
        run(path, *words)
    stock = load(path)
    assert (stock.kerf_x, stock.ease, stock.trial_kerf, stock.trial_slot) == (0.3, 0.3, 0.2, 0.2)


hundredths = st.integers(1, 60).map(lambda number: f"{number / 100:.2f}")


@settings(max_examples=25)
@given(hundredths, hundredths, st.lists(st.integers(1, 150), min_size=1, max_size=3))
def test_the_order_never_matters(
    tmp_path_factory: pytest.TempPathFactory, drawn: str, slot: str, kerfs: list[int]
) -> None:
    """Whatever was drawn, chosen and measured, three ways of storing leave one and the same stock."""
    holes = tuple(f"{20 + kerf / 1000 + 1:.3f}" for kerf in kerfs)
    parts = tuple(f"{20 - kerf / 1000 + 1:.3f}" for kerf in kerfs)
    kerf, ease = TrialOptions(holes=holes, parts=parts), TrialOptions(slot=f"1{slot[1:]}")
    both = TrialOptions(holes=holes, parts=parts, slot=ease.slot)
    found: list[Stock] = []
    for order in ([both], [both, both], *permutations([kerf, ease])):
        path = tmp_path_factory.mktemp("stocks") / "stock.toml"
        write_starter(path)
        path.write_text(path.read_text("utf-8").replace('kerf = "0.20 mm"', f'kerf = "{drawn} mm"', 1), "utf-8")
        for asked in order:
            take(asked, path)
        found.append(load(path))
    assert all(stock == found[0] for stock in found)


def test_a_trial_made_again_is_drawn_for_what_is_kept(path: Path) -> None:
    """Its engraving says the kept kerf, whatever the stock has by now; so the same slot says the same."""
    run(path, *KERF, *SLOT)
    stock = load(path)
    (part,) = parts_of("trial-cut", plan_of(), stock)
    words = [shape.words for shape in part.shapes if isinstance(shape, Text) and shape.pen is Pen.ENGRAVE]
    assert any("drawn for kerf 0.2 " in each for each in words)
    assert "0.20" in words
    assert measured(TrialOptions(slot="0.20"), stock).ease == Fraction("0.3")


def test_what_was_said_to_be_drawn_for_is_kept(path: Path) -> None:
    """`--drawn-for` goes before the kerf of the file, and the next measurement knows it."""
    run(path, "--slot", "0.20", "--drawn-for", "0.15")
    assert load(path).ease == 0.25
    run(path, *KERF)
    assert load(path).ease == 0.35


def test_stores_at_once_lose_nothing(path: Path) -> None:
    """Eight runs at once, half of them the kerf and half the ease: both stand in the file afterwards."""
    commands = [["trial-cut", "--stock", str(path), *words] for words in [KERF, SLOT] * 4]
    warm = path.parent / "warm" / "other.toml"
    warm.parent.mkdir()
    shutil.copy(path, warm)
    subprocess.run(
        [sys.executable, "-c", AT_ONCE, json.dumps(commands), str(warm)], stdout=subprocess.DEVNULL, check=True
    )
    shutil.rmtree(warm.parent)
    stock = load(path)
    assert (stock.kerf_x, stock.ease) == (0.3, 0.3)
    assert list(path.parent.iterdir()) == [path]
