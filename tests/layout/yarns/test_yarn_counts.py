"""The systems of linear density, against published factors and pint."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from strategies import tex_values

from layout.values.errors import FieldError
from layout.yarns.yarn_counts import SYSTEMS, read_count, rounded_tex, system

_REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()


@pytest.mark.parametrize(
    ("key", "product"),
    [("ne", 590.541), ("worsted", 885.812), ("run", 310.034), ("lea", 1653.52), ("nm", 1000), ("yd/lb", 496_055)],
)
def test_tex_times_an_indirect_count_is_the_published_constant(key: str, product: float) -> None:
    """ASTM D2260, Table 1: tex x count, to the six figures printed there."""
    assert float(f"{float(SYSTEMS[key].constant):.6g}") == product


def test_yards_in_a_pound_are_496_055_times_the_metric_count() -> None:
    """ASTM D2260, Table 1."""
    tex = Fraction(1000, 7)  # Nm 7
    assert float(SYSTEMS["yd/lb"].number(tex)) == pytest.approx(7 * 496.055, rel=1e-6)


@pytest.mark.parametrize(
    ("key", "ratio"), [("worsted", Fraction(3, 2)), ("run", Fraction(21, 40)), ("lea", Fraction(14, 5))]
)
def test_counts_of_the_pound_are_exact_parts_of_each_other(key: str, ratio: Fraction) -> None:
    """ASTM D2260: worsted = 1.5 cotton, run = 0.525 cotton, lea = 2.8 cotton."""
    assert SYSTEMS[key].number(SYSTEMS["ne"].tex(Fraction(1))) == ratio


def test_the_worked_conversions_of_the_standard_come_out() -> None:
    """ASTM D2260, worked examples: cotton 10 is worsted 15; 30 tex is cotton 19.7."""
    assert SYSTEMS["worsted"].number(SYSTEMS["ne"].tex(Fraction(10))) == 15
    assert round(float(SYSTEMS["ne"].number(Fraction(30))), 1) == 19.7


def test_nine_denier_and_ten_decitex_are_a_tex() -> None:
    """British Standard definitions of denier, decitex and metric count."""
    assert SYSTEMS["denier"].number(Fraction(1)) == 9
    assert SYSTEMS["dtex"].number(Fraction(1)) == 10
    assert SYSTEMS["nm"].number(Fraction(25)) == 40


@pytest.mark.parametrize(
    ("key", "unit"), [("tex", "tex"), ("dtex", "dtex"), ("denier", "denier"), ("nm", "number_meter")]
)
@pytest.mark.parametrize("count", [1, 8, 20, 75])
def test_cotton_counts_convert_as_pint_converts_them(key: str, unit: str, count: int) -> None:
    """pint's default registry in its `textile` context (1 Ne: 590.54 tex, 5314.87 denier, 1.69336 Nm)."""
    with _REGISTRY.context("textile"):
        theirs = (count * _REGISTRY.number_english).to(unit).magnitude
    ours = SYSTEMS[key].number(SYSTEMS["ne"].tex(Fraction(count)))
    assert float(ours) == pytest.approx(theirs, rel=1e-12)


@given(tex_values)
def test_every_system_gives_back_the_tex_it_was_given(tex: Fraction) -> None:
    """There and back is exact in fractions, through every system."""
    assert all(entry.tex(entry.number(tex)) == tex for entry in SYSTEMS.values())


@given(tex_values, tex_values)
def test_direct_numbers_rise_and_counts_fall_with_weight(one: Fraction, other: Fraction) -> None:
    """A heavier yarn has the higher tex and the lower count, in every system."""
    light, heavy = sorted((one, other))
    for entry in SYSTEMS.values():
        low, high = (light, heavy) if entry.direct else (heavy, light)
        assert entry.number(low) <= entry.number(high)


@pytest.mark.parametrize("name", ["cut", "Cut", " cut "])
def test_cut_is_refused_with_its_two_meanings(name: str) -> None:
    """300 yd a pound in America, 200 yd a pound in Galashiels (handbooks): never guessed."""
    with pytest.raises(FieldError, match="300") as caught:
        system(name)
    assert "200" in str(caught.value)


@pytest.mark.parametrize("name", ["", "lace", "grist", "8"])
def test_an_unknown_system_is_refused_with_those_there_are(name: str) -> None:
    """The sentence lists every system."""
    with pytest.raises(FieldError) as caught:
        system(name, "warp.system")
    assert all(key in str(caught.value) for key in SYSTEMS)


@pytest.mark.parametrize("text", ["8/2", "2/8", "8 / 2", "2/40s", "8x2", "1,5/2"])
def test_a_folded_count_as_one_text_is_refused(text: str) -> None:
    """Books write ply/count, craft labels count/ply: both meanings are named, and what to write."""
    with pytest.raises(FieldError) as caught:
        read_count(text)
    said = str(caught.value)
    assert "craft" in said
    assert "books" in said
    assert "plies = " in said


def test_both_meanings_of_a_folded_count_are_spelt_out() -> None:
    """8/2 is 8s folded 2-ply to a craft weaver, and 2s folded 8-ply in an older book."""
    with pytest.raises(FieldError, match=r"count 8 folded 2-ply.*count 2 folded 8-ply"):
        read_count("8/2")


@pytest.mark.parametrize(
    "text",
    ["", "  ", "abc", "-8", "0", "NaN", "inf", "1e400", "8 2", "٨", "8.5.1", "1.000,5", "8//2", "8,500", "9" * 80],
)
def test_what_is_no_count_is_refused(text: str) -> None:
    """Text is read whole or not at all; a comma that may mean thousands is not guessed."""
    with pytest.raises(FieldError):
        read_count(text)


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("8", 8),
        (" 8.5 ", Fraction(17, 2)),
        ("8,5", Fraction(17, 2)),
        ("0.75", Fraction(3, 4)),
        ("8 1/2", Fraction(17, 2)),
    ],
)
def test_a_plain_number_is_read_exactly(text: str, number: Fraction) -> None:
    """A decimal point, a decimal comma or a fraction."""
    assert read_count(text) == number


@given(tex_values)
def test_rounded_tex_stays_within_the_standard(tex: Fraction) -> None:
    """ISO 2947: a rounded tex may differ from the exact one by at most 2 %."""
    assert abs(rounded_tex(tex) / tex - 1) <= Fraction(2, 100)
