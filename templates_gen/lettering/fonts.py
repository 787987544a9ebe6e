"""The one print font: where it lies and how wide its letters are. Draws nothing."""

from __future__ import annotations

import unicodedata
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING

from layout.drawing.metrics import FontMetrics
from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form

if TYPE_CHECKING:
    from fontTools.ttLib import TTFont

FONT_NAME = "OpenSans-Regular"
_PACKAGE = "ttf_opensans"

# In the font, but not printed as they are: control and format characters show nothing, and combining marks need
# shaping. The no-break space is drawn as a plain one, so a file could not be read back to the letter.
_NOT_PRINTED = ("Cc", "Cf", "Mn", "Me", "Zl", "Zp")
_NO_BREAK_SPACE = "\xa0"


@cache
def font_path() -> Path:
    """The font file. `LayoutError` if its package is not installed."""
    spec = find_spec(_PACKAGE)  # not imported: the package would pull in an imaging library
    folders = spec.submodule_search_locations if spec else None
    for folder in folders or ():
        path = Path(folder, "ttf", f"{FONT_NAME}.ttf")
        if path.is_file():
            return path
    raise LayoutError(message(Form.NO_FONT, font=FONT_NAME))


@cache
def opened() -> TTFont:
    """The font as a library object, loaded once in a process."""
    from fontTools.ttLib import TTFont

    return TTFont(font_path(), lazy=True)


@cache
def metrics() -> FontMetrics:
    """Widths of every printable character, cap height, ascent and descent, in fractions of the em."""
    font = opened()
    em = font["head"].unitsPerEm
    widths = font["hmtx"].metrics
    advances = {chr(code): widths[glyph][0] / em for code, glyph in font.getBestCmap().items() if _printable(chr(code))}
    os2 = font["OS/2"]
    return FontMetrics(advances, os2.sCapHeight / em, os2.usWinAscent / em, -os2.usWinDescent / em)


def glyph_metrics() -> list[tuple[int, int]]:
    """The advance and the left side bearing of every glyph in font units, in the order of the font."""
    font = opened()
    metrics = font["hmtx"].metrics
    return [metrics[name] for name in font.getGlyphOrder()]


def _printable(letter: str) -> bool:
    return letter != _NO_BREAK_SPACE and unicodedata.category(letter) not in _NOT_PRINTED
