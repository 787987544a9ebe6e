from __future__ import annotations

import itertools
from dataclasses import replace

import pytest
import shapely
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.typeset import FIGURE, LEAD, NAME, SMALL, is_tall
from layout.drawing.weave_mark import weave_mark
from layout.kit.kit import Paper
from layout.kit.paper_size import PaperSize, named_size
from layout.paper.head import WEAVE, Head, head
from layout.paper.regions import regions
from layout.paper.small_warp import small_warp
from layout.paper.targets import target_boxes

METRICS = font_metrics()
HIGH = 278.694
COMMON = Paper(named_size("common"))
STRIPS = Head(
    "2", "Marking strips", "The place of every wind.", "Willow frame", "2.5 ends per cm, 60 ends", "Sheet 4 of 10", 2
)


def words_of(said: Head, paper: Paper = COMMON) -> list[Text]:
    """The words of this head."""
    return [shape for shape in head(said, regions(paper), METRICS)[0] if isinstance(shape, Text)]


def down_of(text: Text) -> float:
    """How far under the upper edge of the common sheet a baseline lies."""
    return HIGH - text.at.y


def right_of(text: Text) -> float:
    """Where words end."""
    return text.at.x + METRICS.width(text.words, text.size, text.pen)


@pytest.mark.parametrize(("narrow", "right"), [(False, 188.0), (True, 119.0)])
def test_everything_stands_at_its_place(narrow: bool, right: float) -> None:
    """Baselines in mm from the top, sizes and letters; what stands at the right ends at 188, or 119 when narrow."""
    tile, number, name, purpose, kit, facts = words_of(replace(STRIPS, narrow=narrow))
    places = [
        (tile, NAME, Pen.ON_BLACK, 26.77),
        (name, NAME, Pen.STRONG, 23.75),
        (purpose, LEAD, Pen.TEXT, 29.95),
        (kit, SMALL, Pen.STRONG, 20.0),
        (facts, SMALL, Pen.TEXT, 23.6),
        (number, SMALL, Pen.TEXT, 29.95),
    ]
    for text, size, pen, down in places:
        assert (text.size, text.pen) == (size, pen)
        assert down_of(text) == pytest.approx(down, abs=0.01)
    assert (tile.at.x + right_of(tile)) / 2 == pytest.approx(14)
    assert name.at.x == purpose.at.x == 22
    assert [right_of(text) for text in (kit, facts, number)] == pytest.approx([right, right, right - 18.6], abs=0.01)


def test_the_body_begins_40_under_the_edge() -> None:
    """The box of a plain head ends there, and leaves the parts beside a narrow one their height."""
    _, box = head(STRIPS, regions(COMMON), METRICS)
    assert box == pytest.approx((8, HIGH - 40, 201.9, HIGH - 13), abs=0.01)
    _, box = head(replace(STRIPS, narrow=True), regions(COMMON), METRICS)
    assert box[2] == 119


def test_a_sheet_of_no_step_has_no_small_warp() -> None:
    """Its number ends where the field does."""
    said = replace(STRIPS, step=0)
    assert not [shape for shape in head(said, regions(COMMON), METRICS)[0] if isinstance(shape, Curve)]
    assert right_of(words_of(said)[1]) == pytest.approx(188, abs=0.01)


def test_a_sheet_without_a_tile_begins_with_its_name() -> None:
    """Nothing black is drawn, and the name keeps its place."""
    shapes = head(replace(STRIPS, tile=""), regions(COMMON), METRICS)[0]
    assert not [shape for shape in shapes if isinstance(shape, Region)]
    assert all(text.pen is not Pen.ON_BLACK for text in shapes if isinstance(text, Text))


