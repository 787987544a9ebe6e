"""The way of the warp thread: one wind round bars or flat ends, passes between notches, passes between pegs.

All lengths are mm and follow the centre line of the thread, which lies half its thickness off what it touches.
"""

from __future__ import annotations

import itertools
import math

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Computed, WarpNote, YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, computed


def round_bar_turn(centres_mm: Number, bar_mm: Number, thread_mm: Number) -> float:
    """Once round two equal round bars whose centres lie C apart: 2C + pi (D + d)."""
    centres = exactly(centres_mm)
    bar = exactly(bar_mm)
    thread = exactly(thread_mm)
    return 2 * float(centres) + math.pi * float(bar + thread)


def flat_end_turn(outer_mm: Number, thickness_mm: Number, radius_mm: Number, thread_mm: Number) -> float:
    """Once round a frame of outer length L and thickness T, edges of radius r: 2(L - 2r) + 2(T - 2r) + pi(2r + d)."""
    outer = exactly(outer_mm)
    thick = exactly(thickness_mm)
    radius = exactly(radius_mm)
    thread = exactly(thread_mm)
    if 2 * radius > min(thick, outer):
        most = plain(min(thick, outer) / 2)
        raise FieldError("frame.edge_radius", YardageNeed.EDGE_RADIUS, plain(radius), "edge_radius = 2", most=most)
    return float(2 * (outer - 2 * radius) + 2 * (thick - 2 * radius)) + math.pi * float(2 * radius + thread)


def wind_length(turn_mm: float, winding_pitch_mm: Number) -> float:
    """One wind, that moves on by a winding pitch P on its way round: sqrt(l^2 + P^2), as on any unrolled cylinder."""
    pitch = exactly(winding_pitch_mm)
    return math.hypot(turn_mm, float(pitch))


def wound_path(ends: Number, turn_mm: float, winding_pitch_mm: Number) -> Quantity:
    """The whole warp on a wound frame: a wind for every two ends, half a wind for an odd one."""
    count = int(ends)
    one = wind_length(turn_mm, winding_pitch_mm)
    return computed(count / 2 * one, ENGLISH.say(Computed.WINDS, winds=plain(count / 2), one=plain(one)))


def notched_path(ends: Number, outer_mm: Number, pitch_mm: Number, depth_mm: Number, thread_mm: Number = 0) -> Quantity:
    """N straight passes on the face between facing notches, and N - 1 turns behind a tooth.

    `outer_mm` is from ground to ground of the notches along the face, T `depth_mm` how thick the board is there, d
    `thread_mm`. The middle line of the thread lies d/2 outside all that it touches, so that a pass is l + d long and a
    turn p + 2 (T + d): a box grown by d/2, its corners taken sharp, so never too short.
    """
    count = int(ends)
    outer = exactly(outer_mm)
    pitch = exactly(pitch_mm)
    depth = exactly(depth_mm)
    thread = exactly(thread_mm)
    along, turn = outer + thread, pitch + 2 * (depth + thread)
    total = count * along + (count - 1) * turn
    values = {"passes": count, "along": plain(along), "turns": count - 1, "turn": plain(turn)}
    return computed(float(total), ENGLISH.say(Computed.PASSES_AND_TEETH, **values))


def pegged_path(ends: Number, rows_mm: Number, pitch_mm: Number, round_mm: Number, apart_mm: Number = 0) -> Quantity:
    """The serpentine way between a near and a far row of pegs, each turning two ends.

    `rows_mm` lies between the centres of the near and the far pegs nearest to the weaving, `round_mm` is peg + thread
    thickness, `apart_mm` the distance of the two staggered rows at each end (every second peg lies that much farther
    out). The first and the last pass begin and end where they touch their outer peg. Needs peg + thread <= 2 pitches,
    or neighbouring pegs of a row would touch: FieldError.
    """
    count = int(ends)
    rows = float(rows_mm)
    pitch = float(pitch_mm)
    across = float(round_mm)
    apart = float(apart_mm)
    if across > min(2 * pitch, rows):
        most, example = plain(2 * pitch), Message(YardageNeed.A_PEG)
        raise FieldError("frame.peg", YardageNeed.PEGS, plain(across), example, most=most)
    heights = [rows + apart * ((k + 1) // 2 % 2 + k // 2 % 2) for k in range(count)]
    straight = sum(math.sqrt(height**2 + pitch**2 - across**2) for height in heights)
    leans = [math.atan2(pitch, height) - math.asin(across / math.hypot(pitch, height)) for height in heights]
    turns = sum(math.pi - one - other for one, other in itertools.pairwise(leans))
    total = straight + turns * across / 2
    return computed(total, ENGLISH.say(Computed.PASSES_AND_PEGS, passes=count, turns=count - 1))


def peg_warnings(peg_mm: Number, thread_mm: Number, pitch_mm: Number) -> tuple[str, ...]:
    """One sentence if peg and thread together exceed the pitch, so that the ends cannot be parallel; else nothing."""
    peg = exactly(peg_mm)
    thread = exactly(thread_mm)
    pitch = exactly(pitch_mm)
    if peg + thread <= pitch:
        return ()
    if thread:
        return (ENGLISH.say(WarpNote.PEG_AND_THREAD_WIDE, both=plain(peg + thread), pitch=plain(pitch)),)
    return (ENGLISH.say(WarpNote.PEG_WIDE, peg=plain(peg), pitch=plain(pitch)),)
