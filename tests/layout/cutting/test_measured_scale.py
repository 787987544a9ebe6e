"""The scale from a square check: plates cut by a cutter that is off, and readings that are."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from square_plates import STOCK, cut_on, measured

from layout.cutting.stock.measured_scale import MeasuredScale, Size, Spans, misfit, scale_of
from layout.drawing.correction import Scale


def spans_of(sizes: tuple[float, ...], within: float = 0.03) -> Spans:
    """Sizes in mm as they would be read."""
    return Spans(*(Size(mm, within) for mm in sizes))


@pytest.mark.parametrize(
    "scale", [Scale(), Scale(1.0021, 0.9987, 0.0005), Scale(0.998, 1.001, -0.0012), Scale(1.03, 0.97, -0.03)]
)
@pytest.mark.parametrize("kerf", [0.12, 0.31])
def test_a_plate_from_a_simulated_beam_tells_the_scale(scale: Scale, kerf: float) -> None:
    """Exactly measured, scale and lean are found to 5 in 100,000, whatever the kerf: shapely cuts and measures."""
    found = scale_of(spans_of(measured(cut_on(STOCK, scale, kerf)))).scale
    assert found == pytest.approx(scale, abs=5e-5)


def test_what_a_caliper_leaves_open() -> None:
    """Two readings of 0.03 mm each: 0.042 mm on 130 mm, and on the 140 mm of a diagonal."""
    within = scale_of(spans_of((140, 140, 140, 140, 10, 10))).within
    assert within == pytest.approx((0.0424264 / 130, 0.0424264 / 130, 0.0424264 / 140), rel=1e-5)


def test_nine_in_ten_plates_and_more_tell_the_truth_within_what_is_said() -> None:
    """Of 2,000 plates with readings off by a normal error, two standard deviations being 0.03 mm, 94 % at least."""
    chance = random.Random(5)  # noqa: S311 - simulated readings
    true = Scale(1.0021, 0.9987, 0.0008)
    exact = measured(cut_on(STOCK, true, 0.23))
    plates = [scale_of(spans_of([size + chance.gauss(0, 0.03 / 1.96) for size in exact])) for _ in range(2000)]
    for k in range(3):
        inside = sum(abs(plate.scale[k] - true[k]) <= plate.within[k] for plate in plates)
        assert 0.94 <= inside / len(plates) <= 0.965


@given(st.floats(0.97, 1.03), st.floats(0.97, 1.03))
def test_a_cutter_cannot_make_diagonals_that_do_not_fit(x: float, y: float) -> None:
    """A and B are together as long as X and Y, to what differs in second order."""
    diagonal = 140 * 2**0.5 / (1 / x**2 + 1 / y**2) ** 0.5
    assert abs(misfit(spans_of((140 * x, 140 * y, diagonal, diagonal, 10, 10))).mm) < 0.1 + 140 * (x - y) ** 2


def test_what_is_known_to_be_off() -> None:
    """One share further off than its readings is enough."""
    within = Scale(0.0003, 0.0003, 0.0003)
    assert not MeasuredScale(Scale(1.0003, 0.9998, -0.0002), within).known
    assert MeasuredScale(Scale(1.0, 1.0, 0.0004), within).known
