"""What a page of the desk loads with it: a fixed list of files, read once."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import NamedTuple

from layout.drawing.pens import Face
from templates_gen.lettering.fonts import font_path

PAGE = Path(__file__).parent.parent / "page"
_TYPES = {
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".svg": "image/svg+xml",
    ".png": "image/png",
}


class Static(NamedTuple):
    """The bytes of a file, and what they are."""

    data: bytes
    type: str


@cache
def static_files() -> dict[str, Static]:
    """Each file by its name behind `/static/`: those of the page, and the two cuts of the print font."""
    found = {
        path.name: Static(path.read_bytes(), _TYPES[path.suffix])
        for path in sorted((PAGE / "static").iterdir())
        if path.suffix in _TYPES
    }
    fonts = {f"fonts/{face.value}.ttf": Static(font_path(face).read_bytes(), "font/ttf") for face in Face}
    return found | fonts
