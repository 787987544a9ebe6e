"""All rings on a picture, found roughly by normalised correlation with the drawing of a target."""

from __future__ import annotations

from typing import NamedTuple

import numpy
from PIL import Image

from layout.paper.targets import DOT_R, RING_PEN, RING_R
from templates_gen.scan.frames import bed
from templates_gen.scan.picture import MM, Grey, Numbers, Picture

FINE = 4.0
"""Pixels a millimetre of the picture in which rings are sought."""

ALIKE = 0.6
_MOST = 60
_REACH = 1.9  # mm: the ring and the white around it
_APART = 1.5  # mm: nearer peaks are of one ring


class Rings(NamedTuple):
    """Where rings seem to be, in mm of the bed, and how alike a target each is, the most alike first."""

    places: Numbers
    alike: Numbers


def rings_on(picture: Picture, dpi: tuple[float, float], sheets: int = 1) -> Rings:
    """The rings of a picture, some sixty of each sheet at most."""
    shown = _shown(picture.grey, dpi)
    alike = _correlation(255 - shown.astype(numpy.float32), _template())
    rows, columns = _peaks(alike)
    order = numpy.argsort(-alike[rows, columns])[: _MOST * sheets]
    rows, columns = rows[order], columns[order]
    pixels = (numpy.column_stack([columns, rows]) + 0.5) * (
        numpy.array(picture.grey.shape[::-1]) / numpy.array(shown.shape[::-1])
    ) - 0.5
    return Rings(bed(dpi).to(pixels), alike[rows, columns].astype(float))


def _shown(grey: Grey, dpi: tuple[float, float]) -> Grey:
    """The picture at `FINE`, each pixel the average of those under it."""
    size = [max(1, round(side / each * MM * FINE)) for side, each in zip(grey.shape[::-1], dpi, strict=True)]
    return numpy.asarray(Image.fromarray(grey).resize((size[0], size[1]), Image.Resampling.BOX))


def _template() -> Numbers:
    """How black each pixel of a target is, on the average of 8 x 8 points."""
    half, many = int(_REACH * FINE), 8
    side = (numpy.arange((2 * half + 1) * many) + 0.5) / many - half - 0.5
    away = numpy.hypot(side[:, None], side[None, :]) / FINE
    black = (numpy.abs(away - RING_R) <= RING_PEN.ink.width / 2) | (away <= DOT_R)
    shares: Numbers = black.reshape(2 * half + 1, many, 2 * half + 1, many).mean((1, 3))
    return shares


def _correlation(black: numpy.ndarray[tuple[int, ...], numpy.dtype[numpy.float32]], template: Numbers) -> Numbers:
    """How alike the template is to what lies round each pixel: 1 if the same but for light and contrast."""
    half = template.shape[0] // 2
    side = numpy.arange(-half, half + 1)
    disc = (numpy.hypot(side[:, None], side[None, :]) <= _REACH * FINE).astype(float)
    count = disc.sum()
    wanted = (template - (template * disc).sum() / count) * disc
    size = [_smooth(length + 2 * half) for length in black.shape]
    spectrum = numpy.fft.rfft2(black, size)
    squares = numpy.fft.rfft2(black**2, size)

    def against(shape: Numbers, seen: numpy.ndarray[tuple[int, ...], numpy.dtype[numpy.complexfloating]]) -> Numbers:
        turned = numpy.fft.rfft2(shape[::-1, ::-1], size)
        full = numpy.fft.irfft2(seen * turned, size)
        around: Numbers = full[half : half + black.shape[0], half : half + black.shape[1]]
        return around

    spread = against(disc, squares) - against(disc, spectrum) ** 2 / count
    floor = count * 4.0**2  # grey levels: noise on bare paper is like nothing
    found: Numbers = against(wanted, spectrum) / numpy.sqrt(numpy.maximum(spread, floor) * (wanted**2).sum())
    return found


def _smooth(length: int) -> int:
    """A length that an FFT is fast at: the next one with no factor above 5."""
    best = 1 << (length - 1).bit_length()
    five = 1
    while five < best:
        three = five
        while three < best:
            best = min(best, three << max(0, (-(-length // three) - 1).bit_length()))
            three *= 3
        five *= 5
    return best


def _peaks(alike: Numbers) -> tuple[numpy.ndarray[tuple[int], numpy.dtype[numpy.intp]], ...]:
    """Rows and columns of the greatest values within `_APART`."""
    rows, columns = numpy.nonzero(alike >= ALIKE)
    order = numpy.argsort(-alike[rows, columns], kind="stable")[:5000]
    kept: list[int] = []
    for each in order:
        if all((rows[each] - rows[k]) ** 2 + (columns[each] - columns[k]) ** 2 > (_APART * FINE) ** 2 for k in kept):
            kept.append(int(each))
    return rows[kept], columns[kept]
