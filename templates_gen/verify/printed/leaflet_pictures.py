"""What must be true of the picture of every step of a leaflet, by its name."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from layout.drawing.shapes import Shape
from templates_gen.messages.roles.proof_leaflet import LeafPicture
from templates_gen.verify.printed import leaflet_spacing, leaflet_warp, leaflet_weave
from templates_gen.verify.printed.leaflet_facts import Facts

CHECKS: Mapping[str, Callable[[Facts, Sequence[Shape]], Iterator[LeafPicture]]] = {
    "frame": leaflet_warp.frame,
    "marks": leaflet_warp.marks,
    "tie-on": leaflet_warp.tie_on,
    "winding": leaflet_warp.winding,
    "tension": leaflet_warp.tension,
    "stick": leaflet_weave.stick,
    "rows": leaflet_weave.rows,
    "space": leaflet_spacing.space,
    "leashes": leaflet_weave.leashes,
    "first-rows": leaflet_weave.first_rows,
    "sheds": leaflet_weave.sheds,
    "finish": leaflet_weave.finish,
}
