"""Whole sheets as a printer puts them on paper and a scanner sees them, simulated.

A page is rendered at 1200 dpi, put on the printer's dots, grown by the ink's spread with ragged edges (`Print`). Then
it is laid on a bed, turned, stretched, slanted, moved by an uneven carriage, blurred, lit, made noisy (`scan`). Only
where there is ink is anything computed. Typical values, from memory: no printer or scanner was at hand.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from math import ceil, cos, hypot, radians, sin

import numpy
import pypdfium2
from numpy.typing import NDArray
from PIL import Image, ImageFilter
from scipy import ndimage

from layout.drawing.correction import Scale
from templates_gen.scan.frames import Map, best_map, scale_and_turn
from templates_gen.scan.picture import Flags, Numbers, Picture
from templates_gen.scan.seen import Line

FINE = 1200
MM = 25.4
_TILE = 128
_SOFT = 1.2  # pixels of `FINE` over which an edge of ink is soft before it is cut
Ink = NDArray[numpy.uint8]
Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Print:
    """The ink of a sheet, 0 to 255 a pixel of about `FINE`; `width` and `height` in mm."""

    ink: Ink
    width: float
    height: float
    _kept: dict[int, Ink] = field(default_factory=dict, repr=False)

    @property
    def to_pixels(self) -> Map:
        """From mm of the sheet, y up, to column and row."""
        rows, columns = self.ink.shape
        return Map(
            numpy.diag([columns / self.width, -rows / self.height]), numpy.array([-0.5, rows - 0.5], dtype=float)
        )

    def reduced(self, by: int) -> Ink:
        """The ink of a picture so many times smaller; what is left over at the right and below is averaged too."""
        if by not in self._kept:
            self._kept[by] = self.ink if by == 1 else numpy.asarray(Image.fromarray(self.ink).reduce(by))
        return self._kept[by]

    def with_ink(self, box: Box, ink: int, shape: Callable[[Numbers, Numbers], Flags] | None = None) -> Print:
        """With `ink` in a box (mm, left, low, right, high), or where `shape` of mm across and up says so in it."""
        painted = self.ink.copy()
        rows, columns = painted.shape
        left, right = (round(min(max(x, 0), self.width) * columns / self.width) for x in (box[0], box[2]))
        top, bottom = (
            round((self.height - min(max(y, 0), self.height)) * rows / self.height) for y in (box[3], box[1])
        )
        part = painted[top:bottom, left:right]
        if shape is None:
            part[:] = ink
        else:
            x = (numpy.arange(left, right) + 0.5) * (self.width / columns)
            y = self.height - (numpy.arange(top, bottom) + 0.5) * (self.height / rows)
            there = shape(x[None, :], y[:, None])
            part[there] = numpy.maximum(part[there], ink)
        return Print(painted, self.width, self.height)


def printed(
    page: pypdfium2.PdfPage,
    random: numpy.random.Generator,
    exact: Sequence[Box],
    dots: int = 600,
    spread: float = 0.02,
    ragged: float = 0.008,
) -> Print:
    """A page as a printer of so many `dots` an inch leaves it; `spread` of the ink and `ragged` edges in mm.

    Dots and edges are put into the boxes `exact` alone, where something is measured; the rest is as the file draws it.
    """
    width, height = (float(side) * MM / 72 for side in (page.get_width(), page.get_height()))
    ink = 255 - page.render(scale=FINE / 72, grayscale=True).to_numpy().reshape(-1, ceil(page.get_width() * FINE / 72))
    noise = ndimage.gaussian_filter(random.standard_normal((_TILE * 2, _TILE * 2)).astype(numpy.float32), 2)
    out = (spread / MM * FINE + noise * (ragged / MM * FINE / noise.std())) / _SOFT
    level = 1 / (1 + numpy.exp(1.702 * out))  # 1 - the normal distribution, by a close formula
    steep = _SOFT / (1.702 * level * (1 - level))  # pixels over which a blurred edge rises there by the whole
    size = FINE // dots
    shift = random.integers(0, size, 2)
    before = ink.copy()
    for row, column in _tiles_of(exact, Print(ink, width, height)):
        top, left = max(0, row - 8), max(0, column - 8)
        top, left = top + (shift[0] - top) % size, left + (shift[1] - left) % size
        part = before[top : row + _TILE + 8, left : column + _TILE + 8]
        if not part.any():
            continue
        # an edge that was blurred lies where half is left; it moves outward where less is asked for
        soft = ndimage.gaussian_filter(_on_dots(part, size).astype(numpy.float32), _SOFT, truncate=3)
        a, b = random.integers(0, _TILE - 16, 2)
        noisy = numpy.s_[a : a + part.shape[0], b : b + part.shape[1]]
        cover = 255 * ((soft - level[noisy]) * steep[noisy] + 0.5)
        shown = numpy.clip(cover, 0, 255).astype(numpy.uint8)[max(0, row - top) :, max(0, column - left) :]
        into = ink[max(row, top) : row + _TILE, max(column, left) : column + _TILE]
        into[:] = shown[: into.shape[0], : into.shape[1]]
    return Print(ink, width, height)


def _tiles_of(boxes: Sequence[Box], sheet: Print) -> list[tuple[int, int]]:
    """Row and column of the tiles that boxes touch."""
    found = set()
    for left, low, right, high in boxes:
        (first, bottom), (last, top) = sheet.to_pixels.to(numpy.array([(left, low), (right, high)], float))
        for row in range(max(0, int(top)) // _TILE, int(min(bottom, sheet.ink.shape[0] - 1)) // _TILE + 1):
            for column in range(max(0, int(first)) // _TILE, int(min(last, sheet.ink.shape[1] - 1)) // _TILE + 1):
                found.add((row * _TILE, column * _TILE))
    return sorted(found)


def _on_dots(ink: Ink, size: int) -> Flags:
    """Where at least half of a printer's dot is black."""
    if size == 1:
        return ink >= 128
    rows, columns = (-(-side // size) * size for side in ink.shape)
    whole = numpy.zeros((rows, columns), numpy.uint8)
    whole[: ink.shape[0], : ink.shape[1]] = ink
    dots = whole.reshape(rows // size, size, columns // size, size).mean((1, 3)) >= 128
    full: Flags = dots.repeat(size, 0).repeat(size, 1)[: ink.shape[0], : ink.shape[1]]
    return full


@dataclass(frozen=True)
class Bed:
    """How a sheet is scanned. Lengths in mm of the bed, `turn` in degrees to the left, `waves` of the carriage as
    (size, length, phase); `jump` is (from there on, by so much). `tilt` makes it a photograph."""

    dpi: int = 300
    turn: float = 0.0
    scale: Scale = field(default=Scale())
    margin: tuple[float, float] = (5.0, 5.0)
    waves: tuple[tuple[float, float, float], ...] = ()
    jump: tuple[float, float] | None = None
    blur: float = 0.8
    noise: float = 4.0
    paper: float = 235.0
    black: float = 35.0
    gamma: float = 1.0
    lid: float = 245.0
    shade: float = 0.0
    jpeg: int | None = None
    tilt: float = 0.0
    crop: tuple[float, float, float, float] = (0.0, 0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Scanned:
    """A scan, and the truth of it."""

    grey: Ink
    dpi: int
    bed: Bed
    print: Print
    straight: Map = field(repr=False)

    @property
    def picture(self) -> Picture:
        """As it is read from a file."""
        return Picture(self.grey, (float(self.dpi), float(self.dpi)))

    def on_bed(self, places: Numbers) -> Numbers:
        """Where places of the sheet are seen, in mm of the bed, y up."""
        at = self.straight.to(numpy.asarray(places, float))
        seen = at.copy()
        for _ in range(8):
            seen[:, 1] = at[:, 1] - _uneven(self.bed, seen[:, 1])
        return seen

    def truth(self, rectangle: tuple[float, float, float, float]) -> tuple[Scale, float]:
        """Scale and turn of the best affine map of a rectangle of the sheet."""
        left, low, right, high = rectangle
        x, y = numpy.meshgrid(numpy.linspace(left, right, 40), numpy.linspace(low, high, 60))
        grid = numpy.column_stack([x.ravel(), y.ravel()])
        return scale_and_turn(best_map(grid, self.on_bed(grid)).matrix)


def _uneven(bed: Bed, up: Numbers) -> Numbers:
    """By how much the carriage is off at heights of the bed (negative ones, y up)."""
    off = numpy.zeros_like(up)
    for size, length, phase in bed.waves:
        off += size * numpy.sin(2 * numpy.pi * up / length + phase)
    if bed.jump is not None:
        off += numpy.where(-up > bed.jump[0], bed.jump[1], 0.0)
    return off


def scan(sheet: Print, bed: Bed, random: numpy.random.Generator) -> Scanned:
    """The sheet as the scanner shows it."""
    angle = radians(bed.turn)
    matrix = numpy.array([[cos(angle), -sin(angle)], [sin(angle), cos(angle)]]) @ numpy.array(
        [[bed.scale.x, bed.scale.skew], [0, bed.scale.y]]
    )
    corners = numpy.array([(0, 0), (sheet.width, 0), (sheet.width, sheet.height), (0, sheet.height)], float) @ matrix.T
    left, right, low, high = *_ends(corners[:, 0]), *_ends(corners[:, 1])
    origin = numpy.array([bed.margin[0] - left - bed.crop[0], -bed.margin[1] - high + bed.crop[1]])
    straight = Map(matrix, origin + random.uniform(-0.5, 0.5, 2) * MM / bed.dpi)
    wide = right - left + 2 * bed.margin[0] - bed.crop[0] - bed.crop[2]
    tall = high - low + 2 * bed.margin[1] - bed.crop[1] - bed.crop[3]
    columns, rows = (int(side / MM * bed.dpi) for side in (wide, tall))
    ink, lid = _sampled(sheet, bed, straight, rows, columns)
    return Scanned(_lit(ink, lid, bed, random), bed.dpi, bed, sheet, straight)


def _ends(values: Numbers) -> tuple[float, float]:
    return float(values.min()), float(values.max())


def _sampled(sheet: Print, bed: Bed, straight: Map, rows: int, columns: int) -> tuple[Ink, Flags]:
    """Ink of each pixel, 0 to 255, and where the lid of the bed is seen."""
    by = max(1, FINE // (2 * bed.dpi))
    wide_blur = hypot(bed.blur, 12**-0.5) * FINE / by / bed.dpi  # of the lens, and of a pixel's own size
    source = numpy.asarray(Image.fromarray(sheet.reduced(by)).filter(ImageFilter.GaussianBlur(wide_blur)))
    presence = _presence(source)
    ink, lid = numpy.zeros((rows, columns), numpy.uint8), numpy.zeros((rows, columns), bool)
    inverse = numpy.linalg.inv(straight.matrix)
    wide, tall = sheet.ink.shape[1] / by, sheet.ink.shape[0] / by
    step = 128
    for top in range(0, rows, step):
        row = numpy.arange(top, min(rows, top + step))
        v = -row * MM / bed.dpi
        v = v + _uneven(bed, v)
        for left in range(0, columns, step):
            column = numpy.arange(left, min(columns, left + step))
            u, w = (column * MM / bed.dpi)[None, :], v[:, None]
            if bed.tilt:
                u, w = _tilted(u, w, bed.tilt, columns * MM / bed.dpi, rows * MM / bed.dpi)
            x = inverse[0, 0] * (u - straight.origin[0]) + inverse[0, 1] * (w - straight.origin[1])
            y = inverse[1, 0] * (u - straight.origin[0]) + inverse[1, 1] * (w - straight.origin[1])
            corners = numpy.s_[:: max(1, len(row) - 1), :: max(1, len(column) - 1)]
            ends = *_ends(x[corners]), *_ends(y[corners])
            tile = numpy.s_[top : min(rows, top + step), left : min(columns, left + step)]
            if ends[0] < 1 or ends[1] > sheet.width - 1 or ends[2] < 1 or ends[3] > sheet.height - 1:
                lid[tile] = (x < 0) | (x > sheet.width) | (y < 0) | (y > sheet.height)
            first = int(max(0, (sheet.height - ends[3]) / sheet.height * tall)) // _CELL
            last = int(max(0, (sheet.height - ends[2]) / sheet.height * tall)) // _CELL + 1
            begin, end = (int(max(0, side / sheet.width * wide)) // _CELL for side in ends[:2])
            if presence[first:last, begin : end + 1].any():
                at = numpy.stack([(sheet.height - y) * (tall / sheet.height) - 0.5, x * (wide / sheet.width) - 0.5])
                seen = ndimage.map_coordinates(source, at, numpy.float32, 1)
                ink[tile] = (seen + 0.5).astype(numpy.uint8)
    return ink, lid


_CELL = 32


def _tilted(u: Numbers, v: Numbers, tilt: float, wide: float, tall: float) -> tuple[Numbers, Numbers]:
    """Places of a sheet that a camera sees from below its middle."""
    shrink = 1 + tilt * (v / tall + 0.5)
    return wide / 2 + (u - wide / 2) * shrink, v * shrink


def _presence(source: Ink) -> Flags:
    rows, columns = source.shape
    tall, wide = -(-rows // _CELL), -(-columns // _CELL)
    seen = numpy.zeros((tall * _CELL, wide * _CELL), numpy.uint8)
    seen[:rows, :columns] = source
    found: Flags = ndimage.binary_dilation(seen.reshape(tall, _CELL, wide, _CELL).max((1, 3)) > 0)
    return found


def _lit(ink: Ink, lid: Flags, bed: Bed, random: numpy.random.Generator) -> Ink:
    """Grey of the picture: tone, light, noise, and what JPEG makes of it."""
    rows, columns = ink.shape
    tone = ((numpy.arange(256) / 255) ** bed.gamma).astype(numpy.float32) * (bed.paper - bed.black)
    noise = random.standard_normal(1 << 20, numpy.float32) * numpy.float32(bed.noise)
    across = (1 - bed.shade * numpy.linspace(-1, 1, columns) ** 2 / 2).astype(numpy.float32)
    pixels = numpy.empty(ink.shape, numpy.uint8)
    for top in range(0, rows, 32):
        part = ink[top : top + 32]
        grey = numpy.float32(bed.paper) - tone[part]
        outside = lid[top : top + 32]
        if outside.any():
            grey[outside] = bed.lid
        if bed.shade:
            grey *= across * numpy.float32(1 + bed.shade * (2 * top / rows - 1))
        begin = int(random.integers(0, max(1, noise.size - grey.size)))
        grey += numpy.resize(noise[begin : begin + grey.size], grey.shape)
        pixels[top : top + 32] = numpy.clip(grey + 0.5, 0, 255)
    if bed.jpeg is None:
        return pixels
    kept = io.BytesIO()
    Image.fromarray(pixels).save(kept, "JPEG", quality=bed.jpeg)
    return numpy.asarray(Image.open(kept))


def any_bed(random: numpy.random.Generator, dpi: int, *, wobble: float = 0.0) -> Bed:
    """A bed at random: any way up, turned by up to 5 degrees, as uneven as `wobble` (mm), any light and noise."""
    waves = tuple((wobble, random.uniform(20, 160), random.uniform(0, 6.3)) for _ in range(3)) if wobble else ()
    return Bed(
        dpi=dpi,
        turn=float(random.choice((0, 90, 180, 270)) + random.uniform(-5, 5)),
        scale=Scale(1 + random.normal(0, 0.003), 1 + random.normal(0, 0.003), random.uniform(-0.004, 0.004)),
        margin=(random.uniform(0, 30), random.uniform(0, 30)),
        waves=waves,
        blur=random.uniform(0.5, 1.2),
        noise=random.uniform(2, 9),
        paper=random.uniform(200, 250),
        black=random.uniform(15, 60),
        gamma=random.uniform(0.7, 1.3),
        lid=random.choice((250.0, 230.0, 150.0, 30.0)),
        shade=random.uniform(0, 0.1),
        jpeg=75 if random.random() < 0.4 else None,
    )


def print_off(sheet: Print, line: Line) -> float | None:
    """How far the ink of a line is off its place across itself, in mm: what the printer's dots made of it."""
    start, end = numpy.array(line.start), numpy.array(line.end)
    length = hypot(*(end - start))
    way = (end - start) / length
    left = numpy.array([-way[1], way[0]])
    along = (numpy.arange(60) / 59 - 0.5) * 0.7 * length
    reach = max(0.3, line.width / 2 + 0.15)
    across = numpy.linspace(-reach, reach, 61)
    points = (start + end) / 2 + along[:, None, None] * way + across[None, :, None] * left
    pixels = sheet.to_pixels.to(points.reshape(-1, 2))
    ink = ndimage.map_coordinates(sheet.ink, pixels.T[::-1], numpy.float32, 1).reshape(60, 61)
    total = ink.sum(1)
    usual = numpy.median(total)
    good = numpy.abs(total - usual) < 0.1 * usual
    if good.sum() < 12 or usual <= 0:
        return None
    return float(numpy.median((ink * across).sum(1)[good] / total[good]))


def straight_lines(sheet: object, pens: Sequence[object], least: float) -> list[Line]:
    """The straight lines of a drawn sheet of these pens that are as long as `least` mm."""
    found = []
    for shape in sheet.shapes:  # type: ignore[attr-defined]
        if getattr(shape, "pen", None) in pens and hasattr(shape, "steps"):
            points = shape.points()
            if len(points) == 2 and hypot(points[1].x - points[0].x, points[1].y - points[0].y) >= least:
                found.append(Line(points[0], points[1], shape.pen.ink.width))
    return found
