"""Pages as a printer puts them on paper and a scanner sees them, simulated; and what is read of such a picture.

A window of a page is rendered at 2400 dpi, put on the printer's dots, grown by the ink's spread with ragged edges, then
turned, blurred, sampled and made noisy as a scan is. Typical values, from memory: no printer or scanner was at hand.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, radians, sin

import numpy
import pypdfium2
import zxingcpp
from numpy.typing import NDArray
from PIL import Image
from scipy import ndimage

Pixels = NDArray[numpy.float64]
Box = tuple[float, float, float, float]

FINE = 2400
"""Dots per inch at which a page is rendered."""

_MM, _POINT = 25.4, 25.4 / 72
_PX = _MM / FINE  # mm


@dataclass(frozen=True)
class Inked:
    """Where there is ink in a window of a sheet, in pixels of `FINE`; `box` is in mm from the lower left corner."""

    ink: NDArray[numpy.bool_]
    box: Box


@dataclass(frozen=True)
class Scan:
    """A grey picture, 0 to 255, and where it shows what: `matrix` and `origin` take mm of the sheet to pixels."""

    pixels: NDArray[numpy.uint8]
    matrix: Pixels
    origin: Pixels

    def at(self, x: float, y: float) -> Pixels:
        """The pixel, column and row, of a place on the sheet."""
        found: Pixels = self.matrix @ numpy.array([x, y]) + self.origin
        return found

    def back(self, pixel: Pixels) -> Pixels:
        """The place on the sheet of a pixel."""
        found: Pixels = numpy.linalg.solve(self.matrix, pixel - self.origin)
        return found


def rendered(page: pypdfium2.PdfPage, box: Box) -> Inked:
    """A window of a page as the file draws it."""
    left, low, right, high = box
    wide, tall = page.get_width() * _POINT, page.get_height() * _POINT
    crop = tuple(side / _POINT for side in (left, low, wide - right, tall - high))
    bitmap = page.render(scale=FINE / 72, crop=crop, grayscale=True)
    grey = numpy.asarray(bitmap.to_pil().convert("L"))
    # pdfium cuts at whole pixels, of a page that is drawn a whole number of them wide and high
    begin, up = (
        numpy.ceil(left / _PX) * wide / numpy.ceil(wide / _PX),
        numpy.ceil(low / _PX) * tall / numpy.ceil(tall / _PX),
    )
    return Inked(grey < 128, (begin, up, begin + grey.shape[1] * _PX, up + grey.shape[0] * _PX))


def printed(window: Inked, dots: int, spread: float, random: numpy.random.Generator, ragged: float = 0.008) -> Inked:
    """The ink on paper of a printer of so many `dots` an inch; `spread` and `ragged` edges in mm."""
    size = FINE // dots
    shift = random.integers(0, size, 2)  # the page lies anywhere on the printer's grid
    ink = numpy.roll(window.ink, shift, (0, 1))
    rows, columns = (length // size * size for length in ink.shape)
    blocks = ink[:rows, :columns].reshape(rows // size, size, columns // size, size).mean((1, 3)) >= 0.5
    ink[:rows, :columns] = blocks.repeat(size, 0).repeat(size, 1)
    ink = numpy.roll(ink, -shift, (0, 1))
    outside = ndimage.distance_transform_edt(~ink) - ndimage.distance_transform_edt(ink)  # in pixels, to the edge
    rough = ndimage.gaussian_filter(random.standard_normal(ink.shape), 3)
    rough *= ragged / _PX / rough.std()
    return Inked(outside * _PX <= spread + rough * _PX, window.box)


def scanned(
    window: Inked,
    dpi: int,
    random: numpy.random.Generator,
    *,
    turn: float | None = None,
    blur: float | None = None,
    noise: float | None = None,
) -> Scan:
    """The window as a scanner of so many `dpi` shows it: turned up to 5 degrees, blurred, grey, noisy."""
    turn = random.uniform(-5, 5) if turn is None else turn
    blur = random.uniform(0.5, 1.2) if blur is None else blur
    noise = random.uniform(2, 9) if noise is None else noise
    step = FINE / dpi
    smooth = ndimage.gaussian_filter(window.ink.astype(numpy.float32), numpy.hypot(blur * step, step / 12**0.5))
    angle, shear = radians(turn), random.uniform(-0.004, 0.004)
    # rows and columns of the fine picture from those of the scan, about the middle of both
    ways = numpy.array([[cos(angle), -sin(angle)], [sin(angle), cos(angle)]]) @ numpy.array([[1, shear], [0, 1]]) * step
    height, width = window.ink.shape
    side = int(numpy.ceil(max(height, width) / step * 1.02))
    middle = numpy.array([height, width]) / 2 + random.uniform(-0.5, 0.5, 2) * step
    offset = middle - ways @ numpy.array([side, side]) / 2
    ink = ndimage.affine_transform(smooth, ways, offset, (side, side), order=1, cval=0)
    paper, black, gamma = random.uniform(200, 250), random.uniform(15, 60), random.uniform(0.7, 1.3)
    grey = paper - (paper - black) * numpy.clip(ink, 0, 1) ** gamma
    grey += random.normal(0, noise, grey.shape)
    pixels = numpy.clip(numpy.rint(grey), 0, 255).astype(numpy.uint8)
    # mm of the sheet to rows and columns of the fine picture, then to those of the scan; pixels are at their middles
    left, _, _, high = window.box
    to_fine = numpy.array([[0, -1 / _PX], [1 / _PX, 0]])
    begin = numpy.array([high / _PX - 0.5, -left / _PX - 0.5])
    back = numpy.linalg.inv(ways)
    rows = back @ to_fine
    origin = back @ (begin - offset)
    return Scan(pixels, rows[::-1], origin[::-1])


def codes_in(scan: Scan) -> list[str]:
    """What zxing-cpp reads of a scan as it is."""
    return [found.text for found in zxingcpp.read_barcodes(Image.fromarray(scan.pixels))]


def codes_at_last(scan: Scan) -> list[str]:
    """The same; where nothing is found, of the picture at twice its size."""
    if found := codes_in(scan):
        return found
    picture = Image.fromarray(scan.pixels)
    return [found.text for found in zxingcpp.read_barcodes(picture.resize((picture.width * 2, picture.height * 2)))]


def centre_of(scan: Scan, x: float, y: float, reach: float = 1.8) -> Pixels:
    """The middle of the ink round a place, in mm of the sheet: the centroid of what is darker than the paper."""
    scale = abs(numpy.linalg.det(scan.matrix)) ** 0.5
    rows, columns = numpy.mgrid[: scan.pixels.shape[0], : scan.pixels.shape[1]]
    paper = numpy.median(scan.pixels[scan.pixels > 128])
    dark = numpy.clip(paper - scan.pixels.astype(float), 0, None)
    dark[dark < 0.12 * dark.max()] = 0
    column, row = scan.at(x, y)
    for _ in range(6):
        away = numpy.hypot(columns - column, rows - row)
        weight = dark * numpy.clip(reach * scale - away + 0.5, 0, 1)
        column, row = (weight * columns).sum() / weight.sum(), (weight * rows).sum() / weight.sum()
    return scan.back(numpy.array([column, row]))


def scales(places: Sequence[tuple[float, float]], found: Sequence[Pixels]) -> tuple[float, float]:
    """By how much a sheet is too wide and too high, as shares, by the best affine map of its targets."""
    sheet = numpy.column_stack([numpy.array(places), numpy.ones(len(places))])
    (across, up, _), *_ = numpy.linalg.lstsq(sheet, numpy.array(found), rcond=None)
    return float(across[0]) - 1, float(up[1]) - 1
