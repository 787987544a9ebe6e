"""The one door from a kit to its numbers: everything that is drawn or told later comes from the plan."""

from __future__ import annotations

from dataclasses import dataclass

from layout.kit import Kit
from layout.sett import take_sett
from layout.warp import Warp, wind


@dataclass(frozen=True, slots=True)
class Plan:
    """A kit with its warp, and what a person should know about it: `notes` explain, `warnings` ask for care."""

    kit: Kit
    warp: Warp
    notes: tuple[str, ...]
    warnings: tuple[str, ...]


def plan(kit: Kit) -> Plan:
    """Sett, winds and marks of `kit`. Raises FieldError, with the key to change, where the kit cannot be wound."""
    sett = take_sett(kit.sett)
    warp = wind(sett, kit.frame, kit.weaving)
    return Plan(kit, warp, sett.notes + warp.notes, sett.warnings)
