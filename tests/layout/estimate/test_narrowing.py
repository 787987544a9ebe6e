"""Which measurement a plan asks for: the one after which the weft is known best."""

from __future__ import annotations

from typing import Any

import pytest
from measured_kits import labelled

from layout.estimate import estimate

BEADS = {"weft__beads": {"number": 45, "over": "50 mm"}}
PICK = {"weft__pick": {"straight": "246 mm", "woven": "200 mm"}}
WRAPS = {
    "weft__wrap": {"turns": 40, "window": "50 mm", "how": "pushed together"},
    "warp__wrap": {"turns": 55, "window": "50 mm", "how": "pushed together"},
}


@pytest.mark.parametrize(
    ("known", "key"),
    [
        ({}, "weft.beads"),
        (WRAPS, "weft.beads"),
        (BEADS, "weft.pick"),
        ({"weaving__draw_in": 0.02} | PICK, "weft.beads"),
    ],
)
def test_a_plan_asks_for_what_helps_most(known: dict[str, Any], key: str) -> None:
    """12/6 cotton at 8 ends an inch under firm wool: beads first, whatever was wrapped, then a pick pulled out."""
    asked = labelled(300, 551, 8, **known).narrows_most
    assert asked is not None
    assert asked.key == key


def test_what_it_asks_for_does_narrow() -> None:
    """Beads leave less than half of the range; with beads, pick and draw-in nothing more is asked for."""
    before, after = labelled(300, 551, 8).weft_total_m, labelled(300, 551, 8, **BEADS).weft_total_m
    assert before is not None
    assert after is not None
    assert after.high - after.low < (before.high - before.low) / 2
    assert labelled(300, 551, 8, weaving__draw_in=0.02, **BEADS, **PICK).narrows_most is None


def test_a_weft_that_is_not_known_is_not_narrowed() -> None:
    """Without a weft there is nothing to ask for; what to add stands elsewhere."""
    assert labelled(300, 551, 8, weft={}).narrows_most is None


def test_it_is_computed_for_those_who_ask(monkeypatch: pytest.MonkeyPatch) -> None:
    """A plan that nobody asks computes its weft once."""
    computed, weft_need = [], estimate.weft_need

    def counted(*known: Any) -> Any:
        computed.append(known)
        return weft_need(*known)

    monkeypatch.setattr(estimate, "weft_need", counted)
    amounts = labelled(300, 551, 8)
    assert len(computed) == 1
    assert amounts.narrows_most is not None
    assert len(computed) > 2
