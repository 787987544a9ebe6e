"""Words as outlines, against fontTools' own measures of the letters and against letters drawn by a PDF viewer."""

from __future__ import annotations

import math
import string
from typing import cast

import pytest
import shapely
import shapely.affinity
from fontTools.pens.areaPen import AreaPen
from fontTools.pens.basePen import decomposeQuadraticSegment
from fontTools.pens.boundsPen import BoundsPen
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.ttLib import TTFont
from rasters import pdf_pixels, svg_pixels

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text, line
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, About
from templates_gen.lettering import fonts
from templates_gen.lettering.outlines import FURTHEST, outline, outlined

EM = 100.0


def area(path: Curve) -> float:
    """The signed area of a closed contour, by the shoelace formula; clockwise negative."""
    points = path.points()
    return sum(a.x * b.y - b.x * a.y for a, b in zip(points, points[1:] + points[:1], strict=True)) / 2


@pytest.fixture(scope="module", params=[Pen.TEXT, Pen.STRONG], ids=lambda pen: pen.value)
def pen(request: pytest.FixtureRequest) -> Pen:
    """A pen of either cut."""
    return cast(Pen, request.param)


@pytest.fixture(scope="module")
def font(pen: Pen) -> TTFont:
    """The font file, opened afresh."""
    return TTFont(fonts.font_path(pen.ink.face))


@pytest.mark.parametrize("letter", "OgÅŁЖ8%&@½ë")
def test_a_letter_covers_its_area(font: TTFont, pen: Pen, letter: str) -> None:
    """The flattened contours, holes turning back, cover what fontTools computes for the curves, to one per cent."""
    glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
    drawn_by = AreaPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(drawn_by)
    drawn = sum(map(area, outline(Text(Point(0, 0), EM, letter, pen=pen)).contours))
    assert drawn == pytest.approx(drawn_by.value * (EM / em) ** 2, rel=0.01)


@pytest.mark.parametrize("letter", "OgÅŁЖ8%&@½ë")
def test_a_letter_stays_in_its_box(font: TTFont, pen: Pen, letter: str) -> None:
    """The box of the contours is that of the letter's curves, to a thousandth of the em."""
    glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
    drawn_by = BoundsPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(drawn_by)
    points = [point for path in outline(Text(Point(0, 0), EM, letter, pen=pen)).contours for point in path.points()]
    box = (min(p.x for p in points), min(p.y for p in points), max(p.x for p in points), max(p.y for p in points))
    assert box == pytest.approx([side * EM / em for side in drawn_by.bounds], abs=EM / 1000)


def test_letters_follow_at_their_widths(font: TTFont, pen: Pen) -> None:
    """The second letter stands one advance width on, as the font's table has it."""
    alone, second = outline(Text(Point(0, 0), EM, "i", pen=pen)), outline(Text(Point(0, 0), EM, "Mi", pen=pen))
    advance = font["hmtx"]["M"][0] / font["head"].unitsPerEm * EM
    for one, other in zip(alone.contours, second.contours[-2:], strict=True):
        assert other.start == pytest.approx((one.start.x + advance, one.start.y), abs=0.0005001)  # rounded


def test_words_are_turned_about_their_place() -> None:
    """A quarter turn takes (x, y) of the upright words to (-y, x) about the start of the baseline, exactly."""
    upright, turned = outline(Text(Point(0, 0), 4, "H")), outline(Text(Point(7, 9), 4, "H", 90))
    for one, other in zip(upright.contours[0].points(), turned.contours[0].points(), strict=True):
        assert other == Point(7 - one.y, 9 + one.x)


def test_every_printable_letter_has_sound_contours() -> None:
    """Each contour is closed, straight-sided, of three points or more, and never stays where it is."""
    for letter in fonts.metrics().advances:
        region = outline(Text(Point(0, 0), EM, letter))
        assert bool(region.contours) == bool(letter.strip()), hex(ord(letter))
        for path in region.contours:
            points = path.points()
            assert path.closed
            assert len(points) > 2
            assert all(math.dist(a, b) > 0 for a, b in zip(points, points[1:] + points[:1], strict=True))
            assert all(step.through is None for step in path.steps)


SIZES = (2.0, 8 * 25.4 / 72, 10 * 25.4 / 72, 40.0)
"""Sizes of words in mm to the em: smaller than any, those that are engraved, and a large one."""
LETTERS = string.ascii_letters + string.digits + ".,:;%&@()½ÅŁßëЖЮмξ"


def drawn_by_the_font(font: TTFont, letter: str, size: float) -> shapely.MultiLineString:
    """The closed contours of the font's own curves, each in small steps of its parameter."""
    count = 16 if size < 10 else 64
    glyphs, scale = font.getGlyphSet(), size / font["head"].unitsPerEm
    pen = DecomposingRecordingPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    contours: list[list[tuple[float, float]]] = []
    for operator, points in pen.value:
        if operator == "moveTo":
            contours.append(list(points))
        elif operator == "lineTo":
            contours[-1] += points
        elif operator == "qCurveTo":
            for bend, end in decomposeQuadraticSegment(points):
                at = contours[-1][-1]
                for t in (k / count for k in range(1, count + 1)):
                    weights = ((1 - t) ** 2, 2 * t * (1 - t), t * t)
                    x, y = (sum(w * p[k] for w, p in zip(weights, (at, bend, end), strict=True)) for k in (0, 1))
                    contours[-1].append((x, y))
    return shapely.MultiLineString([[(x * scale, y * scale) for x, y in [*each, each[0]]] for each in contours])


