"""PDF files as bytes, changed without a PDF library."""

from __future__ import annotations

import re
import zlib


def put_right(text: str) -> bytes:
    """A file, one character a byte, its lengths and offsets put right."""
    parts = re.split(
        r"(/Length )\d+(.*?stream\n)(.*?)(?=endstream)", text[: text.rindex("\nxref\n") + 1], flags=re.DOTALL
    )
    for k in range(1, len(parts), 4):
        parts[k] += str(len(parts[k + 2]))
    text, trailer = "".join(parts), text[text.rindex("trailer") :]
    places = {int(found[1]): found.start() for found in re.finditer(r"^(\d+) 0 obj", text, re.MULTILINE)}
    rows = "".join(f"{places[number]:010d} 00000 n \n" for number in range(1, len(places) + 1))
    trailer = re.sub(r"startxref\n\d+", f"startxref\n{len(text)}", trailer)
    return f"{text}xref\n0 {len(places) + 1}\n0000000000 65535 f \n{rows}{trailer}".encode("latin-1")


def unpacked(data: bytes) -> bytes:
    """A file of ours with all its streams unpacked."""
    packed = re.compile(r"/Filter \[ /FlateDecode \] (/Length \d+[^>]*>>\nstream\n)(.*?)endstream", re.DOTALL)

    def plain(found: re.Match[str]) -> str:
        return found[1] + zlib.decompress(found[2].encode("latin-1")).decode("latin-1") + "endstream"

    text, count = packed.subn(plain, data.decode("latin-1"))
    assert count >= 3, "a page, a font program and a font map"
    return put_right(text)
