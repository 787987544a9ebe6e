"""How many sheets of paper the boxes of a run take."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from run_cards import PAPERS, card

from layout.nesting.bed import Item
from layout.nesting.nest import nest
from layout.run.bed import run_bed
from layout.run.imposing import RunPart, imposed
from layout.values.errors import FieldError

BED = run_bed(PAPERS[0])

sides = st.floats(20, 165).map(lambda side: round(side, 2))
boxes = st.lists(st.tuples(sides, sides), min_size=1, max_size=6)
ranges = st.lists(st.tuples(boxes, st.integers(1, 30)), min_size=1, max_size=3)


def of(kits: list[tuple[list[tuple[float, float]], int]]) -> list[tuple[RunPart, int]]:
    """The parts of each kit, with its copies."""
    return [
        (RunPart(card(f"{k}-{n}", *size), k), copies)
        for k, (parts, copies) in enumerate(kits)
        for n, size in enumerate(parts)
    ]


@settings(max_examples=6)
@given(ranges)
def test_never_more_sheets_than_one_box_to_a_page(kits: list[tuple[list[tuple[float, float]], int]]) -> None:
    """Placing several boxes at a time never takes more paper than each by itself, and never less than its area."""
    parts = of(kits)
    found = imposed(parts, BED)
    by_itself = 0
    for k, (_, copies) in enumerate(kits):
        one = [Item(each.part) for each, _ in parts if each.kit == k]
        by_itself += copies * len(nest(one, BED.for_nesting).sheets)
    assert found.papers <= by_itself
    area = math.fsum((each.part.length + 2.2) * (each.part.height + 2.2) * copies for each, copies in parts)
    assert found.least == math.ceil(area / ((BED.width + 2.2) * (BED.height + 2.2)) - 1e-9) <= found.papers


@settings(max_examples=6)
@given(ranges)
def test_waste_is_what_no_part_covers(kits: list[tuple[list[tuple[float, float]], int]]) -> None:
    """The share of the beds of all sheets, added up the other way round: free room over room."""
    parts = of(kits)
    found = imposed(parts, BED)
    room = found.papers * 173.7 * 244.7
    free = room - math.fsum(each.part.length * each.part.height * copies for each, copies in parts)
    assert found.waste == pytest.approx(free / room, abs=1e-4)


def test_two_halves_share_a_sheet_of_two_boxes() -> None:
    """A part of just less than half the bed: ten boxes of one take five sheets, all alike."""
    found = imposed([(RunPart(card("half", 170, 120), 0), 10)], BED)
    assert [(len(sheet.pieces), sheet.times) for sheet in found.sheets] == [(2, 5)]


def test_few_boxes_of_unlike_counts_share_sheets() -> None:
    """Three boxes of one kit and two of another: what lies alone on a sheet finds room beside the other kit."""
    found = imposed([(RunPart(card("a", 170, 120), 0), 3), (RunPart(card("b", 170, 120), 1), 1)], BED)
    assert found.papers == 2
    assert sorted(kit for sheet in found.sheets for kit in sheet.kits * sheet.times) == [0, 0, 0, 1]


def test_a_part_larger_than_the_bed_is_refused() -> None:
    """It is for the caller to print it on its own page."""
    with pytest.raises(FieldError):
        imposed([(RunPart(card("long", 250, 40), 0), 1)], BED)
