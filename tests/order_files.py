"""Tables of orders for tests: a small range, files of rows, and what they are read as."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path

from templates_gen.data import text_of
from templates_gen.inputs.range_file import Range, range_from
from templates_gen.ordering.order import Order, Problem, Unreadable
from templates_gen.ordering.order_table import OrderTable, open_orders

LARGE, MIDDLE, SMALL = "Weir frame, large", "Weir frame, middle", "Weir frame, small"


@cache
def three_kits() -> Range:
    """The range to start from, which has three kits."""
    return range_from(tomllib.loads(text_of("range.toml")))


@cache
def one_kit() -> Range:
    """The kit to start from, as a range of one."""
    return range_from(tomllib.loads(text_of("demo.toml")))


def opened(folder: Path, data: str | bytes, kits: Range | None = None) -> OrderTable:
    """The table that a file with this text holds."""
    path = folder / "orders.csv"
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return open_orders(path, kits or three_kits())


def rows(folder: Path, data: str | bytes, kits: Range | None = None) -> list[Order | Unreadable]:
    """What the rows of that file ask for."""
    return list(opened(folder, data, kits).rows())


def order(folder: Path, data: str | bytes, kits: Range | None = None) -> Order:
    """The one order of that file."""
    (found,) = rows(folder, data, kits)
    assert isinstance(found, Order), found
    return found


def problems(folder: Path, data: str | bytes, kits: Range | None = None) -> tuple[Problem, ...]:
    """What is wrong with its one row, which is in line 2."""
    (found,) = rows(folder, data, kits)
    assert isinstance(found, Unreadable), found
    assert found.line == 2
    return found.problems
