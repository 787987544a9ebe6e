"""The print font as the PDF library holds it, and words in its codes.

A file holds the letters that its words have and no others. What comes out the same again is made once: the part of the
font that is embedded, packed, and its widths as numbers of the file. Left to itself, the library makes them for each.
"""

from __future__ import annotations

import zlib
from collections.abc import Callable, Mapping
from functools import cache, lru_cache
from typing import Any

from layout.drawing.pens import Face
from templates_gen.lettering import fonts
from templates_gen.writers.unhinted import unhinted

_KEPT = 64  # programs of some ten kilobytes: two for each file of a kit, the same ones when it is made again
_SPACE = 32

_ESCAPED = {code: f"\\{code:03o}" for code in (*range(32), *range(127, 256))} | {
    code: f"\\{code:c}" for code in b"\\()"
}
"""A literal string (ISO 32000-1, 7.3.4.2): octal what is not plain, and a backslash before what would end it."""

Encode = Callable[[str], list[tuple[str, str]]]  # words to (font resource, escaped string)


def literal(codes: str) -> str:
    """What stands between the brackets of a literal string."""
    return codes.translate(_ESCAPED)


def register() -> None:
    """Gives both cuts of the font to the library, once in a process."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont

    with fonts.LOCK:
        for face in Face:
            if face.value in pdfmetrics.getRegisteredFontNames():
                continue
            font: Any = TTFont(face.value, str(fonts.font_path(face)), asciiReadable=1)
            # The library gives the last glyphs, which share one advance, that advance in thousandths of an em.
            font.face.hmetrics = [(advance, bearing & 0xFFFF) for advance, bearing in fonts.glyph_metrics(face)]
            _make_once(font.face)
            pdfmetrics.registerFont(font)


class _Packing:
    """The usual packing of a stream, once for the same bytes."""

    pdfname = "FlateDecode"
    encode = staticmethod(lru_cache(_KEPT)(zlib.compress))


def _make_once(face: Any) -> None:
    """Has the library make each part of the font, and write each width, once."""
    from reportlab.lib.rl_accel import fp_str
    from reportlab.pdfbase.pdfdoc import pdfdocEnc

    make, width, add = face.makeSubset, face.getCharWidth, face.addSubsetObjects

    @lru_cache(_KEPT)
    def made(subset: tuple[int, ...]) -> bytes:
        return unhinted(make(list(subset)))

    def added(document: Any, name: str, subset: list[int]) -> Any:
        descriptor = add(document, name, subset)
        document.idToObject[f"fontFile:{face.filename}({name})"].filters = [_Packing]
        return descriptor

    face.makeSubset = lambda subset: made(tuple(subset))
    face.getCharWidth = cache(lambda code: pdfdocEnc(fp_str(width(code))))
    face.addSubsetObjects = added


def encoder(document: Any, face: Face) -> Encode:
    """The font's own way to write words: its subsets hold 256 characters each, so words may fall into several runs."""
    font, used = _font(face), _used(document, face)

    def encode(words: str) -> list[tuple[str, str]]:
        used.update(words)
        if words.isascii():  # those have their own codes in the first subset
            return [(font.getSubsetInternalName(0, document), literal(words))]
        runs = font.splitString(words, document)
        return [
            (font.getSubsetInternalName(subset, document), literal(codes.decode("latin-1"))) for subset, codes in runs
        ]

    return encode


def drop_unused(document: Any) -> None:
    """Lets every code that no word of the finished document has stand for a space, and those at both ends for nothing.

    The library embeds all of ASCII, of which a sheet needs half. Program and map still agree code by code, and widths
    are given from the first to the last code that words have.
    """
    ranges = {}
    for face in Face:
        used, font = set(map(ord, _used(document, face))), _font(face)
        state = font.state.get(document)
        for number, subset in enumerate(state.subsets if state else ()):
            codes = [code for code, letter in enumerate(subset) if letter in used]
            if codes:
                ranges[font.getSubsetInternalName(number, document)[1:]] = codes[0], codes[-1]
            subset[:] = [letter if letter in used or letter < _SPACE else _SPACE for letter in subset]
    document.delayedFonts.append(_Widths(ranges))  # whose turn is when all fonts are made


class _Widths:
    """Leaves out the widths of each font, by its name, that lie outside a range of codes."""

    def __init__(self, ranges: Mapping[str, tuple[int, int]]) -> None:
        self._ranges = ranges

    def addObjects(self, document: Any) -> None:  # noqa: N802 - as the library calls it
        """In the fonts of a document."""
        from reportlab.pdfbase.pdfdoc import PDFArray

        for name, (first, last) in self._ranges.items():
            font = document.idToObject["BasicFonts"].dict[name]
            font.FirstChar, font.LastChar = first, last
            font.Widths = PDFArray(font.Widths.sequence[first : last + 1])


def _font(face: Face) -> Any:
    from reportlab.pdfbase import pdfmetrics

    return pdfmetrics.getFont(face.value)


def _used(document: Any, face: Face) -> set[str]:
    """The letters that words of a document have in one face so far, kept with the document."""
    found: set[str] = vars(document).setdefault("letters_used", {}).setdefault(face, set())
    return found
