"""The text of a table to rows of cells, as spreadsheets write it (RFC 4180, with their usual other delimiters).

Knows no column. Python's csv module reads; a quote that nobody closed would swallow the orders behind it, so whatever
is odd about a quote is refused before anything is made.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import NamedTuple

from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import Unread
from templates_gen.ordering.table.encodings import Encoding, encoding_of, lines_of
from templates_gen.ordering.table.errors import OrdersFileError
from templates_gen.ordering.table.kept import Kept

DELIMITERS = ",;\t"
_DELIMITER_LINE = re.compile(r'"?sep=(.?)"?', re.IGNORECASE)
"""A first line by which spreadsheets are given the delimiter (common practice, no source)."""
_WIDEST_HEADER = 100  # lines: no name of a column has so many, so a quote is open


class Row(NamedTuple):
    """The cells of one row, quotes undone, and the lines of the file in which it begins and ends, from 1."""

    line: int
    last: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Source:
    """The bytes of a file that is called `file` in sentences, and how they are read: `skipped` lines hold no cell."""

    file: str
    data: Kept = field(repr=False)
    encoding: Encoding
    delimiter: str
    skipped: int

    def rows(self) -> Iterator[Row]:
        """Every row in which there is anything, one at a time; OrdersFileError where a quote is odd."""
        lines = lines_of(self.data, self.encoding)
        for _ in range(self.skipped):
            next(lines)
        reader = csv.reader(lines, delimiter=self.delimiter, strict=True)
        while True:
            line = self.skipped + reader.line_num + 1
            try:
                cells = next(reader)
            except StopIteration:
                return
            except csv.Error as error:
                raise self._odd(line, self.skipped + reader.line_num, error) from None
            if any(cell.strip() for cell in cells):
                yield Row(line, self.skipped + reader.line_num, tuple(cells))

    def _odd(self, line: int, last: int, error: csv.Error) -> OrdersFileError:
        role = _role(str(error), last - line)
        values = {"most": csv.field_size_limit()} if role is Unread.CELL_LONG else {}
        return OrdersFileError(message(role, file=self.file, line=line, **values))


def _role(error: str, more: int) -> Unread:
    """What the sentence of the module means, of a row that goes on for so many more lines."""
    if error.startswith("'"):  # it says which sign it expected behind a quote
        return Unread.QUOTE_BEHIND
    return Unread.CELL_LONG if "limit" in error and not more else Unread.QUOTE_OPEN


def source_of(data: Kept, file: str) -> Source:
    """How `data` is read; OrdersFileError where it is no table of text, or holds nothing."""
    encoding = encoding_of(data, file)
    for skipped, line in enumerate(lines_of(data, encoding)):
        if found := _DELIMITER_LINE.fullmatch(line.strip("\r\n ")):
            return Source(file, data, encoding, _said(found[1], skipped + 1, file), skipped + 1)
        if any(letter.isalnum() for letter in line):
            return Source(file, data, encoding, _seen(data, encoding, skipped), skipped)
    raise OrdersFileError(message(Unread.EMPTY, file=file))


def _said(delimiter: str, line: int, file: str) -> str:
    if delimiter not in tuple(DELIMITERS):
        raise OrdersFileError(message(Unread.DELIMITER, file=file, line=line))
    return delimiter


def _seen(data: Kept, encoding: Encoding, skipped: int) -> str:
    """The delimiter that stands most often between the names of columns, outside of quotes."""
    header = ""
    for number, line in enumerate(lines_of(data, encoding)):
        header += line if number >= skipped else ""
        if (number >= skipped and header.count('"') % 2 == 0) or number > skipped + _WIDEST_HEADER:
            break
    outside = "".join(header.split('"')[::2])
    return max(DELIMITERS, key=outside.count)
