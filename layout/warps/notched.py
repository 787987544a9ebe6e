"""A warp between notches, there and back on the face: it goes round a tooth at every turn and never behind the frame.

With an end in every notch (or in every second of a bar that is there already) the notches that carry ends lie where the
ends are wanted, (k + 1/2) p - W/2, at both frame ends, and every pass stands upright. With two ends to a notch the
notches lie twice the pitch apart, facing each other; a pass goes up upright and comes down from the next notch to the
same one, so that at mid-height the ends stand even, and in pairs at the notches.
"""

from __future__ import annotations

import math
from fractions import Fraction
from math import floor

from layout.frames.frame import Frame
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.kit import Weaving
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Spacing, WarpNeed, WarpNote
from layout.sett.sett import SettTaken
from layout.values.errors import FieldError
from layout.values.quantity import Quantity, combine
from layout.values.units import Length, exact_length, say_length
from layout.warps.layout_result import LEAST_WOOD, LayoutResult, looser
from layout.warps.warp import Pass, Warp
from layout.warps.way import Way
from layout.yardage.thread import notched_path

_THINNEST = Fraction(1, 2)  # no saw cuts a narrower notch


class NotchedEnds(Way[NotchedEnd]):
    """There and back between notches."""

    ends_to_a_mark = 1
    spacing = (Spacing.NOTCHES, Spacing.NOTCHES_ARE)

    def lay(
        self, count: int, sett: SettTaken, ends: NotchedEnd, weaving: Weaving, thread: Fraction | None
    ) -> LayoutResult:
        """Notches and passes."""
        return notched(count, 1 / sett.per_mm, ends, sett.to_a_notch)

    def thread(self, ends: NotchedEnd, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """From ground to ground, and round the back of a tooth at every turn, half a thread off the wood."""
        between = frame.outer_height.mm - 2 * ends.notch_depth.mm

        def upright(thick: float) -> Quantity:
            return notched_path(warp.ends, between, warp.spacing, ends.thickness.mm, thick)

        def slants(thick: float) -> list[float]:
            along = float(between) + thick
            return [math.hypot(each.near - each.far, along) - along for each in warp.passes]

        def two(thick: float) -> float:
            turn = float(warp.spacing + 2 * ends.thickness.mm) + 2 * thick
            return 2 * (float(between) + thick + turn) + sum(slants(thick)[:2])

        whole = combine(lambda d: upright(d).value + sum(slants(d)), upright(thread.value).reason, thread)
        return combine(two, ENGLISH.say(Reason.ROUND_TEETH), thread), whole


def notched(ends: int, pitch: Fraction, frame_end: NotchedEnd, to_a_notch: Fraction | None) -> LayoutResult:
    """Notches and passes of `ends` ends at `pitch` mm, as wound from left to right.

    Raises FieldError where notches would leave no tooth between them.
    """
    _check(pitch, frame_end)
    first = pitch / 2 - ends * pitch / 2
    if to_a_notch == 2:
        return _in_pairs(ends, pitch, first)
    at = tuple(first + k * pitch for k in range(ends))
    passes = tuple(Pass(x, x, "face", "down" if k % 2 else "up") for k, x in enumerate(at))
    return LayoutResult(at, at, passes, pitch)


def _check(pitch: Fraction, frame_end: NotchedEnd) -> None:
    """A board that is still to be notched keeps some wood; one that is there must have room for its notches at all."""
    apart = pitch if frame_end.density is None else 1 / frame_end.density.per_mm
    most = apart - (LEAST_WOOD if frame_end.density is None else 0)
    if frame_end.notch_width.mm <= most:
        return
    need = Message(WarpNeed.NOTCH, {"apart": say_length(Length(apart))})
    if frame_end.density is None:
        need = Message(WarpNeed.NOTCH_AND_TOOTH, {**need.values, "tooth": say_length(Length(LEAST_WOOD))})
    example: Message | str = f'notch_width = "{exact_length(Length(max(most / 2, _THINNEST)))}"'
    if most < _THINNEST:
        width = frame_end.notch_width.mm
        example = looser(width + LEAST_WOOD) if frame_end.density is None else _looser_notches(width)
    raise FieldError("frame.notch_width", need, say_length(frame_end.notch_width), example)


def _looser_notches(width: Fraction) -> str:
    return f'notch_density = "{floor(10 / width)} per cm"' if width <= 10 else 'notch_density = "5 per 10 cm"'


def _in_pairs(ends: int, pitch: Fraction, first: Fraction) -> LayoutResult:
    near = tuple(first + 2 * j * pitch for j in range((ends + 1) // 2))
    far = tuple(first + 2 * j * pitch for j in range(ends // 2 + 1))
    passes = tuple(Pass(near[k // 2], far[(k + 1) // 2], "face", "down" if k % 2 else "up") for k in range(ends))
    return LayoutResult(near, far, passes, 2 * pitch, (ENGLISH.say(WarpNote.PAIRS),))
