"""PDF back to sheets: `pdf_file` opens it, `pdf_font` proves its fonts, `content` walks its pages, `pdf_outline` what
leads to them, and of a file that comes from elsewhere, `pdf_pages` has another library confirm which pages there are.

One rule holds throughout: each dictionary may hold the keys named here and no other, so that crop boxes, rotations,
user units, forms, images, annotations, scripts and encryption are refused without a check for each.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from layout.drawing.sheet import Sheet
from layout.values.errors import shown
from templates_gen.document import AUTHOR, About, Document, ReadError, unpacked
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Read
from templates_gen.readers.content import MM, walked
from templates_gen.readers.pdf_file import PdfFile
from templates_gen.readers.pdf_font import font_of
from templates_gen.readers.pdf_outline import outline_of
from templates_gen.readers.pdf_pages import Page, confirm
from templates_gen.readers.pdf_values import Reference
from templates_gen.readers.tokens import Font

LARGEST_FILE = 16_000_000
"""Bytes: ten times the job sheets of a run with eight boards full of combs."""
_LARGEST_UNPACKED = 60_000_000  # such a run has a tenth of that
_MOST_SHAPES = 80_000  # on all pages; such a kit has 27,000
_MOST_FONTS = 32

_TRAILER = {"/Size", "/Root", "/Info", "/ID"}
_CATALOG = {"/Type", "/Pages", "/PageMode", "/Lang", "/ViewerPreferences", "/Outlines"}
_INFO = {"/Title", "/Author", "/Keywords", "/Creator", "/Producer", "/Subject", "/CreationDate", "/ModDate", "/Trapped"}
_PAGES = {"/Type", "/Kids", "/Count"}
_PAGE = {"/Type", "/Parent", "/MediaBox", "/Resources", "/Contents"}
_RESOURCES = {"/Font", "/ProcSet"}
_STREAM = {"/Length", "/Filter"}


def read(data: bytes) -> Document:
    """Every page as a sheet, in mm; `ReadError` with one sentence for anything else than a file of ours."""
    document, pages = _whole(data)
    confirm(data, pages)
    return document


def read_back(data: bytes) -> Document:
    """The same of a file that was written in this very run, without the other library: loading it takes long."""
    return _whole(data)[0]


def _whole(data: bytes) -> tuple[Document, list[Page]]:
    if len(data) > LARGEST_FILE:
        raise ReadError(message(Read.TOO_LARGE, most=LARGEST_FILE))
    try:
        return _read(PdfFile(data, _LARGEST_UNPACKED))
    except KeyError as error:
        raise ReadError(message(Read.LACKS, what=shown(error.args[0]))) from error


def _read(file: PdfFile) -> tuple[Document, list[Page]]:
    trailer = file.dictionary(file.trailer, _TRAILER, Read.TRAILER)
    catalog = file.dictionary(trailer["/Root"], _CATALOG, Read.CATALOGUE)
    info = file.dictionary(trailer["/Info"], _INFO, Read.INFO)
    preferences = file.dictionary(catalog["/ViewerPreferences"], {"/PrintScaling"}, Read.VIEWER)
    if preferences["/PrintScaling"] != "/None":
        raise ReadError(message(Read.SCALING))
    mode = "/UseOutlines" if "/Outlines" in catalog else "/UseNone"
    if catalog["/Type"] != "/Catalog" or catalog.get("/PageMode", "/UseNone") != mode:
        raise ReadError(message(Read.VIEW))
    if not _text(catalog["/Lang"]) or _text(info["/Author"]) != AUTHOR:
        raise ReadError(message(Read.LANGUAGE))
    title = _text(info["/Title"])
    inputs, names, operations = unpacked(_text(info["/Keywords"]), title)
    if operations is not None:
        raise ReadError(message(Read.OPERATIONS))
    about, tag = About(title, inputs), _text(catalog["/Lang"])
    if not about.speaks(tag):
        raise ReadError(message(Read.OTHER_LANGUAGE, found=shown(tag), wanted=about.language))
    sheets, pages = _sheets(file, catalog["/Pages"], names, about.colours)
    outline = outline_of(file, catalog, file.dictionary(catalog["/Pages"], _PAGES, Read.TREE)["/Kids"], _text)
    return Document(tuple(sheets), about._replace(outline=outline)), pages


def _text(found: object) -> str:
    """A text string (ISO 32000-1, 7.9.2.2): plain ASCII, or UTF-16 that says so."""
    try:
        if isinstance(found, bytes):
            return found.decode("utf-16" if found.startswith(b"\xfe\xff") else "ascii")
    except UnicodeDecodeError:
        pass
    raise ReadError(message(Read.INFORMATION))


def _sheets(
    file: PdfFile, reference: Any, names: tuple[str, ...], colours: Mapping[str, str]
) -> tuple[list[Sheet], list[Page]]:
    """Every page, as a sheet and as it stands in the file; no two pages share what they show.

    Fonts are read once a file, by the number of their object.
    """
    tree = file.dictionary(reference, _PAGES, Read.TREE)
    kids, count = tree["/Kids"], tree["/Count"]
    if tree["/Type"] != "/Pages" or not isinstance(kids, list) or type(count) is not int:
        raise ReadError(message(Read.NO_PAGES))
    if not len(kids) == count == len(names):
        raise ReadError(message(Read.PAGES, sheets=len(names), count=count, kids=len(kids)))
    pages = [file.dictionary(kid, _PAGE, Read.PAGE) for kid in kids]
    shown_on = [page["/Contents"] for page in pages]
    if not all(isinstance(each, Reference) for each in (*kids, *shown_on)) or len({*kids, *shown_on}) != 2 * len(kids):
        raise ReadError(message(Read.SAME_PAGE))
    fonts: dict[Reference, Font] = {}
    if any(page["/Type"] != "/Page" or page["/Parent"] != reference for page in pages):
        raise ReadError(message(Read.NOT_PAGES))
    sheets: list[Sheet] = []
    read: list[Page] = []
    left = _MOST_SHAPES
    for name, page in zip(names, pages, strict=True):
        content = file.unpacked(page["/Contents"], _STREAM, Read.PAGE_CONTENT)
        (width, height), own = _size(page["/MediaBox"]), _fonts(file, page, fonts)
        sheets.append(Sheet(name, width * MM, height * MM, walked(content, own, colours, left)))
        read.append(Page(page["/MediaBox"], content))
        left -= len(sheets[-1].shapes)
    return sheets, read


def _fonts(file: PdfFile, page: Mapping[str, Any], known: dict[Reference, Font]) -> dict[str, Font]:
    """The fonts of a page by the names that it gives them; those that are `known` are not read again."""
    resources = file.dictionary(page["/Resources"], _RESOURCES, Read.RESOURCES)
    fonts = {}
    for own_name, reference in file.dictionary(resources["/Font"], None, Read.FONTS_OF).items():
        if not isinstance(reference, Reference):
            raise ReadError(message(Read.OWN_FONT))
        if reference not in known:
            if len(known) == _MOST_FONTS:
                raise ReadError(message(Read.FONTS, most=_MOST_FONTS))
            known[reference] = font_of(file, reference)
        fonts[own_name[1:]] = known[reference]
    return fonts


def _size(box: Any) -> tuple[float, float]:
    """Width and height of a page in units of the file."""
    plain = isinstance(box, list) and len(box) == 4 and all(type(side) in (int, float) for side in box)
    if not plain or box[:2] != [0, 0] or not (box[2] > 0 and box[3] > 0):
        raise ReadError(message(Read.BOX, box=shown(box)))
    return float(box[2]), float(box[3])
