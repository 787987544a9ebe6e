"""Whatever true thing a kit says of its yarns, in whatever order, its figures only become narrower."""

from __future__ import annotations

import itertools
import math
from typing import Any, NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import KINDS, plan_of
from measured_kits import figures, labelled

from layout.yardage.amounts import Amounts

_EPS = 1e-9
NAMES = ("make", "warp wrap", "weft wrap", "beads", "pick", "draw-in", "sample")


class Truth(NamedTuple):
    """What the yarns and the cloth of a kit truly are, mm, tex and shares."""

    warp_tex: int
    weft_tex: int
    per_inch: int
    warp: float
    """How thick an end is where it lies in the cloth."""
    warp_soft: float
    weft_soft: float
    bead: float
    take_up: float
    draw_in: float


def _between(draw: st.DrawFn, low: float, high: float) -> float:
    return low + (high - low) * draw(st.floats(0, 1))


@st.composite
def truths(draw: st.DrawFn) -> Truth:
    """A cord of cotton and a firm wool, as thick as their classes allow, woven as yarn of such thickness lies."""
    warp_tex, weft_tex = draw(st.integers(200, 900)), draw(st.integers(150, 900))
    per_inch, draw_in = draw(st.integers(4, 10)), _between(draw, 0, 0.05)
    pitch = 25.4 / per_inch * (1 - draw_in)
    warp_pressed, warp_soft = _pair(draw, warp_tex, (0.0350, 0.0430), (0.0380, 0.0660))
    pressed, soft = _pair(draw, weft_tex, (0.0360, 0.0460), (0.0397, 0.0721))
    warp = min(_between(draw, max(warp_pressed, warp_soft / 1.3), warp_soft), 0.8 * pitch)
    fills = math.pi / 2 * pressed**2 / (pitch - warp)  # every pick crosses the gap between two ends
    bead = _between(draw, max(0.8 * pressed, fills), max(soft, fills))
    lying = _between(draw, max(pressed, min(bead, soft)), max(pressed, min(soft, bead / 0.8)))
    filled = min((warp + lying) / pitch, 0.95)
    take_up = math.sqrt(1 - filled**2) + filled * math.asin(filled) - 1  # Peirce 1937, straight warp
    return Truth(warp_tex, weft_tex, per_inch, warp, warp_soft, soft, bead, take_up, draw_in)


def _pair(draw: st.DrawFn, tex: int, pressed: tuple[float, float], soft: tuple[float, float]) -> tuple[float, float]:
    """A pressed and a soft thickness of a class, the one no thicker than the other and no thinner than it packs."""
    one = math.sqrt(tex) * _between(draw, *pressed)
    other = math.sqrt(tex) * _between(draw, *soft)
    return min(one, other), min(max(one, other), 3.2 * one)


def readings(truth: Truth) -> dict[str, dict[str, Any]]:
    """Everything that could be measured, as whoever measures it would write it down."""
    window, over = 50, 100
    grams = 2 / truth.bead * (1 + truth.take_up) * truth.weft_tex / 1e6 * 100 * 120
    return {
        "make": {"make": True},
        "warp wrap": {"warp__wrap": _wrap(truth.warp_soft, window)},
        "weft wrap": {"weft__wrap": _wrap(truth.weft_soft, window)},
        "beads": {"weft__beads": {"number": max(1, round(over / truth.bead)), "over": f"{over} mm"}},
        "pick": {"weft__pick": {"straight": f"{round(200 * (1 + truth.take_up))} mm", "woven": "200 mm"}},
        "draw-in": {"weaving__draw_in": truth.draw_in},
        "sample": {"weft__sample": {"grams": round(grams, 1), "width": "100 mm", "height": "120 mm"}},
    }


def _wrap(thickness: float, window: int) -> dict[str, Any]:
    return {"turns": math.floor(window / thickness), "window": f"{window} mm", "how": "pushed together"}


def kit_of(truth: Truth, known: dict[str, Any]) -> Amounts:
    """The amounts of a kit that says what its labels do, and this besides."""
    return labelled(truth.warp_tex, truth.weft_tex, truth.per_inch, **{"make": False} | known)


@given(truths(), st.permutations(NAMES))
def test_more_true_measurements_only_narrow(truth: Truth, order: list[str]) -> None:
    """From the labels alone to everything measured: no range grows, and no likely value leaves the range before."""
    every, known = readings(truth), dict[str, Any]()
    steps = [kit_of(truth, known)]
    for name in order:
        known = known | every[name]
        steps.append(kit_of(truth, known))
    for before, after in itertools.pairwise(steps):
        assert not after.conflicts
        was = dict(figures(before))
        for name, figure in figures(after):
            slack = _EPS * abs(was[name].high)
            assert was[name].low - slack <= figure.low, name
            assert figure.high <= was[name].high + slack, name
            assert was[name].low - slack <= figure.value <= was[name].high + slack, name


@given(truths(), st.sets(st.sampled_from(NAMES)))
def test_the_true_weft_lies_in_its_range(truth: Truth, measured: set[str]) -> None:
    """Width x picks x height x (1 + take-up), whatever was measured of it."""
    every, known = readings(truth), dict[str, Any]()
    for name in sorted(measured):
        known |= every[name]
    total = kit_of(truth, known).weft_total_m
    assert total is not None
    width = kit_of(truth, every["draw-in"]).woven_mm[0].value
    true = width * 2 / truth.bead * 250 * (1 + truth.take_up) / 1000
    assert total.low * (1 - _EPS) <= true <= total.high * (1 + _EPS)


@pytest.mark.parametrize("name", KINDS)
def test_what_is_known_of_the_warp_narrows_its_thread_on_every_frame(name: str) -> None:
    """Nothing, then its label, then its wrap: the way round bars, between notches, pegs and nails keeps its bounds."""
    label = {"count": 300, "system": "tex", "fibre": "cotton", "make": "cord"}
    wrapped = label | {"wrap": {"turns": 60, "window": "5 cm", "how": "pushed together"}}
    steps = [dict(figures(plan_of({**KINDS[name], "warp": warp}).amounts)) for warp in ({}, label, wrapped)]
    for was, then in itertools.pairwise(steps):
        for key in set(was) & set(then):
            assert was[key].low - _EPS <= then[key].low <= then[key].high <= was[key].high + _EPS, key
    assert steps[2]["warp_per_wind_mm"].high > steps[2]["warp_per_wind_mm"].low
