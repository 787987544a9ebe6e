"""A font program without its hints: what tells a screen how to draw small letters is of no use on paper.

Without it, and without its names, each embedded part of the font takes half of the bytes. Outlines and widths stay.
Source of the layouts: the OpenType specification (tables head, loca, glyf).
"""

from __future__ import annotations

import struct
from itertools import pairwise

_HINTS = ("cvt ", "fpgm", "prep")  # tables of hints for the whole font
_ABOUT = ("OS/2", "name", "post")  # what a font says of itself, which no font inside a PDF needs (ISO 32000-1, 9.9)
_WORDS, _SCALE, _MORE, _TWO_SCALES, _TWO_BY_TWO, _HINTED = 0x1, 0x8, 0x20, 0x40, 0x80, 0x100  # flags of a part


def unhinted(program: bytes) -> bytes:
    """The same font program, glyph by glyph, with no hints in any glyph nor for the whole."""
    from reportlab.pdfbase.ttfonts import TTFontMaker

    tables = _tables(program)
    (long,) = struct.unpack_from(">H", tables["head"], 50)
    count = len(tables["loca"]) // (4 if long else 2)
    places = struct.unpack(f">{count}{'I' if long else 'H'}", tables["loca"])
    step = 1 if long else 2
    glyphs = [_glyph(tables["glyf"][step * begin : step * end]) for begin, end in pairwise(places)]
    made, at = [0], 0
    for glyph in glyphs:
        at += len(glyph)
        made.append(at // step)
    tables["glyf"] = b"".join(glyphs)
    tables["loca"] = struct.pack(f">{count}{'I' if long else 'H'}", *made)
    maker = TTFontMaker()
    for tag, table in tables.items():
        if tag not in _HINTS + _ABOUT:
            maker.add(tag, table)
    found: bytes = maker.makeStream()
    return found


def _tables(program: bytes) -> dict[str, bytes]:
    (count,) = struct.unpack_from(">H", program, 4)
    entries = (struct.unpack_from(">4sIII", program, 12 + 16 * k) for k in range(count))
    return {tag.decode("ascii"): program[begin : begin + length] for tag, _, begin, length in entries}


def _glyph(data: bytes) -> bytes:
    """One glyph, filled up to whole words."""
    if len(data) > 10:
        (contours,) = struct.unpack_from(">h", data)
        data = _outline(data, contours) if contours >= 0 else _put_together(data)
    return data + bytes(-len(data) % 4)


def _outline(data: bytes, contours: int) -> bytes:
    """The hints of an outline stand between the ends of its contours and its points."""
    at = 10 + 2 * contours
    (length,) = struct.unpack_from(">H", data, at)
    return data[:at] + b"\0\0" + data[at + 2 + length :]


def _put_together(data: bytes) -> bytes:
    """The hints of a glyph of several parts stand behind them, and each part may say that there are some."""
    kept, at, flags = bytearray(data), 10, _MORE
    while flags & _MORE:
        (flags,) = struct.unpack_from(">H", data, at)
        struct.pack_into(">H", kept, at, flags & ~_HINTED)
        at += 8 if flags & _WORDS else 6
        at += 2 if flags & _SCALE else 4 if flags & _TWO_SCALES else 8 if flags & _TWO_BY_TWO else 0
    return bytes(kept[:at])
