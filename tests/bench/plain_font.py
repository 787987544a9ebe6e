"""The print font as a plain script has it from the library: nothing of it is kept from file to file.

The same letters are embedded as in our files.
"""

from __future__ import annotations

from functools import cache
from typing import Any

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from layout.drawing.pens import Face
from templates_gen.lettering.fonts import font_path


@cache
def plain_font(face: Face) -> str:
    """The name under which the library finds a cut of it."""
    name = f"Plain-{face.value}"
    font: Any = TTFont(name, str(font_path(face)), asciiReadable=1)
    font.face.name = name.encode()  # under its own name the library would give our font, and what that keeps
    pdfmetrics.registerFont(font)
    return name
