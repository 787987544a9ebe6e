"""The numbers of cuts: each once, off every part, and apart from each other."""

from __future__ import annotations

from itertools import combinations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import font_metrics
from run_cards import PAPERS, card

from layout.drawing.shapes import Box, Text
from layout.drawing.typeset import SMALL
from layout.kit.kit import Paper
from layout.run.bed import run_bed
from layout.run.cuts import THIN, Cut, cuts_of
from layout.run.imposing import RunPart, boxes_of, imposed
from layout.run.marks import crop_marks, cut_numbers

METRICS = font_metrics()
LEAST = 1.0  # mm: less between two figures reads as one number


def room_of(text: Text) -> shapely.Polygon:
    """What the figures of a number take on the sheet."""
    wide, high = METRICS.width(text.words, SMALL), METRICS.cap * SMALL
    x, y = text.at
    return shapely.box(x - high, y, x, y + wide) if text.angle else shapely.box(x, y, x + wide, y + high)


@settings(max_examples=25)
@given(st.lists(st.tuples(st.floats(40, 165), st.floats(40, 165)), min_size=2, max_size=6), st.sampled_from(PAPERS))
def test_numbers_of_cuts_stand_apart(sizes: list[tuple[float, float]], paper: Paper) -> None:
    """Every cut has its number, no two so close that they read as one: parts of 40 mm and more leave the room."""
    bed = run_bed(paper)
    parts = [(RunPart(card(f"card {k}", round(wide, 2), round(high, 2)), 0), 2) for k, (wide, high) in enumerate(sizes)]
    for sheet in imposed(parts, bed).sheets:
        numbers = cut_numbers(sheet.cuts, list(boxes_of(sheet.pieces)), bed, (), METRICS)
        assert sorted(int(text.words) for text in numbers) == [cut.number for cut in sheet.cuts]
        rooms = [room_of(text) for text in numbers]
        assert all(one.distance(other) > LEAST for one, other in combinations(rooms, 2))
        assert not any(room.intersects(shapely.box(*box)) for room in rooms for box in boxes_of(sheet.pieces))


@given(st.floats(-0.5, 0.5), st.booleans())
def test_a_mark_keeps_off_a_target_with_its_whole_line(off: float, upper: bool) -> None:
    """However near the white of a target lies to it."""
    bed = run_bed(PAPERS[0])
    sheet = imposed([(RunPart(card("card", 100.0, 80.0), 0), 1)], bed).sheets[0]
    pieces = list(boxes_of(sheet.pieces))
    free = crop_marks(sheet.cuts, pieces, bed, ())
    mark = max(free, key=lambda each: each.start.y) if upper else free[0]
    half = mark.pen.ink.width / 2
    (x, y), (_, top) = mark.start, mark.steps[-1].end
    white = x + off, min(y, top) - 1, x + off + 6, max(y, top) + 1
    for each in crop_marks(sheet.cuts, pieces, bed, [white]):
        line = shapely.LineString([each.start, each.steps[-1].end]).buffer(half, cap_style="flat")
        assert not line.intersects(shapely.box(*white))


def columns(gap: float) -> list[Box]:
    """Three columns; all along the last one, either the part on its left or the one on its right is near its edge."""
    return [
        (28.0, 84.0, 116.0, 250.0),
        (124.6, 24.4, 229.6, 98.4),
        (124.6, 100.6, 227.0, 250.0),
        (229.6 + gap, 100.6, 260.0, 250.0),
    ]


@given(st.floats(0.01, 3.0), st.booleans())
def test_a_narrow_gap_has_its_number_and_its_marks(gap: float, turned: bool) -> None:
    """However narrow, as parts that are not side by side may leave it: too narrow for two lines, it is one cut."""
    bed = run_bed(PAPERS[3])
    pieces = [(y, x, top, right) if turned else (x, y, right, top) for x, y, right, top in columns(gap)]
    cuts = cuts_of(pieces, bed.sheet)
    narrow = next(cut for cut in cuts if abs(cut.at - 229.6) < 3.0 and cut.axis == ("y" if turned else "x"))
    assert narrow.gap == pytest.approx(gap if gap > THIN else 0) or gap == pytest.approx(THIN)
    numbers = cut_numbers(cuts, pieces, bed, (), METRICS)
    assert sorted(int(text.words) for text in numbers) == [cut.number for cut in cuts]
    assert not any(room_of(text).intersects(shapely.box(*box)) for text in numbers for box in pieces)
    mine = next(text for text in numbers if text.words == str(narrow.number))
    assert knife(narrow).distance(room_of(mine)) < 1.0


def knife(cut: Cut) -> shapely.MultiLineString:
    """Where the lines of a cut go."""
    ends = [((at, cut.begin), (at, cut.end)) for at in cut.lines]
    across = [tuple((y, x) for x, y in line) for line in ends]
    return shapely.MultiLineString(ends if cut.axis == "x" else across)


@given(st.floats(0.0, 3.5))
def test_a_mark_lies_beyond_its_cut(room: float) -> None:
    """However little room the next part leaves there: none then, and never back over the cut."""
    bed = run_bed(PAPERS[0])
    cut = Cut(1, "x", 100.0, 0.0, 90.0, 150.0)
    pieces = [(80.0, 40.0, 120.0, 90.0 - room), (60.0, 90.0, 100.0, 150.0)]
    below = [mark for mark in crop_marks([cut], pieces, bed, ()) if min(mark.start.y, mark.steps[-1].end.y) < 90.0]
    assert bool(below) == (room > 0.4) or room == pytest.approx(0.4)
    assert all(90.0 - room < at.y < 90.0 for mark in below for at in mark.points())
