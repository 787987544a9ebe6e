"""The picture of every step of a leaflet, by its name."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Shape
from layout.parts.leaflet.pictures import frame, rows, weaving, winding
from layout.plan import Plan

STEP_PICTURES: Mapping[str, Callable[[Plan, FontMetrics], list[Shape]]] = {
    "frame": frame.frame,
    "marks": frame.marks,
    "tie-on": winding.tie_on,
    "winding": winding.first_passes,
    "tension": winding.tension,
    "stick": rows.stick,
    "rows": rows.rows,
    "space": rows.space,
    "leashes": rows.leashes,
    "first-rows": weaving.first_rows,
    "sheds": weaving.sheds,
    "finish": weaving.finish,
}
