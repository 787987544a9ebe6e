"""First guesses and a teacher's warnings."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.messages.roles import Pair
from layout.values.errors import FieldError
from layout.values.quantity import Origin, Quantity, assumed, computed, measured
from layout.yarns.pairing import Said, first_guess, ladder_warnings, pairing_said

_INCH = 25.4
_NE = 590.54  # tex of a single of count 1
_YD_LB = 496055  # tex x yards in a pound


def soft(mm: float) -> Quantity:
    """A soft thickness as given."""
    return computed(mm, "Given.")


def cord(singles: int, count: int = 12) -> Quantity:
    """How thick a cotton cord lies: 0.052 mm times the root of its tex, as those that makers name wrap (our own
    choice, between J. T. Taylor's 0.038 without compression and the 0.066 of a loose cord).
    """
    return soft(0.052 * math.sqrt(_NE / count * singles))


def firm(yards_in_a_pound: float) -> Quantity:
    """How thick a firm wool lies: 0.051 mm times the root of its tex (our own choice, between wraps packed to refusal
    at 0.040 and knitters' loose wraps at 0.072; gansey notes, "WPI", 2011).
    """
    return soft(0.051 * math.sqrt(_YD_LB / yards_in_a_pound))


def at(ends_an_inch: float, warp: Quantity, weft: Quantity | None = None) -> Said:
    """What is said of them at that sett."""
    return pairing_said(_INCH / ends_an_inch, warp, weft)


@given(st.floats(0.1, 10), st.floats(0.1, 10))
def test_the_guess_is_pairs_side_by_side(warp: float, weft: float) -> None:
    """American Tapestry Alliance: pitch = warp + weft; so it holds as many ends an inch as pairs lie in one."""
    assert first_guess(soft(warp), soft(weft)).per_mm.value * (warp + weft) == pytest.approx(1)


def test_half_the_wraps_hold_for_like_yarns_only() -> None:
    """Handbooks of balanced cloth: 24 wraps an inch are set at 12 ends. So it is for a weft as thick as the warp;
    a weft twice as thick asks for 8, and the rule is not for weft-faced work.
    """
    warp = soft(_INCH / 24)
    assert first_guess(warp, warp).per_mm.value * _INCH == pytest.approx(12)
    assert first_guess(warp, soft(_INCH / 12)).per_mm.value * _INCH == pytest.approx(8)


def test_a_guess_is_always_marked_as_one() -> None:
    """Even from measured wraps: only the wrap of the pair measures."""
    guess = first_guess(measured(1.0, "Wrapped.", 0.9, 1.1), measured(2.0, "Wrapped.", 1.9, 2.1)).per_mm
    assert guess.origin is Origin.ASSUMED
    assert any("first guess" in reason for reason in guess.assumptions)


@given(st.floats(0.2, 3), st.floats(0.2, 3), st.floats(0.5, 1), st.floats(1, 2), st.floats(0, 1), st.floats(0, 1))
def test_a_wrap_narrows_the_guess(
    warp: float, weft: float, low: float, high: float, below: float, above: float
) -> None:
    """Arithmetic: a thickness between narrower bounds gives a sett between narrower bounds."""
    wide = assumed(warp, "Label.", low * warp, high * warp)
    narrow = measured(warp, "Wrap.", warp * (1 - below * (1 - low)), warp * (1 + above * (high - 1)))
    before, after = (first_guess(each, soft(weft)).per_mm for each in (wide, narrow))
    assert before.low <= after.low * (1 + 1e-9)
    assert after.high <= before.high * (1 + 1e-9)


def test_the_guess_without_a_weft_holds_what_makers_set() -> None:
    """12/12 cotton at 10 ends an inch (E. Buckley 2015; a maker's page 2012), 20/6 at 14 (R. Mezoff 2018), 12/6 at 8
    (common teaching, from memory) lie between its bounds, and the likely sett within a third of each.
    """
    for warp, ends in ((cord(12), 10), (cord(6, count=20), 14), (cord(6), 8)):
        guess = first_guess(warp, None).per_mm
        assert guess.low < ends / _INCH < guess.high
        assert guess.value * _INCH == pytest.approx(ends, rel=1 / 3)


def test_what_to_wrap_next_is_what_is_known_least() -> None:
    """The yarn with the wider range; without a weft the weft; after both, both together."""
    wide, narrow = assumed(1.0, "Label.", 0.5, 1.5), assumed(1.0, "Label.", 0.9, 1.1)
    wrapped = measured(1.0, "Wrapped.", 0.9, 1.1)
    assert first_guess(wide, narrow).next is Pair.NEXT_WARP
    assert first_guess(narrow, wide).next is Pair.NEXT_WEFT
    assert first_guess(wrapped, narrow).next is Pair.NEXT_WEFT
    assert first_guess(narrow, wrapped).next is Pair.NEXT_WARP
    assert first_guess(wide, None).next is Pair.NEXT_WEFT
    assert first_guess(wrapped, wrapped).next is Pair.NEXT_BOTH


@given(st.floats(0.5, 20))
def test_the_ideal_pairing_gives_no_warning(pitch: float) -> None:
    """American Tapestry Alliance: warp near half the pitch, weft as thick as the gap."""
    assert pairing_said(pitch, soft(pitch / 2), soft(pitch / 2)) == ((), ())


@pytest.mark.parametrize(("warp", "ends"), [(cord(12), 10), (cord(6), 8), (cord(18), 6), (cord(6, count=20), 14)])
def test_usual_setts_are_passed_over(warp: Quantity, ends: int) -> None:
    """12/12 at 10 ends an inch (E. Buckley 2015), 12/12 about 10 and 12/18 about 6 (a maker's page 2012), 20/6 at 14
    (R. Mezoff 2018), 12/6 at 8 (common teaching, from memory).
    """
    assert at(ends, warp) == ((), ())


@pytest.mark.parametrize(
    ("strands", "count", "per_40_cm"), [(4, 20, 30), (7, 20, 22), (10, 20, 18), (13, 20, 16), (11, 10, 13)]
)
def test_aubusson_setts_are_close_and_not_warned_of(strands: int, count: int, per_40_cm: int) -> None:
    """CRAEFT, Aubusson e-learning: cotton 20/4 at 30 portees of 12 ends to 40 cm, 20/7 at 22, 20/10 at 18, 20/13 at 16,
    10/11 at 13; metric counts. The closest in use: at most a note, never a warning.
    """
    warp = soft(0.052 * math.sqrt(1000 / count * strands))
    assert pairing_said(400 / (12 * per_40_cm), warp, None).warnings == ()


def test_far_too_thin_is_said() -> None:
    """R. Mezoff 2018: 12/6 at 6 ends an inch with a weft of about 900 yd/lb: far too thin, both; 12/15 would suit."""
    said = at(6, cord(6), firm(900))
    assert "thin for tapestry" in said.notes[0]
    assert "too thin" in said.warnings[0]
    assert at(6, cord(15)) == ((), ())


@pytest.mark.parametrize(
    ("warp", "weft", "said"),
    [
        (0.4, 3.6, "warp.* too thin"),
        (3.2, 0.8, "warp.* too thick"),
        (2.0, 0.7, "weft.* too thin"),
        (2.0, 3.3, "weft.* too thick"),
        (4.5, 1.0, "ends touch"),
    ],
)
def test_each_fault_is_named_with_its_reason(warp: float, weft: float, said: str) -> None:
    """At a pitch of 4 mm, one fault at a time; every sentence says why."""
    spoken = " ".join(pairing_said(4, soft(warp), soft(weft)).warnings)
    assert re.search(said, spoken)
    assert ":" in spoken


@pytest.mark.parametrize(
    ("warp", "weft", "notes", "warnings"),
    [
        (0.119, 0.881, 0, 1), (0.121, 0.879, 1, 0), (0.249, 0.751, 1, 0), (0.251, 0.749, 0, 0),
        (0.669, 0.331, 0, 0), (0.671, 0.329, 1, 0), (0.749, 0.251, 1, 0), (0.751, 0.249, 0, 1),
        (0.5, 0.199, 0, 1), (0.5, 0.201, 1, 0), (0.5, 0.274, 1, 0), (0.5, 0.276, 0, 0),
        (0.5, 0.699, 0, 0), (0.5, 0.701, 1, 0), (0.5, 0.799, 1, 0), (0.5, 0.801, 0, 1),
    ],
)  # fmt: skip
def test_notes_and_warnings_begin_where_our_limits_say(warp: float, weft: float, notes: int, warnings: int) -> None:
    """Our limits, at a pitch of 1 mm: a warp of .12, .25, .67, .75 of it, a weft of .4, .55, 1.4, 1.6 of the gap."""
    found = pairing_said(1, soft(warp), soft(weft))
    assert (len(found.notes), len(found.warnings)) == (notes, warnings)


def test_the_share_is_said() -> None:
    """Arithmetic: a weft of 1 mm in a gap of 2 mm is 50 % of it."""
    assert "about 1 mm soft, is 50 % of the gap" in pairing_said(4, soft(2), soft(1)).notes[0]


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
