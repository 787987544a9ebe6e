"""Tables as files: what is written is read back, by ourselves and by others, and no cell becomes a formula."""

from __future__ import annotations

import csv
import io
from decimal import Decimal

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from templates_gen.document import ReadError
from templates_gen.readers.csv import read, read_rows
from templates_gen.writers.csv import Cell, lines, write

SIGNS = "=+-@\t\r\uff1d\uff0b\uff0d\uff20"  # OWASP, "CSV Injection", from memory; with their full-width twins
texts = st.text(st.one_of(st.sampled_from("'\"=+-@,;\r\n\t 0aü\uff1d"), st.characters(codec="utf-8")), max_size=9)
cells = st.one_of(texts, st.integers(-(10**9), 10**9), st.decimals(-1000, 1000, places=2))
tables = st.integers(1, 4).flatmap(lambda wide: st.lists(st.lists(cells, min_size=wide, max_size=wide), min_size=1))


def said(cell: Cell) -> str:
    """A cell as a reader has it."""
    return cell if isinstance(cell, str) else f"{Decimal(cell):f}"


@given(tables)
@example([["'=1"], ["''=1"], [" \n=1"], ["'"], [""], ["\t"], ["-5"]])
def test_a_table_comes_back(rows: list[list[Cell]]) -> None:
    """Cell for cell, whatever stands in it."""
    assert read(write(rows)) == tuple(tuple(map(said, row)) for row in rows)


@given(tables)
@example([['a"', "b\r\nc"], ["\r\n", '"\r\n"']])
def test_a_long_table_is_the_same_row_by_row(rows: list[list[Cell]]) -> None:
    """Written and read a row at a time, it has the bytes and the cells that it has as a whole."""
    data = write(rows)
    assert b"".join(lines(rows)) == data
    assert tuple(read_rows(io.BytesIO(data))) == read(data)


def test_no_row_is_read_without_end() -> None:
    """A quote that is never closed is refused after 4 MB, however long the file is."""
    with pytest.raises(ReadError, match="4000000"):
        list(read_rows(io.BytesIO(b'a\r\n"' + b"x\r\n" * 2_000_000)))


@given(tables)
def test_others_read_the_same_cells(rows: list[list[Cell]]) -> None:
    """Python's csv module, an outside reader, finds the same cells but for guards, and no formula."""
    found = list(csv.reader(io.StringIO(write(rows).decode("utf-8"), newline=""), strict=True))
    assert [len(row) for row in found] == [len(row) for row in rows]
    for there, here in zip(
        (cell for row in found for cell in row), (cell for row in rows for cell in row), strict=True
    ):
        assert there in (said(here), f"'{said(here)}")
        if isinstance(here, str) and here.lstrip()[:1] in tuple("=+-@"):
            assert there == f"'{here}"


@pytest.mark.parametrize("sign", SIGNS)
@pytest.mark.parametrize("before", ["", " ", "\u00a0 ", "'", "\n"])
def test_a_formula_is_guarded(sign: str, before: str) -> None:
    """A text that begins with such a sign, spaces or not, has an apostrophe before it; without it, it is not read."""
    text = f"{before}{sign}HYPERLINK(1)"
    written = write([["name", "other"], [text, 1]]).decode("utf-8")
    assert written.split("\r\n", 1)[1].lstrip('"').startswith(f"'{before}{sign}")
    if before != "'":
        with pytest.raises(ReadError, match="formula"):
            read(f'name,other\r\n"{text}",1\r\n'.encode())


NUMBERS = {1: "1", -3: "-3", Decimal("1234.50"): "1234.50", Decimal("1E+3"): "1000", Decimal("0.10"): "0.10"}


@pytest.mark.parametrize("number", NUMBERS)
def test_numbers_are_written_in_full(number: int | Decimal) -> None:
    """With a point, every decimal that was given, no exponent and nothing between thousands."""
    assert write([["a", number]]) == f"a,{NUMBERS[number]}\r\n".encode()


def test_the_form_is_that_of_the_standard() -> None:
    """RFC 4180: CRLF behind each row, quotes round a cell with a comma, a quote or a line end, quotes doubled."""
    table = [["name", "note"], ["oak, small", 'he said "so"'], ["two\r\nlines", ""]]
    assert write(table) == b'name,note\r\n"oak, small","he said ""so"""\r\n"two\r\nlines",\r\n'


BAD = {
    b"": "empty",
    b"a,b\r\n1\r\n": "row 2",
    b"a,b\n1,2\n": "behind a cell",
    b"a,b\r\n1,2": "no end",
    b'a,"b\r\n': "not closed",
    b'a,"b"c\r\n': "behind a cell",
    b'a,b"\r\n': "behind a cell",
    b"a,b\r\n=1+1,2\r\n": "formula",
    b"a,b\r\n-1+1,2\r\n": "formula",
    b"\xff\xfea": "UTF-8 text from byte 0",
}


@pytest.mark.parametrize("data", BAD)
def test_other_tables_are_refused(data: bytes) -> None:
    """What we never write is not read, and the sentence says what is wrong."""
    with pytest.raises(ReadError, match=BAD[data]):
        read(data)
    with pytest.raises(ReadError, match=BAD[data]):
        list(read_rows(io.BytesIO(data)))


def test_rows_of_unlike_length_are_a_fault() -> None:
    """A table with a row that is too short, or a number that is none, is never written."""
    with pytest.raises(AssertionError):
        write([["a", "b"], ["c"]])
    with pytest.raises(AssertionError):
        write([["a", Decimal("nan")]])
