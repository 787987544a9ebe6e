"""In which encoding the bytes of a table are: UTF-8, UTF-16 or Windows-1252, with a byte order mark or without."""

from __future__ import annotations

import codecs
import re
from typing import NamedTuple

from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import Unread
from templates_gen.ordering.table.errors import OrdersFileError

_MARKS = ((codecs.BOM_UTF8, "utf-8"), (codecs.BOM_UTF16_LE, "utf-16-le"), (codecs.BOM_UTF16_BE, "utf-16-be"))
_FEW = 8
"""So many letters at the beginning are surely plain ones: they stand in the name of a column."""

_SPREADSHEETS = (b"PK\x03\x04", b"\xd0\xcf\x11\xe0")
"""What .xlsx and .ods files begin with (zip, APPNOTE 4.3.7), and .xls files (MS-CFB 2.2). Both from memory."""

_DOUBLY = re.compile(rb"\xc3[\x80-\xbf]|\xe2\x80[\x80-\xbf]")
"""Umlauts, accents and curled quotes in UTF-8; in Windows-1252 nobody writes what they would be there."""


class Encoding(NamedTuple):
    """The name of an encoding as Python has it, and at which byte the text begins."""

    name: str
    begins: int


def encoding_of(data: bytes, file: str) -> Encoding:
    """The encoding in which all of `data` can be read; OrdersFileError, naming the `file`, where there is none."""
    if data.startswith(_SPREADSHEETS):
        raise OrdersFileError(message(Unread.SPREADSHEET, file=file))
    found = _marked(data) or _unmarked(data)
    if found is None:
        return _of_one_byte(data, file)
    _decode(data, found, file)
    return found


def _marked(data: bytes) -> Encoding | None:
    return next((Encoding(name, len(mark)) for mark, name in _MARKS if data.startswith(mark)), None)


def _unmarked(data: bytes) -> Encoding | None:
    """UTF-16 by the zero bytes of its first letters, else UTF-8 where it is."""
    first, second = data[: 2 * _FEW : 2], data[1 : 2 * _FEW : 2]
    if second and not any(second) and all(first):
        return Encoding("utf-16-le", 0)
    if second and not any(first) and all(second):
        return Encoding("utf-16-be", 0)
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return None
    return Encoding("utf-8", 0)


def _of_one_byte(data: bytes, file: str) -> Encoding:
    """Windows-1252, unless some of it is UTF-8: then the file is damaged, and names in it would be printed wrongly."""
    if _DOUBLY.search(data):
        _decode(data, Encoding("utf-8", 0), file)
    found = Encoding("cp1252", 0)
    _decode(data, found, file)
    return found


def _decode(data: bytes, found: Encoding, file: str) -> None:
    try:
        data[found.begins :].decode(found.name)
    except UnicodeDecodeError as error:
        before = data[found.begins : found.begins + error.start].decode(found.name, "replace")
        line = len(re.findall("\r\n?|\n", before)) + 1
        raise OrdersFileError(message(Unread.ENCODING, file=file, line=line)) from None
