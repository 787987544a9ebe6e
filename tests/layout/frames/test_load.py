"""The pull of the warp on a frame end, and its bending, computed by hand and by scipy."""

from __future__ import annotations

import math

import pytest
from kits import FLAT, NAILS, NOTCHED, PEGGED, kit_of, plan_of
from scipy.integrate import quad

from layout.frames.load import Load
from layout.kit.kit import kit_values
from layout.values.quantity import Origin

# 20 cm of 2.5 ends/cm are 50 ends; 40 cm less two sides of 25 mm are a span of 350 mm
BEECH: dict[str, object] = {"frame.material": "beech", "frame.tension": "2 N"}
SPAN, WIDTH = 350.0, 200.0


def load(changes: dict[str, object]) -> Load:
    """The load of a kit's warp."""
    return plan_of(changes).load


def bent(force: float, inertia: float, modulus: float) -> float:
    """The middle of the beam by virtual work, integrated by scipy (Euler-Bernoulli)."""
    start = (SPAN - WIDTH) / 2

    def moment(x: float) -> float:
        return force / 2 * x - force / WIDTH * max(0.0, x - start) ** 2 / 2

    return 2 * float(quad(lambda x: moment(x) * x / 2, 0, SPAN / 2, points=[start])[0]) / (modulus * inertia)


def test_a_stated_tension_is_reckoned_with() -> None:
    """Statics: 50 ends of 2 N are 100 N; nothing is assumed of it."""
    said = load(BEECH)
    assert (said.pull.value, said.pull.origin) == (100, Origin.COMPUTED)
    assert said.thread_words == "2 N"
    assert said.pull.exact


def test_doubled_ends_pull_twice() -> None:
    """Two threads to an end, and the outer end at each side of four: 2 (50 + 2) = 104 threads of 2 N."""
    said = load(BEECH | {"weaving.doubled_warp": True, "weaving.doubled_selvedges": 1})
    assert (said.threads, said.pull.value) == (104, 208)


def test_a_tension_left_out_is_assumed_and_said_to_be() -> None:
    """50 ends of 3 N, by hand 1 to 8 N, are 150 N, 50 to 400 N."""
    said = load({})
    assert (said.pull.value, said.pull.low, said.pull.high) == (150, 50, 400)
    assert said.pull.origin is Origin.ASSUMED
    assert said.thread_words == "3 N (1 to 8 N, assumed)"


def test_more_pull_than_a_child_should_have_is_noted() -> None:
    """Our limit is 200 N: 50 ends of 2 N are less, 50 of 8 N are more."""
    assert any("More than 200 N" in note for note in load({}).notes)
    assert not any("200 N" in note for note in load({"frame.tension": "2 N"}).notes)


@pytest.mark.parametrize(
    ("changes", "inertia", "modulus"),
    [
        (BEECH, math.pi * 16**4 / 64, 13_000),
        (BEECH | {"frame.material": "steel"}, math.pi * 16**4 / 64, 200_000),
        (BEECH | {"frame.bar_bore": "12 mm"}, math.pi * (16**4 - 12**4) / 64, 13_000),
        (BEECH | FLAT | {"frame.end_width": "30 mm"}, 18 * 30**3 / 12, 13_000),
        (BEECH | NOTCHED | {"frame.end_width": "36 mm"}, 12 * 30**3 / 12, 13_000),
        (BEECH | PEGGED | {"frame.end_width": "30 mm"}, 15 * 30**3 / 12, 13_000),
        (BEECH | NAILS | {"frame.end_width": "30 mm"}, 15 * 30**3 / 12, 13_000),
    ],
)
def test_bending_is_that_of_the_beam(changes: dict[str, object], inertia: float, modulus: float) -> None:
    """Round bar, metal, tube and board, each against the beam equation; a modulus is always assumed."""
    said = load(changes)
    assert said.bending is not None
    assert said.bending.value == pytest.approx(bent(100, inertia, modulus), rel=1e-6)
    assert said.bending.origin is Origin.ASSUMED
    assert said.most == pytest.approx(SPAN / 500)


@pytest.mark.parametrize(
    ("changes", "wanting"),
    [
        ({}, "to know it, give frame.material"),
        (FLAT, "to know it, give frame.material and frame.end_width"),
        (FLAT | {"frame.material": "oak"}, "to know it, give frame.end_width"),
    ],
)
def test_what_is_not_known_is_asked_for_and_not_guessed(changes: dict[str, object], wanting: str) -> None:
    """Without the material or the width of a board there is no bending, and the keys that would give it are named."""
    assert (load(changes).bending, load(changes).wanting, load(changes).warnings) == (None, wanting, ())


def test_a_bar_that_bends_too_far_is_warned_of_in_the_plan() -> None:
    """Beech of 16 mm under 100 N over 350 mm bends more than 0.7 mm (common practice: span / 500); steel does not."""
    (warning,) = plan_of(BEECH).warnings
    assert "more than its span / 500 (0.70 mm)" in warning
    assert warning.endswith("Elastic modulus of beech 13000 N/mm2 (8710 to 17290), a round figure from memory.")
    steel = {"frame.material": "steel"}
    assert plan_of(BEECH | steel | {"frame.bar_diameter": "20 mm"}).warnings == ()


