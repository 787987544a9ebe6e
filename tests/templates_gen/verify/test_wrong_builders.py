"""Wrong builders, each found by the proof alone: from the kit's numbers, not by comparing with what was planned.

The tables are those that `EVERY` names; drawing, writing, reading and proving run as in `make`.
"""

from __future__ import annotations

import pytest
from alarms import alarm_on
from kits import font_metrics, kit_of
from wrong_builders import Patch, Wrong
from wrong_cards import CARDS_WRONG
from wrong_crossed import CROSSED_WRONG
from wrong_first import FIRST
from wrong_leaflet import LEAFLET, LEAFLETS
from wrong_marking import MARKING_WRONG
from wrong_orders import ORDERS_WRONG
from wrong_pictures import PICTURES
from wrong_printed import PRINTED
from wrong_rod import ROD_WRONG
from wrong_sheets import SHEETS
from wrong_templates import TEMPLATES_WRONG

from layout.drawing.sheet import Sheet
from layout.plan import Plan, plan
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs

EVERY: dict[str, Wrong] = {
    **PRINTED,
    **TEMPLATES_WRONG,
    **PICTURES,
    **SHEETS,
    **CROSSED_WRONG,
    **MARKING_WRONG,
    **ROD_WRONG,
    **FIRST,
    **CARDS_WRONG,
    **LEAFLETS,
    **ORDERS_WRONG,
}
LEAST = 80


def drawn(wrong: Wrong) -> tuple[Plan, Output]:
    """The plan of a kit, and its file as the layout draws it now."""
    planned = plan(kit_of(dict(wrong.kit)))
    only = None if wrong.file != LEAFLET else ("leaflet",)
    return planned, Outputs(planned, font_metrics(), only).output(wrong.file)


RIGHT: dict[str, tuple[Sheet, ...]] = {}


def right(wrong: Wrong) -> tuple[Sheet, ...]:
    """The sheets that a wrong builder would draw if it were right; their proof finds nothing."""
    key = f"{wrong.file} {sorted(wrong.kit.items())}"
    if key not in RIGHT:
        planned, output = drawn(wrong)
        assert alarm_on(planned, output) == ""
        RIGHT[key] = tuple(output.sheets)
    return RIGHT[key]


@pytest.mark.parametrize("name", EVERY)
def test_the_proof_alone_finds_a_wrong_builder(name: str, monkeypatch: Patch) -> None:
    """A builder, a number or a word that was exchanged draws another sheet, and the kit's numbers speak against it."""
    wrong = EVERY[name]
    honest = right(wrong)
    wrong.spoil(monkeypatch)
    planned, output = drawn(wrong)
    assert tuple(output.sheets) != honest
    assert alarm_on(planned, output), "nothing was found"


def test_there_are_enough_of_them() -> None:
    """The table is not thinned out, and every kind of frame ends is in it."""
    assert len(EVERY) >= LEAST
    assert {wrong.kit.get("frame.ends", "round bars") for wrong in EVERY.values()} == {
        "round bars",
        "flat ends",
        "notched ends",
        "pegged ends",
        "nails",
    }
