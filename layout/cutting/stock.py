"""The stock that parts are cut from, and what a shop's cutter does with each operation."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

OPERATIONS = ("engrave", "score", "cut", "reference")
"""What is done with a line or area, in the order of work; nothing runs what is there for reference."""


@dataclass(frozen=True, slots=True)
class Operation:
    """How a shop's files show one operation: an RGB colour such as "#0055aa" and a line width in mm."""

    colour: str
    width: float


@dataclass(frozen=True, slots=True)
class Stock:
    """A sheet of material, mm throughout.

    `kerf_x` and `kerf_y` are the full width of a cut that runs up and across the sheet's x axis; with `kerf_drawn` the
    outlines are drawn so that the parts come out right, otherwise the cutter's own compensation is relied on. `grain`
    is the axis that the face grain runs along. Speeds are mm/s by operation, prices are per sheet and per minute.
    """

    name: str
    material: str
    thickness: float
    width: float
    height: float
    grain: Literal["x", "y", "none"]
    kerf_x: float
    kerf_y: float
    kerf_drawn: bool
    ease: float
    operations: Mapping[str, Operation]
    speeds: Mapping[str, float]
    prices: Mapping[str, float]
