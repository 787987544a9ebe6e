"""Stock files: what they say is for `layout.cutting.stock.stock_values` to judge."""

from __future__ import annotations

import tomllib
from pathlib import Path

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from layout.values.errors import LayoutError
from templates_gen.inputs.toml_file import TomlFiles
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.inputs import File


class StockFileError(LayoutError):
    """A stock file that cannot be opened, read or written; the sentence names it."""


FILES = TomlFiles(File.STOCK, 'thickness = "3 mm"', "stock.toml", StockFileError)
"""How stock files are read and begun."""


def load(path: str | Path) -> Stock:
    """The stock that the TOML file at `path` says.

    Raises StockFileError where the file cannot be read, FieldErrors (naming every key) where it cannot be used.
    """
    return read_stock(FILES.values(path), metrics())


def built_in() -> Stock:
    """The stock that is built in, 3 mm birch plywood: the same that a starter file says."""
    return read_stock(built_in_values(), metrics())


def built_in_values() -> dict[str, object]:
    """The same as plain values."""
    return tomllib.loads(FILES.starter_text())


def write_starter(path: str | Path) -> None:
    """Write a commented stock file to start from. Raises StockFileError, also where anything stands there already."""
    FILES.write_starter(path)
