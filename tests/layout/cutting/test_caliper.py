from __future__ import annotations

from fractions import Fraction
from statistics import mean

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from layout.cutting.stock.measured_kerf import CaliperReading, ease_of, kerf_of, read_caliper
from layout.values.errors import FieldError

NAMES = ("--hole", "--part")
readings = st.fractions(Fraction(1, 100), Fraction(2), max_denominator=1000)


def read(text: object, within: Fraction | None = None) -> CaliperReading:
    """One reading of a hole."""
    return read_caliper(text, "--hole", within)


def test_the_kerf_is_half_of_hole_less_part() -> None:
    """Hole 20.14 and part 19.76 make a kerf of 0.19 mm; half of the last digit of both leaves 0.005 mm open."""
    kerf = kerf_of([read("20.14")], [read("19.76")], NAMES)
    assert (kerf.mm, kerf.uncertainty, kerf.count) == (Fraction("0.19"), Fraction("0.005"), 1)


def test_a_service_s_own_example_gives_its_kerf() -> None:
    """Drawn 2.0 x 4.0 mm at a kerf of 0.2 mm: opening 2.2 x 4.2, part 1.8 x 3.8 (a cutting service's example)."""
    for hole, part in (("2.2", "1.8"), ("4.2", "3.8")):
        assert kerf_of([read(hole)], [read(part)], NAMES).mm == Fraction("0.2")


@given(st.lists(st.tuples(readings, st.fractions(5, 50, max_denominator=100)), min_size=1, max_size=9))
def test_a_drawn_size_never_matters(cuts: list[tuple[Fraction, Fraction]]) -> None:
    """Holes a kerf larger and parts a kerf smaller than drawn give back the mean of the kerfs, and their range."""
    exact = Fraction(0)
    holes = [CaliperReading(size + kerf, exact) for kerf, size in cuts]
    parts = [CaliperReading(size - kerf, exact) for kerf, size in cuts]
    found = kerf_of(holes, parts, NAMES)
    kerfs = [kerf for kerf, _ in cuts]
    assert found.mm == mean(kerfs)
    assert (found.low, found.high) == (min(kerfs), max(kerfs))
    assert found.uncertainty == (max(kerfs) - min(kerfs)) / 2


@given(readings, st.integers(1, 4), st.fractions(15, 25, max_denominator=9999))
def test_the_true_kerf_lies_within_the_uncertainty(kerf: Fraction, places: int, drawn: Fraction) -> None:
    """However a caliper rounds to its last digit, the kerf is no further off than is said."""
    assume(kerf > Fraction(2, 10**places))
    hole, part = (f"{float(round(size, places)):.{places}f}" for size in (drawn + kerf, drawn - kerf))
    found = kerf_of([read(hole)], [read(part)], NAMES)
    assert abs(found.mm - kerf) <= found.uncertainty


def test_spread_beats_the_reading() -> None:
    """Kerfs of 0.18, 0.20 and 0.22 mm: 0.20 within 0.02, though each reading is good to 0.005 mm."""
    kerf = kerf_of([read("20.18"), read("20.20"), read("20.22")], [read("19.82"), read("19.80"), read("19.78")], NAMES)
    assert (kerf.mm, kerf.uncertainty) == (Fraction("0.2"), Fraction("0.02"))


def test_a_stated_caliper_uncertainty_counts_instead() -> None:
    """A caliper that is good to 0.02 mm leaves a kerf open by 0.02 mm."""
    within = Fraction("0.02")
    assert kerf_of([read("20.14", within)], [read("19.76", within)], NAMES).uncertainty == within


@pytest.mark.parametrize(
    ("text", "mm", "within"),
    [
        ("20.14", "20.14", "0.005"),
        ("20,14 mm", "20.14", "0.005"),
        ("20", "20", "0.5"),
        ("0.793 in", "20.1422", "0.0127"),
        ('0.793"', "20.1422", "0.0127"),
        (" 3.0 ", "3", "0.05"),
    ],
)
def test_readings_as_calipers_show_them(text: str, mm: str, within: str) -> None:
    """Millimetres unless inches are said; half of the last digit is left open (1 in = 25.4 mm)."""
    assert read(text) == (Fraction(mm), Fraction(within))


@pytest.mark.parametrize("text", ["", "abc", "-20.14", "20.14 cm", "1e2", "nan", "20.14.1", "20.", None, 20.14, "٣"])
def test_what_is_no_reading_is_refused(text: object) -> None:
    """One sentence names the option and an example."""
    with pytest.raises(FieldError, match=r"--hole: needs a size as the caliper shows it.*for example --hole 20\.14"):
        read(text)


def test_a_comma_that_may_mean_thousands_is_refused() -> None:
    """20,140 may be 20.14 or 20140."""
    with pytest.raises(FieldError, match="--hole: needs a number that can be read in one way only"):
        read("20,140")


def test_a_hole_smaller_than_its_part_is_refused() -> None:
    """The kerf would be negative; both sizes are said."""
    with pytest.raises(
        FieldError, match=r"--hole: needs a hole larger .* got a hole of 19\.76 mm and a part of 20\.14"
    ):
        kerf_of([read("19.76")], [read("20.14")], NAMES)
    with pytest.raises(FieldError, match="--hole: needs a hole larger"):
        kerf_of([read("20.00")], [read("20.00")], NAMES)


def test_a_kerf_wider_than_any_cut_is_refused() -> None:
    """A part of another hole is found by its kerf."""
    with pytest.raises(FieldError, match="at most 5 mm"):
        kerf_of([read("40.14")], [read("19.76")], NAMES)


def test_every_hole_needs_its_part() -> None:
    """Two holes and one part cannot be paired."""
    with pytest.raises(FieldError, match="--part: needs one --part for every --hole, got 1 for 2"):
        kerf_of([read("20.14"), read("20.15")], [read("19.76")], NAMES)


def test_readings_too_coarse_are_refused() -> None:
    """Whole millimetres say nothing of a kerf of half a millimetre."""
    with pytest.raises(
        FieldError, match=r"fine enough for a kerf of about 0\.5 mm, got readings that leave it open by"
    ):
        kerf_of([read("20")], [read("19")], NAMES)


def test_the_ease_is_what_the_slot_really_had() -> None:
    """A slot drawn for 0.20 mm of kerf and cut with 0.26 is 0.06 mm wider than its label."""
    assert ease_of(Fraction("0.3"), Fraction("0.2"), Fraction("0.26")) == Fraction("0.36")
    assert ease_of(Fraction("0.3"), Fraction("0.2"), Fraction("0.2")) == Fraction("0.3")
    with pytest.raises(
        FieldError, match=r"--slot: needs a slot that came out wider than the yarn, got 0 mm, cut 0\.1 mm"
    ):
        ease_of(Fraction(0), Fraction("0.3"), Fraction("0.2"))
