"""Parts of the print font as a PDF embeds them, put together here from its bytes, and taken apart to be forged."""

from __future__ import annotations

import io
import struct
from collections.abc import Mapping, Sequence

import fontTools.subset  # noqa: F401 - gives glyphs the method that numbers their parts anew
from fontTools.ttLib import TTFont

from templates_gen.lettering import fonts

Tables = dict[str, bytes]


def tables_of(program: bytes) -> Tables:
    """The tables of a font program, as fontTools finds them."""
    reader = TTFont(io.BytesIO(program), lazy=True).reader
    return {tag: reader[tag] for tag in reader.keys()}  # noqa: SIM118 - no mapping


def program_of(tables: Tables) -> bytes:
    """A font program of these tables (OpenType specification, table directory)."""
    at, directory, body = 12 + 16 * len(tables), b"", b""
    for tag, table in sorted(tables.items()):
        directory += struct.pack(">4sIII", tag.encode(), 0, at + len(body), len(table))
        body += table + bytes(-len(table) % 4)
    return struct.pack(">4sHHHH", b"\0\1\0\0", len(tables), 128, 3, 80) + directory + body


def codes_table(glyphs: Sequence[int], first: int = 0) -> bytes:
    """A cmap table that maps one-byte codes from `first` on (format 6, trimmed table mapping)."""
    head = struct.pack(">HHHHIHHHHH", 0, 1, 1, 0, 12, 6, 10 + 2 * len(glyphs), 0, first, len(glyphs))
    return head + struct.pack(f">{len(glyphs)}H", *glyphs)


def part_of(letters: Mapping[int, str]) -> bytes:
    """A font program in which each code draws its letter, made of the print font."""
    program = fonts.font_path().read_bytes()
    font, again = (TTFont(io.BytesIO(program), lazy=True) for _ in range(2))
    whole = tables_of(program)
    names = [".notdef", *(font.getBestCmap()[ord(letter)] for letter in letters.values())]
    for name in names:  # grows: letters that are put together need their parts
        glyph = font["glyf"][name]
        if glyph.isComposite():
            names += [each for each in glyph.getComponentNames(font["glyf"]) if each not in names]
    numbers = {font.getGlyphID(name): k for k, name in enumerate(names)}
    data = []
    for name in names:
        glyph = again["glyf"].glyphs[name]  # not unpacked yet, as it is in the other
        glyph.remapComponentsFast(numbers)
        glyph.trim(remove_hinting=True)
        data.append(glyph.data + bytes(-len(glyph.data) % 4))
    places = [sum(map(len, data[:k])) for k in range(len(data) + 1)]
    metrics = [font["hmtx"][name] for name in names]
    first = min(letters)
    codes = [1 + list(letters).index(code) if code in letters else 0 for code in range(first, max(letters) + 1)]
    return program_of(
        {
            "head": whole["head"][:50] + b"\0\0" + whole["head"][52:],
            "hhea": whole["hhea"][:34] + struct.pack(">H", len(names)),
            "maxp": whole["maxp"][:4] + struct.pack(">H", len(names)) + whole["maxp"][6:],
            "hmtx": b"".join(struct.pack(">Hh", *each) for each in metrics),
            "loca": struct.pack(f">{len(places)}H", *(place // 2 for place in places)),
            "glyf": b"".join(data),
            "cmap": codes_table(codes, first),
        }
    )
