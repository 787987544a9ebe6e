"""The warp thread that a frame takes: one wind, the whole way, the heading rows, and the total."""

from __future__ import annotations

from typing import NamedTuple

from layout.estimate.thread_path import thread_path
from layout.frames.frame import Frame
from layout.kit.yarn_facts import YarnFacts, stated
from layout.messages.english import ENGLISH
from layout.messages.roles import Add, Reason, Stated
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, computed
from layout.warps.warp import Warp
from layout.yardage.amounts import scaled
from layout.yardage.given import WarpGiven
from layout.yardage.warp_thread import KNOT, SPARE, STRETCH, TAIL, SidePiece, heading_thread, warp_thread, weight
from layout.yardage.weft import take_up

HEADING_TAKE_UP = assumed(0.1, ENGLISH.say(Reason.HEADING_TAKE_UP))
_KNOTS = 2  # the tie-on and the tie-off

ADD_WARP = ENGLISH.say(Add.WARP)


class WarpNeed(NamedTuple):
    """One wind in mm, the heading thread in m, and all the warp thread in m and g."""

    per_wind_mm: Quantity
    heading_m: Quantity
    total_m: Quantity
    total_g: Quantity | None


def warp_need(frame: Frame, warp: Warp, known: YarnFacts, given: WarpGiven) -> WarpNeed:
    """The warp thread of one frame."""
    way = thread_path(frame, warp, known.thread)
    knot = stated(given.knot, KNOT, Stated.KNOT)
    heading = heading_of(frame, warp, known, stated(given.tail, TAIL, Stated.TAIL), knot)
    stretch, spare = stated(given.stretch, STRETCH, Stated.STRETCH), stated(given.spare, SPARE, Stated.SPARE)
    found = warp_thread(way.whole, heading, _KNOTS, knot, stretch, spare)
    values = {"path": way.whole.reason, "knots": _KNOTS, "spare": plain(100 * spare.value)}
    said = ENGLISH.say(Reason.WARP_TOTAL, **values)
    total = computed(found.value, said, found)
    grams = weight(total, known.warp.tex) if known.warp else None
    return WarpNeed(way.two_ends, scaled(heading, 1 / 1000), scaled(total, 1 / 1000), grams)


def heading_of(frame: Frame, warp: Warp, known: YarnFacts, tail: Quantity, knot: Quantity) -> Quantity:
    """The thread in mm of the two heading rows, round the sides of the frame."""
    gap = (frame.outer_width.mm - 2 * frame.side_width.mm - warp.width) / 2
    side = SidePiece(frame.side_width.mm, frame.ends.deep_mm, gap)
    return heading_thread(frame.outer_width.mm, warp.width, side, _heading_take_up(warp, known), tail, knot)


def _heading_take_up(warp: Warp, known: YarnFacts) -> Quantity:
    """The take-up of the warp thread woven over itself, if it is known how thick it is and if it fits."""
    thick = known.warp_pressed
    if thick is None or 2 * thick.mm > warp.pitch:
        return HEADING_TAKE_UP
    return take_up(warp.pitch, thick, thick)
