"""Cartoon paper: its lines where the ends and beads are, its tens, numbers and words; and when there is none."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
import shapely
from golden import listed, matches
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import font_metrics, plan_of

from layout.drawing.pane import OnSheet, Pane
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.parts.grid import drawing_of, paned
from layout.parts.grid_size import LEAST_CELL, Grid, grid_of, left_out, notes_for, remarks_for
from layout.plan import Plan
from layout.products import suiting
from layout.values.errors import LayoutError
from layout.values.units import read_length

SMALL = Grid(12, 23, Fraction(4), Fraction(5, 2))
INCH = Fraction("25.4")
grids = st.builds(
    Grid,
    st.integers(1, 240),
    st.integers(1, 240),
    st.fractions(LEAST_CELL, 60, max_denominator=100),
    st.fractions(LEAST_CELL, 60, max_denominator=100),
)


def part_of(grid: Grid, pane: Pane | None = None, on: OnSheet | None = None) -> Part:
    """The grid, or a pane of it."""
    drawn = paned(grid, ("One column to an end.",), ("Woven from its face.",), ENGLISH, font_metrics())
    return drawn.draw(pane or drawn.whole, on)


def lines(part: Part, axis: int, *pens: Pen) -> list[float]:
    """Where the lines of these pens stand (axis 0, upright) or lie (axis 1), in order."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen in pens]
    return sorted(path.start[axis] for path in paths if path.start[axis] == path.steps[0].end[axis])


def test_a_small_grid_is_as_it_was() -> None:
    """Twelve ends and twenty-three beads: the drawing that a person has looked at, whole and in a pane."""
    assert matches("weaving-grid", listed(part_of(SMALL)))
    pane = Pane(-10.0, 9.0, 24.0, 40.0, ("left", "bottom"), (Point(-2.0, 13.75), Point(6.0, 13.75)), 18.0, 34.0)
    assert matches("weaving-grid-pane", listed(part_of(SMALL, pane, OnSheet(5, 3, 3))))
    assert matches("weaving-grid-turned", listed(part_of(SMALL, None, OnSheet(turned=True, says=True))))


@given(grids)
@settings(max_examples=40, deadline=None)
def test_a_column_lies_about_every_end(grid: Grid) -> None:
    """End k lies at (k + 1/2) p - W/2: its column reaches half a pitch to either side, and there are no others."""
    upright = lines(part_of(grid), 0, Pen.GRID, Pen.GRID_TEN, Pen.LIMIT, Pen.CENTRE)
    if grid.columns % 2:
        upright.remove(0.0)  # the centre runs through an end
    p, w = float(grid.pitch), grid.columns * float(grid.pitch)
    ends = [(k + 0.5) * p - w / 2 for k in range(grid.columns)]
    assert upright[:-1] == pytest.approx([end - p / 2 for end in ends], abs=1e-9)
    assert upright[1:] == pytest.approx([end + p / 2 for end in ends], abs=1e-9)


@given(grids)
@settings(max_examples=40, deadline=None)
def test_a_row_is_a_bead_high(grid: Grid) -> None:
    """The rows lie from 0 up, each as high as a bead, and a centre line at half the height."""
    level = lines(part_of(grid), 1, Pen.GRID, Pen.GRID_TEN, Pen.LIMIT, Pen.CENTRE)
    middle = float(grid.height / 2)
    level.remove(min(level, key=lambda y: abs(y - middle))) if grid.rows % 2 else None
    assert level == pytest.approx([j * float(grid.bead) for j in range(grid.rows + 1)], abs=1e-9)
    assert middle in lines(part_of(grid), 1, Pen.CENTRE)


def test_limits_and_centres_are_bold_and_tens_stronger() -> None:
    """By hand: 12 columns of 4 mm from -24 to 24, tens after 40 mm; 23 rows of 2.5 mm up to 57.5, tens at 25 and 50."""
    part = part_of(SMALL)
    assert lines(part, 0, Pen.LIMIT) == [-24, 24]
    assert lines(part, 0, Pen.CENTRE) == [0]
    assert lines(part, 0, Pen.GRID_TEN) == [16]
    assert lines(part, 1, Pen.LIMIT) == [0, 57.5]
    assert lines(part, 1, Pen.CENTRE) == [28.75]
    assert lines(part, 1, Pen.GRID_TEN) == [25, 50]


