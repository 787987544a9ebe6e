"""Second opinions: files as programs from outside show them, ten pixels to the millimetre, 0 black to 255 white."""

from __future__ import annotations

import io

import numpy
import pypdfium2
import resvg_py
from numpy.typing import NDArray
from PIL import Image

DPI = 254
Pixels = NDArray[numpy.float64]


def pdf_pixels(data: bytes, page: int = 0) -> Pixels:
    """A page as pdfium shows it."""
    bitmap = pypdfium2.PdfDocument(data)[page].render(scale=DPI / 72, grayscale=True)
    return numpy.asarray(bitmap.to_pil().convert("L"), dtype=float)


def svg_pixels(data: bytes) -> Pixels:
    """A drawing as resvg shows it."""
    png = resvg_py.svg_to_bytes(svg_string=data.decode(), background="white", skip_system_fonts=True, dpi=DPI)
    return numpy.asarray(Image.open(io.BytesIO(bytes(png))).convert("L"), dtype=float)


def inked(pixels: Pixels, left: float, right: float, bottom: float, top: float) -> tuple[float, float]:
    """The centre of all ink within a window, in mm from the lower left corner of the sheet."""
    height = pixels.shape[0]
    window = 255 - pixels[height - round(top * 10) : height - round(bottom * 10), round(left * 10) : round(right * 10)]
    rows, columns = window.sum(axis=1), window.sum(axis=0)
    x = (columns * (numpy.arange(columns.size) + 0.5)).sum() / columns.sum()
    y = (rows * (numpy.arange(rows.size) + 0.5)).sum() / rows.sum()
    return left + float(x) / 10, top - float(y) / 10
