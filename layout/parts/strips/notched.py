"""Strips of notched ends: the template by which they are sawn, or what shows which notches of a bar to use."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, line
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.messages.english import ENGLISH
from layout.messages.roles import Strip
from layout.parts.strips.bands import AIR, MARK_UP, NUMBERS, TEN_ROOM, WORDS_FROM, Bands, on_the_line
from layout.parts.strips.strip_kind import MARKING, StripKind
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End

_EMPTY_TO = 1.0  # how far the tick of a notch that stays empty reaches
_NOTCHING: Mapping[End, Strip] = {"near": Strip.NOTCHING_NEAR, "far": Strip.NOTCHING_FAR}
_IN_NOTCHES = {
    Fraction(1, 2): (Strip.WAY_EVERY_SECOND, Strip.HELD_EVERY_SECOND),
    Fraction(1): (Strip.WAY_EVERY, Strip.HELD_EVERY),
    Fraction(2): (Strip.WAY_TWO, Strip.HELD_TWO),
}
"""By how many ends lie in a notch that is there already: the way of the thread, and how the strip is used."""


class NotchedStrip(StripKind[NotchedEnd]):
    """A strip for a board with notches."""

    def low(self, ends: NotchedEnd, row: float) -> Bands:
        """On the face alone."""
        return _notched(ends, row, 0.0) if ends.density is None else on_the_line()

    def full(self, ends: NotchedEnd, row: float) -> Bands:
        """Folded over the edge; on a bar that is there a line is enough."""
        return _notched(ends, row, float(ends.thickness.mm)) if ends.density is None else on_the_line()

    def titles(self, ends: NotchedEnd) -> Mapping[End, Strip]:
        """A template where the notches are still to be made."""
        return _NOTCHING if ends.density is None else MARKING

    def way(self, plan: Plan) -> Strip:
        """Round a tooth at every turn."""
        use = plan.warp.sett.to_a_notch
        return _IN_NOTCHES[use][0] if use else Strip.WAY_TEETH

    def use(self, ends: NotchedEnd, plan: Plan, *, low: bool, flush: bool) -> list[str]:
        """How to saw, or which notches to take."""
        return _notching(ends, low=low) if ends.density is None else _choosing(plan)

    def beside(self, ends: NotchedEnd) -> float:
        """Half a notch."""
        return float(ends.notch_width.mm) / 2 if ends.density is None else 0.0

    def outlines(self, ends: NotchedEnd, plan: Plan, end: End, up: int) -> list[Curve]:
        """All notches; of a bar that is there, ticks at notches that stay empty."""
        marks = plan.warp.marks(end)
        if ends.density is None:
            return [_notch(float(x), float(ends.notch_width.mm) / 2, up * float(ends.notch_depth.mm)) for x in marks]
        if plan.warp.spacing == 1 / ends.density.per_mm:  # none is passed over
            return []
        between = [float((one + other) / 2) for one, other in pairwise(marks)]
        return [line(Point(x, 0.0), Point(x, up * _EMPTY_TO), Pen.HELP) for x in between]


def _notched(end: NotchedEnd, row: float, flap: float) -> Bands:
    """On the face from the outer edge past the ground of the notches, and a flap as thick as the board."""
    ground = float(end.notch_depth.mm)
    top = ground + MARK_UP + NUMBERS
    lines = ((0.0, Pen.FOLD),) if flap else ()
    low = -flap + TEN_ROOM if flap else TEN_ROOM
    words = top - WORDS_FROM
    room = (words, words)
    return Bands((low, ground + MARK_UP), (ground + MARK_UP, top), lines, top, -flap, room, row + AIR)


def _notch(x: float, half: float, ground: float) -> Curve:
    """Open at the outer edge: down one side, along the ground, and back up the other."""
    corners = (Point(x - half, 0.0), Point(x - half, ground), Point(x + half, ground), Point(x + half, 0.0))
    return Curve(corners[0], tuple(map(Step, corners[1:])), Pen.REGISTER)


def _notching(ends: NotchedEnd, *, low: bool) -> list[str]:
    width, depth = say_length(ends.notch_width), say_length(ends.notch_depth)
    size = ENGLISH.say(Strip.NOTCH_SIZE, width=width, depth=depth)
    return [ENGLISH.say(Strip.FLUSH if low else Strip.OVER_EDGE), size, ENGLISH.say(Strip.SAW)]


def _choosing(plan: Plan) -> list[str]:
    use = plan.warp.sett.to_a_notch or Fraction(1)
    empty = [Strip.EMPTY] if use < 1 else []
    return [ENGLISH.say(role) for role in (_IN_NOTCHES[use][1], *empty, Strip.DRIFT)]
