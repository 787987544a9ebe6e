"""A drawing cut both ways: every piece fits its sheet, joins its neighbours, and moves nothing."""

from __future__ import annotations

import math
import re
from functools import cache
from itertools import pairwise, product

import pytest
import shapely
from ink import meetings
from kits import font_metrics, plan_of
from test_look import outside

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Text
from layout.drawing.sheet import Part, Sheet
from layout.paper.choice import Laying
from layout.paper.panes import MOST_SHEETS, OVERLAP
from layout.paper.sheets import lay, printed
from layout.parts.grid import drawing_of
from layout.parts.grid_size import grid_of
from layout.plan import Plan
from layout.values.errors import FieldError

BEADS: dict[str, object] = {"weft": {"beads": {"number": 20, "over": "5 cm"}}}  # 2.5 mm each
LARGE: dict[str, object] = {"weaving.width": "60 cm", "weaving.height": "50 cm", "frame.outer_width": "70 cm",
                            "frame.outer_height": "80 cm"}  # fmt: skip
INCH: dict[str, object] = {"weaving.width": "8 in", "weaving.height": "13 in", "sett.given": "8 epi"}
NARROW: dict[str, object] = {"weaving.width": "16 mm", "weaving.height": "35 cm"}
COARSE: dict[str, object] = LARGE | {"sett.given": "2 per 10 cm"}
PAPERS = ("common", "a4", "letter", "a3", "11x17", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")
KITS = {
    "cm": {},
    "inch": INCH,
    "large": LARGE,
    "coarse": COARSE,
    "narrow": {"weaving.width": "16 mm", "weaving.height": "35 cm"},
}
CASES = [
    (kit, paper)
    for kit, paper in product(KITS, PAPERS)
    if (kit, paper[3:6]) not in {("large", " x "), ("coarse", " x ")}
]


def planned(kit: str, paper: str) -> Plan:
    """The plan of a kit on a paper."""
    return plan_of(BEADS | KITS[kit] | {"paper.size": paper})


def size(kit: str) -> tuple[float, float]:
    """Width and height of a kit's grid."""
    grid = grid_of(planned(kit, "common"))
    assert grid
    return float(grid.width), float(grid.height)


@cache
def laid(kit: str, paper: str) -> tuple[Laying, tuple[Sheet, ...]]:
    """How the grid of a kit lies on a paper, and the finished sheets."""
    plan = planned(kit, paper)
    laying = lay(plan, drawing_of(plan, font_metrics()), font_metrics())
    return laying, tuple(each.sheet for each in printed(plan, [laying], font_metrics()))


def pieces(laying: Laying) -> list[Part]:
    """The pieces in order."""
    return [piece.part for sheet in laying.sheets for piece in sheet]


def hairs(part: Part) -> set[tuple[Point, Point]]:
    """Every line of a register cross."""
    lines = (shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.REGISTER)
    return {(one.start, one.steps[0].end) for one in lines}


SAMPLE = 8.0  # the lines of the legend are so long, in mm


def window(part: Part) -> shapely.Polygon:
    """What a piece shows of the grid: as wide as its level lines, as high as its upright ones."""
    lines = [
        s for s in part.shapes if isinstance(s, Curve) and s.pen in (Pen.GRID, Pen.GRID_TEN, Pen.LIMIT, Pen.CENTRE)
    ]
    points = [point for one in lines if math.dist(*one.points()) != SAMPLE for point in one.points()]
    return shapely.MultiPoint(points).envelope


@pytest.mark.parametrize(("kit", "paper"), CASES)
def test_every_sheet_is_a_good_drawing(kit: str, paper: str) -> None:
    """Words keep 0.3 mm of white round them and nothing leaves the margins, on every paper, in cm and in inches."""
    _, sheets = laid(kit, paper)
    for sheet in sheets[:: max(1, len(sheets) // 4)]:
        assert meetings(sheet, 0.3) == []
        assert outside(sheet) == []


@pytest.mark.parametrize(("kit", "paper"), CASES)
def test_all_pieces_show_all_of_it(kit: str, paper: str) -> None:
    """The windows of the pieces cover the weaving exactly, and neighbours overlap by twice OVERLAP (shapely)."""
    laying, _ = laid(kit, paper)
    windows = [window(part) for part in pieces(laying)]
    width, height = size(kit)
    whole = shapely.box(-width / 2, 0, width / 2, height)
    assert shapely.union_all(windows).symmetric_difference(whole).area == pytest.approx(0, abs=1e-6)
    for one, other in pairwise(windows):
        shared = one.intersection(other).bounds
        if shared and shared[3] - shared[1] == pytest.approx(one.bounds[3] - one.bounds[1]):
            assert shared[2] - shared[0] == pytest.approx(2 * OVERLAP, abs=4)  # edges keep clear of lines


@pytest.mark.parametrize("kit", ["cm", "inch", "large"])
def test_a_joint_shows_the_same_crosses_on_both_sides(kit: str) -> None:
    """Every cross but those at the corners of the whole stands on two pieces or more, to the last digit."""
    laying, _ = laid(kit, "common")
    parts = pieces(laying)
    assert len(parts) > 1
    counted: dict[Point, int] = {}
    for part in parts:
        assert len(hairs(part)) == 2 * len(part.datum)
        for point in part.datum:
            counted[point] = counted.get(point, 0) + 1
    corners = {point for point, count in counted.items() if count == 1}
    assert len(corners) == 4
    assert corners == set(laying.part.datum)
    assert all(count == 2 for point, count in counted.items() if point not in corners)


@pytest.mark.parametrize("kit", ["cm", "inch", "large"])
def test_a_turned_or_shifted_piece_meets_no_crosses(kit: str) -> None:
    """Turned half round about the middle of a joint, its three crosses fall on other places."""
    laying, _ = laid(kit, "common")
    for one, other in pairwise(pieces(laying)):
        shared = sorted(set(one.datum) & set(other.datum))
        if shared:
            middle = Point(sum(p.x for p in shared) / len(shared), sum(p.y for p in shared) / len(shared))
            turned = [Point(2 * middle.x - x, 2 * middle.y - y) for x, y in shared]
            assert len(shared) == 3, "these joints are long enough for three"
            assert max(min(math.dist(p, q) for q in shared) for p in turned) > 3


@pytest.mark.parametrize(("kit", "paper"), CASES)
def test_no_piece_is_scaled(kit: str, paper: str) -> None:
    """A piece is only turned by a quarter and shifted, and all lie at the same corner of their sheets."""
    laying, _ = laid(kit, paper)
    placings = [piece.placing for sheet in laying.sheets for piece in sheet]
    assert all(isinstance(placing, Placing) and placing.degrees in (0, 90) for placing in placings)
    assert len({placing.degrees for placing in placings}) == 1


@pytest.mark.parametrize(("kit", "paper"), CASES)
def test_joints_keep_off_the_middle(kit: str, paper: str) -> None:
    """No strip in which two pieces lie over each other holds a centre line, where pieces are 40 mm or more."""
    laying, _ = laid(kit, paper)
    windows = [window(part).bounds for part in pieces(laying)]
    middle = (0.0, size(kit)[1] / 2)
    for one, other in product(windows, windows):
        for k in (0, 1):
            if (
                one[k] < other[k] < one[k + 2]
                and one[1 - k] == pytest.approx(other[1 - k])
                and one[k + 2] - one[k] > 40
            ):
                assert not other[k] <= middle[k] <= one[k + 2]


@pytest.mark.parametrize(("kit", "paper"), CASES)
def test_every_piece_shows_which_it_is(kit: str, paper: str) -> None:
    """Its number stands beside it, and in the cell of the map that is filled, where there is room for it."""
    laying, _ = laid(kit, paper)
    parts = pieces(laying)
    for number, part in enumerate(parts, 1):
        words = [shape.words for shape in part.shapes if isinstance(shape, Text)]
        held = [shape for shape in part.shapes if isinstance(shape, Region) and shape.pen is Pen.HELD]
        assert len(held) == (len(parts) > 1)
        assert (" ".join(words).startswith("Piece") or f"Piece {number} of {len(parts)}" in words) == (len(parts) > 1)


def test_the_first_sheet_alone_says_what_to_do() -> None:
    """The words of the first piece stand once; on the sheets after it the grid begins higher."""
    _, sheets = laid("cm", "common")
    said = [sum(isinstance(s, Text) and s.words.startswith("Tape") for s in sheet.shapes) for sheet in sheets]
    assert said == [1, *[0] * (len(sheets) - 1)]


@pytest.mark.parametrize("kit", ["cm", "inch", "large"])
def test_the_proof_distances_are_those_of_the_corners(kit: str) -> None:
    """By hand: W + 9 mm and H + 9 mm, since each small cross stands 4.5 mm off both limits; and how many pieces."""
    laying, _ = laid(kit, "common")
    found = re.search(r"Tape the (\d+) pieces.* are ([\d.]+) x ([\d.]+) mm apart", laying.part.steps[1])
    assert found
    assert int(found[1]) == len(pieces(laying))
    assert (float(found[2]), float(found[3])) == tuple(round(side + 9, 1) for side in size(kit))


def test_the_grid_of_the_demo_takes_four_sheets() -> None:
    """24 x 34 cm on the sheet that prints on A4 and on Letter: two pieces across and two up."""
    plan = plan_of(BEADS | {"weaving.width": "24 cm", "weaving.height": "34 cm"})
    laying = lay(plan, drawing_of(plan, font_metrics()), font_metrics())
    assert len(printed(plan, [laying], font_metrics())) == 4


def test_as_few_sheets_as_can_be() -> None:
    """One where it fits, whatever way the strips lie; a larger paper never takes more."""
    assert laid("narrow", "600 x 3000 mm")[0].way == "straight"
    assert len(laid("cm", "a3")[1]) <= len(laid("cm", "a4")[1]) <= len(laid("cm", "148 x 210 mm")[1])
    assert len(laid("cm", "600 x 3000 mm")[1]) == 1


def test_too_many_sheets_are_refused() -> None:
    """One sentence that names the paper's key and a size that does."""
    changes = LARGE | {
        "weaving.width": "2 m",
        "frame.outer_width": "3 m",
        "weaving.height": "2 m",
        "frame.outer_height": "3 m",
    }
    plan = plan_of(BEADS | changes)
    drawing = drawing_of(plan, font_metrics())
    with pytest.raises(
        FieldError, match=rf"^paper\.size: needs .* at most {MOST_SHEETS} sheets, got Weaving grid of 201[56] x"
    ) as caught:
        lay(plan, drawing, font_metrics())
    advised = caught.value.example.split('"')[1]
    assert lay(plan_of(BEADS | changes | {"paper.size": advised}), drawing, font_metrics()).sheets
