"""A sheet that is folded at half its width and half its height: what that leaves for what is read on it."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.paper.area import SIDE
from layout.paper.regions import FIELD, regions
from layout.paper.room import room_for
from layout.parts.leaflet.leaflet import bare_leaflet, leaflet
from layout.parts.leaflet.panels import Room
from layout.parts.leaflet.trimmed import FOOT, HEAD, HIGH, around, block_room
from layout.plan import Plan

_LEAST_HALF, _LEAST_HIGH = 82.0, 250.0
"""In mm: half a field so wide holds a column of a panel; a lower sheet is not folded across."""


_SEVERAL = 9  # whatever their number, it is as wide


def leaves_on_paper(plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
    """The leaves of a leaflet: what a head says of one alone is not as long as what it says of several."""
    parts: tuple[Part, ...] = ()
    for count in (1, _SEVERAL):
        parts = leaflet(plan, folded_room(plan, bare_leaflet(plan, count), metrics), metrics)
        if len(parts) == 1:
            break
    return parts


def folded_room(plan: Plan, probe: Part, metrics: FontMetrics) -> Room:
    """The room on a sheet that says what that of `probe` does, from the middle of the sheet to both sides."""
    grid = regions(plan.kit.paper)
    _, high = room_for(plan, probe, metrics)
    half = grid.width / 2 - grid.left
    left, low, right, block_top = around((0.0, HEAD + FOOT - HIGH, 0.0, 0.0))
    if grid.width - 2 * SIDE >= right - left and high >= block_top - low:
        return block_room()
    top = FIELD + high
    fold = top - grid.height / 2 if grid.height >= _LEAST_HIGH and half >= _LEAST_HALF else None
    return Room(half, high, 2 if half >= _LEAST_HALF else 1, fold)
