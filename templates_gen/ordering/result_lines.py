"""Results as lines of JSON, which a journal and a report are kept in while the orders are many."""

from __future__ import annotations

import json
import tempfile
from array import array
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any, Self

from templates_gen.disk.faults import FaultError, fault
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Stopped
from templates_gen.ordering.order import Problem
from templates_gen.ordering.result import Amount, OrderFile, Result

_TUPLES = {"files": OrderFile, "problems": Problem, "amounts": Amount}


def result_values(result: Result) -> dict[str, Any]:
    """A result in plain values."""
    return {name: getattr(result, name) for name in Result.__slots__}


def result_from(values: dict[str, Any]) -> Result:
    """The result that plain values say; TypeError, KeyError or ValueError where they say none."""
    plain: dict[str, Any] = {name: values[name] for name in Result.__slots__ if name not in (*_TUPLES, "notes")}
    rows: dict[str, Any] = {name: tuple(row(*each) for each in values[name]) for name, row in _TUPLES.items()}
    return Result(**plain, **rows, notes=tuple(values["notes"]))


def line_of(values: dict[str, Any]) -> bytes:
    """Plain values as one line."""
    return json.dumps(values, separators=(",", ":")).encode() + b"\n"


class Spool:
    """The results of one run in a file that is gone with it, in the order of their rows, however they came.

    It may be read while it grows, and again. In memory a row has eight bytes.
    """

    def __init__(self, folder: Path | None) -> None:
        self._folder = folder or Path(tempfile.gettempdir())
        self._places = array("q")
        try:
            self._file = tempfile.TemporaryFile(dir=folder)  # noqa: SIM115 (closed at the end of the block)
        except OSError as error:
            raise self._fault(error) from error

    def add(self, row: int, result: Result) -> None:
        """Keeps what became of a row, by its number from 0; FaultError where the disk takes no more."""
        self._places.extend([-1] * (row + 1 - len(self._places)))
        place = self._file.seek(0, 2)
        try:
            self._file.write(line_of(result_values(result)))
            self._file.flush()
        except OSError as error:
            raise self._fault(error) from error
        self._places[row] = place

    def _fault(self, error: OSError) -> FaultError:
        return fault(Fault.WRITE_INTO, self._folder, error, after=message(Stopped.MADE_STAYS))

    def __iter__(self) -> Iterator[Result]:
        for place in self._places:
            if place >= 0:
                self._file.seek(place)
                yield result_from(json.loads(self._file.readline()))

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        with suppress(OSError):  # what could not be written was said, and is still in its buffer
            self._file.close()
