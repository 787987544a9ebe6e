"""Strips of frame ends with nails: the template through which every place of a nail is pricked."""

from __future__ import annotations

from collections.abc import Mapping

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, circle
from layout.frames.kinds.nails import NailEnd
from layout.messages.english import ENGLISH
from layout.messages.roles import Strip
from layout.parts.strips.bands import AIR, NUMBERS, TEN_ROOM, WORDS_FROM, Bands
from layout.parts.strips.strip_kind import StripKind
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End

_PAST_NAIL = 1.6  # a cross reaches so far past the nail it marks
_NAILING: Mapping[End, Strip] = {"near": Strip.NAILING_NEAR, "far": Strip.NAILING_FAR}


class NailedStrip(StripKind[NailEnd]):
    """A strip for a board with a row of nails."""

    def low(self, ends: NailEnd, row: float) -> Bands:
        """From beyond the row."""
        return _nailed(ends, row, from_edge=False)

    def full(self, ends: NailEnd, row: float) -> Bands:
        """From the outer edge of the board."""
        return _nailed(ends, row, from_edge=True)

    def titles(self, ends: NailEnd) -> Mapping[End, Strip]:
        """A template to nail by."""
        return _NAILING

    def way(self, plan: Plan) -> Strip:
        """Round a nail at every turn."""
        return Strip.WAY_NAILS

    def use(self, ends: NailEnd, plan: Plan, *, low: bool, flush: bool) -> list[str]:
        """How to lay it and to nail."""
        return _nailing(ends, flush=flush)

    def beside(self, ends: NailEnd) -> float:
        """Half a nail."""
        return float(ends.nail_diameter.mm) / 2

    def outlines(self, ends: NailEnd, plan: Plan, end: End, up: int) -> list[Curve]:
        """Every nail as it is seen from its head."""
        return _nails(ends, [float(x) for x in plan.warp.marks(end)], up)


def _nailed(ends: NailEnd, row: float, *, from_edge: bool) -> Bands:
    """On the face past the row, from the outer edge of the board or from beyond the row."""
    at, reach = float(ends.edge_distance.mm), float(ends.nail_diameter.mm) / 2 + _PAST_NAIL
    back = min(0.0, at - reach - TEN_ROOM) if from_edge else at - reach - 2 * TEN_ROOM
    marks, top = (at - reach, at + reach), at + reach + NUMBERS
    words = top - WORDS_FROM
    return Bands(marks, (marks[1], top), ((at, Pen.REGISTER),), top, back, (words, words), row + AIR, second=marks)


def _nails(ends: NailEnd, marks: list[float], up: int) -> list[Curve]:
    y, radius = up * float(ends.edge_distance.mm), float(ends.nail_diameter.mm) / 2
    return [circle(Point(x, y), radius, Pen.REGISTER) for x in marks]


def _nailing(ends: NailEnd, *, flush: bool) -> list[str]:
    lay = ENGLISH.say(Strip.FLUSH) if flush else ENGLISH.say(Strip.ROW_FROM_EDGE, row=say_length(ends.edge_distance))
    size = ENGLISH.say(Strip.NAIL_SIZE, nail=say_length(ends.nail_diameter))
    out = [] if ends.nail_length is None else [ENGLISH.say(Strip.NAIL_OUT, out=say_length(ends.nail_length))]
    return [lay, size, *out, ENGLISH.say(Strip.NAIL)]
