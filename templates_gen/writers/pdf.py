"""Sheets to PDF: absolute coordinates only, one content stream a page, words as real text.

The operators of a page are written here and given to the canvas as text. The canvas's own calls for lines and words
format every number by itself and set every pen again, which takes several times as long.
"""

from __future__ import annotations

import hashlib
import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import groupby
from typing import Any, cast

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Region, Shape, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.values.errors import LayoutError
from templates_gen.document import AUTHOR, About, packed
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form
from templates_gen.writers.checks import check
from templates_gen.writers.curves import handles
from templates_gen.writers.pdf_fonts import Encode, drop_unused, encoder, literal, register

_PT = 72 / 25.4  # PDF units in a millimetre
_VERSION = (1, 6)  # the first in which a file may ask to be printed without scaling
_DATE = "D:20000101000000Z"  # always the same: a file does not say when it was made
_SUBPATHS = 100  # in one path: the memory of PostScript printers is limited


def write(sheets: Sequence[Sheet], about: About) -> bytes:
    """The PDF file, the same bytes for the same sheets. `LayoutError` if a sheet cannot be written."""
    check(sheets, about)
    if about.operations is not None:
        raise LayoutError(message(Form.PDF_OPERATIONS))
    for sheet in sheets:
        if any(isinstance(shape, Region) and shape.pen.ink.words for shape in sheet.shapes):
            raise LayoutError(message(Form.PDF_OUTLINES))
    from reportlab.pdfbase.pdfdoc import PDFString

    canvas = _canvas(about, packed(sheets, about))
    colours = about.colours
    if any(shape.pen.ink.operation not in {"", *colours} for sheet in sheets for shape in sheet.shapes):
        raise LayoutError(message(Form.PDF_COLOURS))
    encoders = {face: encoder(canvas._doc, face) for face in Face}
    first_of = {entry.number: entry for entry in about.outline}
    for number, sheet in enumerate(sheets, 1):
        canvas.setPageSize((_points(sheet.width), _points(sheet.height)))
        if entry := first_of.get(number):
            canvas.bookmarkPage(str(number))
            canvas.addOutlineEntry(PDFString(entry.title, enc="utf-16"), str(number))
        canvas.addLiteral("\n".join(_operators(sheet.shapes, encoders, colours)))
        canvas.showPage()
        _strip(canvas._doc.Pages.pages[-1])
    if about.outline:
        canvas.showOutline()
    drop_unused(canvas._doc)
    return cast(bytes, canvas.getpdfdata())


def _canvas(about: About, keywords: str) -> Any:
    from reportlab.pdfbase.pdfdoc import PDFString
    from reportlab.pdfgen.canvas import Canvas

    register()
    # invariant: no clock in the file. initialFontName: otherwise every page asks for Helvetica.
    first_font: Any = Face.REGULAR.value  # its type is given wrong
    canvas: Any = Canvas(
        "", pageCompression=1, invariant=1, initialFontName=first_font, lang=about.language, pdfVersion=_VERSION
    )
    canvas.setAuthor(AUTHOR)
    canvas.setCreator(AUTHOR)
    canvas.setSubject("")
    canvas.setKeywords(PDFString(literal(keywords).encode("ascii"), escape=0, enc="raw"))
    canvas.setViewerPreference("PrintScaling", "None")
    # Left to itself the library picks among encodings, loses some letters and writes "þÿ" as another encoding's sign.
    canvas.setTitle(PDFString(about.title, enc="utf-16"))
    # Even an invariant canvas takes its date from SOURCE_DATE_EPOCH and makes it part of the file's identity, which
    # also cannot take a title with an encoding. So both are given.
    canvas.setDateFormatter(lambda *_: _DATE)
    canvas._doc.signature = hashlib.md5((about.title + keywords).encode(), usedforsecurity=False)
    canvas._doc.info.digest = lambda _: None
    return canvas


def _strip(page: Any) -> None:
    """Leave out what the canvas puts on every page and offers no switch for: rotation, transition, ASCII85."""
    from reportlab.pdfbase.pdfdoc import PDFStream, PDFZCompress

    page.Rotate = page.Trans = None
    page.Contents = PDFStream(content=page.stream, filters=[PDFZCompress])


