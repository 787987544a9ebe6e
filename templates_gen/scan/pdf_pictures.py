"""The pictures of a PDF whose every page is exactly one picture, as scanners write it."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot
from pathlib import Path
from typing import Any

import pypdfium2
import pypdfium2.raw as pdfium
from PIL import Image

from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.greys import grey_of
from templates_gen.scan.limits import refuse_large, refuse_many
from templates_gen.scan.picture import Picture
from templates_gen.scan.resolution import of_box
from templates_gen.scan.seen import ScanError

_POINTS = 72  # an inch
_PASSWORD = 4  # pdfium's number for a PDF that wants one
_INVISIBLE = 3  # ISO 32000, 9.3.6: the words that programs for reading text lay over a scan


def pdf_pictures(path: Path, dpi: float | None) -> Iterator[Picture]:
    """A picture for each page; ScanError where a page is something else, or cannot be read."""
    try:
        document = pypdfium2.PdfDocument(path)
    except pypdfium2.PdfiumError as error:
        locked = getattr(error, "err_code", None) == _PASSWORD
        raise ScanError(
            ScanPicture.PDF_LOCKED if locked else ScanPicture.BROKEN, **({} if locked else {"page": 1})
        ) from None
    try:
        refuse_many(len(document))
        for number in range(len(document)):
            yield _picture(document, number, dpi)
    finally:
        document.close()


def _picture(document: Any, number: int, dpi: float | None) -> Picture:
    page_number = number + 1
    try:
        page = document[number]
        image, matrix = _only_image(page, page_number)
        width, height = image.get_px_size()
        refuse_large(width, height, page_number)
        pixels = image.get_bitmap().to_pil()
    except (pypdfium2.PdfiumError, ValueError, MemoryError) as error:
        if isinstance(error, ScanError):
            raise
        raise ScanError(ScanPicture.BROKEN, page=page_number) from None
    across, up = hypot(matrix.a, matrix.b), hypot(matrix.c, matrix.d)
    if min(across, up) <= 0:
        raise ScanError(ScanPicture.PDF_PAGE, page=page_number)
    if matrix.a * matrix.d - matrix.b * matrix.c < 0:
        pixels = pixels.transpose(Image.Transpose.FLIP_LEFT_RIGHT)
    grey = grey_of(pixels, page_number)
    page.close()
    if dpi is not None:
        return Picture(grey, (dpi, dpi), page_number, asked=True)
    found = of_box(width * _POINTS / across, height * _POINTS / up, page_number)
    return Picture(grey, found.dpi, page_number, found.remarks)


def _only_image(page: Any, number: int) -> tuple[Any, Any]:
    """The one picture of a page, and how it lies on it; words that are not shown do not count."""
    images = []
    for each in page.get_objects(max_depth=4):
        if each.type == pdfium.FPDF_PAGEOBJ_FORM:
            continue
        if each.type == pdfium.FPDF_PAGEOBJ_TEXT and pdfium.FPDFTextObj_GetTextRenderMode(each) == _INVISIBLE:
            continue
        images.append(each)
        if len(images) > 1:
            break
    if len(images) != 1 or images[0].type != pdfium.FPDF_PAGEOBJ_IMAGE:
        raise ScanError(ScanPicture.PDF_PAGE, page=number)
    return images[0], images[0].get_matrix()
