"""Marks and passes of a warp that starts on the left: every x as wound from left to right."""

from __future__ import annotations

from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.messages.catalogue import Message
from layout.messages.roles import WarpNeed
from layout.values.units import Sett, exact_sett
from layout.warps.warp import Pass

LEAST_WOOD = Fraction(1)
"""So much wood in mm must stay between two holes, and between two notches that are still to be made."""


class LayoutResult(NamedTuple):
    """Marks of both frame ends and passes in the order of winding, the distance from mark to mark, and sentences."""

    near: tuple[Fraction, ...]
    far: tuple[Fraction, ...]
    passes: tuple[Pass, ...]
    spacing: Fraction
    notes: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()

    def mirrored(self) -> LayoutResult:
        """The same, begun on the right."""
        near, far = (tuple(-x for x in marks) for marks in (self.near, self.far))
        passes = tuple(each._replace(near=-each.near, far=-each.far) for each in self.passes)
        return self._replace(near=near, far=far, passes=passes)


def looser(least_mm: Fraction) -> Message:
    """The line, and its table, of a sett in whole ends per cm or per 10 cm at which ends lie so far apart or more."""
    over, unit = (10, "cm") if least_mm <= 10 else (100, "10 cm")
    return Message(WarpNeed.SETT_LINE, {"sett": exact_sett(Sett(Fraction(floor(over / least_mm), over), unit))})
