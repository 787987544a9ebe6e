"""The stock that parts are cut from, and what a shop's cutter does with each operation."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from layout.drawing.correction import TRUE, Scale

OPERATIONS = ("engrave", "score", "cut", "reference")
"""What is done with a line or area, in the order of work; nothing runs what is there for reference."""


@dataclass(frozen=True, slots=True)
class Operation:
    """How a shop's files show one operation: an RGB colour such as "#0055aa" and a line width in mm."""

    colour: str
    width: float


@dataclass(frozen=True, slots=True)
class Stock:
    """A sheet of material, mm throughout.

    `kerf_x` is the full width of the cut along x (of a cut that runs up the sheet), `kerf_y` along y (of one that runs
    across it); `kerf_uncertainty` is by how much they may be off. With `kerf_drawn` the outlines are drawn so that the
    parts come out right, otherwise the cutter's own compensation is relied on. `grain` is the axis that the face grain
    runs along; `bending` the bending strength along it in N/mm2. `ease` is added to a yarn's thickness where a slot
    holds it. `too_fine` says what is made where a pitch is too fine for a comb. Speeds are mm/s by operation, prices
    are by "sheet" and "minute"; what is not known is left out of both.
    `trial_kerf` is the kerf that the trial cut was drawn for, `trial_slot` what is engraved at the slot that was chosen
    on it; both None before it was measured.
    `scale` is what the cutter makes of one millimetre, apart from the kerf; `scale_uncertainty` is by how much each of
    its shares may be off, None where that is not known. What the cutter gets is drawn against that scale.
    """

    name: str
    material: str
    thickness: float
    width: float
    height: float
    grain: Literal["x", "y", "none"]
    kerf_x: float
    kerf_y: float
    kerf_drawn: bool
    ease: float
    operations: Mapping[str, Operation]
    speeds: Mapping[str, float]
    prices: Mapping[str, float]
    kerf_uncertainty: float | None = None
    bending: float | None = None
    too_fine: Literal["say so", "every second end", "printed guide"] = "say so"
    trial_kerf: float | None = None
    trial_slot: float | None = None
    scale: Scale = TRUE
    scale_uncertainty: float | None = None

    @property
    def trial_drawn_for(self) -> float:
        """The kerf that a trial cut of this stock is drawn for, along x."""
        return self.kerf_x if self.trial_kerf is None else self.trial_kerf
