from __future__ import annotations

from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.parts.strips.bands import Bands
from layout.parts.strips.strips import full_bands, low_bands, tallest
from layout.values.units import read_length

diameters = st.floats(4, 120)


def bar(mm: float) -> RoundBar:
    """A round bar of this diameter."""
    return RoundBar(read_length(f"{mm:.3f} mm"))


def rows_of(bands: Bands, count: int) -> list[tuple[float, float]]:
    """From where to where each row reaches."""
    return [(low, low + bands.row) for low in bands.rows(count)]


@given(diameters, st.integers(1, 9), st.booleans())
def test_rows_never_meet(mm: float, count: int, tall: bool) -> None:
    """However many rows of words there are, none meets another, the marks, the numbers or a register line."""
    bands = full_bands(bar(mm), tall=tall)
    if bands is None:
        return
    taken = [(bands.marks[0] - 0.6, bands.marks[1]), (bands.numbers[0], bands.units_to)]
    rows = rows_of(bands, count)
    for k, (low, high) in enumerate(rows):
        for other_low, other_high in [*taken, *rows[k + 1 :]]:
            assert high <= other_low + 1e-9 or other_high <= low + 1e-9
        assert not any(low < level < high for level, _ in bands.lines)


@given(diameters)
def test_the_full_form_goes_half_round(mm: float) -> None:
    """The outer register lines of a round bar are half its girth apart; the gluing edge goes on behind."""
    bands = full_bands(bar(mm))
    if bands is None:
        assert mm < 7  # a bar thinner than this has no room for marks and numbers on its face
        return
    face, outermost, back = (level for level, _ in bands.lines)
    assert face - back == pytest.approx(pi * mm / 2, abs=0.002)
    assert (outermost, bands.front) == (0, face)
    assert bands.back == pytest.approx(back - 6)


def test_rows_stay_where_they_are() -> None:
    """One row more does not move the rows before it."""
    for bands in (
        full_bands(bar(16)),
        full_bands(bar(9)),
        low_bands(bar(16)),
        full_bands(FlatEnd(*[read_length("18 mm")] * 2)),
    ):
        assert bands is not None
        assert bands.rows(6)[:3] == bands.rows(3)


def test_tall_words_take_higher_rows() -> None:
    """Capitals with accents raise every row, but not the marks."""
    plain, tall = full_bands(bar(30)), full_bands(bar(30), tall=True)
    assert plain is not None
    assert tall is not None
    assert tall.row > plain.row + 0.5
    assert (tall.marks, tall.numbers, tall.lines) == (plain.marks, plain.numbers, plain.lines)


def test_only_round_bars_limit_the_height() -> None:
    """A strip may not close over itself on a round bar; a flat end has no such limit."""
    assert tallest(bar(10)) < pi * 10
    assert tallest(FlatEnd(read_length("18 mm"), read_length("0 mm"))) == float("inf")