def test_the_mark_of_weave_has_nine_threads() -> None:
    """One black square of 12 mm with nine holes that turn against it: places and sizes in mm from its upper left."""
    (mark,) = [s for s in head(replace(STRIPS, tile=WEAVE), regions(COMMON), METRICS)[0] if isinstance(s, Region)]
    square, *holes = mark.contours
    assert shapely.Polygon(square.points()).bounds == pytest.approx((8, HIGH - 30, 20, HIGH - 18), abs=0.01)
    assert shapely.LinearRing(square.points()).is_ccw
    assert not any(shapely.LinearRing(hole.points()).is_ccw for hole in holes)
    found = sorted(shapely.Polygon(hole.points()).bounds for hole in holes)
    wanted = [
        (10.3, 19.7, 11.7, 22.5),
        (9.7, 23.3, 12.5, 24.7),
        (10.3, 25.5, 11.7, 28.3),
        (12.5, 20.3, 15.5, 21.7),
        (13.3, 22.5, 14.7, 25.5),
        (12.5, 26.3, 15.5, 27.7),
        (16.3, 19.7, 17.7, 22.5),
        (15.5, 23.3, 18.3, 24.7),
        (16.3, 25.5, 17.7, 28.3),
    ]
    upward = sorted((left, HIGH - low, right, HIGH - top) for left, top, right, low in wanted)
    assert [x for box in found for x in box] == pytest.approx([x for box in upward for x in box], abs=0.01)


def test_the_mark_is_plain_weave() -> None:
    """Along every row and column the threads lie over and under by turns."""
    _, *holes = weave_mark(Point(0, 0)).contours
    upright = [shapely.Polygon(hole.points()).bounds for hole in holes]
    over = [top - low > right - left for left, low, right, top in upright]
    assert over == [True, False] * 4 + [True]


@pytest.mark.parametrize("step", range(1, 9))
def test_the_pick_has_come_as_far_as_the_step(step: int) -> None:
    """It begins 1.1 mm before the first end and ends as far after its own; even ends keep 0.3 mm free at both sides."""
    shapes = small_warp(step, Point(188, 248.7))
    ends = [shape.start.x for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.SMALL_WARP]
    assert ends == pytest.approx([172 + 2.2 * k for k in range(8)])
    picks = [shape for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.PICK]
    spans = [(pick.start.x, pick.steps[0].end.x) for pick in picks]
    assert spans[0][0] == pytest.approx(170.9)
    assert spans[-1][1] == pytest.approx(ends[step - 1] + 1.1)
    for k, x in enumerate(ends[:step], 1):
        near = min(abs(x - end) if not low <= x <= high else 0.0 for low, high in spans for end in (low, high))
        assert near == pytest.approx(0.0 if k % 2 else 0.3)


def own(width: float, height: float) -> Paper:
    """A sheet of its own size, in mm."""
    return Paper(PaperSize("own", round(width / 25.4 * 72), round(height / 25.4 * 72)))


KITS = (
    "Willow frame, small",
    "W" * 40,
    "Wide Wall Weaving With Wool And Many Mmm",
    "Ĥĥ ΆΈ Ўѽ ЙЙ Ѿ Ґ ΆΈ Ĥĥ ЙЙ Ўѽ Ѿ Ґ ΆΈ Ĥĥ ЙЙ",
    "Ξύλινο τελάρο για μικρά υφαντά",
    "Щ" * 20 + " " + "Ж" * 19,
    "i",
)
NAMES = (
    "Winding",
    "Help and finish",
    "Υφαντικό πλαίσιο Ά",
    "Проверка рамы и её углов",
    "A name that is far wider than the field is on any sheet",
    "Anamethatisfarwiderthanthefieldisonanysheet",
)
PURPOSES = (
    "",
    "One thread, round and round, from knot to knot.",
    "A purpose that says far more than it should about what a sheet is for, in more words than one line can hold.",
)
FACTS = ("2.5 ends per cm, 60 ends", "6.35 ends per inch, 4,800 ends, the outer 2 ends at each side doubled")
PAPERS = (COMMON, Paper(named_size("a3")), own(148, 210), own(210, 148))
HEADS = [
    Head("3", name, purpose, kit, facts, number, step, narrow)
    for name, purpose, kit, facts, (number, step), narrow in itertools.product(
        NAMES, PURPOSES, KITS, FACTS, (("Sheet 5 of 10", 3), ("Job sheet 10 of 12", 0)), (False, True)
    )
]


def ink_of(text: Text) -> shapely.Polygon:
    """As far as the letters of some words can reach."""
    high = METRICS.ascent if is_tall(text.words) else METRICS.cap * 1.1
    low = text.at.y + METRICS.descent * text.size
    return shapely.box(text.at.x, low, right_of(text), text.at.y + high * text.size)


