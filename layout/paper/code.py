"""The square code of a sheet, drawn from its modules: what they say is made and read elsewhere."""

from __future__ import annotations

import re

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Region, Shape, rectangle
from layout.paper.area import SIDE
from layout.paper.regions import FIELD, GUTTER, Regions

Modules = tuple[str, ...]
"""The rows of a code from above, "#" for a black module and any other letter for a white one."""

SIZE, MODULE = 12.0, 0.6
"""The side of a code of 18 x 18 modules with one module of white around it, and the side of a module, in mm."""


def code_box(regions: Regions, *, mirrored: bool = False) -> Box:
    """Where the code and its white stand: low in the left gutter, or in the right one on a `mirrored` sheet."""
    left = regions.width - SIDE - GUTTER if mirrored else SIDE
    return left, FIELD, left + SIZE, FIELD + SIZE


def code(modules: Modules | None, regions: Regions, *, mirrored: bool = False) -> list[Shape]:
    """Every run of black modules in a row as one rectangle, all in one region; nothing where there is no code."""
    if not modules:
        return []
    left, _, _, top = code_box(regions, mirrored=mirrored)
    left, top = left + MODULE, top - MODULE
    runs = tuple(
        rectangle(
            left + begin * MODULE,
            top - (row + 1) * MODULE,
            left + (begin + count) * MODULE,
            top - row * MODULE,
            Pen.SOLID,
        )
        for row, line in enumerate(modules)
        for begin, count in _runs(line)
    )
    return [Region(runs, Pen.SOLID)]


def _runs(line: str) -> list[tuple[int, int]]:
    """Where each run of black modules begins in a row, and how many there are in it."""
    return [(run.start(), len(run.group())) for run in re.finditer("#+", line)]
