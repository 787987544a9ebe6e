"""Beads, take-up and weights of the model, against published pieces, and readings that only ever narrow them."""

from __future__ import annotations

import itertools
import math
from fractions import Fraction
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.estimate.bought import BEAD_OF_PITCH
from layout.values.quantity import Quantity, combine, computed, measured, met
from layout.yardage.bead import (
    FLATTEST,
    WARP_SHARE,
    Weave,
    bead_height,
    beads_counted,
    passing,
    picks_counted,
    warp_guessed,
)
from layout.yardage.take_up import bubble_rise, crimp, drawn, in_cloth, take_up
from layout.yardage.weft_total import HEAVY_G_PER_M2, LIGHT_G_PER_M2, picks_of, weft_length
from layout.yarns.thickness import STATED, Make, Thickness, Wrapped, known, of_label, of_wrap
from tests.layout.yarns.test_thickness import said, within

_INCH = 25.4
_CORD = of_label(295.3, STATED[Make.CORD], "cotton")  # 12/6 cotton: six singles of 12 Ne
_WOOL = of_label(551, STATED[Make.FIRM], "wool")


class Lies(NamedTuple):
    """What a weaving of 250 x 200 mm comes to: the bead, the take-up, and the weft in mm."""

    bead: Quantity
    take_up: Quantity
    length: Quantity


def exactly(value: float) -> Quantity:
    """A size as it is."""
    return computed(value, "Given.")


def lying(weft: Thickness, warp: Thickness, pitch: float, *readings: Quantity, pick: Quantity | None = None) -> Lies:
    """The weft of 250 x 200 mm by its yarns, and by the height of a bead where one was read, and a pick drawn out."""
    weave = Weave(weft, warp.in_use, exactly(pitch))
    bead = bead_height(weave, None)
    for reading in readings:
        bead = met(bead, reading, said)
    more = take_up(weave, bead)
    more = met(more, pick, said) if pick else more
    return Lies(bead, more, weft_length(exactly(250), exactly(200), bead, more))


def metres(found: Lies) -> tuple[float, float, float]:
    """Least, likely and most."""
    return found.length.low / 1000, found.length.value / 1000, found.length.high / 1000


def test_every_measurement_narrows_one_order_of_weft() -> None:
    """12/6 cotton at 8 ends an inch under 551 tex of firm wool, by hand through all formulas: 65, 112, 212 m by labels.

    Wraps, beads and a pick drawn out each leave less; the likely figure moves by few per cent.
    """
    pitch, weft, warp = _INCH / 8, _WOOL, _CORD
    first = lying(weft, warp, pitch)
    assert metres(first) == pytest.approx((65.3, 112.5, 212.0), rel=0.002)
    weft = known(weft, of_wrap(20, _INCH, Wrapped.PUSHED), said) or weft
    second = lying(weft, warp, pitch)
    assert metres(second) == pytest.approx((80, 110, 197), rel=0.01)
    warp = known(warp, of_wrap(25, _INCH, Wrapped.PUSHED), said) or warp
    third = lying(weft, warp, pitch)
    assert metres(third) == pytest.approx((82, 112, 195), rel=0.01)
    counted = beads_counted(45, 50)
    fourth = lying(weft, warp, pitch, counted)
    assert metres(fourth) == pytest.approx((104, 111, 120), rel=0.01)
    fifth = lying(weft, warp, pitch, counted, pick=drawn(123, 100))
    assert metres(fifth) == pytest.approx((108, 111, 114), rel=0.015)
    for wide, narrow in itertools.pairwise((first, second, third, fourth, fifth)):
        assert within(narrow.length, wide.length)
        assert narrow.length.value == pytest.approx(wide.length.value, rel=0.04)


@pytest.mark.parametrize("picks", [40, 52, 80, 42, 48])
def test_published_weft_faced_pieces_have_usual_beads(picks: int) -> None:
    """Navajo blanket NMAI 22.1688 (Smithsonian): 8 ends an inch, 40, 52 and 80 picks; "Moki" sarapes: 42 and 48."""
    height = picks_counted(picks, _INCH).value
    assert BEAD_OF_PITCH[0] <= height / (_INCH / 8) <= BEAD_OF_PITCH[1]


@pytest.mark.parametrize(("ends", "picks"), [(9, 14), (14, 24)])
def test_counts_of_one_face_or_of_other_cloth_are_unusual(ends: int, picks: int) -> None:
    """Curio looms E255631 and E016494 (Smithsonian): counted on one face, or not weft-faced; a note, never an error."""
    assert picks_counted(picks, _INCH).value / (_INCH / ends) > BEAD_OF_PITCH[1]


