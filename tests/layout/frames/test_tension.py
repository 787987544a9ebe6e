"""The pull of one thread by a weight and by its pitch, against mechanics computed another way and each other."""

from __future__ import annotations

import math
from fractions import Fraction
from itertools import permutations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar

from layout.frames.strength import Dip, Pluck, Strength
from layout.frames.tension import MOST_DIP, WarpThread, dipped, lighter, plucked, tension_of, usual
from layout.values.forces import Force, read_force
from layout.values.quantity import Origin
from layout.values.units import Length

COTTON = WarpThread(Fraction(300), "cotton")
FREE = Length(Fraction(400))


def sinks(pull: float, stiff: float, load: float, length: float) -> float:
    """How deep a weight sinks: where the energy of thread and weight is least (found by scipy)."""

    def energy(aside: float) -> float:
        longer = 2 * math.hypot(length / 2, aside) - length
        return pull * longer + stiff * longer**2 / (2 * length) - load * aside

    return float(minimize_scalar(energy, bounds=(0, length), method="bounded", options={"xatol": 1e-9}).x)


def of_mm(mm: float) -> Length:
    """A length to a millionth of a millimetre."""
    return Length(Fraction(round(mm * 1e6), 10**6))


@given(st.floats(0.5, 15), st.floats(50, 2000), st.integers(50, 3000))
def test_a_dip_gives_the_pull_whose_energy_is_least(pull: float, length: float, tex: int) -> None:
    """A thread of a known pull is loaded, its dip found by the least energy, and the pull found again from that."""
    thread = WarpThread(Fraction(tex), "cotton")
    stiff = thread.stiffness.value
    load = brentq(lambda w: sinks(pull, stiff, w, length) - length / 61, 1e-9, 100)
    deep = sinks(pull, stiff, load, length)
    dip = Dip(Force(Fraction(load)), of_mm(length), of_mm(deep))
    assert dipped(dip, thread).value == pytest.approx(pull, rel=1e-3, abs=0.01)


def test_a_dip_without_its_stretch_would_say_too_much() -> None:
    """50 g make a thread of 300 tex and 500 N stiffness dip by 15.9 mm at 1.5 N; W L / (4 s) alone would say 3.1 N."""
    load = 0.05 * 9.80665
    deep = sinks(1.5, 500, load, 400)
    assert deep == pytest.approx(15.9, abs=0.05)
    assert load * 400 / (4 * deep) == pytest.approx(3.1, abs=0.05)
    found = dipped(Dip(Force(Fraction(load)), FREE, of_mm(deep)), COTTON)
    assert found.low < 1.5 < found.high


@pytest.mark.parametrize(("newtons", "hertz"), [(1.5, 88.4), (3.0, 125.0), (4.5, 153.1), (6.0, 176.8), (9.0, 216.5)])
def test_a_pitch_gives_the_pull_of_a_string(newtons: float, hertz: float) -> None:
    """Mersenne's law, f = sqrt(T / mu) / (2 L) (Harmonie universelle, 1636), by hand for 300 tex over 400 mm."""
    assert math.sqrt(newtons / 300e-6) / 0.8 == pytest.approx(hertz, abs=0.06)
    found = plucked(Pluck(Fraction(str(hertz)), FREE), COTTON)
    assert found.value == pytest.approx(newtons, rel=2e-3)
    assert found.low < newtons < found.high


@given(st.floats(0.5, 15), st.floats(100, 2000), st.integers(50, 3000))
def test_dip_and_pluck_find_the_same_pull(pull: float, length: float, tex: int) -> None:
    """The same thread, measured in both ways: each range holds the pull, so they meet without a conflict."""
    thread = WarpThread(Fraction(tex), "cotton")
    hertz = math.sqrt(pull / (tex / 1e6)) / (2 * length / 1000)
    load = brentq(lambda w: sinks(pull, thread.stiffness.value, w, length) - length / 61, 1e-9, 100)
    dip = Dip(Force(Fraction(load)), of_mm(length), of_mm(length / 61))
    pluck = Pluck(Fraction(hertz), of_mm(length))
    for reading in (dipped(dip, thread), plucked(pluck, thread)):
        assert reading.low < pull < reading.high
    both = tension_of(Strength(dip=dip, pluck=pluck), thread)
    assert (both.conflicts, both.origin) == ((), Origin.MEASURED)


