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
from layout.drawing.sheet import Care, OnScreen
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import CutNeed, CutNote
from layout.plan import Plan
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Origin
from layout.yarns.loosest import loosest

LONGEST = 12.0
"""No tooth is longer: no thread at a frame needs more."""

_WRAP = 'wrap = {turns = 11, window = "2 cm"}'
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
    why: Message

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


def slot_for(plan: Plan, stock: Stock) -> tuple[float, Message]:
    """How wide a slot has to be for the warp, in mm, and why: its thickness and the stock's ease, else half the pitch.

    That is the thickness that was wrapped; if only weight and fibre are known, the most that they leave open, since a
    thread that lies slack is thicker than pressed in cloth. Of two threads in an end one lies upon the other.
    """
    known, ease = plan.kit.amounts.warp, say_number(stock.ease)
    if known.soft is not None:
        values = {"thick": say_fixed(known.soft.mm, 2), "kind": known.soft.kind, "ease": ease}
        return known.soft.mm + stock.ease, Message(CutNote.SLOTS_WRAPPED, values)
    if known.compressed is not None:
        most = loosest(known.compressed).mm
        return most + stock.ease, Message(CutNote.SLOTS_WEIGHED, {"thick": say_fixed(most, 2), "ease": ease})
    return float(plan.warp.pitch) / 2 + stock.ease, Message(CutNote.SLOTS_PITCH, {"ease": ease})


def asks_for_a_wrap(plan: Plan) -> list[str]:
    """What a person should measure before cutting, where the warp's thickness is known by its weight alone."""
    known = plan.kit.amounts.warp
    if known.soft is not None or known.compressed is None:
        return []
    return [Care(plan.words.say(CutNote.WRAP_FIRST, line=_WRAP))]


def said_too_narrow(teeth: Teeth, pitch: float) -> Message:
    """What came of a pitch that is too fine for teeth."""
    role, wide = (CutNeed.GOT_TEETH, teeth.tooth) if teeth.tooth > 0 else (CutNeed.GOT_SLOTS, teeth.slot)
    return Message(role, {"wide": say_fixed(wide, 2), "pitch": say_fixed(pitch, 2)})


def teeth_at(centres: Sequence[float], pitch: float, slot: float, why: Message, stock: Stock, limit: float) -> Teeth:
    """The teeth between slots at `centres`, `pitch` apart; the outer ones reach past `limit` to both sides.

    Raises FieldError where the kerf is no narrower than a slot.
    """
    if max(stock.kerf_x, stock.kerf_y) >= slot:
        raise too_wide(Kerf(stock.kerf_x, stock.kerf_y), CutNeed.KERF_SLOT, slot, say_fixed(slot, 2))
    tooth = pitch - slot
    length = min(LONGEST, SLENDER * tooth)
    past = limit + _PAST - min(-centres[0], centres[-1]) - slot / 2
    return Teeth(tuple(centres), slot, tooth, length, max(_END, stock.thickness, past), why)


def strong_enough(teeth: Teeth) -> bool:
    """Whether the teeth may be cut at all."""
    return teeth.tooth >= LEAST


def said_of(teeth: Teeth, stock: Stock, words: Catalogue, second: str = "") -> list[str]:
    """Sentences on the slots; and where teeth are narrow, that they break, and for the screen how easily.

    `second` is how wide the teeth of a comb for every second end are in mm, where there can be one instead.
    """
    slots = {**teeth.why.values, "count": len(teeth.centres), "slot": say_fixed(teeth.slot, 2)}
    notes = [words.say(teeth.why.role, **slots)]
    if narrow(teeth.tooth, stock):
        values: dict[str, object] = {"tooth": say_fixed(teeth.tooth, 2), "thick": say_number(stock.thickness)}
        values["thin"] = say_number(floor(teeth.tooth * 10) / 10)
        role = CutNote.NARROW_TEETH
        if second:
            role, values = CutNote.NARROW_TEETH_SECOND, {**values, "second": second}
        notes.append(OnScreen(words.paragraph((words.say(role, **values), _holds(teeth, stock, words)))))
        notes.append(words.say(CutNote.BREAKS))
    return notes


def _holds(teeth: Teeth, stock: Stock, words: Catalogue) -> str:
    holds = tooth_holds(teeth.tooth, teeth.length, stock)
    newtons = say_number(holds.value, 0)
    if holds.origin is Origin.ASSUMED:
        return words.say(CutNote.TOOTH_HOLDS_ASSUMED, newtons=newtons, assumed=holds.assumptions[0])
    return words.say(CutNote.TOOTH_HOLDS, newtons=newtons)
