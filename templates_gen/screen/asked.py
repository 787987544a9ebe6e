"""What the commands share: refusals as sentences, the kit and the stock that were named."""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import wraps
from pathlib import Path
from typing import TYPE_CHECKING, Any

from layout.cutting.stock.stock import Stock
from layout.values.errors import LayoutError
from templates_gen.screen.terminal import refuse

if TYPE_CHECKING:
    from layout.drawing.printer import Printer
    from templates_gen.inputs.range_file import Range


def sentences(command: Callable[..., None]) -> Callable[..., None]:
    """Turns a refusal into its sentences on the error stream and exit code 2."""

    @wraps(command)
    def run(*args: Any, **kwargs: Any) -> None:
        try:
            command(*args, **kwargs)
        except LayoutError as error:
            refuse(error)
            sys.exit(2)

    return run


def range_at(path: Path | None) -> Range:
    """The range of a file, which may hold one kit alone, or that of the demo kit."""
    from templates_gen.inputs import range_file

    return range_file.load_range(path) if path else range_file.demo()


def printer_of(name: str | None) -> Printer | None:
    """The printer that is kept under a name, or none."""
    from templates_gen.inputs import printer_store

    return printer_store.load(name) if name is not None else None


def stock_of(path: Path | None) -> Stock:
    """The stock of a file, or the built-in one."""
    from templates_gen.inputs import stock_file as stockfile

    return stockfile.load(path) if path else stockfile.built_in()
