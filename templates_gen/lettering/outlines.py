"""Words into outlines, for formats whose readers may lack the font. Curves become short straight lines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache, lru_cache

from layout.drawing.pens import Face
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Text, points_at, straight_to
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError, shown
from templates_gen.lettering import fonts
from templates_gen.lettering.chords import Piece, chords
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form

FURTHEST = 0.02
"""How far in mm the outline of a letter may lie off the font's own curve: a fifth of a laser's beam."""

DECIMALS = 3
"""Letters and all their corners lie on whole thousandths of a mm, which saves digits in every file."""

_ROUNDED = 0.0022
"""How much of it rounding may take: of the word's place, of the letter's place in the word, and of each corner."""

_GLYPHS = 4096  # letters that are kept, each in one size

Contour = tuple[Point, ...]


def outlined(sheet: Sheet) -> Sheet:
    """The same sheet, in the same order, with a region for every text, of its pen; blank words leave nothing.

    A pen that does not fill draws the outlines of the letters instead.
    """
    shapes: list[Shape] = []
    for shape in sheet.shapes:
        if not isinstance(shape, Text):
            shapes.append(shape)
        elif not shape.pen.ink.fills:
            shapes += outline(shape).contours
        elif (region := outline(shape)).contours:
            shapes.append(region)
    return Sheet(sheet.name, sheet.width, sheet.height, tuple(shapes))


def outline(text: Text) -> Region:
    """The closed contours of the words in mm, holes turning back; `LayoutError` if the font lacks a character."""
    curves = [Curve(points[0], straight_to(points[1:]), text.pen, closed=True) for points in contours_of(text)]
    return Region(tuple(curves), text.pen)


def contours_of(text: Text) -> Iterator[list[Point]]:
    """The corners of each such contour, letter by letter, drawn only as far as they are asked for."""
    metrics = fonts.metrics()
    if missing := metrics.missing(text.words):
        raise LayoutError(message(Form.GLYPH, letters=shown(missing), words=shown(text.words)))
    placing = Placing(text.angle, round(text.at.x, DECIMALS), round(text.at.y, DECIMALS))
    face = text.pen.ink.face
    advances = metrics.advances if face is Face.REGULAR else metrics.strong
    pen_x = 0.0
    for letter in text.words:
        left = round(text.size * pen_x, DECIMALS)
        for contour in _glyph(letter, text.size, face):
            points = _placed(contour, left, placing)
            if len(points) > 2:
                yield points
        pen_x += advances[letter]


def _placed(contour: Contour, left: float, placing: Placing) -> list[Point]:
    """A contour of a letter that begins at `left` in its word; a slanted one is rounded once more."""
    if placing.degrees % 360 == 0:
        dx, dy = placing.dx, placing.dy
        return list(points_at([left + x + dx for x, _ in contour], [y + dy for _, y in contour]))
    points = placing.points([(left + x, y) for x, y in contour])
    if placing.degrees % 90 == 0:
        return points
    return _without_repeats([Point(round(x, DECIMALS), round(y, DECIMALS)) for x, y in points])


@lru_cache(_GLYPHS)
def _glyph(letter: str, size: float, face: Face) -> tuple[Contour, ...]:
    """The contours of one letter of that size in mm, each at least a triangle, no point given twice running."""
    furthest = (FURTHEST - _ROUNDED) / size
    rounded = (
        [Point(round(x * size, DECIMALS), round(y * size, DECIMALS)) for x, y in chords(contour, furthest)]
        for contour in _drawn(letter, face)
    )
    return tuple([tuple(contour) for contour in map(_without_repeats, rounded) if len(contour) > 2])


@cache
def _drawn(letter: str, face: Face) -> Sequence[Sequence[Piece]]:
    """The contours of one letter as the font has them, in ems."""
    from fontTools.pens.basePen import decomposeQuadraticSegment
    from fontTools.pens.recordingPen import DecomposingRecordingPen

    with fonts.LOCK:
        font = fonts.opened(face)
        glyphs, em = font.getGlyphSet(), font["head"].unitsPerEm
        pen = DecomposingRecordingPen(glyphs)
        glyphs[font.getBestCmap()[ord(letter)]].draw(pen)
    contours: list[list[Piece]] = []
    for operator, points in pen.value:
        in_ems = [(x / em, y / em) for x, y in points]
        if operator == "moveTo":
            contours.append([(None, in_ems[0])])
        elif operator == "lineTo":
            contours[-1].append((None, in_ems[0]))
        elif operator == "qCurveTo":
            contours[-1].extend(decomposeQuadraticSegment(in_ems))
    return contours


def _without_repeats(contour: list[Point]) -> list[Point]:
    """The contour without points that repeat the one before, counted round its closing."""
    return [point for before, point in zip(contour[-1:] + contour[:-1], contour, strict=True) if point != before]
