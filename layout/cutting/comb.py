"""The comb: a slot for every end (or every second one) at its wanted place, to space a warp once it is wound."""

from __future__ import annotations

from layout.cutting.blank import SMALL_PART, cut_part
from layout.cutting.comb_body import comb_blank, marks
from layout.cutting.stock import Stock
from layout.cutting.strength import LEAST
from layout.cutting.teeth import Teeth, said_of, slot_for, strong_enough, teeth_at
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.errors import FieldError
from layout.plan import Plan

EVERY, SECOND = 1, 2
"""A slot for every end, or for every second one."""


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
    wider = "" if step == SECOND else f"a comb for every second end (teeth of {_tooth(plan, stock, SECOND):.1f} mm)"
    notes = (_use(plan, step), *said_of(teeth, stock, wider), SMALL_PART)
    blank = comb_blank("comb", "Comb", teeth, marks(0.0, units, (-limit, limit)), words, notes, stock, metrics)
    return cut_part(blank, stock)


def step_of(plan: Plan, stock: Stock) -> int:
    """EVERY, or SECOND where the pitch is too fine and the stock asks for that; FieldError, with what works, if not."""
    if strong_enough(teeth_of(plan, stock, EVERY)):
        return EVERY
    second = strong_enough(teeth_of(plan, stock, SECOND))
    if second and stock.too_fine == "every second end":
        return SECOND
    needed = f"a pitch that leaves the teeth of a comb at least {LEAST:g} mm"
    got = f"teeth of {_tooth(plan, stock, EVERY):.2f} mm at a pitch of {float(plan.warp.pitch):.2f} mm"
    works = "the printed spacing guide"
    if second and stock.too_fine == "say so":
        works = f'too_fine = "every second end" (teeth of {_tooth(plan, stock, SECOND):.1f} mm), or {works}'
    raise FieldError("cutting.too_fine", needed, got, works)


def teeth_of(plan: Plan, stock: Stock, step: int) -> Teeth:
    """The teeth with slots at (k + 1/2) p - W/2, k = 0, step, 2 step ..., from the centre as one datum."""
    slot, why = slot_for(plan, stock)
    centres = [float(x) for x in plan.warp.end_positions[::step]]
    return teeth_at(centres, step * float(plan.warp.pitch), slot, why, stock, float(plan.warp.width / 2))


def _tooth(plan: Plan, stock: Stock, step: int) -> float:
    return teeth_of(plan, stock, step).tooth


def _use(plan: Plan, step: int) -> str:
    lay = "Long scored lines are the limits of the weaving, shorter ones the marking units, the shortest its centre."
    if step == EVERY:
        return f"Lay it on the warp, teeth between the ends, and slide every end into its slot. {lay}"
    other = "turn it over, left for right" if plan.warp.ends % 2 == 0 else "move it on by one pitch"
    return f"It spaces every second end; for the ends between, {other}. {lay}"
