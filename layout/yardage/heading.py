"""The heading at each end of the weaving: how high it is, and the thread that it takes, row by row.

A row goes across the weaving and over and under every end, then round a side piece of the frame, which holds it. An
edge of half hitches has a turn round every end instead. That such an edge takes a thread of about three times the width
of the weaving is published (Alpacas Magazine, spring 2010, p. 113); a loop round an end of thickness d is pi (d + d)
long, so at the pitch p the edge takes (1 + 2 pi d / p) times its width.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed, Stated
from layout.values.limits import Number, plain
from layout.values.quantity import Quantity, assumed, combine, computed, measured
from layout.yardage.given import HALF_HITCHES, RoomGiven

ROWS = 2
"""Heading rows at each end of the weaving, where a kit does not say; our own choice."""

ROW_MM = 1.5
"""How high a heading row is; our own choice, the same for every yarn, so that no drawing rests on a guess of it."""

ROW_TAKE_UP = assumed(0.15, ENGLISH.say(Assumed.ROW_TAKE_UP), 0.0, 0.51)
"""What a row of unknown thread takes more than its width; our own choice, from 2 d / p at usual setts."""

HITCHED_WIDTHS = assumed(3.0, ENGLISH.say(Assumed.HITCHED_WIDTHS), 2.0, 4.5)
"""The thread of an edge of half hitches in widths of the weaving, where the thread is not known; bounds our choice."""

_MOST_TAKEN = 0.95  # of the pitch, by thread and end together


class Heading(NamedTuple):
    """The `rows` at each end, or half hitches (`hitched`), and how high in mm that is."""

    rows: int
    hitched: bool
    height: Quantity


@dataclass(frozen=True, slots=True)
class SidePiece:
    """A side piece of the frame, round which the heading thread turns: `width` x `thickness`, and the `gap` to it."""

    width: Number
    thickness: Number
    gap: Number


def heading_of(room: RoomGiven) -> Heading:
    """The heading that a kit asks for: its height as stated, or 1.5 mm for every row; half hitches count as one."""
    rows = ROWS if room.heading_rows is None else room.heading_rows
    if room.heading == HALF_HITCHES:
        return Heading(0, True, assumed(ROW_MM, ENGLISH.say(Assumed.HITCHED)))
    if room.heading is not None and not isinstance(room.heading, str):
        return Heading(rows, False, measured(float(room.heading.mm), ENGLISH.say(Stated.HEADING)))
    if room.heading_rows is None:
        return Heading(rows, False, assumed(ROW_MM * rows, ENGLISH.say(Assumed.HEADING)))
    return Heading(rows, False, assumed(ROW_MM * rows, ENGLISH.say(Assumed.HEADING_ROWS, rows=rows)))


def row_take_up(pitch: float, thread: Quantity | None) -> Quantity:
    """What a heading row takes more than its width, by the pressed thickness in mm of its thread over its own ends.

    F. T. Peirce (1937) for straight ends: sqrt(1 - x^2) + x asin x - 1 with x = 2 d / p, at most 0.95.
    """
    if thread is None:
        return ROW_TAKE_UP

    def more(thick: float) -> float:
        part = min(2 * thick / pitch, _MOST_TAKEN)
        return math.sqrt(1 - part**2) + part * math.asin(part) - 1

    return combine(more, ENGLISH.say(Computed.ROW_TAKE_UP), thread)


def rows_thread(rows: int, width: float, side: SidePiece, more: Quantity, tail: Quantity, knot: Quantity) -> Quantity:
    """The thread in mm of both headings of so many rows: each r W (1 + a) + 2 r g + 2 (r + 1)(b + T), tail and knot.

    Take-up a, the gap g to a side piece of b x T, round which the thread turns at both ends of every row.
    """
    if not rows:
        return computed(0.0, ENGLISH.say(Computed.NO_ROWS))
    around = 2 * (rows + 1) * (float(side.width) + float(side.thickness)) + 2 * rows * float(side.gap)

    def both(a: float, at_start: float, at_stop: float) -> float:
        return 2 * (rows * width * (1 + a) + around + at_start + at_stop)

    row = plain(round(width * (1 + more.value) + 2 * float(side.gap)))
    return combine(both, ENGLISH.say(Computed.HEADING_ROWS, rows=rows, row=row), more, tail, knot)


def hitched_thread(width: float, pitch: float, thread: Quantity | None, tail: Quantity) -> Quantity:
    """The thread in mm of an edge of half hitches at each end of the weaving, and a tail at each side of both."""
    if thread is None:
        widths = HITCHED_WIDTHS
    else:
        widths = combine(lambda thick: 1 + 2 * math.pi * thick / pitch, ENGLISH.say(Computed.HITCHED), thread)
    said = ENGLISH.say(Computed.HITCHED_EDGES, widths=plain(round(widths.value, 1)))
    return combine(lambda times, end: 2 * (times * width + 2 * end), said, widths, tail)
