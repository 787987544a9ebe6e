"""What the commands share: refusals as sentences, the kit and the stock that were named."""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import wraps
from pathlib import Path
from typing import Any

from layout.cutting.stock.stock import Stock
from layout.kit.kit import Kit
from layout.plan import Plan
from layout.values.errors import LayoutError
from templates_gen.screen.terminal import refuse


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


def kit_of(path: Path | None) -> Kit:
    """The kit of a file, or the demo kit."""
    from templates_gen.inputs import kit_file as kitfile

    return kitfile.load(path) if path else kitfile.demo()


def stock_of(path: Path | None) -> Stock:
    """The stock of a file, or the built-in one."""
    from templates_gen.inputs import stock_file as stockfile

    return stockfile.load(path) if path else stockfile.built_in()


def planned_of(path: Path | None) -> Plan:
    """The plan of a kit file, or of the demo kit."""
    from templates_gen.files.kept import planned

    return planned(kit_of(path))
