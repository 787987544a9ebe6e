"""Wrong builders of what is printed: strips, templates, pictures, check sheets, gauges, guides and grids."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kits import FLAT, NOTCHED, PEGGED
from wrong_builders import Wrong, returns, value

import layout.parts.holes as holes_module
import layout.parts.strip as strip_module
from layout.drawing.shapes import Placing
from layout.warps.warp import Warp

ROUND: Mapping[str, object] = {"weaving.slant": "face straight"}
HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
ROUNDED = FLAT | {"frame.edge_radius": "4 mm"}
FROM_RIGHT = PEGGED | {"weaving.start": "right", "weaving.near_end": "top", "weaving.tie_off": "far end"}


def near_marks(draft: Any) -> list[float]:
    """The marks of the near end, whichever end is asked for."""
    return list(map(float, draft.plan.warp.near))


def aside(shapes: Any) -> Any:
    """The first shape 5 micrometres to the right."""
    return [*Placing(0, 0.005, 0).shapes(shapes[:1]), *shapes[1:]]


PRINTED: Mapping[str, Wrong] = {
    # marks
    "a mark of a strip aside": Wrong(ROUND, "strip-near.pdf", returns(strip_module._Draft, "winds", aside)),
    "near and far exchanged": Wrong(
        ROUND, "strip-far.svg", value(strip_module._Draft, "contacts", property(near_marks))
    ),
    "a total one too high": Wrong(
        ROUNDED,
        "strip-near.pdf",
        returns(Warp, "unit_lines", lambda lines: [(at, total + 1) for at, total in lines]),
    ),
    "a notch aside": Wrong(NOTCHED, "strip-near.pdf", returns(strip_module, "outlines", aside)),
    "a tick at a notch that is used": Wrong(HELD, "strip-near.pdf", returns(strip_module, "outlines", aside)),
    "rows of pegs exchanged": Wrong(
        PEGGED, "strip-near.pdf", returns(holes_module, "in_outer_row", lambda outer: not outer)
    ),
}
"""By a name that says what is wrong."""
