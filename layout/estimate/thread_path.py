"""The way of the warp thread on each kind of frame: there and back once, and the whole of it, along its middle line."""

from __future__ import annotations

import math
from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.frames.frame import FlatEnd, Frame, NotchedEnd, PeggedEnd, RoundBar
from layout.values.errors import FieldError
from layout.values.limits import plain
from layout.values.quantity import Quantity, computed
from layout.warps.layout_result import looser
from layout.warps.warp import Warp
from layout.yardage.thread import flat_end_turn, notched_path, pegged_path, round_bar_turn, wind_length, wound_path

_PERIOD = 4  # after so many passes staggered pegs stand as they stood before


class ThreadPath(NamedTuple):
    """Two ends of it in mm (a wind, or there and back with both turns), and the whole way in mm of every thread."""

    two_ends: Quantity
    whole: Quantity


def thread_path(frame: Frame, warp: Warp, thread: Quantity) -> ThreadPath:
    """The way of a warp whose thread is `thread` mm thick. FieldError where it does not fit between its pegs."""
    ends = frame.ends
    if isinstance(ends, NotchedEnd):
        two, all_ends = _notched(frame, ends, warp, thread)
    elif isinstance(ends, PeggedEnd):
        two, all_ends = _pegged(frame, ends, warp, thread)
    else:
        two, all_ends = _wound(frame, ends, warp, thread)
    threads = sum(warp.threads)
    return ThreadPath(two, computed(all_ends.value * threads / warp.ends, _said(warp, two), all_ends, thread))


def _said(warp: Warp, two: Quantity) -> str:
    threads = sum(warp.threads)
    more = f" of {threads} threads" if threads != warp.ends else ""
    return f"{warp.ends} ends{more}, two of them {two.value:.1f} mm"


def _wound(frame: Frame, ends: RoundBar | FlatEnd, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
    outer = frame.outer_height.mm
    if isinstance(ends, RoundBar):
        turn = round_bar_turn(outer - ends.diameter.mm, ends.diameter.mm, thread.value)
    else:
        turn = flat_end_turn(outer, ends.thickness.mm, ends.edge_radius.mm, thread.value)
    one = wind_length(turn, warp.spacing)
    said = "Once round both frame ends and on by a winding pitch."
    return computed(one, said, thread), wound_path(warp.ends, turn, warp.spacing)


def _notched(frame: Frame, ends: NotchedEnd, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
    """Between the grounds of the notches, and round the back of a tooth at every turn, half a thread off the wood."""
    between = frame.outer_height.mm - 2 * ends.notch_depth.mm
    upright = notched_path(warp.ends, between, warp.spacing, ends.thickness.mm, thread.value)
    along = float(between) + thread.value
    slants = [math.hypot(each.near - each.far, along) - along for each in warp.passes]
    turn = float(warp.spacing + 2 * ends.thickness.mm) + 2 * thread.value
    two = 2 * (along + turn) + sum(slants[:2])
    said = "Up and down on the face, and round the back of a tooth at both ends."
    return computed(two, said, thread), computed(upright.value + sum(slants), upright.reason)


def _pegged(frame: Frame, ends: PeggedEnd, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
    """Between pegs, round half a peg at every turn."""
    rows = frame.outer_height.mm - 2 * (ends.edge_distance.mm + ends.row_distance.mm)
    across = float(ends.peg_diameter.mm) + thread.value
    try:
        some, more, whole = (
            pegged_path(count, rows, warp.pitch, across, ends.row_distance.mm)
            for count in (_PERIOD, 2 * _PERIOD, warp.ends)
        )
    except FieldError:
        most = f"two pitches, {plain(2 * warp.pitch)} mm"
        room = float(2 * warp.pitch) - thread.value
        thinner = f'peg_diameter = "{plain(floor(room * 100) / 100)} mm"'
        instead = thinner if room >= 1 else looser(Fraction(math.ceil(across * 100), 200))
        needed = f"peg and thread together no thicker than {most}"
        raise FieldError("frame.peg_diameter", needed, f"{plain(round(across, 3))} mm", instead) from None
    said = "Up and down between pegs, and round a peg at both ends."
    return computed((more.value - some.value) * 2 / _PERIOD, said, thread), whole
