"""The height that can be woven, what is left over as fringe, and what opens the sheds."""

from __future__ import annotations

from fractions import Fraction
from math import floor
from typing import NamedTuple

from layout.amounts.told import RoomTold
from layout.amounts.weavable import (
    HAND,
    HEADING,
    LEASH_KNOT,
    OVERHANG,
    REACH,
    SLOPE,
    Leashes,
    Room,
    apart_zone,
    check_height,
    fringes,
    leashes,
    shed_stick,
    weavable_height,
)
from layout.errors import FieldError
from layout.figure import Figure, assumed, computed, measured
from layout.frames.frame import RoundBar
from layout.kit.kit import Kit
from layout.reckoning.known import stated
from layout.units import Length, mm_in, say_length
from layout.warps.warp import Warp

_AS_SIDES = "The frame ends are as wide as its sides, seen from the face."


class RoomLeft(NamedTuple):
    """The weavable height, the fringes and the stick in mm, and the leashes."""

    weavable: Figure
    near: Figure
    far: Figure
    stick: Figure
    leashes: Leashes


def room_left(kit: Kit, warp: Warp) -> RoomLeft:
    """The room of a kit. Raises FieldError where its height cannot be woven, or no height at all."""
    told, frame = kit.amounts.room, kit.frame
    wide = _end_width(kit)
    inner = frame.outer_height.mm - 2 * Fraction(wide.value)
    room = _room(told, _apart_mm(kit))
    weavable = _weavable(kit, inner, room, wide)
    _check(kit, weavable)
    near = room.heading.value + room.apart.value
    across = 2 * wide.value if not isinstance(frame.ends, RoundBar) else 0.0
    fringe = fringes(inner, kit.weaving.height.mm, near, frame.ends.half_turn_mm + across)
    first, last = (computed(each.value, each.because, room.heading, room.apart, wide) for each in fringe)
    tied = leashes(
        warp.ends,
        kit.weaving.first_pass == "face",
        stated(told.leash_reach, REACH, "The reach of a leash"),
        stated(told.leash_knot, LEASH_KNOT, "The knot of a leash"),
    )
    stick = shed_stick(frame.outer_width.mm, stated(told.stick_past, OVERHANG, "How far the stick passes a side"))
    return RoomLeft(weavable, first, last, stick, tied)


def _room(told: RoomTold, apart_mm: Fraction) -> Room:
    slope = stated(told.slope, SLOPE, "The slope of the layers")
    return Room(
        apart_zone(apart_mm, slope),
        stated(told.heading, HEADING, "The heading"),
        stated(told.hand, HAND, "Room for the hand"),
    )


def _apart_mm(kit: Kit) -> Fraction:
    """How far face and back layer lie apart at the frame ends."""
    ends = kit.frame.ends
    return ends.diameter.mm if isinstance(ends, RoundBar) else ends.thickness.mm


def _end_width(kit: Kit) -> Figure:
    """How much of the outer height an end takes: the bar, or the board as far as the warp lies on it."""
    ends, given = kit.frame.ends, kit.strength.end_width
    if isinstance(ends, RoundBar):
        return measured(float(ends.diameter.mm), "The bar.")
    if given is not None:
        return measured(float(given.mm), "The width of the frame ends as the kit states it.")
    return assumed(float(kit.frame.side_width.mm), _AS_SIDES)


def _weavable(kit: Kit, inner: Fraction, room: Room, wide: Figure) -> Figure:
    taken = 2 * room.heading.value + 2 * room.apart.value + room.hand.value
    if inner <= taken:
        outer = kit.frame.outer_height
        least = Length(Fraction(taken + 2 * wide.value), outer.unit)
        needed = f"more than {_said(least)}, for both ends, headings, spreading layers and the hand"
        higher = _said(Length(least.mm + 200, outer.unit))
        raise FieldError("frame.outer_height", needed, say_length(outer), f'outer_height = "{higher}"')
    found = weavable_height(inner, room)
    return computed(found.value, found.because, found, wide)


def _check(kit: Kit, weavable: Figure) -> None:
    """FieldError, in the unit of the kit, where its height is greater than can be woven."""
    height = kit.weaving.height
    try:
        check_height(height.mm, weavable)
    except FieldError:
        most = _down(Length(Fraction(weavable.value), height.unit))
        needed = f"at most {most} ({weavable.because.rstrip('.')}; see [room])"
        raise FieldError("weaving.height", needed, say_length(height), f'height = "{most}"') from None


def _said(length: Length) -> str:
    return say_length(Length(length.mm.limit_denominator(1000), length.unit))


def _down(length: Length) -> str:
    """A length rounded down to whole millimetres or eighths of an inch, in its own unit."""
    step = mm_in("in") / 8 if length.imperial else Fraction(1)
    return say_length(Length(floor(length.mm / step) * step, length.unit))
