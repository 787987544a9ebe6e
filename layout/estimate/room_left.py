"""The height that can be woven, what is left over as fringe, and what opens the sheds."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from layout.kit.fields import example_of
from layout.kit.frame_inputs import LONGEST
from layout.kit.inputs import BY_KEY
from layout.kit.kit import Kit
from layout.kit.yarn_facts import stated
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Room, Stated
from layout.values.errors import FieldError
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, computed, measured
from layout.values.units import Length, down, say_length, up
from layout.warps.warp import Warp
from layout.warps.ways import way_of
from layout.yardage.given import WITH_A_NEEDLE, RoomGiven
from layout.yardage.heading import heading_of
from layout.yardage.weavable import (
    HAND,
    LEASH_KNOT,
    NEEDLE,
    OVERHANG,
    REACH,
    SLOPE,
    Leashes,
    RoomTaken,
    apart_zone,
    check_height,
    fringes,
    leashes,
    shed_stick,
    weavable_height,
)

_LEAST_WOVEN = 4.0
"""A smaller height in mm is not offered to anybody."""
_AS_SIDES = ENGLISH.say(Reason.AS_SIDES)


class RoomLeft(NamedTuple):
    """The weavable height, the fringes and the stick in mm, and the leashes."""

    weavable: Quantity
    near: Quantity
    far: Quantity
    stick: Quantity
    leashes: Leashes


def weavable_of(kit: Kit) -> Quantity:
    """The greatest height in mm that can be woven. FieldError where that of the kit is greater, or none is left."""
    wide = end_width(kit)
    inner, room = _inner(kit, wide), _room(kit.amounts.room, apart_at(kit))
    weavable = _weavable(kit, inner, room, wide)
    if kit.weaving.height is not None:
        _check(kit, kit.weaving.height, weavable, room, wide)
    elif weavable.value < _LEAST_WOVEN:
        raise _too_low(kit, room, wide)
    return weavable


def _inner(kit: Kit, wide: Quantity) -> Fraction:
    """How much warp in mm headings, weaving and hand may share."""
    way = way_of(kit.frame.ends, kit.weaving.how_wound)
    return way.open_warp(kit.frame.ends, kit.frame.tightened, wide.value, kit.weaving)


def room_left(kit: Kit, warp: Warp, thread: Quantity, weavable: Quantity, woven: Quantity) -> RoomLeft:
    """The room of a kit whose ends are `thread` mm thick, of which `weavable` mm can be and `woven` mm are woven."""
    given, frame = kit.amounts.room, kit.frame.tightened
    wide = end_width(kit)
    inner, room = _inner(kit, wide), _room(given, apart_at(kit))
    way = way_of(frame.ends, warp.winding)
    near = room.heading.value + room.apart.value
    turn = way.turn(frame.ends, frame, warp, wide.value, thread.value)
    fringe = fringes(inner, woven.value, near, turn)
    first, last = (computed(each.value, each.reason, room.heading, room.apart, wide, thread) for each in fringe)
    if not woven.exact:
        low, high = (fringes(inner, size, near, turn)[1].value for size in (woven.high, woven.low))
        last = replace(last, spread=(low, high))
    if none := way.no_fringe():
        first = last = none
    tied = leashes(
        warp.ends,
        way.leashed(kit.weaving) != "odd",
        stated(given.leash_reach, REACH, Stated.LEASH_REACH),
        stated(given.leash_knot, LEASH_KNOT, Stated.LEASH_KNOT),
    )
    stick = shed_stick(frame.outer_width.mm, stated(given.stick_past, OVERHANG, Stated.STICK_PAST))
    return RoomLeft(weavable, first, last, stick, replace(tied, ends=way.leashed(kit.weaving)))


def _room(given: RoomGiven, apart: Quantity) -> RoomTaken:
    usual = NEEDLE if given.worked == WITH_A_NEEDLE else HAND
    return RoomTaken(apart, heading_of(given).height, stated(given.hand, usual, Stated.HAND))


def apart_at(kit: Kit) -> Quantity:
    """The zone in mm at a frame end where face and back layer lie apart; nothing where there is one layer only."""
    apart = way_of(kit.frame.ends, kit.weaving.how_wound).apart(kit.frame.ends)
    if not apart:
        return computed(0.0, ENGLISH.say(Reason.ON_FACE))
    return apart_zone(apart, stated(kit.amounts.room.slope, SLOPE, Stated.SLOPE))


def end_width(kit: Kit) -> Quantity:
    """How much of the outer height an end takes: the bar, or the board with its pegs as far as the warp lies on it."""
    ends, given = kit.frame.ends, kit.strength.end_width
    if ends.wide_mm is not None:
        return measured(float(ends.wide_mm), ENGLISH.say(Reason.BAR))
    if given is not None:
        return measured(float(given.mm), ENGLISH.say(Reason.END_WIDTH))
    return assumed(float(max(kit.frame.side_width.mm, ends.inset_mm)), _AS_SIDES)


def _weavable(kit: Kit, inner: Fraction, room: RoomTaken, wide: Quantity) -> Quantity:
    if inner <= _taken(room):
        raise _too_low(kit, room, wide)
    found = weavable_height(inner, room)
    return computed(found.value, ENGLISH.sentence(_less(inner, room)), found, wide)


def _taken(room: RoomTaken) -> float:
    return 2 * room.heading.value + 2 * room.apart.value + room.hand.value


def _too_low(kit: Kit, room: RoomTaken, wide: Quantity) -> FieldError:
    """The refusal of a frame in which no height is left to weave; of what takes the height, if no frame would do."""
    outer = kit.frame.outer_height
    kept = way_of(kit.frame.ends, kit.weaving.how_wound).kept(kit.weaving)
    gained = kit.frame.travel.mm if kit.frame.travel else 0
    least = Length(Fraction(_taken(room) + 2 * wide.value) + kept - gained, outer.unit)
    if least.mm + _LEAST_WOVEN > LONGEST.mm:
        return _too_much(room, wide)
    asked = kit.weaving.height.mm if kit.weaving.height else Fraction(_LEAST_WOVEN)
    higher = Length(min(least.mm + asked + 1, LONGEST.mm), outer.unit)
    example = f'outer_height = "{up(higher)}"'
    return FieldError("frame.outer_height", Room.HIGHER, say_length(outer), example, least=_said(least))


def _too_much(room: RoomTaken, wide: Quantity) -> FieldError:
    """The refusal of what takes most of the height."""
    parts = {"heading": 2 * room.heading.value, "slope": 2 * room.apart.value, "hand": room.hand.value}
    key = max(parts, key=lambda each: parts[each])
    table, taken = ("room", parts[key]) if parts[key] > 2 * wide.value else ("frame", 2 * wide.value)
    key = key if table == "room" else "end_width"
    got, example = Message(Room.TAKEN, {"taken": plain(taken)}), example_of(BY_KEY[f"{table}.{key}"])
    return FieldError(f"{table}.{key}", Room.LEAVE, got, example, longest=say_length(LONGEST))


def _less(inner: Fraction, room: RoomTaken) -> Message:
    """What is taken off the height between the ends, in numbers."""
    values = {"inner": plain(inner), "heading": plain(room.heading.value), "hand": plain(room.hand.value)}
    if room.apart.value:
        return Message(Reason.HEIGHT_LEFT_LAYERS, {**values, "apart": plain(room.apart.value)})
    return Message(Reason.HEIGHT_LEFT, values)


def _check(kit: Kit, height: Length, weavable: Quantity, room: RoomTaken, wide: Quantity) -> None:
    """FieldError, in the unit of the kit, where its height is greater than can be woven."""
    try:
        check_height(height.mm, weavable)
    except FieldError:
        if weavable.value < _LEAST_WOVEN:
            raise _too_low(kit, room, wide) from None
        most = down(Length(Fraction(weavable.value), height.unit))
        said: dict[str, object] = {"most": most, "why": _less(_inner(kit, wide), room)}
        role = Room.AT_MOST
        if kit.amounts.room.hand is None and kit.amounts.room.worked != WITH_A_NEEDLE:
            role = Room.AT_MOST_BY_HAND
            said["needle"] = down(Length(Fraction(weavable.value + HAND.value - NEEDLE.value), height.unit))
        raise FieldError("weaving.height", role, say_length(height), f'height = "{most}"', **said) from None


def _said(length: Length) -> str:
    return say_length(Length(length.mm.limit_denominator(1000), length.unit))