def test_only_what_lies_under_another_piece_is_grey() -> None:
    """By hand: from x 18 to 24 and, left of that, from y 34 to 40; nothing of a whole grid."""
    pane = Pane(-10.0, 9.0, 24.0, 40.0, ("left", "bottom"), (), 18.0, 34.0)
    grey = [shape for shape in part_of(SMALL, pane).shapes if isinstance(shape, Region) and shape.pen is Pen.TINT]
    areas = shapely.union_all([shapely.Polygon(shape.contours[0].points()) for shape in grey])
    assert areas.equals(shapely.union(shapely.box(18, 9, 24, 40), shapely.box(-10, 34, 18, 40)))
    assert not [shape for shape in part_of(SMALL).shapes if isinstance(shape, Region)]


def test_words_are_upright_on_a_turned_piece() -> None:
    """Laid by a quarter turn, every word but the centre's at the rows reads level, the numbers of the columns too."""
    part = part_of(SMALL, None, OnSheet(turned=True, says=True))
    laid = [shape for shape in Placing(90).shapes(part.shapes) if isinstance(shape, Text)]
    assert {text.angle for text in laid if text.words != "centre"} == {0.0}
    assert {text.words for text in laid} >= {"10", "20", "centre", "every ten"}


@given(grids)
@settings(max_examples=30, deadline=None)
def test_every_tenth_line_has_its_number(grid: Grid) -> None:
    """Under column line n, centred, and beside row line n."""
    part, metrics = part_of(grid), font_metrics()
    texts = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    under = {t.words: t.at.x + metrics.width(t.words, t.size) / 2 for t in texts if t.at.y < -2.5}
    beside = {t.words: t.at.y for t in texts if t.at.y > -2.5}
    wanted = {str(n): float(n * grid.pitch - grid.width / 2) for n in range(10, grid.columns + 1, 10)}
    assert under == pytest.approx(wanted)
    rows = {str(n): float(n * grid.bead) for n in range(10, grid.rows + 1, 10)}
    assert beside == pytest.approx(rows, abs=metrics.cap * texts[0].size if texts else 1)


def test_it_is_found_by_four_crosses() -> None:
    """One outside each corner, all the same way off it, so that W and H can be proven over all joints."""
    part = part_of(SMALL)
    xs, ys = sorted({x for x, _ in part.datum}), sorted({y for _, y in part.datum})
    assert len(part.datum) == 4
    assert xs == pytest.approx([-28.5, 28.5])
    assert ys == pytest.approx([-4.5, 62])


@given(grids, st.floats(-400, 400), st.floats(0, 800))
@settings(max_examples=60)
def test_a_joint_moves_little_and_off_every_line(grid: Grid, x: float, y: float) -> None:
    """Our own rule: crosses stand at least 0.2 mm from any line, and no further than 4 mm from where they were."""
    moved = paned(grid, (), (), ENGLISH, font_metrics()).snap(Point(x, y))
    assert math.dist(moved, (x, y)) < 4 * math.sqrt(2) + 1e-9
    for at, cell, start in ((moved.x, grid.pitch, -grid.width / 2), (moved.y, grid.bead, Fraction(0))):
        part = float((Fraction(at) - start) / cell) % 1
        assert min(part, 1 - part) * float(cell) > 0.2


@given(grids, st.floats(-400, 400), st.floats(0, 800))
@settings(max_examples=60)
def test_an_edge_moves_little_and_off_every_line(grid: Grid, x: float, y: float) -> None:
    """Our own rule: edges keep 0.1 mm from any line, the centre lines too, and move by 2 mm at most."""
    moved = paned(grid, (), (), ENGLISH, font_metrics()).clear(Point(x, y))
    assert max(abs(moved.x - x), abs(moved.y - y)) <= 2 + 1e-9
    for at, cell, start in ((moved.x, grid.pitch, -grid.width / 2), (moved.y, grid.bead, Fraction(0))):
        part = float((Fraction(at) - start) / cell * 2) % 1  # of half cells: with an odd number one holds the centre
        assert min(part, 1 - part) * float(cell) / 2 > 0.1


def planned(changes: dict[str, object], number: int = 20, over: str = "5 cm") -> Plan:
    """The plan of a kit of which so many beads were counted over a height (20 in 5 cm: 2.5 mm each)."""
    return plan_of({"weft": {"beads": {"number": number, "over": over}}} | changes)


def grid_in(plan: Plan) -> Grid:
    """The grid that it must have."""
    grid = grid_of(plan)
    assert grid
    assert left_out(plan) == ""
    return grid


