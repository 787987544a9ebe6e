"""Wrong builders, each found by the proof alone: from the kit's numbers, not by comparing with what was planned.

The tables are those that `EVERY` names; drawing, writing, reading and proving run as in `make`.
"""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest
from alarms import alarm_of
from kits import font_metrics, kit_of
from wrong_builders import Patch, Wrong
from wrong_crossed import CROSSED_WRONG
from wrong_pictures import PICTURES
from wrong_printed import PRINTED
from wrong_rod import ROD_WRONG
from wrong_sheets import SHEETS
from wrong_strips import STRIPS

from layout.drawing.sheet import Sheet
from layout.plan import plan
from templates_gen.files.outputs import Outputs

EVERY: dict[str, Wrong] = {**PRINTED, **STRIPS, **PICTURES, **SHEETS, **CROSSED_WRONG, **ROD_WRONG}
LEAST = 80


def drawn(kit: dict[str, Any], file: str) -> tuple[Sheet, ...]:
    """The sheets of a file as the layout draws them now."""
    return tuple(Outputs(plan(kit_of(kit)), font_metrics()).output(file).sheets)


@cache
def right(name: str) -> tuple[Sheet, ...]:
    """The sheets that a wrong builder would draw if it were right; their proof finds nothing."""
    wrong = EVERY[name]
    assert alarm_of(plan(kit_of(dict(wrong.kit))), wrong.file) == ""
    return drawn(dict(wrong.kit), wrong.file)


@pytest.mark.parametrize("name", EVERY)
def test_the_proof_alone_finds_a_wrong_builder(name: str, monkeypatch: Patch) -> None:
    """A builder, a number or a word that was exchanged draws another sheet, and the kit's numbers speak against it."""
    wrong, honest = EVERY[name], right(name)
    wrong.spoil(monkeypatch)
    planned = plan(kit_of(dict(wrong.kit)))
    assert drawn(dict(wrong.kit), wrong.file) != honest
    assert alarm_of(planned, wrong.file), "nothing was found"


def test_there_are_enough_of_them() -> None:
    """The table is not thinned out, and every kind of frame ends is in it."""
    assert len(EVERY) >= LEAST
    assert {wrong.kit.get("frame.ends", "round bars") for wrong in PRINTED.values()} == {
        "round bars",
        "flat ends",
        "notched ends",
        "pegged ends",
        "nails",
    }
