"""Wrap readings taken together: their common range, and the report where there is none."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.sett.sett import SettInput, WrapReading, take_sett
from layout.values.errors import FieldError
from layout.values.units import Length, say_number
from tests.setts import INCH, counted, setts, true_of, windows


def test_the_loosest_stands_with_a_warning() -> None:
    """The smallest n/w stands alone where the readings contradict each other."""
    sett = counted((13, "5 cm"), (31, "10 cm"), loosest=True)
    assert (sett.low, sett.high) == (Fraction(26, 100), Fraction(28, 100))
    assert "contradict" in sett.warnings[0]
    assert "13 pairs in a window of 5 cm" in sett.warnings[0]


def test_the_loosest_of_readings_that_agree_says_what_it_costs() -> None:
    """Without contradiction the key only loses what the finer reading knew."""
    sett = counted((13, "5 cm"), (27, "10 cm"), loosest=True)
    assert sett.low == Fraction(26, 100)
    assert "at least 2.7 ends per cm" in sett.warnings[0]
    assert counted((13, "5 cm"), loosest=True).warnings == ()


CONTRADICTIONS = [
    # Worked by hand: 2.6..2.8 against 3.1..3.2 is a gap of 0.3, 10.7 % of 2.8.
    (
        [(13, "5 cm"), (31, "10 cm")],
        "reading 2, 31 pairs | against reading 1, 13 pairs | 0.3 ends per cm (10.7 %)",
    ),
    # 2..2.2 and 2.2..2.4 share no sett, for the first stays below 2.2.
    ([(10, "5 cm"), (11, "5 cm")], "only touch | miscounted by 1"),
    # 3.4..3.6 against 2.7..2.8: 0.6 of 2.8; 13 pairs in 5 cm would agree: 4 too many.
    ([(13, "5 cm"), (27, "10 cm"), (17, "5 cm")], "reading 3 as the odd | (21.4 %) | squeezed | 4 (too many)"),
    # 1.8..2 against 2.7..2.8: 0.7 of 2; 13 in 5 cm would agree: 4 too few.
    ([(9, "5 cm"), (13, "5 cm"), (27, "10 cm")], "reading 1 as the odd | (35 %) | stretched | 4 (too few)"),
    # Two pairs of readings against each other: no single one is odd.
    ([(13, "5 cm"), (13, "5 cm"), (17, "5 cm"), (17, "5 cm")], "reading 3, | against reading 1,"),
    # 10..11 against 12..13 epi.
    ([(10, "1 in"), (12, "1 in")], "a gap of 1 epi (9.1 %)"),
    # 10..11 epi against 5..5.2 per cm, 12.7 epi: in unlike units the gap, 15.5 % of 11, is said in per cent alone.
    (
        [(10, "1 in"), (25, "5 cm")],
        "25 pairs in a window of 5 cm (5 to less than 5.2 ends per cm) | (10 to less than 11 epi), a gap of 15.5 %:",
    ),
    # 6..7 epi, 2.6..2.8 per cm (6.6..7.1 epi), and 3.4..3.6 per cm: others from the second to the first.
    (
        [(6, "1 in"), (13, "5 cm"), (17, "5 cm")],
        "reading 3 as | where all others say 2.6 ends per cm to less than 7 epi, a gap of 23.4 %",
    ),
]


@pytest.mark.parametrize(("readings", "says"), CONTRADICTIONS)
def test_contradicting_readings_are_reported_never_averaged(readings: list[tuple[int, str]], says: str) -> None:
    """The refusal names the odd one out (else the two that disagree most), the gap, and what it implies."""
    with pytest.raises(FieldError, match=r"^sett\.readings: needs .*; for example .*loosest = true") as caught:
        counted(*readings)
    for words in says.split(" | "):
        assert words in str(caught.value)


@given(st.lists(st.tuples(st.integers(3, 30), windows), min_size=2, max_size=4))
def test_a_contradiction_is_told_in_the_units_of_the_readings(stated: list[tuple[int, Length]]) -> None:
    """Readings in inches alone are never answered in centimetres, nor the other way; each number of a span is one of
    the readings' own, worked out here from pairs and window.
    """
    readings = tuple(WrapReading(pairs, over, measured=False) for pairs, over in stated)
    assume(max(each.low for each in readings) >= min(each.high for each in readings))
    with pytest.raises(FieldError) as caught:
        take_sett(SettInput(readings))
    assert isinstance(caught.value.got, Message)
    said, inches = ENGLISH.words_of(caught.value.got), {reading.over.imperial for reading in readings}
    assert "ends per cm" not in said or False in inches
    assert "epi" not in said or True in inches
    own = {
        say_number((pairs + more) * (INCH if over.imperial else 10) / over.mm)
        for pairs, over in stated
        for more in (0, 1)
    }
    spans = re.findall(r"([\d.]+)(?: epi| ends per cm)? to less than ([\d.]+)", said)
    assert spans
    assert {number for span in spans for number in span} <= own


@given(setts, st.lists(windows, min_size=1, max_size=6))
def test_readings_of_one_sett_agree_on_it(sett: Fraction, chosen: list[Length]) -> None:
    """Whole counts of one sett in any windows leave that sett in their common range."""
    readings = tuple(true_of(sett, over) for over in chosen)
    assume(min(reading.pairs for reading in readings) >= 1)
    taken = take_sett(SettInput(readings, as_measured=True))
    assert taken.high is not None
    assert taken.low <= sett < taken.high
    assert take_sett(SettInput(readings[::-1], as_measured=True, marking_unit=taken.unit)).low == taken.low


@given(setts, st.lists(windows, min_size=2, max_size=5), st.data())
def test_a_count_that_cannot_be_is_the_odd_one_out(sett: Fraction, chosen: list[Length], data: st.DataObject) -> None:
    """One reading of twice the sett, among others that agree, is the one that is named."""
    readings = [true_of(sett, over) for over in chosen]
    assume(min(reading.pairs for reading in readings) >= 2)
    odd = data.draw(st.integers(0, len(readings)))
    over = data.draw(windows)
    readings.insert(odd, WrapReading(2 * int(2 * sett * over.mm) + 4, over, measured=True))
    with pytest.raises(FieldError, match=f"reading {odd + 1} as the odd one out"):
        take_sett(SettInput(tuple(readings)))


def test_no_readings_at_all_are_refused() -> None:
    """Neither readings nor a sett given leave nothing to take."""
    with pytest.raises(FieldError, match=r"^sett\.readings: needs at least one reading, got nothing"):
        take_sett(SettInput())
