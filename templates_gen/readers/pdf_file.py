"""A PDF file cut into its objects, every byte accounted for: header, objects, cross-reference table, trailer, no more.

Programs differ in what they make of a damaged file. So the table must say to the byte where everything stands, which
leaves one way to read the file (ISO 32000-1, 7.5).
"""

from __future__ import annotations

import re
import zlib
from collections.abc import Mapping
from typing import Any, NamedTuple

from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Read
from templates_gen.readers.pdf_values import SPACE, Reference, value_at

_MOST_WRITTEN = 1_000_000  # bytes of all objects without their streams

_HEADER = re.compile(rb"%PDF-1\.6\n")  # the first version in which a file may ask to be printed without scaling
_OBJECT = re.compile(rb"([1-9][0-9]{0,6}+) 0 obj(?=[\n\r <\[])")
_STREAM = re.compile(rb"[\n\r ]*+stream\r?\n")
_END_OF_STREAM = re.compile(rb"\r?\n?endstream(?=[\n\r ])")
_END_OF_OBJECT = re.compile(rb"[\n\r ]*+endobj\n")
_ROW = rb"[0-9]{10} 00000 n(?: \n|\r\n)"
_TABLE = re.compile(
    rb"xref\n0 ([1-9][0-9]{0,6}+)\n0000000000 65535 f(?: \n|\r\n)((?:ROW)*+)trailer(?=[\n <])".replace(b"ROW", _ROW)
)
_ENDING = re.compile(rb"[\n\r ]*+startxref\n([0-9]{1,10}+)\n%%EOF\n?\Z")


class Stream(NamedTuple):
    """What a stream's dictionary says, and its bytes as they are packed."""

    says: Mapping[str, Any]
    packed: bytes


class PdfFile:
    """The objects of a file by their number, and its trailer. `left` bytes may still be unpacked."""

    def __init__(self, data: bytes, most: int) -> None:
        self.left = most
        self._objects: dict[int, Any] = {}
        begun = _HEADER.match(data)
        if begun is None:
            raise ReadError(message(Read.BEGINNING))
        places, at = self._all(data, _after(data, begun.end()))
        table = _TABLE.match(data, at)
        if table is None:
            raise ReadError(message(Read.HOLDS, what=shown(data[at : at + 30].decode("latin-1"))))
        rows = [int(row[:10]) for row in table[2].splitlines() if row]
        if int(table[1]) != len(places) + 1 or rows != [places.get(number) for number in range(1, len(places) + 1)]:
            raise ReadError(message(Read.CHANGED_TABLE))
        self.trailer, end = value_at(data, table.end())
        ending = _ENDING.match(data, end)
        counted = isinstance(self.trailer, dict) and self.trailer.get("/Size") == len(places) + 1
        if ending is None or int(ending[1]) != at or not counted:
            raise ReadError(message(Read.CHANGED))

    def _all(self, data: bytes, at: int) -> tuple[dict[int, int], int]:
        """Where each object stands, and where the last one ends."""
        places: dict[int, int] = {}
        written = 0
        while found := _OBJECT.match(data, at):
            number = int(found[1])
            if number in places:
                raise ReadError(message(Read.TWICE, number=number))
            places[number] = at
            value, end = value_at(data, found.end())
            written += end - found.end()
            if written > _MOST_WRITTEN:
                raise ReadError(message(Read.TOO_MUCH))
            if begun := _STREAM.match(data, end):
                value, end = _stream(data, begun.end(), value)
            ended = _END_OF_OBJECT.match(data, end)
            if ended is None:
                raise ReadError(message(Read.OBJECT_END, number=number))
            self._objects[number] = value
            at = _after(data, ended.end())
        return places, at

    def found(self, value: Any) -> Any:
        """What `value` stands for: itself, or the object that it refers to."""
        if not isinstance(value, Reference):
            return value
        if value.number not in self._objects:
            raise ReadError(message(Read.NO_OBJECT, number=value.number))
        return self._objects[value.number]

    def dictionary(self, value: Any, keys: set[str] | None, where: Read) -> Mapping[str, Any]:
        """The dictionary that `value` stands for; refused if it is none or holds any other key than `keys`."""
        found = self.found(value)
        if not isinstance(found, dict):
            raise ReadError(message(Read.NO_DICTIONARY, where=message(where)))
        if keys is not None and (strange := sorted(found.keys() - keys)):
            raise ReadError(message(Read.KEYS, where=message(where), what=shown(strange[0])))
        return found

    def unpacked(self, value: Any, keys: set[str], where: Read) -> bytes:
        """The bytes of a stream, packed in the one usual way or not at all."""
        stream = self.found(value)
        if not isinstance(stream, Stream):
            raise ReadError(message(Read.NO_STREAM, where=message(where)))
        if strange := sorted(stream.says.keys() - keys):
            raise ReadError(message(Read.KEYS, where=message(where), what=shown(strange[0])))
        data = stream.packed
        if "/Filter" in stream.says:
            if stream.says["/Filter"] not in ("/FlateDecode", ["/FlateDecode"]):
                raise ReadError(message(Read.PACKED, where=message(where), how=shown(stream.says["/Filter"])))
            unpacking = zlib.decompressobj()
            try:
                data = unpacking.decompress(data, self.left + 1)
            except zlib.error as error:
                raise ReadError(message(Read.NOT_UNPACKED, where=message(where))) from error
            if len(data) <= self.left and (not unpacking.eof or unpacking.unused_data):
                raise ReadError(message(Read.UNPACKED_PART, where=message(where)))
        self.left -= len(data)
        if self.left < 0:
            raise ReadError(message(Read.TOO_LONG))
        return data


def _after(data: bytes, at: int) -> int:
    """The first place from `at` that is neither white space nor in a comment."""
    found = SPACE.match(data, at)
    return found.end() if found else at


def _stream(data: bytes, at: int, says: Any) -> tuple[Stream, int]:
    length = says.get("/Length") if isinstance(says, dict) else None
    if type(length) is not int or length < 0:
        raise ReadError(message(Read.NO_LENGTH))
    ended = _END_OF_STREAM.match(data, at + length)
    if ended is None:
        raise ReadError(message(Read.OTHER_LENGTH))
    return Stream(says, data[at : at + length]), ended.end()
