"""What follows from marks that were seen: lengths, the worst mark, the worst gap, and when nothing is said."""

from __future__ import annotations

import pytest
from hand_seen import measured_sheet

from layout.drawing.correction import Scale
from templates_gen.measuring.groups import Group, Mark


def number_of(mark: Mark) -> int:
    """The number of a mark."""
    number = mark.name.values["number"]
    assert isinstance(number, int)
    return number


def pushed(group: Group, mark: Mark) -> float:
    """Wind 17 stands 0.04 mm too far on, wind 5 0.03 mm too far back."""
    return {17: 0.04, 5: -0.03}.get(number_of(mark), 0.0)


def test_a_strip_of_240_mm_comes_out_as_its_scale_says() -> None:
    """The strip stands up the sheet: 240 mm at 99.85 % are 239.64 mm, sure to its share and to both end marks."""
    near, far = measured_sheet(Scale(0.9, 0.9985, 0.0)).groups
    assert near.length is not None
    assert near.length.nominal == pytest.approx(240)
    assert near.length.mm == pytest.approx(239.64)
    assert near.length.within == pytest.approx(((240 * 0.0002) ** 2 + 2 * 0.004**2) ** 0.5)
    assert far.length is not None
    assert far.length.nominal == pytest.approx(232)


def test_the_worst_mark_and_gap_are_named() -> None:
    """A mark that stands 0.04 mm off makes the gap before it too wide and the one behind it too narrow."""
    near = measured_sheet(off=pushed).groups[0]
    mark, off, within = near.worst
    assert (number_of(mark), off, within) == (17, 0.04, 0.004)
    assert {(number_of(gap.first), number_of(gap.second)): gap.off for gap in near.gaps if gap.off} == {
        (4, 5): -0.03,
        (5, 6): 0.03,
        (16, 17): 0.04,
        (17, 18): -0.04,
    }
    assert abs(near.worst_gap.off) == 0.04


def test_the_end_marks_take_part_in_the_length() -> None:
    """The last wind 0.05 mm too far out makes the strip so much longer."""
    near = measured_sheet(off=lambda _, mark: 0.05 if number_of(mark) == 30 else 0.0).groups[0]
    assert near.length is not None
    assert near.length.mm == pytest.approx(240.05)


@pytest.mark.parametrize(("lost", "enough"), [(6, True), (7, False)])
def test_with_fewer_than_four_fifths_nothing_is_said(lost: int, enough: bool) -> None:
    """Of 31 marks 25 are enough and 24 are not."""
    near = measured_sheet(off=lambda _, mark: None if number_of(mark) < lost else 0.0).groups[0]
    assert near.enough is enough
    assert len(near.found) == 31 - lost
    assert near.gaps[0].first.name.values["number"] == lost


def test_a_gap_needs_both_of_its_marks() -> None:
    """No gap reaches over a mark that was not found."""
    near = measured_sheet(off=lambda _, mark: None if number_of(mark) == 9 else 0.0).groups[0]
    pairs = [(number_of(gap.first), number_of(gap.second)) for gap in near.gaps]
    assert len(pairs) == 28
    assert all(two == one + 1 for one, two in pairs)


def test_without_a_scale_there_are_deviations_and_no_length() -> None:
    """A scan without a resolution shows how marks lie to each other."""
    sheet = measured_sheet(off=pushed, dpi=None)
    assert [row.length for row in sheet.groups] == [None, None]
    assert (sheet.across, sheet.up, sheet.scale) == (None, None, None)
    assert sheet.groups[0].worst[1] == 0.04


@pytest.mark.parametrize(("uneven", "even"), [(0.0199, True), (0.0201, False)])
def test_more_than_20_micrometres_are_not_even(uneven: float, even: bool) -> None:
    """Our own limit, as simulated scans with a slipping feed suggest it."""
    assert measured_sheet(uneven=uneven).even is even
