"""Where the ink of a sheet truly lies: letters by the font's own outlines, lines as wide as their pens.

The outlines are read by fontTools straight from the font file; nothing of the layout's own measures is used.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache, cached_property
from itertools import pairwise
from typing import NamedTuple

import numpy as np
from fontTools.pens.boundsPen import BoundsPen
from fontTools.ttLib import TTFont
from numpy.typing import NDArray

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from templates_gen.lettering.fonts import font_path

Array = NDArray[np.float64]
NEAR = 3.0  # things further apart than this, in mm, are not measured


class Box(NamedTuple):
    """Left, bottom, right, top in mm."""

    left: float
    bottom: float
    right: float
    top: float


class Meeting(NamedTuple):
    """Words, what they come near to, and the gap in mm between their inks (negative where they overlap)."""

    words: str
    other: str
    gap: float


@cache
def _font(face: Face) -> tuple[TTFont, object, dict[int, str], float]:
    font = TTFont(font_path(face))
    return font, font.getGlyphSet(), font.getBestCmap(), font["head"].unitsPerEm


@cache
def letter_ink(letter: str, face: Face = Face.REGULAR) -> tuple[Box | None, float]:
    """The box of a letter's outline and its advance, in ems; no box if it leaves no ink."""
    font, glyphs, cmap, em = _font(face)
    name = cmap[ord(letter)]
    pen = BoundsPen(glyphs)
    glyphs[name].draw(pen)  # type: ignore[index]
    box = Box(*(side / em for side in pen.bounds)) if pen.bounds else None
    return box, font["hmtx"][name][0] / em


@cache
def words_ink(words: str, face: Face) -> Box:
    """The box of the ink of `words` in ems, from the start of their baseline."""
    x, boxes = 0.0, []
    for letter in words:
        box, advance = letter_ink(letter, face)
        if box:
            boxes.append(Box(x + box.left, box.bottom, x + box.right, box.top))
        x += advance
    lefts, bottoms, rights, tops = zip(*boxes, strict=True)
    return Box(min(lefts), min(bottoms), max(rights), max(tops))


def corners(text: Text) -> list[Point]:
    """The four corners of the ink box of a text, where it stands on its sheet."""
    left, bottom, right, top = (side * text.size for side in words_ink(text.words, text.pen.ink.face))
    cos, sin = math.cos(math.radians(text.angle)), math.sin(math.radians(text.angle))
    return [
        Point(text.at.x + cos * x - sin * y, text.at.y + sin * x + cos * y)
        for x, y in ((left, bottom), (right, bottom), (right, top), (left, top))
    ]


@dataclass(frozen=True)
class Ink:
    """All sides and lines of a sheet as segments: ends (n x 4), half widths, what each is, and whose it is."""

    ends: Array
    half: Array
    owner: NDArray[np.int64]
    names: Sequence[str]

    @cached_property
    def boxes(self) -> tuple[Array, Array, Array, Array]:
        """The upright box of every segment: lefts, bottoms, rights, tops."""
        one, other = self.ends[:, :2], self.ends[:, 2:]
        (left, bottom), (right, top) = np.minimum(one, other).T, np.maximum(one, other).T
        return left.copy(), bottom.copy(), right.copy(), top.copy()


def _sides(shape: Shape) -> Iterator[tuple[Point, Point, float]]:
    if isinstance(shape, Text):
        around, half = corners(shape), 0.0
        yield from ((one, other, half) for one, other in zip(around, around[1:] + around[:1], strict=True))
        return
    for path in shape.contours if isinstance(shape, Region) else (shape,):
        points = path.points()
        if len(points) == 2:
            around = _stroke(*points, path.pen.ink.width / 2)
            yield from ((one, other, 0.0) for one, other in zip(around, around[1:] + around[:1], strict=True))
            continue
        if path.closed:
            points.append(path.start)
        half = path.pen.ink.width / 2
        yield from ((one, other, half) for one, other in pairwise(points))


def _stroke(one: Point, other: Point, half: float) -> list[Point]:
    """The four corners of a straight line's ink, whose ends are cut square."""
    length = math.dist(one, other) or 1.0
    dx, dy = (other.y - one.y) / length * half, (one.x - other.x) / length * half
    return [Point(x + s * dx, y + s * dy) for (x, y), s in ((one, 1), (other, 1), (other, -1), (one, -1))]


