"""What all orders of one run share, sent to every worker."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from layout.drawing.printer import Printer

USUAL = ("strips", "spacing-guide", "leaflet")
"""The products of an order, each as PDF, where no others are asked for."""


@dataclass(frozen=True, slots=True)
class Job:
    """The folder that the orders go into (absolute), and what each of them is made with.

    `only` are names as `make --only` takes them; where there are none, the `USUAL` ones. `stock` are the plain values
    of a stock file, None for the built-in one. What is printed is corrected for a `printer`. The engine says
    whether it is a `check` alone, which makes nothing, and names the `stage` that workers write into.
    """

    folder: str
    only: tuple[str, ...] = ()
    stock: Mapping[str, object] | None = None
    printer: Printer | None = None
    check: bool = False
    stage: str = ""
