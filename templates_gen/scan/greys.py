"""Any picture that Pillow opens as 8-bit grey: luma of colours, paper where it is clear, the right way up."""

from __future__ import annotations

import numpy
from PIL import Image, ImageOps

from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.picture import Grey
from templates_gen.scan.seen import ScanError

_DEEP = 65535  # the white of 16 bits


def grey_of(image: Image.Image, page: int) -> Grey:
    """Its pixels; ScanError for a kind of picture whose white is not known."""
    image = ImageOps.exif_transpose(image)
    if image.mode.startswith("I;16") or image.mode == "I":
        return _of_deep(numpy.asarray(image), page)
    if image.mode == "F":
        raise ScanError(ScanPicture.DEPTH, page=page)
    if image.mode == "CMYK":
        image = image.convert("RGB")
    if image.has_transparency_data:
        image = image.convert("RGBA")
        paper = Image.new("RGBA", image.size, (255, 255, 255, 255))
        paper.alpha_composite(image)
        image = paper
    return numpy.ascontiguousarray(numpy.asarray(image.convert("L")))


def _of_deep(pixels: numpy.ndarray[tuple[int, ...], numpy.dtype[numpy.generic]], page: int) -> Grey:
    if pixels.size and (int(pixels.max()) > _DEEP or int(pixels.min()) < 0):
        raise ScanError(ScanPicture.DEPTH, page=page)
    grey = numpy.empty(pixels.shape, numpy.uint8)
    for row in range(0, pixels.shape[0], 256):  # in strips, since sums of whole pictures need four times the memory
        part = pixels[row : row + 256].astype(numpy.uint32)
        grey[row : row + 256] = (part * 255 + _DEEP // 2) // _DEEP
    return grey
