"""White about the words of a guide by itself, over widths and setts at which a number may come to any place."""

from __future__ import annotations

import pytest
from ink import meetings
from kits import font_metrics, plan_of

from layout.drawing.sheet import Sheet
from layout.parts.spacing_guide import spacing_guide

SETTS = ("1 per cm", "2 per cm", "4 epi", "5 per cm", "8 epi", "20 epi", "12 per cm")
WIDTHS = (101, 147, 148, 150, 153, 196, 199)  # short of a low guide, about as long as one at its shortest, and longer


@pytest.mark.parametrize("low", [False, True])
@pytest.mark.parametrize("start", ["left", "right"])
@pytest.mark.parametrize("sett", SETTS)
def test_no_word_of_a_guide_meets_anything(sett: str, start: str, *, low: bool) -> None:
    """Every word keeps 0.3 mm from all else: a cross in the corner may stand right under the first or last number."""
    kit: dict[str, object] = {"sett.given": sett, "weaving.start": start, "frame.outer_width": "293 mm"}
    for width in WIDTHS:
        part = spacing_guide(plan_of(kit | {"weaving.width": f"{width} mm"}), "near", font_metrics(), low=low)
        assert meetings(Sheet("", 999, 999, part.shapes), 0.3) == []
