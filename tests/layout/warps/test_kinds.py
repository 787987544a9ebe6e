"""Warps of every kind against positions computed by hand, and what must hold of all of them alike."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import NAILS, NOTCHED, PEGGED, plan_of

from layout.values.errors import FieldError
from layout.warps.pegged import in_outer_row
from layout.warps.warp import Warp

F = Fraction
KINDS: dict[str, dict[str, object]] = {
    "wound": {},
    "wound, face straight, back first": {"weaving.slant": "face straight", "weaving.first_pass": "back"},
    "notched": NOTCHED,
    "notched already, every second": NOTCHED | {"frame.notch_density": "5 per cm"},
    "notched already, two to a notch": NOTCHED | {"frame.notch_density": "1.25 per cm"},
    "pegged": PEGGED,
    "nailed": NAILS,
}


def warp_of(kind: str, width: str = "20 mm", **weaving: object) -> Warp:
    """A warp at 2.5 ends per cm, a pitch of 4 mm."""
    return plan_of(KINDS[kind] | {"weaving.width": width} | {f"weaving.{k}": v for k, v in weaving.items()}).warp


# Five and six ends at a pitch of 4 mm, worked by hand. Six: W = 24, ends at -10, -6, -2, 2, 6, 10.
BY_HAND: dict[str, dict[int, tuple[tuple[float, ...], tuple[float, ...]]]] = {
    "notched": {6: ((-10, -6, -2, 2, 6, 10),) * 2, 5: ((-8, -4, 0, 4, 8),) * 2},
    "notched already, every second": {6: ((-10, -6, -2, 2, 6, 10),) * 2, 5: ((-8, -4, 0, 4, 8),) * 2},
    "notched already, two to a notch": {6: ((-10, -2, 6), (-10, -2, 6, 14)), 5: ((-8, 0, 8), (-8, 0, 8))},
    "pegged": {6: ((-12, -4, 4, 12), (-8, 0, 8)), 5: ((-10, -2, 6), (-6, 2, 10))},
    "nailed": {6: ((-12, -4, 4, 12), (-8, 0, 8)), 5: ((-10, -2, 6), (-6, 2, 10))},
    "wound": {6: ((-12, -4, 4, 12), (-8, 0, 8)), 5: ((-10, -2, 6), (-6, 2, 10))},
    "wound, face straight, back first": {6: ((-14, -6, 2, 10), (-6, 2, 10)), 5: ((-12, -4, 4), (-4, 4, 12))},
}


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("ends", [5, 6])
def test_marks_by_hand(kind: str, ends: int) -> None:
    """Where the marks lie for an even number of ends and for an odd one, begun on the left and on the right."""
    near, far = BY_HAND[kind][ends]
    for side, turn in (("left", 1), ("right", -1)):
        warp = warp_of(kind, f"{4 * ends} mm", tie_off="far end" if ends % 2 else "near end", start=side)
        assert (warp.ends, warp.width, len(warp.passes)) == (ends, 4 * ends, ends)
        assert warp.near == tuple(turn * F(x) for x in near)
        assert warp.far == tuple(turn * F(x) for x in far)


def test_passes_by_hand() -> None:
    """Two ends to a notch: up upright in the first notch, down to it from the next far one, and on."""
    passes = warp_of("notched already, two to a notch", "16 mm").passes
    assert [(each.near, each.far, each.direction) for each in passes] == [
        (-6, -6, "up"),
        (-6, 2, "down"),
        (2, 2, "up"),
        (2, 10, "down"),
    ]
    pegged = warp_of("pegged", "12 mm", tie_off="far end").passes  # pegs at -6, 2 and -2, 6, each 2.5 mm thick
    assert [(float(each.near), float(each.far)) for each in pegged] == [(-4.75, -3.25), (0.75, -0.75), (3.25, 4.75)]


ways = st.fixed_dictionaries(
    {
        "start": st.sampled_from(["left", "right"]),
        "tie_off": st.sampled_from(["near end", "far end", "either end"]),
    }
)
widths = st.integers(16, 319).map(lambda mm: f"{mm} mm")


@given(st.sampled_from(list(KINDS)), widths, ways)
def test_every_kind_brings_the_ends_where_they_are_wanted(kind: str, width: str, way: dict[str, Any]) -> None:
    """At mid-height every end stands at (k + 1/2) p - W/2, whatever the kind of frame and the way of winding."""
    warp = warp_of(kind, width, **way)
    middles = tuple((each.near + each.far) / 2 for each in warp.passes)
    assert middles[:: warp.toward] == warp.end_positions
    assert warp.end_positions == tuple((k + F(1, 2)) * 4 - F(4 * warp.ends, 2) for k in range(warp.ends))


@given(st.sampled_from(list(KINDS)), widths, ways)
def test_where_the_warp_is_tied_off(kind: str, width: str, way: dict[str, Any]) -> None:
    """The passes go up and down by turns from the near end, so that an odd number ends at the far end."""
    warp = warp_of(kind, width, **way)
    assert [each.direction for each in warp.passes] == ["up" if k % 2 == 0 else "down" for k in range(warp.ends)]
    room = int(width.split()[0])
    odd = {"near end": (0,), "far end": (1,), "either end": (0, 1)}[way["tie_off"]]
    assert warp.ends % 2 in odd
    assert room - 4 * (3 - len(odd)) < warp.width <= room


SYMMETRIC = ("wound", "notched", "notched already, every second", "pegged", "nailed")


@given(st.sampled_from(SYMMETRIC), widths, ways)
def test_marks_are_symmetric(kind: str, width: str, way: dict[str, Any]) -> None:
    """Tied off at the near end each frame end mirrors onto itself; at the far end, one mirrors onto the other."""
    warp = warp_of(kind, width, **way)
    near, far = set(warp.near), set(warp.far)
    if warp.ends % 2 == 0 or warp.kind == "notched":
        assert (near, far) == ({-x for x in near}, {-x for x in far})
    else:
        assert near == {-x for x in far}
    assert set(warp.end_positions) == {-x for x in warp.end_positions}


@given(st.sampled_from(list(KINDS)), widths, ways)
def test_winding_from_the_right_mirrors_every_kind(kind: str, width: str, way: dict[str, Any]) -> None:
    """Begun on the other side, marks and passes are mirrored, and the order of winding stays."""
    left, right = (warp_of(kind, width, **way | {"start": side}) for side in ("left", "right"))
    assert (left.near, left.far) == (tuple(-x for x in right.near), tuple(-x for x in right.far))
    assert [each._replace(near=-each.near, far=-each.far) for each in left.passes] == list(right.passes)


@given(st.sampled_from(list(KINDS)), widths, ways)
def test_totals_are_counted_on_every_kind(kind: str, width: str, way: dict[str, Any]) -> None:
    """A total is the number of marks from the starting limit up to its line; one on the line counts for the next."""
    warp = warp_of(kind, width, **way)
    start = -warp.toward * warp.width / 2
    for end in ("near", "far"):
        gone = [warp.toward * (mark - start) for mark in warp.marks(end)]  # type: ignore[arg-type]
        for line, total in warp.unit_lines(end):  # type: ignore[arg-type]
            assert total == sum(1 for each in gone if 0 <= each < warp.toward * (line - start))


@pytest.mark.parametrize("start", ["left", "right"])
@pytest.mark.parametrize("first", ["face", "back"])
def test_layers_follow_from_the_way_of_winding(start: str, first: str) -> None:
    """The end that is laid first has the layer of the first pass, on the side where winding begins; then by turns."""
    layers = warp_of("wound", "24 mm", start=start, first_pass=first).layers
    other = {"face": "back", "back": "face"}[first]
    in_order = (first, other) * 3
    assert layers == (in_order if start == "left" else in_order[::-1])


@pytest.mark.parametrize("kind", ["notched", "notched already, two to a notch", "pegged", "nailed"])
def test_between_notches_and_pegs_there_are_no_winds(kind: str) -> None:
    """All ends lie on the face, and what counts winds says that there are none."""
    warp = warp_of(kind)
    assert set(warp.layers) == {"face"}
    assert (warp.winds, warp.winding_pitch, warp.sett.winds_per_unit) == (None, None, None)


def test_an_odd_wound_warp_has_a_pass_more_than_its_winds() -> None:
    """Eleven ends are five winds and a pass, tied off at the far end."""
    planned = plan_of({"weaving.width": "44 mm", "weaving.tie_off": "far end"})
    assert (planned.warp.winds, planned.warp.ends) == (5, 11)
    assert planned.count_words == "5 winds and one pass, 11 ends"


def test_every_second_peg_stands_in_the_outer_row() -> None:
    """Rows are staggered: the first peg is an inner one, the second an outer one, and so on."""
    assert [in_outer_row(k) for k in range(4)] == [False, True, False, True]


def test_doubled_ends_change_threads_and_no_marks() -> None:
    """Of ten ends the outer two at each side doubled are 14 threads; all doubled as well, 28. No mark moves."""
    plain = warp_of("wound", "40 mm")
    sides = warp_of("wound", "40 mm", doubled_selvedges=2)
    both = warp_of("wound", "40 mm", doubled_selvedges=2, doubled_warp=True)
    assert plain.threads == (1,) * 10
    assert sides.threads == (2, 2, 1, 1, 1, 1, 1, 1, 2, 2)
    assert sum(both.threads) == 28
    assert (plain.near, plain.far) == (sides.near, sides.far) == (both.near, both.far)


def test_more_doubled_than_there_are_is_refused() -> None:
    """Both sides together cannot double more ends than there are."""
    with pytest.raises(FieldError, match=r"weaving\.doubled_selvedges: needs at most half of the 4 ends .* got 3"):
        warp_of("wound", "16 mm", doubled_selvedges=3)


def test_pegs_that_would_touch_are_refused_and_thick_ones_told() -> None:
    """At a pitch of 4 mm a peg stands every 8 mm: 7 mm thick leaves a millimetre of wood, thicker is refused."""
    thick = plan_of(PEGGED | {"frame.peg_diameter": "7 mm"})
    assert any("(7 mm) exceeds the pitch (4 mm)" in warning for warning in thick.warnings)
    assert plan_of(PEGGED).warnings == ()
    with pytest.raises(FieldError, match=r"frame\.peg_diameter: needs pegs at most 7 mm thick"):
        plan_of(PEGGED | {"frame.peg_diameter": "7.1 mm"})
