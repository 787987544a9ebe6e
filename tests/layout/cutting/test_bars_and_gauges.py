"""Wrap gauge, spacing guide, notched bars and drilling jigs, as they fall out of the stock."""

from __future__ import annotations

from itertools import pairwise

import pytest
import shapely
from beams import crossed, made_of
from cut_plans import parts_of, stock_with
from golden import listed, matches
from kits import NOTCHED, PEGGED, plan_of

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.values.errors import FieldError

STOCKS = (
    stock_with(grain="none"),
    stock_with(grain="none", kerf_x=0.3, kerf_y=0.26),
    stock_with(grain="none", kerf=0.05),
)
stocks = pytest.mark.parametrize("stock", STOCKS, ids=["0.2", "0.3 and 0.26", "0.05"])


def gaps_at(part: Part, stock: Stock, height: float) -> list[tuple[float, float]]:
    """From where to where there is no material between the left and the right of a part at a height."""
    pieces = crossed(made_of(part.shapes, stock), shapely.LineString([(-2000, height), (2000, height)]))
    return [(one[1], other[0]) for one, other in pairwise(pieces)]


@stocks
@pytest.mark.parametrize("height", [18.0, -18.0])
def test_the_windows_are_one_inch_two_inches_and_five_centimetres(stock: Stock, height: float) -> None:
    """25.4 mm to the inch: what is free between two shoulders, in both long edges, one under the other."""
    (gauge,) = parts_of("wrap-gauge-cut", plan_of(), stock)
    gaps = gaps_at(gauge, stock, height)
    assert [right - left for left, right in gaps] == pytest.approx([25.4, 50.8, 50.0], abs=1e-3)
    assert [left for left, _ in gaps] == pytest.approx([left for left, _ in gaps_at(gauge, stock, -height)], abs=1e-3)


@stocks
def test_slits_hold_the_tails(stock: Stock) -> None:
    """Two in each short edge, 1.2 mm wide."""
    (gauge,) = parts_of("wrap-gauge-cut", plan_of(), stock)
    made = made_of(gauge.shapes, stock)
    for x in (3.0, made.bounds[2] - 3.0):
        pieces = crossed(made, shapely.LineString([(x, -100), (x, 100)]))
        assert [other[0] - one[1] for one, other in pairwise(pieces)] == pytest.approx([1.2, 1.2], abs=1e-3)


def scores(part: Part) -> list[tuple[float, float, float]]:
    """The scored lines: x, and from where to where below the edge."""
    lines = [shape.points() for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.SCORE]
    return sorted((one.x, -one.y, -other.y) for one, other in lines)


