"""The kerf, checked against a simulated beam: a spot of the kerf's width run along the drawn lines (shapely)."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from beams import area_of, crossed, left_over
from hypothesis import given, settings
from hypothesis import strategies as st

from layout.cutting.parts.outline import Corner, boxed, outline, turned_back
from layout.cutting.stock.kerf import Kerf, drawn
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, circle
from layout.values.errors import FieldError, LayoutError

kerfs = st.floats(0.02, 0.6)


def comb(slots: int, pitch: float, slot: float, length: float) -> Curve:
    """A plain comb of the tests' own: square outside, slots and teeth fully rounded."""
    corners = [Corner(0, -10), Corner(slots * pitch + 8, -10)]
    walls = [0.0]
    for k in range(slots):
        left = 4 + k * pitch + (pitch - slot) / 2
        walls += [left, left + slot]
    walls.append(slots * pitch + 8)
    for k in reversed(range(len(walls) - 1)):
        height = 0.0 if k % 2 else length
        corners += [
            Corner(x, height, (walls[k + 1] - walls[k]) / 2 if k % 2 else 0.5) for x in (walls[k + 1], walls[k])
        ]
    return outline(corners)


def test_a_cutting_services_own_figures() -> None:
    """Drawn 2.0 x 4.0 at a kerf of 0.2: the opening is 2.2 x 4.2, the part 1.8 x 3.8 (a cutting service's table)."""
    part, opening = outline(boxed(0, 0, 1.8, 3.8)), outline(boxed(10, 0, 12.2, 4.2))
    board = outline(boxed(-5, -5, 20, 10))
    (cut,) = drawn(part, (), Kerf(0.2, 0.2))
    assert area_of(cut).bounds == pytest.approx((-0.1, -0.1, 1.9, 3.9))
    hole, _ = drawn(board, (opening,), Kerf(0.2, 0.2))
    assert area_of(hole).bounds == pytest.approx((10.1, 0.1, 12.1, 4.1))


@settings(max_examples=60)
@given(st.integers(1, 12), st.floats(3, 9), st.floats(0.3, 0.6), kerfs)
def test_the_beam_leaves_the_comb_that_was_wanted(slots: int, pitch: float, share: float, kerf: float) -> None:
    """Slots and teeth come out at their wanted widths and places, as many as asked for, whatever the kerf."""
    slot = share * pitch
    wanted = comb(slots, pitch, slot, 3 * (pitch - slot))
    made = left_over(drawn(wanted, (), Kerf(kerf, kerf)), kerf, kerf)
    assert made.symmetric_difference(area_of(wanted)).area < 2e-4 * wanted_length(wanted)
    height = 1.5 * (pitch - slot)
    teeth = crossed(made, shapely.LineString([(-50, height), (500, height)]))
    gaps = [(one[1], other[0]) for one, other in pairwise(teeth)]
    assert len(gaps) == slots
    for k, (left, right) in enumerate(gaps):
        assert right - left == pytest.approx(slot, abs=1e-3)
        assert (left + right) / 2 == pytest.approx(4 + (k + 0.5) * pitch, abs=1e-3)
    for left, right in teeth[1:-1]:
        assert right - left == pytest.approx(pitch - slot, abs=1e-3)


def wanted_length(path: Curve) -> float:
    """How long an outline is, in mm."""
    return float(area_of(path).length)


@settings(max_examples=60)
@given(st.integers(1, 8), st.floats(3, 9), kerfs, st.floats(0.67, 1.5))
def test_a_kerf_of_two_widths_leaves_the_comb_too(slots: int, pitch: float, kerf_x: float, ratio: float) -> None:
    """A spot up to half as wide again as high: sides along x and y are exact, rounds within a few micrometres."""
    kerf_y = kerf_x * ratio
    slot = 0.45 * pitch
    wanted = comb(slots, pitch, slot, 2 * pitch)
    made = left_over(drawn(wanted, (), Kerf(kerf_x, kerf_y)), kerf_x, kerf_y)
    teeth = crossed(made, shapely.LineString([(-50, pitch), (500, pitch)]))
    assert [right - left for left, right in teeth[1:-1]] == pytest.approx([pitch - slot] * (slots - 1), abs=1e-3)
    assert made.bounds == pytest.approx(area_of(wanted).bounds, abs=2e-3)
    assert made.hausdorff_distance(area_of(wanted)) < 0.005