@pytest.mark.parametrize("tex", [300, 375, 450])
def test_a_four_ply_blanket_is_predicted(tex: float) -> None:
    """A "Moki" sarape of 4-ply commercial yarn has 48 picks at 8 ends (Wheat & Hedlund 2003); tex from memory."""
    weave = Weave(of_label(tex, STATED[Make.FIRM], "wool"), warp_guessed(exactly(_INCH / 8)), exactly(_INCH / 8))
    picks = picks_of(bead_height(weave, None)).scaled(_INCH)
    assert picks.low <= 48 <= picks.high


def test_a_weft_as_thick_as_the_gap_stands_half_as_high_again() -> None:
    """By area: two picks of d through a gap of d are pi / 2 d high; a gap as thick as the weft is K. Todd-Hooker's."""
    assert passing(1, 2, 3) == pytest.approx(math.pi / 2)
    assert passing(1, 3, 3) == 2 * (1 + 3)
    assert passing(1, 2.9, 3) == 2 * (1 + 2.9)


@given(st.fractions(0, 1), st.fractions(0, 1))
def test_a_harder_beat_lowers_beads_between_pressed_and_soft(one: Fraction, other: Fraction) -> None:
    """At a pitch so wide that the gap does not count; without a beat all of it is spanned, and that is assumed."""
    weave = Weave(_WOOL, exactly(1), exactly(50))
    soft, hard = (bead_height(weave, beat) for beat in sorted((one, other)))
    unbeaten = bead_height(weave, None)
    assert _WOOL.pressed.value <= hard.value <= soft.value <= _WOOL.soft.value
    assert within(soft, unbeaten)
    assert within(hard, unbeaten)
    assert (unbeaten.low, unbeaten.high) == (FLATTEST * _WOOL.pressed.low, _WOOL.soft.high)
    assert any("beat" in each for each in unbeaten.assumptions)
    assert not any("beat" in each for each in soft.assumptions)


def test_beads_are_known_to_half_a_bead_and_picks_to_half_a_pick() -> None:
    """Arithmetic: 36 beads in 50 mm, and 72 picks, which are the same."""
    beads, picks = beads_counted(36, 50), picks_counted(72, 50)
    assert (beads.low, beads.value, beads.high) == pytest.approx((50 / 36.5, 50 / 36, 50 / 35.5))
    assert (picks.low, picks.value, picks.high) == pytest.approx((100 / 72.5, 50 / 36, 100 / 71.5))
    assert picks_of(beads).value == pytest.approx(72 / 50)


def test_an_unknown_warp_takes_some_of_the_pitch() -> None:
    """Our own choice: a tenth to three quarters of it, and an assumption."""
    guess = warp_guessed(measured(4, "Read.", 3.8, 4))
    assert (guess.low, guess.value, guess.high) == pytest.approx((0.1 * 3.8, 0.4 * 4, 0.75 * 4))
    assert guess.assumptions
    assert WARP_SHARE == (0.1, 0.4, 0.75)


@pytest.mark.parametrize(
    ("x", "more"), [(0.25, 0.031416), (0.4, 0.081122), (0.5, 0.127825), (0.6, 0.186101), (0.75, 0.297484)]
)
def test_the_crimp_is_peirces_with_a_straight_warp(x: float, more: float) -> None:
    """F. T. Peirce 1937, by hand to six figures; what fills more than .95 of the pitch is pressed flat."""
    assert crimp(4, 2, 4 * x - 2) == pytest.approx(more, abs=5e-7)
    assert crimp(4, 4, 4) == crimp(4, 3.8, 0)


def test_general_weaving_takes_up_a_tenth() -> None:
    """Teaching pages give 10 % for balanced cloth: warp and weft that fill some .45 of the pitch."""
    assert crimp(1, 0.225, 0.225) == pytest.approx(0.10, abs=0.01)


def test_what_lies_in_cloth_is_as_thick_as_its_beads() -> None:
    """Counted beads of 1.111 mm: from that to 1.25 times it, within pressed and soft."""
    weave = Weave(_WOOL, exactly(0.2), exactly(12))
    thick = in_cloth(weave, beads_counted(45, 50))
    assert thick.low == pytest.approx(50 / 45.5)
    assert thick.high == pytest.approx(50 / 44.5 / 0.8)
    governed = in_cloth(Weave(_WOOL, exactly(2), exactly(3)), beads_counted(45, 50))
    assert governed.low == _WOOL.pressed.low  # where the gap makes beads high, the weft may be thin


