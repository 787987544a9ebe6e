"""From spans as a rule shows them back to what the printer did: simulated prints, measured exactly and with noise."""

from __future__ import annotations

import random
from math import atan2, dist, hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.correction import Scale
from layout.drawing.shapes import Point
from layout.drawing.spans import Reading, Spans, after, fit, spans_of, within_after
from layout.kit.paper_size import PAPERS, named_size

SPANS = spans_of(*named_size("common").sides_mm)
scales = st.builds(Scale, st.floats(0.97, 1.03), st.floats(0.97, 1.03), st.floats(-0.03, 0.03))


def measured(spans: Spans, scale: Scale) -> list[float]:
    """How long the spans are on paper: their ends go where the printer puts them, and a rule is laid between."""
    ends = [
        (Point(0, 0), Point(spans.across, 0)),
        (Point(0, 0), Point(0, spans.up)),
        (Point(0, 0), Point(spans.wide, spans.high)),
        (Point(0, spans.high), Point(spans.wide, 0)),
    ]
    return [dist(scale.made(one), scale.made(other)) for one, other in ends]


@given(scales, st.sampled_from(sorted(PAPERS)), st.sampled_from([(0, 1, 2, 3), (0, 1, 2), (0, 1, 3)]))
def test_an_exact_measurement_gives_the_scale_back(scale: Scale, paper: str, taken: tuple[int, ...]) -> None:
    """To 1e-9, with both diagonals and with either of them alone."""
    spans = spans_of(*named_size(paper).sides_mm)
    lengths = measured(spans, scale)
    found = fit(spans, [Reading(lengths[k], 0.25) if k in taken else None for k in range(4)])
    assert all(abs(one - other) < 1e-9 for one, other in zip(found.scale, scale, strict=True))
    assert found.contradiction < 1e-6


def test_the_closed_form_of_one_diagonal() -> None:
    """By hand: s = (d2 - (x w)2 - (y' h)2) / (2 x w h), with y' = up / b, which is hypot(s, y)."""
    x, up, d = 189.7 / SPANS.across, 250.4 / SPANS.up, SPANS.diagonal - 0.4
    s = (d**2 - (x * SPANS.wide) ** 2 - (up * SPANS.high) ** 2) / (2 * x * SPANS.wide * SPANS.high)
    found = fit(SPANS, [Reading(189.7, 0.25), Reading(250.4, 0.25), Reading(d, 0.25), None])
    assert found.scale == pytest.approx(Scale(x, (up**2 - s**2) ** 0.5, s), abs=1e-12)


def test_what_it_claims_to_know_it_knows() -> None:
    """Of 4,000 readings that are off at random (95 % of them within 0.25 mm), 95 % of the shares lie within."""
    chance = random.Random(14)  # noqa: S311 - no secret
    scale, inside = Scale(0.998, 1.003, 0.001), [0, 0, 0]
    for _ in range(4000):
        readings = [Reading(long + chance.gauss(0, 0.25 / 1.96), 0.25) for long in measured(SPANS, scale)]
        found = fit(SPANS, readings)
        for k in range(3):
            inside[k] += abs(found.scale[k] - scale[k]) <= found.within[k]
    assert all(0.94 < each / 4000 < 0.96 for each in inside)


def test_two_diagonals_know_the_skew_better_than_one() -> None:
    """And a reading off by much more than it may be is seen, since four say more than three unknowns."""
    long = measured(SPANS, Scale())
    both = fit(SPANS, [Reading(each, 0.25) for each in long])
    one = fit(SPANS, [*(Reading(each, 0.25) for each in long[:3]), None])
    assert both.within.skew < 0.75 * one.within.skew
    wrong = fit(SPANS, [Reading(each + 3 * (k == 2), 0.25) for k, each in enumerate(long)])
    assert wrong.contradiction > 4


@pytest.mark.parametrize("paper", PAPERS)
def test_spans_are_long(paper: str) -> None:
    """Inside margins of 8 and 13 mm, at most 7 mm shorter than these allow; diagonals in whole mm within 4 %."""
    width, height = named_size(paper).sides_mm
    spans = spans_of(width, height)
    assert width - 16 - 7 < spans.across < width - 16
    assert height - 26 - 7 < spans.up < height - 26
    assert spans.diagonal == pytest.approx(round(spans.diagonal), abs=1e-9)
    assert 0.96 * hypot(width - 16, height - 26) < spans.diagonal
    assert atan2(spans.high, spans.wide) == pytest.approx(atan2(height - 30.8, width - 30.0))


@given(scales, scales, st.floats(-300, 300), st.floats(-300, 300))
def test_two_scales_after_each_other(first: Scale, then: Scale, x: float, y: float) -> None:
    """A sheet drawn for a printer, and printed: both do what they do, one after the other."""
    wanted = then.made(first.made(Point(x, y)))
    assert after(first, then).made(Point(x, y)) == pytest.approx(wanted, abs=1e-9)


def test_a_sheet_drawn_for_a_printer_shows_what_is_left() -> None:
    """Drawn against 0.99 and come out at 1.001, the printer makes 0.99099 of a millimetre; it is as sure as before."""
    old, seen = Scale(0.99, 1.01, 0.002), Scale(1.001, 0.999, -0.001)
    assert after(old, seen) == pytest.approx((0.99099, 1.00899, 0.001 * 2 * 1.001 - 0.001 * 1.01))
    sure = within_after(old, Scale(0.001, 0.001, 0.001))
    assert sure.x == pytest.approx(0.00099)
    assert 0.00101 < sure.skew < 0.001011
