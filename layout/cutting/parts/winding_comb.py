"""Winding combs: held along the frame ends while the warp is wound, with one tooth a wind to keep the winds apart."""

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
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.warps.warp import End


def winding_comb(plan: Plan, end: End, stock: Stock, metrics: FontMetrics) -> Part:
    """The winding comb of one frame end of a wound frame, teeth along the face grain.

    Raises FieldError where the winding pitch is too fine for the stock, the kerf for a slot, or the sheet too small.
    """
    warp = plan.warp
    teeth = winds_of(plan, end, stock)
    if not strong_enough(teeth):
        needed = f"a winding pitch that leaves the teeth of a winding comb at least {LEAST:g} mm"
        got = said_too_narrow(teeth, float(warp.spacing))
        raise FieldError("cutting.too_fine", needed, got, "the marking strips, which carry any pitch")
    limit = float(warp.width / 2)
    units = [float(x) for x, _ in warp.unit_lines(end)]
    words = [plan.kit.name, f"winding comb, {end} end \N{MIDDLE DOT} {plan.sett_words}"]
    notes = (_use(plan, end), *said_of(teeth, stock), *asks_for_a_wrap(plan), SMALL_PART)
    scored = marks(0.0, units, (-limit, limit))
    blank = comb_blank(f"winding-comb-{end}", f"Winding comb, {end} end", teeth, scored, words, notes, stock, metrics)
    return cut_part(blank, stock)


def winds_of(plan: Plan, end: End, stock: Stock) -> Teeth:
    """The teeth between the winds' marks of a frame end."""
    warp = plan.warp
    contacts = sorted(float(x) for x in warp.marks(end))
    slot, why = slot_for(plan, stock)
    return teeth_at(contacts, float(warp.spacing), slot, why, stock, float(warp.width / 2))


def _use(plan: Plan, end: End) -> str:
    where = "bottom" if (end == "near") == (plan.kit.weaving.near_end == "bottom") else "top"
    ends = " (the outer slots hold the tie-on and the tie-off)" if end == "near" else ""
    return (
        f"Fasten it to the face of the frame's {where} as it stands before you, teeth up and words to you; every wind "
        f"lies in the next slot{ends}. Long scored lines are the limits of the weaving, shorter ones the marking units."
    )
