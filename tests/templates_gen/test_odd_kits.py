"""Kits at the edge of what is allowed: their files still stand up to their proofs."""

from __future__ import annotations

import pytest
from kits import FLAT, PEGGED, font_metrics, kit_of, plan_of

from templates_gen.outputs import Outputs
from templates_gen.proof import findings, read, write


def told(changes: dict[str, object], file: str) -> tuple[str, ...]:
    """What the proof says of that file of a kit, just as it was drawn."""
    planned = plan_of(changes)
    wanted = Outputs(planned, font_metrics()).output(file)
    return findings(planned, wanted, read(wanted, write(wanted))).problems


@pytest.mark.parametrize("width", ["400 mm", "408.3 mm", "411.7 mm"])
def test_a_check_sheet_that_stands_on_a_narrow_sheet_is_right(width: str) -> None:
    """Turned a quarter round, the frame's corners come back with a rounding in the last figure, in any order."""
    tall = {"frame.outer_width": width, "frame.outer_height": "1200 mm", "paper.size": "150 x 3000 mm"}
    assert told(FLAT | tall, "frame-check.pdf") == ()


def test_a_frame_without_side_pieces_is_planned() -> None:
    """Sides of no width are allowed: the heading rows then go round their thickness alone."""
    planned = plan_of({"frame.side_width": "0 mm"})
    assert planned.kit.frame.side_width.mm == 0
    assert planned.warp.ends == plan_of().warp.ends
    assert kit_of({"frame.side_width": "0 mm"}) == planned.kit


def test_a_height_midway_between_two_figures_may_be_rounded_to_either() -> None:
    """Pegs of 1 mm settle at 159.5 mm: two ways of reckoning it differ in the last bit, and both are right."""
    tie = PEGGED | {
        "sett.given": "2 ends/cm",
        "frame.outer_width": "80 mm",
        "frame.outer_height": "420 mm",
        "frame.side_width": "20 mm",
        "frame.peg_diameter": "1 mm",
        "frame.row_distance": "2 mm",
        "frame.edge_distance": "2 mm",
        "weaving.width": "10 mm",
        "weaving.height": "10 mm",
        "room": None,
    }
    assert told(tie, "spacing-guide.pdf") == ()
