"""Strips of frame ends that a warp is wound round: round bars, and flat ends."""

from __future__ import annotations

from math import pi

from layout.drawing.pens import Pen
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.messages.english import ENGLISH
from layout.messages.roles import Strip
from layout.parts.strips.bands import AIR, EDGE_CLEAR, MARK_UP, NUMBERS, WORDS_FROM, Bands
from layout.parts.strips.strip_kind import StripKind
from layout.plan import Plan
from layout.warps.warp import End

_MARK_DOWN = 1.0
_GLUE, _GLUE_TOP = 6.0, 1.6
_FLAP = 8.0


class _Wound(StripKind[Ends]):
    along: Strip
    wrapped: Strip

    def way(self, plan: Plan) -> Strip:
        return Strip.WAY_BACK_FIRST if plan.kit.weaving.first_pass == "back" else Strip.WAY_FACE_FIRST

    def way_at(self, plan: Plan, end: End) -> Strip:
        if plan.warp.winding == "round":
            return self.way(plan)
        if plan.warp.winding == "loose rod":
            return Strip.WAY_ROD
        odd = plan.warp.passes[0].layer_at(end) == "face"
        return Strip.WAY_CROSSED_ODD if odd else Strip.WAY_CROSSED_EVEN

    def use(self, ends: Ends, plan: Plan, *, low: bool, flush: bool) -> list[str]:
        """Along the end or round it."""
        way = {"round": [], "figure eight": [Strip.CROSS], "loose rod": [Strip.FROM_ROD]}[plan.warp.winding]
        return [ENGLISH.say(role) for role in (self.along if low else self.wrapped, *way)]


class RoundBarStrip(_Wound[RoundBar]):
    """A strip that is wrapped half round a bar."""

    along, wrapped = Strip.ALONG_BAR, Strip.WRAP_BAR

    def full(self, ends: RoundBar, row: float) -> Bands | None:
        """From face to back, with a gluing edge."""
        return _round_bar(ends, row)

    def tallest(self, ends: RoundBar) -> float:
        """It must not close over itself."""
        return pi * float(ends.diameter.mm) - 1


class FlatEndStrip(_Wound[FlatEnd]):
    """A strip that is folded over the edge of a board."""

    along, wrapped = Strip.ALONG_EDGE, Strip.WRAP_EDGE

    def full(self, ends: FlatEnd, row: float) -> Bands | None:
        """Over the edge."""
        return _over_edge(ends, row)


def _round_bar(bar: RoundBar, row: float) -> Bands | None:
    """From face (quarter turn up) over the outermost line to the back (quarter turn down), and a gluing edge."""
    quarter = bar.half_turn_mm / 2
    top = MARK_UP + NUMBERS
    if quarter < top + 0.2:
        return None
    words = top - WORDS_FROM
    roomy = quarter >= words + row + EDGE_CLEAR
    low = -quarter if roomy else -_MARK_DOWN
    room = (words, quarter - EDGE_CLEAR) if roomy else (-quarter + 0.4, -_MARK_DOWN - 0.8)
    if roomy:
        deep = room[1] - room[0]
        row = min(row + AIR, deep / int(deep / row))
    lines = tuple((v, Pen.REGISTER) for v in (quarter, 0.0, -quarter))
    below = -quarter - _GLUE_TOP
    return Bands((low, MARK_UP), (MARK_UP, top), lines, quarter, -quarter - _GLUE, room, row, below, -quarter)


def _over_edge(end: FlatEnd, row: float) -> Bands:
    """A flap on the face, the edge between two folds, and a gluing flap on the back."""
    fold = end.half_turn_mm / 2
    top = fold + MARK_UP + NUMBERS
    lines = ((fold, Pen.FOLD), (0.0, Pen.REGISTER), (-fold, Pen.FOLD))
    marks, numbers = (-fold, fold + MARK_UP), (fold + MARK_UP, top)
    words = top - WORDS_FROM
    return Bands(marks, numbers, lines, fold + _FLAP, -fold - _FLAP, (words, words), row + AIR, glue=-fold)
