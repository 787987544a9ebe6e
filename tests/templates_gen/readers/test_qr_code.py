"""QR codes of links: made by segno, read by our own reader and by zxing-cpp, and by hand after ISO/IEC 18004."""

from __future__ import annotations

from string import ascii_lowercase

import numpy
import pytest
import zxingcpp
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from layout.parts.cards.qr import BYTES, LEAST_MODULE, USUAL_MODULE, WHITE, module_in, modules_of, most_bytes
from templates_gen.document import ReadError
from templates_gen.readers.qr_code import text_of

LETTERS = st.text(ascii_lowercase + "0123456789/-._~äüñéß", min_size=1, max_size=180)


def bits_of(rows: tuple[str, ...]) -> list[list[bool]]:
    """Rows of modules as the reader takes them."""
    return [[module == "#" for module in row] for row in rows]


def picture_of(rows: tuple[str, ...], pixels: int) -> Image.Image:
    """The code with its white, so many pixels to a module."""
    black = numpy.pad(numpy.array(bits_of(rows)), WHITE)
    return Image.fromarray(numpy.where(black, 0, 255).astype(numpy.uint8).repeat(pixels, 0).repeat(pixels, 1))


@given(LETTERS)
def test_both_readers_read_every_link(path: str) -> None:
    """Any address that a code of version 10 holds, letters of other languages too, which stand in it as UTF-8."""
    link = f"https://{path}"
    rows = modules_of(link)
    if len(link.encode()) > BYTES[-1]:
        assert rows == ()
        return
    assert text_of(bits_of(rows)) == link
    assert [found.text for found in zxingcpp.read_barcodes(picture_of(rows, 4))] == [link]


@pytest.mark.parametrize("version", range(1, 11))
def test_versions_hold_what_the_standard_says(version: int) -> None:
    """ISO/IEC 18004, table 7, bytes at level M; a side has 17 + 4 v modules."""
    most = BYTES[version - 1]
    full = modules_of("a" * most)
    assert len(full) == 17 + 4 * version
    assert text_of(bits_of(full)) == "a" * most
    assert len(modules_of("a" * (most + 1))) == (21 + 4 * version if version < 10 else 0)


@pytest.mark.parametrize("link", ["https://a.b", "https://example.org/weir", "https://" + "a" * 110])
def test_every_module_counts(link: str) -> None:
    """Whichever one is turned, the code is refused: nothing is corrected."""
    bits = bits_of(modules_of(link))
    for row in bits:
        for column in range(len(row)):
            row[column] = not row[column]
            with pytest.raises(ReadError):
                text_of(bits)
            row[column] = not row[column]
    assert text_of(bits) == link


def test_format_bits_by_hand() -> None:
    """ISO/IEC 18004, 7.9: level M (00) with mask 5 (101) is said as 100000011001110, its example."""
    bits = bits_of(
        next(rows for rows in map(modules_of, (f"https://a.{k}" for k in range(999))) if _mask(rows) == 0b101)
    )
    said = [bits[8][column] for column in (0, 1, 2, 3, 4, 5, 7, 8)] + [bits[row][8] for row in (7, 5, 4, 3, 2, 1, 0)]
    assert "".join("01"[bit] for bit in said) == "100000011001110"


def _mask(rows: tuple[str, ...]) -> int:
    """The mask that a code of level M says, under the fixed pattern 10101."""
    three = int("".join("01"[rows[8][column] == "#"] for column in (2, 3, 4)), 2)
    return three ^ 0b101


@pytest.mark.parametrize("side", [20, 22, 40])
def test_other_sizes_are_refused(side: int) -> None:
    """No code has so many modules."""
    with pytest.raises(ReadError, match="as many modules"):
        text_of([[True] * side] * side)


def test_codes_are_as_large_as_they_may_be() -> None:
    """Between 0.4 and 0.5 mm to a module, or none; what a side holds is the largest code of 0.4 mm."""
    rows = modules_of("https://example.org/weir")
    assert module_in(rows, 100.0) == USUAL_MODULE
    assert module_in(rows, len(rows) * LEAST_MODULE) == LEAST_MODULE
    assert module_in(rows, len(rows) * LEAST_MODULE - 0.1) is None
    assert module_in((), 100.0) is None
    assert (most_bytes(8.39), most_bytes(8.4), most_bytes(1000)) == (0, 14, 213)