def _points(mm: float) -> float:
    """Millimetres in PDF units; whole where only the rounding of the conversion keeps them from being whole."""
    points = mm * _PT
    return round(points) if abs(points - round(points)) < 1e-6 else points


def _operators(shapes: Sequence[Shape], encoders: Mapping[Face, Encode], colours: Mapping[str, str]) -> Iterator[str]:
    """The page's operators, run by run; line width, dash and greys are set only where they change."""
    state: dict[str, str] = {"g": "0 g", "G": "0 G", "d": "[] 0 d"}  # as every page begins
    for pen, run in groupby(shapes, pen_of):
        for operator, setting in _settings(pen, colours):
            if state.get(operator) != setting:
                state[operator] = setting
                yield setting
        if pen.ink.words:
            yield from _words(cast(Iterable[Text], run), encoders[pen.ink.face])
        elif pen.ink.fills:
            for region in cast(Iterable[Region], run):
                yield from map(_contour, region.contours)
                yield "f"
        else:
            paths = list(map(_subpath, cast(Iterable[Curve], run)))
            for first in range(0, len(paths), _SUBPATHS):
                yield from paths[first : first + _SUBPATHS]
                yield "S"


def _settings(pen: Pen, colours: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    ink = pen.ink
    if ink.operation:
        red, green, blue = (int(colours[ink.operation][k : k + 2], 16) / 255 for k in (1, 3, 5))
        yield "g", f"{red:.5f} {green:.5f} {blue:.5f} rg"
    elif ink.fills:
        yield "g", f"{ink.grey:g} g"
    else:
        yield "G", f"{ink.grey:g} G"
        yield "w", f"{ink.width * _PT:.5f} w"
        yield "d", "[" + " ".join([f"{part * _PT:.5f}" for part in ink.dash]) + "] 0 d"


def _contour(path: Curve) -> str:
    """One path; a rectangle, of which a code has many, as its corner and its sides (ISO 32000-1, 8.5.2.1: re)."""
    (left, low), steps, _, closed = path
    if closed and len(steps) == 3 and not any(step.through for step in steps):
        right, high = steps[1].end
        if right > left and high > low and (steps[0].end, steps[2].end) == ((right, low), (left, high)):
            numbers = (left, low, right - left, high - low)
            return " ".join([f"{number * _PT:.5f}" for number in numbers]) + " re"
    return _subpath(path)


def _subpath(path: Curve) -> str:
    """One path; numbers to a hundred-thousandth of a unit, which is 0.004 micrometres."""
    start, steps, _, closed = path
    x, y = start
    if len(steps) == 1 and not closed and steps[0].through is None:  # nearly every path of a sheet is one line
        end_x, end_y = steps[0].end
        return f"{x * _PT:.5f} {y * _PT:.5f} m {end_x * _PT:.5f} {end_y * _PT:.5f} l"
    parts = [f"{x * _PT:.5f} {y * _PT:.5f} m"]
    for end, through in steps:
        x, y = end
        if through is None:
            parts.append(f"{x * _PT:.5f} {y * _PT:.5f} l")
        else:
            ax, ay, bx, by = handles(start, through, end)
            parts.append(f"{ax * _PT:.5f} {ay * _PT:.5f} {bx * _PT:.5f} {by * _PT:.5f} {x * _PT:.5f} {y * _PT:.5f} c")
        start = end
    if closed:
        parts.append("h")
    return " ".join(parts)


def _words(texts: Iterable[Text], encode: Encode) -> Iterator[str]:
    """One text object; each text has its own matrix, so that its place depends on no other text."""
    font = ""
    yield "BT"
    for (x, y), size, words, angle, _ in texts:
        cos, sin = math.cos(math.radians(angle)), math.sin(math.radians(angle))
        yield f"{cos:.9f} {sin:.9f} {-sin:.9f} {cos:.9f} {x * _PT:.5f} {y * _PT:.5f} Tm"
        for name, codes in encode(words):
            wanted = f"{name} {size * _PT:.5f} Tf"
            if wanted != font:
                font = wanted
                yield wanted
            yield f"({codes}) Tj"
    yield "ET"
