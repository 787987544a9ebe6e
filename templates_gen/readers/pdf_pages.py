"""A second opinion on a PDF: its pages as pypdf finds them, which reads files in its own way."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from typing import TYPE_CHECKING, NamedTuple

from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Other

if TYPE_CHECKING:
    from pypdf import PageObject


class Page(NamedTuple):
    """The box of a page in units of the file, and the bytes of what it shows."""

    box: Sequence[float]
    content: bytes


def confirm(data: bytes, pages: Sequence[Page]) -> None:
    """`ReadError` unless pypdf finds just these pages: as many, of these sizes, with this content byte for byte."""
    from pypdf import PdfReader
    from pypdf.errors import PyPdfError

    try:
        found = [_page(page) for page in PdfReader(BytesIO(data), strict=True).pages]
    except (PyPdfError, ValueError, TypeError, AttributeError, LookupError, RecursionError) as error:
        raise ReadError(message(Other.UNREADABLE)) from error
    if len(found) != len(pages):
        raise ReadError(message(Other.PAGES, found=len(found), here=len(pages)))
    for number, (one, other) in enumerate(zip(found, pages, strict=True), 1):
        if list(one.box) != list(other.box):
            raise ReadError(message(Other.SIZE, number=number))
        if one.content != other.content:
            raise ReadError(message(Other.SHOWS_ELSE, number=number))


def _page(page: PageObject) -> Page:
    from pypdf.generic import StreamObject

    shown = page["/Contents"].get_object()
    if not isinstance(shown, StreamObject):
        raise ReadError(message(Other.SHOWS_NOTHING))
    return Page([float(side) for side in page.mediabox], shown.get_data())
