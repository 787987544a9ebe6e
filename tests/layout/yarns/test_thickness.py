"""How thick yarns are: published constants within our classes, and readings that only ever narrow what is known."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.quantity import Origin, Quantity
from layout.yarns.diameter import DENSITIES, compressed, specific_volume
from layout.yarns.thickness import (
    CLASSES,
    LOOSE,
    OF_CORDS,
    STATED,
    UNSTATED,
    WARP_UNSTATED,
    Make,
    Thickness,
    Wrapped,
    bunched,
    known,
    of_label,
    of_wrap,
)
from layout.yarns.yarn import yarn_of

_YD_LB = 1e6 * 0.45359237 / 0.9144
"""tex x yd/lb, by definition of both."""


def k_of_wraps(constant: float) -> float:
    """k in mm for 1 tex of a rule wraps an inch = constant x sqrt(yd/lb)."""
    return 25.4 / (constant * math.sqrt(_YD_LB))


def said(label: Quantity, wrap: Quantity) -> str:
    """A sentence about both."""
    return f"{label.value} and {wrap.value}"


def within(new: Quantity, old: Quantity) -> bool:
    """Whether a figure lies in an older one, freed of rounding."""
    slack = 1e-9 * old.high
    return old.low - slack <= new.low and new.high <= old.high + slack and new.low <= new.value <= new.high


@pytest.mark.parametrize(
    ("constant", "printed"),
    [
        (0.95, 0.0380),  # J. T. Taylor, Cotton Weaving and Designing: sqrt(yd/lb) less 5 %, without compression
        (0.91, 0.0396),  # Ashenhurst, as a weaving school's article has it: cotton, silk, linen
        (0.90, 0.0401),  # the same: worsted
        (0.85, 0.0424),  # the same: woollen
        (0.84, 0.0429),  # Ashenhurst, as the Medieval Textiles site has it (1999): woollen
        (1 / 1.10, 0.0397),  # gansey notes on WPI, 2011, packed to refusal: worsted, wraps + 10 % = sqrt(yd/lb)
        (1 / 1.16, 0.0418),  # the same: woollen, + 16 %
        (1 / 1.07, 0.0386),  # the same: cotton and silk, + 7 %
        (0.50, 0.0721),  # the same: the loose wrap of knitters, half as many
    ],
)
def test_published_rules_of_wraps_are_these_constants(constant: float, printed: float) -> None:
    """25.4 / (K sqrt(yd/lb)) as k sqrt(tex)."""
    assert k_of_wraps(constant) == pytest.approx(printed, abs=5e-5)


def test_peirces_cotton_is_a_hard_cord_pressed() -> None:
    """F. T. Peirce 1937: 1.1 cm3/g under moderate pressure: .0374 mm for 1 tex, our likely pressed cord."""
    assert 2 * math.sqrt(1.1 / 1000 / math.pi) == pytest.approx(CLASSES[Make.CORD].pressed[1], abs=5e-5)
    label = of_label(295, STATED[Make.CORD], "cotton")
    assert label.pressed.value == pytest.approx(compressed(yarn_of(295, "tex"), specific_volume("cotton")).mm, rel=1e-3)


def test_published_wraps_lie_in_our_classes() -> None:
    """Worsted and the knitters' loose wrap as firm yarns, cotton as a cord, woollen and handspun as soft wool."""
    low, _, high = CLASSES[Make.FIRM].soft
    for constant in (0.90, 1 / 1.10, 0.50):
        assert low - 5e-5 <= k_of_wraps(constant) <= high + 5e-5
    low, _, high = CLASSES[Make.CORD].soft
    for constant in (0.95, 0.91, 1 / 1.07):
        assert low - 5e-5 <= k_of_wraps(constant) <= high + 5e-5
    low, _, high = CLASSES[Make.SOFT].soft
    assert low <= k_of_wraps(0.85) <= high
    # a chart for handspinners: 9 to 11 wraps at 800 to 1000 yd/lb, 16 to 18 at 2000 to 2400
    for wraps, yards in ((9, 800), (11, 1000), (16, 2000), (18, 2400)):
        assert low <= 25.4 / wraps / math.sqrt(_YD_LB / yards) <= high


def test_a_loose_wrap_is_up_to_twice_a_packed_one() -> None:
    """Gansey notes 2011: the knitters' loose wrap counts half of what is packed: .0721 / .0380 by Taylor's."""
    assert pytest.approx(k_of_wraps(0.5) / k_of_wraps(0.95), abs=0.01) == LOOSE


@pytest.mark.parametrize(("plies", "in_singles"), [(2, 1.5), (3, 2.0)])
def test_plied_yarns_are_thicker_than_solid_ones(plies: int, in_singles: float) -> None:
    """Ask the Bellwether 2007, after M. Ross: a 2-ply is 1.5 singles thick, a 3-ply 2: 6 and 15 % over the solid root.

    A hard cord may lie so much thicker, and up to the circle round two plies of three, 1.76 times.
    """
    over = in_singles / math.sqrt(plies)
    pressed, soft = CLASSES[Make.CORD].pressed, CLASSES[Make.CORD].soft
    assert pressed[1] * over <= soft[2]
    cabled = 2 / math.sqrt(2) * (1 + 2 / math.sqrt(3)) / math.sqrt(3)
    assert soft[2] == pytest.approx(pressed[1] * cabled, rel=0.01)


@pytest.mark.parametrize("spun", [*STATED.values(), UNSTATED, WARP_UNSTATED])
@pytest.mark.parametrize("fibre", [None, *DENSITIES])
def test_pressed_is_never_thicker_than_soft(spun: object, fibre: str | None) -> None:
    """At the least, the likely and the most; an end in use lies between."""
    found = of_label(400, spun, fibre)  # type: ignore[arg-type]
    for ends in ("low", "value", "high"):
        assert getattr(found.pressed, ends) <= getattr(found.soft, ends)
    assert (found.in_use.low, found.in_use.high) == (found.pressed.low, found.soft.high)


