"""The largest free rectangle, against a count over a grid of whole millimetres and against shapely."""

from __future__ import annotations

import shapely
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.shapes import Box
from layout.nesting.free import largest_free
from templates_gen.verify.cut_parts.left_over import sizes_left

WIDE, HIGH = 14, 11

whole_boxes = st.builds(
    lambda x, y, w, h: (float(x), float(y), float(min(x + w, WIDE)), float(min(y + h, HIGH))),
    st.integers(0, WIDE - 1),
    st.integers(0, HIGH - 1),
    st.integers(1, 6),
    st.integers(1, 6),
)


def by_counting(boxes: list[Box]) -> int:
    """The most squares of 1 mm in a rectangle that no box covers: every rectangle of whole squares is tried."""
    free = [[not any(b[0] <= x < b[2] and b[1] <= y < b[3] for b in boxes) for y in range(HIGH)] for x in range(WIDE)]
    most = 0
    for left in range(WIDE):
        rows = [True] * HIGH
        for right in range(left, WIDE):
            rows = [one and other for one, other in zip(rows, free[right], strict=True)]
            run = longest = 0
            for row in rows:
                run = run + 1 if row else 0
                longest = max(longest, run)
            most = max(most, longest * (right - left + 1))
    return most


@given(st.lists(whole_boxes, max_size=7))
def test_it_is_as_large_as_the_largest_that_counting_finds(boxes: list[Box]) -> None:
    """Boxes that meet each other or the edges of the sheet are no matter."""
    left, low, right, high = largest_free(boxes, WIDE, HIGH)
    assert (right - left) * (high - low) == by_counting(boxes)


def whole_micrometres(least: float, most: float) -> st.SearchStrategy[float]:
    """As parts lie; shapely warns of numbers that are hardly more than none."""
    return st.floats(least, most).map(lambda mm: round(mm, 3))


sides = whole_micrometres(1, 250)


@given(st.lists(st.tuples(whole_micrometres(0, 590), whole_micrometres(0, 390), sides, sides), max_size=9))
def test_nothing_lies_on_it(found: list[tuple[float, float, float, float]]) -> None:
    """It is on the sheet and meets no box, and no strip beside it could be added, judged by shapely."""
    boxes = [(x, y, min(x + w, 600), min(y + h, 400)) for x, y, w, h in found]
    left, low, right, high = largest_free(boxes, 600, 400)
    taken = shapely.union_all([shapely.box(*box) for box in boxes])
    free = shapely.box(left, low, right, high)
    assert free.intersection(taken).area < 1e-6
    assert shapely.box(0, 0, 600, 400).covers(free)
    if left < right:
        for more in ((left - 0.5, low, right, high), (left, low, right + 0.5, high), (left, low - 0.5, right, high)):
            wider = shapely.box(*more)
            assert wider.intersection(taken).area > 0 or not shapely.box(0, 0, 600, 400).covers(wider)


def test_of_equal_ones_the_lowest_is_taken() -> None:
    """A bar across the middle leaves two alike."""
    assert largest_free([(0.0, 150.0, 600.0, 250.0)], 600, 400) == (0, 0, 600, 150)


@given(st.lists(whole_boxes, max_size=7))
def test_the_second_computation_finds_the_same(boxes: list[Box]) -> None:
    """By columns over a grid of edges, not by pairs of them; and nothing larger than what counting finds."""
    left, low, right, high = largest_free(boxes, WIDE, HIGH)
    sizes = sizes_left(boxes, WIDE, HIGH)
    if by_counting(boxes):
        assert (int(right - left), int(high - low)) in sizes
        assert max(wide * high for wide, high in sizes) == by_counting(boxes)


@given(st.lists(st.tuples(st.floats(0, 590), st.floats(0, 390), sides, sides), max_size=9))
def test_rounding_in_a_picture_is_no_matter(found: list[tuple[float, float, float, float]]) -> None:
    """What is said of a board is found again among boxes that are a tenth of a micrometre off."""
    boxes = [(x, y, min(x + w, 600.0), min(y + h, 400.0)) for x, y, w, h in found]
    left, low, right, high = largest_free(boxes, 600, 400)
    off = [(x + 1e-4, y - 1e-4, u - 1e-4, v + 1e-4) for x, y, u, v in boxes]
    if min(right - left, high - low) > 1:
        assert (int(right - left), int(high - low)) in sizes_left(off, 600, 400)
