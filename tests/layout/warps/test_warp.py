from __future__ import annotations

from fractions import Fraction
from math import floor

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import plan_of

from layout.values.errors import FieldError
from layout.warps.warp import Warp

# The geometry is our own; its positions follow from the wanted ones, (k + 1/2) p - W/2 at mid-height, and are checked
# against these, against numbers computed by hand, and against counting mark by mark.

SLANTS, STARTS, PASSES = ("shared", "face straight"), ("left", "right"), ("face", "back")
setts = st.sampled_from(["2.5/cm", "3/cm", "8 epi", "7.5 epi", "11/10 cm", "12 epi", "5/cm"])
lengths = st.fractions(40, 312, max_denominator=8)  # with room for what is tied outside the limits


def warp_of(**weaving: object) -> Warp:
    """The warp of the plain kit with these keys of its weaving (and `sett`) changed."""
    sett = {"sett.given": weaving.pop("sett")} if "sett" in weaving else {}
    return plan_of({**sett, **{f"weaving.{key}": value for key, value in weaving.items()}}).warp


@st.composite
def warps(draw: st.DrawFn) -> Warp:
    """Any warp of the plain frame."""
    return warp_of(
        sett=draw(setts),
        width=f"{float(draw(lengths)):.3f} mm",
        slant=draw(st.sampled_from(SLANTS)),
        start=draw(st.sampled_from(STARTS)),
        first_pass=draw(st.sampled_from(PASSES)),
    )


def test_shared_slant_by_hand() -> None:
    """2.5 ends per cm over 20 cm: 25 winds of 8 mm, near marks from -100, far marks half a winding pitch on."""
    warp = warp_of(sett="2.5/cm", width="20 cm")
    assert (warp.winds, warp.ends, warp.pitch, warp.winding_pitch, warp.width) == (25, 50, 4, 8, 200)
    assert warp.near == tuple(-100 + 8 * j for j in range(26))
    assert warp.far == tuple(-96 + 8 * j for j in range(25))


def test_face_straight_by_hand() -> None:
    """The same with the face straight: both from -98, so the tie-off at 102 lies half a pitch outside the limit."""
    warp = warp_of(sett="2.5/cm", width="20 cm", slant="face straight")
    assert warp.near == tuple(-98 + 8 * j for j in range(26))
    assert warp.far == warp.near[:-1]
    assert warp.near[-1] == warp.width / 2 + warp.pitch / 2
    assert any("tie-off lies half a pitch outside" in note for note in warp.notes)


def test_back_first_face_straight_by_hand() -> None:
    """Wound behind first, it is the tie-on that lies outside, and each far mark stands over the next near one."""
    warp = warp_of(sett="2.5/cm", width="20 cm", slant="face straight", first_pass=PASSES[1])
    assert warp.near[0] == -102
    assert warp.far == warp.near[1:]
    assert any("tie-on lies half a pitch outside" in note for note in warp.notes)


@given(warps())
def test_ends_stand_even_at_mid_height(warp: Warp) -> None:
    """However it is wound, the middles of all passes are the wanted places of the ends, exactly."""
    passes = [*zip(warp.near, warp.far, strict=False), *zip(warp.far, warp.near[1:], strict=True)]
    middles = sorted((one + other) / 2 for one, other in passes)
    assert middles == [(k + Fraction(1, 2)) * warp.pitch - warp.width / 2 for k in range(warp.ends)]


@given(setts, lengths, st.sampled_from(SLANTS), st.sampled_from(PASSES))
def test_winding_from_the_right_mirrors(sett: str, width: Fraction, slant: str, first: str) -> None:
    """Begun on the right, every mark and every unit line is the mirror image."""
    words = f"{float(width):.3f} mm"
    left, right = (warp_of(sett=sett, width=words, slant=slant, first_pass=first, start=side) for side in STARTS)
    assert right.near == tuple(-x for x in left.near)
    assert right.far == tuple(-x for x in left.far)
    for end in ("near", "far"):
        assert right.unit_lines(end) == [(-x, total) for x, total in left.unit_lines(end)]


@given(setts, lengths)
def test_shared_marks_are_symmetric(sett: str, width: Fraction) -> None:
    """With the slant shared, the near marks and the far marks each mirror onto themselves."""
    warp = warp_of(sett=sett, width=f"{float(width):.3f} mm")
    for marks in (warp.near, warp.far):
        assert sorted(marks) == sorted(-x for x in marks)


@given(warps())
def test_totals_are_counted(warp: Warp) -> None:
    """A total is the number of marks from the starting limit up to its line; one on the line counts for the next."""
    start = -warp.toward * warp.width / 2
    for end, marks in (("near", warp.near), ("far", warp.far)):
        gone = [warp.toward * (mark - start) for mark in marks]
        for line, total in warp.unit_lines(end):  # type: ignore[arg-type]
            assert total == sum(1 for each in gone if 0 <= each < warp.toward * (line - start))


def test_eight_ends_an_inch_are_eight_in_every_inch() -> None:
    """Eight ends an inch: in one inch eight, not nine (as a tapestry teacher puts it), and four winds."""
    warp = warp_of(sett="8 epi", width="10 in")
    inch = Fraction(127, 5)
    for k in range(10):
        low = -warp.width / 2 + k * inch
        winds = [mark for mark in warp.near if low <= mark < low + inch]
        ends = [j for j in range(warp.ends) if low <= (j + Fraction(1, 2)) * warp.pitch - warp.width / 2 < low + inch]
        assert (len(winds), len(ends)) == (4, 8)
    assert [total for _, total in warp.unit_lines("near")][-1] == 40


@given(setts, lengths)
def test_a_width_is_taken_in_whole_winds(sett: str, width: Fraction) -> None:
    """As many winds as fit are taken, never more, and what is left over is said."""
    asked = Fraction(f"{float(width):.3f}")
    warp = warp_of(sett=sett, width=f"{float(width):.3f} mm")
    assert warp.winds == floor(asked / warp.winding_pitch)
    assert warp.width <= asked < warp.width + warp.winding_pitch
    assert bool(warp.notes) == (warp.width < asked)


def test_as_wide_as_fits() -> None:
    """Without a width the frame gives it: 40 cm less two sides of 25 mm and two margins of 15 mm is 32 cm."""
    assert warp_of(sett="2.5/cm", width="as wide as fits").width == 320


def test_less_than_one_wind_is_refused() -> None:
    """A weaving narrower than one wind is refused with the least there is; ten times that works."""
    with pytest.raises(FieldError, match=r"weaving\.width: needs room for one wind, 0\.8 cm at this sett") as caught:
        warp_of(sett="2.5/cm", width="0.7 cm")
    assert warp_of(sett="2.5/cm", width=caught.value.example.split('"')[1]).winds == 10


def test_too_many_marks_are_refused() -> None:
    """More than 5,000 marks on one strip are refused with a width that works, as close as it can be written."""
    wide = {"frame.outer_width": "3 m", "sett.given": "60/cm"}
    with pytest.raises(FieldError, match=r"weaving\.width: needs at most 5,000 marks a strip, got 8,\d{3}") as caught:
        plan_of({**wide, "weaving.width": "280 cm"})
    assert len(plan_of({**wide, "weaving.width": caught.value.example.split('"')[1]}).warp.near) in (4999, 5000)
