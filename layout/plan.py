"""The one way from a kit to its numbers: all that is drawn or said later comes from the plan."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from layout.drawing.printer import Printer
from layout.estimate.estimate import estimate, facts_of
from layout.frames.load import Load, load_on
from layout.frames.tension import WarpThread
from layout.frames.travel import travel_notes, travel_warnings
from layout.kit.ends import counted_by
from layout.kit.kit import Kit
from layout.kit.questions import questions
from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH
from layout.messages.roles import Count, SettUnit
from layout.messages.roles.order import OrderWord
from layout.sett.marking_units import NAILS, PEGS, SINGLY, WINDS
from layout.sett.sett import take_sett
from layout.values.units import say_length, say_number
from layout.warps.warp import Warp
from layout.warps.warping import warp_on
from layout.yardage.amounts import Amounts
from layout.yarns.yarn import Yarn

_INCH = Fraction(127, 5)
_FINE = 10**6  # so that a thread of 0.8 mm, a float, is 4/5 mm

_SETT = {
    (False, WINDS): Count.SETT_CM_WINDS,
    (False, PEGS): Count.SETT_CM_PEGS,
    (False, NAILS): Count.SETT_CM_NAILS,
    (False, SINGLY): Count.SETT_CM_ENDS,
    (True, WINDS): Count.SETT_INCH_WINDS,
    (True, PEGS): Count.SETT_INCH_PEGS,
    (True, NAILS): Count.SETT_INCH_NAILS,
    (True, SINGLY): Count.SETT_INCH_ENDS,
}
"""By whether the marking unit is in inches, and what is counted off in it."""


@dataclass(frozen=True, slots=True)
class Plan:
    """A kit with its warp, and what a person should know about it: `notes` explain, `warnings` ask for care.

    `words` is the language of its sheets. It follows from the kit, so that two plans are the same without it.
    `refused` names what its box would hold and the stock does not allow to be cut. Printed sheets are corrected for a
    `printer`; where there is none, they are drawn as they are.
    """

    kit: Kit
    warp: Warp
    notes: tuple[str, ...]
    warnings: tuple[str, ...]
    amounts: Amounts
    words: Catalogue = field(default=ENGLISH, compare=False, repr=False)
    refused: frozenset[str] = frozenset()
    printer: Printer | None = None

    @property
    def ordered(self) -> str:
        """The order that it is made for, as parts say it; empty where there is none."""
        number = self.kit.order.number
        return self.words.say(OrderWord.NUMBER, number=number) if number else ""

    @property
    def named(self) -> str:
        """The kit by its name, with its order where it has one, as the head of a sheet says it."""
        kit, number = self.kit.name, self.kit.order.number
        return self.words.say(OrderWord.KIT, number=number, kit=kit) if number else kit

    @property
    def warp_thread(self) -> WarpThread | None:
        """One thread of the warp, if the kit says how heavy it is."""
        return _thread(self.kit, self.kit.amounts.warp.yarn())

    @property
    def load(self) -> Load:
        """The pull of the warp on a frame end, and how far the end gives way."""
        return _load(self.kit, self.warp, self.warp_thread)

    @property
    def sett_words(self) -> str:
        """The sett and the winds (pegs, nails, ends) to a marking unit, as sheets and strips say it."""
        sett = self.warp.sett
        values = {"sett": self.sett_brief, "count": say_number(sett.per_unit), "unit": say_length(sett.unit)}
        return self.words.say(_SETT[sett.unit.imperial, sett.by], **values)

    @property
    def sett_brief(self) -> str:
        """The sett alone, in the unit that the kit counts in."""
        sett = self.warp.sett
        per, role = (_INCH, SettUnit.PER_INCH) if sett.unit.imperial else (Fraction(10), SettUnit.PER_CM)
        return self.words.say(role, number=say_number(sett.per_mm * per))

    @property
    def count_words(self) -> str:
        """How many winds and ends there are, and what is doubled, as sheets say it."""
        return self.words.listed((self.counted, *self.doubled))

    @property
    def counted(self) -> str:
        """How many winds and ends there are."""
        warp = self.warp
        if not warp.winds:
            return self.words.say(Count.ENDS, ends=warp.ends)
        role = Count.WINDS_AND_A_PASS if warp.ends % 2 else Count.WINDS
        return self.words.say(role, winds=warp.winds, ends=warp.ends)

    @property
    def doubled(self) -> tuple[str, ...]:
        """Which ends are of more than one thread, as sheets and strips say it; nothing where none is."""
        weaving = self.kit.weaving
        words = [self.words.say(Count.DOUBLED)] if weaving.doubled_warp else []
        if outer := weaving.doubled_selvedges:
            words.append(self.words.say(Count.DOUBLED_OUTER, outer=outer))
        return tuple(words)


def plan(kit: Kit, words: Catalogue = ENGLISH) -> Plan:
    """Sett, winds, marks and amounts of `kit`, to be drawn with `words`.

    Raises FieldError, with the key to change, where the kit cannot be woven.
    """
    ends = kit.frame.ends
    sett = take_sett(kit.sett, counted_by(ends.name, kit.weaving.near_hold), ends.notches)
    known = facts_of(kit)
    thread = Fraction(known.lying.value).limit_denominator(_FINE) if known.lying else None
    warp = warp_on(sett, kit.frame, kit.weaving, thread)
    pulling = _thread(kit, known.warp)
    load = _load(kit, warp, pulling)
    amounts = estimate(kit, warp, known)
    pulled = ends.pulled_by(load.thread.high)
    tightening = (kit.frame, load.thread, pulling)
    notes = sett.notes + warp.notes + load.notes + travel_notes(*tightening) + amounts.notes
    warnings = questions(kit) + sett.warnings + warp.warnings + load.warnings + pulled
    warnings += travel_warnings(*tightening) + amounts.warnings
    return Plan(kit, warp, notes, warnings, amounts, words)


def _load(kit: Kit, warp: Warp, thread: WarpThread | None) -> Load:
    return load_on(kit.frame, kit.strength, thread, warp.pulling, warp.width)


def _thread(kit: Kit, yarn: Yarn | None) -> WarpThread | None:
    return WarpThread(yarn.tex, kit.amounts.warp.fibre) if yarn else None
