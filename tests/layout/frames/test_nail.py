"""How two ends bend a nail: against the beam equation integrated by scipy, and by hand."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import NAILS, plan_of
from scipy.integrate import quad

from layout.frames.nail import STEEL, nail_bent, nail_stress, nail_warnings


@given(st.floats(0.5, 10), st.floats(2, 60), st.floats(0.1, 20))
def test_a_nail_is_a_cantilever(thick: float, long: float, newtons: float) -> None:
    """scipy: the section's second moment summed up over its width, and M x / E I integrated twice along the nail."""
    radius = thick / 2
    inertia = quad(lambda y: 2 * y**2 * math.sqrt(max(radius**2 - y**2, 0)), -radius, radius, epsrel=1e-10)[0]
    bent = quad(lambda x: 2 * newtons * (long - x) ** 2 / (STEEL * inertia), 0, long)[0]
    assert nail_bent(thick, long, newtons) == pytest.approx(bent, rel=1e-6)
    assert nail_stress(thick, long, newtons) == pytest.approx(2 * newtons * long * radius / inertia, rel=1e-6)


def test_by_hand() -> None:
    """1.8 mm, 10 mm out, 5 N an end: 0.032 mm and 175 N/mm2, which holds; 20 mm out it bends by eight times as much."""
    assert nail_bent(1.8, 10, 5) == pytest.approx(0.0323, abs=5e-5)
    assert nail_stress(1.8, 10, 5) == pytest.approx(175, abs=0.5)
    assert nail_warnings(1.8, 10, 5) == ()
    (warning,) = nail_warnings(1.8, 20, 5)
    assert "bend it by 0.26 mm" in warning
    assert "349 N/mm2" in warning


def test_a_plan_warns_of_long_nails_and_asks_nothing_of_unknown_ones() -> None:
    """At 5 N an end a nail of 1.8 mm may stand 10 mm out, not 20; without a length nothing is said."""
    pulls: dict[str, object] = {"frame.tension": "5 N"}
    assert plan_of(NAILS | pulls).warnings == ()
    assert plan_of(NAILS | pulls | {"frame.nail_length": "10 mm"}).warnings == ()
    (warning,) = plan_of(NAILS | pulls | {"frame.nail_length": "20 mm"}).warnings
    assert "take a thicker nail" in warning
