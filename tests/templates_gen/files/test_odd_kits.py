"""Kits at the edge of what is allowed: their files still stand up to their proofs."""

from __future__ import annotations

import pytest
from kits import FLAT, PEGGED, font_metrics, kit_of, plan_of

from layout.cutting.parts.outline import Corner, outline
from layout.cutting.parts.teeth import toothed_edge
from layout.cutting.parts.trial_cut import STEPS, trial_cut
from layout.drawing.shapes import Curve
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs import stock_file as stockfile
from templates_gen.verify.cut_parts.found_cuts import uprights


def stated(changes: dict[str, object], file: str) -> tuple[str, ...]:
    """What the proof says of that file of a kit, just as it was drawn."""
    planned = plan_of(changes)
    wanted = Outputs(planned, font_metrics()).output(file)
    return findings(planned, wanted, read(wanted, write(wanted))).sentences


@pytest.mark.parametrize("width", ["400 mm", "408.3 mm", "411.7 mm"])
def test_a_check_sheet_that_stands_on_a_narrow_sheet_is_right(width: str) -> None:
    """Turned a quarter round, the frame's corners come back with a rounding in the last figure, in any order."""
    tall = {"frame.outer_width": width, "frame.outer_height": "1200 mm", "paper.size": "150 x 3000 mm"}
    assert stated(FLAT | tall, "frame-check.pdf") == ()


def test_a_frame_without_side_pieces_is_planned() -> None:
    """Sides of no width are allowed: the heading rows then go round their thickness alone."""
    planned = plan_of({"frame.side_width": "0 mm"})
    assert planned.kit.frame.side_width.mm == 0
    assert planned.warp.ends == plan_of().warp.ends
    assert kit_of({"frame.side_width": "0 mm"}) == planned.kit


def test_a_height_midway_between_two_figures_may_be_rounded_to_either() -> None:
    """Pegs of 1 mm settle at 159.5 mm: two ways of computing it differ in the last bit, and both are right."""
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
    assert stated(tie, "spacing-guide.pdf") == ()


@pytest.mark.parametrize("file", ["winding.pdf", "winding.svg"])
def test_an_arrow_behind_many_words_is_still_the_winding_s(file: str) -> None:
    """Words of a doubled warp reach past the frame; the arrow after them belongs to the face, not to the side view."""
    long = FLAT | {
        "sett": {"readings": [{"pairs": 5, "window": "2 in"}], "as_measured": True},
        "frame.outer_width": "210 mm",
        "frame.side_width": "20 mm",
        "frame.margin": "10 mm",
        "weaving.width": "150 mm",
        "weaving.height": "100 mm",
        "weaving.doubled_warp": True,
    }
    assert stated(long, file) == ()


def test_a_trial_cut_for_the_coarsest_slots_is_drawn() -> None:
    """A slot wider than twice its depth cannot end in a half round; it still has walls to measure between."""
    coarse = {"sett": {"readings": [{"pairs": 1, "window": "2 in"}], "as_measured": True}}
    part = trial_cut(plan_of(coarse), stockfile.built_in(), font_metrics())
    plate = max((shape for shape in part.shapes if isinstance(shape, Curve)), key=lambda path: len(path.steps))
    assert len(uprights([plate])) == 2 * (STEPS + 1) + 2


@pytest.mark.parametrize(("slot", "length"), [(1.2, 1.0), (7.1, 4.05), (1.2, 6.0)])
def test_a_shallow_slot_keeps_straight_walls(slot: float, length: float) -> None:
    """However shallow, each wall of a slot has a straight piece to be measured by; without one no proof can find it."""
    edge = toothed_edge([0.0, 20.0], slot, (-20.0, 40.0), length)
    found = uprights([outline([Corner(-20, -30), Corner(40, -30), *edge])])[1:-1]
    assert found == pytest.approx([-slot / 2, slot / 2, 20 - slot / 2, 20 + slot / 2])


def test_a_winding_comb_reaches_past_a_limit_beyond_its_last_wind() -> None:
    """With an odd number of ends the last wind lies far inside the limit, whose mark still stands on the wood."""
    odd = {
        "sett.readings": None,
        "sett.given": "3 epi",
        "frame.bar_diameter": "10 mm",
        "weaving.width": "150 mm",
        "weaving.tie_off": "far end",
    }
    planned, stock = plan_of(odd), stockfile.built_in()
    outputs = Outputs(planned, font_metrics(), ["winding-comb"], stock)
    svg = next(file for file in outputs.files if file.startswith("winding-comb") and file.endswith("svg"))
    wanted = outputs.output(svg)
    assert findings(planned, wanted, read(wanted, write(wanted))).problems == ()
