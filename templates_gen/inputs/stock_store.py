"""Putting measured values into a stock file: nothing else in the file changes, and it changes whole or not at all."""

from __future__ import annotations

import codecs
import tomllib
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from templates_gen.disk.locks import locked
from templates_gen.disk.replace import replace_file
from templates_gen.inputs.stock_file import StockFileError, load
from templates_gen.inputs.toml_edit import Values, with_entries
from templates_gen.inputs.toml_file import named_file
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File

Tables = Mapping[str, Values]
"""By table, what is to stand in it; None takes an entry out."""


@contextmanager
def kept(path: Path) -> Iterator[tuple[Stock, Callable[[Tables], None]]]:
    """The stock of a file that no other run of ours changes meanwhile, and what puts values into that file.

    Remarks, spaces, order and line ends stay. Raises StockFileError where the file cannot be read, FieldErrors where it
    could not be used as it was or as it would be, FaultError where it cannot be replaced; then it is as it was.
    """
    load(path)  # a file that is none needs no lock
    place = path.resolve()
    with locked(place.with_name(f".{place.name}.lock"), path):
        yield load(path), lambda tables: _store(path, tables)


def _store(path: Path, tables: Tables) -> None:
    data = path.read_bytes()
    mark = codecs.BOM_UTF8 if data.startswith(codecs.BOM_UTF8) else b""
    old = data.removeprefix(mark).decode()
    new = changed(old, tables)
    if _values(new) != _changed_values(_values(old), tables):
        example = 'kerf = "0.20 mm"'
        raise StockFileError(message(File.NO_PLACE, file=named_file(path), example=example))
    read_stock(_values(new), metrics())
    replace_file(path, mark + new.encode())


def changed(text: str, tables: Tables) -> str:
    """The stock file's text with these entries."""
    for table, values in tables.items():
        text = with_entries(text, table, values)
    return text


def _values(text: str) -> dict[str, Any]:
    return tomllib.loads(text)


def _changed_values(values: dict[str, Any], tables: Tables) -> dict[str, Any]:
    """The same change made in plain values: what the new text has to say."""
    for table, entries in tables.items():
        own = values.get(table, {}) | entries
        values[table] = {leaf: value for leaf, value in own.items() if value is not None}
    return values
