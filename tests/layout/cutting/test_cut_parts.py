"""What holds for every cut part: words and marks on the material, sound webs, a file that a cutter can take."""

from __future__ import annotations

from functools import cache, reduce
from itertools import combinations, cycle

import pytest
import shapely
from beams import cuts_of, made_of
from cut_plans import drawn_area, parts_of, stock_with
from ink import corners
from kits import NOTCHED, PEGGED, font_metrics, plan_of

from layout.cutting.parts.reference_square import reference_square
from layout.cutting.products import cut_suiting, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.values.errors import FieldError
from templates_gen.lettering.outlines import contours_of

PLANS: tuple[dict[str, object], ...] = (
    {},
    {"sett.given": "8 epi", "sett.marking_unit": "1 in", "weaving.width": "10 in"},
    {"sett.given": "1 ends/cm"},
    {"weaving.width": "20 mm", "name": "A rather long name of a frame, in words"},
    {"sett.given": "4 ends/cm", "weaving.start": "right", "name": "W" * 40},
    {"weaving.slant": "face straight", "weaving.width": "36 mm"},
    NOTCHED | {"weaving.width": "60 mm"},
    PEGGED | {"weaving.tie_off": "far end", "weaving.near_end": "top"},
)
STOCKS: tuple[dict[str, object], ...] = (
    {"grain": "x"},
    {"grain": "y", "thickness": 6.0},
    {"kerf_x": 0.1, "kerf_y": 0.12},
)


@cache
def every_part() -> tuple[tuple[Part, Stock, shapely.Geometry], ...]:
    """Every part of all products over these plans, each on one of the stocks, and what the beam leaves of it."""
    found = []
    for changes, fields in zip(PLANS, cycle(STOCKS), strict=False):
        planned, stock = plan_of(changes), stock_with(**fields)
        parts = [part for name in cut_suiting(planned) for part in parts_of(name, planned, stock)]
        found += [(part, stock, made_of(part.shapes, stock)) for part in parts]
    return tuple(found)


def test_words_stand_on_the_material_and_on_nothing_else() -> None:
    """True boxes of the letters, from the font file: inside the part, off its holes, its marks and each other."""
    for part, _, made in every_part():
        if part.name == "trial-cut":  # its plugs carry words too
            continue
        words = [shapely.Polygon(corners(shape)) for shape in part.shapes if isinstance(shape, Text)]
        lines = [
            shapely.LineString(shape.points())
            for shape in part.shapes
            if isinstance(shape, Curve) and shape.pen in (Pen.SCORE, Pen.REFERENCE)
        ]
        assert words
        for text in words:
            assert made.buffer(-1.0).contains(text), part.name
            assert all(text.distance(each) > 0.8 for each in lines), part.name
        assert all(one.distance(other) > 0.2 for one, other in combinations(words, 2)), part.name
        assert all(one.distance(other) > 0.3 or _one_cross(one, other) for one, other in combinations(lines, 2)), (
            part.name
        )


def _one_cross(one: shapely.LineString, other: shapely.LineString) -> bool:
    """Whether two hairs share their middle."""
    return bool(one.centroid.distance(other.centroid) < 1e-6)


def test_the_strokes_of_engraved_letters_hold_on_wood() -> None:
    """The outlines that are written, made 0.13 mm thinner all round, are still there of every letter and figure: so
    their strokes are wider than 0.26 mm, where the beam is about 0.2 mm wide (common practice, no source).
    """
    for part, *_ in every_part():
        for text in (shape for shape in part.shapes if isinstance(shape, Text)):
            for letter in {letter for letter in text.words if letter.isalnum()}:
                contours = list(contours_of(text._replace(words=letter)))
                drawn = reduce(shapely.Polygon.symmetric_difference, map(shapely.Polygon, contours))
                assert not drawn.buffer(-0.13).is_empty, (part.name, letter)


def test_words_are_engraved_and_nothing_is_for_paper() -> None:
    """Only pens that a cutter's operations know."""
    for part, *_ in every_part():
        assert {shape.pen for shape in part.shapes} <= {Pen.ENGRAVE, Pen.SCORE, Pen.THROUGH, Pen.REFERENCE}


