"""First guesses and a teacher's warnings."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.quantity import Origin, Quantity, computed
from layout.yarns.diameter import Diameter, Kind, MixedKindsError, wrapped
from layout.yarns.pairing import SWELLING, first_guess, ladder_warnings, pairing_warnings


def soft(mm: float) -> Diameter:
    """A soft diameter as given."""
    return Diameter(computed(mm, "Given."), Kind.SOFT)


def hard(mm: float) -> Diameter:
    """A compressed diameter as given."""
    return Diameter(computed(mm, "Given."), Kind.COMPRESSED)


@given(st.floats(0.1, 10), st.floats(0.1, 10))
def test_the_guess_is_pairs_side_by_side(warp: float, weft: float) -> None:
    """American Tapestry Alliance: pitch = warp + weft; so it holds as many ends an inch as pairs lie in one."""
    guess = first_guess(soft(warp), soft(weft))
    assert guess.per_mm.value * (warp + weft) == pytest.approx(1)
    assert guess.low < guess.per_mm.value < guess.high


def test_nine_pairs_an_inch_guess_nine_ends() -> None:
    """Common practice, no source: pairs in a window of one inch are ends an inch."""
    pair = wrapped(25.4, 9)
    half = Diameter(Quantity(pair.mm / 2, Origin.MEASURED, "Half a pair."), Kind.SOFT)
    assert first_guess(half, half).per_mm.value * 25.4 == pytest.approx(9)


def test_half_the_wraps_hold_for_like_yarns_only() -> None:
    """Handbooks of balanced cloth: 24 wraps an inch are set at 12 ends. So it is for a weft as thick as the warp;
    a weft twice as thick asks for 8, and the rule is not for weft-faced work.
    """
    warp = wrapped(25.4, 24)
    assert first_guess(warp, warp).per_mm.value * 25.4 == pytest.approx(12)
    assert first_guess(warp, wrapped(25.4, 12)).per_mm.value * 25.4 == pytest.approx(8)


@pytest.mark.parametrize("kind", [soft, hard])
def test_a_guess_is_always_marked_as_one(kind: type) -> None:
    """Even from measured wraps: only the wrap of the pair measures."""
    guess = first_guess(kind(1.0), kind(2.0)).per_mm
    assert guess.origin is Origin.ASSUMED
    assert any("First guess" in reason for reason in guess.assumptions)


def test_from_labels_the_sett_may_be_a_third_only() -> None:
    """Hand wraps of soft wool are 1/2 to 1/3 of textbook counts, so the range goes down to a third and not up."""
    guess = first_guess(hard(1.0), hard(1.0))
    assert guess.low == pytest.approx(guess.per_mm.value / SWELLING)
    assert guess.high == guess.per_mm.value


def test_kinds_are_not_mixed() -> None:
    """One wrapped and one computed yarn give no sett and no warnings."""
    with pytest.raises(MixedKindsError):
        first_guess(soft(1), hard(1))
    with pytest.raises(MixedKindsError):
        pairing_warnings(4, soft(1), hard(1))


@given(st.floats(0.5, 20))
def test_the_ideal_pairing_gives_no_warning(pitch: float) -> None:
    """American Tapestry Alliance: warp near half the pitch, weft as thick as the gap."""
    assert pairing_warnings(pitch, soft(pitch / 2), soft(pitch / 2)) == ()


@pytest.mark.parametrize(
    ("warp", "weft", "said"),
    [
        (0.8, 3.2, "warp .* too thin"),
        (3.2, 0.8, "warp .* too thick"),
        (2.0, 1.0, "weft .* too thin"),
        (2.0, 3.0, "weft .* too thick"),
        (4.5, 1.0, "ends touch"),
    ],
)
def test_each_fault_is_named_with_its_reason(warp: float, weft: float, said: str) -> None:
    """At a pitch of 4 mm, one fault at a time; every sentence says why."""
    spoken = " ".join(pairing_warnings(4, soft(warp), soft(weft)))
    assert re.search(said, spoken)
    assert ":" in spoken


@pytest.mark.parametrize(
    ("warp", "weft", "count"),
    [
        (0.34, 0.66, 0),
        (0.32, 0.68, 1),
        (0.66, 0.34, 0),
        (0.68, 0.32, 1),
        (0.5, 0.38, 0),
        (0.5, 0.37, 1),
        (0.5, 0.62, 0),
        (0.5, 0.63, 1),
    ],
)
def test_warnings_begin_where_our_limits_say(warp: float, weft: float, count: int) -> None:
    """Our own limits: a warp of 1/3 to 2/3 of the pitch (1 mm here), a weft of 3/4 to 5/4 of the gap."""
    assert len(pairing_warnings(1, soft(warp), soft(weft))) == count


def test_the_share_is_said() -> None:
    """Arithmetic: a weft of 1 mm in a gap of 2 mm is 50 % of it; in three figures the diameter."""
    assert "(soft, 1 mm) is 50% of the gap" in pairing_warnings(4, soft(2), soft(1))[0]


def test_a_compressed_weft_is_given_room_to_swell() -> None:
    """Half the gap when pressed may fill it when soft, so there is no warning; a quarter of it is too thin anyhow."""
    assert pairing_warnings(4, hard(2.0), hard(1.0)) == ()
    assert "even if it swells" in pairing_warnings(4, hard(2.0), hard(0.4))[0]


@pytest.mark.parametrize("per_inch", [4, 5, 6, 8, 10, 12, 14, 15, 16])
def test_usual_setts_an_inch_pass(per_inch: int) -> None:
    """14 to 16: G. Christie; 4 on school looms: E. V. Dobbs; the rest common practice, no source."""
    assert ladder_warnings(Fraction(per_inch) / Fraction("25.4")) == ()


@pytest.mark.parametrize("per_cm", ["2", "2.5", "3", "4", "5", "6"])
def test_usual_metric_setts_pass(per_cm: str) -> None:
    """Metric ladder of a yarn supplier's technical article."""
    assert ladder_warnings(Fraction(per_cm) / 10) == ()


@pytest.mark.parametrize(
    ("sett", "near"),
    [
        (Fraction(7) / Fraction("25.4"), "near"),
        (Fraction(9, 25), "9.144"),
        (Fraction(33, 2) / Fraction("25.4"), "16 an inch"),
        (Fraction(27, 2) / Fraction("25.4"), "14 an inch"),
    ],
)
def test_a_sett_off_the_ladder_is_said(sett: Fraction, near: str) -> None:
    """7, 9.144, 16 1/2 and 13 1/2 an inch are none of the usual ones; the sentence gives both systems."""
    (said,) = ladder_warnings(sett)
    assert near in said
    assert "per cm" in said


def test_three_per_cm_is_not_eight_an_inch() -> None:
    """Arithmetic: 3 per cm is 7.62 an inch; something between the two is off the ladder, and 3 per cm is nearest."""
    (said,) = ladder_warnings(Fraction("0.301"))
    assert "7.6454 an inch (3.01 per cm)" in said
    assert "3 per cm is near" in said


@pytest.mark.parametrize("sett", [Fraction(0), Fraction(-1, 3)])
def test_a_sett_of_nothing_is_refused(sett: Fraction) -> None:
    """Above zero, or no sentence about it."""
    with pytest.raises(FieldError):
        ladder_warnings(sett)