@given(st.floats(1.01, 7.9), st.integers(50, 3000), st.permutations(["dip", "pluck"]))
def test_a_reading_only_narrows_what_is_usual(pull: float, tex: int, order: list[str]) -> None:
    """Readings of a true pull, added one after the other in any order, never widen the range."""
    thread = WarpThread(Fraction(tex), "cotton")
    load = brentq(lambda w: sinks(pull, thread.stiffness.value, w, 400) - 400 / 61, 1e-9, 100)
    known = {
        "dip": Dip(Force(Fraction(load)), FREE, of_mm(400 / 61)),
        "pluck": Pluck(Fraction(math.sqrt(pull / (tex / 1e6)) / 0.8), FREE),
    }
    before, given_so_far = tension_of(Strength(), thread), dict[str, object]()
    for key in order:
        given_so_far[key] = known[key]
        after = tension_of(Strength(**given_so_far), thread)  # type: ignore[arg-type]
        assert before.low <= after.low <= pull <= after.high <= before.high
        before = after


def test_a_reading_beside_what_is_usual_stands_alone() -> None:
    """What is only usual is no bound: 20 N by the pitch stay 20 N, and nothing of 8 N is left."""
    found = tension_of(Strength(pluck=Pluck(Fraction(323), FREE)), COTTON)
    assert found.value == pytest.approx(20, rel=0.01)
    assert found.low > 8
    assert found.conflicts == ()


@pytest.mark.parametrize("order", list(permutations(("tension", "dip", "pluck"), 2)))
def test_facts_that_contradict_each_other_are_both_said(order: tuple[str, str]) -> None:
    """1 N stated, 3 N by a dip, 6 N by a pitch: any two span both, and one sentence names both."""
    facts: dict[str, object] = {
        "tension": Force(Fraction(1)),
        "dip": Dip(read_force("20 g"), FREE, Length(Fraction(6))),
        "pluck": Pluck(Fraction(177), FREE),
    }
    pulls = {"tension": 1.0, "dip": 3.0, "pluck": 6.0}
    found = tension_of(Strength(**{key: facts[key] for key in order}), COTTON)  # type: ignore[arg-type]
    (conflict,) = found.conflicts
    first, second = sorted(pulls[key] for key in order)
    assert found.low <= first < second <= found.high
    assert "contradict" in conflict


def test_what_is_usual_depends_on_the_tensioner_and_the_yarn() -> None:
    """By hand 1 / 3 / 8 N; tightened 0.5 / 1.5 / 3 cN a tex and at most 15 N (all from memory, no source)."""
    by_hand, tight, heavy = usual("none", COTTON), usual("rods", COTTON), usual("wedges", WarpThread(Fraction(2000)))
    assert (by_hand.low, by_hand.value, by_hand.high) == (1, 3, 8)
    assert (tight.low, tight.value, tight.high) == pytest.approx((1.5, 4.5, 9))
    assert heavy.high == 15
    assert usual("rods", None).origin is Origin.ASSUMED


def test_a_slack_thread_pulls_with_nothing() -> None:
    """Where the stretch alone explains a dip no pull is left, and none below nothing."""
    found = dipped(Dip(read_force("2 g"), FREE, Length(Fraction(20, 3))), WarpThread(Fraction(3000), "cotton"))
    assert found.value == 0
    assert found.low == 0


@given(st.floats(0, 10), st.floats(0.05, 5), st.integers(50, 3000))
def test_a_lighter_load_dips_little_enough(pull: float, load: float, tex: int) -> None:
    """The load that a refusal names, hung on the same thread, dips by a sixtieth at most (by the least energy)."""
    stiff = WarpThread(Fraction(tex), "cotton").stiffness.value
    deep = sinks(pull, stiff, load, 400)
    assume(deep > 400 * MOST_DIP)
    instead = lighter(Dip(Force(Fraction(load)), FREE, of_mm(deep)))
    assert sinks(pull, stiff, float(instead.newtons), 400) <= float(400 * MOST_DIP) + 1e-4