def test_bending_is_judged_by_the_greatest_pull() -> None:
    """A bar that bends little under the likely pull is warned of where the greatest bends it too far."""
    stiff = {"frame.material": "steel", "frame.bar_diameter": "14 mm"}
    said = load(stiff)
    assert said.bending is not None
    assert said.bending.value < float(said.most) < said.bending.high
    (warning,) = said.warnings
    assert warning.startswith("The bar may bend by up to")


def test_stress_is_that_of_the_beam_and_judged_by_the_greatest_pull() -> None:
    """The greatest moment by scipy, over I / y; a quarter of 103 N/mm2 for beech (Wood Handbook, from memory)."""
    said = load({"frame.material": "beech"})
    start, inertia = (SPAN - WIDTH) / 2, math.pi * 16**4 / 64
    shear = quad(lambda x: 75 - 150 / WIDTH * max(0.0, x - start), 0, SPAN / 2, points=[start])[0]
    assert said.stress is not None
    assert said.stress.value == pytest.approx(shear / (inertia / 8))
    assert said.stress.high == pytest.approx(said.stress.value * 8 / 3)
    assert said.allowed is not None
    assert said.allowed.value == 103 / 4
    assert any("under a stress of up to" in warning for warning in said.warnings)
    assert not any("stress" in warning for warning in load(BEECH).warnings)


def test_months_under_tension_bend_wood_further_and_metal_not() -> None:
    """Wood bends 1.5 to 2 times as far in months (from memory)."""
    for material, factors in (("beech", (1.5, 1.75, 2.0)), ("steel", (1.0, 1.0, 1.0))):
        once = load({"frame.material": material}).bending
        later = load({"frame.material": material, "frame.left_warped": "months"}).bending
        assert once is not None
        assert later is not None
        pairs = ((once.low, later.low), (once.value, later.value), (once.high, later.high))
        assert [after / before for before, after in pairs] == pytest.approx(factors)


def test_an_own_modulus_goes_before_the_material() -> None:
    """Twice the modulus bends half as far; nothing is assumed of it, and the material still says what it bears."""
    likely = load(BEECH).bending
    own = load(BEECH | {"frame.modulus": 26_000})
    assert likely is not None
    assert own.bending is not None
    assert own.bending.value == pytest.approx(likely.value / 2)
    assert (own.bending.origin, own.bending.exact) == (Origin.COMPUTED, True)
    assert own.allowed == load(BEECH).allowed


def test_the_formula_and_its_assumptions_stand_among_the_reasons() -> None:
    """Where a bending is said the plan says by which formula, and what was assumed; else nothing."""
    assert any("5 w L^4 / (384 E I)" in note and "from memory" in note for note in plan_of(BEECH).notes)
    assert not any("384" in note for note in plan_of({}).notes)


def test_strength_is_carried_and_read_back() -> None:
    """A kit's tension, material, bore and width come back as the very same kit."""
    for changes in (BEECH | {"frame.bar_bore": "1/4 in"}, BEECH | FLAT | {"frame.end_width": "40 mm"}):
        kit = kit_of(changes)
        values = kit_values(kit)
        frame = values["frame"]
        assert isinstance(frame, dict)
        assert frame["tension"] == "2 N"
        again: dict[str, object] = {f"frame.{key}": value for key, value in frame.items()}
        assert kit_of(changes | again) == kit


WEIGHED: dict[str, object] = {"warp": {"count": 300, "system": "tex", "fibre": "cotton"}}
DIP: dict[str, object] = {"frame.dip": {"load": "20 g", "length": "400 mm", "depth": "6 mm"}}


def test_a_measured_pull_is_that_of_the_warp() -> None:
    """20 g and a dip of 6 mm over 400 mm are 3 N (test_tension), so 50 ends are 152 N; no tension is assumed."""
    said = load(WEIGHED | DIP)
    assert said.pull.value == pytest.approx(152, abs=1)
    assert said.pull.origin is Origin.COMPUTED
    assert said.thread_words == "3 N (2.7 to 3.4 N, measured)"


def test_measured_pulls_that_differ_are_warned_of_and_both_count() -> None:
    """A dip of 3 N and a pitch of 6 N: one warning, and bending from both."""
    planned = plan_of(WEIGHED | DIP | {"frame.pluck": {"hertz": 177, "length": "400 mm"}})
    (warning,) = (each for each in planned.warnings if "contradict" in each)
    assert "frame.dip" not in warning
    assert "2.7 to 3.4 N" in warning
    assert (planned.load.thread.low, planned.load.thread.high) == pytest.approx((2.7, 6.5), abs=0.1)


def test_a_thread_that_is_slack_is_warned_of() -> None:
    """A dip that the stretch of a heavy thread alone explains."""
    heavy: dict[str, object] = {"warp": {"count": 3000, "system": "tex", "fibre": "cotton"}}
    planned = plan_of(heavy | {"frame.dip": {"load": "2 g", "length": "400 mm", "depth": "6.6 mm"}})
    assert any("the thread is slack" in warning for warning in planned.warnings)
