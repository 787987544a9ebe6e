"""A warp from a loose rod: the thread goes once round both frame ends, round the rod behind them, and back.

Tied to the rod, it goes down round the near end, up the face, over the far end and down behind to the rod from above,
round the rod and back; so every pass lays one end on the face, at its place from frame end to frame end, and the same
end behind. It needs no even number and has no slant. The warp slides round both ends while it is woven; when the rod is
drawn, a loop is left at both edges.
"""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Any

from layout.frames.frame import Frame
from layout.frames.kinds.frame_end import FrameEnd
from layout.kit.kit import Weaving
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Spacing, WarpNote
from layout.sett.sett import SettTaken
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, combine, computed, measured
from layout.values.units import Length, say_length
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Pass, Warp
from layout.warps.way import Way
from layout.warps.wound import Wound

ROD = Length(Fraction(8), "mm")
"""How thick the rod is where the kit does not say. Our own choice."""

KEPT = Fraction(50)
"""So much of the warp in mm stays unwoven at the rod, where no shed opens. Our own choice."""

_NO_FRINGE = ENGLISH.say(Reason.ROD_NO_FRINGE)


class FromRod(Way[FrameEnd]):
    """There and back from a loose rod, round frame ends that a thread may be `wound` round."""

    ends_to_a_mark = 1
    spacing = (Spacing.FROM_ROD, Spacing.FROM_ROD_ARE)

    def __init__(self, wound: Wound[Any]) -> None:
        self.wound = wound

    def kind(self, ends: FrameEnd) -> str:
        """No winds, and all ends on the face."""
        return "rod"

    def lay(
        self, count: int, sett: SettTaken, ends: FrameEnd, weaving: Weaving, thread: Fraction | None
    ) -> LayoutResult:
        """Every end upright at its place."""
        pitch = 1 / sett.per_mm
        at = tuple((k + Fraction(1, 2)) * pitch - count * pitch / 2 for k in range(count))
        passes = tuple(Pass(x, x, "face", "down" if k % 2 else "up") for k, x in enumerate(at))
        return LayoutResult(at, at, passes, pitch, (ENGLISH.say(WarpNote.ROD),))

    def thread(self, ends: FrameEnd, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Once round for every end, and half round the rod from one to the next.

        Both stretches that lead to the rod reach to the height of its middle, so that nothing is to be taken off for
        it; a half turn of a thread d thick round a rod r thick, a pitch p on, is hypot(pi (r + d) / 2, p) long.
        """
        pitch = float(warp.pitch)

        def some(count: int, turns: int, thick: float, rod: float) -> float:
            turn = math.hypot(math.pi * (rod + thick) / 2, pitch)
            return count * self.wound.once_round(ends, frame, thick) + turns * turn

        rod = _rod(warp.rod)
        once = plain(self.wound.once_round(ends, frame, thread.value))
        said = ENGLISH.say(Reason.FROM_ROD, ends=warp.ends, once=once, turns=warp.ends - 1)
        two = combine(lambda d, r: some(2, 2, d, r), ENGLISH.say(Reason.ROD_AND_BACK), thread, rod)
        return two, combine(lambda d, r: some(warp.ends, warp.ends - 1, d, r), said, thread, rod)

    def open_warp(self, ends: FrameEnd, frame: Frame, wide: float, weaving: Weaving) -> Fraction:
        """Once round, less what stays at the rod: the warp slides round both ends as the weaving grows."""
        return Fraction(self.wound.once_round(ends, frame, 0.0)) - self.kept(weaving)

    def kept(self, weaving: Weaving) -> Fraction:
        """The rod, and what stays unwoven beside it."""
        return (weaving.rod_diameter or ROD).mm + KEPT

    def no_fringe(self) -> Quantity:
        """Both edges are loops that the rod held."""
        return computed(0.0, _NO_FRINGE)


def _rod(stated: Length | None) -> Quantity:
    """How thick the rod is in mm."""
    if stated is not None:
        return measured(float(stated.mm), ENGLISH.say(Reason.ROD, rod=say_length(stated)))
    return assumed(float(ROD.mm), ENGLISH.say(Reason.ROD_ASSUMED, rod=say_length(ROD)))
