"""The way of a pick, against Peirce's cloth, shapely's belts and scipy's shortest path."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq, minimize
from strategies import filled_shares

from layout.values.errors import FieldError
from layout.yardage.weft import pick_length

_Array = np.ndarray[tuple[int], np.dtype[np.float64]]
_TABLE = [(0.25, 1.031416), (0.4, 1.081122), (0.5, 1.127825), (0.6, 1.186101), (0.75, 1.297484), (1, math.pi / 2)]


def spacing(length: float, diameters: float, angle: float) -> float:
    """Peirce 1937, as restated by N. Balasubramanian: p = (l - D t) cos t + D sin t."""
    return (length - diameters * angle) * math.cos(angle) + diameters * math.sin(angle)


def crimp_height(length: float, diameters: float, angle: float) -> float:
    """Peirce 1937, as restated by N. Balasubramanian: h = (l - D t) sin t + D (1 - cos t)."""
    return (length - diameters * angle) * math.sin(angle) + diameters * (1 - math.cos(angle))


@pytest.mark.parametrize(("filled", "ratio"), _TABLE)
def test_the_pick_over_a_straight_warp_has_the_tabled_length(filled: float, ratio: float) -> None:
    """Computed by hand from Peirce 1937 with a straight warp, six decimals."""
    assert pick_length(1, filled) == pytest.approx(ratio, abs=5e-7)


def test_peirces_jammed_square_cloth_comes_out() -> None:
    """Peirce 1937: 60 degrees, l / D = 1.0472, p / D = 0.866, crimp 20.92 %, both systems rising D / 2."""
    angle = math.radians(60)
    assert angle == pytest.approx(1.0472, abs=5e-5)
    assert spacing(angle, 1, angle) == pytest.approx(0.866, abs=5e-5)
    assert crimp_height(angle, 1, angle) == pytest.approx(0.5)
    assert angle / spacing(angle, 1, angle) - 1 == pytest.approx(0.2092, abs=5e-5)


@given(filled_shares)
def test_the_straight_warp_is_peirces_cloth_with_one_crimp_of_nothing(filled: float) -> None:
    """Both of Peirce's identities hold: spacing p, and the weft rising by the whole D (h1 + h2 = D)."""
    angle, length = math.asin(filled), pick_length(1, filled)
    assert spacing(length, filled, angle) == pytest.approx(1, abs=1e-9)
    assert crimp_height(length, filled, angle) == pytest.approx(filled, abs=1e-9)


@pytest.mark.parametrize("filled", [0.25, 0.4, 0.5, 0.6, 0.75, 0.95])
def test_solving_peirces_equations_by_scipy_gives_the_same_length(filled: float) -> None:
    """scipy's brentq on h = D, for the angle at which the spacing is p."""

    def excess(angle: float) -> float:
        length = (1 - filled * math.sin(angle)) / math.cos(angle) + filled * angle
        return crimp_height(length, filled, angle) - filled

    angle = float(brentq(excess, 1e-6, math.pi / 2 - 1e-6))
    length = (1 - filled * math.sin(angle)) / math.cos(angle) + filled * angle
    assert pick_length(1, filled) == pytest.approx(length, rel=1e-9)


@pytest.mark.parametrize("filled", [0.25, 0.5, 0.75])
def test_a_slack_thread_pulled_tight_by_scipy_is_as_long(filled: float) -> None:
    """A chain of 400 chords over one end and under the next, its heights moved by scipy until it is shortest."""
    radius, x = filled / 2, np.linspace(0, 1, 401)
    over = np.where(x < radius, np.sqrt(np.maximum(radius**2 - x**2, 0)), -np.inf)
    under = np.where(x > 1 - radius, -np.sqrt(np.maximum(radius**2 - (1 - x) ** 2, 0)), np.inf)

    def length(y: _Array) -> float:
        return float(np.hypot(np.diff(x), np.diff(y)).sum())

    def pull(y: _Array) -> list[float]:
        slope = np.diff(y) / np.hypot(np.diff(x), np.diff(y))
        return [float(each) for each in -np.diff(slope, prepend=0, append=0)]

    over[0], under[0], over[-1], under[-1] = radius, radius, -radius, -radius
    start = [float(each) for each in np.clip(radius * (1 - 2 * x), over, under)]
    within = [(float(low), float(high)) for low, high in zip(over, under, strict=True)]
    found = minimize(length, start, jac=pull, method="L-BFGS-B", bounds=within, tol=1e-13)
    assert pick_length(1, filled) == pytest.approx(float(found.fun), rel=2e-4)


