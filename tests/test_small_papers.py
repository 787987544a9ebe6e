"""No good kit is refused on small paper, where bars thick and thin come in pieces, low forms, and sheets of words."""

from __future__ import annotations

import pytest
from kits import FLAT, NAILS, NOTCHED, font_metrics, kit_of

from layout.plan import plan
from templates_gen.document import Document
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings

ENDS: dict[str, dict[str, object]] = {
    "thin bars": {"frame.bar_diameter": "6 mm", "weaving.height": "205 mm"},
    "round bars": {},
    "thin boards": FLAT | {"frame.thickness": "4 mm", "weaving.height": "205 mm"},
    "notched ends": NOTCHED,
    "nails": NAILS,
}
WIDTHS = ("87 mm", "147 mm", "7 7/8 in", "387 mm")


@pytest.mark.parametrize("lay", ["auto", "tiles"])
@pytest.mark.parametrize("size", ["148 x 210 mm", "210 x 148 mm"])
@pytest.mark.parametrize("ends", ENDS)
def test_strips_on_small_paper_are_accepted(ends: str, size: str, lay: str) -> None:
    """Strips, or templates, in one piece or in several: all that their sheets say is what the kit asks for."""
    for width in WIDTHS:
        changes = ENDS[ends] | {"weaving.width": width, "frame.outer_width": "55 cm"}
        planned = plan(kit_of(changes | {"paper": {"size": size, "lay": lay}}))
        output = Outputs(planned, font_metrics()).output("strips.pdf")
        assert findings(planned, output, Document(output.sheets, output.about)).problems == ()


@pytest.mark.parametrize("size", ["common", "a4", "letter"])
def test_strips_across_a_sheet_are_accepted(size: str) -> None:
    """A strip that lies as close to targets in the corners as it may is not taken to lie in their white."""
    for width in ("262 mm", "285 mm", "297.3 mm", "305 mm", "311.7 mm", "12 3/8 in"):
        changes = {"weaving.width": width, "frame.outer_width": "427 mm", "sett.given": "5 per cm", "paper.size": size}
        planned = plan(kit_of(changes))
        for end in ("near", "far"):
            output = Outputs(planned, font_metrics()).output(f"strip-{end}.pdf")
            assert findings(planned, output, Document(output.sheets, output.about)).problems == ()