@given(kerfs, kerfs)
def test_the_pitch_is_the_same_for_every_kerf(one: float, other: float) -> None:
    """The middles of the slots do not move by a hair: only their sides do."""
    wanted = comb(6, 4, 1.8, 5)

    def middles(kerf: float) -> list[float]:
        (line,) = drawn(wanted, (), Kerf(kerf, kerf))
        sides = sorted({round(start.x, 9) for start, end in sides_of(line) if abs(start.x - end.x) < 1e-9})[1:-1]
        return [(left + right) / 2 for left, right in zip(sides[::2], sides[1::2], strict=True)]

    assert middles(one) == pytest.approx(middles(other), abs=1e-9)


def sides_of(path: Curve) -> list[tuple[Point, Point]]:
    """The straight sides of a closed path."""
    points = path.points()
    pairs = zip(points, points[1:], [step.through for step in path.steps], strict=False)
    return [*((start, end) for start, end, through in pairs if through is None), (points[-1], points[0])]


@given(st.floats(0.4, 30), kerfs)
def test_an_arc_stays_an_arc_of_the_same_middle(size: float, kerf: float) -> None:
    """A disc is drawn half a kerf larger and a hole half a kerf smaller, step for step on true circles."""
    disc, hole = circle(Point(3, 4), size, Pen.THROUGH), circle(Point(3, 4), size, Pen.THROUGH)
    board = outline(boxed(-100, -100, 100, 100))
    if kerf / 2 > size - 0.02:
        return
    (outer,) = drawn(disc, (), Kerf(kerf, kerf))
    inner, _ = drawn(board, (hole,), Kerf(kerf, kerf))
    for path, wanted in ((outer, size + kerf / 2), (inner, size - kerf / 2)):
        assert len(path.steps) == 8
        for end, through in path.steps:
            assert through is not None
            assert math.dist(through, (3, 4)) == pytest.approx(wanted, abs=1e-9)
            assert math.dist(end, (3, 4)) == pytest.approx(wanted, abs=1e-9)


@pytest.mark.parametrize("turn", [lambda path: path, turned_back])
def test_which_side_is_kept_does_not_hang_on_the_way_a_path_runs(turn: object) -> None:
    """A hole's ring shrinks and an outline grows, clockwise or not."""
    assert callable(turn)
    board, hole = turn(outline(boxed(0, 0, 40, 20, 3))), turn(circle(Point(20, 10), 5, Pen.THROUGH))
    inner, outer = drawn(board, (hole,), Kerf(0.3, 0.3))
    assert area_of(outer).bounds == pytest.approx((-0.15, -0.15, 40.15, 20.15))
    assert area_of(inner).bounds == pytest.approx((15.15, 5.15, 24.85, 14.85))
    made = left_over((inner, outer), 0.3, 0.3)
    assert made.symmetric_difference(area_of(board, [hole])).area < 0.01


@pytest.mark.parametrize("slot", [0.2, 0.15])
def test_a_slot_no_wider_than_the_kerf_is_refused(slot: float) -> None:
    """It would vanish in the offset without a word; the sentence names the kerf."""
    with pytest.raises(FieldError) as caught:
        drawn(comb(3, 2, slot, 3), (), Kerf(0.2, 0.2))
    assert str(caught.value) == (
        "cutting.kerf: needs to be less than the narrowest slot, hole or round that is cut, got 0.2 mm; "
        'for example kerf = "0.1 mm"'
    )


def test_a_hole_no_wider_than_the_kerf_is_refused() -> None:
    """Drawn smaller than nothing it would turn inside out."""
    with pytest.raises(FieldError, match=r"cutting\.kerf: needs to be less than"):
        drawn(outline(boxed(0, 0, 9, 9)), (circle(Point(4, 4), 0.1, Pen.THROUGH),), Kerf(0.3, 0.3))


def test_no_kerf_changes_nothing() -> None:
    """A knife takes no width away."""
    wanted = comb(3, 4, 2, 5)
    assert drawn(wanted, (), Kerf(0, 0))[0].points() == [pytest.approx(point) for point in wanted.points()]


def test_a_round_that_meets_its_neighbour_at_a_corner_is_refused() -> None:
    """Where arc and side do not run into each other smoothly, no exact line beside them is known here."""
    kinked = Curve(Point(4, 0), circle(Point(0, 0), 4, Pen.THROUGH).steps[:3], Pen.THROUGH, closed=True)
    with pytest.raises(LayoutError, match="run smoothly into their neighbours"):
        drawn(kinked, (), Kerf(0.2, 0.2))
