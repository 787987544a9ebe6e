"""The print font in its two cuts: where they lie and how wide their letters are. Draws nothing."""

from __future__ import annotations

import unicodedata
from functools import cache
from importlib.util import find_spec
from io import BytesIO
from pathlib import Path
from threading import RLock
from typing import TYPE_CHECKING

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Face
from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form

if TYPE_CHECKING:
    from fontTools.ttLib import TTFont

LOCK = RLock()
"""Held by whoever reads in an opened font: its tables are read when they are asked for, from one place in memory."""

_PACKAGE = "ttf_opensans"

# In the font, but not printed as they are: control and format characters show nothing, and combining marks need
# shaping. The no-break space is drawn as a plain one, so a file could not be read back to the letter.
_NOT_PRINTED = ("Cc", "Cf", "Mn", "Me", "Zl", "Zp")
_NO_BREAK_SPACE = "\xa0"


@cache
def font_path(face: Face = Face.REGULAR) -> Path:
    """The font file of a cut. `LayoutError` if its package is not installed."""
    spec = find_spec(_PACKAGE)  # not imported: the package would pull in an imaging library
    folders = spec.submodule_search_locations if spec else None
    for folder in folders or ():
        path = Path(folder, "ttf", f"{face.value}.ttf")
        if path.is_file():
            return path
    raise LayoutError(message(Form.NO_FONT, font=face.value))


@cache
def opened(face: Face = Face.REGULAR) -> TTFont:
    """A cut of the font as a library object, loaded once in a process.

    Its tables are read when they are asked for, from memory: a file that is open would have one place to read at for
    this process and every copy of it.
    """
    from fontTools.ttLib import TTFont

    return TTFont(BytesIO(font_path(face).read_bytes()), lazy=True)


def metrics() -> FontMetrics:
    """Widths of every printable character, cap height, ascent and descent, in fractions of the em; always the same."""
    with LOCK:
        return _metrics()


@cache
def _metrics() -> FontMetrics:
    font = opened()
    em, os2 = font["head"].unitsPerEm, font["OS/2"]
    heights = os2.sCapHeight / em, os2.usWinAscent / em, -os2.usWinDescent / em
    return FontMetrics(_advances(Face.REGULAR), *heights, _advances(Face.STRONG))


def _advances(face: Face) -> dict[str, float]:
    font = opened(face)
    em, widths = font["head"].unitsPerEm, font["hmtx"].metrics
    return {chr(code): widths[glyph][0] / em for code, glyph in font.getBestCmap().items() if _printable(chr(code))}


def glyph_metrics(face: Face) -> list[tuple[int, int]]:
    """The advance and the left side bearing of every glyph of a cut in font units, in the order of the font."""
    with LOCK:
        font = opened(face)
        metrics = font["hmtx"].metrics
        return [metrics[name] for name in font.getGlyphOrder()]


def _printable(letter: str) -> bool:
    return letter != _NO_BREAK_SPACE and unicodedata.category(letter) not in _NOT_PRINTED
