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
    """A line for everything in each box that no step names, once; what the help card names is left to that."""
    box = plan.kit.box
    held = [name for name in box.each_holds if not _lacking(plan, name)]
    roles = [_BESIDE[name] for name in held if name in _BESIDE]
    if COMB in held and in_box(plan, *GUIDES):
        roles.append(Leaflet.COMB_TOO)
    if not box.has("help"):
        roles += [Leaflet.SPARE_ENDS] if box.spare_ends else []
        roles += [Leaflet.NEEDLE] if box.also is None else []
    return map(plan.words.say, dict.fromkeys(roles))


def _lacking(plan: Plan, name: str) -> bool:
    """Whether this kit can have no such thing: a grid without picks, combs to wind with where nothing is wound."""
    if name == "weaving-grid":
        return plan.amounts.picks_per_cm is None
    return name == "winding-comb" and not (plan.warp.winds and name in plan.kit.frame.ends.cut_parts)