@pytest.mark.parametrize("make", Make)
@pytest.mark.parametrize("fibre", DENSITIES)
def test_saying_make_and_fibre_only_narrows(make: Make, fibre: str) -> None:
    """In either order; but for a cord, which is taken for granted only of the fibres that cords are made of."""
    whole, both = of_label(400, UNSTATED, None), of_label(400, STATED[make], fibre)
    if make is not Make.CORD:
        for step in (of_label(400, UNSTATED, fibre), of_label(400, STATED[make], None)):
            for wide, narrow in ((whole, step), (step, both)):
                assert within(narrow.soft, wide.soft)
                assert within(narrow.pressed, wide.pressed)
    if fibre in OF_CORDS and make is not Make.SOFT:
        unstated = of_label(400, WARP_UNSTATED, fibre)
        assert within(both.soft, unstated.soft)
        assert within(both.pressed, unstated.pressed)


def test_a_wrap_is_known_to_a_turn_and_three_per_cent() -> None:
    """By hand: 11 turns pushed together in 20 mm are 20/12 less 3 % to 20/10 and 3 %."""
    found = of_wrap(11, 20, Wrapped.PUSHED)
    assert (found.low, found.value, found.high) == pytest.approx((20 / 12 * 0.97, 20 / 11, 20 / 10 * 1.03))
    assert found.origin is Origin.MEASURED
    for how in (Wrapped.BESIDE, None):
        loose = of_wrap(11, 20, how)
        assert loose.low == pytest.approx(found.low / LOOSE)
        assert loose.high == found.high
    assert of_wrap(1, 20, Wrapped.PUSHED).high == pytest.approx(2 * 20 * 1.03)


def test_the_willow_kits_yarns_are_these() -> None:
    """By hand: 625 tex of firm wool in two strands are 25 x .036 to .046 mm pressed, soft at most 25 x .0721.

    Its wrap says 1.617 to 2.06 mm, its label at most 1.80.
    """
    strand = of_label(312.5, STATED[Make.FIRM], "wool")
    weft = known(bunched([strand, strand]), of_wrap(11, 20, Wrapped.PUSHED), said)
    assert weft is not None
    assert (weft.pressed.low, weft.pressed.value, weft.pressed.high) == pytest.approx((0.9, 1.0075, 1.15))
    assert (weft.soft.low, weft.soft.value, weft.soft.high) == pytest.approx((1.6167, 1.8025, 1.8025), abs=1e-3)
    assert weft.soft.conflicts == ()


def test_label_and_wrap_that_contradict_span_both() -> None:
    """400 tex of hard cotton cord lie .76 to 1.32 mm soft; two turns in 20 mm do not: one sentence, both spanned."""
    label, wrap = of_label(400, STATED[Make.CORD], "cotton"), of_wrap(2, 20, Wrapped.PUSHED)
    both = known(label, wrap, said)
    assert both is not None
    assert (both.soft.low, both.soft.high) == (label.soft.low, wrap.high)
    assert both.soft.value == wrap.value
    for figure in (both.pressed, both.soft, both.in_use):
        assert figure.conflicts == (said(label.soft, wrap),)
    assert both.pressed.low <= label.pressed.low
    assert both.pressed.high >= wrap.low


def test_a_yarn_known_by_its_wrap_alone_is_pressed_to_two_thirds() -> None:
    """Our own choice: s / 1.5, between s / 3.2 and s; and an assumption."""
    wrap = of_wrap(10, 20, Wrapped.PUSHED)
    found = known(None, wrap, said)
    assert found is not None
    assert (found.pressed.low, found.pressed.value, found.pressed.high) == pytest.approx(
        (wrap.low / 3.2, 2 / 1.5, wrap.high)
    )
    assert found.pressed.assumptions
    assert known(None, None, said) is None


@given(
    st.floats(50, 3000), st.sampled_from([UNSTATED, *STATED.values()]), st.floats(0, 1), st.integers(1, 4),
    st.sampled_from([20.0, 25.4, 50.0]), st.sampled_from([Wrapped.PUSHED, None]),
)  # fmt: skip
def test_true_readings_narrow_in_any_order(
    tex: float, spun: object, share: float, strands: int, window: float, how: Wrapped | None
) -> None:
    """A true thickness within the class; whole turns of it that fit a window; strands and bundle, each wrapped."""
    label = of_label(tex, spun, "wool")  # type: ignore[arg-type]
    true = label.soft.low * (label.soft.high / label.soft.low) ** share
    turns = int(window / true)
    if turns < 1:
        return
    wrap, whole = of_wrap(turns, window, how), int(window / (true * math.sqrt(strands)))
    readings: dict[str, object] = {"strand": wrap}
    if whole >= 1:
        readings["bundle"] = of_wrap(whole, window, Wrapped.PUSHED)
    for order in itertools.permutations(readings):
        before = facts(label, strands, {})
        for step in range(1, len(order) + 1):
            after = facts(label, strands, {name: readings[name] for name in order[:step]})
            for name in ("pressed", "soft", "in_use"):
                assert within(getattr(after, name), getattr(before, name)), (name, order)
            assert not after.soft.conflicts
            before = after


def facts(label: Thickness, strands: int, readings: dict[str, object]) -> Thickness:
    """So many strands of a yarn by these readings."""
    strand = known(label, readings.get("strand"), said)  # type: ignore[arg-type]
    assert strand is not None
    bundle = known(bunched([strand] * strands), readings.get("bundle"), said)  # type: ignore[arg-type]
    assert bundle is not None
    return bundle
