"""Diameters by one reading alone, against Peirce, Taylor and the craft yarn chart."""

from __future__ import annotations

import itertools
import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import not_positive, tex_values

from layout.values.errors import FieldError
from layout.values.limits import Number
from layout.values.quantity import Origin, assumed, computed
from layout.yarns.diameter import (
    SPECIFIC_VOLUMES,
    Diameter,
    Kind,
    compressed,
    craft_classes,
    specific_volume,
    wrapped,
)
from layout.yarns.yarn import Strand, bundle, yarn_of

_MIL = 0.0254
_COTTON = specific_volume("cotton")
_UNIT = computed(1.0, "Specific volume 1.")


@pytest.mark.parametrize("count", [1, 10, 15, 32, 60])
@pytest.mark.parametrize("volume", [1.0, 1.1])
def test_compressed_diameters_are_peirces(count: int, volume: float) -> None:
    """Peirce 1937: diameter in mils = 34.14 sqrt(v / N), N the cotton count, v in cm3/g; to the figures printed."""
    ours = compressed(yarn_of(count, "ne"), computed(volume, "Given.")).mm / _MIL
    assert ours == pytest.approx(34.14 * math.sqrt(volume / count), rel=2e-4)


def test_cotton_takes_up_peirces_volume() -> None:
    """Peirce 1937: v = 1.1, which makes the diameter of cotton 1 / (27.93 sqrt(N)) of an inch."""
    assert _COTTON.value == 1.1
    assert 25.4 / compressed(yarn_of(1, "ne"), _COTTON).mm == pytest.approx(27.93, abs=0.01)


@pytest.mark.parametrize(("count", "printed"), [(15, 106.5), (26, 140.5), (32, 156)])
def test_two_handbooks_agree_on_cotton(count: int, printed: float) -> None:
    """J. T. Taylor, Cotton Weaving, prints threads side by side in an inch: within 2 % of 1 / diameter by Peirce."""
    assert 25.4 / compressed(yarn_of(count, "ne"), _COTTON).mm == pytest.approx(printed, rel=0.02)


@given(st.fractions(min_value=1, max_value=10_000, max_denominator=100))
def test_four_times_the_weight_is_twice_the_diameter(tex: Fraction) -> None:
    """J. T. Taylor, Cotton Weaving."""
    thin, thick = (compressed(yarn_of(times * tex, "tex"), _UNIT).mm for times in (1, 4))
    assert thick == pytest.approx(2 * thin)


@given(tex_values, tex_values)
def test_a_heavier_yarn_is_never_thinner(one: Fraction, other: Fraction) -> None:
    """Compressed diameter rises with tex."""
    light, heavy = sorted((one, other))
    assert compressed(yarn_of(light, "tex"), _UNIT).mm <= compressed(yarn_of(heavy, "tex"), _UNIT).mm


def test_a_bundle_is_as_thick_as_one_yarn_of_its_weight() -> None:
    """Four strands of 100 tex are as thick as one of 400, and twice as thick as one strand."""
    strand = yarn_of(100, "tex")
    four = bundle([Strand(strand, 4)])
    assert compressed(four, _UNIT).mm == pytest.approx(compressed(yarn_of(400, "tex"), _UNIT).mm)


def test_a_hand_wrap_is_window_over_count() -> None:
    """Common practice, no source: twelve turns in an inch are 25.4 / 12 mm each, measured, and soft."""
    yarn = wrapped(25.4, 12)
    assert yarn.mm == pytest.approx(25.4 / 12)
    assert (yarn.kind, yarn.figure.origin) == (Kind.SOFT, Origin.MEASURED)


def test_only_cotton_has_a_source() -> None:
    """Every other fibre's volume, and each diameter computed from it, says that it is assumed."""
    for fibre, volume in SPECIFIC_VOLUMES.items():
        expected = Origin.COMPUTED if fibre == "cotton" else Origin.ASSUMED
        assert volume.origin is expected
        assert compressed(yarn_of(100, "tex"), volume).figure.origin is expected


def test_other_fibres_pack_as_cotton_does() -> None:
    """Arithmetic: of two yarns packed alike, the volumes of a gram are as the fibre densities, reversed.

    The densities are from memory: cotton and viscose 1.52 g/cm3, silk 1.34.
    """
    assert specific_volume("viscose").value == pytest.approx(1.1)
    assert specific_volume("silk").value == pytest.approx(1.1 * 1.52 / 1.34)


def test_an_unknown_fibre_is_refused_with_those_there_are() -> None:
    """The sentence lists the fibres."""
    with pytest.raises(FieldError, match=r"cotton.*wool"):
        specific_volume("moonlight")


@given(not_positive)
def test_a_window_lies_above_zero(value: Number) -> None:
    """No window of nothing."""
    with pytest.raises(FieldError):
        wrapped(value, 12)


@pytest.mark.parametrize("volume", [0.0, -1.1])
def test_a_yarn_takes_up_room(volume: float) -> None:
    """No yarn without volume."""
    with pytest.raises(FieldError):
        compressed(yarn_of(8, "ne"), assumed(volume, "Given."))


@pytest.mark.parametrize("turns", [0, -3, 2.5])
def test_turns_are_counted_whole(turns: float) -> None:
    """A part of a turn is not counted."""
    with pytest.raises(FieldError):
        wrapped(25.4, turns)


@pytest.mark.parametrize(
    ("wraps", "classes"),
    [
        (50, {0}), (35, {0}), (30.5, {0}), (30, {0, 1}), (20, {1}), (18.5, {1}), (16, {1, 2}), (15.5, {1, 2}),
        (14, {1, 2, 3}), (12.5, {2, 3}), (12, {2, 3, 4}), (11, {3, 4}), (10, {4}), (9.5, {4}), (6.5, {5}),
        (9, {4, 5}), (7, {5}), (6, {5, 6}), (5.5, {6}), (4.5, set()), (4, {7}), (1, {7}), (0.5, set()),
    ],
)  # fmt: skip
def test_the_craft_chart_gives_every_class_that_fits(wraps: float, classes: set[int]) -> None:
    """Craft Yarn Council chart (second-hand): 30-40+, 14-30, 12-18, 11-15, 9-12, 6-9, 5-6, 1-4 wraps an inch."""
    assert craft_classes(wraps) == classes


def test_more_wraps_never_mean_a_heavier_class() -> None:
    """Going up in wraps, the lightest and the heaviest class only ever fall."""
    sets = [found for wraps in range(1, 60) if (found := craft_classes(wraps))]
    assert all(min(a) >= min(b) and max(a) >= max(b) for a, b in itertools.pairwise(sets))


@pytest.mark.parametrize(("wraps", "metres_in_100g"), [(10.5, 200), (13, 240), (20, 400)])
def test_textbook_diameters_are_not_hand_wraps(wraps: float, metres_in_100g: int) -> None:
    """Soft knitting wools: a hand wrap counts about 1/3 to 1/2 of what Peirce's compressed diameter gives.

    Wraps are from within classes 4, 3 and 1 of the Craft Yarn Council chart (second-hand); metres in 100 g as balls of
    such wool are sold (from memory), and so is wool's volume: the check is of size, not of figures.
    """
    textbook = 25.4 / compressed(yarn_of(metres_in_100g, "m/100g"), specific_volume("wool")).mm
    assert 0.3 < wraps / textbook < 0.55


def test_a_diameter_says_which_it_is() -> None:
    """The reason carries the kind, for print."""
    for one in (wrapped(25.4, 12), compressed(yarn_of(8, "ne"), _COTTON)):
        assert isinstance(one, Diameter)
        assert one.kind.value in one.figure.reason
