"""What is one and the same stays so when a float lies on either side of a rounding step."""

from __future__ import annotations

from typing import Any

import pytest
from cut_plans import stock_with
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics, plan_of

from layout.cutting.parts.comb_body import LIMIT_MARK, marks
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, filled
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.alike import alike, each_once, in_rows
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.places import arrows_on
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


@given(_STEPS, st.lists(_OFF, min_size=3, max_size=3), st.sampled_from((1, 2, 3, 6)))
def test_a_row_is_a_row(step: int, off: list[float], digits: int) -> None:
    """Its words stand in their order, wherever a rounding would part their heights; the row under it is another."""
    tie = (step + 0.5) * 10.0**-digits
    row = [Point(float(x), tie + each) for x, each in enumerate(off)]
    below = Point(-1.0, tie - 0.01)
    assert in_rows([row[1], below, row[2], row[0]], lambda at: at) == [row, [below]]


@given(_STEPS, _OFF, _OFF, st.sampled_from((1, 2, 3, 6)))
def test_numbers_are_one_to_a_micrometre(step: int, one: float, other: float, digits: int) -> None:
    """And no further."""
    tie = (step + 0.5) * 10.0**-digits
    assert alike([tie + one, 7.0], [7.0, tie + other])
    assert not alike([tie + one], [tie + other + 0.002])
    assert not alike([tie, tie], [tie])
    assert len(each_once([tie + one, tie + other, tie + 0.5])) == 2


class _Piece:
    """A piece that shows one arrow head whose middle lies at (x, 0)."""

    def __init__(self, x: float) -> None:
        self._head = filled([Point(1.0, 0.0), Point(-1.0, 1.0), Point(-1.0, -1.0)], Pen.SOLID)
        self._x = x

    def shapes(self) -> list[Shape]:
        """As it lies on its sheet."""
        return Placing(0, self._x, 0.0).shapes([self._head])


@given(_STEPS, _OFF, _OFF)
def test_an_arrow_that_two_pieces_show_is_one(step: int, one: float, other: float) -> None:
    """Where second decimals round up and down, too; one a fifth of a millimetre away is another."""
    tie = (step % 1000 + 0.5) * 1e-2
    pieces: list[Any] = [_Piece(tie + one), _Piece(tie + other), _Piece(tie + 0.2)]
    assert len(arrows_on(pieces)) == 2


@pytest.mark.parametrize("kerf", [0.135, 0.105, 0.065, 0.2])
@pytest.mark.parametrize("form", ["svg", "dxf"])
def test_a_table_is_read_row_by_row_with_any_kerf(kerf: float, form: str) -> None:
    """Half a kerf puts the figures of a row at half a micrometre, where their heights round up or down."""
    plan = plan_of({"sett": {"given": "6 per cm"}, "frame.outer_width": "30 cm", "weaving.winding": "figure eight"})
    outputs = Outputs(plan, font_metrics(), ["wrap-gauge-cut"], stock_with(kerf=kerf))
    (file,) = (name for name in outputs.files if name.endswith(form))
    output = outputs.output(file)
    assert findings(plan, output, read(output, write(output))).problems == ()


@pytest.mark.parametrize("kerf", [0.05, 0.15, 0.1])
def test_a_size_is_said_with_any_kerf(kerf: float) -> None:
    """A stick of 30 mm and a kerf of 0.05 mm is 30.05 mm wide, which is said as 30.1 and may be read as less."""
    plan = plan_of({"paper.size": "a4"})
    outputs = Outputs(plan, font_metrics(), ["shed-stick.pdf"], stock_with(kerf=kerf))
    (output,) = map(outputs.output, outputs.files)
    assert findings(plan, output, read(output, write(output))).problems == ()
