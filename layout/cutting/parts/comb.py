"""The comb: a slot for every end (or every second one) at its wanted place, to space a warp once it is wound."""

from __future__ import annotations

from collections.abc import Mapping

from layout.cutting.parts.blank import cut_part, small_part
from layout.cutting.parts.comb_body import comb_blank, marks
from layout.cutting.parts.teeth import (
    Teeth,
    asks_for_a_wrap,
    said_of,
    said_too_narrow,
    slot_for,
    strong_enough,
    teeth_at,
)
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import LEAST
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.kit.inputs import AS_THE_STOCK_SAYS
from layout.messages.catalogue import Message, Role
from layout.messages.roles import CutNeed, CutNote, CutWord
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_fixed, say_number

EVERY, SECOND = 1, 2
"""A slot for every end, or for every second one."""

_SECOND, _GUIDE = 'comb = "every second end"', Message(CutNeed.PRINTED_GUIDE)


def comb(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The comb of a plan, teeth along the face grain.

    Raises FieldError where the pitch is too fine for the stock, the kerf for a slot, or the sheet is too small.
    """
    step = step_of(plan, stock)
    teeth = teeth_of(plan, stock, step)
    warp = plan.warp
    limit = float(warp.width / 2)
    units = [float(x) for x, _ in warp.unit_lines("near")]
    words = [
        plan.kit.name,
        plan.words.say(CutWord.COMB_EVERY if step == EVERY else CutWord.COMB_SECOND, sett=plan.sett_words),
    ]
    second = "" if step == SECOND else _second(plan, stock)
    notes = (
        _use(plan, step),
        *said_of(teeth, stock, plan.words, second),
        *asks_for_a_wrap(plan),
        small_part(plan.words),
    )
    blank = comb_blank(
        "comb", plan.words.say(CutWord.COMB), teeth, marks(0.0, units, (-limit, limit)), words, notes, stock, metrics
    )
    return cut_part(blank, stock, plan.words)


def step_of(plan: Plan, stock: Stock) -> int:
    """EVERY or SECOND, as the kit says; else SECOND where the pitch is too fine and the stock asks for that.

    FieldError, with what works, where the teeth would not hold.
    """
    asked = plan.kit.comb
    every, second = (strong_enough(teeth_of(plan, stock, step)) for step in (EVERY, SECOND))
    if asked == "every second end":
        if second:
            return SECOND
        raise _too_fine(plan, stock, SECOND, _GUIDE)
    if every:
        return EVERY
    if second and asked == AS_THE_STOCK_SAYS and stock.too_fine == "every second end":
        return SECOND
    if second and (asked == "every end" or stock.too_fine == "say so"):
        raise _too_fine(plan, stock, EVERY, _SECOND, _second(plan, stock))
    raise _too_fine(plan, stock, EVERY, _GUIDE)


_TOO_FINE: Mapping[tuple[bool, bool], Role] = {
    (False, False): CutNeed.TEETH,
    (True, False): CutNeed.TEETH_LOOSEST,
    (False, True): CutNeed.TEETH_SECOND,
    (True, True): CutNeed.TEETH_LOOSEST_SECOND,
}
"""By whether the warp is known by its weight alone, and whether a comb for every second end would do."""


def _too_fine(plan: Plan, stock: Stock, step: int, works: Message | str, second: str = "") -> FieldError:
    got = said_too_narrow(teeth_of(plan, stock, step), step * float(plan.warp.pitch))
    role, values = _TOO_FINE[bool(asks_for_a_wrap(plan)), bool(second)], {"second": second} if second else {}
    return FieldError("cut.comb", role, got, works, least=say_number(LEAST), **values)


def teeth_of(plan: Plan, stock: Stock, step: int) -> Teeth:
    """The teeth with slots at (k + 1/2) p - W/2, k = 0, step, 2 step ..., from the centre as one datum."""
    slot, why = slot_for(plan, stock)
    centres = [float(x) for x in plan.warp.end_positions[::step]]
    return teeth_at(centres, step * float(plan.warp.pitch), slot, why, stock, float(plan.warp.width / 2))


def _second(plan: Plan, stock: Stock) -> str:
    """How wide the teeth of a comb for every second end are, in mm."""
    return say_fixed(teeth_of(plan, stock, SECOND).tooth, 1)


def _use(plan: Plan, step: int) -> str:
    if step == EVERY:
        return plan.words.say(CutNote.USE_COMB)
    return plan.words.say(CutNote.USE_COMB_MOVED if plan.warp.ends % 2 else CutNote.USE_COMB_TURNED)
