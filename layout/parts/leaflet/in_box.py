"""What lies in the box of a kit, so that a leaflet names nothing else."""

from __future__ import annotations

from layout.plan import Plan

_USUAL = frozenset({"strips", "spacing-guide", "wrap-gauge", "leaflet", "label"})


def in_box(plan: Plan, *names: str) -> bool:
    """Whether any of these lies in the box of a plan's kit."""
    return any(name in _USUAL for name in names)
