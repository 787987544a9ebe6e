"""The codes of sheets on a picture: what each says, and where its corners are."""

from __future__ import annotations

from typing import NamedTuple

import numpy
import zxingcpp
from PIL import Image, ImageFilter

from templates_gen.codes.numerals import DIGITS
from templates_gen.codes.payload import KIND, LENGTH
from templates_gen.messages.roles.scan import ScanSheet
from templates_gen.scan.picture import MM, Grey, Numbers, Picture
from templates_gen.scan.seen import Label, ScanError

_FINE, _FINER = 450, 900  # dpi from which codes are read in a picture of half, a quarter the size: faster, and as well
_TALL = 297.0  # mm: about as high as a bed, for a picture whose resolution is not known
_SAME = 0.5  # two codes are one if their corners are so near, as a share of their side


class Code(NamedTuple):
    """A code, and its corners in pixels (column, row): as it stands upright, from above left clockwise."""

    label: Label
    corners: Numbers


def codes_on(picture: Picture) -> list[Code]:
    """Every code of a sheet; ScanError where there is none, or where all that there are say something else."""
    smaller = _smaller(picture)
    tries = ((1 / smaller, 0), (1.0, 0)) if smaller > 1 else ((1.0, 0), (2.0, 0), (2.0, 1))
    texts = next((read for size, soft in tries if (read := _read(picture.grey, size, soft))), [])
    if not texts:
        raise ScanError(ScanSheet.NO_CODE)
    found = [Code(label, corners) for text, corners in texts if (label := _label(text)) is not None]
    if not found:
        raise ScanError(ScanSheet.FOREIGN)
    return _once(found)


def _smaller(picture: Picture) -> int:
    dpi = max(picture.grey.shape) * MM / _TALL if picture.dpi is None else min(picture.dpi)
    return 4 if dpi >= _FINER else 2 if dpi >= _FINE else 1


def _read(grey: Grey, size: float, soft: float) -> list[tuple[str, Numbers]]:
    """The texts of all Data Matrix symbols of a picture at `size` times its own, their corners in pixels of its own.

    A picture that is larger is made softer by so many pixels: noise looks like modules.
    """
    shown = grey
    if size < 1:
        shown = _averaged(grey, round(1 / size))
    elif size > 1:
        image = Image.fromarray(grey)
        larger = image.resize((round(image.width * size), round(image.height * size)))
        shown = numpy.asarray(larger.filter(ImageFilter.GaussianBlur(soft)) if soft else larger)
    read = zxingcpp.read_barcodes(
        numpy.ascontiguousarray(shown),
        formats=zxingcpp.BarcodeFormats([zxingcpp.BarcodeFormat.DataMatrix]),
        try_invert=False,
    )
    found: list[tuple[str, Numbers]] = []
    for each in read:
        at = each.position
        corners = [(each.x, each.y) for each in (at.top_left, at.top_right, at.bottom_right, at.bottom_left)]
        found.append((each.text, (numpy.array(corners, float) + 0.5) / size - 0.5))
    return found


def _averaged(grey: Grey, by: int) -> Grey:
    rows, columns = (side // by * by for side in grey.shape)
    total = numpy.zeros((rows // by, columns // by), numpy.uint16)
    for row in range(by):
        for column in range(by):
            total += grey[row:rows:by, column:columns:by]
    return (total // (by * by)).astype(numpy.uint8)


def _label(text: str) -> Label | None:
    """What a text says; None if it is not that of a sheet."""
    if len(text) != LENGTH or not text.startswith(KIND) or not set(text) <= set(DIGITS):
        return None
    digest, rest = text[3:12], text[12:]
    number, total = int(rest[:2], 36), int(rest[2:4], 36)
    width, height = int(rest[4:8], 36) / 100, int(rest[8:], 36) / 100
    if not (1 <= number <= total and min(width, height) > 0):
        return None
    return Label(digest, number, total, (width, height))


def _once(codes: list[Code]) -> list[Code]:
    kept: list[Code] = []
    for code in codes:
        middle, side = code.corners.mean(0), float(numpy.hypot(*(code.corners[1] - code.corners[0])))
        if all(numpy.hypot(*(middle - other.corners.mean(0))) > _SAME * side for other in kept):
            kept.append(code)
    return sorted(kept, key=lambda code: (code.label.digest, code.label.number))
