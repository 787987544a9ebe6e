"""A table of orders: a file of rows, each of which asks for a kit of a range."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from templates_gen.inputs.range_file import Range
from templates_gen.inputs.toml_file import named_file, why_not
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.orders_table import Unread
from templates_gen.ordering.order import Order, Unreadable
from templates_gen.ordering.table.columns import Column, columns_of
from templates_gen.ordering.table.errors import OrdersFileError
from templates_gen.ordering.table.kept import Kept, kept_file
from templates_gen.ordering.table.rows import Rows
from templates_gen.ordering.table.source import Source, source_of

_MB = 1_000_000
LARGEST = 64 * _MB
"""A larger table is refused, in bytes: that is half a million orders."""


@dataclass(frozen=True, slots=True)
class OrderTable:
    """The table that a file held when it was read: its digest, its `count` of rows, and the rows as they are asked for.

    Nothing but the bytes of the file is kept.
    """

    path: Path
    kits: Range = field(repr=False)
    columns: tuple[Column, ...]
    source: Source = field(repr=False)
    sha256: str
    count: int

    def rows(self) -> Iterator[Order | Unreadable]:
        """What each row asks for, in the order of the file; every call begins with the first row again."""
        rows = self.source.rows()
        next(rows)
        reading = Rows(self.columns, self.kits, commas=self.source.delimiter == ";")
        return map(reading.read, rows)

    def changed(self) -> bool:
        """Whether the file is no longer what was read: changed, taken away, or replaced by something else."""
        try:
            return kept_file(self.path, LARGEST).sha256 != self.sha256
        except OSError:
            return True


def open_orders(path: Path, kits: Range) -> OrderTable:
    """The table of orders for kits of a range that the file at `path` holds: comma, semicolon or tab, UTF-8, UTF-16 or
    Windows-1252.

    OrdersFileError where the file cannot be read to its end or holds no order, FieldErrors, with all at once, for
    columns that cannot be. What is wrong with a row is its own.
    """
    file = named_file(path)
    data = _data(path, file)
    source = source_of(data, file)
    rows = source.rows()
    columns = columns_of(next(rows), file, len(kits.kits))
    count = sum(1 for _ in rows)
    if not count:
        raise OrdersFileError(message(Unread.NO_ROWS, file=file))
    return OrderTable(path, kits, columns, source, data.sha256, count)


def _data(path: Path, file: str) -> Kept:
    try:
        data = kept_file(path, LARGEST)
    except (OSError, ValueError) as error:
        raise OrdersFileError(message(File.NOT_READ, file=file, reason=why_not(error, File.MAY_NOT_READ))) from None
    if data.size > LARGEST:
        raise OrdersFileError(message(Unread.TOO_LARGE, file=file, size=LARGEST // _MB))
    return data
