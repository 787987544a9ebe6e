"""Strips of pegged ends: the template by which the holes of both rows are drilled."""

from __future__ import annotations

from collections.abc import Mapping

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, circle
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.english import ENGLISH
from layout.messages.roles import Strip
from layout.parts.strips.bands import AIR, NUMBERS, TEN_ROOM, WORDS_FROM, Bands
from layout.parts.strips.strip_kind import StripKind
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.pegged import peg_depth
from layout.warps.warp import End

_PAST_HOLE = 1.6  # a cross reaches so far past the hole it marks
_DRILLING: Mapping[End, Strip] = {"near": Strip.DRILLING_NEAR, "far": Strip.DRILLING_FAR}


class PeggedStrip(StripKind[PeggedEnd]):
    """A strip for a board with pegs."""

    def low(self, ends: PeggedEnd, row: float) -> Bands:
        """From beyond the outer row."""
        return _pegged(ends, row, from_edge=False)

    def full(self, ends: PeggedEnd, row: float) -> Bands:
        """From the outer edge of the board."""
        return _pegged(ends, row, from_edge=True)

    def titles(self, ends: PeggedEnd) -> Mapping[End, Strip]:
        """A template to drill by."""
        return _DRILLING

    def way(self, plan: Plan) -> Strip:
        """Round a peg at every turn."""
        return Strip.WAY_PEGS

    def use(self, ends: PeggedEnd, plan: Plan, *, low: bool, flush: bool) -> list[str]:
        """How to lay it and to drill."""
        return _drilling(ends, flush=flush)

    def beside(self, ends: PeggedEnd) -> float:
        """Half a peg."""
        return float(ends.peg_diameter.mm) / 2

    def outlines(self, ends: PeggedEnd, plan: Plan, end: End, up: int) -> list[Curve]:
        """All holes."""
        return _holes(ends, [float(x) for x in plan.warp.marks(end)], up)


def _pegged(end: PeggedEnd, row: float, *, from_edge: bool) -> Bands:
    """On the face past both rows of pegs, from the outer edge of the board or from beyond the outer row."""
    outer, apart = float(end.edge_distance.mm), float(end.row_distance.mm)
    reach = float(end.peg_diameter.mm) / 2 + _PAST_HOLE
    inner = outer + apart
    back = min(0.0, outer - reach - TEN_ROOM) if from_edge else outer - reach - 2 * TEN_ROOM
    top = inner + reach + NUMBERS
    lines = tuple((v, Pen.REGISTER) for v in (inner, outer))
    words, marks = top - WORDS_FROM, (inner - reach, inner + reach)
    room, second = (words, words), (outer - reach, outer + reach)
    return Bands(marks, (marks[1], top), lines, top, back, room, row + AIR, second=second)


def _holes(ends: PeggedEnd, marks: list[float], up: int) -> list[Curve]:
    radius = float(ends.peg_diameter.mm) / 2
    return [
        circle(Point(x, up * float(peg_depth(ends, number))), radius, Pen.REGISTER) for number, x in enumerate(marks)
    ]


def _drilling(ends: PeggedEnd, *, flush: bool) -> list[str]:
    lay = ENGLISH.say(Strip.FLUSH) if flush else ENGLISH.say(Strip.FROM_EDGE, outer=say_length(ends.edge_distance))
    size = ENGLISH.say(Strip.PEG_SIZE, peg=say_length(ends.peg_diameter), apart=say_length(ends.row_distance))
    return [lay, size, ENGLISH.say(Strip.DRILL)]
