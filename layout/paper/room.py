"""How much room the head and the scales of a sheet leave between the gutters for what is read."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.paper.area import Area
from layout.paper.furniture import Page, furnish
from layout.paper.head import Head
from layout.paper.regions import FIELD, Regions, regions
from layout.paper.sheets import Furnisher
from layout.plan import Plan

_WHITE = 4.0  # over the check scales


def room_for(plan: Plan, probe: Part, metrics: FontMetrics, *, bare: bool = False) -> tuple[float, float]:
    """Width and height in mm of the field on a sheet that says what that of `probe` does; on a `bare` one nothing."""
    return _room(regions(plan.kit.paper), Furnisher(plan, metrics)(probe, bare=bare))


def room_under(page: Page, said: Head, probe: Part, metrics: FontMetrics) -> tuple[float, float]:
    """The same on a sheet that is of no one kit, under its own head."""
    return _room(regions(page.paper), furnish(page, said, probe, metrics).area)


def _room(grid: Regions, area: Area) -> tuple[float, float]:
    inside = [box for box in area.taken if box[0] < grid.right and box[2] > grid.left]
    top = min((box[1] for box in inside if box[3] > grid.height / 2), default=area.top)
    floor = max((box[3] + _WHITE for box in inside if box[3] < grid.height / 2), default=FIELD)
    return grid.right - grid.left, top - max(floor, FIELD)
