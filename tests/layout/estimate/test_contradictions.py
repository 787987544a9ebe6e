"""Two facts that cannot both be true: both are named, no figure chooses between them, strips are still made."""

from __future__ import annotations

import math
from typing import Any

import pytest
from measured_kits import figures, labelled

LABELS = labelled(300, 551, 8)
"""12/6 cotton and a firm wool at 8 epi: the weft is 0.8 to 1.7 mm thick."""

CASES: list[tuple[str, dict[str, Any], str, float]] = [
    ("weft.wrap", {"weft__wrap": {"turns": 10, "window": "50 mm", "how": "pushed together"}}, "weft_soft_mm", 5),
    ("warp.wrap", {"warp__wrap": {"turns": 10, "window": "50 mm", "how": "pushed together"}}, "warp_thickness_mm", 5),
    ("weft.beads", {"weft__beads": {"number": 10, "over": "50 mm"}}, "bead_mm", 5),
    ("weft.picks", {"weft__picks": {"number": 20, "over": "50 mm"}}, "bead_mm", 5),
    ("weft.pick", {"weft__pick": {"straight": "200 mm", "woven": "100 mm"}}, "weft_take_up", 1),
    ("weft.sample", {"weft__sample": {"grams": 100, "width": "100 mm", "height": "100 mm"}}, "weft_total_g", 500),
]


@pytest.mark.parametrize(("key", "reading", "name", "read"), CASES)
def test_a_reading_that_the_labels_do_not_allow(key: str, reading: dict[str, Any], name: str, read: float) -> None:
    """The warning names the reading's key, and the figure spans what the labels say and what was read."""
    found = labelled(300, 551, 8, **reading)
    assert any(key in sentence for sentence in found.conflicts)
    assert set(found.conflicts) <= set(found.warnings)
    labels, both = dict(figures(LABELS))[name], dict(figures(found))[name]
    assert both.low <= labels.low * (1 + 1e-9)
    assert both.high >= read * (1 - 1e-9)
    assert found.narrows_most is None


def test_what_rests_on_a_contradiction_spans_it_too() -> None:
    """Beads of 5 mm of a yarn of 1 mm: the weft is as long as either makes it, its colours too.

    By hand, beads of 5 mm in 250 mm are 100 picks of at most 200 mm, each at most pi / 2 as long as it is wide.
    """
    labels = dict(figures(LABELS))
    found = dict(figures(labelled(300, 551, 8, weft__beads={"number": 10, "over": "50 mm"})))
    assert found["weft_total_m"].low <= 100 * 0.2 * math.pi / 2 < labels["weft_total_m"].low
    for name in ("weft_total_m", "weft_total_g", "picks_per_cm", "red m", "grey g"):
        assert found[name].high >= labels[name].high * (1 - 1e-9), name
        assert found[name].conflicts == found["bead_mm"].conflicts, name


def test_two_contradictions_are_two_warnings() -> None:
    """Neither hides the other."""
    both = labelled(300, 551, 8, **CASES[0][1], **CASES[4][1])
    assert len(both.conflicts) == 2
