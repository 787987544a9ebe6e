"""Tables as spreadsheets save them come back cell by cell; what is none is refused in one sentence."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templates_gen.ordering.table.errors import OrdersFileError
from templates_gen.ordering.table.kept import kept
from templates_gen.ordering.table.source import Row, Source, source_of

# Typed by hand: "order", "buyer" / "007", "Färö" in the bytes of each encoding (Unicode 15, chapter 3; code page 1252).
# "|" stands for the delimiter, "\n" for the line end.
ENCODED = {
    "UTF-8": (b"order|buyer\n007|F\xc3\xa4r\xc3\xb6\n", b"", 1),
    "UTF-8 with a mark": (b"order|buyer\n007|F\xc3\xa4r\xc3\xb6\n", b"\xef\xbb\xbf", 1),
    "Windows-1252": (b"order|buyer\n007|F\xe4r\xf6\n", b"", 1),
    "UTF-16 LE with a mark": (b"order|buyer\n007|F\xe4r\xf6\n", b"\xff\xfe", "little"),
    "UTF-16 BE with a mark": (b"order|buyer\n007|F\xe4r\xf6\n", b"\xfe\xff", "big"),
    "UTF-16 LE": (b"order|buyer\n007|F\xe4r\xf6\n", b"", "little"),
    "UTF-16 BE": (b"order|buyer\n007|F\xe4r\xf6\n", b"", "big"),
}


def read(data: bytes) -> Source:
    """How bytes that come in small pieces are read."""
    return source_of(kept(data[at : at + 3] for at in range(0, len(data), 3)), "orders.csv")


def typed(name: str, delimiter: bytes, end: bytes) -> bytes:
    """The bytes of that file."""
    text, mark, form = ENCODED[name]
    text = text.replace(b"|", delimiter).replace(b"\n", end)
    if form == "little":
        return mark + b"".join(bytes([letter, 0]) for letter in text)
    if form == "big":
        return mark + b"".join(bytes([0, letter]) for letter in text)
    return mark + text


@pytest.mark.parametrize("end", [b"\n", b"\r\n", b"\r"])
@pytest.mark.parametrize("delimiter", [b",", b";", b"\t"])
@pytest.mark.parametrize("name", ENCODED)
def test_every_form_is_read(name: str, delimiter: bytes, end: bytes) -> None:
    """Each encoding with each delimiter and each line end gives the same cells in the same lines."""
    found = read(typed(name, delimiter, end))
    assert found.delimiter.encode() == delimiter
    assert list(found.rows()) == [Row(1, 1, ("order", "buyer")), Row(2, 2, ("007", "Färö"))]


texts = st.text(st.one_of(st.sampled_from('",;\t\r\n =a'), st.characters(codec="utf-8", exclude_characters="\0")))
tables = st.integers(2, 4).flatmap(lambda wide: st.lists(st.tuples(*[texts] * wide), min_size=1, max_size=5))
DIALECTS = {"excel": ",", "excel-tab": "\t", "semicolon": ";"}
csv.register_dialect("semicolon", csv.excel, delimiter=";")


@given(tables, st.sampled_from([*DIALECTS]), st.sampled_from(["utf-8", "utf-8-sig", "utf-16"]))
def test_what_others_write_is_read(table: list[tuple[str, ...]], dialect: str, encoding: str) -> None:
    """Whatever rows Python's csv module writes come back, but for those in which there is nothing."""
    file = io.StringIO(newline="")
    csv.writer(file, dialect).writerows([["order", *["kit"] * (len(table[0]) - 1)], *table])
    found = read(file.getvalue().encode(encoding))
    assert found.delimiter == DIALECTS[dialect]
    full = [row for row in table if any(cell.strip() for cell in row)]
    assert [row.cells for row in found.rows()][1:] == full


def test_a_row_knows_its_lines() -> None:
    """Blank lines and cells with line ends count; rows of delimiters alone are none."""
    text = b'\r\n;;\r\norder;lines\r\n\r\n;\r\n1;"a\r\nb"\r\n2;c\r\n'
    lines = [(row.line, row.last) for row in read(text).rows()]
    assert lines == [(3, 3), (6, 7), (8, 8)]


@pytest.mark.parametrize(("first", "delimiter"), [("sep=;", ";"), ('"sep=,"', ","), ("SEP=\t", "\t")])
def test_a_first_line_may_say_the_delimiter(first: str, delimiter: str) -> None:
    """`sep=` and a sign (common practice of spreadsheets, no source); the lines behind it count from it."""
    found = read(f"{first}\r\norder{delimiter}kit\r\n1{delimiter}a;b".encode())
    assert next(found.rows()) == Row(2, 2, ("order", "kit"))


def test_the_delimiter_is_looked_for_outside_of_quotes() -> None:
    """A quoted name with commas in it, or with a line end, does not count."""
    found = read(b'"a,b,c,\n,d";order;kit\n1;2;3')
    assert [row.cells for row in found.rows()] == [("a,b,c,\n,d", "order", "kit"), ("1", "2", "3")]


REFUSED = {
    b"": "is empty",
    b"\n\r\n  \n": "is empty",
    b"\xef\xbb\xbf": "is empty",
    b";;;\n;;;\n": "is empty",
    b"PK\x03\x04\x14\x00\x06\x00": "save it as CSV",  # the first bytes of an .xlsx or .ods file (zip)
    b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1": "save it as CSV",  # those of an .xls file (MS-CFB)
    b"\x89PNG\r\n\x1a\n\x8d\x8f": "not text that can be read",  # bytes that code page 1252 does not have
    b"order,buyer\n1,F\xc3\xa4r\xc3\xb6\n2,F\xe4r\xf6\n": "line 3",  # UTF-8 and Windows-1252 in one file
    b"\xef\xbb\xbforder\n\n\xe4\n": "line 3",
    b"\xff\xfeo\x00r\x00\n\x00\x00\xd8": "line 2",  # half of a pair
    b"order\n1\nF\xef\xbf\xbdr\n": "line 3",  # a letter that was lost before
    b"\xff\xfeo\x00r": "not text",  # half of a letter
    b'order,kit\n1,a\n2,"b\n3,c\n': "row of line 3 is never closed",
    b'order,kit\n1,a\n2,"b" c\n3,d\n': "row of line 3, a cell goes on after its closing quote",
    b'order,kit\n2,"b\n3,c\n4,"d\n': "row of line 2, a cell goes on",
    b'"order,kit\n1,a\n': "row of line 1 is never closed",
    b'order,kit\n1,"' + b"a\n" * 70_000: "row of line 2 is never closed",
    b"order,kit\n1,a\n2," + b"a" * 200_000: "in the row of line 3 has more than 131072 characters",
    b"sep=|\norder|kit\n": "comma, a semicolon or a tab",
    b"sep=\norder\n": "comma, a semicolon or a tab",
}


@pytest.mark.parametrize("data", REFUSED, ids=range(len(REFUSED)))
def test_what_is_no_table_is_refused(data: bytes) -> None:
    """In one sentence, which names the file and, where there is one, the line."""
    with pytest.raises(OrdersFileError, match=REFUSED[data]) as error:
        list(read(data).rows())
    assert str(error.value).startswith("orders.csv")
    assert "\n" not in str(error.value)
