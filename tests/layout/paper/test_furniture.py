from __future__ import annotations

import pytest
import shapely
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Shape, Text
from layout.drawing.typeset import FIGURE, LEAD, SMALL
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet as Said
from layout.paper.area import Area
from layout.paper.furniture import Head, furnish

AREA = Area(8, 13, 200, 265)
HEAD = Head("Heron frame", ("Marking strip, near end", "Warp and weft", "Sheet 1 of 2"), ("Cut it out.", "Low form."))


def furnished(area: Area = AREA) -> tuple[Area, list[Shape]]:
    """Head and foot on this area."""
    return furnish(area, HEAD, font_metrics())


@pytest.mark.parametrize("axis", [0, 1])
def test_check_bars_stand_on_both_axes(axis: int) -> None:
    """Across the sheet and up it there is a bar of 100 mm and one of 4 in (101.6 mm), each with a tick at both ends."""
    _, shapes = furnished()
    rules = [shape for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.RULE]
    bars = [path for path in rules if abs(path.steps[0].end[axis] - path.start[axis]) > 50]
    lengths = sorted(abs(path.steps[0].end[axis] - path.start[axis]) for path in bars)
    assert lengths == pytest.approx([100.0, 4 * 25.4], abs=1e-9)
    for bar in bars:
        for end in (bar.start, bar.steps[0].end):
            ticks = [
                p for p in rules if p is not bar and shapely.LineString(p.points()).distance(shapely.Point(end)) < 1e-9
            ]
            assert len(ticks) == 1


def test_bars_are_named() -> None:
    """Each bar says its length, in small upright or turned words."""
    _, shapes = furnished()
    names = sorted(
        (shape.words, shape.angle) for shape in shapes if isinstance(shape, Text) and shape.words[0].isdigit()
    )
    assert names == [("100 mm", 0), ("100 mm", 90), ("4 in", 0), ("4 in", 90)]


def test_printing_and_knife_are_told() -> None:
    """Every sheet says how to print it and to mind the knife, in words that stand whole."""
    _, shapes = furnished()
    said = " ".join(shape.words for shape in shapes if isinstance(shape, Text))
    printing = ENGLISH.say(Said.PRINTING)
    assert printing in said
    assert ENGLISH.say(Said.KNIFE) in said
    assert "100 %" in printing


def test_the_head_reads_downward() -> None:
    """Title, lines and notes stand one under the other, from large to small."""
    _, shapes = furnished()
    rows = [shape for shape in shapes if isinstance(shape, Text)][:6]
    assert [row.words for row in rows] == [HEAD.title, *HEAD.lines, *HEAD.notes]
    assert [row.size for row in rows] == [FIGURE, *[LEAD] * 3, *[SMALL] * 2]
    heights = [row.at.y for row in rows]
    assert heights == sorted(heights, reverse=True)


@pytest.mark.parametrize("area", [AREA, Area(8, 13, 140, 197), Area(8, 13, 202, 135), Area(8, 13, 592, 2987)])
def test_taken_boxes_cover_what_stands_there(area: Area) -> None:
    """All of head and foot lies in the area and in a box that is taken; the head's box meets none of the foot's."""
    after, shapes = furnished(area)
    head, *foot = [shapely.box(*box) for box in after.taken]
    taken = shapely.union_all([head, *foot]).buffer(0.2)
    for shape in shapes:
        if isinstance(shape, Text):
            width = font_metrics().width(shape.words, shape.size)
            ahead = (shape.at.x + width, shape.at.y) if shape.angle == 0 else (shape.at.x, shape.at.y + width)
            mark = shapely.LineString([shape.at, ahead])
        else:
            assert isinstance(shape, Curve)
            mark = shapely.LineString(shape.points())
        assert taken.contains(mark)
        assert shapely.box(area.left, area.bottom, area.right, area.top).buffer(1e-9).contains(mark)
    assert all(head.intersection(box).area < 1e-9 for box in foot)


def test_furniture_adds_to_what_is_there() -> None:
    """Boxes that were taken before stay taken."""
    before = Area(8, 13, 200, 265, ((50.0, 100.0, 60.0, 110.0),))
    assert furnished(before)[0].taken[0] == before.taken[0]