@pytest.mark.parametrize("rise", [0.15, 0.20, 0.25, 0.30])
def test_the_wanted_bubble_supplies_the_take_up(rise: float) -> None:
    """An arc of rise r over a span of 1, by its radius: its own length gives back its rise within 2.5 %."""
    radius = (0.25 + rise**2) / (2 * rise)
    more = 2 * radius * math.asin(0.5 / radius) - 1
    assert bubble_rise(exactly(more)).value == pytest.approx(rise, rel=0.025)


def test_a_pick_drawn_out_is_read_to_a_millimetre() -> None:
    """Arithmetic: 118 mm out of 100 mm is 18 %, and 117 / 101 to 119 / 99."""
    found = drawn(118, 100)
    assert (found.low, found.value, found.high) == pytest.approx((117 / 101 - 1, 0.18, 119 / 99 - 1))
    short = drawn(2, 2)
    assert short.low == 0


@pytest.mark.parametrize(("ends", "tex"), [(8, 551), (10, 400), (6, 900)])
def test_tapestries_and_rugs_weigh_what_is_usual(ends: int, tex: float) -> None:
    """Likely 1000 to 1450 g/m2 by the model; P. Collingwood's heavy rug is half a pound to the square foot, 2441."""
    warp = of_label(295.3, STATED[Make.CORD], "cotton")
    found = lying(of_label(tex, STATED[Make.FIRM], "wool"), warp, _INCH / ends)
    per_m2 = found.length.value / 50_000 * tex  # g/km x mm / mm2 = g/m2
    assert LIGHT_G_PER_M2 < per_m2 < HEAVY_G_PER_M2
    rug = 0.5 * 453.59237 / 0.3048**2
    assert rug == pytest.approx(2441, abs=1)
    assert rug < HEAVY_G_PER_M2


@given(
    st.floats(100, 1500), st.floats(0, 1), st.floats(0, 1), st.floats(0, 1), st.floats(5, 60),
    st.permutations(["weft", "warp", "beads", "pick"]),
)  # fmt: skip
def test_true_readings_only_narrow(
    tex: float, soft_at: float, warp_at: float, h_at: float, over_pitch: float, order: list[str]
) -> None:
    """A true weft, warp, bead and take-up within the model; readings of them rounded as people do, in any order."""
    label, cord = of_label(tex, STATED[Make.FIRM], "wool"), _CORD
    soft = label.soft.low * (label.soft.high / label.soft.low) ** soft_at
    wound = cord.soft.low * (cord.soft.high / cord.soft.low) ** warp_at
    pitch = 1 + over_pitch / 10
    after_wraps = lying(*(wraps(label, soft), wraps(cord, wound)), pitch)
    height = after_wraps.bead.low + h_at * (after_wraps.bead.high - after_wraps.bead.low)
    counted = max(1, round(50 / height))
    counted_height = beads_counted(counted, 50)
    if counted_height.low > after_wraps.bead.high or counted_height.high < after_wraps.bead.low:
        return
    fourth = lying(wraps(label, soft), wraps(cord, wound), pitch, counted_height)
    pick = drawn(100 * (1 + fourth.take_up.low + h_at * (fourth.take_up.high - fourth.take_up.low)), 100)
    readings = {
        "weft": lambda lie: lie | {"weft": wraps(label, soft)},
        "warp": lambda lie: lie | {"warp": wraps(cord, wound)},
        "beads": lambda lie: lie | {"beads": counted_height},
        "pick": lambda lie: lie | {"pick": pick},
    }
    lie: dict[str, object] = {"weft": label, "warp": cord}
    before = _of(lie, pitch)
    for name in order:
        lie = readings[name](lie)
        after = _of(lie, pitch)
        for new, old in zip(after, before, strict=True):
            assert within(new, old), name
            assert not new.conflicts
        before = after


def wraps(label: Thickness, true: float) -> Thickness:
    """A yarn whose wraps were counted over an inch."""
    return known(label, of_wrap(max(1, int(_INCH / true)), _INCH, Wrapped.PUSHED), said) or label


def _of(lie: dict[str, object], pitch: float) -> Lies:
    readings = [lie["beads"]] if "beads" in lie else []
    return lying(lie["weft"], lie["warp"], pitch, *readings, pick=lie.get("pick"))  # type: ignore[arg-type]


def test_a_figure_of_exact_sizes_is_exact() -> None:
    """Nothing read, nothing spanned."""
    found = combine(lambda one, other: one * other, "Area.", exactly(2), exactly(3))
    assert (found.value, found.exact) == (6, True)
