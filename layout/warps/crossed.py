"""A warp wound in a figure eight: every pass crosses from the face of one frame end to the back of the other.

On the unrolled frame a crossed belt is as straight as an open one, so that the marks are those of a warp wound round
both ends. What changes is where an end lies: the first pass runs up on the face at the near end and comes to the far
end from behind, the second one comes down from its face to the back of the near end, and so on by turns.
"""

from __future__ import annotations

import math
from abc import abstractmethod
from collections.abc import Iterator, Mapping
from fractions import Fraction

from layout.frames.frame import Frame
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Weaving
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Spacing, WarpNote
from layout.sett.sett import SettTaken
from layout.values.quantity import Quantity, assumed, measured
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Layer, Warp
from layout.warps.way import Course
from layout.warps.wound import Wound, in_winds, wound
from layout.yardage.crossed import CrossedBelt, crossed_belt
from layout.yardage.weavable import LeashEnds

_OTHER: Mapping[Layer, Layer] = {"face": "back", "back": "face"}


class Crossed(Wound[Ends]):
    """A figure eight round both frame ends."""

    spacing = (Spacing.WINDS, Spacing.WINDS_CROSS)

    def lay(self, count: int, sett: SettTaken, ends: Ends, weaving: Weaving, thread: Fraction | None) -> LayoutResult:
        """The marks of an open winding, its passes in one layer at the near end and in the other at the far end."""
        laid = wound(count, 1 / sett.per_mm, weaving)
        passes = tuple(each._replace(far_layer=_OTHER[each.layer]) for each in laid.passes)
        note = WarpNote.CROSSED_ODD if weaving.first_pass == "face" else WarpNote.CROSSED_EVEN
        return laid._replace(passes=passes, notes=(ENGLISH.say(note), *laid.notes))

    @abstractmethod
    def width(self, ends: Ends, frame: Frame) -> Quantity:
        """How wide a frame end is, along the height of the frame, in mm."""

    @abstractmethod
    def belt(self, ends: Ends, frame: Frame, wide: float, thread: float) -> CrossedBelt:
        """The way round both ends of the frame, `wide` mm each, of a thread `thread` mm thick."""

    def once_round(self, ends: Ends, frame: Frame, thread: float) -> float:
        """The crossed belt."""
        return self.belt(ends, frame, self.width(ends, frame).value, thread).once_round

    def thread(self, ends: Ends, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Along the crossed belt, a winding pitch on at every wind."""

        def once(thick: float, wide: float) -> float:
            return self.belt(ends, frame, wide, thick).once_round

        return in_winds(warp, once, ENGLISH.say(Reason.CROSSED), thread, self.width(ends, frame))

    def turn(self, ends: Ends, frame: Frame, warp: Warp, wide: float, thread: float) -> float:
        """Half a belt, less the slanting stretch between both ends."""
        belt = self.belt(ends, frame, wide, thread)
        return belt.once_round / 2 - (float(frame.outer_height.mm) - 2 * wide) / math.cos(belt.lean)

    def courses(self, ends: Ends, frame: Frame, warp: Warp) -> Iterator[Course]:
        """Every end is at its place at half height, and moves on as its pass does.

        A pass is half a belt long, of a thread without thickness as on other frames; where the layers cross it leans,
        so that a mm of height takes 1 / cos(lean) of it. On the flats of boards it does not, but no weaving lies there.
        """
        belt = self.belt(ends, frame, self.width(ends, frame).value, 0.0)
        upright = belt.once_round / 2 * math.cos(belt.lean)
        for each, at in zip(warp.passes[:: warp.toward], warp.end_positions, strict=True):
            yield float((each.near + each.far) / 2 - at), float(each.far - each.near) / upright

    def leashed(self, weaving: Weaving) -> LeashEnds:
        """Those that come to the far end from behind: the first rows hold both layers at the near end."""
        return "odd" if weaving.first_pass == "face" else "even"


class CrossedBars(Crossed[RoundBar]):
    """A figure eight round bars."""

    def width(self, ends: RoundBar, frame: Frame) -> Quantity:
        """The bar."""
        return measured(float(ends.diameter.mm), ENGLISH.say(Reason.BAR))

    def belt(self, ends: RoundBar, frame: Frame, wide: float, thread: float) -> CrossedBelt:
        """A bar is as wide as it is thick."""
        bar = ends.diameter.mm
        return crossed_belt(frame.outer_height.mm, bar, bar, bar / 2, thread)


class CrossedBoards(Crossed[FlatEnd]):
    """A figure eight round boards."""

    def width(self, ends: FlatEnd, frame: Frame) -> Quantity:
        """As the kit has it, or as the side pieces."""
        if frame.end_width is not None:
            return measured(float(frame.end_width.mm), ENGLISH.say(Reason.END_WIDTH))
        return assumed(float(frame.side_width.mm), ENGLISH.say(Reason.AS_SIDES))

    def belt(self, ends: FlatEnd, frame: Frame, wide: float, thread: float) -> CrossedBelt:
        """Along both flats of a board and round its edges."""
        return crossed_belt(frame.outer_height.mm, wide, ends.thickness.mm, ends.edge_radius.mm, thread)
