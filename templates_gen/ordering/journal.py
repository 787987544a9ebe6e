"""The journal: which orders lie finished in their folders, and what they were made from.

A file of lines, each with its own digest: what a killed run left half at the end is cut off, and a damaged one is not
believed. In memory is only where the line of each order begins.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO

from layout.values.errors import shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.flushed import flush_folder
from templates_gen.disk.plain import kind_at
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Kept, Stopped
from templates_gen.ordering.by_folder import ByFolder
from templates_gen.ordering.entry import Entry, entry_of
from templates_gen.ordering.fingerprint import version
from templates_gen.ordering.result_lines import line_of

NAME = "journal.jsonl"
_FORMAT = 1
_FLAGS = os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0)


class Journal:
    """That of the folder `hidden`, which must be locked; `tell` hears of one that cannot be read, and is kept aside."""

    def __init__(self, hidden: Path, tell: Callable[[str], None]) -> None:
        self._path, self._places = hidden / NAME, ByFolder()
        try:
            self._file = self._opened(tell)
            self._compact()
        except OSError as error:
            raise fault(Fault.WRITE, self._path, error, after=message(Stopped.MADE_STAYS)) from error

    @property
    def folders(self) -> Iterator[str]:
        """The folders of all orders that were ever made and not made anew."""
        return iter(self._places)

    def entry(self, folder: str) -> Entry | None:
        """What was made last in that folder."""
        if folder not in self._places:
            return None
        self._file.seek(self._places[folder])
        try:
            return entry_of(self._file.readline())
        except ValueError:  # damaged since the run began: then it is made again
            return None

    def add(self, entries: Sequence[Entry]) -> None:
        """Returns when the entries lie on the disk; FaultError where they do not."""
        end = self._file.seek(0, 2)
        try:
            self._write(entries, end)
        except OSError as error:
            with suppress(OSError):
                self._file.truncate(end)
            raise fault(Fault.WRITE, self._path, error, after=message(Stopped.MADE_STAYS)) from error

    def close(self) -> None:
        """Makes the file small where most of it is spent."""
        with suppress(OSError):
            self._compact()
        with suppress(OSError):  # what could not be written was said, and is still in its buffer
            self._file.close()

    def _write(self, entries: Sequence[Entry], end: int) -> None:
        lines = [entry.line for entry in entries]
        self._file.write(b"".join(lines))
        self._file.flush()
        os.fsync(self._file.fileno())
        for entry, line in zip(entries, lines, strict=True):
            self._places[entry.result.folder] = end
            end += len(line)

    def _opened(self, tell: Callable[[str], None]) -> BinaryIO:
        if kind_at(self._path) not in ("nothing", "file"):
            raise FaultError(message(Stopped.LINK, path=shown_path(self._path)))
        file = os.fdopen(os.open(self._path, _FLAGS, 0o666), "r+b")
        try:
            self._places = _cut_and_read(file)
        except ValueError:
            file.close()
            self._set_aside(tell)
            return self._opened(tell)
        return file

    def _set_aside(self, tell: Callable[[str], None]) -> None:
        tries = (self._path.with_name(f"{NAME}.unreadable-{number}") for number in range(1, 10_000))
        other = next(path for path in tries if kind_at(path) == "nothing")
        self._path.rename(other)
        tell(message(Kept.JOURNAL, folder=shown_path(self._path.parent), other=shown_path(other.name)))

    def _compact(self) -> None:
        """Writes the file anew where less than half of it is of use, and puts the new one in its place."""
        if self._file.seek(0, 2) <= 2 * self._used():
            return
        new = self._path.with_name(f"{NAME}.new")
        new.unlink(missing_ok=True)
        with new.open("xb") as file:
            file.write(_header())
            for place in sorted(self._places.values()):
                self._file.seek(place)
                file.write(self._file.readline())
            file.flush()
            os.fsync(file.fileno())
        self._file.close()
        new.replace(self._path)
        flush_folder(self._path.parent)
        self._file = os.fdopen(os.open(self._path, _FLAGS), "r+b")
        self._places = _cut_and_read(self._file)

    def _used(self) -> int:
        self._file.seek(0)
        used = len(self._file.readline())
        for place in self._places.values():
            self._file.seek(place)
            used += len(self._file.readline())
        return used


def _header() -> bytes:
    return line_of({"orders": _FORMAT, "program": version()})


def _cut_and_read(file: BinaryIO) -> ByFolder:
    """Where the last entry of each folder begins. A header is written where none is; a torn end is cut off.

    ValueError where it is no journal, or one of another format, or is damaged before its end.
    """
    places = ByFolder()
    good = _past_header(file)
    torn = False
    for start, line in _lines(file, good):
        try:
            folder = entry_of(line).result.folder
        except ValueError:
            torn = True
            continue
        if torn:
            raise ValueError
        places[folder], good = start, start + len(line)
    if torn:
        file.truncate(good)
    return places


def _past_header(file: BinaryIO) -> int:
    """Where the first entry begins; writes the header where none is, or a torn one."""
    file.seek(0)
    line = file.readline()
    if line.endswith(b"\n"):
        if _format(line) != _FORMAT:
            raise ValueError
        return len(line)
    if not _header().startswith(line):
        raise ValueError
    file.truncate(0)
    file.seek(0)
    file.write(_header())
    file.flush()
    os.fsync(file.fileno())
    return len(_header())


def _format(header: bytes) -> object:
    """Which format a header names; ValueError or None where it is none."""
    try:
        values = json.loads(header)
    except RecursionError as error:
        raise ValueError from error
    return values.get("orders") if isinstance(values, dict) else None


def _lines(file: BinaryIO, start: int) -> Iterator[tuple[int, bytes]]:
    """Each line from `start` on, and where it begins; one without an end is there too."""
    file.seek(start)
    while line := file.readline():
        yield start, line
        start += len(line)
