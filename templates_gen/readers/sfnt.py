"""TrueType font programs: their tables, and the glyphs in them as plain bytes. Knows no PDF and draws nothing.

Source of the layouts: the OpenType specification (tables head, hhea, hmtx, loca, glyf, cmap).
"""

from __future__ import annotations

import struct
from collections.abc import Iterator, Mapping
from typing import NamedTuple

_VERSION = b"\0\1\0\0"
_WORDS, _SCALE, _MORE, _TWO_SCALES, _TWO_BY_TWO, _HINTED = 0x1, 0x8, 0x20, 0x40, 0x80, 0x100  # flags of a glyph's part


class Metrics(NamedTuple):
    """How far a glyph moves on and where it begins, in font units."""

    advance: int
    bearing: int


class Glyph(NamedTuple):
    """A glyph's bytes without the numbers of its parts, and these numbers."""

    drawn: bytes
    parts: tuple[int, ...]


class Program:
    """A font program. `ValueError`, `KeyError`, `IndexError` or `struct.error` where it is none."""

    def __init__(self, data: bytes) -> None:
        self.tables = _tables(data)
        head, hhea, maxp = (self.tables[name] for name in ("head", "hhea", "maxp"))
        self.em: int = struct.unpack_from(">H", head, 18)[0]
        (self.glyphs,) = struct.unpack_from(">H", maxp, 4)
        (self._full,) = struct.unpack_from(">H", hhea, 34)
        (long,) = struct.unpack_from(">H", head, 50)
        loca = self.tables["loca"]
        if long not in (0, 1) or len(loca) != (self.glyphs + 1) * (4 if long else 2) or self._full == 0:
            raise ValueError("loca")
        self._places = struct.unpack(f">{self.glyphs + 1}{'I' if long else 'H'}", loca)
        self._step = 1 if long else 2

    def metrics(self, number: int) -> Metrics:
        """The advance and the left side bearing of a glyph."""
        hmtx, full = self.tables["hmtx"], self._full
        (advance,) = struct.unpack_from(">H", hmtx, 4 * min(number, full - 1))
        at = 4 * number + 2 if number < full else 4 * full + 2 * (number - full)
        return Metrics(advance, struct.unpack_from(">h", hmtx, at)[0])

    def glyph(self, number: int, *, hinted: bool = True) -> Glyph:
        """What a glyph draws, without its padding where that is certain to be padding; without its hints if asked."""
        begin, end = self._step * self._places[number], self._step * self._places[number + 1]
        data = self.tables["glyf"][begin:end]
        if not begin <= end <= len(self.tables["glyf"]):
            raise ValueError("glyf")
        if len(data) < 10 or (contours := struct.unpack_from(">h", data)[0]) >= 0:
            return Glyph(data if hinted or len(data) < 12 else _without_hints(data, contours), ())
        drawn, parts, last = bytearray(data), [], 0
        for at in _parts(data):
            parts.append(struct.unpack_from(">H", data, at)[0])
            drawn[at : at + 2] = b"\0\0"
            if not hinted:
                (flags,) = struct.unpack_from(">H", data, at - 2)
                struct.pack_into(">H", drawn, at - 2, flags & ~_HINTED)
            last = at - 2
        return Glyph(bytes(drawn if hinted else drawn[: last + _long(data, last)]), tuple(parts))


def _tables(data: bytes) -> Mapping[str, bytes]:
    """Every table by its tag; a table that is listed twice or not wholly there is refused."""
    version, count = struct.unpack_from(">4sH", data)
    if version != _VERSION:
        raise ValueError("version")
    tables: dict[str, bytes] = {}
    for k in range(count):
        tag, _, begin, length = struct.unpack_from(">4sIII", data, 12 + 16 * k)
        name = tag.decode("ascii")
        if name in tables or begin + length > len(data):
            raise ValueError("tables")
        tables[name] = data[begin : begin + length]
    return tables


def _parts(data: bytes) -> Iterator[int]:
    """Where the number of each part stands in a glyph that is put together from others."""
    at, flags = 10, _MORE
    while flags & _MORE:
        (flags,) = struct.unpack_from(">H", data, at)
        yield at + 2
        at += _long(data, at)


def _long(data: bytes, at: int) -> int:
    """How many bytes the part of a glyph that begins at `at` takes."""
    (flags,) = struct.unpack_from(">H", data, at)
    scale = 2 if flags & _SCALE else 4 if flags & _TWO_SCALES else 8 if flags & _TWO_BY_TWO else 0
    return (8 if flags & _WORDS else 6) + scale


def _without_hints(data: bytes, contours: int) -> bytes:
    """An outline without the hints between the ends of its contours and its points."""
    at = 10 + 2 * contours
    (length,) = struct.unpack_from(">H", data, at)
    return data[:at] + bytes(2) + data[at + 2 + length :]


def one_byte_codes(table: bytes) -> Mapping[int, int]:
    """The glyph of each code, from a cmap table that holds one map of one-byte codes and nothing else.

    `ValueError` for any other.
    """
    wanted = (0, 1, 1, 0, 12, 6)  # version, one map, for platform 1, encoding 0, twelve bytes on, as a trimmed table
    version, maps, platform, encoding, place, form, length, _, first, count = struct.unpack_from(">HHHHIHHHHH", table)
    if (version, maps, platform, encoding, place, form) != wanted or not length == 10 + 2 * count == len(table) - 12:
        raise ValueError("cmap")
    if first + count > 256:
        raise ValueError("codes")
    return dict(enumerate(struct.unpack_from(f">{count}H", table, 22), first))