def ink_of(shapes: Sequence[Shape]) -> Ink:
    """The ink of straight-sided shapes; a tint is no ink, since words may stand on it."""
    ends, half, owner, names = [], [], [], []
    for index, shape in enumerate(shapes):
        names.append(shape.words if isinstance(shape, Text) else shape.pen.value)
        if isinstance(shape, Curve | Region) and shape.pen is Pen.TINT:
            continue
        for one, other, width in _sides(shape):
            ends.append((*one, *other))
            half.append(width)
            owner.append(index)
    return Ink(np.array(ends), np.array(half), np.array(owner), names)


def meetings(sheet: Sheet, least: float) -> list[Meeting]:
    """Every text whose ink is nearer than `least` mm to any other ink of the sheet."""
    ink = ink_of(sheet.shapes)
    found = []
    for index, text in enumerate(sheet.shapes):
        if isinstance(text, Text) and text.words.strip():
            found += _near(text, index, ink, least)
    return found


def _near(text: Text, index: int, ink: Ink, least: float) -> list[Meeting]:
    about = _about(text, ink, index)
    if not about.size:
        return []
    angle = math.radians(-text.angle)
    cos, sin = math.cos(angle), math.sin(angle)
    box = Box(*(side * text.size for side in words_ink(text.words, text.pen.ink.face)))
    x, y = ink.ends[about, 0::2] - text.at.x, ink.ends[about, 1::2] - text.at.y
    u, v = cos * x - sin * y, sin * x + cos * y  # as seen along the words
    gaps = _gaps(box, np.stack([u[:, 0], v[:, 0], u[:, 1], v[:, 1]], axis=1)) - ink.half[about]
    owners = ink.owner[about]
    return [
        Meeting(text.words, ink.names[owners[k]], float(gaps[k])) for k in np.nonzero(gaps < least - 1e-9)[0].tolist()
    ]


def _about(text: Text, ink: Ink, index: int) -> NDArray[np.int64]:
    """Which segments of others may be within `NEAR` of the words: their upright boxes are."""
    x, y = zip(*corners(text), strict=True)
    left, bottom, right, top = ink.boxes
    close = (left < max(x) + NEAR) & (right > min(x) - NEAR) & (bottom < max(y) + NEAR) & (top > min(y) - NEAR)
    return np.nonzero(close & (ink.owner != index))[0]


def _gaps(box: Box, ends: Array) -> Array:
    """The distance of each segment to an upright box; 0 where it runs through it."""
    a, b = ends[:, :2], ends[:, 2:]
    low, high = np.array(box[:2]), np.array(box[2:])
    found = np.minimum(_from_box(a, low, high), _from_box(b, low, high))
    for corner in ((box.left, box.bottom), (box.right, box.bottom), (box.right, box.top), (box.left, box.top)):
        found = np.minimum(found, _from_segments(np.array(corner), a, b))
    return np.where(_through(a, b, low, high), 0.0, found)


def _from_box(points: Array, low: Array, high: Array) -> Array:
    out = np.maximum(np.maximum(low - points, points - high), 0.0)
    return np.asarray(np.hypot(out[:, 0], out[:, 1]))


def _from_segments(point: Array, a: Array, b: Array) -> Array:
    run = b - a
    square = np.maximum(run[:, 0] ** 2 + run[:, 1] ** 2, 1e-18)
    along = (point[0] - a[:, 0]) * run[:, 0] + (point[1] - a[:, 1]) * run[:, 1]
    t = np.minimum(np.maximum(along / square, 0.0), 1.0)[:, None]
    off = a + t * run - point
    return np.asarray(np.hypot(off[:, 0], off[:, 1]))


def _through(a: Array, b: Array, low: Array, high: Array) -> NDArray[np.bool_]:
    """Which segments pass through the box (slab by slab)."""
    run = b - a
    safe = np.where(np.abs(run) < 1e-12, 1e-12, run)
    one, other = (low - a) / safe, (high - a) / safe
    first, last = np.minimum(one, other), np.maximum(one, other)
    enter, leave = np.maximum(first[:, 0], first[:, 1]), np.minimum(last[:, 0], last[:, 1])
    return np.asarray(np.maximum(enter, 0.0) < np.minimum(leave, 1.0))
