"""The one door from a kit to its numbers: everything that is drawn or told later comes from the plan."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.frames.load import Load, load_on
from layout.kit.kit import Kit
from layout.setting.sett import take_sett
from layout.units import say_length, say_number
from layout.warps.warp import Warp, wind


@dataclass(frozen=True, slots=True)
class Plan:
    """A kit with its warp, and what a person should know about it: `notes` explain, `warnings` ask for care."""

    kit: Kit
    warp: Warp
    notes: tuple[str, ...]
    warnings: tuple[str, ...]

    @property
    def load(self) -> Load:
        """The pull of the warp on a frame end, and how far the end gives way."""
        return load_on(self.kit.frame, self.kit.strength, self.warp.ends, self.warp.width)

    @property
    def sett_words(self) -> str:
        """The sett and the winds to a marking unit, as sheets and strips say it."""
        sett = self.warp.sett
        per, unit = (Fraction(127, 5), "inch") if sett.unit.imperial else (Fraction(10), "cm")
        winds = say_number(sett.winds_per_unit)
        noun = "wind" if sett.winds_per_unit == 1 else "winds"
        return f"{say_number(sett.per_mm * per)} ends per {unit}, {winds} {noun} to {say_length(sett.unit)}"


def plan(kit: Kit) -> Plan:
    """Sett, winds and marks of `kit`. Raises FieldError, with the key to change, where the kit cannot be wound."""
    sett = take_sett(kit.sett)
    warp = wind(sett, kit.frame, kit.weaving)
    load = load_on(kit.frame, kit.strength, warp.ends, warp.width)
    return Plan(kit, warp, sett.notes + warp.notes + load.notes, sett.warnings + load.warnings)
