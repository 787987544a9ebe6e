"""Straight cuts part whatever the engine has placed, judged by shapely."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from run_cards import PAPERS, card
from shapely.geometry.base import BaseGeometry
from shapely.ops import split

from layout.drawing.shapes import Box
from layout.kit.kit import Paper
from layout.run.bed import GAP, run_bed
from layout.run.cuts import THIN, Cut, cuts_of
from layout.run.imposing import RunPart, boxes_of, imposed
from layout.values.errors import LayoutError


def cut_apart(sheet: Box, cuts: Sequence[Cut]) -> list[BaseGeometry]:
    """What is left of a sheet after each cut was made, one line after the other: every line goes right through one."""
    panels: list[BaseGeometry] = [shapely.box(*sheet)]
    for cut in cuts:
        for at in cut.lines:
            ends = ((at, cut.begin), (at, cut.end)) if cut.axis == "x" else ((cut.begin, at), (cut.end, at))
            knife = shapely.LineString(ends)
            met = [panel for panel in panels if panel.intersection(knife).length > 1e-6]
            assert len(met) == 1, f"cut {cut.number} meets {len(met)} panels"
            assert met[0].intersection(knife).length == pytest.approx(knife.length)
            panels.remove(met[0])
            halves = list(split(met[0], knife).geoms)
            assert len(halves) == 2, f"cut {cut.number} does not go from edge to edge"
            panels += halves
    return panels


sides = st.floats(20, 165).map(lambda side: round(side, 2))
sets = st.lists(st.tuples(sides, sides, st.integers(1, 5)), min_size=1, max_size=8)


@settings(max_examples=40)
@given(sets, st.sampled_from(PAPERS))
def test_straight_cuts_leave_each_part_alone(wanted: list[tuple[float, float, int]], paper: Paper) -> None:
    """Made in the order of their numbers, from edge to edge of what is left, they leave every part trimmed."""
    bed = run_bed(paper)
    parts = [(RunPart(card(f"card {k}", *size), 0), copies) for k, (*size, copies) in enumerate(wanted)]
    found = imposed(parts, bed)
    for sheet in found.sheets:
        assert [cut.number for cut in sheet.cuts] == list(range(1, len(sheet.cuts) + 1))
        panels = cut_apart(bed.sheet, sheet.cuts)
        for box in boxes_of(sheet.pieces):
            own = shapely.box(*box)
            held = [panel for panel in panels if panel.buffer(1e-6).covers(own)]
            assert len(held) == 1
            assert own.buffer(THIN + 1e-6, join_style="mitre").covers(held[0])
    counts = dict.fromkeys((part.part.name for part, _ in parts), 0)
    for sheet in found.sheets:
        for piece in sheet.pieces:
            counts[piece.part.name] += sheet.times
    assert counts == {part.part.name: copies for part, copies in parts}


@settings(max_examples=25)
@given(sets, st.sampled_from(PAPERS))
def test_parts_keep_a_gap_and_the_bed(wanted: list[tuple[float, float, int]], paper: Paper) -> None:
    """Between two parts there is room for a knife, and none reaches into the gutter or the margins."""
    bed = run_bed(paper)
    found = imposed([(RunPart(card(f"card {k}", *size), 0), copies) for k, (*size, copies) in enumerate(wanted)], bed)
    inside = shapely.box(bed.left, bed.bottom, bed.right, bed.top).buffer(1e-6)
    for sheet in found.sheets:
        boxes = [shapely.box(*box) for box in boxes_of(sheet.pieces)]
        assert all(inside.covers(box) for box in boxes)
        for k, box in enumerate(boxes):
            assert all(box.distance(other) >= GAP - 1e-6 for other in boxes[:k])


def test_a_wheel_of_four_cannot_be_cut_apart() -> None:
    """Four boxes round a fifth leave no straight way through."""
    wheel = [(0.0, 0.0, 20.0, 10.0), (21.0, 0.0, 31.0, 20.0), (11.0, 21.0, 31.0, 31.0), (0.0, 11.0, 10.0, 31.0)]
    with pytest.raises(LayoutError, match="no straight cut"):
        cuts_of(wheel, (0, 0, 31, 31))


def test_two_cards_over_one_are_cut_in_this_order() -> None:
    """The margins first, then the gap across, then what stands side by side, worked out by hand."""
    boxes = [(10.0, 60.0, 50.0, 90.0), (52.0, 60.0, 90.0, 90.0), (10.0, 10.0, 90.0, 58.0)]
    cuts = cuts_of(boxes, (0, 0, 100, 100))
    assert [(cut.axis, cut.at, cut.gap, cut.begin, cut.end) for cut in cuts] == [
        ("y", 90, 0, 0, 100),
        ("y", 10, 0, 0, 100),
        ("x", 10, 0, 10, 90),
        ("x", 90, 0, 10, 90),
        ("y", 58, 2, 10, 90),
        ("x", 50, 2, 60, 90),
    ]


def test_no_cut_parts_a_part_from_the_words_beside_it() -> None:
    """The words of the lower one reach over the lower edge of the one beside the upper one."""
    trims = [(0.0, 52.0, 40.0, 100.0), (0.0, 0.0, 40.0, 44.0), (44.0, 45.0, 60.0, 100.0)]
    rooms = [(0.0, 52.0, 40.0, 100.0), (0.0, 0.0, 40.0, 49.0), trims[2]]
    cuts = cuts_of(trims, (0, 0, 60, 100), rooms)
    assert (cuts[0].axis, cuts[0].at, cuts[0].gap) == ("x", 40, 4)
