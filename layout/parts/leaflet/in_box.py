"""What lies in the box of a kit, so that a leaflet names that and nothing else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.messages.roles import Leaflet
from layout.parts.held import held_each, is_held
from layout.plan import Plan

GUIDES, COMB = ("spacing-guide", "spacing-guide-cut"), "comb"
"""What the ends are spaced with."""

_BESIDE: Mapping[str, Leaflet] = {
    "wrap-gauge": Leaflet.GAUGE,
    "wrap-gauge-cut": Leaflet.GAUGE,
    "frame-check": Leaflet.CHECK_SHEET,
    "winding": Leaflet.WINDING_SHEET,
    "winding-comb": Leaflet.WINDING_COMBS,
    "weaving-grid": Leaflet.GRID,
    "start-here": Leaflet.START,
    "help": Leaflet.HELP,
}
"""What no step needs, by the name of the product, and where it is used."""


def beside_the_steps(plan: Plan) -> Iterator[str]:
    """A line for everything in each box that no step names, once; what the help card names is left to that."""
    box, held = plan.kit.box, held_each(plan)
    roles = [_BESIDE[name] for name in held if name in _BESIDE]
    if COMB in held and is_held(plan, *GUIDES):
        roles.append(Leaflet.COMB_TOO)
    if not is_held(plan, "help"):
        roles += [Leaflet.SPARE_ENDS] if box.spare_ends else []
        roles += [Leaflet.NEEDLE] if box.also is None else []
    return map(plan.words.say, dict.fromkeys(roles))
