"""Words as outlines, against fontTools' own measures of the letters and against letters drawn by a PDF viewer."""

from __future__ import annotations

import math

import pytest
import shapely
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


@pytest.fixture(scope="module")
def font() -> TTFont:
    """The font file, opened afresh."""
    return TTFont(fonts.font_path())


@pytest.mark.parametrize("letter", "OgÅŁЖ8%&@½ë")
def test_a_letter_covers_its_area(font: TTFont, letter: str) -> None:
    """The flattened contours, holes turning back, cover what fontTools reckons for the curves, to one per cent."""
    glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
    pen = AreaPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    drawn = sum(map(area, outline(Text(Point(0, 0), EM, letter)).contours))
    assert drawn == pytest.approx(pen.value * (EM / em) ** 2, rel=0.01)


@pytest.mark.parametrize("letter", "OgÅŁЖ8%&@½ë")
def test_a_letter_stays_in_its_box(font: TTFont, letter: str) -> None:
    """The box of the contours is that of the letter's curves, to a thousandth of the em."""
    glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
    pen = BoundsPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    points = [point for path in outline(Text(Point(0, 0), EM, letter)).contours for point in path.points()]
    box = (min(p.x for p in points), min(p.y for p in points), max(p.x for p in points), max(p.y for p in points))
    assert box == pytest.approx([side * EM / em for side in pen.bounds], abs=EM / 1000)


def test_letters_follow_at_their_widths(font: TTFont) -> None:
    """The second letter stands one advance width on, as the font's table has it."""
    alone, second = outline(Text(Point(0, 0), EM, "i")), outline(Text(Point(0, 0), EM, "Mi"))
    advance = font["hmtx"]["M"][0] / font["head"].unitsPerEm * EM
    for one, other in zip(alone.contours, second.contours[-2:], strict=True):
        assert other.start == pytest.approx((one.start.x + advance, one.start.y), abs=1e-9)


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


@pytest.mark.parametrize("letter", "OgÅ8%&@½ëß§Ю")
def test_no_curve_is_cut_off_by_more_than_the_file_says(font: TTFont, letter: str) -> None:
    """Points along the font's own curves lie, by shapely, within the limit of the outline; some come near it."""
    glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
    drawn = shapely.MultiLineString([[*c.points(), c.start] for c in outline(Text(Point(0, 0), EM, letter)).contours])
    pen = DecomposingRecordingPen(glyphs)
    glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    at, worst = (0.0, 0.0), 0.0
    for operator, points in pen.value:
        for bend, end in decomposeQuadraticSegment(points) if operator == "qCurveTo" else ():
            for t in (k / 24 for k in range(25)):
                on = (
                    ((1 - t) ** 2 * a + 2 * t * (1 - t) * b + t * t * c) for a, b, c in zip(at, bend, end, strict=True)
                )
                worst = max(worst, drawn.distance(shapely.Point(*(value * EM / em for value in on))))
            at = end
        at = points[-1] if points else at
    assert FURTHEST / 4 < worst / EM <= FURTHEST * 1.0001


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
