"""In which encoding the bytes of a table are: UTF-8, UTF-16 or Windows-1252, with a byte order mark or without."""

from __future__ import annotations

import codecs
import io
import re
from collections.abc import Iterator
from typing import NamedTuple

from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import Unread
from templates_gen.ordering.table.errors import OrdersFileError
from templates_gen.ordering.table.kept import Kept

_MARKS = ((codecs.BOM_UTF8, "utf-8"), (codecs.BOM_UTF16_LE, "utf-16-le"), (codecs.BOM_UTF16_BE, "utf-16-be"))
_FEW = 8
"""So many letters at the beginning are surely plain ones: they stand in the name of a column."""

_SPREADSHEETS = (b"PK\x03\x04", b"\xd0\xcf\x11\xe0")
"""What .xlsx and .ods files begin with (zip, APPNOTE 4.3.7), and .xls files (MS-CFB 2.2). Both from memory."""

_DOUBLY = re.compile(rb"\xc3[\x80-\xbf]|\xe2\x80[\x80-\xbf]|\xef\xbf\xbd")
"""Umlauts, accents and curled quotes in UTF-8; in Windows-1252 nobody writes what they would be there."""

_UNKNOWN = "\ufffd"
"""What stands for bytes that no letter is made of; whoever saved it in a file could not read them either."""


class Encoding(NamedTuple):
    """The name of an encoding as Python has it, and at which byte the text begins."""

    name: str
    begins: int


def encoding_of(data: Kept, file: str) -> Encoding:
    """The encoding in which all of `data` can be read; OrdersFileError, naming the `file`, where there is none."""
    head = data.open().read(2 * _FEW)
    if head.startswith(_SPREADSHEETS):
        raise OrdersFileError(message(Unread.SPREADSHEET, file=file))
    found = _of_two_bytes(head) or Encoding("utf-8", 0)
    line = _unread(data, found)
    if line and found == ("utf-8", 0) and not any(_DOUBLY.search(each) for each in data.open()):
        found = Encoding("cp1252", 0)
        line = _unread(data, found)
    if line:
        raise OrdersFileError(message(Unread.ENCODING, file=file, line=line))
    return found


def lines_of(data: Kept, encoding: Encoding, errors: str = "strict") -> Iterator[str]:
    """The lines with their ends (CR, LF or both), read as they are asked for."""
    file = data.open()
    file.read(encoding.begins)
    return iter(io.TextIOWrapper(file, encoding.name, errors, newline=""))


def _of_two_bytes(head: bytes) -> Encoding | None:
    """What a byte order mark says; without one, UTF-16 by the zero bytes of its first letters."""
    for mark, name in _MARKS:
        if head.startswith(mark):
            return Encoding(name, len(mark))
    first, second = head[::2], head[1::2]
    if second and all(first) and not any(second):
        return Encoding("utf-16-le", 0)
    if second and all(second) and not any(first):
        return Encoding("utf-16-be", 0)
    return None


def _unread(data: Kept, encoding: Encoding) -> int:
    """The first line that cannot be read, from 1; 0 where every one can."""
    lines = enumerate(lines_of(data, encoding, "replace"), 1)
    return next((number for number, line in lines if _UNKNOWN in line), 0)