@pytest.mark.parametrize("paper", PAPERS, ids=str)
def test_no_words_meet_and_none_are_lost(paper: Paper) -> None:
    """Whatever the words: all of them stand, inside the field, off each other and off what stands around them."""
    grid = regions(paper)
    whites = [shapely.box(*box) for box in target_boxes(paper)]
    for said in HEADS:
        shapes, box = head(said, grid, METRICS)
        texts = [shape for shape in shapes if isinstance(shape, Text)]
        right = min(119.0, grid.right) if said.narrow else grid.right
        flat = "".join("".join(text.words.split()) for text in texts)
        for words in (said.name, said.purpose, said.kit, said.facts, said.number):
            assert "".join(words.split()) in flat
        inks = [ink_of(text) for text in texts]
        for text, ink in zip(texts, inks, strict=True):
            assert right_of(text) <= right + 1e-9
            assert text.at.x >= grid.left or text.pen is Pen.ON_BLACK
            assert not any(ink.intersects(white) for white in whites), text
            assert text.at.y - box[1] >= 8 - 1e-9 or text.pen is Pen.ON_BLACK
        for (one, ink), (other, else_ink) in itertools.combinations(zip(texts, inks, strict=True), 2):
            if one.pen is not Pen.ON_BLACK:
                assert ink.intersection(else_ink).area < 0.05, (one, other)
        threads = [shapely.LineString(shape.points()) for shape in shapes if isinstance(shape, Curve)]
        assert not any(ink.intersects(thread) for ink in inks for thread in threads)
        assert (grid.height - box[1]) % 2 == pytest.approx(0, abs=1e-6) or (grid.height - box[1]) % 2 > 2 - 1e-6


@pytest.mark.parametrize("paper", PAPERS, ids=str)
def test_name_and_kit_keep_four_apart(paper: Paper) -> None:
    """Kit lines begin at least 4 mm after the name; words beside the number of the sheet end as far before it."""
    for said in HEADS:
        texts = words_of(said, paper)
        number, *others = [text for text in texts if text.pen is not Pen.ON_BLACK]
        names = [text for text in others if text.size in (NAME, FIGURE)]
        for text in others:
            if text.size == SMALL and text.at.x > regions(paper).left + 0.01:
                assert text.at.x - max(map(right_of, names)) >= 4 - 1e-9
            if text.size == LEAD and abs(text.at.y - number.at.y) < 3:
                assert number.at.x - right_of(text) >= 4 - 1e-9


def test_a_long_kit_goes_under_the_purpose_of_a_narrow_head() -> None:
    """Kit and facts at x 22, 36 and 39.6 mm down; the body begins at 48."""
    said = replace(STRIPS, kit="The great willow frame of the house", narrow=True)
    shapes, box = head(said, regions(COMMON), METRICS)
    kit, facts = [shape for shape in shapes if isinstance(shape, Text)][-2:]
    assert (kit.at.x, facts.at.x) == (22, 22)
    assert [down_of(kit), down_of(facts), HIGH - box[1]] == pytest.approx([36, 39.6, 48], abs=0.01)


def test_a_long_kit_takes_two_lines_beside_the_name() -> None:
    """Baselines 20.0 and 23.6, facts 27.2 mm down; number and small warp give way, and the body still begins at 40."""
    said = replace(STRIPS, name="A rather long name of a sheet", kit="Willow frame of the house by the great river")
    shapes, box = head(said, regions(COMMON), METRICS)
    *_, one, other, facts = [shape for shape in shapes if isinstance(shape, Text)]
    assert [down_of(text) for text in (one, other, facts)] == pytest.approx([20, 23.6, 27.2], abs=0.01)
    assert HIGH - box[1] == pytest.approx(40, abs=0.01)


@pytest.mark.parametrize("paper", PAPERS, ids=str)
def test_no_word_of_a_name_is_broken(paper: Paper) -> None:
    """A name with a word wider than the head is set in the next smaller letters of the scale, word by word."""
    wide = regions(paper).right - regions(paper).left
    word = "Markierstreifen"
    while font_metrics().width(word + "m", NAME, Pen.STRONG) <= wide:
        word += "m"
    for name, size in ((f"{word} {word}", NAME), (f"{word}mm und", FIGURE)):
        said = replace(HEADS[0], name=name)
        found = [text.words for text in words_of(said, paper) if text.size == size and text.pen is Pen.STRONG]
        assert " ".join(found) == name
        assert all(set(row.split()) <= set(name.split()) for row in found)
