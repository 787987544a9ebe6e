"""The warp thread that a frame takes: one wind, the whole way, the headings, and the total."""

from __future__ import annotations

from typing import NamedTuple

from layout.estimate.thread_path import thread_path
from layout.kit.kit import Kit
from layout.kit.yarn_facts import YarnFacts, stated
from layout.messages.english import ENGLISH
from layout.messages.roles import Add, Reason, Stated
from layout.values.limits import plain
from layout.values.quantity import Quantity
from layout.warps.warp import Warp
from layout.yardage.heading import SidePiece, heading_of, hitched_thread, row_take_up, rows_thread
from layout.yardage.warp_thread import KNOT, SPARE, STRETCH, TAIL, warp_thread, weight

_KNOTS = 2  # the tie-on and the tie-off

ADD_WARP = ENGLISH.say(Add.WARP)


class WarpNeed(NamedTuple):
    """One wind in mm, the thread of both headings in m, and all the warp thread in m and g."""

    per_wind_mm: Quantity
    heading_m: Quantity
    total_m: Quantity
    total_g: Quantity | None


def warp_need(kit: Kit, warp: Warp, known: YarnFacts) -> WarpNeed:
    """The warp thread of one frame."""
    given, way = kit.amounts.warp, thread_path(kit.frame, warp, known.thread_at(warp.pitch))
    knot = stated(given.knot, KNOT, Stated.KNOT)
    heading = heading_thread(kit, warp, known, stated(given.tail, TAIL, Stated.TAIL), knot)
    stretch, spare = stated(given.stretch, STRETCH, Stated.STRETCH), stated(given.spare, SPARE, Stated.SPARE)
    found = warp_thread(way.whole, heading, _KNOTS, knot, stretch, spare)
    values = {"path": way.whole.reason, "knots": _KNOTS, "spare": plain(100 * spare.value)}
    total = found.explained(ENGLISH.say(Reason.WARP_TOTAL, **values))
    grams = weight(total, known.warp.tex) if known.warp else None
    return WarpNeed(way.two_ends, heading.scaled(1 / 1000), total.scaled(1 / 1000), grams)


def heading_thread(kit: Kit, warp: Warp, known: YarnFacts, tail: Quantity, knot: Quantity) -> Quantity:
    """The thread in mm of both headings: rows round the sides of the frame, or an edge of half hitches."""
    frame, asked, width = kit.frame, heading_of(kit.amounts.room), float(warp.width)
    thread = known.warp_thick.pressed if known.warp_thick else None
    if asked.hitched:
        return hitched_thread(width, float(warp.pitch), thread, tail)
    gap = (frame.outer_width.mm - 2 * frame.side_width.mm - warp.width) / 2
    side = SidePiece(frame.side_width.mm, frame.sides_deep_mm, gap)
    return rows_thread(asked.rows, width, side, row_take_up(float(warp.pitch), thread), tail, knot)
