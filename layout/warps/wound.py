"""A warp wound round both frame ends: a wind lays one end on the face and one behind.

A wind lays two ends, so the winding pitch P is twice the pitch p. Seen along the winding, with q the share of the slant
that every first pass of a wind takes, the contacts lie at

    near  A_j = -W/2 + (1/2 - q) P/2 + j P   (A_0 the tie-on; after n whole winds A_n the tie-off)
    far   C_j = A_j + q P                    (with an odd end more, the last C is the tie-off)

so that at mid-height face and back ends alternate at one even pitch. With s the share of the face, 1/2 if it is shared
and 0 if the face stands straight, q is s where the face comes first and 1 - s where the back does.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Callable
from fractions import Fraction

from layout.frames.frame import Frame
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import Ends
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Weaving
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Spacing, WarpNote
from layout.sett.sett import SettTaken
from layout.values.quantity import Quantity, combine
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Pass, Warp
from layout.warps.way import Way
from layout.yardage.thread import flat_end_turn, round_bar_turn, wind_length, wound_path
from layout.yardage.weavable import LeashEnds

_OUTSIDE = {
    (False, False): WarpNote.STRAIGHT,
    (True, False): WarpNote.STRAIGHT_ON_OUT,
    (False, True): WarpNote.STRAIGHT_OFF_OUT,
    (True, True): WarpNote.STRAIGHT_BOTH_OUT,
}
"""What is said by whether the tie-on, and the tie-off, lie outside the limit."""


class Wound(Way[Ends]):
    """A warp that goes on in winds."""

    spacing = (Spacing.WINDS, Spacing.WINDS_ARE)

    def lay(self, count: int, sett: SettTaken, ends: Ends, weaving: Weaving, thread: Fraction | None) -> LayoutResult:
        """Contacts and passes."""
        return wound(count, 1 / sett.per_mm, weaving)

    @abstractmethod
    def once_round(self, ends: Ends, frame: Frame, thread: float) -> float:
        """The way in mm of a thread once round both ends of the frame."""

    def thread(self, ends: Ends, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Once round, a winding pitch on at every wind."""

        def once(thick: float, *_: float) -> float:
            return self.once_round(ends, frame, thick)

        return in_winds(warp, once, ENGLISH.say(Reason.ONCE_ROUND), thread)

    def apart(self, ends: Ends) -> Fraction:
        """The thickness of a frame end."""
        return ends.deep_mm

    def leashed(self, weaving: Weaving) -> LeashEnds:
        """Those of the back layer."""
        return "even" if weaving.first_pass == "face" else "odd"


def in_winds(
    warp: Warp, once: Callable[..., float], said: str, thread: Quantity, *others: Quantity
) -> tuple[Quantity, Quantity]:
    """One wind in mm and the whole way, where a thread so thick, on ends of such sizes, takes `once` to go round."""

    def whole(*sizes: float) -> Quantity:
        return wound_path(warp.ends, once(*sizes), warp.spacing)

    sources = (thread, *others)
    one = combine(lambda *sizes: wind_length(once(*sizes), warp.spacing), said, *sources)
    reason = whole(*(source.value for source in sources)).reason
    return one, combine(lambda *sizes: whole(*sizes).value, reason, *sources)


class RoundBars(Wound[RoundBar]):
    """Wound round bars."""

    def once_round(self, ends: RoundBar, frame: Frame, thread: float) -> float:
        """The bars' centres lie their diameter within the height."""
        return round_bar_turn(frame.outer_height.mm - ends.diameter.mm, ends.diameter.mm, thread)


class FlatEnds(Wound[FlatEnd]):
    """Wound round boards."""

    def once_round(self, ends: FlatEnd, frame: Frame, thread: float) -> float:
        """Over the rounded edges of both boards."""
        return flat_end_turn(frame.outer_height.mm, ends.thickness.mm, ends.edge_radius.mm, thread)


def wound(ends: int, pitch: Fraction, weaving: Weaving) -> LayoutResult:
    """Contacts and passes of `ends` ends at `pitch` mm, as wound from left to right."""
    near, far = _contacts(ends, pitch, weaving)
    layers = ("face", "back") if weaving.first_pass == "face" else ("back", "face")
    passes = tuple(
        Pass(near[(k + 1) // 2], far[k // 2], layers[k % 2], "down" if k % 2 else "up")  # type: ignore[arg-type]
        for k in range(ends)
    )
    return LayoutResult(near, far, passes, 2 * pitch, _notes(near, far, ends * pitch, weaving))


def _contacts(ends: int, pitch: Fraction, weaving: Weaving) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...]]:
    share = Fraction(1, 2) if weaving.slant == "shared" else Fraction(0)
    first_share = share if weaving.first_pass == "face" else 1 - share
    first = -ends * pitch / 2 + (Fraction(1, 2) - first_share) * pitch
    near = tuple(first + 2 * j * pitch for j in range(ends // 2 + 1))
    far = tuple(first + 2 * (j + first_share) * pitch for j in range((ends + 1) // 2))
    return near, far


def _notes(near: tuple[Fraction, ...], far: tuple[Fraction, ...], width: Fraction, weaving: Weaving) -> tuple[str, ...]:
    if weaving.slant == "shared":
        return ()
    last = max(near[-1], far[-1])
    return (ENGLISH.say(_OUTSIDE[near[0] < -width / 2, last > width / 2]),)
