from __future__ import annotations

import itertools
import math

import pytest
import shapely
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, PaperSize, named_size
from layout.messages.english import ENGLISH
from layout.paper.code import code_box
from layout.paper.regions import regions
from layout.paper.scales import scales
from layout.paper.targets import centres, rectangle, target_boxes, targets

POINT = 72 / 25.4
METRICS = font_metrics()


def own(width: float, height: float) -> Paper:
    """A sheet of its own size, in mm."""
    return Paper(PaperSize("own", round(width * POINT), round(height * POINT)))


SHEETS = {name: Paper(named_size(name)) for name in PAPERS} | {
    f"{width} x {height}": own(width, height)
    for width, height in ((148, 210), (210, 148), (300, 148), (220, 226), (160, 232), (210, 238), (1000, 3000))
}


def test_the_common_sheet_has_eight_at_their_places() -> None:
    """In mm, downward from the top: corners, sides, the top in the middle, the bottom clearly off it."""
    found = [(at.x, 278.694 - at.y) for at in centres(SHEETS["common"])]
    wanted = [
        (9.7, 14.7),
        (200.2, 14.7),
        (9.7, 263.7),
        (200.2, 263.7),
        (9.7, 139),
        (200.2, 139),
        (105, 14.7),
        (75, 263.7),
    ]
    assert [x for at in found for x in at] == pytest.approx([x for at in wanted for x in at], abs=0.06)
    assert rectangle(SHEETS["common"]) == pytest.approx((209.9 - 19.4, 278.7 - 29.7), abs=0.01)


def test_a_target_is_a_ring_with_a_dot() -> None:
    """3.0 mm over all, 0.6 wide, with a dot of 0.81 mm."""
    shapes = targets(SHEETS["a4"])
    rings = [shape for shape in shapes if isinstance(shape, Curve)]
    dots = [shape for shape in shapes if isinstance(shape, Region)]
    assert len(rings) == len(dots) == 8
    for ring, dot in zip(rings, dots, strict=True):
        assert ring.pen is Pen.TARGET
        wide = max(at.x for at in ring.points()) - min(at.x for at in ring.points())
        assert wide + ring.pen.ink.width == pytest.approx(3.0)
        xs = [at.x for at in dot.contours[0].points()]
        assert max(xs) - min(xs) == pytest.approx(0.81)


@pytest.mark.parametrize("name", SHEETS)
def test_nothing_of_the_sheet_stands_in_their_white(name: str) -> None:
    """Half a millimetre around every target stays free of the scales, their numbers and the code, on every paper."""
    paper = SHEETS[name]
    grid = regions(paper)
    inks = [ink_of(shape) for shape in scales(grid, ENGLISH, METRICS)[0]] + [shapely.box(*code_box(grid))]
    for box in target_boxes(paper):
        assert not any(shapely.box(*box).buffer(-1e-6).intersects(ink) for ink in inks)


def ink_of(shape: Shape) -> shapely.Geometry:
    """Where a shape leaves ink, a little too much rather than too little."""
    if isinstance(shape, Text):
        long, high = METRICS.width(shape.words, shape.size, shape.pen), METRICS.cap * shape.size
        end = Point(-high, long) if shape.angle else Point(long, high)
        return shapely.LineString([shape.at, (shape.at.x + end.x, shape.at.y + end.y)]).envelope
    curves = shape.contours if isinstance(shape, Region) else (shape,)
    return shapely.union_all([shapely.LineString(curve.points()).buffer(curve.pen.ink.width / 2) for curve in curves])


@pytest.mark.parametrize("name", SHEETS)
def test_a_turned_or_mirrored_sheet_is_seen(name: str) -> None:
    """Turned by half, or mirrored either way, the targets do not fall on themselves."""
    paper = SHEETS[name]
    found = centres(paper)
    middle_x, middle_y = paper.width / 2, (found[0].y + found[2].y) / 2
    for across, up in ((-1, -1), (-1, 1), (1, -1)):
        turned = [(middle_x + across * (at.x - middle_x), middle_y + up * (at.y - middle_y)) for at in found]
        nearest = (min(shapely.Point(at).distance(shapely.Point(other)) for other in found) for at in turned)
        assert max(nearest) > 5


SIDES = (40, 60, 80, 109, 111, 148, 210, 300)


@pytest.mark.parametrize(("width", "height"), list(itertools.product(SIDES, SIDES)))
def test_small_sheets_keep_five_on_no_line(width: float, height: float) -> None:
    """Five at least, never all but one in a line, no two whites over each other, and the corners always."""
    paper = own(width, height)
    found = centres(paper)
    assert 5 <= len(found) <= 8
    for one, other in itertools.combinations(found, 2):
        long = math.dist(one, other)
        away = [abs((other.x - one.x) * (at.y - one.y) - (other.y - one.y) * (at.x - one.x)) / long for at in found]
        assert sum(1 for far in away if far < 5) < len(found) - 1
    for mine, yours in itertools.combinations(target_boxes(paper), 2):
        assert not shapely.box(*mine).overlaps(shapely.box(*yours))


PARTS: tuple[Box, ...] = (
    (4.0, 100.0, 30.0, 160.0),
    (180.0, 60.0, 209.0, 150.0),
    (70.0, 5.0, 90.0, 250.0),
    (95.0, 30.0, 118.0, 275.0),
    (60.0, 10.0, 74.5, 22.0),
)


@pytest.mark.parametrize("count", range(1, len(PARTS) + 1))
def test_a_target_that_a_part_would_touch_moves_along_its_side(count: int) -> None:
    """The others stay; one that moves keeps its edge, goes no further than it must, and stands clear of every part."""
    paper = SHEETS["common"]
    for taken in itertools.combinations(PARTS, count):
        found, plain = centres(paper, taken), centres(paper)
        assert len(found) == 8
        assert found[:4] == plain[:4]
        for at, before in zip(found, plain, strict=True):
            assert at.x == before.x or at.y == before.y
            box = shapely.box(at.x - 2, at.y - 2, at.x + 2, at.y + 2).buffer(-1e-6)
            assert not any(box.intersects(shapely.box(*part)) for part in taken) or at in plain[:4]
        assert abs(found[7].x - paper.width / 2) > 9
        assert abs(found[6].x + found[7].x - paper.width) > 9


def test_a_target_without_any_place_is_left_out() -> None:
    """Where a part fills the whole side the target there goes, and the others stay."""
    paper = SHEETS["common"]
    found = centres(paper, ((0.0, 30.0, 15.0, 250.0),))
    assert len(found) == 7
    assert sum(at.x == 9.7 for at in found) == 2