@pytest.mark.parametrize("size", SIZES)
def test_no_letter_lies_further_off_its_curve_than_is_promised(font: TTFont, pen: Pen, size: float) -> None:
    """By shapely's Hausdorff distance, both ways; the worst comes near the limit."""
    worst = 0.0
    for letter in LETTERS:
        drawn = [[*path.points(), path.start] for path in outline(Text(Point(0, 0), size, letter, pen=pen)).contours]
        curve = drawn_by_the_font(font, letter, size)
        worst = max(worst, shapely.hausdorff_distance(shapely.MultiLineString(drawn), curve, densify=0.25))
    assert 0.8 * FURTHEST < worst <= FURTHEST


@pytest.mark.parametrize("angle", [0, 90, 35.3])
def test_words_at_any_place_lie_as_near(font: TTFont, pen: Pen, angle: float) -> None:
    """The rounding of the word's place and of each letter in it is part of the limit, slanted or not."""
    size, at, words = 8 * 25.4 / 72, Point(12.34567, -7.65432), "Winding begins: 18&%"
    drawn = shapely.MultiLineString(
        [[*path.points(), path.start] for path in outline(Text(at, size, words, angle, pen)).contours]
    )
    curves, pen_x = [], at.x
    for letter in words:
        curves.append(shapely.affinity.translate(drawn_by_the_font(font, letter, size), pen_x, at.y))
        pen_x += font["hmtx"][font.getBestCmap()[ord(letter)]][0] / font["head"].unitsPerEm * size
    wanted = shapely.affinity.rotate(shapely.unary_union(curves), angle, origin=at)
    assert shapely.hausdorff_distance(drawn, wanted, densify=0.25) <= FURTHEST


@pytest.mark.parametrize("size", SIZES)
def test_few_lines_keep_holes_and_areas(font: TTFont, pen: Pen, size: float) -> None:
    """Every contour turns as the font's own, and differs from its area by no more than the limit along its length."""
    for letter in LETTERS:
        paths = outline(Text(Point(0, 0), size, letter, pen=pen)).contours
        for path, own in zip(paths, drawn_by_the_font(font, letter, size).geoms, strict=True):
            ring = shapely.LinearRing(own.coords)
            wanted = shapely.Polygon(ring).area * (1 if ring.is_ccw else -1)
            assert abs(area(path) - wanted) < 0.6 * FURTHEST * own.length, letter


@pytest.mark.parametrize("angle", [0, 90, 180, 270, 12.5])
def test_every_corner_stands_on_a_whole_thousandth(angle: float) -> None:
    """So that a file needs no more digits for words."""
    for path in outline(Text(Point(1.23456789, -9.87654321), 2.8222, "Zoë 35&", angle)).contours:
        for value in (each * 1000 for point in path.points() for each in point):
            assert abs(value - round(value)) < 1e-6


def test_few_lines_take_the_place_of_many() -> None:
    """The letters of the alphabet in small words have fewer than 20 corners each."""
    letters = "abcdefghijklmnopqrstuvwxyz0123456789"
    corners = sum(len(path.points()) for path in outline(Text(Point(0, 0), 8 * 25.4 / 72, letters)).contours)
    assert corners / len(letters) < 20


def test_order_is_kept_and_blank_words_leave_nothing() -> None:
    """One region for each text that shows anything, in its place among the other shapes."""
    mark = line(Point(1, 1), Point(2, 2), Pen.MARK)
    sheet = Sheet("a", 9, 9, (Text(Point(1, 1), 4, "a"), mark, Text(Point(1, 1), 4, "  "), Text(Point(1, 1), 4, "b")))
    first, second, third = outlined(sheet).shapes
    assert isinstance(first, Region)
    assert isinstance(third, Region)
    assert (first.pen, second, third.pen) == (Pen.TEXT, mark, Pen.TEXT)


def test_a_letter_the_font_lacks_is_refused() -> None:
    """Never a box: the refusal names the letter."""
    with pytest.raises(LayoutError, match="織"):
        outlined(Sheet("a", 9, 9, (Text(Point(1, 1), 4, "a織"),)))


def test_outlines_look_like_the_words() -> None:
    """An SVG's outlines cover the pixels that a PDF viewer inks for the same words (second opinions on both)."""
    words = (Text(Point(10, 12), 8, "Zoë 8% &"), Text(Point(55, 8), 6, "Łukasz", 35), Text(Point(12, 30), 7, "Ольга ½"))
    sheet, about = Sheet("a", 127, 50.8, words), About("", "")
    viewed = 255 - pdf_pixels(FORMATS["pdf"].write([sheet], about))
    drawn = 255 - svg_pixels(FORMATS["svg"].write([outlined(sheet)], about))
    assert drawn.sum() == pytest.approx(viewed.sum(), rel=0.02)
    assert abs(drawn - viewed).sum() < 0.1 * viewed.sum()