@pytest.mark.parametrize("filled", [0.25, 0.5, 0.75, 0.95])
def test_the_path_integrated_by_scipy_is_as_long(filled: float) -> None:
    """scipy's quad along the curve: an arc off one end, the straight tangent, an arc onto the next."""
    radius, angle = filled / 2, math.asin(filled)
    turn = radius * math.sin(angle)  # across to where the thread leaves its end

    def arc(x: float) -> float:
        return radius / math.sqrt(radius**2 - x**2)

    straight = (1 - 2 * turn) / math.cos(angle)
    assert pick_length(1, filled) == pytest.approx(2 * quad(arc, 0, turn)[0] + straight, rel=1e-9)


@pytest.mark.parametrize("filled", [0.25, 0.5, 0.75, 0.95])
def test_shapelys_crossed_belt_is_as_long(filled: float) -> None:
    """Half a crossed belt on pulleys of D at distance p, less pi D / 2.

    shapely finds each tangent: from the crossing point in the middle, the hull with a pulley is its half of the belt.
    """
    pulley = shapely.Point(0, 0).buffer(filled / 2, quad_segs=20_000)
    hull = shapely.MultiPoint([*pulley.exterior.coords, (0.5, 0)]).convex_hull
    half_belt = hull.length  # two tangents from the middle and the far arc
    assert pick_length(1, filled) == pytest.approx(half_belt - math.pi * filled / 2, rel=1e-6)


@given(filled_shares)
def test_the_take_up_lies_between_nothing_and_57_per_cent(filled: float) -> None:
    """A filled weft-faced cloth takes up pi / 2 - 1 at most; a practical cloth of 0.45 about 10 %."""
    assert 0 <= pick_length(1, filled) - 1 <= math.pi / 2 - 1 + 1e-12
    assert pick_length(1, 0.45) - 1 == pytest.approx(0.10, abs=0.01)


@given(filled_shares, filled_shares)
def test_thicker_threads_take_up_more(one: float, other: float) -> None:
    """Monotonic in D / p."""
    thin, fat = sorted((one, other))
    assert pick_length(1, thin) <= pick_length(1, fat) + 1e-12


@given(filled_shares, st.floats(0.1, 20))
def test_the_take_up_does_not_know_the_scale(filled: float, pitch: float) -> None:
    """Twice the pitch and twice the yarns: the same share."""
    assert pick_length(pitch, filled * pitch * (1 - 1e-9)) / pitch == pytest.approx(pick_length(1, filled), rel=1e-4)


@given(st.floats(0.25, 1))
def test_peirces_practical_crimp_height_agrees(filled: float) -> None:
    """Peirce 1937: h = 4/3 p sqrt(c), within two points of per cent of the exact line for D / p of 0.25 to 1."""
    crimp = (3 * filled / 4) ** 2
    assert pick_length(1, filled) - 1 == pytest.approx(crimp, abs=0.02)


def test_ends_that_do_not_fit_are_refused() -> None:
    """Warp and weft thicker together than the pitch."""
    with pytest.raises(FieldError, match="no thicker than the pitch"):
        pick_length(4, 4.1)


def test_rounding_does_not_refuse_a_filled_pitch() -> None:
    """0.1 + 0.2 mm fill a pitch of 0.3 mm, though in floats they are more: 57 % taken up, not refused."""
    assert pick_length(0.3, 0.1 + 0.2) / 0.3 == pytest.approx(math.pi / 2)


def test_what_works_is_said_when_refused() -> None:
    """0.6 of the pitch."""
    with pytest.raises(FieldError, match=r"for example 2\.4 mm"):
        pick_length(4, 5)