def test_what_is_inside_is_cut_before_the_outline() -> None:
    """A part that is loose is cut no further; and every outline is closed."""
    for part, *_ in every_part():
        *holes, outer = cuts_of(part.shapes)
        assert all(path.closed for path in (*holes, outer))
        assert all(shapely.Polygon(outer.points()).contains(shapely.Polygon(hole.points())) for hole in holes)
        assert drawn_area(part).bounds == pytest.approx(part.box)


def test_no_web_round_a_hole_is_narrower_than_the_stock_is_thick() -> None:
    """Measured on what the beam leaves, from every hole to the edge."""
    for part, stock, made in every_part():
        assert made.geom_type == "Polygon"
        for hole in made.interiors:
            assert hole.distance(made.exterior) >= max(stock.thickness, 1.0) - 1e-3, part.name


def test_crosses_stand_on_the_part_and_not_in_line() -> None:
    """By them the part is found again; they may not leave it, or nested parts would share them."""
    for part, *_ in every_part():
        assert all(drawn_area(part).buffer(-0.9).contains(shapely.Point(point)) for point in part.datum)
        assert shapely.Polygon(part.datum).area > 20


def test_a_part_with_a_grain_is_never_turned() -> None:
    """Nor is one whose kerf differs by the way of the cut; a stock with neither lets parts lie either way."""
    assert turns(stock_with(grain="none")) == (0, 90)
    assert turns(stock_with(grain="x")) == turns(stock_with(grain="none", kerf_x=0.3)) == (0,)


def test_a_shed_stick_passes_both_sides_and_ends_round() -> None:
    """40 cm and 40 mm past each side; a disc nearly as wide as the stick rolls into both ends."""
    for grain, along in (("x", 0), ("y", 1), ("none", 0)):
        stock = stock_with(grain=grain)
        (part,) = parts_of("shed-stick", plan_of(), stock)
        made = made_of(part.shapes, stock)
        size = made.bounds[along + 2] - made.bounds[along]
        assert size == pytest.approx(480, abs=1e-3)
        rolled = made.buffer(-14.9).buffer(14.9, quad_segs=64)
        assert rolled.symmetric_difference(made).area < 3  # one corner rounded with 12 mm is 17 mm2 more
        assert "sand" in part.notes[0]


def test_a_kit_may_say_how_far_the_stick_passes() -> None:
    """room.stick_past instead of the usual 40 mm."""
    (part,) = parts_of("shed-stick", plan_of({"room": {"stick_past": "25 mm"}}), stock_with(grain="x", kerf=0.0))
    assert part.length == pytest.approx(450)


def test_the_reference_square_measures_50_mm_and_nothing_runs_it() -> None:
    """Every shape of it is for reference, the length written in it too."""
    part = reference_square(font_metrics(), ENGLISH)
    assert {shape.pen for shape in part.shapes} == {Pen.REFERENCE}
    square = next(shape for shape in part.shapes if isinstance(shape, Curve) and shape.closed)
    assert square.points() == [Point(0, 0), Point(50, 0), Point(50, 50), Point(0, 50)]


@pytest.mark.parametrize(
    ("name", "stock", "says"),
    [
        ("end-bars", {}, "notched ends that are still to be made"),
        ("peg-jig", {}, "needs pegged ends"),
        (
            "shed-stick",
            {"grain": "x", "width": 400.0},
            "sheet.width: needs at least 481 mm for a part whose grain has to lie along x: Shed stick, got 400 mm",
        ),
        (
            "spacing-guide-cut",
            {"grain": "y", "height": 100.0},
            "sheet.height: needs at least 219 mm for a part whose grain has to lie along y: Spacing guide, got",
        ),
        ("wrap-gauge-cut", {"kerf": 1.3}, "cutting.kerf: needs to be less than a slit of the wrap gauge, 1.2 mm"),
    ],
)
def test_a_product_says_why_it_cannot_be_cut(name: str, stock: dict[str, object], says: str) -> None:
    """Nothing is dropped without a word: one sentence with what is needed, and what would do."""
    with pytest.raises(FieldError) as caught:
        parts_of(name, plan_of(), stock_with(**stock))
    assert says in str(caught.value)
    assert "; for example " in str(caught.value)
