"""What is wrong with an order, by the columns of its row: the same sentence as a kit file would have."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from layout.messages.catalogue import Message
from layout.values.errors import FieldError, FieldErrors, LayoutError
from layout.values.uses import Use
from layout.values.written import shown_value
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_table import CellNeed
from templates_gen.ordering.order import Order, Problem

_ENTRY = re.compile(r"\[\d+\]")


def read_problems(order: Order, error: LayoutError) -> tuple[Problem, ...]:
    """Why the kit of that order cannot be read, planned or drawn, each with the header of the column it stands in.

    What the row does not say comes from the range, which the sentence says, or from nowhere; its column is empty, and
    so is that of a refusal of no key.
    """
    if isinstance(error, FieldErrors):
        return tuple(_problem(order, each) for each in error.errors)
    return (_problem(order, error) if isinstance(error, FieldError) else Problem("", str(error)),)


def cell_problem(columns: Mapping[str, str], error: FieldError) -> Problem | None:
    """The problem of a cell in one of these columns (headers by key); None where it stands in none of them.

    Where the refusal is of the very key of the column, its example is what can stand in the cell; where it is of a
    key inside or beside it, the sentence names that key.
    """
    key = next((each for each in _around(error.field) if each in columns), None)
    if key is None:
        return _beside(columns, error)
    return Problem(columns[key], _of_cell(error) if key == error.field else str(error))


def _problem(order: Order, error: FieldError) -> Problem:
    found = cell_problem(order.columns, error)
    if found:
        return found
    if _stands(order.values, error.field):
        return Problem("", message(CellNeed.OF_RANGE, sentence=str(error)))
    return Problem("", str(error))


def _around(field: str) -> Iterator[str]:
    """A dotted key and those of the lists and tables that it stands in, the innermost first."""
    key = _ENTRY.sub("", field)
    while key:
        yield key
        key = key.rpartition(".")[0]


def _beside(columns: Mapping[str, str], error: FieldError) -> Problem | None:
    """The problem of a whole table, in the first column that gives a key of it."""
    table = f"{error.field}."
    return next((Problem(header, str(error)) for key, header in columns.items() if key.startswith(table)), None)


def _of_cell(error: FieldError) -> str:
    """The sentence without its key, which the column says; an example as it may stand in a cell."""
    return str(OptionError("", error.needed, error.got, _in_cell(error)))


def _in_cell(error: FieldError) -> Message | str:
    match error.use:
        case (Use(key, value),) if key == error.field and value is not None:
            return shown_value(value)
    return error.suggestion


def _stands(values: Mapping[str, object], field: str) -> bool:
    """Whether anything stands at that key."""
    place: object = values
    for part in _ENTRY.sub("", field).split("."):
        if not isinstance(place, Mapping) or part not in place:
            return False
        place = place[part]
    return bool(field)
