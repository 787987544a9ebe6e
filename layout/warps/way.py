"""What there is to say of a way of warping: how the ends are laid, and how the thread goes from one to the next."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterable
from fractions import Fraction
from typing import Generic

from layout.frames.frame import Frame
from layout.frames.kinds.frame_end import Ends
from layout.kit.kit import Weaving
from layout.messages.catalogue import Role
from layout.messages.roles import Spacing
from layout.sett.sett import SettTaken
from layout.values.quantity import Quantity
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Warp
from layout.yardage.weavable import LeashEnds

Course = tuple[float, float]
"""How far in mm an end is off its place at half the height of the frame, and how much more with every mm upward."""


class Way(ABC, Generic[Ends]):
    """How a warp lies on one kind of frame end."""

    ends_to_a_mark = 2
    """How many ends a mark of the near end stands for."""
    spacing: tuple[Role, Role] = (Spacing.MARKS, Spacing.MARKS_ARE)
    """The messages that name what lies from one mark to the next, and say what it is."""

    def kind(self, ends: Ends) -> str:
        """How the frame ends carry the warp, when it is laid in this way."""
        return ends.kind

    @abstractmethod
    def lay(self, count: int, sett: SettTaken, ends: Ends, weaving: Weaving, thread: Fraction | None) -> LayoutResult:
        """Marks and passes of `count` ends, as wound from left to right; `thread` mm thick, None where not known.

        Raises FieldError where they cannot be laid.
        """

    @abstractmethod
    def thread(self, ends: Ends, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """The thread in mm that two ends take, with what leads from one to the next, and that all ends take."""

    def courses(self, ends: Ends, frame: Frame, warp: Warp) -> Iterable[Course] | None:
        """The course of every end where passes do not run from mark to mark on the unrolled frame; else None."""
        return None

    def turn(self, ends: Ends, frame: Frame, warp: Warp, wide: float, thread: float) -> float:
        """The way round an end `wide` mm, from the weaving's side and back, of a thread `thread` thick; all in mm."""
        return ends.turn_mm(wide, warp.spacing, thread)

    def open_warp(self, ends: Ends, frame: Frame, wide: float, weaving: Weaving) -> Fraction:
        """How much warp in mm headings, weaving and hand may share: all between two frame ends `wide` mm each."""
        return frame.outer_height.mm - 2 * Fraction(wide)

    def kept(self, weaving: Weaving) -> Fraction:
        """How much warp in mm stays open for good besides, where no fringe is left."""
        return Fraction(0)

    def no_fringe(self) -> Quantity | None:
        """A fringe of nothing, with the reason, where none can be left; else None."""
        return None

    def apart(self, ends: Ends) -> Fraction:
        """How far apart in mm the layers lie at a frame end; none where there is one layer."""
        return Fraction(0)

    def leashed(self, weaving: Weaving) -> LeashEnds:
        """Which ends are tied to leashes: those that lie behind while weaving; on one layer every second one."""
        return "every second"
