from __future__ import annotations

from collections.abc import Sequence

import pytest
import shapely
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.typeset import SMALL
from layout.kit.kit import Paper
from layout.kit.paper_size import named_size
from layout.messages.english import ENGLISH
from layout.messages.roles import Scale
from layout.paper.regions import regions
from layout.paper.scales import scales, upright

COMMON = Paper(named_size("common"))
HIGH = 278.694
METRICS = font_metrics()


def drawn(*, printing: bool = True, mirrored: bool = False) -> tuple[tuple[Shape, ...], list[tuple[float, ...]]]:
    """Both scales on the common sheet, and what they take."""
    shapes, boxes = scales(regions(COMMON), ENGLISH, METRICS, printing=printing, mirrored=mirrored)
    return shapes, list(boxes)


def rows(shapes: Sequence[Shape]) -> list[tuple[tuple[float, ...], list[tuple[float, ...]]]]:
    """Each outlined row as its box, and the boxes of its black blocks in order."""
    blocks = [
        shapely.Polygon(contour.points()).bounds
        for shape in shapes
        if isinstance(shape, Region)
        for contour in shape.contours
    ]
    outlines = [shapely.Polygon(s.points()).bounds for s in shapes if isinstance(s, Curve) and len(s.steps) == 3]
    return [
        (box, sorted(each for each in blocks if shapely.box(*box).buffer(1e-6).covers(shapely.box(*each))))
        for box in outlines
    ]


@pytest.mark.parametrize("axis", [0, 1])
def test_a_scale_is_100_mm_beside_four_inches(axis: int) -> None:
    """Ten blocks of 10 mm, the first black, and eight of half an inch, 12.7 mm by definition, the first white."""
    along = [
        (box, blocks) for box, blocks in rows(drawn()[0]) if box[axis + 2] - box[axis] > box[3 - axis] - box[1 - axis]
    ]
    found = {round(box[axis + 2] - box[axis], 6): (box, blocks) for box, blocks in along}
    assert sorted(found) == [100.0, 101.6]
    for length, block, first in ((100.0, 10.0, 0.0), (101.6, 12.7, 12.7)):
        box, blocks = found[length]
        assert box[3 - axis] - box[1 - axis] == pytest.approx(1.6)
        begins = [each[axis] - box[axis] for each in blocks]
        assert begins == pytest.approx([first + 2 * block * k for k in range(len(begins))])
        assert [each[axis + 2] - each[axis] for each in blocks] == pytest.approx([block] * len(begins))
        assert len(begins) == round(length / block) // 2


def test_an_upright_scale_rises_from_its_zero() -> None:
    """So it stands where it is asked to stand."""
    assert sorted(box[1] for box, _ in rows(upright(Point(30, 40), ENGLISH, METRICS))) == pytest.approx([40, 40])


def test_the_scales_stand_at_their_places() -> None:
    """Flat from x 22 beside the code, upright in the right gutter from the foot of the field: places in mm."""
    shapes, _ = drawn()
    boxes = sorted(box for box, _ in rows(shapes))
    assert boxes[0] == pytest.approx((22, HIGH - 258.3, 123.6, HIGH - 256.7), abs=0.02)
    assert boxes[1] == pytest.approx((22, HIGH - 256.7, 122, HIGH - 255.1), abs=0.02)
    assert boxes[2] == pytest.approx((194.3, HIGH - 260.7, 195.9, HIGH - 160.7), abs=0.02)
    assert boxes[3] == pytest.approx((195.9, HIGH - 260.7, 197.5, HIGH - 159.1), abs=0.02)


def test_numbers_and_caption() -> None:
    """0, 50, 100 mm and 0, 2, 4 in on both, the upright ones turned; one caption in semibold letters."""
    shapes, _ = drawn()
    words = [shape for shape in shapes if isinstance(shape, Text)]
    assert all(shape.size == SMALL for shape in words)
    for angle in (0, 90):
        said = sorted(shape.words for shape in words if shape.angle == angle and shape.pen is Pen.TEXT)
        assert said == ["0", "0", "100 mm", "2", "4 in", "50"]
    (caption,) = [shape for shape in words if shape.pen is Pen.STRONG]
    assert caption.at == pytest.approx((22, HIGH - 250.75), abs=0.02)
    assert caption.words == ENGLISH.say(Scale.CHECK_AND_PRINT)


def test_a_sheet_that_is_not_printed_at_home_does_not_say_how_to_print() -> None:
    """The caption still asks to check, and has no word of printing."""
    shapes, _ = drawn(printing=False)
    said = [shape.words for shape in shapes if isinstance(shape, Text) and shape.pen is Pen.STRONG]
    assert said == [ENGLISH.say(Scale.CHECK)]
    assert "100 %" not in said[0]


@pytest.mark.parametrize("mirrored", [False, True])
def test_all_of_it_lies_in_what_it_takes(mirrored: bool) -> None:
    """Every shape lies in one of the two boxes, which stay inside the printed area and off each other."""
    shapes, boxes = drawn(mirrored=mirrored)
    taken = [shapely.box(*box) for box in boxes]
    assert not taken[0].intersects(taken[1])
    for shape in shapes:
        if isinstance(shape, Text):
            long = METRICS.width(shape.words, shape.size, shape.pen)
            high = METRICS.cap * shape.size
            end = (-high, long) if shape.angle else (long, high)
            inks = [shapely.LineString([shape.at, (shape.at.x + end[0], shape.at.y + end[1])])]
        else:
            curves = shape.contours if isinstance(shape, Region) else (shape,)
            inks = [shapely.LineString(curve.points()) for curve in curves]
        for ink in inks:
            assert any(box.covers(ink) for box in taken), shape


def test_a_mirrored_sheet_leaves_two_corners_free() -> None:
    """Flat scale and upright one keep away from the lower left and the upper right."""
    _, boxes = drawn(mirrored=True)
    assert boxes[0][0] == pytest.approx(COMMON.width - 123.5)
    assert boxes[1][1:4:2] == pytest.approx((278.7 - 247, 278.7 - 142.4), abs=0.1)
