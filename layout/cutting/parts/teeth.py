"""A row of slots with teeth between them: how wide, how long, and whether they hold. Lengths in mm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import floor

from layout.cutting.parts.outline import Corner
from layout.cutting.stock.kerf import Kerf, too_wide
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import LEAST, SLENDER, narrow, tooth_holds
from layout.drawing.sheet import Care
from layout.plan import Plan
from layout.values.quantity import Origin
from layout.yarns.loosest import loosest

LONGEST = 12.0
"""No tooth is longer: no thread at a frame needs more."""

_ROUNDED = 0.9  # of a tooth's length: between the rounds of root and tip a straight wall is left
_END = 6.0  # the outer teeth are at least so wide
_PAST = 2.0  # and there is so much wood beyond a limit, whose mark must not fall off


@dataclass(frozen=True, slots=True)
class Teeth:
    """Slots `slot` wide at `centres` (from left to right) between teeth `tooth` wide and `length` long.

    The outer teeth are `end` wide. `why` says where the slot's width comes from.
    """

    centres: tuple[float, ...]
    slot: float
    tooth: float
    length: float
    end: float
    why: str

    @property
    def left(self) -> float:
        """Where the first outer tooth begins."""
        return self.centres[0] - self.slot / 2 - self.end

    @property
    def right(self) -> float:
        """Where the last outer tooth ends."""
        return self.centres[-1] + self.slot / 2 + self.end

    def corners(self) -> list[Corner]:
        """Its upper edge."""
        return toothed_edge(self.centres, self.slot, (self.left, self.right), self.length)


def toothed_edge(centres: Sequence[float], slot: float, sides: tuple[float, float], length: float) -> list[Corner]:
    """The edge from the upper right tip to the upper left one, between `sides`; slots and tips are rounded.

    The roots of the teeth lie at y = 0, their tips at y = `length`.
    """
    half = slot / 2
    walls = [sides[0], *(side for x in centres for side in (x - half, x + half)), sides[1]]
    root = min(half, _ROUNDED / 2 * length)
    found: list[Corner] = []
    for k, (left, right) in enumerate(pairwise(walls)):
        radius = root if k % 2 else min((right - left) / 2, length / 2, _ROUNDED * length - root)
        height = 0.0 if k % 2 else length
        found += [Corner(left, height, radius), Corner(right, height, radius)]
    return found[::-1]


def slot_for(plan: Plan, stock: Stock) -> tuple[float, str]:
    """How wide a slot has to be for the warp, in mm, and why: its thickness and the stock's ease, else half the pitch.

    That is the thickness that was wrapped; if only weight and fibre are told, the most that they leave open, since a
    thread that lies slack is thicker than pressed in cloth. Of two threads in an end one lies upon the other.
    """
    told, ease = plan.kit.amounts.warp, f"{stock.ease:g} mm of ease"
    if told.soft is not None:
        return told.soft.mm + stock.ease, f"the warp's {told.soft.mm:.2f} mm ({told.soft.kind}) and {ease}"
    if told.compressed is not None:
        most = loosest(told.compressed).mm
        return most + stock.ease, f"the most that the warp may measure by its weight, {most:.2f} mm, and {ease}"
    why = f"half the pitch and {ease}, since the kit does not say how thick the warp is"
    return float(plan.warp.pitch) / 2 + stock.ease, why


def asks_for_a_wrap(plan: Plan) -> list[str]:
    """What a person should measure before cutting, where the warp's thickness is known by its weight alone."""
    told = plan.kit.amounts.warp
    if told.soft is not None or told.compressed is None:
        return []
    said = "Take care: the slots fit the loosest cord of the warp's weight, and may be wider than your warp needs."
    wrap = 'Wrap it by hand and tell the kit, as wrap = {turns = 11, window = "2 cm"} under [warp], first.'
    return [Care(f"{said} {wrap}")]


def said_too_narrow(teeth: Teeth, pitch: float) -> str:
    """What came of a pitch that is too fine for teeth."""
    what = f"teeth of {teeth.tooth:.2f} mm" if teeth.tooth > 0 else f"slots of {teeth.slot:.2f} mm"
    return f"{what} at a pitch of {pitch:.2f} mm"


def teeth_at(centres: Sequence[float], pitch: float, slot: float, why: str, stock: Stock, limit: float) -> Teeth:
    """The teeth between slots at `centres`, `pitch` apart; the outer ones reach past `limit` to both sides.

    Raises FieldError where the kerf is no narrower than a slot.
    """
    if max(stock.kerf_x, stock.kerf_y) >= slot:
        raise too_wide(Kerf(stock.kerf_x, stock.kerf_y), f"a slot of the comb, {slot:.2f} mm", slot)
    tooth = pitch - slot
    length = min(LONGEST, SLENDER * tooth)
    past = limit + _PAST - min(-centres[0], centres[-1]) - slot / 2
    return Teeth(tuple(centres), slot, tooth, length, max(_END, stock.thickness, past), why)


def strong_enough(teeth: Teeth) -> bool:
    """Whether the teeth may be cut at all."""
    return teeth.tooth >= LEAST


def said_of(teeth: Teeth, stock: Stock, wider: str = "") -> list[str]:
    """Sentences on the slots, on what a tooth holds, and what would be stronger (`wider`) where they are narrow."""
    holds = tooth_holds(teeth.tooth, teeth.length, stock)
    basis = f"; assumed: {holds.assumptions[0]}" if holds.origin is Origin.ASSUMED else "."
    notes = [
        f"{len(teeth.centres)} slots {teeth.slot:.2f} mm wide: {teeth.why}.",
        f"Pushed sideways at its tip, a tooth breaks at about {holds.value:.0f} N, as a cantilever{basis}",
    ]
    if narrow(teeth.tooth, stock):
        better = [f"stock of at most {floor(teeth.tooth * 10) / 10:g} mm", *([wider] if wider else [])]
        said = (
            f"Take care: teeth {teeth.tooth:.2f} mm wide are narrower than the stock is thick ({stock.thickness:g} mm) "
            f"and break easily; {' or '.join(better)} is stronger."
        )
        notes.append(Care(said))
    return notes
