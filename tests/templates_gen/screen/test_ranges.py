"""Figures with their ranges, as people read them."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.quantity import Quantity, assumed, measured
from templates_gen.screen.ranges import FORCE, LONG, PERCENT, THICK, about, range_values

SAID = re.compile(r"about ([\d.]+) m \(([\d.]+) to ([\d.]+)\)")

EXAMPLES = [
    ((79, 108, 198), "about 110 m (79 to 200), 120 yd (86 to 220)"),
    ((159.2, 161, 163), "about 161 m (159 to 163), 176 yd (174 to 178)"),
    ((98, 105, 112), "about 105 m (98 to 112), 115 yd (107 to 122)"),
    ((0, 0, 0.05), "about 0 m (0 to 0.050), 0 yd (0 to 0.055)"),
    ((5, 12, 20), "about 12 m (5 to 20), 13 yd (5 to 22)"),
    ((0.72, 1.35, 1.8), "about 1.4 m (0.72 to 1.8), 1.5 yd (0.79 to 2.0)"),
    ((0.089, 5.4, 9.5), "about 5.4 m (0.09 to 9.5), 5.9 yd (0.10 to 10)"),
    ((38.715, 38.72, 38.73), "38.72 m, 42.34 yd"),
]


@pytest.mark.parametrize(("three", "said"), EXAMPLES)
def test_a_range_is_said_in_round_figures(three: tuple[float, float, float], said: str) -> None:
    """Two figures, or as many as keep the three numbers apart; a range that no scale would find is left out."""
    low, likely, high = three
    assert about(assumed(likely, "Guessed.", low, high), LONG) == said


def test_an_exact_figure_is_one_number() -> None:
    """Nothing is "about" that was cut to measure, and the kit's own system comes first."""
    assert about(measured(25.4, "Cut."), THICK) == "25.4 mm, 1 in"
    assert about(measured(25.4, "Cut."), THICK, imperial=True) == "1 in, 25.4 mm"
    assert about(measured(0.202, "Drawn."), PERCENT) == "20.2 %"
    assert about(measured(4.4482216, "Hung."), FORCE) == "4.4 N, 1 lb"  # a pound-force is 4.4482216 N by definition


@st.composite
def ranges(draw: st.DrawFn) -> Quantity:
    """Ranges of weft as plans have them."""
    low, likely, high = sorted(draw(st.floats(0.01, 5000)) for _ in range(3))
    return assumed(likely, "Guessed.", low, high)


@given(ranges())
def test_what_is_read_is_what_is_known(figure: Quantity) -> None:
    """Each number said is its own to a tenth of it or of the range, and they stand in order."""
    match = SAID.match(about(figure, LONG))
    if match is None:
        assert figure.high - figure.low <= 0.005 * figure.value
        return
    likely, low, high = map(float, match.groups())
    assert low <= likely <= high
    for said, true in ((likely, figure.value), (low, figure.low), (high, figure.high)):
        assert abs(said - true) <= 0.1 * max(true, figure.high - figure.low)


def test_programs_read_all_three_or_nulls() -> None:
    """The key itself is the likely value; its bounds stand beside it."""
    ranged = range_values("weft_total_m", assumed(2, "Guessed.", 1, 3))
    assert ranged == {"weft_total_m": 2, "weft_total_m_low": 1, "weft_total_m_high": 3}
    assert set(range_values("weft_total_m", None).values()) == {None}
