"""The comb: a slot for every end (or every second one) at its wanted place, to space a warp once it is wound."""

from __future__ import annotations

from layout.cutting.parts.blank import SMALL_PART, cut_part
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
from layout.plan import Plan
from layout.values.errors import FieldError

EVERY, SECOND = 1, 2
"""A slot for every end, or for every second one."""

_SECOND, _GUIDE = 'comb = "every second end"', "the printed spacing guide"


def comb(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The comb of a plan, teeth along the face grain.

    Raises FieldError where the pitch is too fine for the stock, the kerf for a slot, or the sheet is too small.
    """
    step = step_of(plan, stock)
    teeth = teeth_of(plan, stock, step)
    every = "every end" if step == EVERY else "every second end"
    warp = plan.warp
    limit = float(warp.width / 2)
    units = [float(x) for x, _ in warp.unit_lines("near")]
    words = [plan.kit.name, f"comb for {every} \N{MIDDLE DOT} {plan.sett_words}"]
    wider = (
        ""
        if step == SECOND
        else f"a comb for every second end ({_SECOND} under [cut], teeth of {_second(plan, stock)})"
    )
    notes = (_use(plan, step), *said_of(teeth, stock, wider), *asks_for_a_wrap(plan), SMALL_PART)
    blank = comb_blank("comb", "Comb", teeth, marks(0.0, units, (-limit, limit)), words, notes, stock, metrics)
    return cut_part(blank, stock)


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
        raise _too_fine(plan, stock, EVERY, _SECOND, f" ({_second(plan, stock)} for every second end)")
    raise _too_fine(plan, stock, EVERY, _GUIDE)


def _too_fine(plan: Plan, stock: Stock, step: int, works: str, more: str = "") -> FieldError:
    needed = f"a pitch that leaves the teeth of a comb at least {LEAST:g} mm"
    got = said_too_narrow(teeth_of(plan, stock, step), step * float(plan.warp.pitch))
    if asks_for_a_wrap(plan):
        got += ", for the loosest cord of the warp's weight (warp.wrap tells how thick it is)"
    return FieldError("cut.comb", needed, got + more, works)


def teeth_of(plan: Plan, stock: Stock, step: int) -> Teeth:
    """The teeth with slots at (k + 1/2) p - W/2, k = 0, step, 2 step ..., from the centre as one datum."""
    slot, why = slot_for(plan, stock)
    centres = [float(x) for x in plan.warp.end_positions[::step]]
    return teeth_at(centres, step * float(plan.warp.pitch), slot, why, stock, float(plan.warp.width / 2))


def _second(plan: Plan, stock: Stock) -> str:
    """How wide the teeth of a comb for every second end are."""
    return f"{teeth_of(plan, stock, SECOND).tooth:.1f} mm"


def _use(plan: Plan, step: int) -> str:
    lay = "Long scored lines are the limits of the weaving, shorter ones the marking units, the shortest its centre."
    if step == EVERY:
        return f"Lay it on the warp, teeth between the ends, and slide every end into its slot. {lay}"
    other = "turn it over, left for right" if plan.warp.ends % 2 == 0 else "move it on by one pitch"
    return f"It spaces every second end; for the ends between, {other}. {lay}"
