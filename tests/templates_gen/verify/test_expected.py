"""The verifier's own computation of the marks, and how it finds a part again, against sums done by hand."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import kit_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, cross, line
from layout.drawing.sheet import Sheet
from templates_gen.verify.crosses import crosses_on, lie_of
from templates_gen.verify.printed.expected import expected, sett_is_sound

F = Fraction
INCH = F(127, 5)

# Three winds at a pitch of 4 mm, worked by hand: P = 8, W = 24, contacts written down one by one.
THREE_WINDS = {
    ("shared", "left", "face"): ((-12, -4, 4, 12), (-8, 0, 8)),
    ("shared", "left", "back"): ((-12, -4, 4, 12), (-8, 0, 8)),
    ("shared", "right", "face"): ((12, 4, -4, -12), (8, 0, -8)),
    ("face straight", "left", "face"): ((-10, -2, 6, 14), (-10, -2, 6)),
    ("face straight", "left", "back"): ((-14, -6, 2, 10), (-6, 2, 10)),
    ("face straight", "right", "face"): ((10, 2, -6, -14), (10, 2, -6)),
    ("face straight", "right", "back"): ((14, 6, -2, -10), (6, -2, -10)),
}


def wound(slant: str, start: str, first: str, width: str = "24 mm") -> dict[str, object]:
    """Changes to the kit for a weaving wound that way."""
    return {
        "weaving.width": width,
        "weaving.slant": slant,
        "weaving.start": start,
        "weaving.first_pass": first,
    }


@pytest.mark.parametrize("way", THREE_WINDS, ids=" ".join)
def test_three_winds_by_hand(way: tuple[str, str, str]) -> None:
    """Every way of winding three winds puts its contacts where they were computed by hand, in that order."""
    found = expected(kit_of(wound(*way)), F(1, 4), F(10))
    assert (found.near, found.far) == THREE_WINDS[way]
    assert found.limits == (-12, 12)
    assert found.start == (-12 if way[1] == "left" else 12)


def test_totals_by_hand() -> None:
    """Lines stand every 10 mm from the starting limit; a mark on a line belongs to the next unit.

    Distances from the limit are near 0, 8, 16, 24 and far 4, 12, 20: the far mark at 20 stands on the second line.
    """
    found = expected(kit_of(wound("shared", "left", "face")), F(1, 4), F(10))
    assert found.lines == {"near": ((-2, 2), (8, 3)), "far": ((-2, 1), (8, 2))}
    assert found.edges == {"near": (-12, -2, 8), "far": (-12, -2, 8)}


def test_totals_from_the_right_by_hand() -> None:
    """Wound from the right, lines and totals are the mirror image."""
    found = expected(kit_of(wound("shared", "right", "face")), F(1, 4), F(10))
    assert found.lines == {"near": ((2, 2), (-8, 3)), "far": ((2, 1), (-8, 2))}


def test_a_tie_on_outside_the_limit_is_not_counted() -> None:
    """Back first and face straight, the tie-on lies half a pitch outside; distances -2, 6, 14, 22 count from 6."""
    found = expected(kit_of(wound("face straight", "left", "back")), F(1, 4), F(10))
    assert found.lines["near"] == ((-2, 1), (8, 2))


def test_eight_an_inch_is_eight_in_every_inch() -> None:
    """Eight ends an inch are eight, not nine (a tapestry teacher's rule): four winds to each of four inches."""
    found = expected(kit_of(wound("shared", "left", "face", "4 in")), 8 / INCH, INCH)
    assert [total for _, total in found.lines["near"]] == [4, 8, 12, 16]
    assert [total for _, total in found.lines["far"]] == [4, 8, 12, 16]


def test_as_wide_as_fits_is_what_the_frame_leaves() -> None:
    """400 - 2 x 25 - 2 x 15 = 320 mm hold 40 winds of 8 mm."""
    found = expected(kit_of({"weaving.width": "as wide as fits"}), F(1, 4), F(10))
    assert (len(found.near), len(found.far), found.limits[1]) == (41, 40, 160)


@given(
    st.integers(1, 60),
    st.fractions(F(1, 20), F(2), max_denominator=60),
    st.sampled_from(["shared", "face straight"]),
    st.sampled_from(["left", "right"]),
    st.sampled_from(["face", "back"]),
)
def test_the_published_formula(winds: int, sett: Fraction, slant: str, start: str, first: str) -> None:
    """The contacts are those of the formula in any handbook's picture of a wound frame.

    Face first from the left, with s the share of the slant on the face pass: near A_j = -W/2 + (1/2 - s) P/2 + j P,
    far C_j = A_j + s P. Back first, the pass that comes first takes 1 - s; from the right, all is mirrored.
    """
    width = 2 * winds / sett
    if not 1 <= width <= 320:
        return
    s = F(1, 2) if slant == "shared" else F(0)
    on_first, pitch = (s if first == "face" else 1 - s), 2 / sett
    side = 1 if start == "left" else -1
    near = [side * (-width / 2 + (F(1, 2) - on_first) * pitch / 2 + j * pitch) for j in range(winds + 1)]
    far = [side * (-width / 2 + (F(1, 2) + on_first) * pitch / 2 + j * pitch) for j in range(winds)]
    found = expected(kit_of(wound(slant, start, first, f"{width} mm")), sett, F(10))
    assert list(found.near) == near
    assert list(found.far) == far


ROUGH = {"sett.given": None, "sett.readings": [{"pairs": 13, "window": "5 cm"}, {"pairs": 27, "measure": "10 cm"}]}


@pytest.mark.parametrize(
    ("changes", "per_cm", "unit_mm", "sound"),
    [
        ({}, F(5, 2), 40, True),  # at least 2.7 per cm: five winds to 4 cm are ten ends, six would be twelve: too many
        ({}, F(2), 40, False),  # four winds to 4 cm: counts off, but is not the largest that does
        ({}, F(3), 40, False),  # more than was measured
        ({}, F(27, 10), 40, False),  # 5.4 winds: does not count off
        ({"sett.as_measured": True}, F(27, 10), 40, True),
        ({"sett.as_measured": True}, F(5, 2), 40, False),
        ({"sett.loosest": True}, F(12, 5), 50, True),  # 2.6 per cm are 6.5 winds to 5 cm
        ({"sett.readings": None, "sett.given": "3 per cm"}, F(3), 40, True),
        ({"sett.readings": None, "sett.given": "3 per cm"}, F(5, 2), 40, False),
    ],
)
def test_whether_a_sett_follows_from_its_readings(
    changes: dict[str, object], per_cm: Fraction, unit_mm: int, sound: bool
) -> None:
    """Only the largest sett that counts off, or the one measured or given if the kit asks for it, is sound."""
    assert sett_is_sound(kit_of(ROUGH | changes), per_cm / 10, F(unit_mm)) is sound


P = Point
DATUM = (P(0, 0), P(100, 0), P(0, 10))


def test_a_quarter_turn_by_hand() -> None:
    """Crosses a quarter turn to the left and shifted by 50, 20 are found, and lead back to the part."""
    lie, rest = lie_of(DATUM, (P(50, 20), P(50, 120), P(40, 20)))
    assert rest == pytest.approx(0, abs=1e-12)
    assert lie.back(P(45, 70)) == pytest.approx(P(50, 5))


@given(st.floats(-360, 360), st.floats(-500, 500), st.floats(-500, 500))
def test_any_turn_and_shift(degrees: float, dx: float, dy: float) -> None:
    """However a part lies, its points come back to a thousandth of a micrometre."""
    placing = Placing(degrees, dx, dy)
    lie, rest = lie_of(DATUM, placing.points(DATUM))
    (there,) = placing.points([P(33, 7)])
    assert rest < 1e-6
    assert math.dist(lie.back(there), (33, 7)) < 1e-6


@pytest.mark.parametrize(
    ("crosses", "rest"),
    [
        ([P(0, 0), P(97, 0), P(0, 9.7)], 3.0),  # 97 %: the far end is 3 mm short
        ([P(0, 0), P(100, 0), P(0, -10)], 20.0),  # mirrored: the third point is on the other side
        ([P(100, 0), P(0, 0), P(100, 10)], 20.0),  # turned half round, yet not turned but mirrored
        ([P(0, 0), P(100, 0), P(0.01, 10)], 0.01),  # one cross aside
    ],
)
def test_what_is_not_a_turn_leaves_a_rest(crosses: list[Point], rest: float) -> None:
    """A part that was scaled, mirrored or bent leaves the rest that a ruler would show."""
    assert lie_of(DATUM, crosses)[1] == pytest.approx(rest, rel=0.01)


def test_only_crosses_are_taken_for_crosses() -> None:
    """Two equal hairs with one middle at right angles make a cross; register lines and lone hairs do not."""
    shapes = (
        line(P(0, 5), P(200, 5), Pen.REGISTER),
        *cross(P(10, 10), 0.6, Pen.REGISTER),
        line(P(0, 6), P(200, 6), Pen.REGISTER),
        *cross(P(20, 10), 0.6, Pen.MARK),  # another pen
        line(P(29, 10), P(31, 10), Pen.REGISTER),
        line(P(30, 8), P(30, 12), Pen.REGISTER),  # another length
        line(P(39, 10), P(41, 10), Pen.REGISTER),
        line(P(40, 9.5), P(40, 11.5), Pen.REGISTER),  # another middle
        line(P(49, 9), P(51, 11), Pen.REGISTER),
        line(P(50, 8.585786), P(50, 11.414214), Pen.REGISTER),  # not at right angles
        *cross(P(60, 10), 4, Pen.REGISTER),
    )
    assert crosses_on(Sheet("", 200, 20, shapes)) == [P(10, 10), P(60, 10)]
