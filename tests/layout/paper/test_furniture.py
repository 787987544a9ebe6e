"""Head, words, check scales, code and targets of a sheet, and what they leave for its part."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
import shapely
from ink import meetings
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Text
from layout.drawing.sheet import Block, Entry, Part, Piece, Sheet, painted
from layout.drawing.signs import scissors, triangle
from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, named_size
from layout.messages.english import ENGLISH
from layout.paper.furniture import Furnished, Page, finished, furnish
from layout.paper.head import Head

HEAD = Head("2", "Marking strips", "The place of every wind.", "Heron frame", "2.5 ends per cm", "Sheet 1 of 2", 2)
STEPS = tuple(f"Do this, and then, when it is done, do number {k} with the other hand as well." for k in range(1, 5))
LEGEND = Block(
    "Reading a strip",
    "near bar, seen from the right",
    entries=(Entry((triangle(Point(0, 1), Point(0, 1)),), "centre: lay it on your pencil mark"),) * 3,
)
ROW = Block(entries=(Entry(tuple(scissors(Point(0, 0))), "cut"), Entry((), "fold")), in_a_row=True)
CARE = ("Cut on a mat along a steel rule, fingers clear of the blade.", "Blades are not for children.")
PART = Part("strip-near", "Marking strips", (), (), (0, 0, 100, 30))
FULL = replace(PART, steps=STEPS, blocks=(LEGEND, ROW), cautions=CARE, notes=("A remark.",))


def sheet(part: Part, size: str = "common", *, mirrored: bool = False) -> tuple[Sheet, Furnished]:
    """A sheet with its furniture and nothing else."""
    page = Page(Paper(named_size(size)), ENGLISH, mirrored=mirrored)
    made = furnish(page, HEAD, part, font_metrics())
    shapes = [*made.shapes, *finished(page, made.area, (), None)]
    return Sheet("a", page.paper.width, page.paper.height, painted(shapes)), made


@pytest.mark.parametrize("size", PAPERS)
@pytest.mark.parametrize("narrow", [True, False])
def test_no_word_meets_another_and_nothing_leaves_the_margins(size: str, *, narrow: bool) -> None:
    """With everything that a part can say, on every paper; all of it is said, and at most four sizes of type."""
    drawn, made = sheet(replace(FULL, narrow=narrow), size)
    assert meetings(drawn, 0.3) == []
    texts = [shape for shape in drawn.shapes if isinstance(shape, Text)]
    said = " ".join(text.words for text in texts)
    assert all(word in said for words in (*STEPS, *CARE) for word in words.split())
    assert not made.rest
    assert len({text.size for text in texts}) <= 4
    assert all(8 <= text.at.x <= drawn.width - 8 and 13 <= text.at.y <= drawn.height - 13 for text in texts)


def test_boxes_that_are_taken_do_not_overlap_the_words_of_others() -> None:
    """Head, column, scales and code each have a place of their own."""
    _, made = sheet(replace(FULL, narrow=True))
    boxes = [shapely.box(*box) for box in made.area.taken[4:]]  # the upper targets stand in the head
    assert all(one.intersection(other).area < 1e-6 for one, other in combinations(boxes, 2))


def test_a_sheet_that_is_not_measured_has_no_scales() -> None:
    """Nothing to lay a ruler along where nothing is measured; the targets stay."""
    for measured in (True, False):
        drawn, _ = sheet(replace(PART, measured=measured))
        pens = [shape.pen for shape in drawn.shapes]
        assert (Pen.RULE in pens) == measured
        assert pens.count(Pen.TARGET) == 8


def test_steps_stand_in_rings_from_one_on() -> None:
    """Each step has its number in a ring at its left, white inside."""
    drawn, _ = sheet(FULL)
    rings = [shape for shape in drawn.shapes if isinstance(shape, Curve) and shape.pen is Pen.RING]
    numbers = [s.words for s in drawn.shapes if isinstance(s, Text) and s.pen is Pen.STRONG and s.words.isdigit()]
    assert len(rings) == len(STEPS)
    assert numbers == ["1", "2", "3", "4"]


def test_many_steps_stand_in_two_columns() -> None:
    """Eight of them on a wide sheet: the fifth begins beside the first."""
    drawn, _ = sheet(replace(PART, steps=STEPS * 2))
    at = {s.words: s.at for s in drawn.shapes if isinstance(s, Text) and s.words.isdigit() and s.pen is Pen.STRONG}
    assert at["5"].y == at["1"].y
    assert at["5"].x > at["1"].x + 80


def test_what_finds_no_room_is_handed_back() -> None:
    """Blocks that do not fit above the cautions come back, the last ones first to go."""
    high = Block("A picture", high=90.0, shapes=scissors_low())
    _, made = sheet(replace(FULL, blocks=(high, high, LEGEND), narrow=True))
    assert made.rest == (high, LEGEND)


def scissors_low() -> tuple[Curve | Region | Text, ...]:
    """Something that hangs 90 mm down."""
    return tuple(scissors(Point(5, -88)))


def test_targets_keep_clear_of_a_part_that_lies_across() -> None:
    """A long strip across the sheet pushes none of the corner targets away, and no target lies under it."""
    page = Page(Paper(named_size("common")), ENGLISH, mirrored=True)
    made = furnish(page, HEAD, PART, font_metrics())
    across = Piece(replace(PART, box=(-135, -15, 135, 15)), Placing(55, 105, 139))
    rings = [s for s in finished(page, made.area, [across], None) if isinstance(s, Curve) and s.pen is Pen.TARGET]
    strip = shapely.Polygon(across.placing.points([(-135, -15), (135, -15), (135, 15), (-135, 15)]))
    assert len(rings) >= 5
    assert all(strip.distance(shapely.Point(ring.start.x - 1.2, ring.start.y)) > 2.0 for ring in rings)
