"""What lies in the box of a kit, so that a leaflet names that and nothing else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.messages.roles import Leaflet
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


def in_box(plan: Plan, *names: str) -> bool:
    """Whether any of these lies in the box of a plan's kit, or once in a run of it."""
    return any(plan.kit.box.has(name) for name in names)


def beside_the_steps(plan: Plan) -> Iterator[str]:
    """A line for everything in each box that no step names, once."""
    held = plan.kit.box.each_holds
    roles = [_BESIDE[name] for name in held if name in _BESIDE]
    if COMB in held and in_box(plan, *GUIDES):
        roles.append(Leaflet.COMB_TOO)
    return map(plan.words.say, dict.fromkeys(roles))
