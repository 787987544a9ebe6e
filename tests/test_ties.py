"""What is one and the same stays so when a float lies on either side of a rounding step."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from layout.cutting.parts.comb_body import LIMIT_MARK, marks
from layout.drawing.shapes import Point
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.printed.openings import belongs
from templates_gen.writers.cutting.checks import repeated

_STEPS = st.integers(-4_000_000, 4_000_000)
_OFF = st.floats(-4e-10, 4e-10)


@given(_STEPS, _OFF, _OFF)
def test_a_unit_on_the_limit_is_one_mark(step: int, one: float, other: float) -> None:
    """Where sixth decimals round up and down, as anywhere: the limit counts, once."""
    tie = (step + 0.5) * 1e-6
    found = marks(5.0, [tie + other], [tie + one])
    assert [mark.length for mark in found if mark.x != 5.0] == [LIMIT_MARK]


@given(_STEPS, _OFF, _OFF)
def test_an_area_engraved_twice_is_found(step: int, one: float, other: float) -> None:
    """Midway between two fourth decimals too; an area a micrometre away is another."""
    tie = (step + 0.5) * 1e-4
    first, second, third = (
        [Point(tie + off, 0.0), Point(tie + 1, off), Point(tie, 1.0)] for off in (one, other, 0.001)
    )
    assert repeated([first, third, second])
    assert not repeated([first, third])


@given(st.floats(-500, 500), st.floats(-5e-7, 5e-7), st.floats(-5e-7, 5e-7))
def test_a_hole_at_the_edge_of_a_piece_is_where_it_is_drawn(edge: float, one: float, other: float) -> None:
    """A hole that touches the edge is asked for on the piece on which it stands, and on no other."""
    hole = Opening(edge - 1.0 + one, 0.0, 2.0, 2.0)
    box = (edge - 50.0, -10.0, edge + other, 10.0)
    assert belongs(hole, box, [hole])
    assert not belongs(hole, box, [])
    assert belongs(hole._replace(x=edge - 2.0), box, [])
    assert not belongs(hole._replace(x=edge), box, [hole._replace(x=edge)])
