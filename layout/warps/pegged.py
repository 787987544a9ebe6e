"""A warp between pegs that stand on the face: every peg turns two ends.

The near pegs stand at -W/2 + j P and the far pegs at -W/2 + (j + 1/2) P, with P twice the pitch, so that between them
the ends are wanted where they lie; the first peg, and the last, hold one end. Every second peg stands in the outer row
of its frame end. A pass touches its pegs on the sides that face each other: with D the thickness of peg and thread
together it lies D / 2 inside their centres, so that an end is (p - D) / 2 off its place at the pegs.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction
from math import floor

from layout.frames.frame import Frame
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.kit import Weaving
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Room, Spacing, WarpNeed
from layout.sett.sett import SettTaken
from layout.values.errors import FieldError
from layout.values.limits import plain
from layout.values.quantity import Quantity
from layout.values.units import Length, exact_length, in_unit, say_length
from layout.warps.layout_result import LEAST_WOOD, LayoutResult, looser
from layout.warps.serpentine import BetweenPegs, courses_between, laid_between
from layout.warps.warp import Warp
from layout.warps.way import Course, Way
from layout.yardage.thread import peg_warnings

_THINNEST = Fraction(1)  # mm: thinner pegs are refused
_PERIOD = 4  # after so many passes staggered pegs stand as they stood before


class PeggedEnds(Way[PeggedEnd]):
    """There and back between pegs."""

    spacing = (Spacing.PEGS, Spacing.PEGS_ARE)

    def lay(
        self, count: int, sett: SettTaken, ends: PeggedEnd, weaving: Weaving, thread: Fraction | None
    ) -> LayoutResult:
        """Pegs and passes."""
        return pegged(count, 1 / sett.per_mm, ends, thread or Fraction(0))

    def thread(self, ends: PeggedEnd, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Between pegs, round half a peg at every turn."""
        rows = frame.outer_height.mm - 2 * (ends.edge_distance.mm + ends.row_distance.mm)
        across = float(ends.peg_diameter.mm) + thread.value
        between = BetweenPegs(warp, rows, ends.peg_diameter.mm, ends.row_distance.mm)
        if across > between.widest:
            raise _too_thick(warp, across, thread)
        return between.two_ends(_PERIOD, ENGLISH.say(Reason.ROUND_PEGS), thread), between.whole(thread)

    def courses(self, ends: PeggedEnd, frame: Frame, warp: Warp) -> Iterator[Course]:
        """Of the first passes; after four of them the staggered pegs stand as they stood before."""
        across = float(ends.peg_diameter.mm + (warp.thickness or 0))
        return courses_between(frame, warp, across, lambda number: peg_depth(ends, number), _PERIOD)


def _too_thick(warp: Warp, across: float, thread: Quantity) -> FieldError:
    """The refusal of pegs and thread that do not fit between each other."""
    room = float(2 * warp.pitch) - thread.value
    thinner = f'peg_diameter = "{plain(floor(room * 100) / 100)} mm"'
    instead = thinner if room >= 1 else looser(Fraction(math.ceil(across * 100), 200))
    got, most = in_unit(plain(round(across, 3)), "mm"), plain(2 * warp.pitch)
    return FieldError("frame.peg_diameter", Room.PEGS, got, instead, most=most)


def pegged(ends: int, pitch: Fraction, frame_end: PeggedEnd, thread: Fraction = Fraction(0)) -> LayoutResult:
    """Pegs and passes of `ends` ends at `pitch` mm, as wound from left to right; `thread` mm thick.

    Raises FieldError where the pegs of a row would touch.
    """
    _check(pitch, frame_end)
    peg = frame_end.peg_diameter.mm
    return laid_between(ends, pitch, (peg + thread) / 2)._replace(warnings=peg_warnings(peg, thread, pitch))


def peg_depth(frame_end: PeggedEnd, number: int) -> Fraction:
    """How far in mm within the outer edge the centre of the peg with this number stands."""
    return frame_end.edge_distance.mm + (0 if in_outer_row(number) else frame_end.row_distance.mm)


def in_outer_row(number: int) -> bool:
    """Whether the peg with this number (0 the first in the order of winding) stands in the outer row."""
    return number % 2 == 1


def _check(pitch: Fraction, frame_end: PeggedEnd) -> None:
    """FieldError where pegs are too thick to stand beside each other with some wood between their holes."""
    most = 2 * pitch - LEAST_WOOD
    if frame_end.peg_diameter.mm > most:
        got, apart = say_length(frame_end.peg_diameter), say_length(Length(2 * pitch))
        if most < _THINNEST:
            instead = looser((frame_end.peg_diameter.mm + LEAST_WOOD) / 2)
            raise FieldError("frame.peg_diameter", WarpNeed.PEGS_APART, got, instead, apart=apart)
        thinner = f'peg_diameter = "{exact_length(Length(max(pitch / 2, _THINNEST)))}"'
        values = {"most": say_length(Length(most)), "apart": apart}
        raise FieldError("frame.peg_diameter", WarpNeed.PEGS_THICK, got, thinner, **values)
