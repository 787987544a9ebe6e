"""Winding combs: held along the frame ends while the warp is wound, with one tooth a wind to keep the winds apart."""

from __future__ import annotations

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
from layout.messages.catalogue import Message
from layout.messages.roles import CutNeed, CutNote, CutWord
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number
from layout.warps.warp import End


def winding_comb(plan: Plan, end: End, stock: Stock, metrics: FontMetrics) -> Part:
    """The winding comb of one frame end of a wound frame, teeth along the face grain.

    Raises FieldError where the winding pitch is too fine for the stock, the kerf for a slot, or the sheet too small.
    """
    warp = plan.warp
    teeth = winds_of(plan, end, stock)
    if not strong_enough(teeth):
        got, instead = said_too_narrow(teeth, float(warp.spacing)), Message(CutNeed.MARKING_STRIPS)
        raise FieldError("cutting.too_fine", CutNeed.WINDING_TEETH, got, instead, least=say_number(LEAST))
    limit = float(warp.width / 2)
    units = [float(x) for x, _ in warp.unit_lines(end)]
    on_it = CutWord.ON_WINDING_COMB_NEAR if end == "near" else CutWord.ON_WINDING_COMB_FAR
    words = [plan.kit.name, plan.words.say(on_it, sett=plan.sett_words)]
    notes = (_use(plan, end), *said_of(teeth, stock, plan.words), *asks_for_a_wrap(plan), small_part(plan.words))
    scored = marks(0.0, units, (-limit, limit))
    title = plan.words.say(CutWord.WINDING_COMB_NEAR if end == "near" else CutWord.WINDING_COMB_FAR)
    blank = comb_blank(f"winding-comb-{end}", title, teeth, scored, words, notes, stock, metrics)
    return cut_part(blank, stock, plan.words)


def winds_of(plan: Plan, end: End, stock: Stock) -> Teeth:
    """The teeth between the winds' marks of a frame end."""
    warp = plan.warp
    contacts = sorted(float(x) for x in warp.marks(end))
    slot, why = slot_for(plan, stock)
    return teeth_at(contacts, float(warp.spacing), slot, why, stock, float(warp.width / 2))


def _use(plan: Plan, end: End) -> str:
    below = (end == "near") == (plan.kit.weaving.near_end == "bottom")
    if end == "near":
        return plan.words.say(CutNote.FASTEN_BOTTOM_TIED if below else CutNote.FASTEN_TOP_TIED)
    return plan.words.say(CutNote.FASTEN_BOTTOM if below else CutNote.FASTEN_TOP)
