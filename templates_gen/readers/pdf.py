"""PDF back to sheets: pypdf opens the file, `content` walks its pages. Everything our writer never makes is refused.

One rule holds throughout: each dictionary may hold the keys named here and no other, so that crop boxes, rotations,
user units, forms, images, annotations, scripts and encryption are refused without being looked for.
"""

from __future__ import annotations

import io
import logging
import re
from collections.abc import Mapping
from typing import Any

from layout.drawing.sheet import Sheet
from layout.errors import shown
from templates_gen.document import AUTHOR, About, Document, ReadError, unpacked
from templates_gen.fonts import FONT_NAME
from templates_gen.readers.content import MM, walked
from templates_gen.readers.tokens import Font

LARGEST_FILE = 64_000_000
"""Bytes; 5,000 marks are under 100,000."""

_TRAILER = {"/Size", "/Root", "/Info", "/ID"}
_CATALOG = {"/Type", "/Pages", "/PageMode", "/Lang", "/ViewerPreferences"}
_INFO = {"/Title", "/Author", "/Keywords", "/Creator", "/Producer", "/Subject", "/CreationDate", "/ModDate", "/Trapped"}
_PAGES = {"/Type", "/Kids", "/Count"}
_PAGE = {"/Type", "/Parent", "/MediaBox", "/Resources", "/Contents"}
_RESOURCES = {"/Font", "/ProcSet"}
_STREAM = {"/Length", "/Filter"}
_FONT = {
    "/Type", "/Subtype", "/Name", "/BaseFont", "/FirstChar", "/LastChar", "/Widths", "/FontDescriptor", "/ToUnicode",
}  # fmt: skip
_BASE_FONT = re.compile(rf"/[A-Z]{{6}}\+{FONT_NAME}")
_CODE_LINE = re.compile(rb"<([0-9A-Fa-f]{2})> <([0-9A-Fa-f]{4})>")
_CODE_BLOCK = re.compile(rb"\d+ beginbfchar\n(.*?)\nendbfchar", re.DOTALL)

logging.getLogger("pypdf").addHandler(logging.NullHandler())  # what it finds wrong is told by our own refusal


def read(data: bytes) -> Document:
    """Every page as a sheet, in mm; `ReadError` with one sentence for anything else than a file of ours."""
    if len(data) > LARGEST_FILE:
        raise ReadError(f"the PDF is larger than {LARGEST_FILE} bytes")
    try:
        return _read(data)
    except ReadError:
        raise
    except KeyError as error:
        raise ReadError(f"the PDF lacks {shown(error.args[0])}") from error
    except Exception as error:  # pypdf meets broken files with errors of every kind; each of them means: not ours
        raise ReadError(f"the PDF is damaged ({type(error).__name__}: {shown(str(error))})") from error


def _read(data: bytes) -> Document:
    from pypdf import PdfReader

    if data.count(b"startxref") != 1:
        raise ReadError("the PDF was changed after it was written, or is cut short")
    file = PdfReader(io.BytesIO(data), strict=True)
    trailer = _only(file.trailer, _TRAILER, "trailer")
    catalog = _only(trailer["/Root"], _CATALOG, "catalogue")
    info = _only(trailer["/Info"], _INFO, "information")
    preferences = _only(catalog["/ViewerPreferences"], {"/PrintScaling"}, "viewer preferences")
    if preferences["/PrintScaling"] != "/None":
        raise ReadError("the PDF does not ask to be printed without scaling")
    if not catalog["/Lang"] or info["/Author"] != AUTHOR:
        raise ReadError("the PDF does not name its language and author")
    inputs, names, operations = unpacked(_text(info["/Keywords"]))
    if operations is not None:
        raise ReadError("the PDF carries the operations of a cutter, for which it is no format")
    pages = _only(catalog["/Pages"], _PAGES, "page tree")
    if not len(pages["/Kids"]) == pages["/Count"] == len(names):
        raise ReadError(f"the PDF names {len(names)} sheets but holds {pages['/Count']} pages")
    fonts: dict[int, Font] = {}
    sheets = tuple([_sheet(name, page, fonts) for name, page in zip(names, pages["/Kids"], strict=True)])
    return Document(sheets, About(_text(info["/Title"]), inputs))


def _only(found: Any, keys: set[str], where: str) -> Mapping[str, Any]:
    """The dictionary behind a reference; refused if it is none or holds any other key."""
    found = found.get_object()
    if not isinstance(found, dict):
        raise ReadError(f"the PDF's {where} is not a dictionary")
    if strange := sorted(found.keys() - keys):
        raise ReadError(f"the PDF's {where} holds {shown(strange[0])}, which none of ours does")
    return found


def _text(found: object) -> str:
    if not isinstance(found, str):
        raise ReadError("the PDF's information is not text")
    return str(found)


def _sheet(name: str, reference: Any, known: dict[int, Font]) -> Sheet:
    """One page; fonts are read once a file and then `known` by the number of their object."""
    page = _only(reference, _PAGE, "page")
    if page["/Type"] != "/Page":
        raise ReadError("the PDF's page tree holds something else than pages")
    box = [float(side) for side in page["/MediaBox"]]
    if len(box) != 4 or box[:2] != [0, 0] or not (box[2] > 0 and box[3] > 0):
        raise ReadError(f"the PDF's page box is {box}, not one that begins at 0, 0")
    resources = _only(page["/Resources"], _RESOURCES, "resources")
    fonts = {}
    for name_of_font, font in resources["/Font"].get_object().items():
        number = font.idnum
        if number not in known:
            known[number] = _font(font)
        fonts[name_of_font[1:]] = known[number]
    return Sheet(name, box[2] * MM, box[3] * MM, walked(_stream(page["/Contents"], _STREAM, "page content"), fonts))


def _stream(found: Any, keys: set[str], where: str) -> bytes:
    """The decoded bytes of one stream, compressed in the one usual way or not at all."""
    stream = found.get_object()
    _only(stream, keys, where)
    if stream.get("/Filter", "/FlateDecode") not in ("/FlateDecode", ["/FlateDecode"]):
        raise ReadError(f"the PDF's {where} is packed as {stream['/Filter']}, as no file of ours does")
    data: bytes = stream.get_data()
    return data


def _font(reference: Any) -> Font:
    """What each code of an embedded font stands for, from its ToUnicode map."""
    font = _only(reference, _FONT, "font")
    descriptor = font["/FontDescriptor"].get_object()
    if font["/Subtype"] != "/TrueType" or not _BASE_FONT.fullmatch(font["/BaseFont"]):
        raise ReadError(f"the PDF's font is {shown(str(font['/BaseFont']))}, not {FONT_NAME}")
    if "/FontFile2" not in descriptor or descriptor["/FontName"] != font["/BaseFont"]:
        raise ReadError("the PDF's font is not embedded")
    blocks = _CODE_BLOCK.findall(_stream(font["/ToUnicode"], _STREAM, "font map"))
    if len(blocks) != 1:
        raise ReadError("the PDF's font map cannot be read")
    letters = {}
    for line in blocks[0].splitlines():
        match = _CODE_LINE.fullmatch(line)
        if not match:
            raise ReadError(f"the PDF's font map holds {shown(line)}")
        letters[int(match[1], 16)] = chr(int(match[2], 16))
    return letters