def test_the_guide_marks_every_end_where_it_should_lie() -> None:
    """(k + 1/2) p - W/2; on a wound frame face and back by turns, every tenth numbered as it was wound."""
    planned = plan_of({"weaving.start": "right"})
    (guide,) = parts_of("spacing-guide-cut", planned, STOCKS[0])
    ends = [(x, far) for x, near, far in scores(guide) if near == 0.5 and far < 10]
    assert [x for x, _ in ends] == pytest.approx([float(x) for x in planned.warp.end_positions])
    from_the_right = [far for _, far in reversed(ends)]
    assert from_the_right[:10] == [5.0, 3.0, 5.0, 3.0, 5.0, 3.0, 5.0, 3.0, 5.0, 6.5]
    tens = [shape for shape in guide.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    assert [text.words for text in sorted(tens, key=lambda text: -text.at.x)] == ["10", "20", "30", "40", "50"]


@pytest.mark.parametrize(("kit", "behind"), [(None, True), (NOTCHED, False), (PEGGED, False)])
def test_the_guide_speaks_of_ends_behind_only_where_there_are_some(kit: dict[str, object] | None, behind: bool) -> None:
    """Between notches and pegs every end lies on the face, and a longer mark is a tenth one."""
    (guide,) = parts_of("spacing-guide-cut", plan_of(kit) if kit else plan_of(), STOCKS[0])
    assert any("behind" in note for note in guide.notes) is behind


def test_the_guide_shows_units_limits_and_centre() -> None:
    """20 cm in units of 4 cm: limits through both bands, four unit lines between them, the centre on its own."""
    (guide,) = parts_of("spacing-guide-cut", plan_of(), STOCKS[0])
    found = scores(guide)
    assert [x for x, near, far in found if near == 0.5 and far > 10] == [-100, 100]
    assert [x for x, near, far in found if near == 7.5] == [-60, -20, 0, 20, 60]


@stocks
def test_a_bar_has_a_notch_for_every_end_as_the_kit_says(stock: Stock) -> None:
    """1.2 mm wide and 6 mm deep, at the wanted places of the ends."""
    planned = plan_of(NOTCHED)
    for part in parts_of("end-bars", planned, stock):
        gaps = gaps_at(part, stock, 2.0)
        assert [(left + right) / 2 for left, right in gaps] == pytest.approx(
            [float(x) for x in planned.warp.end_positions], abs=1e-3
        )
        assert [right - left for left, right in gaps] == pytest.approx([1.2] * planned.warp.ends, abs=1e-3)
        made = made_of(part.shapes, stock)
        middle = float(planned.warp.end_positions[7])
        ground = crossed(made, shapely.LineString([(middle, -5), (middle, 50)]))[-1][1]
        assert made.bounds[3] - ground == pytest.approx(6, abs=2e-3)
        assert (made.bounds[0], made.bounds[2]) == pytest.approx((-200, 200), abs=1e-3)


def test_bars_say_how_many_make_an_end() -> None:
    """12 mm of 3 mm stock are four; of 12 mm stock one, and then nothing is said of glue."""
    near, far = parts_of("end-bars", plan_of(NOTCHED), stock_with())
    assert near.notes[0].startswith(
        "Cut 4 and glue them, notches in line; they make 12 mm where the kit has 12 mm; "
        "drawn once, on the boards 4 times. It goes to the"
    )
    assert "to the bottom" in near.notes[0]
    assert "to the top" in far.notes[0]
    thick, _ = parts_of("end-bars", plan_of(NOTCHED), stock_with(thickness=12.0))
    assert thick.notes[0].startswith("It goes to the bottom of the frame, notches outward")


@pytest.mark.parametrize(
    ("changes", "stock", "sentence"),
    [
        (
            {"frame.notch_depth": "9 mm"},
            {},
            "frame.notch_depth: needs at most 3 times what is left between two notches, 8.4 mm, got 9 mm; ",
        ),
        ({}, {"kerf_y": 1.2}, "cutting.kerf: needs to be less than a notch, 1.2 mm, got 1.2 mm; "),
    ],
)
def test_a_bar_that_cannot_be_is_refused(changes: dict[str, object], stock: dict[str, object], sentence: str) -> None:
    """Too deep, or notches that the kerf would swallow: one sentence that names the key."""
    with pytest.raises(FieldError) as caught:
        parts_of("end-bars", plan_of(NOTCHED | changes), stock_with(**stock))
    assert str(caught.value).startswith(sentence)


@pytest.mark.parametrize("end", [0, 1])
@pytest.mark.parametrize("near_end", ["bottom", "top"])
def test_a_jig_has_a_hole_over_every_peg(end: int, near_end: str) -> None:
    """Laid on the frame with its edge to the outer edge, each hole is a peg wide, in its row."""
    planned = plan_of(PEGGED | {"weaving.near_end": near_end, "weaving.tie_off": "far end", "weaving.start": "right"})
    stock = STOCKS[0]
    part = parts_of("peg-jig", planned, stock)[end]
    made = made_of(part.shapes, stock)
    bottom = (end == 0) == (near_end == "bottom")
    turn = -1 if bottom else 1  # the jig of the bottom end is laid on turned half round
    found = sorted((turn * hole.centroid.x, -hole.centroid.y) for hole in map(shapely.Polygon, made.interiors))
    marks = planned.warp.near if end == 0 else planned.warp.far
    wanted = sorted((float(x), 10.0 if number % 2 else 22.0) for number, x in enumerate(marks))
    assert len(found) == len(wanted)
    for one, other in zip(found, wanted, strict=True):
        assert one == pytest.approx(other, abs=1e-3)
    for hole in map(shapely.Polygon, made.interiors):
        assert hole.bounds[2] - hole.bounds[0] == pytest.approx(2.5, abs=1e-3)
    assert made.bounds[::2] == pytest.approx((-200, 200), abs=1e-3)


def test_pegs_that_leave_no_wood_are_refused() -> None:
    """Under 1 mm between two holes, or a hole and the edge, nothing is cut."""
    with pytest.raises(FieldError, match=r"^frame\.peg_diameter: needs at least 1 mm of wood round every hole"):
        parts_of("peg-jig", plan_of(PEGGED | {"frame.edge_distance": "2 mm"}), stock_with())


@pytest.mark.parametrize(
    ("name", "which", "changes", "stock"),
    [
        ("cut-wrap-gauge", "wrap-gauge-cut", {}, {}),
        ("cut-spacing-guide", "spacing-guide-cut", {"sett.given": "8 epi"}, {}),
        ("cut-end-bar-near", "end-bars", NOTCHED, {"grain": "y"}),
        ("cut-peg-jig-near", "peg-jig", PEGGED, {}),
    ],
)
def test_the_drawings_have_not_changed(
    name: str, which: str, changes: dict[str, object], stock: dict[str, object]
) -> None:
    """Every shape in mm, as a person can read it in tests/golden."""
    assert matches(name, listed(parts_of(which, plan_of(changes), stock_with(**stock))[0]))
