"""The headings: rows laid one by one, half hitches, and published rules as checks of both."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.quantity import Origin, Quantity, measured
from layout.values.units import Length, read_length
from layout.yardage.given import HALF_HITCHES, RoomGiven
from layout.yardage.heading import (
    HITCHED_WIDTHS,
    ROW_TAKE_UP,
    SidePiece,
    heading_of,
    hitched_thread,
    row_take_up,
    rows_thread,
)

_TAIL, _KNOT = measured(150.0, "Measured."), measured(100.0, "Measured.")
_SIDE = SidePiece(width=30, thickness=15, gap=50)
_PRESSED = measured(1.437, "0.0374 mm times the root of 1476 tex.")


def mm(value: float) -> Quantity:
    """A length that somebody measured."""
    return measured(value, "Measured.")


def followed(rows: int, width: float, side: SidePiece, more: float) -> float:
    """Both headings, the thread followed: round a side piece, across, round the other side piece, and so on."""
    way, turn = 0.0, 2 * (float(side.width) + float(side.thickness))
    for _ in ("near", "far"):
        way += 150 + turn
        for _ in range(rows):
            way += float(side.gap) + width * (1 + more) + float(side.gap) + turn
        way += 100
    return way


def test_two_rows_at_both_ends_by_hand() -> None:
    """240 mm wide at 4 mm, sides of 30 x 15 mm, 50 mm to each, 27.2 % take-up: 1330.5 mm an end, 2.66 m in all."""
    more = row_take_up(4, _PRESSED)
    assert more.value == pytest.approx(0.272, abs=0.001)
    found = rows_thread(2, 240, _SIDE, more, _TAIL, _KNOT)
    assert found.value == pytest.approx(2 * 1330.5, abs=1)
    assert found.origin is Origin.COMPUTED


@given(
    st.integers(1, 40), st.floats(20, 1000), st.floats(0, 0.5), st.floats(5, 80), st.floats(5, 40), st.floats(0, 200)
)
def test_rows_are_laid_one_by_one(rows: int, width: float, more: float, side: float, thick: float, gap: float) -> None:
    """The formula is what a thread takes that is followed from its knot on to its tail."""
    piece = SidePiece(side, thick, gap)
    found = rows_thread(rows, width, piece, mm(more), _TAIL, _KNOT)
    assert found.value == pytest.approx(followed(rows, width, piece, more))


def test_no_rows_take_no_thread() -> None:
    """Nothing is tied where nothing is woven."""
    assert rows_thread(0, 240, _SIDE, ROW_TAKE_UP, _TAIL, _KNOT).value == 0


def test_eight_rows_with_loops_are_as_long_as_published() -> None:
    """E. Buckley, "The Heading as Foundation", 2019: four rows of doubled and four of single warp, an inch of slack at
    each edge: at 240 mm about 3.9 m at one end. Ours, twelve rows with a gap of an inch and no side piece: within 10 %.
    """
    inch = SidePiece(0, 0, 25.4 / 2)
    found = rows_thread(12, 240, inch, mm(0.272), mm(0), mm(0)).value / 2
    assert found == pytest.approx(3900, rel=0.1)


def test_half_hitches_take_about_three_widths() -> None:
    """Alpacas Magazine, spring 2010, p. 113: a half-hitch edge takes a thread about 3 times as long as the width of the
    weaving. So is ours, within a quarter, for a cord pressed round (Peirce 1937: 0.0374 mm for 1 tex) at the setts of
    12/12 cotton at 10 ends an inch (E. Buckley 2015) and 12/6 at 8 (common teaching, from memory).
    """
    for tex, ends_an_inch in ((590.5, 10), (295.3, 8), (1476, 6.35)):
        pitch, thick = 25.4 / ends_an_inch, mm(0.0374 * math.sqrt(tex))
        found = hitched_thread(240, pitch, thick, mm(0)).value / 2
        assert found == pytest.approx(3 * 240, rel=0.25)
        assert HITCHED_WIDTHS.low * 240 < found < HITCHED_WIDTHS.high * 240


def test_a_loop_round_an_end_is_as_long_as_a_circle() -> None:
    """Geometry: an end of 1 mm with a loop of a thread of 1 mm, whose middle line runs round it 2 mm wide; 60 ends."""
    steps = [(math.cos(k * math.tau / 3600), math.sin(k * math.tau / 3600)) for k in range(3601)]
    loop = sum(math.dist(one, other) for one, other in itertools.pairwise(steps))
    assert hitched_thread(240, 4, mm(1), mm(0)).value / 2 == pytest.approx(60 * (4 + loop), rel=1e-5)


@given(st.floats(0.05, 3), st.floats(2, 8))
def test_the_take_up_of_an_unknown_thread_covers_any(thick: float, pitch: float) -> None:
    """What is known of the thread only narrows: no thread takes less than nothing more, or more than at 0.95 of p."""
    assert ROW_TAKE_UP.low <= row_take_up(pitch, mm(thick)).value <= ROW_TAKE_UP.high


@pytest.mark.parametrize(
    ("room", "rows", "height"),
    [
        (RoomGiven(), 2, 3),
        (RoomGiven(heading_rows=0), 0, 0),
        (RoomGiven(heading_rows=6), 6, 9),
        (RoomGiven(heading=read_length("10 mm")), 2, 10),
        (RoomGiven(heading=Length(read_length("1 in").mm, "in"), heading_rows=8), 8, 25.4),
    ],
)
def test_a_heading_is_as_high_as_stated_or_as_its_rows(room: RoomGiven, rows: int, height: float) -> None:
    """1.5 mm a row and two rows are our own choice."""
    found = heading_of(room)
    assert (found.rows, found.height.value, found.hitched) == (rows, pytest.approx(height), False)


def test_half_hitches_are_an_edge_and_no_rows() -> None:
    """They lie once over the warp, as high as a row."""
    found = heading_of(RoomGiven(heading=HALF_HITCHES))
    assert (found.rows, found.height.value, found.hitched) == (0, 1.5, True)
