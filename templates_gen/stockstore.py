"""Putting measured values into a stock file: nothing else in the file changes, and it changes whole or not at all."""

from __future__ import annotations

import codecs
import tomllib
from collections.abc import Mapping, MutableMapping
from pathlib import Path
from typing import cast

from layout.cutting.stock_values import read_stock
from templates_gen.folder import replace_file
from templates_gen.fonts import metrics
from templates_gen.stockfile import load


def store(path: Path, cutting: Mapping[str, str | None]) -> None:
    """Puts these entries into the table [cutting] of the stock file at `path`, and takes out those that are None.

    Remarks, spaces, order and line ends stay. Raises StockFileError where the file cannot be read, FieldErrors where it
    could not be used as it was or as it would be, FaultError where it cannot be replaced; then it is as it was.
    """
    load(path)
    data = path.read_bytes()
    mark = codecs.BOM_UTF8 if data.startswith(codecs.BOM_UTF8) else b""
    text = changed(data.removeprefix(mark).decode(), cutting)
    read_stock(tomllib.loads(text), metrics())
    replace_file(path, mark + text.encode())


def changed(text: str, cutting: Mapping[str, str | None]) -> str:
    """The stock file's text with these entries of the table [cutting]."""
    import tomlkit  # not needed before something is stored

    document = tomlkit.parse(text)
    table = cast(MutableMapping[str, object], document["cutting"])  # a stock file has one
    for key, value in cutting.items():
        if value is not None:
            table[key] = value
        elif key in table:
            del table[key]
    new = tomlkit.dumps(document)
    return new.replace("\r\n", "\n").replace("\n", "\r\n") if "\r\n" in text else new
