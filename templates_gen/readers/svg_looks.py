"""How the group of each pen must look in an SVG file: from the table of pens, or from a cutter's operations."""

from __future__ import annotations

from collections.abc import Mapping

from layout.drawing.pens import Pen
from templates_gen.document import OPERATION_OF, Operations

Look = tuple[Pen, dict[str, str]]
"""A pen and the presentation attributes of its group."""


def looks_of(operations: Operations | None) -> Mapping[str, Look]:
    """Every pen that a file may hold, by the name of its group."""
    if operations is None:
        return _PENS
    shown = {name: (pen, operations[name]) for pen, name in OPERATION_OF.items()}
    return {name: (pen, _look(pen, each.colour, each.width)) for name, (pen, each) in shown.items()}


def _look(pen: Pen, colour: str, width: float) -> dict[str, str]:
    if pen.ink.fills:
        return {"fill": colour, "fill-rule": "nonzero", "stroke": "none"}
    return {"fill": "none", "stroke": colour, "stroke-width": f"{width:g}"}


def _attributes(pen: Pen) -> dict[str, str]:
    """What a pen looks like in SVG, from the table of pens alone."""
    level = f"{round(255 * pen.ink.grey):02x}"
    wanted = _look(pen, f"#{level}{level}{level}", pen.ink.width)
    if pen.ink.dash:
        wanted["stroke-dasharray"] = ",".join([f"{part:g}" for part in pen.ink.dash])
    return wanted


_PENS = {pen.value: (pen, _attributes(pen)) for pen in Pen}
