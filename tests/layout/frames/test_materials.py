"""What materials are said to be, against published values."""

from __future__ import annotations

from fractions import Fraction

import pytest

from layout.frames.materials import MATERIALS, material_of
from layout.frames.strength import Strength
from layout.values.quantity import Origin

LB_IN2 = 4.4482216152605 / 25.4**2
"""A pound-force on a square inch in N/mm2."""

METRIC = {
    "ponderosa pine": (8_900, 65),
    "red pine": (11_200, 76),
    "shortleaf pine": (12_100, 90),
    "western white pine": (10_100, 67),
    "redwood": (9_200, 69),
}
"""Wood Handbook, FPL-GTR-190 (2010), table 5-3a, 12 % moisture: moduli of elasticity and of rupture in N/mm2."""

INCHES = {
    "white ash": 1.74,
    "american beech": 1.72,
    "yellow birch": 2.01,
    "paper birch": 1.59,
    "black cherry": 1.49,
    "basswood": 1.46,
    "red maple": 1.64,
    "quaking aspen": 1.18,
    "red alder": 1.38,
    "shagbark hickory": 2.16,
}
"""The same handbook in inches: modulus of elasticity in 10^6 lb/in2."""

EN_622_5 = {6: (2_700, 23), 9: (2_700, 23), 12: (2_500, 22), 19: (2_200, 20), 30: (2_100, 18)}
"""EN 622-5, general purpose MDF: up to so many mm, modulus of elasticity and bending strength in N/mm2."""


@pytest.mark.parametrize("name", METRIC)
def test_woods_are_those_of_the_handbook(name: str) -> None:
    """Modulus as printed; a quarter of the strength is allowed."""
    found = material_of(Strength(material=name), 20)
    assert found is not None
    assert found.allowed is not None
    assert (found.modulus.value, 4 * found.allowed.value) == METRIC[name]
    assert "Wood Handbook" in found.modulus.reason


@pytest.mark.parametrize("name", INCHES)
def test_woods_are_those_of_the_handbook_in_inches(name: str) -> None:
    """To the two figures behind the point that are printed, and the hundred N/mm2 that ours are rounded to."""
    found = material_of(Strength(material=name), 20)
    assert found is not None
    assert found.modulus.value == pytest.approx(INCHES[name] * 1e6 * LB_IN2, abs=0.005e6 * LB_IN2 + 50)


@pytest.mark.parametrize("thick", EN_622_5)
def test_mdf_is_what_the_standard_asks_of_its_thickness(thick: int) -> None:
    """EN 622-5 by the band of its thickness; a tenth of a millimetre more is the next band."""
    found, modulus = material_of(Strength(material="mdf"), thick), EN_622_5[thick][0]
    assert found is not None
    assert found.allowed is not None
    assert (found.modulus.value, 4 * found.allowed.value) == EN_622_5[thick]
    thicker = material_of(Strength(material="mdf"), Fraction(thick) + Fraction(1, 10))
    assert thicker is not None
    assert thicker.modulus.value < modulus or thick == 6


def test_acrylic_bears_little_for_long() -> None:
    """Cast sheet has about 2,855 N/mm2 (a materials database), and is kept under 1,500 lb/in2 (a maker's sheet)."""
    found = material_of(Strength(material="acrylic"), 5)
    assert found is not None
    assert found.allowed is not None
    assert found.modulus.low <= 2_855 <= found.modulus.high
    assert found.allowed.value <= 1_500 * LB_IN2


def test_metals_are_of_the_order_that_is_common_knowledge() -> None:
    """Steel 200,000 N/mm2, aluminium 70,000 (from memory; no source but common knowledge); neither creeps."""
    for name, usual in (("steel", 200_000), ("aluminium", 70_000)):
        found = material_of(Strength(material=name), 15)
        assert found is not None
        assert found.modulus.value == pytest.approx(usual, rel=0.06)
        assert not found.creeps


@pytest.mark.parametrize("name", MATERIALS)
def test_every_material_scatters_and_says_what_it_is(name: str) -> None:
    """Each modulus is assumed, has a range, and is what its sentence says; woods lie between balsa and ebony."""
    found = material_of(Strength(material=name), 18)
    assert found is not None
    modulus = found.modulus
    assert modulus.origin is Origin.ASSUMED
    assert modulus.low < modulus.value < modulus.high
    assert f"{name} {modulus.value:.0f} N/mm2 ({modulus.low:.0f} to {modulus.high:.0f})" in modulus.reason
    if found.creeps:
        assert 2_000 <= modulus.value <= 16_000


def test_an_own_modulus_of_a_metal_does_not_creep() -> None:
    """Without a material a modulus alone says whether it is wood: nothing softer than a metal is as stiff."""
    wood, metal = (material_of(Strength(modulus=Fraction(each)), 15) for each in (12_000, 70_000))
    assert wood is not None
    assert metal is not None
    assert (wood.creeps, metal.creeps) == (True, False)
    assert (wood.modulus.origin, wood.allowed) == (Origin.MEASURED, None)