def test_a_height_is_woven_in_whole_beads() -> None:
    """By hand: beads of 2.5 mm; 34 cm hold 136 of them, and 344 mm 137 with 1.5 mm over, which is said."""
    plan = planned({})
    grid = grid_in(plan)
    assert (grid.columns, grid.rows, grid.pitch, grid.bead) == (50, 136, 4, Fraction(5, 2))
    assert len(remarks_for(plan, grid)) == 2
    taller = planned({"weaving.height": "344 mm"})
    assert grid_in(taller).rows == 137
    assert remarks_for(taller, grid_in(taller))[1:] == (
        "137 beads (274 picks) of 2.5 mm, rows from below.",
        "1.5 mm less than the height asked for.",
    )


@given(st.integers(300, 3400))
@settings(max_examples=30, deadline=None)
def test_what_is_less_is_said_as_a_rule_shows_it(tenths: int) -> None:
    """In tenths of a millimetre or in sixteenths of an inch, however fine the bead is; nothing is said of less."""
    for unit, step in (("mm", Fraction(1, 10)), ("in", Fraction(127, 80))):
        size = f"{tenths / 10:.1f} mm" if unit == "mm" else f"{tenths // 16 / 16} in"
        plan = planned({"weaving.height": size, "sett.given": "8 epi" if unit == "in" else "2.5 ends/cm"}, 26, "5 cm")
        said = remarks_for(plan, grid_in(plan))[2:]
        if said:
            length = read_length(said[0].split(" less")[0])
            assert (length.mm / step).denominator == 1


@pytest.mark.parametrize(
    "stated", [{"beads": {"number": 22, "over": "1 in"}}, {"picks": {"number": 44, "over": "1 in"}}]
)
def test_beads_are_two_picks(stated: dict[str, object]) -> None:
    """A tapestry teacher: picks an inch are twice the beads counted up one end, so 22 beads an inch are 44 picks."""
    grid = grid_in(plan_of({"weaving.height": "10 in", "weft": stated}))
    assert grid.rows == 220
    assert grid.bead * 22 == INCH


@given(st.integers(5, 60), st.integers(30, 240))
@settings(max_examples=40, deadline=None)
def test_counted_beads_are_kept_exactly(number: int, over: int) -> None:
    """A height of so many times the height counted over holds as many times the beads, with nothing over or short."""
    plan = planned({"frame.outer_height": "2 m", "weaving.height": f"{3 * over} mm"}, 2 * number, f"{over} mm")
    grid = grid_of(plan)
    assert grid
    assert (grid.rows, grid.height) == (6 * number, 3 * over)


def test_a_guess_of_the_picks_is_said() -> None:
    """A weft that was wrapped and not woven gives a grid, and its sheets ask for a sample; counted beads do not."""
    wrapped = plan_of({"weft": {"wrap": {"turns": 10, "window": "2 cm"}}})
    assert any("guess" in note for note in notes_for(wrapped, grid_in(wrapped)))
    assert not any("guess" in note for note in notes_for(planned({}), grid_in(planned({}))))


def test_an_inch_kit_is_told_in_inches() -> None:
    """8 an inch and 10 beads an inch: an eighth and a tenth."""
    plan = planned({"sett.given": "8 epi"}, 10, "1 in")
    assert "columns of 1/8 in" in remarks_for(plan, grid_in(plan))[0]
    assert "picks) of 0.1 in" in remarks_for(plan, grid_in(plan))[1]


VAST = {"weaving.width": "2 m", "weaving.height": "1 m", "frame.outer_width": "3 m", "frame.outer_height": "2 m"}
NONE: dict[str, Plan] = {
    "no picks are known": plan_of({}),
    "0.5 mm apart": planned({}, 100),
    "lines would be 0.5 mm": planned({"sett.given": "20 ends/cm"}),
    "200 x 2.5 mm in whole columns": planned({"weaving.height": "4 mm"}),
    "more than 24 whole sheets": planned(dict(VAST)),
}


@pytest.mark.parametrize("why", NONE)
def test_where_there_is_no_grid_it_is_said_why(why: str) -> None:
    """No picks, lines too close, nothing to design, or more paper than anyone would tape."""
    assert why in left_out(NONE[why])
    assert "weaving-grid" not in suiting(NONE[why])


def test_a_grid_that_is_not_cannot_be_drawn() -> None:
    """One sentence for whoever asks all the same."""
    with pytest.raises(LayoutError, match="no picks are known"):
        drawing_of(plan_of({}), font_metrics())
