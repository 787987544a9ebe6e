from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import NAILS, NOTCHED, PEGGED, kit_of

from layout.parts.strips.bands import Bands
from layout.parts.strips.strips import full_bands, low_bands

KINDS = (NOTCHED, PEGGED, NAILS)


def rows_of(bands: Bands, count: int) -> list[tuple[float, float]]:
    """From where to where each row reaches."""
    return [(low, low + bands.row) for low in bands.rows(count)]


@given(st.sampled_from(KINDS), st.integers(1, 9), st.booleans(), st.booleans())
def test_rows_never_meet(changes: dict[str, object], count: int, tall: bool, low_form: bool) -> None:
    """However many rows of words there are, none meets another, the marks, the numbers or a register line."""
    bands = (low_bands if low_form else full_bands)(kit_of(changes).frame.ends, tall=tall)
    taken = [(bands.marks[0] - 0.6, bands.marks[1]), (bands.numbers[0], bands.units_to)]
    rows = rows_of(bands, count)
    for k, (low, high) in enumerate(rows):
        for other_low, other_high in [*taken, *rows[k + 1 :]]:
            assert high <= other_low + 1e-9 or other_high <= low + 1e-9
        assert not any(low < level < high for level, _ in bands.lines)


@pytest.mark.parametrize("changes", KINDS)
def test_rows_stay_where_they_are(changes: dict[str, object]) -> None:
    """One row more does not move the rows before it."""
    for bands in (full_bands(kit_of(changes).frame.ends), low_bands(kit_of(changes).frame.ends)):
        assert bands.rows(6)[:3] == bands.rows(3)


@pytest.mark.parametrize("changes", KINDS)
def test_tall_words_take_higher_rows(changes: dict[str, object]) -> None:
    """Capitals with accents raise every row, but not the marks."""
    plain, tall = full_bands(kit_of(changes).frame.ends), full_bands(kit_of(changes).frame.ends, tall=True)
    assert tall.row > plain.row + 0.5
    assert (tall.marks, tall.numbers, tall.lines) == (plain.marks, plain.numbers, plain.lines)
