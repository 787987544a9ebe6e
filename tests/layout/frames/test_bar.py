"""Bending of a bar, against the beam equation integrated by scipy."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from layout.frames.bar import Bar, Board, deflection, deflection_warnings, pull, stress
from layout.values.quantity import Origin, Quantity, measured

_E = measured(10_000.0, "Tested.")


def newtons(value: float) -> Quantity:
    """A load in N that somebody weighed."""
    return measured(value, "Weighed.")


def _virtual_work(force: float, span: float, width: float, stiffness: float) -> float:
    """The middle's deflection as the integral of M(x) m(x) / (E I): half the beam, twice."""
    start = (span - width) / 2

    def moment(x: float) -> float:
        over = max(0.0, x - start)
        return force / 2 * x - force / width * over**2 / 2

    value = quad(lambda x: moment(x) * x / 2, 0, span / 2, points=[start] if 0 < start < span / 2 else None)[0]
    return 2 * float(value) / stiffness


@given(st.floats(5, 2000), st.floats(100, 2000), st.floats(0.05, 1))
def test_the_bar_bends_as_the_beam_equation_says(force: float, span: float, part: float) -> None:
    """scipy's quad over the bending moment (principle of virtual work, Euler-Bernoulli)."""
    bar = Bar(20, span, _E)
    ours = deflection(bar, newtons(force), part * span).value
    assert ours == pytest.approx(_virtual_work(force, span, part * span, 10_000 * bar.inertia), rel=1e-7)


def test_a_full_uniform_load_is_five_384ths() -> None:
    """Handbook formula in common use: 5 w L^4 / (384 E I)."""
    bar, w, span = Bar(20, 300, _E), 0.4, 300
    assert deflection(bar, newtons(w * span)).value == pytest.approx(5 * w * span**4 / (384 * 10_000 * bar.inertia))


def test_a_load_on_one_spot_nears_one_48th() -> None:
    """Handbook formula in common use: F L^3 / (48 E I) for a load in the middle."""
    bar = Bar(20, 300, _E)
    spot = 100 * 300**3 / (48 * 10_000 * bar.inertia)
    assert deflection(bar, newtons(100), 0.01).value == pytest.approx(spot, rel=1e-4)


def test_the_second_moment_is_that_of_a_circle() -> None:
    """Integral of y^2 over the disc, by scipy from chord widths; a tube lacks its bore."""
    whole = quad(lambda y: y**2 * 2 * math.sqrt(100 - y**2), -10, 10)[0]
    assert Bar(20, 300, _E).inertia == pytest.approx(whole, rel=1e-6)
    assert Bar(20, 300, _E, bore=10).inertia == pytest.approx(whole * 15 / 16, rel=1e-6)
    assert shapely.Point(0, 0).buffer(10, quad_segs=2000).area == pytest.approx(math.pi * 100, rel=1e-5)


def test_the_second_moment_of_a_board_is_that_of_a_rectangle() -> None:
    """Integral of y^2 over a rectangle 18 mm thick and 40 mm wide, by scipy: stiff the way the warp pulls."""
    whole = quad(lambda y: y**2 * 18, -20, 20)[0]
    assert Board(18, 40, 300, _E).inertia == pytest.approx(whole)


def test_every_end_pulls_at_both_bars() -> None:
    """Statics: 60 ends of 2.5 N are 150 N on each bar."""
    load = pull(60, newtons(2.5))
    assert (load.value, load.origin) == (150, Origin.COMPUTED)


@given(st.floats(5, 50), st.floats(50, 2000), st.floats(1, 500))
def test_thicker_bends_less_and_longer_bends_more(diameter: float, span: float, force: float) -> None:
    """Twice the diameter: a sixteenth. Twice the span under the same load: eight times."""
    base = deflection(Bar(diameter, span, _E), newtons(force)).value
    assert deflection(Bar(2 * diameter, span, _E), newtons(force)).value == pytest.approx(base / 16)
    assert deflection(Bar(diameter, 2 * span, _E), newtons(force)).value == pytest.approx(base * 8)


@given(st.floats(0.01, 0.99))
def test_a_load_gathered_in_the_middle_bends_more(part: float) -> None:
    """The same ends on a narrower weaving."""
    bar = Bar(20, 300, _E)
    assert deflection(bar, newtons(100), 300 * part).value > deflection(bar, newtons(100)).value


@pytest.mark.parametrize(("bent", "count"), [(0.6, 0), (0.601, 1)])
def test_more_than_a_five_hundredth_is_warned_of(bent: float, count: int) -> None:
    """Common practice, no source: span / 500, so 0.6 mm on 300 mm."""
    assert len(deflection_warnings(Bar(20, 300, _E), newtons(bent))) == count


@given(st.floats(5, 2000), st.floats(100, 2000), st.floats(0.05, 1))
def test_the_stress_is_that_of_the_greatest_moment(force: float, span: float, part: float) -> None:
    """The moment in the middle as the integral of the shear force by scipy (statics), over I / y."""
    bar, width = Board(18, 40, span, _E), part * span
    start = (span - width) / 2
    points = [start] if 0 < start < span / 2 else None
    moment = quad(lambda x: force / 2 - force / width * max(0.0, x - start), 0, span / 2, points=points)[0]
    assert stress(bar, newtons(force), width).value == pytest.approx(moment * 20 / bar.inertia, rel=1e-7)


def test_ranges_come_from_the_ends_of_pull_and_modulus() -> None:
    """The least bending is that of the least pull with the greatest modulus, and the other way round."""
    modulus, pulls = measured(10_000.0, "E", 8_000.0, 12_000.0), measured(100.0, "F", 50.0, 200.0)
    bent = deflection(Bar(20, 300, modulus), pulls)
    least = deflection(Bar(20, 300, measured(12_000.0, "E")), newtons(50)).value
    most = deflection(Bar(20, 300, measured(8_000.0, "E")), newtons(200)).value
    assert (bent.low, bent.high) == pytest.approx((least, most))
