"""One row of a table to the order that it is, or to everything that is wrong with it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import partial
from typing import Any, TypeVar

from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY
from layout.kit.merging import merged, without
from layout.kit.range_values import COPIES as COPIES_INPUT
from layout.values.errors import FieldError, ascii_safe, shown
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import CellNeed
from templates_gen.ordering.order import Order, Problem, Unreadable
from templates_gen.ordering.problems import cell_problem
from templates_gen.ordering.table.cells import Where, bare, one_line, value_of
from templates_gen.ordering.table.columns import COPIES, KIT_NAME, Column
from templates_gen.ordering.table.instead import not_taken
from templates_gen.ordering.table.kits import Kits
from templates_gen.ordering.table.order_numbers import EXAMPLE, MOST, NUMBER, Taken, folder_of
from templates_gen.ordering.table.source import Row

_T = TypeVar("_T")
_OWN = (NUMBER, KIT_NAME, COPIES)


class Rows:
    """The reading of the rows of one table, from its first to its last: it knows what order numbers there were.

    `commas` says that decimals have a comma there.
    """

    def __init__(self, columns: tuple[Column, ...], kits: Range, *, commas: bool) -> None:
        self.columns, self.kits, self.commas = columns, Kits(kits), commas
        self.headers = {each.key: each.header for each in columns}
        self.named = frozenset(each.at for each in columns)
        self.places = {each.key: each.at for each in columns}
        self.taken = Taken()

    def read(self, row: Row) -> Order | Unreadable:
        """The order of a row, or why it is none."""
        return _Reading(self, row).order()


class _Reading:
    """One reading of a row: refusals are collected."""

    def __init__(self, rows: Rows, row: Row) -> None:
        self.rows, self.row = rows, row
        self.where = Where(row.line, row.last, rows.commas)
        self.texts = dict(self.cells())
        self.errors: list[FieldError] = []

    def cells(self) -> Iterator[tuple[str, str]]:
        """What stands in the row, by key; empty cells are left out."""
        for column in self.rows.columns:
            text = bare(self.row.cells[column.at]) if column.at < len(self.row.cells) else ""
            if text:
                yield column.key, text

    def order(self) -> Order | Unreadable:
        number = self.texts.get(NUMBER, "")
        folder = self.kept(lambda: self.folder(number))
        kit = self.kept(self.kit)
        copies = self.kept(self.copies)
        values = {key: self.kept(partial(self.value, key)) for key in self.texts if key not in _OWN}
        outside = tuple(self.outside())
        if folder is None or kit is None or copies is None or self.errors or outside:
            return self.unreadable(kit, values, outside)
        columns = {key: self.rows.headers[key] for key in self.texts}
        own = _nested({**values, NUMBER: number})
        left = not_taken(tuple(self.texts))
        shared = without(kit.values, left) if left else kit.values
        return Order(self.row.line, number, folder, kit.kit.name, copies, merged(shared, own), columns)

    def kept(self, read: Callable[[], _T]) -> _T | None:
        """What is read; None where it is refused."""
        try:
            return read()
        except FieldError as error:
            self.errors.append(error)
            return None

    def folder(self, number: str) -> str:
        one_line(NUMBER, number, EXAMPLE, self.where)
        folder = folder_of(number)
        self.rows.taken.take(number, folder, self.row.line)
        return folder

    def kit(self) -> RangeKit:
        name = self.texts.get(KIT_NAME, "")
        one_line(KIT_NAME, name, self.rows.kits.first, self.where)
        return self.rows.kits.of(name)

    def copies(self) -> int:
        """How many boxes: one where the row does not say, whatever a run of the whole range makes."""
        if COPIES not in self.texts:
            return 1
        value = value_of(COPIES_INPUT, self.texts[COPIES], self.where)
        return int(read_field(COPIES_INPUT, value, COPIES, metrics()))

    def value(self, key: str) -> object:
        return value_of(BY_KEY[key], self.texts[key], self.where)

    def outside(self) -> Iterator[Problem]:
        """What stands in columns without a name."""
        for at, cell in enumerate(self.row.cells):
            if at not in self.rows.named and cell.strip():
                yield Problem("", message(CellNeed.OUTSIDE, number=at + 1, got=shown(cell)))

    def unreadable(
        self, kit: RangeKit | None, values: Mapping[str, object], outside: tuple[Problem, ...]
    ) -> Unreadable:
        """Everything that is wrong with the row, each cell looked at by itself, in the order of its columns."""
        for key, value in values.items():
            if value is not None and BY_KEY[key].kind != "tables":
                self.kept(partial(read_field, BY_KEY[key], value, key, metrics()))
        errors = sorted(self.errors, key=lambda error: self.rows.places.get(error.field, 0))
        found = (cell_problem(self.rows.headers, error) or Problem("", str(error)) for error in errors)
        number = ascii_safe(self.texts.get(NUMBER, ""))[:MOST]
        return Unreadable(self.row.line, number, kit.kit.name if kit else "", (*found, *outside))


def _nested(values: Mapping[str, object]) -> dict[str, object]:
    """Values by dotted keys as tables within tables."""
    tables: dict[str, Any] = {}
    for key, value in values.items():
        *outer, leaf = key.split(".")
        place = tables
        for table in outer:
            place = place.setdefault(table, {})
        place[leaf] = value
    return tables
