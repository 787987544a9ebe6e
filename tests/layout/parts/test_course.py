"""The passes that a picture shows, written down by hand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import NOTCHED, PEGGED, plan_of

from layout.parts.winding.shown_passes import ShownPass, ShownPasses, shown_passes


def drawn(changes: dict[str, object], step: float = 4, shown: int = 4, gap: float = 20) -> ShownPasses:
    """The course of a kit's warp."""
    return shown_passes(plan_of(changes).warp, step, shown, gap)


def test_two_winds_by_hand() -> None:
    """Two winds at 4 mm a pitch, shared: near -8, 0, 8 and far -4, 4; up on the face, down behind."""
    way = drawn({"weaving.width": "16 mm"})
    assert way.legs == (
        ShownPass(0, -8, -4, "face", True, "face"),
        ShownPass(1, 0, -4, "back", False, "back"),
        ShownPass(2, 0, 4, "face", True, "face"),
        ShownPass(3, 8, 4, "back", False, "back"),
    )
    assert (way.left_out, way.half, way.scale) == (0, 8, 1)


def test_from_the_right_and_back_first_by_hand() -> None:
    """Everything on the other side, and behind first; at 8 mm a pitch everything is twice as wide."""
    way = drawn({"weaving.width": "16 mm", "weaving.start": "right", "weaving.first_pass": "back"}, step=8)
    assert way.legs[:2] == (ShownPass(0, 16, 8, "back", True, "back"), ShownPass(1, 0, 8, "face", False, "face"))
    assert way.scale == 2


def test_what_is_left_out_by_hand() -> None:
    """50 ends, four drawn on either side of 20 mm: 42 left out; the last pass is the 50th, down to the right limit."""
    way = drawn({})
    assert [[leg.number for leg in group] for group in way.groups] == [[0, 1, 2, 3], [46, 47, 48, 49]]
    assert (way.left_out, way.half, way.gap) == (42, 26, (-10, 10))
    assert way.groups[1][-1] == ShownPass(49, 26, 22, "back", False, "back")


def test_notches_and_pegs_by_hand() -> None:
    """Between notches every pass stands upright on the face; pegs of 2.5 mm leave 1.5 of 4 mm to lean over."""
    assert drawn(NOTCHED | {"weaving.width": "8 mm"}).legs == (
        ShownPass(0, -2, -2, "face", True, "face"),
        ShownPass(1, 2, 2, "face", False, "face"),
    )
    first, second = drawn(PEGGED | {"weaving.width": "8 mm"}).legs
    assert (first.near, first.far) == (-4 + 1.25, 0 - 1.25)
    assert (second.near, second.far) == (4 - 1.25, 0 + 1.25)


@given(st.integers(8, 700), st.sampled_from(["near end", "far end"]), st.sampled_from(["left", "right"]))
def test_drawn_and_left_out_are_the_whole_warp(mm: int, tie_off: str, start: str) -> None:
    """Whatever the width: the passes drawn and those left out are all there are, an even number left out."""
    wide = {"frame.outer_width": "80 cm", "weaving.width": f"{mm + 8} mm"}
    plan = plan_of(wide | {"weaving.tie_off": tie_off, "weaving.start": start})
    way = shown_passes(plan.warp, 4, 4, 20)
    assert len(way.legs) + way.left_out == plan.warp.ends
    assert way.left_out % 2 == 0
    assert [leg.layer for leg in way.legs] == [plan.warp.passes[leg.number].layer for leg in way.legs]
    xs = [plan.warp.toward * (leg.near + leg.far) for leg in way.legs]
    assert xs == sorted(xs)
    assert way.half == pytest.approx(-xs[0] / 2 + 2)
