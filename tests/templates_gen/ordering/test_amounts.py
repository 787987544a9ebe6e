"""What a box takes, as plain figures and back."""

from __future__ import annotations

import json

import pytest
from pages import ROOT

from layout.box.buying import Wanted, purchases
from layout.box.needs import Need, needs
from layout.plan import plan
from templates_gen.inputs.range_file import load_range
from templates_gen.ordering.amounts import amounts_of, needs_of
from templates_gen.ordering.result import Amount

RANGE = load_range(ROOT / "tests" / "sample_ranges" / "weir-frames.toml")
KITS = {each.kit.name: each for each in RANGE.kits}


@pytest.mark.parametrize("name", KITS)
def test_what_is_bought_by_plain_figures_is_the_same(name: str) -> None:
    """Figures that went through JSON lead to the very purchases that the plan's needs lead to."""
    wanted = needs(plan(KITS[name].kit))
    sent = [Amount(*each) for each in json.loads(json.dumps(amounts_of(wanted)))]
    again = needs_of(sent)
    assert purchases([Wanted(again, 7)], RANGE.shop) == purchases([Wanted(wanted, 7)], RANGE.shop)


def test_things_of_one_name_stay_apart() -> None:
    """Two entries of one name in the same unit are two things, one in two units is one."""
    same = [Amount("weft", "wool", "", unit, 1.0, 1.0, 1.0, 1.0) for unit in ("g", "m", "g", "m")]
    found = needs_of(same)
    assert [sorted(need.taken) for need in found] == [["g", "m"], ["g", "m"]]
    assert all(isinstance(need, Need) for need in found)
